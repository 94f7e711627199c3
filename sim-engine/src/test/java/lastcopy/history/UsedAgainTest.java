package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lastcopy.history.hazard.Bias;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A history depends on its number only, not on those that the same object told before. Red if
 * anything of one history, such as how often a mishap struck, is left in the next.
 */
class UsedAgainTest {

  private static final int STUDIOS = 20;

  private static List<String> told(History history, long number) {
    List<String> told = new ArrayList<>();
    history.tell(number, (happening, now) -> told.add(happening + " " + now.lostBytes()));
    return told;
  }

  @ParameterizedTest
  @ValueSource(strings = {"whole", "at random"})
  void asIfItWereTheFirst(String kind) {
    RandomStudios studios = new RandomStudios(23, false);
    for (int i = 0; i < STUDIOS; i++) {
      Studio studio = studios.next(kind);
      History used = new History(studio, studio.layouts().get(0), 5);
      for (int k = 0; k < 3; k++) {
        History fresh = new History(studio, studio.layouts().get(0), 5);
        assertThat(told(used, k)).as(kind + " studio " + i).isEqualTo(told(fresh, k));
      }
    }
  }

  /** The same with what is simulated, where a history may be on a course of its own. */
  @ParameterizedTest
  @ValueSource(strings = {"whole", "at random"})
  void simulatedAsIfItWereTheFirst(String kind) {
    RandomStudios studios = new RandomStudios(23, false);
    for (int i = 0; i < STUDIOS; i++) {
      Studio studio = studios.next(kind);
      History used = new History(studio, studio.layouts().get(0), 5);
      for (int k = 0; k < 3; k++) {
        Log again = new Log();
        used.simulate(k, again);
        Log first = new Log();
        new History(studio, studio.layouts().get(0), 5).simulate(k, first);
        again.assertSame(first, kind + " studio " + i);
      }
    }
  }

  /**
   * Nothing ever happens, but shoots come at random: each stands in one copy until the next run.
   */
  @Test
  void shootsAreThoseOfTheHistory() {
    Copy main = ByHand.copy("main", Arrangement.SINGLE, 1e6, 1e9, 24).build();
    Copy far =
        ByHand.copy("far", Arrangement.SINGLE, 1e6, 1e9, 24)
            .fed(Feed.from("main").every(24).link(1e9).build())
            .build();
    Studio studio =
        Studio.builder("s", 1)
            .footage(Footage.builder(new Shoots(60, 10, Shoots.Spacing.RANDOM)).clip(1).build())
            .layout(Layout.of("l", main, far))
            .build();
    History used = new History(studio, studio.layouts().get(0), 5);
    Set<Double> bare = new HashSet<>();
    for (int k = 0; k < 3; k++) {
      Log again = new Log();
      used.simulate(k, again);
      Log eventByEvent = new Log();
      new History(studio, studio.layouts().get(0), 5, Bias.NONE, false).simulate(k, eventByEvent);
      again.assertSame(eventByEvent, "history " + k);
      bare.add(again.time[1]);
    }
    assertThat(bare).hasSize(3);
  }
}
