package lastcopy.scenario;

/**
 * Tells layouts of which the scenario itself says that they cannot lose footage: whatever befalls
 * the other copies, nothing can ever take anything from the working copy.
 *
 * <p>Sufficient, not necessary: a layout that is safe for a subtler reason (cards that always
 * outlast a failure, say) is not found here.
 */
public final class NoWayToLose {

  private static final double CERTAIN = 1_000;

  private NoWayToLose() {}

  /** Whether no footage of a layout can be lost by the horizon. */
  public static boolean in(Studio studio, Layout layout) {
    Copy working = layout.workingCopy();
    return holdsAllFromTheStart(studio, working)
        && isQuiet(studio.desk())
        && working.place().mishaps().stream()
            .allMatch(mishap -> !mishap.rate().strikes() || mishap.takes() == 0)
        && working.box().filter(box -> box.rate().strikes()).isEmpty()
        && working.spoils().filter(spoils -> spoils.rate().strikes()).isEmpty()
        && lasts(working.medium(), studio.horizonHours());
  }

  /** Until a first fill is done, footage is on other copies alone, and what they hide is met. */
  private static boolean holdsAllFromTheStart(Studio studio, Copy working) {
    return working.startsFull() || studio.footage().onHandBytes() == 0;
  }

  private static boolean isQuiet(Desk desk) {
    return desk.deletion().filter(deletion -> deletion.rate().strikes()).isEmpty()
        && desk.malware().filter(malware -> malware.rate().strikes()).isEmpty();
  }

  /** A bit that cannot be read, or a defect, costs a copy nothing unless a drive of it fails. */
  private static boolean lasts(Medium medium, double hours) {
    if (medium instanceof Medium.Service service) {
      return !service.loses().strikes();
    }
    return ((Medium.DriveSet) medium).models().stream().allMatch(model -> lasts(model, hours));
  }

  private static boolean lasts(DriveModel model, double hours) {
    double oldest = model.age().inverseCumulativeHazard(CERTAIN); // beyond it with exp(-1000)
    return model.fails().cumulativeHazard(Math.max(oldest, model.boughtAtHours()) + hours) == 0;
  }
}
