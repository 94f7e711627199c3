package lastcopy.history.event.feed;

import lastcopy.history.event.Spending;
import lastcopy.history.hazard.Clocks;
import lastcopy.history.plan.Visits;
import lastcopy.history.plan.Way;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;

/** Drives that take turns: when each stands at its source's place. */
public final class Rotations {

  private final HistoryState state;
  private final Clocks clocks;
  private final Spending spending;

  /** The rotations of a state's copies. */
  public Rotations(HistoryState state, Clocks clocks, Spending spending) {
    this.state = state;
    this.spending = spending;
    this.clocks = clocks;
  }

  /** Whether a rotated drive stands at its source's place. */
  public boolean isVisiting(CopyState copy) {
    return state.onCourse() ? copy.plan().visits().goingOn(state.now()) : copy.feed().isVisiting();
  }

  /** The place where a copy stands now. */
  public String placeOf(CopyState copy) {
    boolean away = copy.plan().rotates() && isVisiting(copy);
    return (away ? state.sourceOf(copy) : copy).plan().stated().place().id();
  }

  /** From a start, or from the undisturbed course, on. */
  void takeUp(CopyState copy) {
    Visits visits = copy.plan().visits();
    double now = state.now();
    copy.feed().visiting(visits.goingOn(now));
    if (copy.feed().isVisiting()) {
      state
          .clock()
          .set(state.timers().visitEnd(copy.index()), visits.lastBefore(now) + visits.hours());
    }
    setNext(copy, copy.plan().way().dueFrom(now));
  }

  /** A turn is due; whether the drive is brought. */
  boolean comes(CopyState copy) {
    Way way = copy.plan().way();
    setNext(copy, way.dueAfter(state.now()));
    if (copy.isGone() || state.sourceOf(copy).isGone()) {
      if (state.plan().wornByAbsence()) {
        clocks.skipVisit(copy.plan());
      }
      spending.missesVisit(copy);
      return false;
    }
    copy.feed().visiting(true);
    double end = state.now() + copy.plan().visits().hours();
    state.clock().set(state.timers().visitEnd(copy.index()), end);
    return true;
  }

  private void setNext(CopyState copy, double due) {
    state.clock().set(state.timers().runStart(copy.index()), due);
  }

  /** A drive is gone. */
  void goes(CopyState copy) {
    copy.feed().visiting(false);
    state.clock().cancel(state.timers().visitEnd(copy.index()));
  }

  /** Whether any drives take turns. */
  boolean areUsed() {
    for (CopyState copy : state.copies()) {
      if (copy.plan().rotates()) {
        return true;
      }
    }
    return false;
  }

  /** Whether visits are as the clock says, just after now. */
  boolean areByTheClock() {
    for (CopyState copy : state.copies()) {
      Visits visits = copy.plan().visits();
      if (visits != null
          && copy.feed().isVisiting() != visits.goingOn(visits.nextChange(state.now()))) {
        return false;
      }
    }
    return true;
  }
}
