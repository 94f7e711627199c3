package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;

/** Drives of a copy that are of one batch are of different ones. */
final class OtherBatches implements Lever {
  private static final String ID = "other-batches";
  private static final String TITLE = "Drives of different batches";

  @Override
  public void find(LeverSubject subject, Found found) {
    List<Deed> deeds = new ArrayList<>();
    for (Copy copy : subject.layout().copies()) {
      if (copy.driveSet().flatMap(Medium.DriveSet::batch).isPresent()) {
        deeds.add(
            Deed.of(
                subject.id(ID, copy),
                subject.title(TITLE, copy),
                List.of(subject.without(copy, "batch"))));
      }
    }
    found.addOr(deeds, ID, TITLE, "the file says of no copy that its drives are of one batch");
  }
}
