package lastcopy.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AgendaTest {

  // Against a sorted map. Times are whole and few, so that ties are common.
  // Sabotage: a block not marked as touched, <= for < in the search, stale not set by cancel.
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 8, 64, 65, 200})
  void agreesWithASortedMap(int timers) {
    SplittableRandom random = new SplittableRandom(timers);
    Agenda agenda = new Agenda(priorities(timers));
    Map<Integer, Integer> set = new TreeMap<>();
    for (int step = 0; step < 20_000; step++) {
      int timer = random.nextInt(timers);
      switch (random.nextInt(8)) {
        case 0, 1, 2, 3 -> {
          int at = random.nextInt(20);
          agenda.set(timer, at);
          set.put(timer, at);
        }
        case 4 -> {
          agenda.cancel(timer);
          set.remove(timer);
        }
        default -> {
          int next = agenda.peek();
          assertThat(next).isEqualTo(first(set));
          if (next != Agenda.NONE) {
            assertThat(agenda.time(next)).isEqualTo(set.remove(next).doubleValue());
            agenda.cancel(next);
          }
        }
      }
      assertThat(agenda.isSet(timer)).isEqualTo(set.containsKey(timer));
      if (random.nextInt(500) == 0) {
        agenda.clear();
        set.clear();
      }
    }
  }

  private static int first(Map<Integer, Integer> set) {
    int best = Agenda.NONE;
    for (Map.Entry<Integer, Integer> entry : set.entrySet()) {
      if (best == Agenda.NONE || entry.getValue() < set.get(best)) {
        best = entry.getKey(); // ties go to the lower number, which is met first
      }
    }
    return best;
  }

  private static Priority[] priorities(int n) {
    Priority[] all = new Priority[n];
    Arrays.fill(all, 0, n / 3, Priority.FAILURE);
    Arrays.fill(all, n / 3, n / 2, Priority.RETURN);
    Arrays.fill(all, n / 2, n, Priority.OFFLOAD);
    return all;
  }

  @Test
  void refusesTimersThatAreNotInTheOrderAtOneInstant() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Agenda(new Priority[] {Priority.LOOK, Priority.FAILURE}))
        .withMessageContaining("1");
  }
}
