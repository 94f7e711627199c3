package lastcopy.history.event;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import lastcopy.history.hazard.Clocks;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.state.HistoryState;

/** Shocks: each process strikes, and runs towards its next. */
public final class Shocks implements Mechanism, TimerHandler, Resettable {

  /** What a kind of shock does. */
  @FunctionalInterface
  public interface Strike {

    /** A process strikes for the k-th time, from 0. */
    void strikes(ShockProcess shock, int k);
  }

  private final Plan plan;
  private final Clocks clocks;
  private final Map<ShockProcess.Kind, Strike> strikes = new EnumMap<>(ShockProcess.Kind.class);
  private final int[] count;

  /** Shocks whose strikes do nothing yet. */
  public Shocks(HistoryState state, Clocks clocks) {
    plan = state.plan();
    this.clocks = clocks;
    count = new int[plan.shocks()];
  }

  /** From now on a kind of shock does something. */
  public void does(ShockProcess.Kind kind, Strike strike) {
    strikes.put(kind, strike);
  }

  /** Each is a source of luck that whoever looks at a history can see by itself. */
  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return EnumSet.of(Effect.SHOCKS);
  }

  @Override
  public void clear() {
    Arrays.fill(count, 0);
  }

  /** All begin to run. */
  public void start() {
    for (int i = 0; i < plan.shocks(); i++) {
      clocks.startShock(i, plan.shock(i).key(0));
    }
  }

  @Override
  public void due(int index) {
    ShockProcess shock = plan.shock(index);
    clocks.fired(plan.slots() + index);
    int k = count[index]++;
    strikes.get(shock.kind()).strikes(shock, k);
    clocks.startShock(index, shock.key(k + 1));
  }
}
