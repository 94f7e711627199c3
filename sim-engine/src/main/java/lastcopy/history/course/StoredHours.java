package lastcopy.history.course;

import java.util.function.DoubleUnaryOperator;
import lastcopy.history.plan.CopyPlan;

/**
 * What a copy holds on the undisturbed course, summed up over time in byte-hours: between two
 * entries it holds what had been carried, and what a run brings at the rate of its way.
 */
public final class StoredHours {

  private final RecordedCourse course;
  private final int copy;
  private final double perHour;
  private final DoubleUnaryOperator aged;
  private final double[] before;

  /**
   * Sums up a course.
   *
   * @param of the copy
   * @param aged bytes that have aged out by a time
   */
  public StoredHours(RecordedCourse course, CopyPlan of, DoubleUnaryOperator aged) {
    this.course = course;
    copy = of.index();
    perHour = of.way() == null ? 0 : of.way().bytesPerHour();
    this.aged = aged;
    before = new double[course.size()];
    for (int e = 1; e < before.length; e++) {
      before[e] = before[e - 1] + within(e - 1, course.time(e));
    }
  }

  /** Byte-hours from the start to a time. */
  public double until(double time) {
    int e = course.entry(time, true);
    return e < 0 ? 0 : before[e] + within(e, time);
  }

  private double within(int entry, double to) {
    double from = course.time(entry);
    double base = course.base(entry, copy);
    double comes = Math.max(0, course.flowTo(entry, copy) - base);
    double start = course.isLinked() ? course.since(entry, copy) : course.runStart(entry, copy);
    double rate = course.isLinked() ? course.perHour(entry, copy) : perHour;
    double held = base - aged.applyAsDouble(from);
    return held * (to - from)
        + (comes > 0 ? brought(comes, rate, to - start) - brought(comes, rate, from - start) : 0);
  }

  /**
   * Byte-hours of what a run has brought.
   *
   * @param bytes that it brings in all
   * @param hours since its start, at least 0
   */
  public static double brought(double bytes, double perHour, double hours) {
    double going = Math.min(hours, bytes / perHour);
    return perHour * going * going / 2 + bytes * (hours - going);
  }
}
