package lastcopy.simulate;

import static lastcopy.simulate.Agreement.agrees;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Progress;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Delay;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.apache.commons.math3.special.Gamma;
import org.junit.jupiter.api.Test;

/**
 * The expected number of replacements that are paid by the horizon, m(t) = Σ P(the k-th has arrived
 * by t), in closed form or by the renewal equation: Cox, Renewal Theory, Methuen 1962, sections 3.1
 * and 4.1. A drive fails, is noticed and replaced after a fixed time d, and begins anew.
 *
 * <p>Sabotage seen red: what has not arrived by the horizon is paid, a box is bought for each copy
 * in it.
 *
 * <p>20,000 histories: an error of 1 % of the number of replacements shows at a mean of 4.
 */
class RenewalCostTest {

  private static final double PRICE = 100;
  private static final long HISTORIES = 20_000;
  private static final double LIFE = 900;
  private static final double DELAY = 150;

  private static DriveModel model(Law life) {
    return DriveModel.builder("drive", Units.TB).price(PRICE).fails(life).build();
  }

  private static CopyBuilder copy(String id, Arrangement arrangement, int drives, Law life) {
    return Copy.builder(id)
        .on(
            Medium.DriveSet.builder(arrangement, drives)
                .of(model(life))
                .rebuild(new Fixed(0))
                .build())
        .noticed(new Delay.Lawful(new Fixed(DELAY)));
  }

  private static Studio studio(double hours, Layout... layouts) {
    var studio =
        Studio.builder("test", hours / Units.HOURS_PER_YEAR).footage(Studios.onHand(Units.TB / 2));
    List.of(layouts).forEach(studio::layout);
    return studio.build();
  }

  private static Layout layout(String id, CopyBuilder... copies) {
    var layout = Layout.builder(id);
    for (CopyBuilder each : copies) {
      layout.copy(each.build());
    }
    return layout.build();
  }

  private static Cost cost(double hours, CopyBuilder... copies) {
    return Agreement.simulate(studio(hours, layout("only", copies)), HISTORIES)
        .cost()
        .orElseThrow();
  }

  /** Σ P(Gamma(k) &lt;= (t − k·d)/mean), the Erlang distribution. */
  private static double renewals(double mean, double delay, double t) {
    double sum = 0;
    for (int k = 1; k * delay < t; k++) {
      sum += Gamma.regularizedGammaP(k, (t - k * delay) / mean);
    }
    return sum;
  }

  /** Red if a replacement is paid at the failure (26 standard errors) or without the horizon. */
  @Test
  void exponentialLives() {
    double exact = PRICE * (1 + renewals(LIFE, DELAY, 4_000));
    agrees(cost(4_000, copy("main", Arrangement.SINGLE, 1, new Exponential(LIFE))).total(), exact);
  }

  /** Within a set that survives: drives go by themselves, each its own renewal process. */
  @Test
  void drivesOfASetThatSurvives() {
    double exact = PRICE * 9 * (1 + renewals(9_000, DELAY, 4_000));
    CopyBuilder set = copy("main", Arrangement.MIRROR, 9, new Exponential(9_000));
    agrees(cost(4_000, set).total(), exact);
  }

  /** Times at which nothing is replaced without being noticed: a Poisson process, rate 1/mean. */
  @Test
  void percentilesAreThoseOfTheirDistribution() {
    Cost cost =
        cost(
            3_600,
            copy("main", Arrangement.SINGLE, 1, new Exponential(1_000))
                .noticed(new Delay.Lawful(new Fixed(0))));
    PoissonDistribution count = new PoissonDistribution(3.6);
    // None of these is within 100 standard errors of the next amount.
    assertThat(cost.p5()).isEqualTo(PRICE * (1 + count.inverseCumulativeProbability(0.05)));
    assertThat(cost.p50()).isEqualTo(PRICE * (1 + count.inverseCumulativeProbability(0.5)));
    assertThat(cost.p95()).isEqualTo(PRICE * (1 + count.inverseCumulativeProbability(0.95)));
    agrees(cost.total(), PRICE * 4.6);
  }

  /**
   * The renewal equation m(t) = F(t) + ∫ m(t − x) dF(x), F that of a life and the delay, by the
   * midpoint rule for Riemann-Stieltjes integrals of Xie, Communications in Statistics - Simulation
   * and Computation 18(1), 1989.
   */
  @Test
  void weibullLives() {
    Law life = new Weibull(2.2, LIFE, 0);
    double exact = PRICE * (1 + renewals(x -> 1 - Math.exp(-life.cumulativeHazard(x)), 4_000));
    agrees(cost(4_000, copy("main", Arrangement.SINGLE, 1, life)).total(), exact);
  }

