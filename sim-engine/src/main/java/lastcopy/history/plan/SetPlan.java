package lastcopy.history.plan;

import java.util.Optional;
import java.util.stream.IntStream;
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
 * @param together how many of them, one after another in their order, stand in for each other: two
 *     of mirrored pairs, over which footage is spread evenly, otherwise all
 * @param usableDrives drives whose worth of footage the set holds
 * @param survives how many that stand in for each other may be down at once; 0 for a shelf
 * @param shelf whether each drive is by itself
 * @param unlike whether they are of several models
 * @param driveSize bytes that count of each drive, those of the smallest; 0 for a service
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
    int together,
    int usableDrives,
    int survives,
    boolean shelf,
    boolean unlike,
    double driveSize,
    double strain,
    Law defects,
    Law scrub,
    double readErrors,
    Rebuild rebuild,
    double rebuildPerHour) {

  private static final SetPlan SERVICE =
      new SetPlan(true, 1, 1, 1, 0, false, false, 0, 1, null, null, 0, null, 0);

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
    int drives = shelf ? ofShelf(set, mostEverShot) : set.drives();
    boolean byRate = set.rebuild().time() instanceof Rebuild.ByRate;
    return new SetPlan(
        false,
        drives,
        shelf ? drives : set.arrangement().together(drives),
        set.arrangement().usableDrives(set.drives()),
        set.survives(),
        shelf,
        set.kinds().size() > 1,
        set.driveBytes(),
        set.strain(),
        set.latentDefects().orElse(null),
        set.scrub().orElseGet(Never::new),
        set.readErrorsPerBit(),
        set.rebuild(),
        byRate ? Ways.rebuild(copy) * Units.SECONDS_PER_HOUR : 0);
  }

  /** As many drives as it may take to hold all footage, and no fewer than are there. */
  private static int ofShelf(Medium.DriveSet set, double mostEverShot) {
    int drives = 0;
    for (double room = 0; drives < set.drives() || room < mostEverShot; drives++) {
      room += set.model(drives).sizeBytes();
    }
    return drives;
  }

  /** How many lots of drives that stand in for each other: the pairs, otherwise one. */
  public int lots() {
    return drives / together;
  }

  /** The lot of a drive. */
  public int lotOf(int drive) {
    return drive / together;
  }

  /** The drives of a lot. */
  public IntStream drivesOf(int lot) {
    return IntStream.range(lot * together, (lot + 1) * together);
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
