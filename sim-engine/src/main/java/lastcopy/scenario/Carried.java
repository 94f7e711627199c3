package lastcopy.scenario;

/**
 * Footage brought to a copy by carrying a drive, where that is sooner than the link.
 *
 * @param takesHours from the filled drive until it is read at the copy, in hours, at least 0
 * @param bytesPerSecond rate at which the drive is filled and read, taken together, above 0
 */
public record Carried(double takesHours, double bytesPerSecond) {

  /** Checks the ranges. */
  public Carried {
    Require.atLeast(takesHours, 0, "takes");
    Require.above(bytesPerSecond, 0, "rate");
  }

  /** Hours that an amount in bytes takes. */
  public double hours(double bytes) {
    return bytes / (bytesPerSecond * Units.SECONDS_PER_HOUR) + takesHours;
  }
}
