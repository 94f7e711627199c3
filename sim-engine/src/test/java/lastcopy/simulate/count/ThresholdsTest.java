package lastcopy.simulate.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastcopy.law.Fixed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Studios;
import org.junit.jupiter.api.Test;

/** A year of shoots of 50 bytes every 876 hours beside 500 on hand, rows by hand. */
class ThresholdsTest {

  private static Thresholds of(Shoots.Spacing spacing, double years, double clip) {
    Footage footage = Footage.builder(new Shoots(876, 50, spacing)).onHand(500).clip(clip).build();
    Layout layout = Studios.layout("l", CopyMaker.single("main", new Fixed(1e9)));
    return Thresholds.of(Studio.builder("s", years).footage(footage).layout(layout).build());
  }

  @Test
  void bytesRiseFromAClipToAllThereIs() {
    double[] bytes = of(Shoots.Spacing.EVEN, 1, 2).bytes();
    assertThat(bytes).isSorted().doesNotHaveDuplicates();
    assertThat(bytes[0]).isEqualTo(2);
    assertThat(bytes[bytes.length - 1]).isGreaterThanOrEqualTo(1_000);
    assertThat(bytes).contains(12.5, 25, 37.5, 45, 50, 200, 650, 1_300, 2_600);
    // 40 rows by equal factors: the twelfth step of 39 is 2·500^(12/39)
    assertThat(bytes).contains(new double[] {2 * Math.pow(500, 12 / 39.0)}, within(1e-9));
  }

  @Test
  void aClipLargerThanAllIsAllThereIs() {
    assertThat(of(Shoots.Spacing.EVEN, 1, 1e6).bytes()).contains(1_000).doesNotContain(1e6);
  }

  @Test
  void theCurveHasQuartersAndTheHorizon() {
    assertThat(of(Shoots.Spacing.EVEN, 1, 2).years()).containsExactly(.25, .5, .75, 1);
    assertThat(of(Shoots.Spacing.EVEN, .6, 2).years()).containsExactly(.25, .5, .6);
    assertThat(of(Shoots.Spacing.EVEN, .1, 2).years()).containsExactly(.1);
  }

  /** Ten shoots a year: at most all, or ten of √10 more at random, and 20 shoots. */
  @Test
  void mostThatCanBeLost() {
    assertThat(of(Shoots.Spacing.EVEN, 1, 2).mostBytes()).isEqualTo(1_000);
    assertThat(of(Shoots.Spacing.RANDOM, 1, 2).mostBytes())
        .isCloseTo(1_000 * (1 + 10 / Math.sqrt(10)) + 1_000, within(1e-9));
  }

  @Test
  void rowsAreReachedButForARounding() {
    double[] rows = {1, 2, 4};
    assertThat(Thresholds.reached(rows, .9)).isZero();
    assertThat(Thresholds.reached(rows, 1)).isEqualTo(1);
    assertThat(Thresholds.reached(rows, 2 * (1 - 1e-10))).isEqualTo(2);
    assertThat(Thresholds.reached(rows, 2 * (1 - 1e-8))).isEqualTo(1);
    assertThat(Thresholds.reached(rows, 9)).isEqualTo(3);
  }

  /** The last row takes whatever a rounding puts beyond it. */
  @Test
  void aLossCountsFromTheRowItFallsIn() {
    Thresholds rows = of(Shoots.Spacing.EVEN, 1, 2);
    assertThat(rows.firstYearWith(0)).isZero();
    assertThat(rows.firstYearWith(.25)).isZero();
    assertThat(rows.firstYearWith(.2500001)).isEqualTo(1);
    assertThat(rows.firstYearWith(.75)).isEqualTo(2);
    assertThat(rows.firstYearWith(1.0000001)).isEqualTo(3);
  }
}
