package lastcopy.cli.scenario.value;

import java.util.Optional;
import java.util.OptionalDouble;

/** A rate outside of a scenario, written as in one. */
public final class RateText {

  /** What is accepted, for a message. */
  public static final String ACCEPTED = UnitTable.LINK.example();

  private static final double MOST = 1e21;

  private RateText() {}

  /** A rate in bytes per second, above 0; empty if the text is none. */
  public static Optional<Double> bytesPerSecond(String text) {
    Optional<Quantity> parsed = Quantity.parse(text.strip()).filter(rate -> !rate.range());
    if (parsed.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble factor = UnitTable.LINK.factor(parsed.get().unit());
    double rate = factor.orElse(0) * parsed.get().low();
    return rate > 0 && rate < MOST ? Optional.of(rate) : Optional.empty();
  }
}
