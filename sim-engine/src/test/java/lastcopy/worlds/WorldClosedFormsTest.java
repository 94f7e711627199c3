package lastcopy.worlds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import lastcopy.exact.MarkovChain;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Unknown;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Studios;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.junit.jupiter.api.Test;

/**
 * Rates that are not known against closed forms and quadrature. Null hypothesis: each interval of
 * confidence 1 − 1e-6 holds the exact value; and it is narrow, so that a wrong one is found.
 * Sabotage seen red: see each test.
 */
class WorldClosedFormsTest {

  private static final double YEAR = 8_760;
  private static final double YEARS = 5;
  private static final double[] PARTS = {0.05, 0.5, 0.95};

  private static Studio drive(double perYear) {
    return Studios.archive(YEARS * YEAR, CopyMaker.single("main", new Exponential(YEAR / perYear)));
  }

  private static double loses(double perYear) {
    return -Math.expm1(-perYear * YEARS);
  }

  private static Estimate[] percentiles(Worlds.Spread spread) {
    Worlds.Percentiles all = spread.percentiles().orElseThrow();
    return new Estimate[] {all.p5(), all.p50(), all.p95()};
  }

  private static void holds(Estimate estimate, double exact, double narrow) {
    assertThat(exact).isBetween(estimate.low(), estimate.high());
    assertThat(estimate.relativeHalfWidth()).isLessThan(narrow);
  }

  private static void check(Comparison result, double mean, double[] exact, double narrow) {
    LayoutResult layout = result.layouts().get(0);
    Worlds.OfLayout worlds = result.worlds().orElseThrow().layouts().get(0);
    holds(layout.anyLoss(), mean, narrow);
    assertThat(worlds.anyLoss().mean()).isEqualTo(layout.anyLoss());
    for (int i = 0; i < PARTS.length; i++) {
      holds(percentiles(worlds.anyLoss())[i], exact[i], 5 * narrow);
    }
    Worlds.CurvePoint last = worlds.curve().get(worlds.curve().size() - 1);
    assertThat(last.p50()).isEqualTo(percentiles(worlds.anyLoss())[1].value());
    assertThat(layout.curve().get(layout.curve().size() - 1).chance().value())
        .isEqualTo(layout.anyLoss().value());
  }

  /**
   * A lone drive of constant hazard, lognormal: the chance rises with it, so percentiles are those
   * of the hazard. Red where the ends are taken for the 2.5th and 97.5th percentile, and where
   * percentiles are those of the worlds' raw frequencies.
   */
  @Test
  void aLoneDriveOfLognormalHazard() {
    DoubleUnaryOperator hazard = z -> Unknown.between(0.01, 0.06, z);
    PossibleStudios studios = Doubtful.studios(1, z -> drive(hazard.applyAsDouble(z[0])));
    double[] exact = {loses(0.01), loses(Math.sqrt(0.0006)), loses(0.06)};
    Comparison result = Doubtful.run(studios, 0.05);
    check(result, Doubtful.mean(z -> loses(hazard.applyAsDouble(z))), exact, 0.05);
    Worlds worlds = result.worlds().orElseThrow();
    assertThat(worlds.unknowns().get(0).shares().get(0).share().value()).isGreaterThan(0.999);
    Worlds.CurvePoint first = worlds.layouts().get(0).curve().get(3); // a year
    assertThat(first.p5())
        .isCloseTo(-Math.expm1(-0.01), org.assertj.core.data.Percentage.withPercentage(10));
    assertThat(first.p95())
        .isCloseTo(-Math.expm1(-0.06), org.assertj.core.data.Percentage.withPercentage(10));
  }

  /**
   * Gamma mixing: with hazards of shape k and mean m the mean chance is 1 − (1 + m·t/k)^−k. The
   * surface is not linear in the deviate. Red where only linear surfaces are tried.
   */
  @Test
  void aLoneDriveOfGammaHazard() {
    GammaDistribution hazards = GammaDistribution.of(2, 0.02);
    DoubleUnaryOperator hazard =
        z -> hazards.inverseCumulativeProbability(Doubtful.NORMAL.cumulativeProbability(z));
    PossibleStudios studios = Doubtful.studios(1, z -> drive(hazard.applyAsDouble(z[0])));
    double[] exact = new double[PARTS.length];
    for (int i = 0; i < exact.length; i++) {
      exact[i] = loses(hazards.inverseCumulativeProbability(PARTS[i]));
    }
    check(Doubtful.run(studios, 0.03), 1 - Math.pow(1 + 0.02 * YEARS, -2), exact, 0.03);
  }

  /** A drive and fires at its place, both not known: by quadrature over two deviates. */
  @Test
  void twoRanges() {
    DoubleUnaryOperator fails = z -> Unknown.between(0.01, 0.04, z);
    DoubleUnaryOperator burns = z -> Unknown.between(0.002, 0.05, z);
    PossibleStudios studios =
        Doubtful.studios(
            2,
            z ->
                Studios.archive(
                    YEARS * YEAR,
                    CopyMaker.single("main", new Exponential(YEAR / fails.applyAsDouble(z[0])))
                        .at(Studios.place("home", burns.applyAsDouble(z[1]) / YEAR, 1))));
    DoubleBinaryOperator chance = (x, y) -> loses(fails.applyAsDouble(x) + burns.applyAsDouble(y));
    double[] exact = new double[PARTS.length];
    for (int i = 0; i < exact.length; i++) {
      exact[i] = Doubtful.percentile(chance, PARTS[i]);
    }
    check(Doubtful.run(studios, 0.04), Doubtful.mean(chance), exact, 0.04);
  }

