package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import lastcopy.scenario.Studio;
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
}
