package lastcopy.scenario;

import java.util.OptionalDouble;

/**
 * An enclosure with its power supply; a mishap of it takes every drive in it.
 *
 * @param id the name in the file
 * @param rate how often all drives in it go at once
 * @param price what it costs, if known
 * @param powerWatts what it draws, if known
 * @param bytesPerSecond the fastest that data pass through it, if known
 */
public record Box(
    String id,
    Rate rate,
    OptionalDouble price,
    OptionalDouble powerWatts,
    OptionalDouble bytesPerSecond) {

  /** A box of no stated price, power or speed. */
  public static Box of(String id, Rate rate) {
    return new Box(
        id, rate, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** Checks the ranges. */
  public Box {
    Require.text(id, "box");
    Require.present(rate, "rate");
    price.ifPresent(value -> Require.atLeast(value, 0, "price"));
    powerWatts.ifPresent(value -> Require.atLeast(value, 0, "power"));
    bytesPerSecond.ifPresent(value -> Require.above(value, 0, "speed"));
  }
}
