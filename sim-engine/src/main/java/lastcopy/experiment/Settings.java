package lastcopy.experiment;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * How to simulate, apart from what.
 *
 * @param seed any
 * @param confidence of every interval, in (0, 1)
 * @param precision relative half-width of the chance of any loss at which a layout may stop, above
 *     0
 * @param histories the number of histories after which to stop, whatever the precision; empty for
 *     no such cap
 * @param time the time after which to stop at the next chunk; empty for no cap
 * @param threads at least 1
 * @param method how losses are estimated
 * @param worlds how many possible worlds are simulated where rates are not known; empty for as many
 *     as it takes
 */
public record Settings(
    long seed,
    double confidence,
    double precision,
    OptionalLong histories,
    Optional<Duration> time,
    int threads,
    Method method,
    OptionalInt worlds) {

  /** Settings that leave the number of worlds open. */
  public Settings(
      long seed,
      double confidence,
      double precision,
      OptionalLong histories,
      Optional<Duration> time,
      int threads,
      Method method) {
    this(seed, confidence, precision, histories, time, threads, method, OptionalInt.empty());
  }

  /** Settings that leave the method to the pilot. */
  public Settings(
      long seed,
      double confidence,
      double precision,
      OptionalLong histories,
      Optional<Duration> time,
      int threads) {
    this(seed, confidence, precision, histories, time, threads, Method.AUTO);
  }

  /** Checks the ranges. */
  public Settings {
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("confidence must be between 0 and 1: " + confidence);
    }
    if (!(precision > 0)) {
      throw new IllegalArgumentException("precision must be above 0: " + precision);
    }
    if (histories.isPresent() && histories.getAsLong() < 1) {
      throw new IllegalArgumentException("histories must be at least 1: " + histories.getAsLong());
    }
    if (worlds.isPresent() && worlds.getAsInt() < 1) {
      throw new IllegalArgumentException("worlds must be at least 1: " + worlds.getAsInt());
    }
    if (threads < 1) {
      throw new IllegalArgumentException("threads must be at least 1: " + threads);
    }
  }
}
