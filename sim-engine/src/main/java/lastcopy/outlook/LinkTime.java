package lastcopy.outlook;

/**
 * Whether the time of a feed's link is long enough for what is shot: over any longer time, since a
 * large shoot may still lag for a while.
 *
 * @param hoursADay the hours of a day at which it may be used, above 0 and at most 24
 * @param feeds how many feeds may use it at some of those hours; 1 for a link of its own
 * @param now what is needed for what is shot at the start
 * @param inLastYear what is needed for the most that is shot in the last year
 */
public record LinkTime(double hoursADay, int feeds, Need now, Need inLastYear) {

  /**
   * What a feed needs of its link. Where feeds share an uplink at hours that overlap in part, what
   * surely is enough, also while the others always have something to carry.
   *
   * @param enough whether it has that
   * @param hoursADay at its speed, shared as it is; more than 24 if no day is long enough
   * @param bytesPerSecond at its hours: the speed of the link, or of the whole uplink
   */
  public record Need(boolean enough, double hoursADay, double bytesPerSecond) {

    /** The speed in Mbit/s, rounded up to hundredths: rounded down it would not keep up. */
    public double megabits() {
      // The small term keeps a rate that is whole hundredths from being pushed up by its last
      // digit.
      return Math.ceil(bytesPerSecond * 8 / 1e4 - 1e-6) / 100;
    }
  }
}
