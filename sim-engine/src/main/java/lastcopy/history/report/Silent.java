package lastcopy.history.report;

/** A ledger that writes nothing down, for histories of which no loss is counted. */
public enum Silent implements Ledger {
  /** The only one. */
  LEDGER;

  @Override
  public void lost(Loss loss) {}

  @Override
  public void passed(
      double hours, double bare, double fragile, double down, double refill, double mostBare) {}

  @Override
  public void recovered(Cause cause, double workHours, double wholeHours) {}

  @Override
  public boolean wantsTime() {
    return false;
  }
}
