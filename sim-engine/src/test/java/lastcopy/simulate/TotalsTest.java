package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Comparison.Pair;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Loss;
import lastcopy.interval.PairedRatio;
import lastcopy.interval.Proportions;
import lastcopy.interval.RatioEstimate;
import lastcopy.law.Fixed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.simulate.count.Caveats;
import lastcopy.simulate.count.Chunk;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Chunks of three layouts merged by hand, and what a result then says of them and their pairs. */
class TotalsTest {

  private static final Cause DRIVE = new Cause("drive", "a drive failed");

  private Thresholds rows;
  private Totals totals;

  @BeforeEach
  void start() {
    Footage footage =
        Footage.builder(new Shoots(876, 50, Shoots.Spacing.EVEN))
            .onHand(500)
            .clip(1)
            .worthPerShoot(300)
            .build();
    Studio studio =
        Studio.builder("Harbour", 1)
            .footage(footage)
            .currency("EUR")
            .layout(layout("a"))
            .layout(layout("b"))
            .layout(layout("c"))
            .build();
    Settings settings = new Settings(77, .9, .05, OptionalLong.empty(), Optional.empty(), 1);
    rows = Thresholds.of(studio);
    totals = new Totals(studio, settings, rows);
  }

  private static lastcopy.scenario.Layout layout(String id) {
    return new lastcopy.scenario.Layout(
        id,
        "Title of " + id,
        List.of(CopyMaker.single("main", new Fixed(1e9)).make()),
        OptionalDouble.empty());
  }

  /** Each string is a layout's histories, a digit for the shoots that it loses, or nothing. */
  private Chunk chunk(String... histories) {
    LossTally[] tallies = new LossTally[histories.length];
    BitSet[] lossy = new BitSet[histories.length];
    for (int l = 0; l < histories.length; l++) {
      if (histories[l] == null) {
        continue;
      }
      tallies[l] = new LossTally(rows);
      lossy[l] = new BitSet();
      for (int i = 0; i < histories[l].length(); i++) {
        tallies[l].begin(i);
        int shoots = histories[l].charAt(i) - '0';
        if (shoots > 0) {
          tallies[l].lost(new Loss(4_380, 50.0 * shoots, shoots, shoots, false, DRIVE, 1));
          lossy[l].set(i);
        }
        tallies[l].end();
      }
    }
    return new Chunk(tallies, lossy, histories[0].length());
  }

  private void merge(boolean[] active, String... histories) {
    totals.merge(chunk(histories), active, histories[0].length());
  }

  /** The third layout stops after the first chunk: what it shares with others is less. */
  @Test
  void pairsAreOfHistoriesThatBothHave() {
    merge(new boolean[] {true, true, true}, "010203", "010000", "100000");
    merge(new boolean[] {true, true, false}, "1001", "1010", null);
    Comparison result = totals.result(true);
    assertThat(result.layouts()).extracting(LayoutResult::histories).containsExactly(10L, 10L, 6L);
    is(result.pairs().get(0), "a", "b", PairedRatio.of(10, 5, 10, 3, 10, 2, 3, 1, .9), 10);
    is(result.pairs().get(1), "a", "c", PairedRatio.of(10, 5, 6, 1, 6, 0, 3, 1, .9), 6);
    is(result.pairs().get(2), "b", "c", PairedRatio.of(10, 3, 6, 1, 6, 0, 1, 1, .9), 6);
  }

  private static void is(Pair pair, String a, String b, RatioEstimate expected, long paired) {
    assertThat(List.of(pair.a(), pair.b())).containsExactly(a, b);
    assertThat(pair.ratio()).isEqualTo(expected.ratio());
    assertThat(pair.ratioLow()).isEqualTo(expected.low());
    assertThat(pair.ratioHigh()).isEqualTo(expected.high());
    assertThat(pair.difference()).isEqualTo(expected.difference());
    assertThat(pair.pairedHistories()).isEqualTo(paired);
  }

  @Test
  void aResultSaysWhatWasAskedAndSeen() {
    merge(new boolean[] {true, true, true}, "010203", "010000", "100000");
    totals.reached[1] = true;
    totals.caveats[2] = Caveats.NONE.note("a note").doubted(List.of("a doubt"));
    Comparison result = totals.result(false);
    assertThat(result.studio()).isEqualTo("Harbour");
    assertThat(result.years()).isEqualTo(1);
    assertThat(result.currency()).contains("EUR");
    assertThat(result.seed()).isEqualTo(77);
    assertThat(result.confidence()).isEqualTo(.9);
    assertThat(result.finished()).isFalse();
    LayoutResult first = result.layouts().get(0);
    assertThat(first.title()).isEqualTo("Title of a");
    assertThat(first.anyLoss()).isEqualTo(Proportions.of(3, 6, .9));
    assertThat(first.method()).isEqualTo(Method.PLAIN);
    assertThat(first.effectiveHistories()).isEqualTo(6);
    assertThat(first.largestWeightShare()).isCloseTo(1 / 6.0, within(1e-15));
    assertThat(first.precisionReached()).isFalse();
    assertThat(result.layouts().get(1).precisionReached()).isTrue();
    assertThat(result.layouts().get(2).notes()).containsExactly("a note");
    assertThat(result.layouts().get(2).doubts()).containsExactly("a doubt");
    assertThat(result.layouts().get(2).trusted()).isFalse();
  }

  /** One, two and three shoots of six histories, worth 300 each. */
  @Test
  void moneyIsWorthTimesShoots() {
    merge(new boolean[] {true, true, true}, "010203", "010000", "100000");
    LayoutResult first = totals.result(true).layouts().get(0);
    assertThat(first.shootsLost().value()).isEqualTo(1);
    assertThat(first.bytesLost().value()).isEqualTo(50);
    assertThat(first.moneyLost().orElseThrow().value()).isEqualTo(300);
    assertThat(first.moneyLost().orElseThrow().high())
        .isCloseTo(300 * first.shootsLost().high(), within(1e-9));
    assertThat(first.moneyLost().orElseThrow().low())
        .isCloseTo(300 * first.shootsLost().low(), within(1e-9));
    assertThat(chance(first.exceedanceShoots(), 2)).isEqualTo(Proportions.of(2, 6, .9).value());
    assertThat(chance(first.exceedanceMoney(), 600)).isEqualTo(Proportions.of(2, 6, .9).value());
    assertThat(chance(first.exceedanceBytes(), 50)).isEqualTo(.5);
    assertThat(chance(first.curve(), .25)).isZero();
    assertThat(chance(first.curve(), .5)).isEqualTo(.5);
  }

  private static double chance(List<Point> points, double at) {
    return points.stream().filter(p -> p.at() == at).findFirst().orElseThrow().chance().value();
  }
}
