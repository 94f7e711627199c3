package lastcopy.history;

import java.util.Arrays;
import java.util.Map;
import java.util.OptionalDouble;

/** Copies that hold nothing usable and nobody knows, until a restore is tried or needed. */
final class Spoils {

  private final Stage stage;
  private final Plan plan;
  private final boolean[] spoilt;
  private Map<Cause.Context, Cause> causes;

  Spoils(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
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
  void spoil(Striker striker, int copy) {
    if (stage.gone[copy] || spoilt[copy]) {
      return;
    }
    stage.calm.leave();
    Holdings holdings = stage.holdings;
    holdings.bringAllTo(stage.now);
    stage.feeds.cutBy(copy);
    causes = striker.causes();
    stage.rule.struck(causes);
    double bytes = holdings.held[copy].bytes();
    stage.rule.removed(copy, holdings.held[copy]);
    holdings.held[copy].clear();
    stage.desk.gone(copy);
    spoilt[copy] = true;
    if (copy == 0) {
      stage.offloads.hardwareIsBack(); // people go on offloading to it
    }
    OptionalDouble tried = plan.copy[copy].spoils().orElseThrow().triedEveryHours();
    if (tried.isPresent()) {
      stage.set(plan.timer.tried(copy), stage.now + stage.untilLook(tried.getAsDouble()));
    }
    stage.say(Happening.Kind.SPOILT, copy, -1, bytes, Double.NaN);
  }

  /** A restore is tried: an unusable copy is found, and counts as gone from now on. */
  void tried(int copy) {
    if (spoilt[copy]) {
      stage.say(Happening.Kind.SPOIL_FOUND, copy, -1, 0, Double.NaN);
      stage.rule.met(causes, Cause.Context.ALONE);
      stage.outages.goes(copy);
    }
  }

  /** Footage that is offloaded to an unusable working copy stands nowhere. */
  Map<Cause.Context, Cause> causes() {
    return causes;
  }

  void gone(int copy) {
    spoilt[copy] = false;
    stage.agenda.cancel(plan.timer.tried(copy));
  }
}
