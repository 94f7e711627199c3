package lastcopy.footage;

import java.util.List;

/**
 * What one feed carries across while nothing fails: its non-empty runs in the order of time, or,
 * where their rate changes, stretches of them in which it does not. Within each, positions cross
 * oldest first at a constant rate; between them nothing moves. Times are hours, positions bytes.
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
  private final Run[] whole;

  /**
   * A line.
   *
   * @param runs stretches at a constant rate
   * @param whole runs from their start to their end
   */
  FeedLine(double atStart, List<Run> runs, List<Run> whole) {
    this.atStart = atStart;
    this.runs = runs.toArray(new Run[0]);
    this.whole = whole.toArray(new Run[0]);
  }

  /**
   * When what is to be passed on at a time is across: with the run that is due then, or after the
   * one that is then going on.
   *
   * @param at when it was there to be passed on
   * @param due the first run that is due from then on
   */
  public double passes(double at, double due) {
    int before = last(whole, at);
    boolean waits = before >= 0 && whole[before].start() < at;
    double start = waits ? Math.max(due, whole[before].end()) : due;
    int run = last(whole, start);
    return run >= 0 && whole[run].start() == start ? whole[run].end() : start;
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
    return last(runs, t);
  }

  private static int last(Run[] runs, double t) {
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
