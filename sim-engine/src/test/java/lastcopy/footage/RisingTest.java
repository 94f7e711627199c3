package lastcopy.footage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the search by halves of the JDK. */
class RisingTest {

  @ParameterizedTest
  @ValueSource(
      doubles = {1, 0.5, 3, 20}) // even; crowded at the end; at the start; nearly all there
  void countsWhatIsBelow(double power) {
    Random random = new Random(1);
    for (int size : new int[] {0, 1, 2, 3, 50, 1_000}) {
      double[] numbers =
          IntStream.range(0, size + 3).mapToDouble(i -> 5 + StrictMath.pow(i, power)).toArray();
      for (int i = 0; i < size; i++) {
        assertBelow(numbers, size, numbers[i]);
        assertBelow(numbers, size, Math.nextDown(numbers[i]));
        assertBelow(numbers, size, Math.nextUp(numbers[i]));
        assertBelow(numbers, size, random.nextDouble() * numbers[size - 1]);
      }
      assertBelow(numbers, size, -1);
      assertBelow(numbers, size, Double.POSITIVE_INFINITY);
    }
  }

  private static void assertBelow(double[] numbers, int size, double value) {
    int found = Arrays.binarySearch(numbers, 0, size, value);
    assertThat(Rising.below(numbers, size, value)).isEqualTo(found >= 0 ? found : -found - 1);
  }
}
