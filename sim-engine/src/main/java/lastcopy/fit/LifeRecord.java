package lastcopy.fit;

/**
 * What is known of one drive's life, in ages of one unit.
 *
 * <p>It is known to have run at the age at which its record begins (left truncation: had it failed
 * before, there would be no record), and either to have failed at an age, or between two ages
 * (interval censoring), or to run still when its record ends (right censoring).
 *
 * @param entry age at which the record begins, at least 0
 * @param lastSeen greatest age at which it is known to have run, at least {@code entry}
 * @param exit age at which it was found failed, or at which the record ends; above {@code entry}
 * @param failed whether it failed; if not, {@code lastSeen} is {@code exit}
 */
public record LifeRecord(double entry, double lastSeen, double exit, boolean failed) {

  /** Checks the order. */
  public LifeRecord {
    boolean ordered = 0 <= entry && entry <= lastSeen && lastSeen <= exit && entry < exit;
    if (!ordered || !Double.isFinite(exit)) {
      throw new IllegalArgumentException(
          "ages must be finite and in the order 0 <= entry <= last seen <= exit, exit above entry: "
              + (entry + ", " + lastSeen + ", " + exit));
    }
    if (!failed && lastSeen < exit) {
      throw new IllegalArgumentException("what runs at " + exit + " was seen running then");
    }
  }

  /** Failed at an age that is known. */
  public static LifeRecord failedAt(double entry, double exit) {
    return new LifeRecord(entry, exit, exit, true);
  }

  /** Ran when it was last seen, found failed later. */
  public static LifeRecord failedBetween(double entry, double lastSeen, double exit) {
    return new LifeRecord(entry, lastSeen, exit, true);
  }

  /** Runs still when its record ends. */
  public static LifeRecord running(double entry, double exit) {
    return new LifeRecord(entry, exit, exit, false);
  }

  /** Whether the age at failure is known only to lie between two ages. */
  boolean between() {
    return lastSeen < exit;
  }
}
