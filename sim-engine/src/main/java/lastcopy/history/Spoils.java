package lastcopy.history;

import java.util.Arrays;
import java.util.Map;
import java.util.OptionalDouble;

/** Copies that hold nothing usable and nobody knows, until a restore is tried or needed. */
final class Spoils {

  private final HistoryState state;
  private final Plan plan;
  private final boolean[] spoilt;
  private Map<Cause.Context, Cause> causes;

  Spoils(HistoryState state) {
    this.state = state;
    plan = state.plan;
    spoilt = new boolean[plan.copies];
  }

  void clear() {
    Arrays.fill(spoilt, false);
  }

  /** Whether a copy is unusable and nobody knows. */
  boolean is(int copy) {
    return spoilt[copy];
  }

  boolean any() {
    for (boolean one : spoilt) {
      if (one) {
        return true;
      }
    }
    return false;
  }

  /** A copy becomes unusable. */
  void spoil(ShockProcess shock, int copy) {
    if (state.gone[copy] || spoilt[copy]) {
      return;
    }
    state.tracker.leave();
    Holdings holdings = state.holdings;
    holdings.bringAllTo(state.now);
    state.feeds.cutBy(copy);
    causes = shock.causes();
    state.rule.struck(causes);
    double bytes = holdings.held[copy].bytes();
    state.rule.removed(copy, holdings.held[copy]);
    holdings.held[copy].clear();
    state.desk.gone(copy);
    spoilt[copy] = true;
    if (copy == 0) {
      state.offloads.hardwareIsBack(); // people go on offloading to it
    }
    OptionalDouble tried = plan.copy[copy].spoils().orElseThrow().triedEveryHours();
    if (tried.isPresent()) {
      state.set(plan.timer.tried(copy), state.now + state.untilLook(tried.getAsDouble()));
    }
    state.say(Happening.Kind.SPOILT, copy, -1, bytes, Double.NaN);
  }

  /** A restore is tried: an unusable copy is found, and counts as gone from now on. */
  void tried(int copy) {
    if (spoilt[copy]) {
      state.say(Happening.Kind.SPOIL_FOUND, copy, -1, 0, Double.NaN);
      state.rule.met(causes, Cause.Context.ALONE);
      state.outages.goes(copy);
    }
  }

  /** Footage that is offloaded to an unusable working copy stands nowhere. */
  Map<Cause.Context, Cause> causes() {
    return causes;
  }

  void gone(int copy) {
    spoilt[copy] = false;
    state.agenda.cancel(plan.timer.tried(copy));
  }
}
