package lastcopy.scenario;

import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Law;

/**
 * One copy of the footage.
 *
 * @param id the name in the file, unique in its layout; copies of one name share their luck across
 *     layouts
 * @param place where it stands
 * @param box the enclosure of its drives, if any
 * @param medium its drives or its service
 * @param repair how a failure is noticed and hardware comes back
 * @param feed how it is fed; empty for the working copy only
 * @param restoresAt rate in bytes per second at which another copy is refilled from it, if stated
 * @param keepsDeletedHours how long it holds what was deleted at its source; infinite for good
 * @param reach whether malware at the desk can reach it
 * @param startsFull whether it holds the footage on hand at the start
 * @param spoils how it may turn out unusable, if at all
 * @param rotation drives that take turns, if any
 */
public record Copy(
    String id,
    Place place,
    Optional<Box> box,
    Medium medium,
    Repair repair,
    Optional<Feed> feed,
    OptionalDouble restoresAt,
    double keepsDeletedHours,
    Reach reach,
    boolean startsFull,
    Optional<Spoils> spoils,
    Optional<Rotation> rotation) {

  /** Whether malware at the desk can reach a copy. */
  public enum Reach {
    /** It is connected. */
    ONLINE,
    /** It is not. */
    OFFLINE
  }

  /**
   * The repair path.
   *
   * @param noticed how long the failure of a drive goes unnoticed
   * @param goneNoticed how long the loss of the whole copy goes unnoticed
   * @param arrival how long until the replacement has arrived
   */
  public record Repair(Delay noticed, Delay goneNoticed, Law arrival) {}

  /**
   * From some instant the copy holds nothing usable, and nobody knows.
   *
   * @param rate how often
   * @param triedEveryHours how often a restore is tried, by the clock, if at all
   */
  public record Spoils(Rate rate, OptionalDouble triedEveryHours) {}

  /**
   * k drives that take turns.
   *
   * @param turns how many, at least 2
   * @param everyHours the time from one turn to the next, above 0
   */
  public record Rotation(int turns, double everyHours) {
    /** Checks the ranges. */
    public Rotation {
      Require.that(turns >= 2, "rotation needs at least 2 drives: " + turns);
      Require.above(everyHours, 0, "every");
    }
  }

  /** Checks the ranges. */
  public Copy {
    Require.text(id, "copy");
    restoresAt.ifPresent(rate -> Require.above(rate, 0, "restores_at"));
    Require.that(keepsDeletedHours >= 0, "keeps_deleted must be at least 0: " + keepsDeletedHours);
  }

  /** The drives, if it is stored on drives. */
  public Optional<Medium.DriveSet> driveSet() {
    return medium instanceof Medium.DriveSet set ? Optional.of(set) : Optional.empty();
  }
}
