package lastcopy.footage;

import java.util.List;

/**
 * What one feed carries across while nothing fails: its non-empty runs in the order of time. Within
 * a run, positions cross oldest first at a constant rate; between runs nothing moves. Times are
 * hours, positions bytes.
 */
public final class FeedLine {

  /**
   * One stretch of time in which the feed moves footage at a constant rate.
   *
   * @param start when it starts, in hours, at least 0
   * @param end when it ends, at least {@code start}
   * @param from the first position that it carries
   * @param to the position after the last that it carries, above {@code from}
   */
  public record Run(double start, double end, double from, double to) {
    double at(double t) {
      return t >= end ? to : Math.min(to, from + (t - start) * ((to - from) / (end - start)));
    }
  }

  private final double atStart;
  private final Run[] runs;

  FeedLine(double atStart, List<Run> runs) {
    this.atStart = atStart;
    this.runs = runs.toArray(new Run[0]);
  }

  /**
   * How much is across: the copy holds positions [0, result).
   *
   * @param t hours, at least 0
   */
  public double carried(double t) {
    return carriedIn(lastRun(t), t);
  }

  /** The position reached at t if no run after the given one has started; −1 for none yet. */
  double carriedIn(int run, double t) {
    return run < 0 ? atStart : runs[run].at(t);
  }

  /** The index of the last non-empty run that starts at t or before, or −1. */
  public int lastRun(double t) {
    int low = 0;
    int high = runs.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (runs[middle].start() <= t) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low - 1;
  }

  /** When something moves next: at t if a run is going, infinite if none comes. */
  double movesFrom(double t) {
    int last = lastRun(t);
    if (last >= 0 && runs[last].end() > t) {
      return t;
    }
    return last + 1 < runs.length ? runs[last + 1].start() : Double.POSITIVE_INFINITY;
  }

  /** The number of non-empty runs that start by the horizon. */
  public int runCount() {
    return runs.length;
  }

  /**
   * A run by its index.
   *
   * @throws ArrayIndexOutOfBoundsException if the index is not in [0, runCount)
   */
  public Run run(int index) {
    return runs[index];
  }
}
