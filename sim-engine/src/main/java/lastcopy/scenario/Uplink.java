package lastcopy.scenario;

import java.util.OptionalDouble;

/**
 * A line out of the house that several feeds may share: while more than one of them has something
 * to carry, each has an equal part of its speed.
 *
 * @param id the name in the file
 * @param bytesPerSecond its speed, above 0
 * @param pricePerMonth what a month of it costs, at least 0, if known
 */
public record Uplink(String id, double bytesPerSecond, OptionalDouble pricePerMonth) {

  /** Checks the ranges. */
  public Uplink {
    Require.text(id, "uplink");
    Require.above(bytesPerSecond, 0, "speed");
    pricePerMonth.ifPresent(price -> Require.atLeast(price, 0, "price"));
  }

  /** An uplink of no stated price. */
  public static Uplink of(String id, double bytesPerSecond) {
    return new Uplink(id, bytesPerSecond, OptionalDouble.empty());
  }
}
