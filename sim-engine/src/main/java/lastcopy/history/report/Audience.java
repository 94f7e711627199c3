package lastcopy.history.report;

/** Who is told of the history that goes on: a ledger, a listener, both or nobody. */
public final class Audience {

  private Ledger ledger = Silent.LEDGER;
  private HistoryListener listener;
  private boolean wantsTime;

  /** A ledger is told what the history costs, and of time only if it wants to know. */
  public void counts(Ledger with) {
    ledger = with;
    wantsTime = with.wantsTime();
    listener = null;
  }

  /** A listener is told all that happens. */
  public void listens(HistoryListener to) {
    counts(Silent.LEDGER);
    listener = to;
  }

  /** The ledger; one that writes nothing down if nobody counts. */
  public Ledger ledger() {
    return ledger;
  }

  /** Whether the ledger wants stretches of time and recoveries. */
  public boolean wantsTime() {
    return wantsTime;
  }

  /** Whether anybody listens to what happens. */
  public boolean hasListener() {
    return listener != null;
  }

  /** Tells the listener; only where there is one. */
  public void saw(Happening happening, Snapshot snapshot) {
    listener.saw(happening, snapshot);
  }
}
