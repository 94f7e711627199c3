package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import lastcopy.cli.edit.Change;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;

/** What fails is seen at once: something watches and raises an alarm. */
final class SeenAtOnce implements Lever {
  private static final String ID = "seen-at-once";
  private static final String TITLE = "Failures seen at once";
  private static final String NOW = "0 h";

  @Override
  public void find(LeverSubject subject, Found found) {
    List<Deed> deeds = new ArrayList<>();
    for (Copy copy : subject.layout().copies()) {
      List<Change> changes = new ArrayList<>();
      if (!copy.repair().noticed().equals(Delay.none())) {
        changes.add(subject.change(copy, "noticed", NOW));
      }
      if (subject.has(copy, "gone_noticed") && !copy.repair().goneNoticed().equals(Delay.none())) {
        changes.add(subject.change(copy, "gone_noticed", NOW));
      }
      if (!changes.isEmpty()) {
        deeds.add(Deed.of(subject.id(ID, copy), subject.title(TITLE, copy), changes));
      }
    }
    found.addOr(deeds, ID, TITLE, "they are seen at once already");
  }
}
