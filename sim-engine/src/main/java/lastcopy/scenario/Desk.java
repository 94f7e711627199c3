package lastcopy.scenario;

import java.util.Optional;
import lastcopy.law.Law;

/**
 * Mishaps of the people and machines at the desk.
 *
 * @param deletion somebody deletes a block of footage by mistake, if it can happen
 * @param malware everything in reach is destroyed, if it can happen
 */
public record Desk(Optional<Deletion> deletion, Optional<Malware> malware) {

  /** Checks that nothing is missing. */
  public Desk {
    Require.present(deletion, "deletion");
    Require.present(malware, "malware");
  }

  /** A desk at which footage is deleted by mistake. */
  public static Desk of(Deletion deletion) {
    return new Desk(Optional.of(deletion), Optional.empty());
  }

  /** A desk at which malware strikes. */
  public static Desk of(Malware malware) {
    return new Desk(Optional.empty(), Optional.of(malware));
  }

  /** A desk where nothing happens. */
  public static final Desk QUIET = new Desk(Optional.empty(), Optional.empty());

  /**
   * A block of footage disappears from the working copy.
   *
   * @param rate how often
   * @param size how much
   * @param noticed how long until somebody notices
   * @param stated whether the scenario says so; if not, it is taken as seen at once
   */
  public record Deletion(Rate rate, Amount size, Law noticed, boolean stated) {

    /** Checks that nothing is missing. */
    public Deletion {
      Require.present(rate, "rate");
      Require.present(size, "size");
      Require.present(noticed, "noticed");
    }

    /** A deletion of which it is stated how long it goes unnoticed. */
    public Deletion(Rate rate, Amount size, Law noticed) {
      this(rate, size, noticed, true);
    }
  }

  /**
   * Everything disappears from the working copy and from each copy in reach.
   *
   * @param rate how often
   * @param noticed how long until somebody notices
   * @param stated whether the scenario says so; if not, it is taken as seen at once
   */
  public record Malware(Rate rate, Law noticed, boolean stated) {

    /** Checks that nothing is missing. */
    public Malware {
      Require.present(rate, "rate");
      Require.present(noticed, "noticed");
    }

    /** Malware of which it is stated how long it goes unnoticed. */
    public Malware(Rate rate, Law noticed) {
      this(rate, noticed, true);
    }
  }

  /** How much one deletion takes. */
  public sealed interface Amount permits Bytes, ShootCount {}

  /**
   * A fixed number of bytes.
   *
   * @param bytes above 0
   */
  public record Bytes(double bytes) implements Amount {
    /** Checks the range. */
    public Bytes {
      Require.above(bytes, 0, "size of a deletion");
    }
  }

  /**
   * A number of shoots of the size that shoots have at the time.
   *
   * @param shoots above 0
   */
  public record ShootCount(double shoots) implements Amount {
    /** Checks the range. */
    public ShootCount {
      Require.above(shoots, 0, "size of a deletion in shoots");
    }
  }
}
