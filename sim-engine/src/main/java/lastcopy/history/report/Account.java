package lastcopy.history.report;

import java.util.EnumMap;
import java.util.Map;

/**
 * Money that is paid over the horizon, by kind and by year of 8,760 h, the last of which may be
 * shorter. What is paid exactly at the horizon counts in the last. Mutable.
 */
public final class Account {

  private static final double HOURS_PER_YEAR = 8_760;
  private static final Expense[] KINDS = Expense.values();

  private final double horizon;
  private final int years;
  private final Map<Expense, double[]> paid = new EnumMap<>(Expense.class);

  /**
   * Nothing is paid yet.
   *
   * @param horizonHours above 0
   */
  public Account(double horizonHours) {
    horizon = horizonHours;
    // A rounding of the product of years and hours is no year more.
    years = Math.max(1, (int) Math.ceil(horizonHours / HOURS_PER_YEAR - 1e-9));
    for (Expense kind : KINDS) {
      paid.put(kind, new double[years]);
    }
  }

  /** How many years, the last perhaps shorter. */
  public int years() {
    return years;
  }

  /** The year of an instant, from 0. */
  public int yearOf(double hours) {
    return Math.min(years - 1, (int) (hours / HOURS_PER_YEAR));
  }

  /** When a year ends, in hours. */
  public double endOf(int year) {
    return year == years - 1 ? horizon : (year + 1) * HOURS_PER_YEAR;
  }

  /** Makes it equal to another over the same horizon. */
  public void copyFrom(Account other) {
    for (Expense kind : KINDS) {
      System.arraycopy(other.paid.get(kind), 0, paid.get(kind), 0, years);
    }
  }

  /** Another with nothing paid, over the same horizon. */
  public Account empty() {
    return new Account(horizon);
  }

  /** All that another has over the same horizon is paid too. */
  public void add(Account other) {
    for (Expense kind : KINDS) {
      double[] mine = paid.get(kind);
      double[] its = other.paid.get(kind);
      for (int year = 0; year < years; year++) {
        mine[year] += its[year];
      }
    }
  }

  /** Some money is paid at an instant; negative takes back what was counted beforehand. */
  public void pay(Expense kind, double hours, double money) {
    paid.get(kind)[yearOf(hours)] += money;
  }

  /** The same all the time from one instant to another. */
  public void payAlong(Expense kind, double from, double to, double perHour) {
    for (double at = from; at < to; ) {
      double end = Math.min(to, endOf(yearOf(at)));
      pay(kind, at, perHour * (end - at));
      at = end;
    }
  }

  /** What was paid for something in a year. */
  public double of(Expense kind, int year) {
    return paid.get(kind)[year];
  }

  /** All that was paid. */
  public double total() {
    double sum = 0;
    for (Expense kind : KINDS) {
      for (double each : paid.get(kind)) {
        sum += each;
      }
    }
    return sum;
  }
}
