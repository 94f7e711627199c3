package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.edit.Change;
import lastcopy.scenario.Copy;

/** A copy that stands where the working copy does is put elsewhere. */
final class InAnotherPlace implements Lever {
  private static final String ID = "in-another-place";
  private static final String TITLE = "The copy in another place";

  @Override
  public void find(LeverSubject subject, Found found) {
    Copy working = subject.layout().workingCopy();
    List<Copy> others = subject.layout().copies().stream().skip(1).toList();
    List<Deed> deeds = new ArrayList<>();
    for (Copy copy : others) {
      if (copy.place().id().equals(working.place().id())) {
        deeds.add(deed(subject, copy));
      }
    }
    String why =
        others.isEmpty() ? "there is no second copy" : "no other copy stands at the working copy";
    found.addOr(deeds, ID, TITLE, why);
  }

  private static Deed deed(LeverSubject subject, Copy copy) {
    Elsewhere place = Elsewhere.than(subject, copy.place().id());
    List<Change> changes = new ArrayList<>(List.of(subject.change(copy, "place", place.name())));
    List<String> assumes = new ArrayList<>(place.assumes());
    Optional<String> box = copy.box().map(b -> b.id());
    boolean shared =
        subject.layout().copies().stream()
                .filter(other -> other.box().map(b -> b.id()).equals(box))
                .count()
            > 1;
    if (box.isPresent() && shared) {
      changes.add(subject.without(copy, "box"));
      assumes.add("It leaves the box that it shares, and stands in none.");
    }
    return new Deed(
        subject.id(ID, copy), subject.title(TITLE, copy), changes, assumes, true, false);
  }
}
