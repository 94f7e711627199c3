package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What can be done with a layout, and what cannot. Mutable; made by levers, one after another. */
public final class Found {

  private final LeverSubject subject;
  private final List<Deed> deeds = new ArrayList<>();
  private final List<NotPossible> leftOut = new ArrayList<>();

  Found(LeverSubject subject) {
    this.subject = subject;
  }

  /** Adds a deed, unless the reader does not accept what comes of it. */
  void add(Deed deed) {
    Optional<String> mistake = subject.mistake(deed);
    if (mistake.isPresent()) {
      leaveOut(deed.id(), deed.title(), "that is no valid layout: " + mistake.get());
    } else {
      deeds.add(deed);
    }
  }

  /** Adds deeds; where there is none, why. */
  void addOr(List<Deed> some, String id, String title, String why) {
    if (some.isEmpty()) {
      leaveOut(id, title, why);
    }
    some.forEach(this::add);
  }

  void leaveOut(String id, String title, String why) {
    leftOut.add(new NotPossible(id, title, why));
  }

  /** What can be done, in the order of the catalogue. */
  public List<Deed> deeds() {
    return List.copyOf(deeds);
  }

  /** What cannot be done. */
  public List<NotPossible> leftOut() {
    return List.copyOf(leftOut);
  }
}
