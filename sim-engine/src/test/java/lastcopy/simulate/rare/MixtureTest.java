package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Weights of one source at one level, by hand: under hazards b·λ instead of λ a history of n events
 * and a hazard of h has the density bⁿ·exp(−(b − 1)·h) times that without a bias.
 */
class MixtureTest {

  /** One part of b = 10. The third has an event at the very instant at which its level began. */
  @ParameterizedTest
  @CsvSource({"0, 0.2, 6.0496475", "1, 0.2, 0.60496475", "1, 0, 0.1", "0, 0, 1"})
  void onePart(double events, double hazard, double weight) {
    Mixture mixture = new Mixture(List.of(part(1, 10)));
    assertThat(mixture.weight(seen(events, hazard, 0))).isCloseTo(weight, within(1e-7));
  }

  /** Half of b = 10 and half of b = 2: the density is the mean of both. */
  @ParameterizedTest
  @CsvSource({"1, 0, 0.16666667", "2, 0.1, 0.04517088"})
  void twoParts(double events, double hazard, double weight) {
    Mixture mixture = new Mixture(List.of(part(0.5, 10), part(0.5, 2)));
    assertThat(mixture.weight(seen(events, hazard, 0))).isCloseTo(weight, within(1e-7));
  }

  /** What any bias draws alike counts beside it: a likelihood ratio of 3. */
  @ParameterizedTest
  @CsvSource({"1, 0, 0.3"})
  void theRest(double events, double hazard, double weight) {
    Mixture mixture = new Mixture(List.of(part(1, 10)));
    assertThat(mixture.weight(seen(events, hazard, Math.log(3)))).isCloseTo(weight, within(1e-12));
  }

  /** Any row of histories has each part's share of them, evenly: to within two of a thousand. */
  @ParameterizedTest
  @ValueSource(longs = {0, 1, 12_345, 1L << 40})
  void partsHaveTheirShares(long first) {
    Mixture mixture = new Mixture(List.of(part(0.2, 10), part(0.3, 2), part(0.5, 3)));
    int[] count = new int[3];
    for (long number = first; number < first + 1_000; number++) {
      count[mixture.partOf(number)]++;
    }
    assertThat(count[0]).isBetween(198, 202);
    assertThat(count[1]).isBetween(298, 302);
    assertThat(count[2]).isBetween(498, 502);
  }

  /** The same history is of the same part of one without a bias, where it weighs 1. */
  @Test
  void aFlatMixtureHasTheSameParts() {
    Mixture mixture = new Mixture(List.of(part(0.2, 10), part(0.3, 2), part(0.5, 3)));
    Mixture flat = mixture.flat(1, 1);
    assertThat(flat.parts()).isEqualTo(3);
    assertThat(flat.weight(seen(2, .3, 0))).isEqualTo(1);
    for (int number = 0; number < 100; number++) {
      assertThat(flat.partOf(number)).isEqualTo(mixture.partOf(number));
    }
  }

  private static Mixture.Part part(double share, double factor) {
    return new Mixture.Part(share, new double[][] {{factor}});
  }

  private static Biasable seen(double events, double hazard, double log) {
    return new Biasable() {
      @Override
      public int groups() {
        return 1;
      }

      @Override
      public int levels() {
        return 1;
      }

      @Override
      public int depth(int level) {
        return 0;
      }

      @Override
      public void simulate(long number, Bias bias, Ledger to) {
        throw new AssertionError("not asked for");
      }

      @Override
      public double events(int group, int level) {
        return events;
      }

      @Override
      public double hazard(int group, int level) {
        return hazard;
      }

      @Override
      public double logOfTheRest() {
        return log;
      }
    };
  }
}
