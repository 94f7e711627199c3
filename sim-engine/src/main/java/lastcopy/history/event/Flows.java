package lastcopy.history.event;

import lastcopy.footage.Positions;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;

/** What is on its way between copies, where some of it is lost or cannot be taken. */
public final class Flows {

  private final HistoryState state;

  /** Flows between the copies of a state. */
  public Flows(HistoryState state) {
    this.state = state;
  }

  /** A copy has lost some positions: what is on its way from it is the less. */
  public void cannotSend(CopyState source, Positions positions) {
    for (CopyState copy : state.copies()) {
      if (copy.flow().isFrom(source.index())) {
        cannotTake(copy, positions);
      }
    }
  }

  /** What is lost does not arrive, though a run had it on its way. */
  void neverArrives(Positions positions) {
    for (CopyState copy : state.copies()) {
      cannotTake(copy, positions);
    }
  }

  /** What a copy cannot take, or should not, leaves what is on its way to it. */
  public void cannotTake(CopyState copy, Positions positions) {
    if (copy.flow().isGoing()) {
      copy.bringTo(state.now());
      copy.doesNotReceive(positions);
      again(copy);
    }
  }

  /** A flow has become shorter. */
  public void again(CopyState copy) {
    state.clock().move(state.timers().runEnd(copy.index()), copy.flow().endsAt(state.now()));
  }
}
