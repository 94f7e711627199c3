package lastcopy.history.event;

import lastcopy.history.hazard.Clocks;
import lastcopy.history.report.Audience;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.DriveState;
import lastcopy.history.state.HistoryState;

/** Tells whoever listens what happens, and how things stand just after it. */
public final class Narrator {

  private static final int NONE = -1;

  private final HistoryState state;
  private final Clocks clocks;
  private final Audience audience;

  /** Tells an audience of a state. */
  public Narrator(HistoryState state, Clocks clocks, Audience audience) {
    this.state = state;
    this.clocks = clocks;
    this.audience = audience;
  }

  /** Whether anybody listens. */
  public boolean isHeard() {
    return audience.hasListener();
  }

  /** Something happens that is no copy's. */
  public void say(Kind kind, double bytes, double until, String subject) {
    say(kind, NONE, NONE, bytes, until, subject);
  }

  /** Something happens to a copy. */
  public void say(Kind kind, CopyState copy, double bytes, double until) {
    say(kind, copy.index(), NONE, bytes, until, "");
  }

  /** The same, with a subject. */
  public void say(Kind kind, CopyState copy, double bytes, double until, String subject) {
    say(kind, copy.index(), NONE, bytes, until, subject);
  }

  /** Something happens to a drive. */
  public void say(Kind kind, DriveState drive, double bytes, double until) {
    say(kind, drive.plan().copy(), drive.plan().drive(), bytes, until, "");
  }

  private void say(Kind kind, int copy, int drive, double bytes, double until, String subject) {
    if (isHeard()) {
      audience.saw(
          new Happening(kind, state.now(), copy, drive, bytes, until, subject), snapshot());
    }
  }

  private Snapshot snapshot() {
    CopyState[] copies = state.copies();
    double[] held = new double[copies.length];
    boolean[] gone = new boolean[held.length];
    int[] down = new int[held.length];
    for (int c = 0; c < held.length; c++) {
      gone[c] = copies[c].isGone();
      down[c] = copies[c].down();
      held[c] = gone[c] ? 0 : state.heldBytes(copies[c]);
    }
    double shot = state.shoots().total(state.now());
    double weight = clocks.weight();
    return new Snapshot(shot, state.lostBytes(), held, gone, down, state.bareBytes(), weight);
  }
}
