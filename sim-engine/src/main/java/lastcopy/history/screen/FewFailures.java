package lastcopy.history.screen;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.SetPlan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.law.Fixed;

/**
 * Drives that stand in for each other, of which in a whole history no more fail than may be down at
 * once: then it does not matter when they fail, nor how long each is down. A drive is counted where
 * it may not live as long as it is in service at most.
 *
 * <p>In a history with one failure more than that the lives up to it are, in each slot, as many at
 * most as swaps and failures begin; all of those are counted.
 */
final class FewFailures {

  /** Beyond so many lives in a slot it costs more to ask than to play. */
  private static final int MOST_LIVES = 16;

  /** All that does not matter while so few drives fail. */
  private static final Set<Effect> RECKONS =
      EnumSet.of(
          Effect.FAILURES,
          Effect.REPAIRS,
          Effect.REBUILDS_OF_WHAT_IS_HELD,
          Effect.SHOCKS,
          Effect.PLANNED_SWAPS,
          Effect.READ_ERRORS,
          Effect.LATENT_DEFECTS,
          Effect.PAIRS,
          Effect.UNLIKE_DRIVES);

  /**
   * The lives of a slot: keys of their uniforms, and below which they surely last, those that swaps
   * begin first; after a failure, from when on swaps come earlier, below which one surely lasts.
   */
  private record Lives(long[] keys, double[] limits, int planned, double later) {}

  private final int bears;
  private final Lives[] slots;

  /** By how many failures beyond none, the histories with at least so many. */
  private final long[] atLeast;

  private FewFailures(int bears, Lives[] slots) {
    this.bears = bears;
    this.slots = slots;
    atLeast = new long[bears + 1];
  }

  /**
   * A lot of drives of a copy; empty where more than their number may matter, where nobody knows
   * their ages, or where swaps come by the dozen.
   *
   * @param lot its number
   * @param effects all that can befall the copy
   */
  static Optional<FewFailures> of(Plan plan, CopyPlan copy, int lot, Set<Effect> effects) {
    SetPlan set = copy.set();
    if (set.survives() == 0 || !RECKONS.containsAll(effects)) {
      return Optional.empty();
    }
    int bears = set.hidesNothing() ? set.survives() : set.survives() - 1;
    Lives[] slots = new Lives[set.together()];
    for (int i = 0; i < slots.length; i++) {
      SlotPlan slot = plan.slot(copy.firstSlot() + lot * set.together() + i);
      if (!slot.agesByTheClock()) {
        return Optional.empty();
      }
      slots[i] = lives(slot, bears, plan.horizon());
      if (slots[i].planned() > MOST_LIVES) {
        return Optional.empty();
      }
    }
    return Optional.of(new FewFailures(bears, slots));
  }

  private static Lives lives(SlotPlan slot, int bears, double horizon) {
    DoubleStream.Builder limits = DoubleStream.builder();
    int planned = 0;
    double age = ((Fixed) slot.age()).hours();
    for (double at = 0; at < horizon && planned <= MOST_LIVES; planned++) {
      double left = Math.min(horizon - at, Math.max(0, slot.replaceAt() - age));
      limits.add(limit(slot, age, left));
      at += left;
      age = slot.boughtAt();
    }
    double longest = Math.min(horizon, slot.replaceAt() - slot.boughtAt());
    double later = limit(slot, slot.boughtAt(), longest);
    for (int i = 0; i < bears; i++) {
      limits.add(later);
    }
    double[] all = limits.build().toArray();
    long[] keys = new long[all.length];
    for (int n = 0; n < keys.length; n++) {
      keys[n] = slot.key(Draws.LIFE, n);
    }
    return new Lives(keys, all, planned, later);
  }

  private static double limit(SlotPlan slot, double age, double hours) {
    return Screen.below(SlotPlan.hazard(slot.life(), age, hours));
  }

  /** The histories of the lanes in which, it may be, more fail. */
  long more(HistoryLanes lanes) {
    Arrays.fill(atLeast, 0);
    for (Lives lives : slots) {
      long some = 0;
      for (int n = 0; n < lives.planned(); n++) {
        long fails = lanes.atLeast(lives.limits()[n], lives.keys()[n]);
        if (some != 0 && lives.limits()[n] > lives.later()) {
          fails |= some & lanes.atLeast(lives.later(), lives.keys()[n]);
        }
        count(fails);
        some |= fails;
      }
      // What failures begin, there is only after some.
      for (int n = lives.planned(); some != 0 && n < lives.keys().length; n++) {
        count(some & lanes.atLeast(lives.limits()[n], lives.keys()[n]));
      }
    }
    return atLeast[bears];
  }

  private void count(long fails) {
    long carried = fails;
    for (int i = 0; i <= bears; i++) {
      long both = atLeast[i] & carried;
      atLeast[i] |= carried;
      carried = both;
    }
  }
}
