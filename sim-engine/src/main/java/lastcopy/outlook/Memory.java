package lastcopy.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import lastcopy.footage.FeedForecast;
import lastcopy.footage.FeedLine;
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
    for (int i = 0; i < STRIKES; i++) {
      held.add(heldAfter(horizonHours * (i + 0.5) / STRIKES));
      longest[i] = DoubleStream.of(held.get(i)).max().orElseThrow();
    }
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
    int copies = layout.copies().size();
    double[] arrives = new double[copies];
    double[] hours = new double[copies];
    for (int known = 0, c = 0; known < copies; c = (c + 1) % copies) {
      Copy copy = layout.copies().get(c);
      int from = copy.feed().map(feed -> layout.indexOf(feed.from())).orElse(-1);
      if (arrives[c] == 0 && (from < 0 || arrives[from] > 0)) {
        double at = from < 0 ? strike : arrives[from];
        double last = at;
        double first = at;
        for (int turn = 0; from >= 0 && turn < forecast.turns(c); turn++) {
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
    Feed feed = copy.feed().orElseThrow();
    if (malware && copy.rotation().isEmpty() && copy.reach() == Copy.Reach.ONLINE) {
      return strike;
    }
    if (!(feed.schedule() instanceof Feed.Every every)) {
      return at;
    }
    double round = copy.rotation().map(r -> r.turns() * r.everyHours()).orElse(every.everyHours());
    double offset = copy.rotation().map(r -> turn * r.everyHours()).orElse(0.0) + every.atHours();
    Periodic runs = new Periodic(offset, round);
    boolean visits = copy.rotation().isPresent() && strike < runs.upTo(strike) + feed.visitHours();
    if (malware && visits) {
      return strike;
    }
    double due = runs.from(at);
    return ended(forecast.line(c, turn), at, due);
  }

  /** When a run that is due at a time, or after the one then going, has ended. */
  private static double ended(FeedLine line, double at, double due) {
    double start = due;
    int before = line.lastRun(at);
    if (before >= 0 && line.run(before).start() < at) {
      start = Math.max(due, line.run(before).end());
    }
    int run = line.lastRun(start);
    return run >= 0 && line.run(run).start() == start ? line.run(run).end() : start;
  }
}
