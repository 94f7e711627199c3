package lastcopy.history.event;

import java.util.EnumSet;
import java.util.Set;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;

/** Something that happens in histories, with timers and a state of its own. */
public interface Mechanism {

  /**
   * What it can do to a copy, or to the drives of it. Where it does not say, what that is is
   * unknown, and no history is passed over without being simulated.
   */
  default Set<Effect> effects(CopyPlan copy) {
    return EnumSet.of(Effect.UNKNOWN);
  }

  /** Of what only follows what others do: it takes nothing of a copy by itself. */
  static Set<Effect> none() {
    return EnumSet.noneOf(Effect.class);
  }
}
