package lastcopy.worlds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastcopy.experiment.LayoutResult.Exposure;
import lastcopy.interval.Estimate;
import org.junit.jupiter.api.Test;

/** What replicates differ by widens an interval, but never beyond what a figure can be. */
class WidenedFiguresTest {

  private static Exposure days(double value) {
    Estimate all = new Estimate(value, value - 0.5, Math.min(365, value + 0.5), true);
    return new Exposure(all, all, all, all, all, 10);
  }

  /** Red without the bound: found by a fuzzed file that had little time. */
  @Test
  void aYearHasNoMoreDays() {
    Exposure wide =
        WidenedFigures.exposure(days(364), List.of(days(365), days(363), days(364)), 0.95);
    assertThat(wide.singleCopyDays().high()).isEqualTo(365);
    assertThat(wide.singleCopyDays().low()).isLessThan(363);
    assertThat(wide.refillingDays().high()).isEqualTo(365);
    assertThat(wide.largestSingleCopyBytes().high()).isGreaterThan(365);
  }
}
