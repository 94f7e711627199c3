package lastcopy.history.report;

/** Told everything that happens in one history, in order; for stories, not for estimates. */
@FunctionalInterface
public interface HistoryListener {

  /** Something happened; the snapshot is the one just after it. */
  void saw(Happening happening, Snapshot snapshot);
}
