package lastcopy.history.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import lastcopy.history.History;
import lastcopy.history.hazard.Hazards;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.RepairTimes;
import lastcopy.history.report.Happening;
import lastcopy.scenario.Studio;
import lastcopy.simulate.DriveSets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A set of which one drive fails and no other, against the same histories told event by event. */
class OneFailureTest {

  private static final long SEED = 5;
  private static final int BLOCKS = 20;

  private final Draws draws = new Draws(SEED);
  private final HistoryLanes lanes = new HistoryLanes(draws);
  private Plan plan;
  private History history;
  private OneFailure one;
  private double[] limit;

  private void start(Studio studio) {
    plan = Plan.of(studio, studio.layouts().get(0));
    history = new History(studio, studio.layouts().get(0), SEED);
    limit =
        IntStream.range(0, plan.slots())
            .mapToDouble(i -> Screen.below(plan.slot(i).firstHazard()))
            .toArray();
    RepairTimes times = new RepairTimes(plan, draws);
    one = new OneFailure(plan, draws, times, new Hazards(plan), plan.copy(0), 0);
  }

  private int failures(long number) {
    int[] count = new int[1];
    history.tell(
        number,
        (happening, snapshot) ->
            count[0] +=
                happening.kind() == Happening.Kind.DRIVE_FAILED && happening.copy() == 0 ? 1 : 0);
    return count[0];
  }

  /**
   * Strained five times, and a hundred and fifty times, while the other is being replaced. It is
   * told where the drive that replaces it would outlive a whole horizon, at least.
   */
  @ParameterizedTest
  @CsvSource({"strained, 25", "strained hard, 200", "looked at, 25"})
  void whereOneFailsNoOtherDoes(String kind, int atLeast) {
    start(DriveSets.studio(kind));
    int alone = 0;
    int ones = 0;
    for (int block = 0; block < BLOCKS; block++) {
      lanes.moveTo((long) block * HistoryLanes.SIZE);
      long may = one.mayFail(lanes, limit);
      for (int i = 0; i < HistoryLanes.SIZE; i++) {
        int failures = failures(lanes.number(i));
        assertThat((may >>> i & 1) != 0).as("history %s", lanes.number(i)).isEqualTo(failures > 0);
        draws.start(lanes.number(i));
        if (one.isAll(i)) {
          assertThat(failures).as("history %s", lanes.number(i)).isEqualTo(1);
          alone++;
        }
        ones += failures == 1 ? 1 : 0;
      }
    }
    assertThat(alone).as("of %s with one failure", ones).isBetween(atLeast, ones);
  }

  /** Shared frailty, swaps, ages that nobody knows, and bits that a lone drive may hide. */
  @ParameterizedTest
  @ValueSource(strings = {"one batch", "swapped by the clock", "aged", "strained, unreadable"})
  void whereMoreMattersNothingIsDecided(String kind) {
    start(DriveSets.studio(kind));
    for (int block = 0; block < BLOCKS; block++) {
      lanes.moveTo((long) block * HistoryLanes.SIZE);
      one.mayFail(lanes, limit);
      for (int i = 0; i < HistoryLanes.SIZE; i++) {
        draws.start(lanes.number(i));
        assertThat(one.isAll(i)).isFalse();
      }
    }
  }
}
