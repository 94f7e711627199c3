package lastcopy.history;

import java.util.Arrays;
import java.util.Map;
import lastcopy.footage.PositionSet;
import lastcopy.footage.ShootTable;

/**
 * The loss rule: what some copy held and now no copy and no camera card holds is lost, at this
 * instant, unless it has aged out. The only place where footage is declared lost.
 */
final class LossRule {

  private final HistoryState state;
  private final PositionSet removed = new PositionSet();
  private final PositionSet scratch = new PositionSet();
  private final boolean[] wentNow;
  private Map<Cause.Context, Cause> striking;
  private final Map<Cause.Context, Cause>[] lastOf;
  private Cause.Context context;

  @SuppressWarnings({"unchecked", "rawtypes"}) // an array of maps has no other form
  LossRule(HistoryState state) {
    this.state = state;
    wentNow = new boolean[state.plan.copies];
    lastOf = new Map[state.plan.copies];
  }

  void clear() {
    removed.clear();
    striking = null;
    Arrays.fill(lastOf, null);
  }

  /** Failures and mishaps of a new instant begin. */
  void newInstant() {
    removed.clear();
    Arrays.fill(wentNow, false);
    striking = null;
    context = null;
  }

  /** Something struck. */
  void struck(Map<Cause.Context, Cause> causes) {
    striking = causes;
    context = null;
  }

  /** Something was met while nothing else struck at this instant. */
  void met(Map<Cause.Context, Cause> causes, Cause.Context with) {
    if (striking == null) {
      struck(causes, with);
    }
  }

  /** What last took something from a copy, also at an earlier instant; null if nothing yet. */
  Map<Cause.Context, Cause> lastOf(int copy) {
    return lastOf[copy];
  }

  /** Something struck, and what was down or behind is known. */
  void struck(Map<Cause.Context, Cause> causes, Cause.Context with) {
    struck(causes);
    context = with;
  }

  /** A copy no longer holds something; whether it is lost is seen once all has struck. */
  void removed(int copy, PositionSet positions) {
    if (copy >= 0) {
      wentNow[copy] = true;
      lastOf[copy] = striking;
    }
    removed.addAll(positions);
  }

  /** What was removed and is now held by nobody is lost. */
  void declare() {
    if (removed.isEmpty()) {
      return;
    }
    state.holdings.bringAllTo(state.now); // what has crossed by now is held
    removed.remove(0, state.holdings.aged);
    state.holdings.removeHeld(removed);
    if (removed.isEmpty()) {
      return;
    }
    ShootTable shoots = state.shoots;
    double bytes = removed.bytes();
    double count = 0;
    int hit = 0;
    int lastUnit = -1;
    for (int i = 0; i < removed.size(); i++) {
      count += shoots.inShoots(removed.to(i)) - shoots.inShoots(removed.from(i));
      int first = shoots.unitOf(removed.from(i));
      int last = shoots.unitOf(Math.nextDown(removed.to(i)));
      hit += Math.max(0, last - Math.max(first, lastUnit + 1) + 1);
      lastUnit = Math.max(lastUnit, last);
    }
    Cause cause = striking.get(context != null ? context : context());
    state.lost.addAll(removed);
    state.feeds.neverArrives(removed);
    state.lostBytes += bytes;
    removed.clear();
    boolean everything = state.holdings.allEmpty();
    double weight = state.clocks.weight();
    state.ledger.lost(new Loss(state.now, bytes, count, hit, everything, cause, weight));
    state.say(Happening.Kind.LOST, -1, -1, bytes, Double.NaN, cause.sentence());
    state.clocks.endBias();
  }

  /** The cause of what struck, without what was down or behind. */
  Cause plainCause() {
    return striking.get(Cause.Context.ALONE);
  }

  private Cause.Context context() {
    if (state.desk.covers(removed)) {
      return Cause.Context.DELETED;
    }
    boolean othersStand = false;
    boolean spoilt = false;
    for (int c = 0; c < state.plan.copies; c++) {
      if (!wentNow[c] && away(c)) {
        return Cause.Context.AWAY;
      }
      othersStand |= !wentNow[c];
      spoilt |= !wentNow[c] && state.spoils.is(c);
    }
    if (spoilt) {
      return Cause.Context.SPOILT;
    }
    if (!othersStand) {
      return Cause.Context.ALONE;
    }
    double oldest = removed.from(0);
    ShootTable shoots = state.shoots;
    double shot = oldest < shoots.onHand() ? 0 : shoots.time(shoots.shootOf(oldest));
    return Cause.Context.behind(state.now - shot);
  }

  /** A copy, or a drive of a shelf that would hold some of it, is gone or being filled again. */
  private boolean away(int copy) {
    if (state.gone[copy] || state.recovering[copy]) {
      return true;
    }
    scratch.copyFrom(removed);
    scratch.removeAll(state.holdings.barred[copy]);
    return scratch.bytes() < removed.bytes();
  }
}
