package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * After how many histories a simulation stops, and what it tells on the way, by hand: chunks have
 * 1,024 histories, and whether a layout is precise enough is looked at every 8,192.
 */
class StopsByHandTest {

  private static final double HOURS = 2_000;

  /** All is lost at 1,000 h, in each history. */
  private static final Layout SURE =
      Studios.layout("sure", CopyMaker.single("main", new Fixed(1_000)).neverReplaced());

  /** All is lost with a chance of 5 %. */
  private static final Layout SELDOM =
      Studios.layout(
          "seldom",
          CopyMaker.single("main", new Exponential(HOURS / -Math.log(.95))).neverReplaced());

  /** Writes down what is told once something has been merged; stops at so many histories. */
  private static final class Told implements Progress {
    private final List<String> lines = new ArrayList<>();
    private final List<Double> shares = new ArrayList<>();
    private final List<Double> precisions = new ArrayList<>();
    private final long stopsAt;
    private volatile boolean stops;

    Told(long stopsAt) {
      this.stopsAt = stopsAt;
    }

    @Override
    public void merged(String layout, long histories, double precision, double share) {
      if (histories > 0) {
        lines.add(layout + " " + histories);
        shares.add(share);
        precisions.add(precision);
        stops |= histories >= stopsAt;
      }
    }

    @Override
    public boolean cancelled() {
      return stops;
    }
  }

  private static Comparison run(OptionalLong histories, Progress progress, Layout... layouts) {
    Studio studio = Studios.of(HOURS, Studios.onHand(Units.TB), layouts);
    Settings settings = new Settings(1, .95, .05, histories, Optional.empty(), 2, Method.PLAIN);
    return Simulation.run(studio, settings, progress);
  }

  @Test
  void atACap() {
    Told told = new Told(Long.MAX_VALUE);
    Comparison comparison = run(OptionalLong.of(2_500), told, SURE);
    assertThat(told.lines).containsExactly("sure 1024", "sure 2048", "sure 2500");
    assertThat(told.shares).containsExactly(1_024 / 2_500.0, 2_048 / 2_500.0, 1.0);
    LayoutResult result = comparison.layouts().get(0);
    assertThat(told.precisions.get(2)).isEqualTo(result.anyLoss().relativeHalfWidth());
    assertThat(comparison.finished()).isTrue();
    assertThat(result.histories()).isEqualTo(2_500);
    assertThat(result.anyLoss().value()).isEqualTo(1);
    assertThat(result.precisionReached()).isTrue();
    assertThat(result.notes()).isEmpty();
  }

  /** Of a hundred histories some five lose anything: nowhere near a precision of 5 %. */
  @Test
  void aCapThatIsTooLow() {
    LayoutResult result = run(OptionalLong.of(100), Progress.SILENT, SELDOM).layouts().get(0);
    assertThat(result.histories()).isEqualTo(100);
    assertThat(result.precisionReached()).isFalse();
  }

  @Test
  void whenSomebodyStopsIt() {
    Comparison comparison = run(OptionalLong.of(9_000), new Told(2_048), SURE);
    assertThat(comparison.finished()).isFalse();
    assertThat(comparison.layouts().get(0).histories()).isEqualTo(2_048);
  }

  /**
   * A sure loss is precise at the first look. A chance of 5 % takes 1.96²·19/0.05² = 29,200
   * histories, give or take 800: the fourth. Of those only the first 8,192 are of both.
   */
  @Test
  void eachLayoutOnceItIsPrecise() {
    Told told = new Told(Long.MAX_VALUE);
    Comparison comparison = run(OptionalLong.empty(), told, SURE, SELDOM);
    assertThat(comparison.finished()).isTrue();
    assertThat(comparison.layouts()).allMatch(LayoutResult::precisionReached);
    assertThat(comparison.layouts())
        .extracting(LayoutResult::histories)
        .containsExactly(8_192L, 32_768L);
    assertThat(comparison.pairs().get(0).pairedHistories()).isEqualTo(8_192);
    assertThat(told.lines).hasSize(8 + 32).endsWith("seldom 31744", "seldom 32768");
    // From the first look on it is told how far it is, of some 29,200 histories.
    assertThat(told.shares.subList(0, 14)).containsOnly(0.0);
    assertThat(told.shares.get(15)).isCloseTo(8_192 / 29_200.0, within(.1));
    assertThat(told.shares.get(39)).isEqualTo(1);
  }

  private static Layout priced(String id, double price) {
    return Studios.layout(
        id,
        CopyMaker.single("main", new Exponential(HOURS))
            .drive(made -> made.price(price))
            .neverReplaced());
  }

  /** A drive of 100 and one of 250 that are never replaced, and one for which nothing is asked. */
  @Test
  void whatLayoutsCostMoreThanOthers() {
    Comparison priced =
        run(OptionalLong.of(100), Progress.SILENT, priced("a", 100), priced("b", 250), SELDOM);
    assertThat(priced.pairs())
        .extracting(pair -> pair.costDifference().orElseThrow().value())
        .containsExactly(-150.0, 100.0, 250.0);
    Comparison free = run(OptionalLong.of(100), Progress.SILENT, SURE, SELDOM);
    assertThat(free.pairs().get(0).costDifference()).isEmpty();
  }
}
