package lastcopy.outlook;

/**
 * A route by which all footage comes back into a copy that was gone, and how long that takes: into
 * the working copy from its return on; into a fed copy from the start of its first run on, or from
 * the first opening of its hours, as if it had its uplink to itself.
 *
 * @param from the id of the copy that it is read from
 * @param by how
 * @param bytesPerSecond the rate
 * @param hoursNow for what there is at the start; infinite if never
 * @param hoursAtEnd for what there is to keep at the horizon; infinite if never
 */
public record Comeback(
    String from, By by, double bytesPerSecond, double hoursNow, double hoursAtEnd) {

  /** How footage comes back. */
  public enum By {
    /** Given back by another copy, at the rate at which it restores. */
    RESTORE("restore"),
    /** By the feed of the copy that was gone. */
    FEED("feed"),
    /** Carried by hand. */
    HAND("hand");

    private final String word;

    By(String word) {
      this.word = word;
    }

    /** The word for text and files. */
    public String word() {
      return word;
    }
  }
}
