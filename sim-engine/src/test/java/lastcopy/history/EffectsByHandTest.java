package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import lastcopy.history.plan.Effect;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Studios;
import org.junit.jupiter.api.Test;

/**
 * What can happen to a copy is said of it, and nothing else: the screen passes over what it is not
 * told of, so that a loss by it would not be counted.
 */
class EffectsByHandTest {

  private static final Set<Effect> ALWAYS =
      EnumSet.of(Effect.FAILURES, Effect.REPAIRS, Effect.SHOCKS);

  private static CopyMaker mirror() {
    return CopyMaker.set("main", Arrangement.MIRROR, 2).life(new Exponential(1_000));
  }

  private static void can(CopyMaker copy, Effect... more) {
    Layout layout = Studios.layout("only", copy);
    Studio studio = Studios.of(8_760, Studios.onHand(1e12), layout);
    Set<Effect> all = EnumSet.copyOf(ALWAYS);
    all.addAll(Set.of(more));
    assertThat(new History(studio, layout, 1).effects()).containsExactly(all);
  }

  @Test
  void eachByItself() {
    can(mirror());
    can(CopyMaker.single("main", new Exponential(1_000)));
    can(mirror().strain(2), Effect.STRAIN);
    can(mirror().batch("b", 0.5), Effect.SHARED_FRAILTY);
    can(mirror().set(made -> made.replaceAt(500)), Effect.PLANNED_SWAPS);
    can(mirror().readErrors(1e-15), Effect.READ_ERRORS);
    can(mirror().latentDefects(new Exponential(500)), Effect.LATENT_DEFECTS);
    can(mirror().lives(1_000, 2_000), Effect.UNLIKE_DRIVES);
    can(CopyMaker.set("main", Arrangement.PAIRS, 4), Effect.PAIRS);
    can(CopyMaker.set("main", Arrangement.SHELF, 2), Effect.SEPARATE_DRIVES);
  }

  /** Drives that take turns rest between their visits if it is said how they fail then. */
  @Test
  void aDriveThatRests() {
    Feed visits = Feed.from("main").every(100).visits(24).build();
    CopyMaker turns =
        CopyMaker.single("turn", new Exponential(1_000))
            .drive(made -> made.failsOff(new Exponential(5_000)))
            .copy(made -> made.rotation(2, 100).offline().fed(visits));
    Layout layout = Studios.layout("only", mirror(), turns);
    Studio studio = Studios.of(8_760, Studios.onHand(1e12), layout);
    Set<Effect> rests = EnumSet.copyOf(ALWAYS);
    rests.add(Effect.REST_BETWEEN_VISITS);
    assertThat(new History(studio, layout, 1).effects()).containsExactly(ALWAYS, rests, rests);
  }
}
