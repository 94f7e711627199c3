package lastcopy.footage;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/**
 * When footage is held by the working copy only, exactly. Between two events (a shoot, a card that
 * expires, footage that ages out, a run's start or end) each feed moves linearly and nothing else
 * moves, so the bare stretch of each such segment runs from its start to the first crossing.
 */
final class Bareness {

  private final double[] starts;
  private final double[] bareUntil;
  private final double[] hoursBefore;
  private final double[] mostSoFar;

  private Bareness(double[] starts) {
    this.starts = starts;
    this.bareUntil = new double[starts.length];
    this.hoursBefore = new double[starts.length];
    this.mostSoFar = new double[starts.length];
  }

  static Bareness of(Studio studio, Layout layout, ShootTable shoots, List<FeedLine> lines) {
    Footage footage = studio.footage();
    OptionalDouble cards = layout.cardsKeepHours();
    double horizon = studio.horizonHours();
    Bareness table = new Bareness(events(footage, cards, shoots, lines, horizon));
    double hours = 0;
    double most = 0;
    for (int i = 0; i < table.starts.length; i++) {
      double start = table.starts[i];
      double end = i + 1 < table.starts.length ? table.starts[i + 1] : Double.POSITIVE_INFINITY;
      double upper = offCards(cards, shoots, start);
      double aged = Course.aged(footage, shoots, start);
      double until = aged >= upper ? start : crossing(lines, upper, start, end);
      most = Math.max(most, until > start ? upper - Math.max(aged, best(lines, start)) : 0);
      table.bareUntil[i] = until;
      table.hoursBefore[i] = hours;
      table.mostSoFar[i] = most;
      hours += until - start;
    }
    return table;
  }

  private static double[] events(
      Footage footage,
      OptionalDouble cards,
      ShootTable shoots,
      List<FeedLine> lines,
      double horizon) {
    DoubleStream.Builder times = DoubleStream.builder();
    times.add(0);
    footage.keepHours().ifPresent(times::add);
    for (int k = 0; k < shoots.count(); k++) {
      double shot = shoots.time(k);
      times.add(shot);
      cards.ifPresent(keep -> times.add(shot + keep));
      footage.keepHours().ifPresent(keep -> times.add(shot + keep));
    }
    for (FeedLine line : lines) {
      for (int i = 0; i < line.runCount(); i++) {
        times.add(line.run(i).start());
        times.add(line.run(i).end());
      }
    }
    return times.build().filter(t -> t <= horizon).sorted().distinct().toArray();
  }

  /** Bytes whose cards have expired, or that never were on cards the tool knows of. */
  private static double offCards(OptionalDouble cards, ShootTable shoots, double t) {
    double since = t - cards.orElse(0);
    return since < 0 ? shoots.onHand() : shoots.total(since);
  }

  private static double best(List<FeedLine> lines, double t) {
    return lines.stream().mapToDouble(line -> line.carried(t)).max().orElse(0);
  }

  private static double crossing(List<FeedLine> lines, double upper, double start, double end) {
    double until = upper > 0 ? end : start;
    for (FeedLine line : lines) {
      int run = line.lastRun(start);
      double now = line.carriedIn(run, start);
      if (now >= upper) {
        return start;
      }
      if (run >= 0 && line.run(run).to() >= upper && line.run(run).end() > start) {
        double left = line.run(run).end() - start;
        double share = (upper - now) / (line.run(run).to() - now);
        until = Math.min(until, start + left * share);
      }
    }
    return until;
  }

  double hours(double t) {
    int i = segment(t);
    return hoursBefore[i] + Math.max(0, Math.min(t, bareUntil[i]) - starts[i]);
  }

  double most(double t) {
    return mostSoFar[segment(t)];
  }

  private int segment(double t) {
    int found = Arrays.binarySearch(starts, t);
    return found >= 0 ? found : Math.max(0, -found - 2);
  }
}
