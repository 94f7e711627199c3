package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Units;

/** Drives are replaced by new ones while they still run, at three years or earlier than now. */
final class ReplacedEarlier implements Lever {
  private static final String ID = "replaced-earlier";
  private static final double YEARS = 3;

  @Override
  public void find(LeverSubject subject, Found found) {
    List<Deed> deeds = new ArrayList<>();
    for (Copy copy : subject.layout().copies()) {
      if (copy.medium() instanceof Medium.DriveSet set) {
        OptionalDouble now = set.replaceAtHours();
        double at = now.isPresent() ? now.getAsDouble() / 2 : YEARS * Units.HOURS_PER_YEAR;
        double years = at / Units.HOURS_PER_YEAR;
        String text =
            years == Math.rint(years) ? AmountTexts.number(years) + " years" : AmountTexts.time(at);
        deeds.add(
            Deed.of(
                subject.id(ID, copy),
                subject.title("Drives replaced at an age of " + text, copy),
                List.of(subject.change(copy, "replace_at", text))));
      }
    }
    found.addOr(deeds, ID, "Drives replaced earlier", "the layout has no drives");
  }
}
