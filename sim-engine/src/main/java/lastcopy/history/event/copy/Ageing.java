package lastcopy.history.event.copy;

import java.util.Set;
import lastcopy.footage.ShootTable;
import lastcopy.history.event.Flows;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.OffCourse;
import lastcopy.history.event.TimerHandler;
import lastcopy.history.event.desk.UnnoticedDamage;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;

/** Footage that has been kept for long enough: it leaves every copy except a shelf. */
public final class Ageing implements Mechanism, TimerHandler, OffCourse {

  private final HistoryState state;
  private final Flows flows;
  private final UnnoticedDamage unnoticed;
  private final double keepHours;

  /** Ageing of a state's footage. */
  public Ageing(HistoryState state, Flows flows, UnnoticedDamage unnoticed) {
    this.state = state;
    this.flows = flows;
    this.unnoticed = unnoticed;
    keepHours = state.plan().keepHours();
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return Mechanism.none();
  }

  @Override
  public boolean isUsed() {
    return keepHours < Double.POSITIVE_INFINITY;
  }

  @Override
  public void takeUp() {
    age();
  }

  @Override
  public void rest() {
    state.clock().cancel(state.timers().aged());
  }

  /** Some footage has been kept for long enough. */
  @Override
  public void due(int index) {
    age();
  }

  private void age() {
    double now = state.now();
    double aged = state.agedBy(now);
    state.holdings().agesOut(aged, now);
    unnoticed.agesOut(aged); // or what a copy kept would be back when it is noticed
    for (CopyState copy : state.copies()) {
      if (copy.flow().isGoing()) {
        copy.doesNotReceiveBelow(aged);
        flows.again(copy);
      }
    }
    schedule(now);
  }

  private void schedule(double now) {
    ShootTable shoots = state.shoots();
    int next = now < keepHours ? -1 : shoots.shotAgo(keepHours, now);
    if (next < 0) {
      state.clock().set(state.timers().aged(), keepHours);
    } else if (next < shoots.count()) {
      state.clock().set(state.timers().aged(), shoots.time(next) + keepHours);
    }
  }
}
