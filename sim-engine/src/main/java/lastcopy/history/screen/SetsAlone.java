package lastcopy.history.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.RepairTimes;

/**
 * The sets of a layout that are decided by themselves, each in the quickest way that reckons with
 * all that can befall it: lots that only fail and heal, lots that are played, lots of which it is
 * only known whether more fail than matters.
 */
final class SetsAlone {

  private final HistoryLanes lanes;
  private final Draws draws;
  private final double[] limit;
  private final boolean[] decided;
  private final LoneSet[] healing;
  private final PlayedSet[] played;
  private final FewFailures[] counted;

  /**
   * The sets of a layout.
   *
   * @param limit by slot, uniforms below which the first drive surely lives to the horizon
   * @param effects by copy, all that can befall it
   * @param step run for each step of what may be long
   */
  SetsAlone(
      Plan plan,
      Draws draws,
      RepairTimes times,
      HistoryLanes lanes,
      double[] limit,
      List<Set<Effect>> effects,
      Runnable step) {
    this.lanes = lanes;
    this.draws = draws;
    this.limit = limit;
    decided = new boolean[plan.copies()];
    List<LoneSet> heal = new ArrayList<>();
    List<PlayedSet> play = new ArrayList<>();
    List<FewFailures> count = new ArrayList<>();
    for (int c = 0; c < decided.length; c++) {
      CopyPlan copy = plan.copy(c);
      Set<Effect> of = effects.get(c);
      int lots = copy.set().lots();
      boolean all = lots > 0;
      for (int lot = 0; lot < lots; lot++) {
        if (LoneSet.stands(copy, of)) {
          heal.add(new LoneSet(plan, lanes, copy, lot, limit, step));
          continue;
        }
        Optional<FewFailures> few = FewFailures.of(plan, copy, lot, of);
        if (PlayedSet.stands(copy, of)) {
          play.add(new PlayedSet(plan, draws, times, copy, lot, few, step));
        } else {
          all &= few.isPresent();
          few.ifPresent(count::add);
        }
      }
      decided[c] = all;
    }
    healing = heal.toArray(new LoneSet[0]);
    played = play.toArray(new PlayedSet[0]);
    counted = count.toArray(new FewFailures[0]);
  }

  /** Whether the drives of a copy are decided here. */
  boolean decides(int copy) {
    return decided[copy];
  }

  /**
   * Of some histories of the lanes those in which, it may be, a set has too many drives down, or
   * hides bits from whoever reads it.
   *
   * @param among histories; nothing is known of others
   * @param takesOther whether, in a lane, a copy may go that is refilled from the working copy
   */
  long fail(long among, IntPredicate takesOther) {
    long safe = among;
    for (LoneSet set : healing) {
      safe &= ~set.fails();
    }
    for (FewFailures set : counted) {
      safe &= ~set.more(lanes);
    }
    for (PlayedSet set : played) {
      for (long left = safe & set.mayMatter(lanes, limit); left != 0; left &= left - 1) {
        int i = Long.numberOfTrailingZeros(left);
        draws.start(lanes.number(i));
        boolean hides = set.fails(i) || (set.mayHideFromRefills() && takesOther.test(i));
        safe &= hides ? ~(1L << i) : -1;
      }
    }
    return among & ~safe;
  }
}
