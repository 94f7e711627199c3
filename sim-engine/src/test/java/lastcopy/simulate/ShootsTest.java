package lastcopy.simulate;

import static lastcopy.simulate.Agreement.agrees;
import static lastcopy.simulate.Agreement.simulate;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastcopy.experiment.LayoutResult;
import lastcopy.law.Exponential;
import lastcopy.law.Never;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shoots that come in time, against arithmetic on a constant hazard. */
class ShootsTest {

  private static final double WEEK = Units.HOURS_PER_WEEK;
  private static final int WEEKS = 52;
  private static final double HORIZON = WEEKS * WEEK + 100;

  /**
   * A shoot every week, carried away at the next 08:00 in no time: each is bare for 8 h, so P(any)
   * = 1 − e^(−8λ·52) and E(shoots) = 52(1 − e^(−8λ)). Red if footage already across is counted as
   * lost.
   */
  @Test
  void weeklyShootsWithANightlyFeed() {
    double hazard = 1.0 / 500;
    LayoutResult result = simulate(weekly(hazard, Units.TB, CopyMaker.AT_ONCE));
    double share = -Math.expm1(-8 * hazard);
    agrees(result.anyLoss(), -Math.expm1(-8 * hazard * WEEKS));
    agrees(result.shootsLost(), WEEKS * share);
    agrees(result.shootsHit(), WEEKS * share);
    agrees(result.lossEvents(), WEEKS * share);
    agrees(result.bytesLost(), WEEKS * share * Units.TB);
    assertThat(result.everythingLost().seen()).isFalse();
  }

  /**
   * The same over a link that needs 10 h for a shoot: after 8 h it drains evenly. Of a shoot is
   * lost 1 − e^(−8λ) + e^(−8λ)(1 − (1 − e^(−10λ))/(10λ)) on average. Red if a run that is cut loses
   * what crossed, or counts as complete.
   */
  @Test
  void whatHasCrossedStays() {
    double hazard = 1.0 / 500;
    double rate = Units.TB / (10 * Units.SECONDS_PER_HOUR);
    LayoutResult result = simulate(weekly(hazard, Units.TB, rate));
    double draining = 1 + Math.expm1(-10 * hazard) / (10 * hazard);
    double share = -Math.expm1(-8 * hazard) + Math.exp(-8 * hazard) * draining;
    agrees(result.anyLoss(), -Math.expm1(-18 * hazard * WEEKS));
    agrees(result.shootsHit(), -Math.expm1(-18 * hazard) * WEEKS);
    agrees(result.shootsLost(), WEEKS * share);
    agrees(result.bytesLost(), WEEKS * share * Units.TB);
  }

  /**
   * A shoot each week and runs at the same instants: bare for a whole day. The feed stands idle
   * when the shoot comes; red if the offload wakes it for a run due at that very instant.
   */
  @Test
  void idleFeedDoesNotCarryTheShootOfTheInstant() {
    double hazard = 1.0 / 1_500;
    LayoutResult result = simulate(atTheSameInstant(hazard, WEEK, HORIZON));
    agrees(result.anyLoss(), -Math.expm1(-24 * hazard * WEEKS));
  }

  /**
   * A shoot each day and runs at the same instants: the run carries yesterday's shoot, so that from
   * the first on one is always bare. Here the run is due already when the shoot comes; red if
   * offloads go before runs in the order at one instant.
   */
  @Test
  void dueRunDoesNotCarryTheShootOfTheInstant() {
    double hazard = 1.0 / 3_000;
    int days = 100;
    LayoutResult result = simulate(atTheSameInstant(hazard, 24, days * 24 + 12));
    agrees(result.anyLoss(), -Math.expm1(-hazard * ((days - 1) * 24 + 12)));
    double whole = -Math.expm1(-24 * hazard);
    agrees(result.shootsLost(), (days - 1) * whole - Math.expm1(-12 * hazard));
  }

  private static Studio atTheSameInstant(double hazard, double everyHours, double horizon) {
    return Studios.of(
        horizon,
        Studios.shooting(Units.TB, everyHours, Units.TB, 0),
        Studios.layout(
            "only",
            CopyMaker.single("main", new Exponential(1 / hazard)),
            CopyMaker.single("far", new Never()).nightly("main", 0, CopyMaker.AT_ONCE)));
  }

  /**
   * One drive alone: what was shot at t is lost if it fails in (t, H], so E(bytes) = Σ x(t)(1 −
   * e^(−λ(H−t))); and each gap between shoots has an event if it has a failure. Red if growth is
   * left out, if on-hand footage is, or if a second failure loses the first's footage again.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5})
  void bytesOfOneDrive(double growth) {
    double hazard = 1.0 / 6_000;
    double horizon = 2 * Units.HOURS_PER_YEAR + 60;
    Footage footage = Studios.shooting(3 * Units.TB, WEEK, 0.05 * Units.TB, growth);
    LayoutResult result =
        simulate(
            Studios.of(
                horizon,
                footage,
                Studios.layout("only", CopyMaker.single("main", new Exponential(1 / hazard)))));
    agrees(result.anyLoss(), -Math.expm1(-hazard * horizon));
    agrees(result.bytesLost(), expectedBytes(footage, hazard, horizon));
    agrees(result.lossEvents(), expectedEvents(hazard, horizon));
    assertThat(result.everythingLost()).isEqualTo(result.anyLoss());
  }

  /** Shares add to 1, and one cause alone has them all. */
  @Test
  void causesOfOneDrive() {
    LayoutResult result =
        simulate(Studios.archive(5_000, CopyMaker.single("main", new Exponential(6_000))), 10_000);
    assertThat(result.causes()).hasSize(1);
    assertThat(result.causes().get(0).share().value()).isCloseTo(1, within(1e-12));
    assertThat(result.causes().get(0).shareOfBytes()).isCloseTo(1, within(1e-12));
  }

  private static Studio weekly(double hazard, double bytes, double linkBytesPerSecond) {
    return Studios.of(
        HORIZON,
        Studios.shooting(Units.TB, WEEK, bytes, 0),
        Studios.layout(
            "only",
            CopyMaker.single("main", new Exponential(1 / hazard)),
            CopyMaker.single("far", new Never()).nightly("main", 8, linkBytesPerSecond)));
  }

  private static double expectedBytes(Footage footage, double hazard, double horizon) {
    double sum = footage.onHandBytes() * -Math.expm1(-hazard * horizon);
    for (double t = WEEK; t <= horizon; t += WEEK) {
      double grown = Math.pow(1 + footage.growthPerYear(), t / Units.HOURS_PER_YEAR);
      sum += footage.shoots().sizeBytes() * grown * -Math.expm1(-hazard * (horizon - t));
    }
    return sum;
  }

  private static double expectedEvents(double hazard, double horizon) {
    double sum = 0;
    for (double t = 0; t <= horizon; t += WEEK) {
      sum -= Math.expm1(-hazard * Math.min(WEEK, horizon - t));
    }
    return sum;
  }
}
