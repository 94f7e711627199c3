package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import lastcopy.cli.edit.Change;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;

/** One more drive in a set: double parity instead of single, a mirror instead of one drive. */
final class MoreRedundancy implements Lever {

  @Override
  public void find(LeverSubject subject, Found found) {
    find(
        subject,
        found,
        new Step(Arrangement.PARITY, Arrangement.DOUBLE_PARITY, "double-parity", "Double parity"),
        "no copy has single parity");
    find(
        subject,
        found,
        new Step(Arrangement.SINGLE, Arrangement.MIRROR, "mirror", "A mirror of two drives"),
        "no copy stands on one drive alone");
  }

  private record Step(Arrangement from, Arrangement to, String id, String title) {}

  private static void find(LeverSubject subject, Found found, Step step, String why) {
    List<Deed> deeds = new ArrayList<>();
    for (Copy copy : subject.layout().copies()) {
      if (copy.medium() instanceof Medium.DriveSet set
          && set.arrangement() == step.from
          && set.kinds().size() == 1
          && copy.rotation().isEmpty()) {
        deeds.add(deed(subject, copy, set, step));
      }
    }
    found.addOr(deeds, step.id, step.title, why);
  }

  private static Deed deed(LeverSubject subject, Copy copy, Medium.DriveSet set, Step step) {
    List<Change> changes =
        List.of(
            subject.change(copy, "drives", (set.drives() + 1) + " x " + set.model(0).id()),
            subject.change(copy, "arrangement", step.to.word()));
    String box = copy.box().isEmpty() ? " No box that holds both is counted." : "";
    return new Deed(
        subject.id(step.id, copy),
        subject.title(step.title, copy),
        changes,
        List.of(subject.priceWords("The drive more", set.model(0)) + box),
        set.model(0).price().isPresent(),
        false);
  }
}
