package lastcopy.simulate.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import lastcopy.experiment.Cost;
import lastcopy.history.report.Account;
import lastcopy.history.report.Expense;
import lastcopy.interval.Estimate;
import org.junit.jupiter.api.Test;

/** Costs of histories, by hand. */
class CostTallyTest {

  private static final double YEAR = 8_760;

  private static CostTally tally(double... drives) {
    CostTally tally = new CostTally();
    Account account = new Account(2.5 * YEAR);
    for (double each : drives) {
      account.copyFrom(account.empty());
      account.pay(Expense.DRIVES, 2.5 * YEAR, each);
      account.payAlong(Expense.POWER, 0.5 * YEAR, 2.25 * YEAR, 4 / YEAR);
      tally.begin();
      tally.paid(account);
      tally.endHistory();
    }
    return tally;
  }

  @Test
  void kindsAndYearsAddUpToTheTotal() {
    Cost cost = tally(10, 20, 60).cost(0.95).orElseThrow();
    assertThat(cost.total().value()).isCloseTo(37, within(1e-12));
    assertThat(cost.byKind().get(0)).isEqualTo(new Cost.Part("drives", 30));
    assertThat(cost.byKind().get(3).kind()).isEqualTo("power");
    assertThat(cost.byKind().get(3).mean()).isCloseTo(7, within(1e-12));
    // Half of the first year, the second, a quarter of the third; drives at the very end.
    assertThat(cost.byYear().get(0)).isCloseTo(2, within(1e-12));
    assertThat(cost.byYear().get(1)).isCloseTo(4, within(1e-12));
    assertThat(cost.byYear().get(2)).isCloseTo(31, within(1e-12));
    assertThat(cost.histories()).isEqualTo(3);
  }

  /** s = 26.458 of three; Student's 97.5 % at two degrees of freedom is 4.3027 (any table). */
  @Test
  void theIntervalIsStudents() {
    Cost cost = tally(110, 120, 160).cost(0.95).orElseThrow();
    double half = 4.302653 * Math.sqrt(700 / 3.0);
    assertThat(cost.total().high()).isCloseTo(137 + half, within(1e-4));
    assertThat(cost.total().low()).isCloseTo(137 - half, within(1e-4));
  }

  /** Seed 2165 of the fuzzer. 37 ± 65.7: red if somebody is paid for storing. */
  @Test
  void noCostIsBelowNothing() {
    assertThat(tally(10, 20, 60).cost(0.95).orElseThrow().total().low()).isZero();
  }

  /** Where 19 of 20 cost the same, percentiles are amounts that were paid, not means of two. */
  @Test
  void percentilesAreAmountsThatSomeHistoryCost() {
    double[] paid = new double[20];
    paid[7] = 100;
    Cost rare = tally(paid).cost(0.95).orElseThrow();
    assertThat(rare.p5()).isEqualTo(rare.p95()).isCloseTo(7, within(1e-12));
    paid[8] = 100;
    Cost twice = tally(paid).cost(0.95).orElseThrow();
    assertThat(twice.p50()).isCloseTo(7, within(1e-12));
    assertThat(twice.p95()).isCloseTo(107, within(1e-12));
    Cost each = tally(IntStream.rangeClosed(1, 10).asDoubleStream().toArray()).cost(0.9).get();
    // R 4: quantile(1:10, c(.05, .5, .95), type = 1) is 1, 5 and 10.
    assertThat(each.p5()).isCloseTo(8, within(1e-12));
    assertThat(each.p50()).isCloseTo(12, within(1e-12));
    assertThat(each.p95()).isCloseTo(17, within(1e-12));
  }

  @Test
  void chunksInTheirOrderAreTheWhole() {
    CostTally whole = tally(10, 20);
    whole.merge(new CostTally());
    whole.merge(tally(60, 5, 3));
    assertThat(whole.totals()).containsExactly(tally(10, 20, 60, 5, 3).totals());
    assertThat(whole.cost(0.95)).isEqualTo(tally(10, 20, 60, 5, 3).cost(0.95));
  }

  /** One that was given up told nothing. */
  @Test
  void aHistoryThatWasGivenUpDoesNotCount() {
    CostTally tally = tally(10);
    tally.begin();
    tally.endHistory();
    assertThat(tally.totals()).hasSize(1);
    assertThat(new CostTally().cost(0.95)).isEmpty();
  }

  /** More than there is room for at first, into a tally that has seen nothing. */
  @Test
  void manyChunksAreTheWhole() {
    double[] drives = IntStream.range(0, 150).asDoubleStream().toArray();
    CostTally whole = new CostTally();
    whole.merge(tally(Arrays.copyOfRange(drives, 0, 60)));
    whole.merge(tally(Arrays.copyOfRange(drives, 60, 61)));
    whole.merge(tally(Arrays.copyOfRange(drives, 61, 150)));
    assertThat(whole.totals()).containsExactly(tally(drives).totals());
  }

  @Test
  void aSingleHistoryCostsWhatItDid() {
    assertThat(tally(10).cost(0.95).orElseThrow().total()).isEqualTo(Estimate.exact(17));
    Estimate two = tally(100, 120).cost(0.95).orElseThrow().total();
    assertThat(two.value()).isCloseTo(117, within(1e-12));
    assertThat(two.high()).isGreaterThan(120);
  }
}
