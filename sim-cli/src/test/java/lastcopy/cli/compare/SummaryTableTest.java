package lastcopy.cli.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lastcopy.cli.output.Wrap;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;

/** The table holds every figure whole, within the width of a terminal. */
class SummaryTableTest {

  private static Comparison comparison(double chance, double half, double... costs) {
    LayoutResult[] layouts = new LayoutResult[costs.length];
    for (int i = 0; i < costs.length; i++) {
      LayoutResult base =
          SampleComparison.layout(
              "l" + i, "Layout " + i, SampleComparison.seen(chance, half), true);
      layouts[i] = SampleComparison.costing(base, cost(costs[i]));
    }
    return new Comparison("s", 5, Optional.of("EUR"), 1, 0.95, true, List.of(layouts), List.of());
  }

  private static Optional<Cost> cost(double total) {
    return Double.isNaN(total)
        ? Optional.empty()
        : Optional.of(
            new Cost(Estimate.exact(total), total, total, total, List.of(), List.of(), 20_000));
  }

  private static String table(Comparison result, OutOf outOf) {
    return SummaryTable.of(result, outOf, 80, id -> Optional.empty());
  }

  @Test
  void costsStandInAColumnOfTheirOwn() {
    OutOf outOf = OutOf.showingSmallest(List.of(SampleComparison.seen(0.07, 0.002)));
    assertThat(table(comparison(0.07, 0.002, 610.4, 12_345), outOf))
        .isEqualTo(
            """
            Layout            Any footage      A shoot or more  Everything       Cost (EUR)
            --------------------------------------------------------------------------------
            Layout 0          70 (68 to 72)    70 (68 to 72)    70 (68 to 72)    610
            Layout 1          70 (68 to 72)    70 (68 to 72)    70 (68 to 72)    12,345
            """);
  }

  @Test
  void withoutPricesThereIsNoSuchColumn() {
    OutOf outOf = OutOf.showingSmallest(List.of(SampleComparison.seen(0.07, 0.002)));
    assertThat(table(comparison(0.07, 0.002, Double.NaN), outOf))
        .isEqualTo(
            """
            Layout           Any footage          A shoot or more      Everything
            --------------------------------------------------------------------------------
            Layout 0         70 (68 to 72)        70 (68 to 72)        70 (68 to 72)
            """);
  }

  /** Wide intervals and large sums at once. */
  @Test
  void noFigureIsCut() {
    OutOf outOf = OutOf.showingSmallest(List.of(SampleComparison.seen(2e-6, 1e-7)));
    String table = table(comparison(0.12345, 0.0012, 1_234_567, 7), outOf);
    assertThat(table).doesNotContain("~").contains("(1").contains("1,234,567");
    assertThat(table.lines())
        .allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(Wrap.WIDTH));
  }
}
