package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Units;

/** A restore is tried each quarter, so that a copy that cannot be used is found. */
final class RestoreTried implements Lever {
  private static final String ID = "restore-tried-each-quarter";
  private static final String TITLE = "A restore tried each quarter";
  private static final double HOURS = 90 * Units.HOURS_PER_DAY;

  @Override
  public void find(LeverSubject subject, Found found) {
    List<Deed> deeds = new ArrayList<>();
    boolean spoils = false;
    for (Copy copy : subject.layout().copies()) {
      spoils |= copy.spoils().isPresent();
      boolean seldom =
          copy.spoils()
              .filter(each -> each.triedEveryHours().orElse(Double.POSITIVE_INFINITY) > HOURS)
              .isPresent();
      if (seldom) {
        deeds.add(
            Deed.of(
                subject.id(ID, copy),
                subject.title(TITLE, copy),
                List.of(
                    subject
                        .tree()
                        .change(subject.path(copy, "spoils", "tried_every"), "90 days"))));
      }
    }
    String why =
        spoils
            ? "one is tried that often already"
            : "the file says of no copy that it may turn out unusable";
    found.addOr(deeds, ID, TITLE, why);
  }
}
