package lastcopy.cli.levers.deed;

import java.util.List;
import lastcopy.scenario.Units;

/** Camera cards, or a copy of them, are kept for two weeks. */
final class CardsKept implements Lever {
  private static final String ID = "cards-kept-two-weeks";
  private static final String TITLE = "Cards kept two weeks";
  private static final double HOURS = 14 * Units.HOURS_PER_DAY;

  @Override
  public void find(LeverSubject subject, Found found) {
    if (subject.layout().cardsKeepHours().orElse(0) >= HOURS) {
      found.leaveOut(ID, TITLE, "they are kept that long already");
      return;
    }
    found.add(
        new Deed(
            ID,
            TITLE,
            List.of(subject.tree().change(subject.path("cards", "keep"), "14 days")),
            List.of("There are cards enough, at no price."),
            true,
            false));
  }
}
