package lastcopy.outlook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lastcopy.footage.FeedForecast;
import lastcopy.footage.FeedLine;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** Works out lags and the first fill of one feed from its course. Hours and bytes. */
final class FeedReckoner {

  private final ShootTable shoots;
  private final List<FeedLine> lines;
  private double worst;
  private double weighted;
  private double bytes;

  private FeedReckoner(ShootTable shoots, List<FeedLine> lines) {
    this.shoots = shoots;
    this.lines = lines;
  }

  /** The lines of a fed copy: one for each of its turns. */
  static List<FeedLine> lines(FeedForecast forecast, int copy) {
    return IntStream.range(0, forecast.turns(copy))
        .mapToObj(turn -> forecast.line(copy, turn))
        .toList();
  }

  static FeedOutlook of(
      Studio studio, Layout layout, Copy copy, Route way, ShootTable shoots, List<FeedLine> lines) {
    FeedReckoner reckoner = new FeedReckoner(shoots, lines);
    reckoner.lags();
    double atEnd = shotPerSecond(studio.footage(), studio.years());
    LinkReckoner link = LinkReckoner.of(layout, copy, way.bytesPerSecond());
    double lastYear = shotPerSecond(studio.footage(), Math.max(0, studio.years() - 1));
    double now = shotPerSecond(studio.footage(), 0);
    LinkTime time = link.time(now, Math.max(lastYear, atEnd));
    boolean any = reckoner.bytes > 0;
    return new FeedOutlook(
        any ? OptionalDouble.of(reckoner.worst) : OptionalDouble.empty(),
        any ? OptionalDouble.of(reckoner.weighted / reckoner.bytes) : OptionalDouble.empty(),
        link.neverCarries(atEnd),
        Math.max(link.rateFor(atEnd), link.rateFor(now)),
        reckoner.firstFill(copy, way, studio.horizonHours()),
        copy.rotation().isPresent() ? Optional.empty() : Optional.of(time));
  }

  /** Mean bytes per second that shoots bring at a time in years. */
  private static double shotPerSecond(Footage footage, double years) {
    double size = footage.shoots().sizeBytes() * StrictMath.pow(1 + footage.growthPerYear(), years);
    return size / footage.shoots().everyHours() / Units.SECONDS_PER_HOUR;
  }

  /**
   * Between neighbouring ends of shoots and runs each line carries at one rate; what counts is the
   * line that has it first. Footage on hand has no lag: it is the first fill.
   */
  private void lags() {
    double[] ends = ends();
    int k = 0;
    for (int i = 0; i + 1 < ends.length; i++) {
      while (k < shoots.count() && shoots.end(k) <= ends[i]) {
        k++;
      }
      if (k < shoots.count()) {
        add(ends[i], ends[i + 1], shoots.time(k));
      }
    }
  }

  /** Positions at which a shoot or a run ends or begins, in order, without footage on hand. */
  private double[] ends() {
    DoubleStream ofShoots = IntStream.range(0, shoots.count()).mapToDouble(shoots::end);
    DoubleStream ofRuns =
        lines.stream()
            .flatMapToDouble(
                line ->
                    IntStream.range(0, line.runCount())
                        .mapToObj(line::run)
                        .flatMapToDouble(run -> DoubleStream.of(run.from(), run.to())));
    return DoubleStream.concat(
            DoubleStream.of(shoots.onHand()), DoubleStream.concat(ofShoots, ofRuns))
        .filter(position -> position >= shoots.onHand())
        .sorted()
        .distinct()
        .toArray();
  }

  private void add(double from, double to, double shot) {
    double first = Double.POSITIVE_INFINITY;
    double last = Double.POSITIVE_INFINITY;
    for (FeedLine line : lines) {
      int i = runThatCarries(line, (from + to) / 2);
      if (i >= 0) {
        first = Math.min(first, crossing(line.run(i), from) - shot);
        last = Math.min(last, crossing(line.run(i), to) - shot);
      }
    }
    if (last < Double.POSITIVE_INFINITY) {
      worst = Math.max(worst, last);
      weighted += (to - from) * (first + last) / 2;
      bytes += to - from;
    }
  }

  /** The run of a line that carries a position, or −1. */
  private static int runThatCarries(FeedLine line, double position) {
    int low = 0;
    int high = line.runCount() - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      FeedLine.Run run = line.run(middle);
      if (position < run.from()) {
        high = middle - 1;
      } else if (position >= run.to()) {
        low = middle + 1;
      } else {
        return middle;
      }
    }
    return -1;
  }

  private static double crossing(FeedLine.Run run, double position) {
    double share = (position - run.from()) / (run.to() - run.from());
    return run.start() + share * (run.end() - run.start());
  }

  private OptionalDouble firstFill(Copy copy, Route way, double horizon) {
    if (copy.startsFull()) {
      double byLink = RefillReckoner.hours(copy, shoots.onHand(), way);
      double byHand = RefillReckoner.byHandHours(copy, shoots.onHand()).orElse(byLink);
      return OptionalDouble.of(Math.min(byLink, byHand));
    }
    return lines.stream().mapToDouble(line -> filled(line, horizon)).filter(Double::isFinite).min();
  }

  private double filled(FeedLine line, double horizon) {
    for (int i = 0; i < line.runCount() && line.run(i).end() <= horizon; i++) {
      if (line.run(i).to() >= shoots.total(line.run(i).end())) {
        return line.run(i).end();
      }
    }
    return Double.POSITIVE_INFINITY;
  }
}
