package lastcopy.cli.fit;

import java.util.Optional;
import java.util.stream.Collectors;
import lastcopy.fit.Fitted;
import lastcopy.fit.GammaRate;
import lastcopy.fit.Piece;
import lastcopy.fit.PiecewiseFit;
import lastcopy.fit.WeibullFit;
import lastcopy.interval.Estimate;
import lastcopy.interval.EventRates;

/**
 * The line for a scenario that records give: a range of rates, and its middle alone in a comment.
 *
 * @param law the value of {@code fails}
 * @param range the same as a range, from its 5th to its 95th percentile
 * @param why why this law and no other, as a sentence
 */
record FailsLine(String law, String range, String why) {

  /** With fewer failures the typical value has to help. */
  static final int FEW = 5;

  /** For a hazard for each year of age. */
  private static final int MANY = 50;

  /** What a difference of AIC says. */
  private static final double CLEARLY = 2;

  private static final double CONFIDENCE = 0.9;

  /** The line, or nothing where nothing failed and no typical value may help. */
  static Optional<FailsLine> of(Fitted fitted, Optional<TypicalShare> typical, AgeUnit unit) {
    Yearly yearly = new Yearly(unit.year());
    Optional<TypicalShare> help = typical.filter(share -> !share.apart(fitted.rate()));
    if (fitted.lives().failures() < FEW && help.isPresent()) {
      return Optional.of(helped(help.get(), yearly));
    }
    if (fitted.exponential().isEmpty()) {
      return Optional.empty();
    }
    double constant = fitted.exponential().get().aic();
    double weibull = fitted.weibull().map(WeibullFit::aic).orElse(Double.POSITIVE_INFINITY);
    double byAge = fitted.piecewise().map(PiecewiseFit::aic).orElse(Double.POSITIVE_INFINITY);
    boolean enough = fitted.lives().failures() >= MANY;
    if (enough && byAge < Math.min(constant, weibull) - CLEARLY) {
      return Optional.of(byAge(fitted, yearly));
    }
    if (fitted.lives().failures() >= FEW && weibull < constant - CLEARLY) {
      return Optional.of(weibull(fitted, unit));
    }
    return Optional.of(constant(fitted, unit, yearly));
  }

  private static FailsLine helped(TypicalShare typical, Yearly yearly) {
    GammaRate rate = typical.posterior();
    return new FailsLine(
        chance(rate.mean(), yearly),
        range(rate.percentile(0.05), rate.percentile(0.95), yearly),
        "Fewer than "
            + FEW
            + " failures are too few for a rate of their own: the line is what is held after"
            + " typical values and these records together.");
  }

  private static FailsLine constant(Fitted fitted, AgeUnit unit, Yearly yearly) {
    double mean = fitted.exponential().orElseThrow().mean().value();
    Estimate times = times(fitted);
    boolean asChance = yearly.asChance(times.high() / mean);
    String law =
        asChance ? chance(1 / mean, yearly) : "{mean: " + plain(unit.toHours(mean)) + " h}";
    String range =
        asChance
            ? range(times.low() / mean, times.high() / mean, yearly)
            : "{mean: "
                + plain(unit.toHours(mean / times.high()))
                + ".."
                + plain(unit.toHours(mean / times.low()))
                + " h}";
    return new FailsLine(
        law,
        range,
        "One rate for all ages: no law that changes with age fits these records clearly better.");
  }

  private static FailsLine weibull(Fitted fitted, AgeUnit unit) {
    WeibullFit fit = fitted.weibull().orElseThrow();
    String law =
        "{weibull: {shape: "
            + plain(fit.shape().value())
            + ", scale: "
            + plain(unit.toHours(fit.scale().value()))
            + " h}}";
    return new FailsLine(
        law,
        stretched(fitted, law),
        "A rate that "
            + (fit.shape().value() > 1 ? "rises" : "falls")
            + " with age fits these records clearly better than a constant one.");
  }

  private static FailsLine byAge(Fitted fitted, Yearly yearly) {
    String law =
        fitted.piecewise().orElseThrow().pieces().stream()
            .map(Piece::hazard)
            .map(hazard -> chance(hazard.value(), yearly))
            .collect(Collectors.joining(", ", "{by_age: [", "]}"));
    return new FailsLine(
        law,
        stretched(fitted, law),
        "A rate for each year of age fits these records clearly better than any simple law.");
  }

  private static String stretched(Fitted fitted, String law) {
    Estimate times = times(fitted);
    return "{times: " + plain(times.low()) + ".." + plain(times.high()) + ", law: " + law + "}";
  }

  /** By what a rate of so many failures may be off, from its 5th to its 95th percentile. */
  private static Estimate times(Fitted fitted) {
    double failures = fitted.lives().failures();
    return EventRates.of(failures, failures, CONFIDENCE);
  }

  private static String chance(double rate, Yearly yearly) {
    return plain(100 * Math.min(0.9999, yearly.chance(rate))) + " %/year";
  }

  private static String range(double low, double high, Yearly yearly) {
    return plain(100 * yearly.chance(low)) + ".." + plain(100 * yearly.chance(high)) + " %/year";
  }

  /** As a scenario reads it: no separators of thousands. */
  private static String plain(double value) {
    return Yearly.number(value, 3).replace(",", "");
  }
}
