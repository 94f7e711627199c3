package lastcopy.worlds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** That worlds are drawn evenly from the standard normal law. */
class WorldPointsTest {

  /** 128 rows of a replicate fall one into each of 128 cells of equal chance, in each deviate. */
  @Test
  void everyReplicateIsStratified() {
    WorldPoints points = new WorldPoints(3, 5);
    for (int replicate = 0; replicate < WorldPoints.REPLICATES; replicate++) {
      for (int deviate = 0; deviate < 3; deviate++) {
        int r = replicate;
        int d = deviate;
        int[] cells =
            IntStream.range(0, 128)
                .map(
                    row ->
                        (int)
                            (128 * Doubtful.NORMAL.cumulativeProbability(points.point(r, row)[d])))
                .sorted()
                .toArray();
        assertThat(cells).containsExactly(IntStream.range(0, 128).toArray());
      }
    }
  }

  /** Products of two and of three deviates have mean 0, within six standard errors of luck. */
  @Test
  void deviatesAreIndependent() {
    WorldPoints points = new WorldPoints(3, 6);
    double[] sums = new double[4];
    int n = 16 * 128;
    for (int i = 0; i < n; i++) {
      double[] z = points.point(i % 16, i / 16);
      sums[0] += z[0] * z[1];
      sums[1] += z[0] * z[2];
      sums[2] += z[1] * z[2];
      sums[3] += z[0] * z[1] * z[2];
    }
    assertThat(Arrays.stream(sums).map(s -> s / n).toArray())
        .containsExactly(new double[4], within(6 / Math.sqrt(n)));
  }

  @Test
  void replicatesDifferAndRepeat() {
    double[] point = new WorldPoints(2, 1).point(3, 9);
    assertThat(new WorldPoints(2, 1).point(3, 9)).containsExactly(point);
    assertThat(new WorldPoints(2, 1).point(4, 9)).isNotEqualTo(point);
    assertThat(new WorldPoints(2, 2).point(3, 9)).isNotEqualTo(point);
  }
}
