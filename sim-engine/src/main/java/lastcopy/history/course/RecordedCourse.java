package lastcopy.history.course;

import java.util.Arrays;
import lastcopy.footage.Rising;

/**
 * The course of a layout whose shoots come by the clock, recorded once by the engine itself: what
 * each copy holds after each instant at which something changes.
 */
public final class RecordedCourse implements UndisturbedCourse {

  private final int copies;
  private double[] time = new double[64];
  private double[] bareHours = new double[64];
  private double[] bareBytes = new double[64];
  private double[] most = new double[64];
  private double[] lowestBare = new double[64];
  private double[] base;
  private double[] flowTo;
  private double[] runStart;

  /** Of what flows at changing rates: since when, how fast and until when; else empty. */
  private double[] since = {};

  private double[] perHour = {};
  private double[] runEnd = {};
  private final double[] firstFilled;
  private final boolean linked;
  private int size;
  private final double[] atStart;

  /** The entry of the instant that it was moved to; −1 before the first. */
  private int entry;

  /**
   * Nothing is recorded yet.
   *
   * @param atStart by copy, bytes that it holds at the start
   */
  public RecordedCourse(double... atStart) {
    this(false, atStart);
  }

  /**
   * Nothing is recorded yet.
   *
   * @param linked whether some link is special, so that what flows may flow at changing rates
   * @param atStart by copy, bytes that it holds at the start
   */
  public RecordedCourse(boolean linked, double[] atStart) {
    this.linked = linked;
    this.atStart = atStart.clone();
    copies = atStart.length;
    firstFilled = new double[copies];
    Arrays.fill(firstFilled, Double.POSITIVE_INFINITY);
    base = new double[64 * copies];
    flowTo = new double[64 * copies];
    runStart = new double[64 * copies];
    growRates();
  }

  private void growRates() {
    if (linked) {
      since = Arrays.copyOf(since, runStart.length);
      perHour = Arrays.copyOf(perHour, runStart.length);
      runEnd = Arrays.copyOf(runEnd, runStart.length);
    }
  }

  /** Starts the entry of an instant; cumulative bare hours up to it, bytes bare after it. */
  public int append(double at, double hoursBare, double bytesBare, double lowest) {
    if (size > 0 && time[size - 1] == at) {
      size--;
    }
    if (size == time.length) {
      time = Arrays.copyOf(time, 2 * size);
      bareHours = Arrays.copyOf(bareHours, 2 * size);
      bareBytes = Arrays.copyOf(bareBytes, 2 * size);
      most = Arrays.copyOf(most, 2 * size);
      lowestBare = Arrays.copyOf(lowestBare, 2 * size);
      base = Arrays.copyOf(base, 2 * size * copies);
      flowTo = Arrays.copyOf(flowTo, 2 * size * copies);
      runStart = Arrays.copyOf(runStart, 2 * size * copies);
      growRates();
    }
    time[size] = at;
    bareHours[size] = hoursBare;
    bareBytes[size] = bytesBare;
    lowestBare[size] = lowest;
    most[size] = size == 0 ? bytesBare : Math.max(most[size - 1], bytesBare);
    return size++;
  }

  /** No entry follows: from now on an entry's lowest bare position is that of all later ones. */
  public void finish() {
    for (int i = size - 2; i >= 0; i--) {
      lowestBare[i] = Math.min(lowestBare[i], lowestBare[i + 1]);
    }
  }

  /** When some footage stands in one copy only. */
  public BareTimes bareTimes() {
    double[] edges = new double[size];
    int n = 0;
    boolean bare = false;
    for (int i = 0; i < size; i++) {
      if (bareBytes[i] > 0 != bare) {
        bare = !bare;
        edges[n++] = time[i];
      }
    }
    return new BareTimes(false, Arrays.copyOf(edges, n));
  }

  /** A copy holds [0, held); if a run is going it brings [held, to) from its start on. */
  public void set(int entry, int copy, double held, double to, double start) {
    base[entry * copies + copy] = held;
    flowTo[entry * copies + copy] = to;
    runStart[entry * copies + copy] = start;
  }

  /** What flows in an entry does so at a rate since a time, and ends at another as things are. */
  public void setRate(int ofEntry, int copy, double from, double bytesPerHour, double end) {
    since[ofEntry * copies + copy] = from;
    perHour[ofEntry * copies + copy] = bytesPerHour;
    runEnd[ofEntry * copies + copy] = end;
  }

  /** By a time a run has carried all that it began with, and no earlier entry said so. */
  public void hasFirstFill(int copy, double at) {
    firstFilled[copy] = Math.min(firstFilled[copy], at);
  }

  @Override
  public boolean isLinked() {
    return linked;
  }

  @Override
  public double since(int copy) {
    return entry < 0 ? 0 : since(entry, copy);
  }

  @Override
  public double perHour(int copy) {
    return entry < 0 ? 0 : perHour(entry, copy);
  }

  @Override
  public double runEnd(int copy) {
    return entry < 0 ? Double.POSITIVE_INFINITY : runEnd[entry * copies + copy];
  }

  @Override
  public double firstFilled(int copy) {
    return firstFilled[copy];
  }

  double since(int ofEntry, int copy) {
    return since[ofEntry * copies + copy];
  }

  double perHour(int ofEntry, int copy) {
    return perHour[ofEntry * copies + copy];
  }

  @Override
  public void begin() {} // it is that of all histories

  @Override
  public void moveTo(double at, boolean inclusive) {
    entry = entry(at, inclusive);
  }

  /** How many entries. */
  int size() {
    return size;
  }

  /** When an entry begins, in hours. */
  double time(int ofEntry) {
    return time[ofEntry];
  }

  /** The last entry before a time, or at it if {@code inclusive}; −1 if there is none. */
  int entry(double at, boolean inclusive) {
    int i = Rising.below(time, size, at);
    return inclusive && i < size && time[i] == at ? i : i - 1;
  }

  @Override
  public double base(int copy) {
    return entry < 0 ? atStart[copy] : base(entry, copy);
  }

  @Override
  public double flowTo(int copy) {
    return entry < 0 ? 0 : flowTo(entry, copy);
  }

  @Override
  public double runStart(int copy) {
    return entry < 0 ? 0 : runStart(entry, copy);
  }

  double base(int ofEntry, int copy) {
    return base[ofEntry * copies + copy];
  }

  double flowTo(int ofEntry, int copy) {
    return flowTo[ofEntry * copies + copy];
  }

  double runStart(int ofEntry, int copy) {
    return runStart[ofEntry * copies + copy];
  }

  @Override
  public double lowestBare() {
    return lowestBare[Math.max(0, entry)];
  }

  @Override
  public double bareHours(double at) {
    int i = entry(at, true);
    return i < 0 ? 0 : bareHours[i] + (bareBytes[i] > 0 ? at - time[i] : 0);
  }

  @Override
  public double mostBare(double from, double to) {
    int last = entry(to, true);
    if (from == 0) {
      return last < 0 ? 0 : most[last];
    }
    double largest = 0;
    for (int i = Math.max(0, entry(from, true)); i <= last; i++) {
      largest = Math.max(largest, bareBytes[i]);
    }
    return largest;
  }
}
