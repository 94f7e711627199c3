package lastcopy.simulate.rare;

import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;
import lastcopy.interval.Shares;
import lastcopy.interval.WeightedTally;

/** Weighted events and bytes of one cause, with the sums that the interval of its share needs. */
final class RareCause {

  /** Effective histories with a cause, below which the heaviest may not have been seen. */
  private static final double ENOUGH = 30;

  /** From so many on, their variance says how many more there may be. */
  static final long FEW_LATER = 10;

  /** What is left of squares by rounding once nearly all of them are taken away. */
  private static final double NOISE = 1e-14;

  final String sentence;
  private int eventsNow;
  private boolean laterNow;
  private long later;
  private double bytesNow;
  private double sumBytes;
  private double sum;
  private double squares;
  private double products;

  /** Of the sum, what histories add that have it after their first loss. */
  private double laterSum;

  RareCause(String sentence) {
    this.sentence = sentence;
  }

  /** An event of the history that is being simulated, the first of all causes or a later one. */
  void addNow(double bytes, boolean first) {
    eventsNow++;
    laterNow |= !first;
    bytesNow += bytes;
  }

  /** The history ends with so many events of all causes. */
  void endHistory(double weight, int eventsOfAll) {
    double mine = weight * eventsNow;
    sum += mine;
    squares += mine * mine;
    products += mine * (weight * eventsOfAll);
    sumBytes += weight * bytesNow;
    later += laterNow ? 1 : 0;
    laterSum += laterNow ? mine : 0;
    laterNow = false;
    eventsNow = 0;
    bytesNow = 0;
  }

  void merge(RareCause other) {
    later += other.later;
    laterSum += other.laterSum;
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
   * effective histories stand behind it, or behind all others, those that weigh most may not have
   * been seen: then its share may also be more, or less, by what none of as many losses as would be
   * there, were each as heavy as the heaviest, would still allow. Many histories that weigh little
   * are few by this: one cause may come about in a way that the biases make frequent and in another
   * that they make rare. So it may be more where few have it after their first loss, since hazards
   * are not biased then: what is rare as a first loss may be commoner after another.
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
    long heaviest = Math.max(1, (long) (1 / all.largestShare()));
    double unseen = Proportions.upperOfNone(heaviest, 1 - confidence);
    boolean fewLater = later < FEW_LATER || all.effectiveOf(laterSum) < FEW_LATER;
    double more = fewLater || isFew(sum, squares, all) ? unseen : 0;
    double others = all.sumSquares() - 2 * products + squares;
    double less = isFew(all.sum() - sum, Math.max(others, NOISE * squares), all) ? unseen : 0;
    return new Estimate(
        share.value(),
        Math.max(0, share.low() - less),
        Math.min(1, share.high() + more),
        share.seen());
  }

  /** Something, of which few effective histories (Kish) have any, or which stands for few. */
  private static boolean isFew(double sum, double squares, WeightedTally all) {
    return sum > 0 && (sum * sum < ENOUGH * squares || all.effectiveOf(sum) < ENOUGH);
  }
}
