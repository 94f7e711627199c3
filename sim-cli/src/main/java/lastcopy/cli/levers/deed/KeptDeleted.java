package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Units;

/** A copy holds for a time what was deleted at its source: versions, or snapshots. */
final class KeptDeleted implements Lever {
  private final int days;

  KeptDeleted(int days) {
    this.days = days;
  }

  @Override
  public void find(LeverSubject subject, Found found) {
    String lever = "deleted-kept-" + days + "-days";
    String title = "Deleted files kept " + days + " days";
    if (!subject.isDeskCounted()) {
      found.leaveOut(lever, title, "the file says nothing of deletion or malware");
      return;
    }
    List<Deed> deeds = new ArrayList<>();
    for (Copy copy : subject.layout().copies()) {
      if (copy.keepsDeletedHours() < days * Units.HOURS_PER_DAY) {
        deeds.add(
            new Deed(
                subject.id(lever, copy),
                subject.title(title, copy),
                List.of(subject.change(copy, "keeps_deleted", days + " days")),
                List.of("What is kept takes no room that would have to be paid."),
                true,
                false));
      }
    }
    found.addOr(deeds, lever, title, "each copy keeps them that long already");
  }
}
