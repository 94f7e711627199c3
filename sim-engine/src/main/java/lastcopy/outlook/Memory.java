package lastcopy.outlook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import lastcopy.footage.FeedForecast;
import lastcopy.law.Law;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Periodic;

/**
 * For how long copies still hold what was deleted or destroyed at the desk: until the next run of
 * their feed has brought the news, and for {@code keeps_deleted} from then on. Hours. Taken over
 * strikes that are spread evenly over the horizon, for footage that all copies had.
 */
final class Memory {

  /** Strikes looked at; no simple part of a day, a week or a year. */
  private static final int STRIKES = 4_001;

  private final Layout layout;
  private final FeedForecast forecast;
  private final boolean malware;

  /** By copy, its source; -1 for the working copy. */
  private final int[] from;

  /** By copy and turn, when runs of its feed begin; null where it takes everything at once. */
  private final Periodic[][] runs;

  private final List<double[]> held = new ArrayList<>();
  private final double[] longest = new double[STRIKES];

  /**
   * The memory of the copies of a layout.
   *
   * @param malware whether copies in reach are struck at once
   */
  Memory(Layout layout, FeedForecast forecast, double horizonHours, boolean malware) {
    this.layout = layout;
    this.forecast = forecast;
    this.malware = malware;
    List<Copy> copies = layout.copies();
    from = copies.stream().mapToInt(this::source).toArray();
    runs = new Periodic[from.length][];
    Arrays.setAll(runs, c -> runs(copies.get(c), forecast.turns(c)));
    for (int i = 0; i < STRIKES; i++) {
      held.add(heldAfter(horizonHours * (i + 0.5) / STRIKES));
      longest[i] = DoubleStream.of(held.get(i)).max().orElseThrow();
    }
  }

  private int source(Copy copy) {
    return copy.feed().map(feed -> layout.indexOf(feed.from())).orElse(-1);
  }

  private static Periodic[] runs(Copy copy, int turns) {
    Periodic[] runs = new Periodic[turns];
    if (copy.feed().isPresent() && copy.feed().get().schedule() instanceof Feed.Every every) {
      Arrays.setAll(runs, turn -> runs(copy, every, turn));
    }
    return runs;
  }

  private static Periodic runs(Copy copy, Feed.Every every, int turn) {
    double round = copy.rotation().map(r -> r.turns() * r.everyHours()).orElse(every.everyHours());
    double offset = copy.rotation().map(r -> turn * r.everyHours()).orElse(0.0) + every.atHours();
    return new Periodic(offset, round);
  }

  /** The mean of how long a copy holds it. */
  double mean(int copy) {
    return held.stream().mapToDouble(hours -> hours[copy]).average().orElseThrow();
  }

  /** The chance that it is noticed only after no copy holds it any more. */
  double late(Law noticed) {
    return DoubleStream.of(longest).map(noticed::survival).average().orElseThrow();
  }

  private double[] heldAfter(double strike) {
    int copies = from.length;
    double[] arrives = new double[copies];
    double[] hours = new double[copies];
    for (int known = 0, c = 0; known < copies; c = (c + 1) % copies) {
      Copy copy = layout.copies().get(c);
      int source = from[c];
      if (arrives[c] == 0 && (source < 0 || arrives[source] > 0)) {
        double at = source < 0 ? strike : arrives[source];
        double last = at;
        double first = at;
        for (int turn = 0; source >= 0 && turn < runs[c].length; turn++) {
          double turned = arrival(copy, c, turn, strike, at);
          last = Math.max(last, turned);
          first = turn == 0 ? turned : Math.min(first, turned);
        }
        arrives[c] = Math.max(first, Double.MIN_VALUE);
        hours[c] = last - strike + copy.keepsDeletedHours();
        known++;
      }
    }
    return hours;
  }

  /** When the news reaches a copy whose source has it at a time. */
  private double arrival(Copy copy, int c, int turn, double strike, double at) {
    if (malware && copy.rotation().isEmpty() && copy.reach() == Copy.Reach.ONLINE) {
      return strike;
    }
    Periodic due = runs[c][turn];
    if (due == null) {
      return at;
    }
    if (malware && isVisiting(copy, due, strike)) {
      return strike;
    }
    return forecast.line(c, turn).passes(at, due.from(at));
  }

  private static boolean isVisiting(Copy copy, Periodic due, double strike) {
    return copy.rotation().isPresent()
        && strike < due.upTo(strike) + copy.feed().orElseThrow().visitHours();
  }
}
