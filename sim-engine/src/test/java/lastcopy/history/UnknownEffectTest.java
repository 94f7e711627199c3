package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lastcopy.history.event.Mechanism;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.screen.Screen;
import lastcopy.scenario.Studio;
import lastcopy.simulate.DriveSets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The screen passes a history only if it reckons with all that can befall a copy: a mechanism that
 * says nothing, or something new, is left to the engine.
 */
class UnknownEffectTest {

  private static final int HISTORIES = 640;

  private final Studio studio = DriveSets.studio("parity");
  private final Plan plan = Plan.of(studio, studio.layouts().get(0));

  /** A mechanism as it is when it has just been written. */
  private static final class MadeUp implements Mechanism {}

  private List<Set<Effect>> effects(Effect... more) {
    History history = new History(studio, studio.layouts().get(0), 5);
    List<Set<Effect>> all = history.effects();
    all.forEach(of -> of.addAll(List.of(more)));
    return all;
  }

  private long passed(List<Set<Effect>> effects) {
    Screen screen = new Screen(plan, new Draws(5), null, effects, () -> {});
    return LongStream.range(0, HISTORIES).filter(screen::nothingIsLost).count();
  }

  /** Red if a mechanism that says nothing is taken for one that does nothing. */
  @Test
  void madeUp() {
    assertThat(passed(effects())).isPositive();
    List<Set<Effect>> with =
        IntStream.range(0, plan.copies())
            .mapToObj(c -> Mechanisms.effects(List.of(new MadeUp()), plan.copy(c)))
            .toList();
    assertThat(with).allMatch(of -> of.equals(EnumSet.of(Effect.UNKNOWN)));
    assertThat(passed(effects(Effect.UNKNOWN))).isZero();
    Screen screen = new Screen(plan, new Draws(5), null, effects(Effect.UNKNOWN), () -> {});
    assertThat(LongStream.range(0, HISTORIES).filter(k -> screen.nothingHappens())).isEmpty();
  }

  /** Red if a set is reckoned by itself to which something can happen that is not reckoned with. */
  @ParameterizedTest
  @EnumSource(names = {"SEPARATE_DRIVES", "LATENT_DEFECTS", "REBUILDS_OF_WHAT_IS_HELD"})
  void notReckonedWith(Effect effect) {
    assertThat(passed(effects(effect))).isLessThan(passed(effects()) - HISTORIES / 100);
  }
}
