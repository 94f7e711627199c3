package lastcopy.simulate.rare;

import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;
import lastcopy.interval.Shares;
import lastcopy.interval.WeightedTally;

/** Weighted events and bytes of one cause, with the sums that the interval of its share needs. */
final class RareCause {

  /** Effective histories with a cause, below which the heaviest may not have been seen. */
  private static final double ENOUGH = 30;

  final String sentence;
  private int eventsNow;
  private double bytesNow;
  private double sumBytes;
  private double sum;
  private double squares;
  private double products;

  RareCause(String sentence) {
    this.sentence = sentence;
  }

  /** An event of the history that is being simulated. */
  void addNow(double bytes) {
    eventsNow++;
    bytesNow += bytes;
  }

  /** The history ends with so many events of all causes. */
  void endHistory(double weight, int eventsOfAll) {
    double mine = weight * eventsNow;
    sum += mine;
    squares += mine * mine;
    products += mine * (weight * eventsOfAll);
    sumBytes += weight * bytesNow;
    eventsNow = 0;
    bytesNow = 0;
  }

  void merge(RareCause other) {
    sumBytes += other.sumBytes;
    sum += other.sum;
    squares += other.squares;
    products += other.products;
  }

  double bytes() {
    return sumBytes;
  }

  /**
   * Its share of the expected number of events, of which all causes have {@code all}. Where few
   * effective histories stand behind it, those that weigh most may not have been seen: then its
   * share may also be what none of the effective histories with a loss would still allow.
   */
  Estimate share(WeightedTally all, double confidence) {
    Estimate share =
        Shares.ofAmounts(
            all.nonZero(),
            Math.min(sum, all.sum()),
            all.sum(),
            squares,
            products,
            all.sumSquares(),
            confidence);
    boolean few = sum * sum < ENOUGH * squares;
    long effective = Math.max(1, (long) all.effective());
    double more = few ? Proportions.upperOfNone(effective, 1 - confidence) : 0;
    return share.upTo(Math.min(more, 1 - share.high()));
  }
}
