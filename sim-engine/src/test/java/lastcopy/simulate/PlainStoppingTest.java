package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Plain runs at the instant at which they stop for their precision, through the engine: a service
 * that loses all that it holds by a Poisson process of rate λ, back at once.
 *
 * <p>Exact: the chance of a loss by t is 1 − exp(−λt); what was shot at a is lost with 1 − exp(−λ(H
 * − a)), which sums to the mean bytes; at least so much is lost if the last loss comes after that
 * much was shot, so with 1 − exp(−λ(H − t)); a loss event needs something shot since the last, so
 * there is one in each of ten intervals with 1 − exp(−λH/10). Null hypotheses, alarm rate 1e-6
 * each: intervals hold in 94 to 96.5 % of the seeds, and of the mean, whose unseen tail belongs to
 * it, in at least 94 %; no estimate is low by more than five of its standard errors. Sabotage:
 * intervals at 93 %.
 */
class PlainStoppingTest {

  private static final double HOURS = 5 * Units.HOURS_PER_YEAR;
  private static final double EVERY = HOURS / 10;
  private static final double ON_HAND = Units.TB;
  private static final double SIZE = Units.TB;

  @ParameterizedTest
  @CsvSource({".05,.2,300"})
  void everyFigureHoldsAtTheStop(double losses, double precision, int seeds) {
    holds(losses, precision, seeds);
  }

  @Tag("slow")
  @ParameterizedTest
  @CsvSource({
    ".3,.2,6000",
    ".05,.2,6000",
    ".002,.2,3000",
    ".3,.05,6000",
    ".05,.05,4000",
    ".002,.05,400",
    ".3,.02,3000",
    ".05,.02,1000"
  })
  void everyFigureHoldsAtTheStopOverManySeeds(double losses, double precision, int seeds) {
    holds(losses, precision, seeds);
  }

  private static void holds(double losses, double precision, int seeds) {
    double rate = losses / HOURS;
    Map<String, Score> scores = new TreeMap<>();
    for (int seed = 1; seed <= seeds; seed++) {
      LayoutResult result = stopped(rate, precision, seed);
      assertThat(result.precisionReached()).isTrue();
      add(scores, "any", result.anyLoss(), by(rate, HOURS));
      add(scores, "everything", result.everythingLost(), by(rate, HOURS));
      add(scores, "half of the time", at(result.curve(), 2.5), by(rate, HOURS / 2));
      add(scores, "events", result.lossEvents(), 10 * by(rate, EVERY));
      add(scores, "mean bytes", result.bytesLost(), bytes(rate));
      add(scores, "most of it", at(result.exceedanceShoots(), 4), by(rate, HOURS - 3 * EVERY));
    }
    scores.forEach((figure, score) -> score.check(figure + " at " + precision, seeds));
  }

  private static LayoutResult stopped(double rate, double precision, int seed) {
    Footage footage = Studios.shooting(ON_HAND, EVERY, SIZE, 0);
    CopyMaker service = CopyMaker.service("main", new Rate(rate));
    Studio studio = Studios.of(HOURS, footage, Studios.layout("only", service));
    Settings settings =
        new Settings(seed, .95, precision, OptionalLong.empty(), Optional.empty(), 2, Method.PLAIN);
    return Simulation.run(studio, settings, Progress.SILENT).layouts().get(0);
  }

  private static double by(double rate, double hours) {
    return -Math.expm1(-rate * hours);
  }

  private static double bytes(double rate) {
    double sum = ON_HAND * by(rate, HOURS);
    for (int k = 1; k <= 10; k++) {
      sum += SIZE * by(rate, HOURS - k * EVERY);
    }
    return sum;
  }

  private static Estimate at(List<Point> points, double at) {
    return points.stream().filter(p -> p.at() == at).findFirst().orElseThrow().chance();
  }

  private static void add(Map<String, Score> scores, String figure, Estimate seen, double exact) {
    scores.computeIfAbsent(figure, key -> new Score()).add(seen, exact);
  }

  private static final class Score {
    private int held;
    private double sum;
    private double squares;

    void add(Estimate estimate, double exact) {
      held += estimate.low() <= exact && exact <= estimate.high() ? 1 : 0;
      double off = estimate.value() / exact - 1;
      sum += off;
      squares += off * off;
    }

    void check(String figure, int seeds) {
      int least = BinomialDistribution.of(seeds, 0.94).inverseCumulativeProbability(1e-6);
      int most = BinomialDistribution.of(seeds, 0.965).inverseSurvivalProbability(1e-6);
      assertThat(held)
          .as("%s: intervals that hold", figure)
          .isBetween(least, figure.startsWith("mean") ? seeds : most);
      assertThat(sum / seeds)
          .as("%s: mean over exact less 1", figure)
          .isGreaterThan(-5 * Math.sqrt(squares) / seeds);
    }
  }
}