  /**
   * A mirror whose failures and repairs are not known, biased, by quadrature over its exact chain
   * (1e-6 to 1e-3 between worlds). Red where a weight takes the hazards of the world that was
   * tuned.
   */
  @Test
  void aRareMirror() {
    DoubleUnaryOperator fails = z -> Unknown.between(0.005, 0.03, z);
    DoubleUnaryOperator back = z -> Unknown.between(24, 96, z);
    PossibleStudios studios =
        Doubtful.studios(
            2,
            z ->
                Studios.archive(
                    YEARS * YEAR,
                    CopyMaker.markov(
                        "main",
                        Arrangement.MIRROR,
                        2,
                        YEAR / fails.applyAsDouble(z[0]),
                        back.applyAsDouble(z[1]))));
    DoubleBinaryOperator chance =
        (x, y) -> {
          double f = fails.applyAsDouble(x) / YEAR;
          double[] up = {2 * f, f};
          double[] down = {1 / back.applyAsDouble(y)};
          return MarkovChain.row(up, down).chance(0, 2, YEARS * YEAR);
        };
    double[] exact = new double[PARTS.length];
    for (int i = 0; i < exact.length; i++) {
      exact[i] = percentileOfProduct(chance, PARTS[i]);
    }
    Comparison result = Doubtful.run(studios, 0.1);
    assertThat(result.layouts().get(0).method()).isEqualTo(Method.RARE);
    assertThat(result.layouts().get(0).doubts()).isEmpty();
    check(result, coarse(chance), exact, 0.1);
    double sf = 2 * Math.log(6);
    double sb = Math.log(4);
    Worlds.OfUnknown first = result.worlds().orElseThrow().unknowns().get(0);
    holds(first.shares().get(0).share(), sf * sf / (sf * sf + sb * sb), 0.1);
  }

  /** The chain is slow to solve: its logarithm is all but linear, so a coarse grid will do. */
  private static double coarse(DoubleBinaryOperator chance) {
    double step = 0.25;
    double sum = 0;
    for (int i = -28; i <= 28; i++) {
      for (int j = -28; j <= 28; j++) {
        double density = Doubtful.NORMAL.density(i * step) * Doubtful.NORMAL.density(j * step);
        sum += chance.applyAsDouble(i * step, j * step) * density * step * step;
      }
    }
    return sum;
  }

  /**
   * With ln p = a + s·z in two deviates it is normal; the bend beyond is corrected at the point.
   */
  private static double percentileOfProduct(DoubleBinaryOperator chance, double part) {
    double h = 0.5;
    double z = Doubtful.NORMAL.inverseCumulativeProbability(part);
    double sx = (log(chance, h, 0) - log(chance, -h, 0)) / (2 * h);
    double sy = (log(chance, 0, h) - log(chance, 0, -h)) / (2 * h);
    double s = Math.hypot(sx, sy);
    return chance.applyAsDouble(z * sx / s, z * sy / s);
  }

  private static double log(DoubleBinaryOperator chance, double x, double y) {
    return Math.log(chance.applyAsDouble(x, y));
  }

  /** Two layouts in the same worlds: what they share cancels, and which loses less is known. */
  @Test
  void aPairSharesItsWorlds() {
    DoubleUnaryOperator first = z -> Unknown.between(0.02, 0.04, z);
    DoubleUnaryOperator second = z -> Unknown.between(0.01, 0.05, z);
    PossibleStudios studios =
        Doubtful.studios(
            2,
            z ->
                Studios.of(
                    YEARS * YEAR,
                    Studios.onHand(1e12),
                    Studios.layout(
                        "a",
                        CopyMaker.single("x", new Exponential(YEAR / first.applyAsDouble(z[0])))),
                    Studios.layout(
                        "b",
                        CopyMaker.single(
                            "y", new Exponential(YEAR / second.applyAsDouble(z[1]))))));
    Comparison result = Doubtful.run(studios, 0.04);
    // ln of the ratio of hazards is normal: P(a < b) = Φ(−mean/deviation).
    double mean = Math.log(0.02 * 0.04) / 2 - Math.log(0.01 * 0.05) / 2;
    double deviation = Math.hypot(Math.log(2), Math.log(5)) / (2 * 1.6448536269514722);
    Worlds.OfPair pair = result.worlds().orElseThrow().pairs().get(0);
    holds(pair.aLosesLess(), Doubtful.NORMAL.cumulativeProbability(-mean / deviation), 0.25);
    Comparison.Pair means = result.pairs().get(0);
    double exact =
        Doubtful.mean(z -> loses(first.applyAsDouble(z)))
            / Doubtful.mean(z -> loses(second.applyAsDouble(z)));
    assertThat(exact).isBetween(means.ratioLow().getAsDouble(), means.ratioHigh().getAsDouble());
    assertThat(means.ratioHigh().getAsDouble()).isLessThan(1.1 * exact);
  }

  /** Delays may be unknown too; a studio that is the same in all worlds has no spread. */
  @Test
  void whereWhatIsNotKnownDoesNotMatter() {
    PossibleStudios studios =
        Doubtful.studios(
            1,
            z ->
                Studios.archive(
                    YEARS * YEAR,
                    CopyMaker.single("main", new Exponential(YEAR / 0.03))
                        .arrival(new Fixed(24 * Math.exp(z[0])))));
    Comparison result = Doubtful.run(studios, 0.05);
    Estimate[] all = percentiles(result.worlds().orElseThrow().layouts().get(0).anyLoss());
    for (Estimate percentile : all) {
      holds(percentile, loses(0.03), 0.2);
    }
  }
}
