package lastcopy.outlook;

import java.util.Optional;

/**
 * What an Ethernet link can carry at most, from its frame (IEEE 802.3): 1,500 bytes of packet, 14
 * of header, 4 of checksum, 8 of preamble and 12 of gap are 1,538 bytes on the wire; 40 bytes of
 * the packet are network and transport headers, and 12 more are timestamps where they are used.
 */
public final class Ethernet {

  private static final double WIRE = 1_538;
  private static final double PAYLOAD = 1_460;
  private static final double PAYLOAD_WITH_TIMESTAMPS = 1_448;
  private static final double[] LINES = {1e8, 1e9, 2.5e9, 5e9, 1e10};
  private static final double BITS = 8;

  private Ethernet() {}

  /**
   * The most payload that a line carries, in bytes per second.
   *
   * @param bitsPerSecond the line rate, above 0
   */
  public static double ceiling(double bitsPerSecond) {
    return bitsPerSecond / BITS * PAYLOAD / WIRE;
  }

  /** The same where each packet carries timestamps. */
  public static double ceilingWithTimestamps(double bitsPerSecond) {
    return bitsPerSecond / BITS * PAYLOAD_WITH_TIMESTAMPS / WIRE;
  }

  /**
   * The line whose ceiling a stated rate lies above although it lies within the line rate: the rate
   * on the box, which no file transfer reaches.
   *
   * @param bytesPerSecond a stated rate
   * @return the line rate in bits per second, if there is such a line
   */
  public static Optional<Double> linePromisedBy(double bytesPerSecond) {
    for (double line : LINES) {
      if (bytesPerSecond > ceiling(line) && bytesPerSecond <= line / BITS) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }
}
