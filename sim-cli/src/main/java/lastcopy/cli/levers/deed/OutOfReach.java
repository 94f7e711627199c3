package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import lastcopy.scenario.Copy;

/** A copy is out of reach of malware. */
final class OutOfReach implements Lever {
  private static final String ID = "out-of-reach";
  private static final String TITLE = "The copy out of reach of malware";

  @Override
  public void find(LeverSubject subject, Found found) {
    if (subject.studio().desk().malware().isEmpty()) {
      found.leaveOut(ID, TITLE, "the file says nothing of malware");
      return;
    }
    List<Copy> others = subject.layout().copies().stream().skip(1).toList();
    List<Deed> deeds = new ArrayList<>();
    for (Copy copy : others) {
      if (copy.reach() == Copy.Reach.ONLINE && copy.rotation().isEmpty()) {
        deeds.add(
            Deed.of(
                subject.id(ID, copy),
                subject.title(TITLE, copy),
                List.of(subject.change(copy, "reach", "offline"))));
      }
    }
    String why =
        others.isEmpty() ? "there is no second copy" : "each other copy is out of reach already";
    found.addOr(deeds, ID, TITLE, why);
  }
}
