package lastcopy.history.event;

import java.util.Map;
import lastcopy.history.report.Audience;
import lastcopy.history.report.Cause;
import lastcopy.history.state.HistoryState;

/** Interruptions of work at the working copy, from what began them until all is whole again. */
public final class Interruptions implements Resettable {

  private final HistoryState state;
  private final Audience audience;
  private Cause by;
  private double began;
  private double workAt;
  private boolean somethingCameBack;

  /** None yet. */
  public Interruptions(HistoryState state, Audience audience) {
    this.state = state;
    this.audience = audience;
  }

  @Override
  public void clear() {
    by = null;
  }

  /** The working copy is gone. */
  public void workingCopyGoes(Cause cause) {
    begins(cause);
    workAt = Double.POSITIVE_INFINITY;
  }

  /** A drive of the working shelf failed. */
  public void shelfDriveFails(Cause cause, boolean theOneBeingFilled) {
    boolean first = by == null;
    begins(cause);
    if (theOneBeingFilled) {
      workAt = Double.POSITIVE_INFINITY;
    } else if (first) {
      workAt = state.now();
    }
  }

  private void begins(Cause cause) {
    if (by == null) {
      by = cause;
      began = state.now();
      somethingCameBack = false;
    }
  }

  /** Work can go on. */
  public void workGoesOn() {
    workAt = Math.min(workAt, state.now());
  }

  /** Some footage that was saved elsewhere is brought back to the working copy. */
  public void comesBack() {
    somethingCameBack = true;
  }

  /** Everything that was saved is back on the working copy, or the horizon ends the wait. */
  public void whole() {
    if (by != null) {
      if (audience.wantsTime()) {
        double now = state.now();
        double work = Math.min(workAt, now) - began;
        audience.ledger().recovered(by, work, somethingCameBack ? now - began : Double.NaN);
      }
      by = null;
    }
  }

  /** A deletion or malware was noticed and what was kept of it is back. */
  public void putBack(Map<Cause.Context, Cause> causes, double since) {
    if (audience.wantsTime()) {
      audience.ledger().recovered(causes.get(Cause.Context.ALONE), 0, state.now() - since);
    }
  }
}
