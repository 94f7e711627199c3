package lastcopy.interval;

/**
 * A tally of amounts times likelihood ratios, from histories that were biased towards losses: the
 * mean over all histories is an unbiased estimate however they were biased.
 *
 * <p>Histories may come from several biases by turns, each a stratum with a share of the histories
 * that is fixed beforehand. What differs between the means of strata is then no luck, and is left
 * out of the variance (Cochran, Sampling Techniques, 3rd ed. 1977, 5.3-5.6).
 *
 * <p>Only histories with some of the amount are added one by one. Tallies of chunks are merged in
 * the order of the chunks, which gives the same sums for any number of threads.
 */
public final class WeightedTally {

  /** Under so many effective amounts a figure that stands alone is not to be trusted. */
  public static final double LEAST_EFFECTIVE = 30;

  /** Above that share of one amount a figure is not to be trusted. */
  public static final double LARGEST_SHARE = 0.2;

  // Where the variance itself rests on fewer amounts than this, heavier ones may not have been seen
  // yet (shown by experiment in the tests, with lognormal weights of any spread).
  private static final double LEAST_BEHIND_VARIANCE = 10;

  // Of a figure among many, half of that and a third of the amounts will do; below, nothing but
  // Markov's inequality holds.
  private static final double AMONG_MANY = 10;
  private static final double AMONG_MANY_BEHIND_VARIANCE = 5;

  // Standard errors of the variance that are added to it where it says how many histories it takes.
  private static final double ALLOWANCE = 3;

  private final SumsOfPowers[] strata;
  private long nonZero;
  private double largest;

  /** Nothing seen yet, of histories of one kind. */
  public WeightedTally() {
    this(1);
  }

  /**
   * Nothing seen yet.
   *
   * @param strata how many biases histories come from, at least 1
   */
  public WeightedTally(int strata) {
    this.strata = new SumsOfPowers[strata];
    for (int s = 0; s < strata; s++) {
      this.strata[s] = new SumsOfPowers();
    }
  }

  /** Adds the weighted amount of a history of the first stratum, as {@link #add(int, double)}. */
  public void add(double amount) {
    add(0, amount);
  }

  /**
   * Adds the weighted amount of one history that has some; the history itself is counted by {@link
   * #addHistories}.
   *
   * @param stratum that it came from, from 0
   * @param amount times weight, above 0 and finite
   * @throws IllegalArgumentException if it is not
   */
  public void add(int stratum, double amount) {
    if (!(amount > 0 && amount < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("amount must be above 0 and finite: " + amount);
    }
    nonZero++;
    largest = Math.max(largest, amount);
    strata[stratum].add(amount);
  }

  /** Adds to the number of histories of the first stratum, with an amount or without. */
  public void addHistories(long count) {
    addHistories(0, count);
  }

  /** Adds to the number of histories of a stratum, those with an amount and those without. */
  public void addHistories(int stratum, long count) {
    strata[stratum].addHistories(count);
  }

  /** Adds all that another tally of as many strata has seen. */
  public void merge(WeightedTally other) {
    nonZero += other.nonZero;
    largest = Math.max(largest, other.largest);
    for (int s = 0; s < strata.length; s++) {
      strata[s].merge(other.strata[s]);
    }
  }

  /** The number of histories. */
  public long histories() {
    long sum = 0;
    for (SumsOfPowers stratum : strata) {
      sum += stratum.histories();
    }
    return sum;
  }

  private double sum(int power) {
    double sum = 0;
    for (SumsOfPowers stratum : strata) {
      sum += stratum.sum(power);
    }
    return sum;
  }

  /** The number of histories with some of the amount. */
  public long nonZero() {
    return nonZero;
  }

  /** The sum of the weighted amounts. */
  public double sum() {
    return sum(1);
  }

  /** The sum of their squares. */
  public double sumSquares() {
    return sum(2);
  }

  /** The mean over all histories. */
  public double mean() {
    return sum(1) / histories();
  }

  /**
   * Effective number of amounts, (Σx)²/Σx² (Kish, Survey Sampling, 1965); 0 if there are none, or
   * none so large that its square is a number above 0.
   */
  public double effective() {
    double squares = sum(2);
    return squares == 0 ? 0 : sum(1) * (sum(1) / squares);
  }

  /** For how many of the effective amounts some part of their sum stands; NaN if there are none. */
  public double effectiveOf(double part) {
    return part / sum(1) * effective();
  }

  /** The largest amount's share of their sum; 1 if there are none. */
  public double largestShare() {
    return nonZero == 0 ? 1 : largest / sum(1);
  }

  /** Relative variance of one history: with N of them the mean has the N-th part. */
  public double relativeVariance() {
    return nonZero == 0 ? Double.POSITIVE_INFINITY : Math.max(0, skewed().relativeVariance());
  }

  /**
   * How many histories it takes, by what these say, until the mean is known that closely, with an
   * allowance for how few of the amounts their variance rests on (see {@link #estimate}): a number
   * for a second stage whose own width then seldom falls short.
   *
   * @param halfWidth of the interval over the mean, above 0
   * @param confidence in (0, 1)
   * @return infinite where these are too few to say, 0 where all histories have the same
   */
  public double historiesFor(double halfWidth, double confidence) {
    if (!trusted(AMONG_MANY, AMONG_MANY_BEHIND_VARIANCE)) {
      return Double.POSITIVE_INFINITY;
    }
    SkewedMean mean = skewed();
    if (!(mean.relativeVariance() > 0)) {
      return 0;
    }
    double of = Quantiles.student(Quantiles.errorRate(confidence), mean.restsOn()) / halfWidth;
    return mean.relativeVariance() * of * of * (1 + ALLOWANCE / Math.sqrt(mean.restsOn()));
  }

  /**
   * Whether the mean may stand alone: enough effective amounts, no single one that decides, and a
   * variance that rests on enough of them.
   */
  public boolean trusted() {
    return trusted(LEAST_EFFECTIVE, LEAST_BEHIND_VARIANCE);
  }

  private boolean trusted(double least, double leastBehindVariance) {
    return effective() >= least
        && largestShare() <= LARGEST_SHARE
        && sum(2) * (sum(2) / sum(4)) >= leastBehindVariance;
  }

  /**
   * The mean over all histories with its interval.
   *
   * <ul>
   *   <li>Enough amounts: that of a {@link SkewedMean}.
   *   <li>Otherwise: from half the error rate times the mean, by Markov's inequality, which holds
   *       for any unbiased estimate that is never negative, up to {@code limit}.
   *   <li>None seen: from 0 to {@code limit}.
   * </ul>
   *
   * @param confidence in (0, 1)
   * @param limit what else is known to bound the mean, such as the limit from plain histories
   * @throws IllegalArgumentException if an argument is out of range
   */
  public Estimate estimate(double confidence, double limit) {
    double errorRate = Quantiles.errorRate(confidence);
    if (!(limit >= 0)) {
      throw new IllegalArgumentException("limit must be at least 0: " + limit);
    }
    if (nonZero == 0) {
      return new Estimate(0, 0, limit, false);
    }
    double mean = mean();
    if (!trusted(AMONG_MANY, AMONG_MANY_BEHIND_VARIANCE)) {
      return new Estimate(mean, errorRate / 2 * mean, Math.max(mean, limit), true);
    }
    return skewed().estimate(errorRate);
  }

  private SkewedMean skewed() {
    return SkewedMean.of(strata);
  }
}
