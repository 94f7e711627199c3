package lastcopy.cli.fit;

import java.util.Locale;
import java.util.Optional;
import lastcopy.cli.output.Spans;
import lastcopy.fit.Fitted;
import lastcopy.fit.Records;
import lastcopy.fit.WeibullFit;
import lastcopy.interval.Estimate;
import lastcopy.interval.EventRates;
import lastcopy.words.PercentWords;

/** Sentences on what records say, and how little. */
final class FitWords {

  private final AgeUnit unit;
  private final double confidence;
  private final Yearly yearly;

  FitWords(AgeUnit unit, double confidence) {
    this.unit = unit;
    this.confidence = confidence;
    this.yearly = new Yearly(unit.year());
  }

  /** How many drives for how long, and what became of them. */
  String watched(Records records) {
    return String.format(
        Locale.ROOT,
        "%s watched for %s in all; %s.",
        count(records.records(), "drive was", "drives were"),
        driveYears(records),
        records.failures() == 0
            ? "none failed"
            : String.format(Locale.ROOT, "%,d of them failed", records.failures()));
  }

  /** The rate, and how little is known of it. */
  String howLittle(Fitted fitted) {
    Estimate rate = fitted.rate();
    long failures = fitted.lives().failures();
    if (failures == 0) {
      return String.format(
          Locale.ROOT,
          "No failure among %s in %s: at most %s (%s %% sure), and it may be far less.",
          count(fitted.lives().records(), "drive", "drives"),
          driveYears(fitted.lives()),
          yearly.told(rate.high()),
          PercentWords.of(confidence));
    }
    return String.format(
        Locale.ROOT,
        "That is %s; with %s anything from %s would be no surprise%s.",
        yearly.told(rate.value()),
        failures == 1 ? "one failure" : String.format(Locale.ROOT, "%,d failures", failures),
        yearly.range(rate.low(), rate.high()),
        extent(rate));
  }

  private static String extent(Estimate rate) {
    double factor = Math.sqrt(rate.high() / rate.low());
    return factor > 1.5
        ? ": the rate is known only to within a factor of "
            + Yearly.number(factor, 2)
            + " either way"
        : "";
  }

  /** The typical value beside the records; empty where these say enough by themselves. */
  Optional<String> typical(GroupFit group) {
    long failures = group.fitted().lives().failures();
    if (group.typical().isEmpty() || failures >= 20) {
      return Optional.empty();
    }
    TypicalShare share = group.typical().get();
    String expected =
        String.format(
            Locale.ROOT,
            "Typical %s of these ages (an assumption) would have had %s failures in that time,"
                + " %s if good and %s if poor.",
            share.kind().plural(),
            Yearly.number(share.central(), 2),
            Yearly.number(share.low(), 2),
            Yearly.number(share.cautious(), 2));
    return Optional.of(
        share.apart(group.fitted().rate())
            ? expected + " These records are too far from it for the one to help the other."
            : expected + " " + together(share));
  }

  private String together(TypicalShare share) {
    return String.format(
        Locale.ROOT,
        "With that as prior (a Gamma law of the rate, %s) the best guess is %s, between %s.",
        yearly.range(share.prior().percentile(0.05), share.prior().percentile(0.95)),
        yearly.told(share.posterior().mean()),
        yearly
            .range(share.posterior().percentile(0.05), share.posterior().percentile(0.95))
            .replaceFirst(" to ", " and "));
  }

  /** Whether older drives fail more. */
  Optional<String> ageing(Fitted fitted) {
    if (fitted.weibull().isEmpty() || fitted.lives().failures() < 2) {
      return Optional.empty();
    }
    WeibullFit fit = fitted.weibull().get();
    String shape =
        String.format(
            Locale.ROOT,
            "Weibull shape %s, %s to %s",
            Yearly.number(fit.shape().value(), 2),
            Yearly.number(fit.shape().low(), 2),
            Yearly.number(fit.shape().high(), 2));
    if (fit.shape().low() > 1) {
      return Optional.of("Older drives fail more (" + shape + "; 1 would be no difference).");
    }
    return Optional.of(
        fit.shape().high() < 1
            ? "Younger drives fail more (" + shape + "; 1 would be no difference)."
            : "Whether older drives fail more these records do not say ("
                + shape
                + "; 1 is no difference).");
  }

  /** What to keep in mind of these records. */
  String caution(Fitted fitted) {
    StringBuilder words = new StringBuilder();
    if (fitted.lives().between()) {
      words.append(
          "Some failures were found at checks: when between two checks is not known, so the curve"
              + " is the likeliest one (Turnbull's), without an interval. ");
    }
    if (fitted.lives().enteredLate()) {
      words.append(
          "Drives that ran before their records began count from then on: those that had failed by"
              + " then are in no record. ");
    }
    return words
        .append("Nothing is known of ages above ")
        .append(age(fitted.lives().oldest()))
        .append(" nor of other models, and a few drives of one batch may share a fault.")
        .toString();
  }

  /** Time at risk, in years of drives. */
  String driveYears(Records records) {
    double years = records.timeAtRisk() / unit.year();
    return Yearly.number(years, 3) + (years == 1 ? " drive-year" : " drive-years");
  }

  /** An age in words. */
  String age(double age) {
    return Spans.span(unit.toHours(age));
  }

  /** The chance to fail within a year, after a rate with its interval. */
  Estimate chance(Estimate rate) {
    return new Estimate(
        yearly.chance(rate.value()),
        yearly.chance(rate.low()),
        yearly.chance(rate.high()),
        rate.seen());
  }

  /** The chance of a year as few failures as these give it. */
  Estimate chance(Records records) {
    return chance(EventRates.of((double) records.failures(), records.timeAtRisk(), confidence));
  }

  private static String count(long n, String one, String many) {
    return String.format(Locale.ROOT, "%,d %s", n, n == 1 ? one : many);
  }
}
