package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.cli.edit.Change;
import lastcopy.law.Fixed;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Medium;

/**
 * A spare drive lies on the shelf, so that a replacement is there at once; it is bought at once.
 */
final class SpareOnTheShelf implements Lever {
  private static final String ID = "spare-on-the-shelf";
  private static final String TITLE = "A spare drive on the shelf";

  @Override
  public void find(LeverSubject subject, Found found) {
    List<Deed> deeds = new ArrayList<>();
    for (Copy copy : subject.layout().copies()) {
      boolean waits = !copy.repair().arrival().equals(new Fixed(0));
      if (waits && copy.medium() instanceof Medium.DriveSet set) {
        deeds.add(deed(subject, copy, set));
      }
    }
    found.addOr(deeds, ID, TITLE, "replacements are there at once already");
  }

  private static Deed deed(LeverSubject subject, Copy copy, Medium.DriveSet set) {
    List<Change> changes = new ArrayList<>(List.of(subject.change(copy, "wait", "0 h")));
    OptionalDouble price = LeverSubject.price(set);
    if (price.isPresent() && price.getAsDouble() > 0) {
      changes.add(subject.once(copy, price.getAsDouble()));
    }
    DriveModel model =
        set.kinds().stream()
            .filter(kind -> kind.price().equals(price))
            .findFirst()
            .orElse(set.model(0));
    return new Deed(
        subject.id(ID, copy),
        subject.title(TITLE, copy),
        changes,
        List.of(
            subject.priceWords("The spare", model)
                + " Each replacement is paid as before, so that there is always a spare."),
        price.isPresent(),
        false);
  }
}
