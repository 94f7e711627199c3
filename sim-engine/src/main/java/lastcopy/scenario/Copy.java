package lastcopy.scenario;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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
 * @param costs whatever else it takes; once for all turns of a rotation
 * @param leftOut keys that the scenario leaves out although something hangs on them; their
 *     components then have the format's default
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
    Optional<Rotation> rotation,
    Costs costs,
    Set<LeftOut> leftOut) {

  /** A key whose default flatters the copy. */
  public enum LeftOut {
    /** How long a failure goes unnoticed; the default is that it is seen at once. */
    NOTICED,
    /** How long until a replacement is there; the default is at once. */
    WAIT,
    /** The chance that a bit cannot be read; the default is never. */
    READ_ERRORS
  }

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
  public record Repair(Delay noticed, Delay goneNoticed, Law arrival) {
    /** Checks that nothing is missing. */
    public Repair {
      Require.present(noticed, "noticed");
      Require.present(goneNoticed, "gone_noticed");
      Require.present(arrival, "wait");
    }
  }

  /**
   * From some instant the copy holds nothing usable, and nobody knows.
   *
   * @param rate how often
   * @param triedEveryHours how often a restore is tried, by the clock, if at all
   */
  public record Spoils(Rate rate, OptionalDouble triedEveryHours) {
    /** Checks the range. */
    public Spoils {
      Require.present(rate, "rate");
      triedEveryHours.ifPresent(hours -> Require.above(hours, 0, "tried_every"));
    }
  }

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

  /** Copies the set and checks the ranges. */
  public Copy {
    leftOut = Set.copyOf(leftOut);
    Require.text(id, "copy");
    Require.present(place, "place");
    Require.present(box, "box");
    Require.present(medium, "medium");
    Require.present(repair, "repair");
    Require.present(feed, "feed");
    Require.present(restoresAt, "restores_at");
    Require.present(reach, "reach");
    Require.present(spoils, "spoils");
    Require.present(rotation, "rotation");
    Require.present(costs, "costs");
    restoresAt.ifPresent(rate -> Require.above(rate, 0, "restores_at"));
    Require.that(
        rotation.isEmpty()
            || feed.filter(by -> by.uplink().isPresent() || by.carried().isPresent()).isEmpty(),
        "drives that take turns stand at their source's place: no uplink, nothing carried by hand");
    Require.that(keepsDeletedHours >= 0, "keeps_deleted must be at least 0: " + keepsDeletedHours);
  }

  /** Makes a copy of that id with the defaults of the scenario file. */
  public static CopyBuilder builder(String id) {
    return new CopyBuilder(id);
  }

  /** The drives, if it is stored on drives. */
  public Optional<Medium.DriveSet> driveSet() {
    return medium instanceof Medium.DriveSet set ? Optional.of(set) : Optional.empty();
  }
}
