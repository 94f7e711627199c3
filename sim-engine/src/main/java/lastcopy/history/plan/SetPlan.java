package lastcopy.history.plan;

import java.util.Optional;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/**
 * The drives of a copy as a set. A service is a set of one drive, whose life is the time to the
 * service's loss.
 *
 * @param service whether it is a service
 * @param drives how many; of a shelf all that it may grow to
 * @param usableDrives drives whose worth of footage the set holds
 * @param survives how many may be down at once; 0 for a shelf
 * @param shelf whether each drive is by itself
 * @param driveSize bytes of one drive; 0 for a service
 * @param strain factor on the hazard of the others while one is down
 * @param defects law of a latent defect of each drive; null if there are none
 * @param scrub law until a scrub finds one
 * @param readErrors chance per bit that it cannot be read
 * @param rebuild how a drive is rebuilt; null for a service
 * @param rebuildPerHour bytes rebuilt in an hour, where a rate decides; else 0
 */
public record SetPlan(
    boolean service,
    int drives,
    int usableDrives,
    int survives,
    boolean shelf,
    double driveSize,
    double strain,
    Law defects,
    Law scrub,
    double readErrors,
    Rebuild rebuild,
    double rebuildPerHour) {

  private static final SetPlan SERVICE =
      new SetPlan(true, 1, 1, 0, false, 0, 1, null, null, 0, null, 0);

  /**
   * The set of a copy.
   *
   * @param mostEverShot all bytes that it may ever have to hold
   */
  static SetPlan of(Copy copy, double mostEverShot) {
    Optional<Medium.DriveSet> stored = copy.driveSet();
    return stored.isEmpty() ? SERVICE : of(copy, stored.get(), mostEverShot);
  }

  private static SetPlan of(Copy copy, Medium.DriveSet set, double mostEverShot) {
    boolean shelf = set.arrangement() == Arrangement.SHELF;
    double size = set.model().sizeBytes();
    boolean byRate = set.rebuild().time() instanceof Rebuild.ByRate;
    return new SetPlan(
        false,
        shelf ? Math.max(set.drives(), (int) Math.ceil(mostEverShot / size)) : set.drives(),
        set.arrangement().usableDrives(set.drives()),
        set.survives(),
        shelf,
        size,
        set.strain(),
        set.latentDefects().orElse(null),
        set.scrub().orElseGet(Never::new),
        set.readErrorsPerBit(),
        set.rebuild(),
        byRate ? Ways.rebuild(copy) * Units.SECONDS_PER_HOUR : 0);
  }

  /** Whether reading without redundancy surely meets nothing unreadable. */
  public boolean hidesNothing() {
    return readErrors == 0 && defects == null;
  }

  /** Hours to rebuild a whole drive at the way's rate. */
  public double wholeRebuildHours() {
    return driveSize / rebuildPerHour;
  }

  /** Hours to rebuild the part in use of a drive, of a copy that holds so many bytes. */
  public double rebuildHours(double heldBytes) {
    return heldBytes / usableDrives / rebuildPerHour;
  }

  /** Whether the time of a rebuild depends on what the copy holds when it starts. */
  public boolean rebuildsWhatIsHeld() {
    return rebuild.reads() == Rebuild.Reads.USED && rebuild.time() instanceof Rebuild.ByRate;
  }
}