  private static double renewals(DoubleUnaryOperator lives, double t) {
    int n = 8_000;
    double h = t / n;
    DoubleUnaryOperator f = x -> lives.applyAsDouble(Math.max(0, x - DELAY));
    double[] m = new double[n + 1];
    for (int i = 1; i <= n; i++) {
      double sum = f.applyAsDouble(i * h) - f.applyAsDouble(h / 2) * m[i - 1];
      for (int j = 1; j < i; j++) {
        double middle = f.applyAsDouble((i - j + 0.5) * h);
        sum += middle * (m[j] - m[j - 1]);
      }
      m[i] = sum / (1 - f.applyAsDouble(h / 2));
    }
    return m[n];
  }

  /** The method by itself, against the closed form. */
  @Test
  void theRenewalEquationAgreesWithTheClosedForm() {
    assertThat(renewals(x -> 1 - Math.exp(-x / LIFE), 4_000))
        .isCloseTo(renewals(LIFE, DELAY, 4_000), within(1e-4));
  }

  /** What takes two copies in one box destroys one box. Red if it is bought for each of them. */
  @Test
  void aBoxIsBoughtOnceForAllCopiesInIt() {
    Box box =
        new Box(
            "box",
            new Rate(1 / 3_000.0),
            OptionalDouble.of(40),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    Place studio = Place.of("studio", new Mishap("fire", new Rate(1 / 1_500.0), 1));
    Feed feed = Feed.from("main").every(24).link(Units.TB).build();
    Cost cost =
        cost(
            4_000,
            copy("main", Arrangement.MIRROR, 2, new Never()).in(box).at(studio),
            copy("other", Arrangement.SINGLE, 1, new Never()).in(box).at(studio).fed(feed));
    double times = 1 + renewals(1_000, DELAY, 4_000);
    agrees(cost.total(), (3 * PRICE + 40) * times);
    assertThat(cost.byKind().get(1).mean() * 7.5)
        .isCloseTo(cost.byKind().get(0).mean(), within(1e-6));
  }

  /** A service that comes back empty is paid for what it holds. */
  @Test
  void aServiceThatIsGoneIsNotPaid() {
    CopyBuilder cloud =
        Copy.builder("cloud")
            .on(Medium.Service.of(new Rate(1 / LIFE), OptionalDouble.of(1_460)))
            .noticed(new Delay.Lawful(new Fixed(DELAY)))
            .fed(Feed.from("main").continuous().link(Units.TB).build());
    Cost cost =
        Agreement.simulate(
                studio(
                    4_000, layout("only", copy("main", Arrangement.SINGLE, 1, new Never()), cloud)),
                HISTORIES)
            .cost()
            .orElseThrow();
    // 0.5 TB cost 1 an hour; each replacement has taken 150 h, one that is on its way what passed.
    double gone = 0;
    for (double h = 0.5; h < 4_000; h++) {
      gone += renewalsOfFailure(h) - renewals(LIFE, DELAY, h);
    }
    agrees(cost.total(), PRICE + 4_000 - gone);
  }

  /** Failures by t: the first without a delay before it. */
  private static double renewalsOfFailure(double t) {
    double sum = 0;
    for (int k = 1; (k - 1) * DELAY < t; k++) {
      sum += Gamma.regularizedGammaP(k, (t - (k - 1) * DELAY) / LIFE);
    }
    return sum;
  }

  /**
   * Two layouts share the luck of the drive that both have: the difference of their cost is known
   * far better than either. Red if the histories are not paired.
   */
  @Test
  void theDifferenceOfTwoLayoutsIsPaired() {
    Law life = new Exponential(LIFE);
    Feed feed = Feed.from("main").every(24).link(Units.TB).build();
    Comparison result =
        Simulation.run(
            studio(
                4_000,
                layout("one", copy("main", Arrangement.SINGLE, 1, life)),
                layout(
                    "two",
                    copy("main", Arrangement.SINGLE, 1, life),
                    copy("far", Arrangement.SINGLE, 1, new Exponential(90_000)).fed(feed))),
            Agreement.settings(Agreement.SEED, 1 - Agreement.ALARM, HISTORIES, 2),
            Progress.SILENT);
    Estimate difference = result.pairs().get(0).costDifference().orElseThrow();
    LayoutResult one = result.layouts().get(0);
    LayoutResult two = result.layouts().get(1);
    double exact = PRICE * (1 + renewals(90_000, DELAY, 4_000));
    assertThat(-exact).isBetween(difference.low(), difference.high());
    assertThat(difference.value())
        .isCloseTo(
            one.cost().orElseThrow().total().value() - two.cost().orElseThrow().total().value(),
            within(1e-9));
    Estimate total = one.cost().orElseThrow().total();
    assertThat(difference.high() - difference.low()).isLessThan((total.high() - total.low()) / 5);
  }
}
