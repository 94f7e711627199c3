package lastcopy.oracle;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Studio;
import lastcopy.simulate.Simulation;

/**
 * Means with their standard errors, by name, of the first layout of a studio: what the engine says
 * and what plain histories of this package say.
 */
final class ComparedMeans {

  /** The normal distribution within one standard deviation: half an interval is the error. */
  private static final double ONE_DEVIATION = 0.682_689_492_137_086;

  private static final double DAYS_A_YEAR = 365;

  /**
   * A mean.
   *
   * @param value the mean
   * @param error its standard error
   * @param count how many amounts it rests on, by their weight in the sum (Kish: sum²/sum of
   *     squares)
   */
  record Mean(double value, double error, double count) {}

  private ComparedMeans() {}

  /** What plain histories of the engine say. */
  static LayoutResult resultOf(Studio studio, long histories, long seed) {
    return Simulation.run(
            studio,
            new Settings(
                seed,
                ONE_DEVIATION,
                1e-12,
                OptionalLong.of(histories),
                Optional.empty(),
                2,
                Method.PLAIN),
            Progress.SILENT)
        .layouts()
        .get(0);
  }

  static Map<String, Mean> ofEngine(Studio studio, long histories, long seed) {
    LayoutResult result = resultOf(studio, histories, seed);
    Map<String, Mean> figures = new LinkedHashMap<>();
    figures.put("any loss", mean(result.anyLoss()));
    figures.put("everything", mean(result.everythingLost()));
    figures.put("events", mean(result.lossEvents()));
    figures.put("bytes", mean(result.bytesLost()));
    figures.put("bare days", mean(result.exposure().singleCopyDays()));
    figures.put("fragile days", mean(result.exposure().noRedundancyDays()));
    figures.put("days away", mean(result.exposure().noWorkingCopyDays()));
    figures.put("refilling days", mean(result.exposure().refillingDays()));
    figures.put("most bare bytes", mean(result.exposure().largestSingleCopyBytes()));
    return figures;
  }

  private static Mean mean(Estimate estimate) {
    return new Mean(estimate.value(), (estimate.high() - estimate.low()) / 2, Double.NaN);
  }

  static Map<String, Mean> ofOracle(Studio studio, long histories, long firstSeed) {
    Outcome[] outcomes =
        LongStream.range(firstSeed, firstSeed + histories)
            .parallel()
            .mapToObj(seed -> World.live(studio, studio.layouts().get(0), seed))
            .toArray(Outcome[]::new);
    double toDays = DAYS_A_YEAR / studio.horizonHours();
    Map<String, Mean> figures = new LinkedHashMap<>();
    figures.put("any loss", mean(outcomes, o -> o.events > 0 ? 1 : 0));
    figures.put("everything", mean(outcomes, o -> o.everything ? 1 : 0));
    figures.put("events", mean(outcomes, o -> o.events));
    figures.put("bytes", mean(outcomes, o -> o.bytes));
    figures.put("bare days", mean(outcomes, o -> o.bareHours * toDays));
    figures.put("fragile days", mean(outcomes, o -> o.fragileHours * toDays));
    figures.put("days away", mean(outcomes, o -> o.awayHours * toDays));
    figures.put("refilling days", mean(outcomes, o -> o.refillHours * toDays));
    figures.put("most bare bytes", mean(outcomes, o -> o.mostBare));
    return figures;
  }

  private static Mean mean(Outcome[] outcomes, ToDoubleFunction<Outcome> figure) {
    double sum = 0;
    double squares = 0;
    for (Outcome outcome : outcomes) {
      double x = figure.applyAsDouble(outcome);
      sum += x;
      squares += x * x;
    }
    int n = outcomes.length;
    double mean = sum / n;
    double variance = Math.max(0, squares / n - mean * mean);
    return new Mean(mean, Math.sqrt(variance / (n - 1)), sum == 0 ? 0 : sum / squares * sum);
  }
}
