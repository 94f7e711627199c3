package lastcopy.interval;

import java.util.Arrays;

/**
 * A tally of differences of an amount between two layouts, history by history, of histories that
 * share their luck; weighted or not. Most histories have none.
 *
 * <p>The interval is that of a mean with Student's quantile at (Σd²)²/Σd⁴ degrees of freedom, about
 * the mean: how many differences the variance itself rests on, so that few differences, or heavy
 * ones, widen it. Each end is at least as far out as the correction for skewness puts it (Hall,
 * JRSS B 54 (1992) 221-228). Histories may come from several strata whose shares were fixed
 * beforehand: then only what differs within them is luck (Cochran, Sampling Techniques, 3rd ed.
 * 1977, 5.3).
 *
 * <p>It says nothing of differences larger than any seen. Mutable; tallies of chunks are merged in
 * their order, which gives the same sums for any number of threads.
 */
public final class PairedDifferences {

  /** Strata with fewer histories say nothing by themselves; then all are taken as one. */
  private static final long LEAST_OF_STRATUM = 30;

  private final SumsOfPowers[] strata;
  private long seen;

  /**
   * Nothing seen yet.
   *
   * @param strata at least 1
   */
  public PairedDifferences(int strata) {
    this.strata = new SumsOfPowers[strata];
    Arrays.setAll(this.strata, s -> new SumsOfPowers());
  }

  /** Adds the difference of a history; the history is counted by {@link #addHistories}. */
  public void add(int stratum, double difference) {
    if (difference != 0) {
      seen++;
      strata[stratum].add(difference);
    }
  }

  /** Adds to the number of histories of a stratum, those that differ and those that do not. */
  public void addHistories(int stratum, long count) {
    strata[stratum].addHistories(count);
  }

  /** Adds all that another tally of as many strata has seen. */
  public void merge(PairedDifferences other) {
    seen += other.seen;
    for (int s = 0; s < strata.length; s++) {
      strata[s].merge(other.strata[s]);
    }
  }

  /** Histories that differ. */
  public long seen() {
    return seen;
  }

  /**
   * The mean difference with its interval.
   *
   * @param errorRate of the interval, in (0, 1)
   * @param unseen how far from 0 the mean may lie where no history differs, at least 0
   */
  public Estimate estimate(double errorRate, double unseen) {
    if (seen == 0) {
      return new Estimate(0, -unseen, unseen, false);
    }
    SumsOfPowers all = new SumsOfPowers();
    boolean each = true;
    for (SumsOfPowers stratum : strata) {
      all.merge(stratum);
      each &= stratum.histories() == 0 || stratum.histories() >= LEAST_OF_STRATUM;
    }
    return each ? estimate(errorRate, all, strata) : estimate(errorRate, all, all);
  }

  private static Estimate estimate(double errorRate, SumsOfPowers all, SumsOfPowers... of) {
    double[] central = new double[5];
    for (SumsOfPowers stratum : of) {
      for (int k = 2; k < central.length; k++) {
        central[k] += stratum.central(k);
      }
    }
    double n = all.histories();
    double mean = all.mean();
    if (!(central[2] > 0) || n < 2) {
      return Estimate.exact(mean);
    }
    double t = Quantiles.student(errorRate, Math.max(1, central[2] * (central[2] / central[4])));
    double deviation = Math.sqrt(central[2] / n / (n - 1));
    double skewness = central[3] / (central[2] * Math.sqrt(central[2]));
    double down = Math.max(t, SkewedMean.cubic(t, skewness));
    double up = Math.max(t, -SkewedMean.cubic(-t, skewness));
    return new Estimate(mean, mean - down * deviation, mean + up * deviation, true);
  }
}
