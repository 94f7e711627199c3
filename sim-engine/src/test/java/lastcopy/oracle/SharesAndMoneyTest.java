package lastcopy.oracle;

import static lastcopy.oracle.SmallStudios.AT_ONCE;
import static lastcopy.oracle.SmallStudios.eternal;
import static lastcopy.oracle.SmallStudios.even;
import static lastcopy.oracle.SmallStudios.studio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import lastcopy.law.Fixed;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * One shoot of 12 GB is lost, then all the others, at hours known beforehand: shares and money by
 * arithmetic.
 *
 * <p>A shoot comes every 50 h from hour 50 on, and crosses at the next 02:00. The working copy dies
 * at 1,001 h and takes the shoot of 1,000 h; it is back at 1,048 h and dies again at 2,049 h, when
 * all has crossed. The far copy dies at 2,060 h, while there is no working copy, with all 39 shoots
 * up to 2,000 h that are left.
 */
class SharesAndMoneyTest {

  private static final double WORTH = 700;
  private static final int ALONE = 1;
  private static final int TOGETHER = 39;

  /** Two events of unlike size. Red if the share of bytes is that of events. */
  @Test
  void sharesOfBytesAreNotThoseOfEvents() {
    LayoutResult result = result();
    double all = ALONE + TOGETHER;
    assertThat(result.lossEvents().value()).isEqualTo(2);
    assertThat(result.bytesLost().value()).isCloseTo(all * 12 * Units.GB, within(1.0));
    assertThat(result.causes()).hasSize(2);
    assertThat(result.causes())
        .extracting(CauseShare::share)
        .extracting(Estimate::value)
        .containsExactly(0.5, 0.5);
    double small = Math.min(share(result, 0), share(result, 1));
    double large = Math.max(share(result, 0), share(result, 1));
    assertThat(small).isCloseTo(ALONE / all, within(1e-9));
    assertThat(large).isCloseTo(TOGETHER / all, within(1e-9));
  }

  private static double share(LayoutResult result, int cause) {
    return result.causes().get(cause).shareOfBytes();
  }

  /** Money is shoots times worth, at each row as in the mean. Red if a row holds shoots. */
  @Test
  void moneyIsShootsTimesWorth() {
    LayoutResult result = result();
    assertThat(result.shootsLost().value()).isCloseTo(40, within(1e-6));
    assertThat(result.shootsHit().value()).isCloseTo(40, within(1e-6));
    assertThat(result.moneyLost().orElseThrow().value()).isCloseTo(40 * WORTH, within(1e-3));
    assertThat(result.exceedanceMoney())
        .extracting(Point::at)
        .isEqualTo(result.exceedanceShoots().stream().map(row -> row.at() * WORTH).toList());
    assertThat(result.exceedanceMoney())
        .allSatisfy(
            row -> assertThat(row.chance().value()).isEqualTo(row.at() <= 40 * WORTH ? 1 : 0));
    assertThat(result.exceedanceShoots())
        .allSatisfy(row -> assertThat(row.chance().value()).isEqualTo(row.at() <= 40 ? 1 : 0));
    assertThat(result.exceedanceBytes())
        .allSatisfy(
            row ->
                assertThat(row.chance().value()).isEqualTo(row.at() <= 40 * 12 * Units.GB ? 1 : 0));
  }

  private static LayoutResult result() {
    Footage shot = even();
    Footage priced =
        new Footage(
            shot.onHandBytes(),
            shot.shoots(),
            shot.growthPerYear(),
            shot.keepHours(),
            shot.clipBytes(),
            OptionalDouble.of(WORTH));
    Part main = eternal("main").lives(new Fixed(1_001)).arrives(new Fixed(47));
    Part far = eternal("far").lives(new Fixed(2_060)).nightly("main", 2, AT_ONCE).restores(50);
    Studio made = studio(2_070, priced, Desk.QUIET, OptionalDouble.empty(), main, far);
    return ComparedMeans.resultOf(made, 100, 1);
  }
}
