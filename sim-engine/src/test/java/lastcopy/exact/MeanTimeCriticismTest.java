package lastcopy.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import lastcopy.law.Exponential;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * What Greenan, Plank, Wylie, "Mean time to meaningless", HotStorage 2010, hold against 1 −
 * e^(−t/MTTDL), shown as differences from exact answers. Nothing here tests the simulation.
 */
class MeanTimeCriticismTest {

  private static final double YEAR = 8_760;

  /** Repair fast against lives: a little too much, since the chain starts with both good. */
  @Test
  void overstatesTheFirstYearsALittle() {
    ParityGroup pair = new ParityGroup(2, 1, 1e-6, 1.0 / 24);
    double formula = -Math.expm1(-5 * YEAR / pair.meanTimeToLoss());
    // Computed with scipy: 1 − R(43,800 h).
    assertThat(pair.lossBy(5 * YEAR)).isCloseTo(2.10109459908e-6, Percentage.withPercentage(1e-8));
    assertThat(formula / pair.lossBy(5 * YEAR)).isBetween(1.0001, 1.001);
  }

  /** A mirror that nobody watches at 2 %/year: 75 years on average, 34 times too much in a year. */
  @Test
  void overstatesAnUnwatchedMirrorALot() {
    double rate = 0.02 / YEAR;
    ParityGroup mirror = new ParityGroup(2, 1, rate, 0);
    assertThat(mirror.meanTimeToLoss() / YEAR).isCloseTo(75, within(1e-9));
    double formula = -Math.expm1(-YEAR / mirror.meanTimeToLoss());
    double byHand = Math.pow(-Math.expm1(-0.02), 2);
    assertThat(mirror.lossBy(YEAR)).isCloseTo(byHand, Percentage.withPercentage(1e-8));
    assertThat(formula / byHand).isCloseTo(33.8, within(0.1));
  }

  /**
   * Lives that wear: the mean of Weibull(1.12, 461,386 h) is 442,626 h, and a constant hazard of
   * that mean overstates the first year by two thirds.
   */
  @Test
  void missesTheAgeOfDrives() {
    Law life = new Weibull(1.12, 461_386, 0);
    double exact = new KOutOfN(1, 0, life, 0).lossBy(YEAR);
    double constant = new KOutOfN(1, 0, new Exponential(442_625.54), 0).lossBy(YEAR);
    assertThat(constant / exact).isCloseTo(1.67, within(0.01));
  }

  /**
   * The formula gives 36,162 years and 0.2765 double failures of 1,000 groups in ten years, Elerath
   * and Pecht 2 to 1,500 times as many: defects that a scrub finds make it some 500 times.
   */
  @Test
  void missesLatentDefects() {
    double mean = ClassicFormulas.chen(461_386, 12, 8, 8);
    assertThat(mean / YEAR).isCloseTo(36_162, within(0.5));
    double formula = 10 * YEAR / mean;
    assertThat(1_000 * formula).isCloseTo(0.2765, within(1e-4));
    ScrubbedGroup group =
        new ScrubbedGroup(
            8,
            new Weibull(1.12, 461_386, 0),
            new Weibull(2, 12, 6),
            9_259,
            Optional.of(new Weibull(3, 168, 6)));
    assertThat(group.expectedLosses(10 * YEAR, 7_300) / formula).isBetween(400.0, 600.0);
  }
}
