package lastcopy.interval;

/**
 * A tally of an amount that most histories have none of: bytes lost, money lost, loss events.
 *
 * <p>Only the histories with some of it are added one by one; the number of all histories is added
 * per chunk. Nothing is allocated by adding. Not safe for threads: one tally a chunk, merged in the
 * order of the chunks, gives the same sums for any number of threads.
 */
public final class MeanTally {

  // From these numbers on the logarithm of the mean is near normal (shown by experiment in the
  // tests); the second counts amounts by their weight in the sum, so that one giant among many
  // clips does not pass for many.
  private static final long LEAST_NON_ZERO = 30;
  private static final double LEAST_EFFECTIVE = 10;

  private final SumsOfPowers sums = new SumsOfPowers();
  private long nonZero;
  private double largest;
  private double smallest = Double.POSITIVE_INFINITY;

  /**
   * Adds the amount of one history that has some; the history itself is counted by {@link
   * #addHistories}.
   *
   * @param amount above 0, finite
   * @throws IllegalArgumentException if it is not
   */
  public void add(double amount) {
    if (!(amount > 0 && amount < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("amount must be above 0 and finite: " + amount);
    }
    nonZero++;
    sums.add(amount);
    largest = Math.max(largest, amount);
    smallest = Math.min(smallest, amount);
  }

  /**
   * Adds to the number of histories, those with an amount and those without.
   *
   * @param count at least 0
   * @throws IllegalArgumentException if it is negative
   */
  public void addHistories(long count) {
    if (count < 0) {
      throw new IllegalArgumentException("number of histories must be at least 0: " + count);
    }
    sums.addHistories(count);
  }

  /** Adds all that another tally has seen. */
  public void merge(MeanTally other) {
    sums.merge(other.sums);
    nonZero += other.nonZero;
    largest = Math.max(largest, other.largest);
    smallest = Math.min(smallest, other.smallest);
  }

  /** The number of histories. */
  public long histories() {
    return sums.histories();
  }

  /** The number of histories with some of the amount. */
  public long nonZero() {
    return nonZero;
  }

  /** The sum of the amounts. */
  public double sum() {
    return sums.sum(1);
  }

  /** The sum of the squares of the amounts. */
  public double sumSquares() {
    return sums.sum(2);
  }

  /** The largest amount, 0 if there was none. */
  public double largest() {
    return largest;
  }

  /** The mean over all histories. */
  public double mean() {
    return sums.mean();
  }

  /**
   * The mean over all histories with its interval.
   *
   * <ul>
   *   <li>Many amounts (at least 30, of which at least 10 count in the sum, by Kish's sum²/sum of
   *       squares): that of a {@link SkewedMean}. Assumes that the amounts seen are typical: larger
   *       ones, so rare that none was seen, are what {@link #unseen} bounds.
   *   <li>Few: the chance that a history has some (Clopper-Pearson) times the mean of what such a
   *       history has, each at half the error rate (Bonferroni). The second is Student's interval,
   *       and above at least what the chance of amounts beyond the largest seen allows, up to
   *       {@code largestPossible}.
   *   <li>None: from 0 to the one-sided limit of the chance times {@code largestPossible}.
   * </ul>
   *
   * @param confidence in (0, 1)
   * @param largestPossible no history can have more; taken as the largest seen if that is more
   * @throws IllegalArgumentException if an argument is out of range
   * @throws IllegalStateException if there are fewer histories than amounts, or none
   */
  public Estimate estimate(double confidence, double largestPossible) {
    double errorRate = Quantiles.errorRate(confidence);
    if (!(largestPossible >= 0)) {
      throw new IllegalArgumentException(
          "largest possible amount must be at least 0: " + largestPossible);
    }
    long histories = sums.histories();
    if (histories < 1 || histories < nonZero) {
      throw new IllegalStateException(
          "a tally of " + nonZero + " amounts has " + histories + " histories");
    }
    double limit = Math.max(largest, largestPossible);
    if (nonZero == 0) {
      return new Estimate(0, 0, Proportions.upperOfNone(histories, errorRate) * limit, false);
    }
    boolean many = nonZero >= LEAST_NON_ZERO && sum() * (sum() / sumSquares()) >= LEAST_EFFECTIVE;
    return many ? ofMany(errorRate, limit) : ofFew(errorRate, limit);
  }

  /**
   * What amounts larger than any seen may add to the mean: the one-sided limit of their chance, of
   * which none was seen, times how much larger they can be.
   *
   * @param confidence in (0, 1)
   * @param largestPossible no history can have more
   */
  public double unseen(double confidence, double largestPossible) {
    double chance = Proportions.upperOfNone(sums.histories(), Quantiles.errorRate(confidence));
    return chance * Math.max(0, largestPossible - largest);
  }

  private Estimate ofMany(double errorRate, double limit) {
    Estimate estimate = SkewedMean.of(sums).estimate(errorRate);
    double high = Math.max(estimate.value(), Math.min(limit, estimate.high()));
    return new Estimate(estimate.value(), estimate.low(), high, true);
  }

  private Estimate ofFew(double errorRate, double limit) {
    double tail = errorRate / 4;
    double amount = sum() / nonZero;
    double half = nonZero == 1 ? Double.POSITIVE_INFINITY : studentHalfWidth(errorRate / 2);
    // Distribution-free: as many amounts, none of them beyond the largest (below the smallest),
    // bound the chance of one that is.
    double inside = Math.exp(Math.log(tail) / nonZero);
    double beyond = inside * largest + (1 - inside) * limit;
    double high = Math.min(limit, Math.max(amount + half, beyond));
    double low = amount - half > 0 ? amount - half : inside * smallest;
    return new Estimate(
        mean(),
        Math.min(mean(), low * Proportions.lower(nonZero, sums.histories(), tail)),
        Math.max(mean(), high * Proportions.upper(nonZero, sums.histories(), tail)),
        true);
  }

  private double studentHalfWidth(double errorRate) {
    double variance = Means.variance(nonZero, sum(), sumSquares());
    return Quantiles.student(errorRate, nonZero - 1.0) * Math.sqrt(variance / nonZero);
  }
}
