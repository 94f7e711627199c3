package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Happening;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What must hold for any studio of the whole model, over studios drawn from a fixed seed; nothing
 * is left to chance.
 */
class WholeModelTest {

  private static final int STUDIOS = 60;
  private static final int HISTORIES = 20;

  /** The shortcut by the undisturbed course gives what event by event gives. */
  @ParameterizedTest
  @ValueSource(strings = {"whole", "at random", "empty"})
  void shortcutEqualsEventByEvent(String kind) {
    RandomStudios studios = new RandomStudios(42);
    int lossy = 0;
    for (int i = 0; i < STUDIOS; i++) {
      Studio studio = studios.next(kind);
      Layout layout = studio.layouts().get(0);
      History quick = new History(studio, layout, 5, Bias.NONE, true);
      History slow = new History(studio, layout, 5, Bias.NONE, false);
      for (int k = 0; k < HISTORIES; k++) {
        Log a = new Log();
        Log b = new Log();
        quick.simulate(k, a);
        slow.simulate(k, b);
        a.assertSame(b, "studio " + i + " history " + k + " of " + studio);
        assertThat(a.paid).isNotEmpty();
        lossy += a.losses.isEmpty() ? 0 : 1;
      }
    }
    assertThat(lossy).isGreaterThan(STUDIOS * HISTORIES / 10);
  }

  /**
   * What the screen passes without playing it loses nothing, and what it does not pass loses what
   * it loses: ledgers that want no time are screened, stories never.
   */
  @ParameterizedTest
  @ValueSource(strings = {"no tricks", "tricks", "whole", "whole, unlikely", "at random", "empty"})
  void screenedAsPlayed(String kind) {
    RandomStudios studios = new RandomStudios(44, kind.equals("whole, unlikely"));
    int lossy = 0;
    for (int i = 0; i < STUDIOS; i++) {
      Studio studio = studios.next(kind);
      History history = new History(studio, studio.layouts().get(0), 5);
      for (int k = 0; k < 5 * HISTORIES; k++) {
        Log screened = new Log(false);
        history.simulate(k, screened);
        screened.assertSameLosses(told(history, k), "studio " + i + " history " + k);
        lossy += screened.losses.isEmpty() ? 0 : 1;
      }
    }
    assertThat(lossy).isBetween(STUDIOS * HISTORIES / 4, 4 * STUDIOS * HISTORIES);
  }

  private static Log told(History history, long number) {
    Log told = new Log();
    history.tell(
        number,
        (happening, snapshot) -> {
          if (happening.kind() == Happening.Kind.LOST) {
            told.losses.add(new double[] {happening.hours(), happening.bytes()});
          }
        });
    return told;
  }

  /**
   * A deletion reaches a copy in the midst of a run, some of the block having crossed: among many
   * thousands of histories the one that was told otherwise than counted, since only a look at the
   * copy let that part arrive before it was deleted.
   */
  @Test
  void toldAsCountedWhereADeletionMeetsARun() {
    RandomStudios studios = new RandomStudios(44);
    for (int i = 0; i < 741; i++) {
      studios.next();
    }
    Studio studio = studios.next();
    History history = new History(studio, studio.layouts().get(0), 5);
    Log counted = new Log(false);
    history.simulate(86, counted);
    assertThat(counted.losses).hasSize(4);
    counted.assertSameLosses(told(history, 86), "studio 741 history 86");
  }

  /** A story is the history that is counted under its number. */
  @Test
  void toldAsCounted() {
    RandomStudios studios = new RandomStudios(43);
    for (int i = 0; i < STUDIOS / 3; i++) {
      Studio studio = studios.next();
      History history = new History(studio, studio.layouts().get(0), 5);
      for (int k = 0; k < HISTORIES; k++) {
        Log counted = new Log();
        history.simulate(k, counted);
        counted.assertSameLosses(told(history, k), "studio " + i + " history " + k);
      }
    }
  }
}
