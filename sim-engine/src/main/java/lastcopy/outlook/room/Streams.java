package lastcopy.outlook.room;

import lastcopy.outlook.Ethernet;
import lastcopy.outlook.Route;

/**
 * How many people can edit from a working copy at once, each reading a stream of one rate: by the
 * sequential speed of its hardware, which hard disks do not reach while they seek between streams.
 *
 * @param bytesPerSecond rate of one stream, above 0
 * @param slowest what decides at the copy; a network line that its box promises is taken at what
 *     its frames carry
 */
public record Streams(double bytesPerSecond, Route.Part slowest) {

  /** What is a rounding error short of a stream is one. */
  private static final double SLACK = 1 + 1e-12;

  /** How many at the copy itself. */
  public long count() {
    return whole(slowest.bytesPerSecond());
  }

  /**
   * How many over a network line: no more than frames with timestamps carry (IEEE 802.3).
   *
   * @param bitsPerSecond the line rate, above 0
   */
  public long over(double bitsPerSecond) {
    return Math.min(count(), whole(Ethernet.ceilingWithTimestamps(bitsPerSecond)));
  }

  private long whole(double rate) {
    return (long) Math.floor(rate / bytesPerSecond * SLACK);
  }
}
