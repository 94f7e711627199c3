package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalLong;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Studio;

/**
 * Simulates for a test and holds the estimate against an exact answer.
 *
 * <p>Every statistical assertion has the null hypothesis "the engine's expectation is the exact
 * answer" and is red when the exact answer is outside of the engine's own interval of confidence 1
 * − 1e-6: so the alarm rate is 1e-6 for each, under 1e-4 for the suite. An error shows surely (with
 * a chance over 99 %) from about 7.3 standard errors on: with N histories at p that is
 * 7.3·√((1−p)/(pN)) of p. The seed is fixed and was never chosen.
 */
public final class Agreement {

  public static final double ALARM = 1e-6;
  static final long SEED = 1;

  /** Histories of an ordinary check: an error of 1.7 % at p = 0.5 and of 5 % at p = 0.1 shows. */
  static final long HISTORIES = 200_000;

  /** Histories where they take long: an error of 3.4 % at p = 0.5 and of 10 % at p = 0.1 shows. */
  static final long FEWER = 50_000;

  private Agreement() {}

  static Settings settings(long seed, double confidence, long histories, int threads) {
    // A precision that is never reached, so that the number of histories is what was asked for.
    return new Settings(
        seed,
        confidence,
        1e-12,
        OptionalLong.of(histories),
        Optional.empty(),
        threads,
        Method.PLAIN);
  }

  static LayoutResult simulate(Studio studio) {
    return simulate(studio, HISTORIES);
  }

  /** The result of the first layout by so many biased histories. */
  static LayoutResult rarely(Studio studio, long histories) {
    Settings settings =
        new Settings(
            SEED, 0.95, 1e-12, OptionalLong.of(histories), Optional.empty(), 2, Method.RARE);
    return Simulation.run(studio, settings, Progress.SILENT).layouts().get(0);
  }

  /** The result of the first layout. */
  static LayoutResult simulate(Studio studio, long histories) {
    return Simulation.run(studio, settings(SEED, 1 - ALARM, histories, 2), Progress.SILENT)
        .layouts()
        .get(0);
  }

  public static void agrees(Estimate estimate, double exact) {
    assertThat(exact)
        .as("exact answer against %s", estimate)
        .isBetween(estimate.low(), estimate.high());
    // An interval so wide that it cannot disagree proves nothing.
    assertThat(estimate.high() - estimate.low()).as("width of %s", estimate).isLessThan(exact);
  }

  /**
   * The same for a mean of clips, beside which the upper end is that of a loss of all, never seen:
   * it is left out, since an interval of what was seen is symmetric in the logarithm.
   */
  static void agreesAsFarAsSeen(Estimate estimate, double exact) {
    double high = estimate.value() * (estimate.value() / estimate.low());
    assertThat(estimate.high()).isGreaterThan(high);
    agrees(new Estimate(estimate.value(), estimate.low(), high, true), exact);
  }

  /** Two studios of one layout lose the very same under one seed: nothing is statistical here. */
  static void sameLosses(Studio one, Studio other) {
    LayoutResult was = simulate(one, 20_000);
    LayoutResult is = simulate(other, 20_000);
    assertThat(was.anyLoss().seen()).isTrue();
    assertThat(is.anyLoss()).isEqualTo(was.anyLoss());
    assertThat(is.curve()).isEqualTo(was.curve());
    assertThat(is.lossEvents()).isEqualTo(was.lossEvents());
    assertThat(is.bytesLost()).isEqualTo(was.bytesLost());
    assertThat(is.exceedanceShoots()).isEqualTo(was.exceedanceShoots());
  }

  /** Not one loss in many histories. */
  static void neverLoses(Studio studio) {
    assertThat(simulate(studio, 20_000).anyLoss().seen()).isFalse();
  }
}
