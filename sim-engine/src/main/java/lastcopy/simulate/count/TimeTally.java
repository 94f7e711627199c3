package lastcopy.simulate.count;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lastcopy.experiment.LayoutResult;
import lastcopy.history.report.Cause;
import lastcopy.interval.Estimate;
import lastcopy.interval.Means;

/**
 * Sums and squares, over histories, of the time spent bare, fragile, without hardware, refilling.
 */
public final class TimeTally {

  private static final int FIGURES = 5;

  private final double[] now = new double[FIGURES];
  private final double[] sum = new double[FIGURES];
  private final double[] squares = new double[FIGURES];
  private final Map<String, OutageTally> outages = new TreeMap<>();
  private final List<Recovered> recovered = new ArrayList<>();
  private long histories;

  /** One interruption of work. */
  private record Recovered(Cause cause, double workHours, double wholeHours) {}

  /** Interruptions of work by one cause: how many, sums and squares of the hours. */
  private static final class OutageTally {
    final String sentence;
    final long[] counts = new long[2];
    final double[] sum = new double[2];
    final double[] squares = new double[2];

    OutageTally(String sentence) {
      this.sentence = sentence;
    }

    void add(int figure, double hours) {
      counts[figure]++;
      sum[figure] += hours;
      squares[figure] += hours * hours;
    }

    void merge(OutageTally other) {
      for (int i = 0; i < 2; i++) {
        counts[i] += other.counts[i];
        sum[i] += other.sum[i];
        squares[i] += other.squares[i];
      }
    }

    Estimate mean(int figure, double confidence) {
      return Means.ofAmounts(counts[figure], sum[figure], squares[figure], confidence);
    }
  }

  /** Of a history that was given up nothing is kept. */
  void begin() {
    Arrays.fill(now, 0);
    recovered.clear();
  }

  void add(double bare, double fragile, double away, double refill, double most) {
    now[0] += bare;
    now[1] += fragile;
    now[2] += away;
    now[3] += refill;
    now[4] = Math.max(now[4], most);
  }

  void recovered(Cause cause, double workHours, double wholeHours) {
    recovered.add(new Recovered(cause, workHours, wholeHours));
  }

  private void count(Recovered one) {
    Cause cause = one.cause;
    OutageTally tally =
        outages.computeIfAbsent(cause.id(), id -> new OutageTally(cause.sentence()));
    tally.add(0, one.workHours);
    if (!Double.isNaN(one.wholeHours)) {
      tally.add(1, one.wholeHours);
    }
  }

  void endHistory() {
    for (int i = 0; i < FIGURES; i++) {
      sum[i] += now[i];
      squares[i] += now[i] * now[i];
      now[i] = 0;
    }
    recovered.forEach(this::count);
    histories++;
  }

  void merge(TimeTally other) {
    for (int i = 0; i < FIGURES; i++) {
      sum[i] += other.sum[i];
      squares[i] += other.squares[i];
    }
    histories += other.histories;
    other.outages.forEach(
        (id, tally) ->
            outages.computeIfAbsent(id, key -> new OutageTally(tally.sentence)).merge(tally));
  }

  /** Time to work again and to be whole again, by what interrupted it, the commonest first. */
  public List<LayoutResult.Recovery> recoveries(double confidence) {
    List<LayoutResult.Recovery> all = new ArrayList<>();
    outages.forEach(
        (id, tally) ->
            all.add(
                new LayoutResult.Recovery(
                    id,
                    tally.sentence,
                    tally.counts[0],
                    hours(tally.mean(0, confidence)),
                    tally.counts[1] == 0
                        ? Optional.empty()
                        : Optional.of(hours(tally.mean(1, confidence))))));
    all.sort(Comparator.comparingLong((LayoutResult.Recovery r) -> -r.seen()));
    return all;
  }

  private static Estimate hours(Estimate mean) {
    return mean.within(0, Double.POSITIVE_INFINITY);
  }

  public LayoutResult.Exposure exposure(double horizonHours, double confidence) {
    double toDays = 365 / horizonHours;
    return new LayoutResult.Exposure(
        mean(0, toDays, confidence).within(0, 365),
        mean(1, toDays, confidence).within(0, 365),
        mean(2, toDays, confidence).within(0, 365),
        mean(3, toDays, confidence).within(0, 365),
        mean(4, 1, confidence).within(0, Double.POSITIVE_INFINITY),
        histories);
  }

  private Estimate mean(int i, double factor, double confidence) {
    return histories < 2
        ? Estimate.exact(sum[i] * factor)
        : Means.ofAmounts(histories, sum[i] * factor, squares[i] * factor * factor, confidence);
  }
}
