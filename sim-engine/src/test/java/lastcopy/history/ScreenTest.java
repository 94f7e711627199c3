package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import lastcopy.scenario.Studio;
import lastcopy.simulate.DriveSets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The screen against the same histories told event by event: it lets none pass in which a copy goes
 * or something strikes, and passes all others of sets that only fail and heal.
 *
 * <p>Red if a sum of a repair differs, if another key is drawn, or if a drive that is whole again
 * counts as down (then a history fewer passes).
 */
class ScreenTest {

  private static final int HISTORIES = 1_500;
  private static final long SEED = 5;

  private static final Set<Happening.Kind> SERIOUS =
      Set.of(Happening.Kind.COPY_GONE, Happening.Kind.MISHAP, Happening.Kind.LOST);

  @ParameterizedTest
  @CsvSource({
    "parity, true",
    "double parity, true",
    "three mirrored, true",
    "looked at, true",
    "aged, true",
    "by age, true",
    "never replaced, true",
    "stripe, true",
    "burgled, true",
    "strained, false"
  })
  void passesWhatHealsAndNothingElse(String kind, boolean decidesAll) {
    Studio studio = DriveSets.studio(kind);
    Plan plan = Plan.of(studio, studio.layouts().get(0));
    Draws draws = new Draws(SEED);
    Screen screen = new Screen(plan, draws);
    History history = new History(studio, studio.layouts().get(0), SEED);
    int passed = 0;
    int healed = 0;
    for (int k = 0; k < HISTORIES; k++) {
      draws.start(k);
      boolean passes = screen.nothingIsLost();
      int[] seen = new int[2];
      history.tell(
          k,
          (happening, scene) -> {
            seen[0] += SERIOUS.contains(happening.kind()) ? 1 : 0;
            seen[1] += happening.kind() == Happening.Kind.DRIVE_FAILED ? 1 : 0;
          });
      if (passes) {
        assertThat(seen[0]).as("%s history %s", kind, k).isZero();
        passed++;
        healed += seen[1] > 0 ? 1 : 0;
      } else if (decidesAll) {
        assertThat(seen[0]).as("%s history %s", kind, k).isPositive();
      }
    }
    assertThat(passed).as("histories that pass").isBetween(HISTORIES / 100, HISTORIES - 1);
    assertThat(healed).as("of them with a failure").isPositive();
  }
}
