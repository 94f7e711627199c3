package lastcopy.oracle;

import static lastcopy.oracle.SmallStudios.AT_ONCE;
import static lastcopy.oracle.SmallStudios.eternal;
import static lastcopy.oracle.SmallStudios.onHand;
import static lastcopy.oracle.SmallStudios.studio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Rate;
import org.junit.jupiter.api.Test;

/**
 * How long work stands still and how long until all is back: noticed + wait, and bytes over the
 * rate. The working copy's first drive dies at 1,000 h, its second lives beyond the horizon.
 */
class RecoveryTest {

  private static final double HORIZON = 1_990;

  /**
   * Work goes on after noticed + wait, all is back after 100 GB at 5 GB an hour. Red if the refill
   * starts with the loss, or its time is left out.
   */
  @Test
  void fixedTimesAddUp() {
    LayoutResult.Recovery one = after(new Delay.Lawful(new Fixed(7)), new Fixed(40));
    assertThat(one.id()).isEqualTo("drive");
    assertThat(one.workHours().value()).isCloseTo(7 + 40, within(1e-6));
    assertThat(one.wholeHours().orElseThrow().value()).isCloseTo(7 + 40 + 100 / 5.0, within(1e-6));
  }

  /** A single drive has nothing to come back from. Red if the wait for hardware is told as one. */
  @Test
  void nothingComesBackWhereThereIsNoOtherCopy() {
    Part main =
        eternal("main")
            .lives(new Fixed(1_000))
            .noticed(new Delay.Lawful(new Fixed(7)))
            .arrives(new Fixed(40));
    LayoutResult.Recovery one =
        ComparedMeans.resultOf(
                studio(HORIZON, onHand(), Desk.QUIET, OptionalDouble.empty(), main), 1_000, 1)
            .recoveries()
            .get(0);
    assertThat(one.workHours().value()).isCloseTo(47, within(1e-6));
    assertThat(one.wholeHours()).isEmpty();
  }

  /** Means of exponential times add up. Red if one draw serves both. */
  @Test
  void meansAddUp() {
    LayoutResult.Recovery one = after(new Delay.Lawful(new Exponential(20)), new Exponential(40));
    agrees(one.workHours(), 20 + 40);
    agrees(one.wholeHours().orElseThrow(), 20 + 40 + 20);
  }

  /** Somebody looks at 24, 48 ...: at 1,008 after 1,000. Red if looks count from the loss. */
  @Test
  void looksAreByTheClock() {
    LayoutResult.Recovery one = after(new Delay.Looks(24), new Fixed(40));
    assertThat(one.workHours().value()).isCloseTo(8 + 40, within(1e-6));
  }

  /** At once is at once: no time until work goes on, nor until all is back. */
  @Test
  void atOnceIsNoTime() {
    LayoutResult.Recovery one = after(Delay.none(), new Fixed(0), AT_ONCE);
    assertThat(one.workHours().value()).isZero();
    assertThat(one.wholeHours().orElseThrow().value()).isCloseTo(0, within(1e-6));
  }

  /** What was deleted is back when noticed, and work never stood still. Red if never told. */
  @Test
  void deletedIsBackWhenNoticed() {
    Desk desk =
        new Desk(
            Optional.of(new Desk.Deletion(new Rate(1e-3), new Desk.ShootCount(1), new Fixed(9))),
            Optional.empty());
    LayoutResult.Recovery one =
        ComparedMeans.resultOf(
                studio(
                    HORIZON,
                    onHand(),
                    desk,
                    OptionalDouble.empty(),
                    eternal("main").keepsDeleted(1e9)),
                1_000,
                1)
            .recoveries()
            .get(0);
    assertThat(one.id()).isEqualTo("desk:deletion");
    assertThat(one.workHours().value()).isZero();
    assertThat(one.wholeHours().orElseThrow().value()).isCloseTo(9, within(1e-6));
  }

  /**
   * Days of a year: 47 h without hardware, 20 h more until the refill is complete. Red if only the
   * hours without hardware are counted as refilling.
   */
  @Test
  void refillingLastsUntilAllIsBack() {
    LayoutResult.Exposure exposure =
        result(new Delay.Lawful(new Fixed(7)), new Fixed(40), 5).exposure();
    double days = 365 / HORIZON;
    assertThat(exposure.noWorkingCopyDays().value()).isCloseTo(47 * days, within(1e-6));
    assertThat(exposure.refillingDays().value()).isCloseTo((47 + 20) * days, within(1e-6));
  }

  /**
   * A working copy that lives exponentially, M on average, is gone for 47 h and refilled in R h,
   * within which it may die again: N lives until one of them outlasts its refill, N geometric with
   * p = e^(−R/M). By Wald's equation (Ross, Stochastic Processes, theorem 3.3.2, from memory) all
   * is back after (47 + E min(X, R))/p on average, with E min(X, R) = M(1 − p), and work last goes
   * on an R before that. The horizon cuts short one of 500 in each history, a tenth of an error.
   * Red if an interruption starts anew at each failure.
   */
  @Test
  void oneInterruptionLastsThroughFurtherFailures() {
    double mean = 200;
    double refill = 100;
    Part main =
        eternal("main")
            .lives(new Exponential(mean))
            .noticed(new Delay.Lawful(new Fixed(7)))
            .arrives(new Fixed(40));
    Part far = eternal("far").nightly("main", 2, AT_ONCE).restores(100 / refill);
    LayoutResult result =
        ComparedMeans.resultOf(
            studio(200_000, onHand(), Desk.QUIET, OptionalDouble.empty(), main, far), 20, 1);
    LayoutResult.Recovery one = result.recoveries().get(0);
    double outlasts = Math.exp(-refill / mean);
    double whole = (47 + mean * (1 - outlasts)) / outlasts;
    assertThat(result.recoveries()).hasSize(1);
    agrees(one.wholeHours().orElseThrow(), whole);
    agrees(one.workHours(), whole - refill);
  }

  private static LayoutResult.Recovery after(Delay noticed, lastcopy.law.Law wait) {
    return after(noticed, wait, 5);
  }

  private static LayoutResult.Recovery after(
      Delay noticed, lastcopy.law.Law wait, double restores) {
    LayoutResult result = result(noticed, wait, restores);
    assertThat(result.recoveries()).hasSize(1);
    return result.recoveries().get(0);
  }

  private static LayoutResult result(Delay noticed, lastcopy.law.Law wait, double restores) {
    Part main = eternal("main").lives(new Fixed(1_000)).noticed(noticed).arrives(wait);
    Part far = eternal("far").nightly("main", 2, AT_ONCE).restores(restores);
    return ComparedMeans.resultOf(
        studio(HORIZON, onHand(), Desk.QUIET, OptionalDouble.empty(), main, far), 20_000, 1);
  }

  /** Within 4.89 standard errors, an alarm rate of 1e-6 by the normal limit. */
  private static void agrees(Estimate mean, double exact) {
    assertThat(Math.abs(mean.value() - exact))
        .as("%s, exactly %s", mean, exact)
        .isLessThanOrEqualTo(4.89 * (mean.high() - mean.low()) / 2);
  }
}
