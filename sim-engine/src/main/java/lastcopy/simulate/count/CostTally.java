package lastcopy.simulate.count;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lastcopy.experiment.Cost;
import lastcopy.history.report.Account;
import lastcopy.history.report.Expense;
import lastcopy.interval.Estimate;
import lastcopy.interval.Means;

/**
 * What histories of a layout cost: the total of each, and sums by kind and by year. Empty where
 * nothing is priced. Mutable; chunks are merged in their order.
 */
public final class CostTally {

  private Account last;
  private Account sums;
  private double[] totals = {};
  private int histories;

  /** Of a history that was given up nothing is kept. */
  void begin() {
    last = null;
  }

  void paid(Account all) {
    last = all;
  }

  void endHistory() {
    if (last == null) {
      return;
    }
    makeRoom(last, histories + 1);
    sums.add(last);
    totals[histories++] = last.total();
  }

  private void makeRoom(Account like, int size) {
    if (sums == null) {
      sums = like.empty();
    }
    if (size > totals.length) {
      totals = Arrays.copyOf(totals, Math.max(size, Math.max(64, 2 * totals.length)));
    }
  }

  void merge(CostTally other) {
    if (other.histories == 0) {
      return;
    }
    makeRoom(other.sums, histories + other.histories);
    sums.add(other.sums);
    System.arraycopy(other.totals, 0, totals, histories, other.histories);
    histories += other.histories;
  }

  /** What each history cost, in the order of their numbers. */
  public double[] totals() {
    return Arrays.copyOf(totals, histories);
  }

  /** What a layout costs; empty where nothing is priced. */
  public Optional<Cost> cost(double confidence) {
    if (histories == 0) {
      return Optional.empty();
    }
    List<Cost.Part> byKind = new ArrayList<>();
    double[] byYear = new double[sums.years()];
    for (Expense kind : Expense.values()) {
      double sum = 0;
      for (int year = 0; year < byYear.length; year++) {
        sum += mean(kind, year);
        byYear[year] += mean(kind, year);
      }
      byKind.add(new Cost.Part(kind.id(), sum));
    }
    double[] sorted = totals();
    Arrays.sort(sorted);
    return Optional.of(
        new Cost(
            total(confidence),
            quantile(sorted, 0.05),
            quantile(sorted, 0.5),
            quantile(sorted, 0.95),
            byKind,
            Arrays.stream(byYear).boxed().toList(),
            histories));
  }

  private double mean(Expense kind, int year) {
    return sums.of(kind, year) / histories;
  }

  /** Student's interval; differences from the first, since most of a total is alike in all. */
  private Estimate total(double confidence) {
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < histories; i++) {
      double more = totals[i] - totals[0];
      sum += more;
      squares += more * more;
    }
    if (histories < 2) {
      return Estimate.exact(totals[0]);
    }
    Estimate more = Means.of(histories, sum, squares, confidence);
    double first = totals[0];
    return new Estimate(first + more.value(), first + more.low(), first + more.high(), true)
        .within(0, Double.POSITIVE_INFINITY); // nobody is paid for storing
  }

  /**
   * The smallest amount that at least such a share of the histories does not exceed (definition 1
   * of Hyndman and Fan, The American Statistician 50(4), 1996): an amount that some history did
   * cost, and no mean of two where many cost the same and some a whole drive more.
   */
  private static double quantile(double[] sorted, double share) {
    return sorted[Math.max(0, (int) Math.ceil(share * sorted.length - 1e-9) - 1)];
  }
}
