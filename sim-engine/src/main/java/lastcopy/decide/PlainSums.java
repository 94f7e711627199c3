package lastcopy.decide;

import java.util.BitSet;
import java.util.Optional;
import lastcopy.history.History;
import lastcopy.history.report.Account;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.interval.Estimate;
import lastcopy.interval.Means;
import lastcopy.interval.Proportions;

/**
 * Histories of a candidate as they fall: how many lose anything, and sums of what they cost.
 * Mutable; one thread writes a chunk's, and chunks are merged in their order.
 */
final class PlainSums implements Ledger {

  /** Of so many of the first histories it is remembered which lose. */
  static final int REMEMBERED = 27_648;

  private final BitSet lossy = new BitSet();
  private long histories;
  private long losses;
  private long priced;
  private double costs;
  private double squares;
  private boolean timed;
  private boolean lost;
  private double paid;
  private boolean anyPaid;

  /**
   * Counts histories of a row of numbers.
   *
   * @param withCosts whether what they cost is counted too, which takes several times as long
   */
  PlainSums count(History candidate, long first, int count, boolean withCosts) {
    timed = withCosts;
    for (long number = first; number < first + count; number++) {
      lost = false;
      anyPaid = false;
      candidate.simulate(number, this);
      end(number);
    }
    return this;
  }

  private void end(long number) {
    histories++;
    losses += lost ? 1 : 0;
    if (lost && number < REMEMBERED) {
      lossy.set((int) number);
    }
    if (anyPaid) {
      priced++;
      costs += paid;
      squares += paid * paid;
    }
  }

  void merge(PlainSums later) {
    lossy.or(later.lossy);
    histories += later.histories;
    losses += later.losses;
    priced += later.priced;
    costs += later.costs;
    squares += later.squares;
  }

  long histories() {
    return histories;
  }

  /** How many of the first histories, of those that are remembered, lose. */
  int lossesOf(int first) {
    return lossy.get(0, first).cardinality();
  }

  /** How many of the first histories lose here and not in another's. */
  int lossesWithout(PlainSums other, int first) {
    BitSet only = lossy.get(0, first);
    only.andNot(other.lossy);
    return only.cardinality();
  }

  /** Of how many it is known what they cost. */
  long priced() {
    return priced;
  }

  long losses() {
    return losses;
  }

  /** The chance of any loss. */
  Estimate chance(double confidence) {
    return Proportions.of(losses, histories, confidence);
  }

  /** What it costs; empty where nothing is priced. */
  Optional<Estimate> cost(double confidence) {
    if (priced == 0) {
      return Optional.empty();
    }
    return Optional.of(
        Means.of(priced, costs, squares, confidence).within(0, Double.POSITIVE_INFINITY));
  }

  @Override
  public void lost(Loss loss) {
    lost = true;
  }

  @Override
  public void paid(Account all) {
    anyPaid = true;
    paid = all.total();
  }

  @Override
  public boolean wantsTime() {
    return timed;
  }

  @Override
  public void passed(
      double hours, double bare, double fragile, double down, double refill, double most) {
    // Only losses and money are asked for.
  }

  @Override
  public void recovered(Cause cause, double workHours, double wholeHours) {
    // Only losses and money are asked for.
  }
}
