package lastcopy.cli.sentence;

import static lastcopy.cli.compare.SampleComparison.exceeding;
import static lastcopy.cli.compare.SampleComparison.layout;
import static lastcopy.cli.compare.SampleComparison.seen;
import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import org.junit.jupiter.api.Test;

/** How much those lose that lose anything, of rows made by hand. */
class LossSizesTest {

  private static Point row(double bytes, double chance) {
    return new Point(bytes, Estimate.exact(chance));
  }

  private static LayoutResult of(Estimate any, Point... rows) {
    return exceeding(layout("l", "L", any, false), rows);
  }

  /**
   * 100 of 1,000 lose, known to a tenth. Half are 50: these lose 10 GB or more. By order statistics
   * half is known to 0.1 x sqrt(0.5 x 0.5) = 0.05, so it is between what 55 and what 45 lose; one
   * in twenty to 0.1 x sqrt(0.05 x 0.95) = 0.022, between what 7.2 and what 2.8 lose.
   */
  @Test
  void halfAndOneInTwentyWithTheirRanges() {
    assertThat(
            LossSizes.of(
                of(
                    seen(0.1, 0.01),
                    row(1e9, 0.1),
                    row(1e10, 0.05),
                    row(1e11, 0.01),
                    row(1e12, 0.004))))
        .hasValue(
            "half lose 10 GB or more (1 GB to 100 GB), one in twenty 100 GB or more (100 GB to 1"
                + " TB)");
    assertThat(
            LossSizes.of(
                of(
                    seen(0.1, 0.01),
                    row(1e9, 0.1),
                    row(1e10, 0.051),
                    row(1e11, 0.049),
                    row(1e12, 0.003))))
        .as("49 are fewer than half, and 7.2 more than 3")
        .hasValue(
            "half lose 10 GB or more (1 GB to 1 TB), one in twenty 100 GB or more (100 GB to 1 TB)");
    assertThat(
            LossSizes.of(
                of(
                    seen(0.1, 0.01),
                    row(1e9, 0.1),
                    row(1e10, 0.0551),
                    row(1e11, 0.0451),
                    row(1e12, 0.0449))))
        .as("55.1, 45.1 and 44.9 of 1,000")
        .hasValue("half lose 10 GB or more (10 GB to 1 TB), one in twenty 1 TB or more");
  }

  @Test
  void allThatIsLostIsAlike() {
    assertThat(LossSizes.of(of(seen(0.1, 0.01), row(1e9, 0.1), row(1e12, 0.1))))
        .hasValue("half lose 1 TB or more, one in twenty 1 TB or more");
  }

  @Test
  void ofTooFewLossesNothingIsSaid() {
    Point[] rows = {row(1e9, 0.1), row(1e12, 0.1)};
    assertThat(LossSizes.of(of(seen(0.5, 0.149), rows))).as("29.8 %").isPresent();
    assertThat(LossSizes.of(of(new Estimate(0.5, 0.25, 0.55, true), rows))).as("30 %").isEmpty();
    assertThat(LossSizes.of(of(new Estimate(0, 0, 1e-5, false), rows))).as("never").isEmpty();
    assertThat(LossSizes.of(of(Estimate.exact(0), rows))).as("none").isEmpty();
    assertThat(LossSizes.of(of(seen(0.1, 0.01), row(1e9, 0.1)))).as("one row").isEmpty();
  }
}
