package lastcopy.simulate;

import lastcopy.interval.Estimate;
import lastcopy.interval.Shares;
import lastcopy.interval.WeightedTally;

/** Weighted events and bytes of one cause, with the sums that the interval of its share needs. */
final class RareCause {

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

  /** Its share of the expected number of events, of which all causes have {@code all}. */
  Estimate share(WeightedTally all, double confidence) {
    return Shares.ofAmounts(
        all.nonZero(),
        Math.min(sum, all.sum()),
        all.sum(),
        squares,
        products,
        all.sumSquares(),
        confidence);
  }
}
