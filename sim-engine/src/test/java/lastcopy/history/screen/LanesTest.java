package lastcopy.history.screen;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.history.plan.Draws;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Uniform;
import lastcopy.law.Weibull;
import lastcopy.scenario.Delay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Draws taken together are those that each history takes alone, bit for bit. */
class LanesTest {

  private static final long NUMBER = 12_345;
  private static final long FIRST = NUMBER - NUMBER % HistoryLanes.SIZE;
  private static final long[] SOURCES = {77, 78};
  private static final Law LIFE = new Weibull(1.3, 40_000, 10);
  private static final double LIMIT = 60_000;
  private static final double LEAST = 0.4;

  private final Delay.Looks looks = new Delay.Looks(24);
  private final Draws alone = new Draws(3);
  private final HistoryLanes histories = new HistoryLanes(new Draws(3));

  @ParameterizedTest
  @ValueSource(doubles = {0, 0x1p-53, 0.3, 0.5, 1 - 1e-9, 1})
  void uniformsAreComparedAsInOneHistory(double limit) {
    histories.moveTo(NUMBER);
    assertThat(histories.holds(NUMBER)).isTrue();
    assertThat(histories.holds(FIRST - 1)).isFalse();
    assertThat(histories.holds(FIRST + HistoryLanes.SIZE)).isFalse();
    assertAtLeast(limit);
    for (int i = 0; i < HistoryLanes.SIZE; i++) {
      alone.start(FIRST + i);
      assertAtLeast(alone.uniform(9));
      assertAtLeast(Math.nextUp(alone.uniform(9)));
    }
  }

  private void assertAtLeast(double limit) {
    long together = histories.atLeast(limit, 9);
    for (int i = 0; i < HistoryLanes.SIZE; i++) {
      alone.start(FIRST + i);
      assertThat((together >>> i & 1) != 0).isEqualTo(alone.uniform(9) >= limit);
    }
  }

  @Test
  void stepsTogetherAreStepsAlone() {
    histories.moveTo(NUMBER);
    DriveLanes lanes = new DriveLanes(histories, SOURCES);
    lanes.add(0, -1);
    lanes.add(1, -1);
    lanes.passes(new Uniform(0, 9_000), 0, Draws.AGE, 0);
    lanes.firstLifePasses(LIFE);
    lanes.keepBy(LIMIT);
    lanes.waitsForLook(looks);
    lanes.passes(new Fixed(3), 0, Draws.ARRIVAL, 2);
    lanes.passes(new Exponential(500), 0, Draws.REBUILD, 2);
    lanes.keepAtLeast(LEAST, Draws.LIFE, 3);
    lanes.passes(LIFE, 100, Draws.LIFE, 3);
    double[] together = new double[2 * HistoryLanes.SIZE];
    lanes.times(together);
    int next = 0;
    for (long source : SOURCES) {
      for (int i = 0; i < HistoryLanes.SIZE; i++) {
        alone.start(FIRST + i);
        double at = firstFailure(source);
        if (at <= LIMIT && alone.uniform(Draws.key(source, Draws.LIFE, 3)) >= LEAST) {
          assertThat(together[next++]).isEqualTo(laterFailure(source, at));
        }
      }
    }
    assertThat(next).isBetween(HistoryLanes.SIZE / 4, HistoryLanes.SIZE);
    assertThat(together[next]).as("no more of them").isZero();
  }

  private double firstFailure(long source) {
    double age = alone.remaining(new Uniform(0, 9_000), 0, Draws.key(source, Draws.AGE, 0));
    return alone.remaining(LIFE, age, Draws.key(source, Draws.LIFE, 0));
  }

  private double laterFailure(long source, double failed) {
    double at = failed + looks.hoursUntilNext(failed);
    at += 3;
    at += alone.remaining(new Exponential(500), 0, Draws.key(source, Draws.REBUILD, 2));
    return at + alone.remaining(LIFE, 100, Draws.key(source, Draws.LIFE, 3));
  }
}
