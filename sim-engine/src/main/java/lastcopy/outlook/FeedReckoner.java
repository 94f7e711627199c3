package lastcopy.outlook;

import java.util.OptionalDouble;
import lastcopy.footage.FeedLine;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** Works out lags and the first fill of one feed from its course. Hours and bytes. */
final class FeedReckoner {

  private final ShootTable shoots;
  private final FeedLine line;
  private double worst;
  private double weighted;
  private double bytes;

  private FeedReckoner(ShootTable shoots, FeedLine line) {
    this.shoots = shoots;
    this.line = line;
  }

  static FeedOutlook of(
      Studio studio, Copy copy, double bytesPerSecond, ShootTable shoots, FeedLine line) {
    FeedReckoner reckoner = new FeedReckoner(shoots, line);
    reckoner.lags();
    double atEnd = shotPerSecond(studio.footage(), studio.years());
    double needed = Math.max(atEnd, shotPerSecond(studio.footage(), 0));
    boolean any = reckoner.bytes > 0;
    return new FeedOutlook(
        any ? OptionalDouble.of(reckoner.worst) : OptionalDouble.empty(),
        any ? OptionalDouble.of(reckoner.weighted / reckoner.bytes) : OptionalDouble.empty(),
        bytesPerSecond < atEnd,
        needed,
        reckoner.firstFill(copy, bytesPerSecond, studio.horizonHours()));
  }

  /** Mean bytes per second that shoots bring at a time in years. */
  private static double shotPerSecond(Footage footage, double years) {
    double size = footage.shoots().sizeBytes() * StrictMath.pow(1 + footage.growthPerYear(), years);
    return size / footage.shoots().everyHours() / Units.SECONDS_PER_HOUR;
  }

  /** Footage on hand has no lag: it is the first fill. */
  private void lags() {
    int shoot = 0;
    for (int i = 0; i < line.runCount(); i++) {
      FeedLine.Run run = line.run(i);
      while (shoot < shoots.count() && shoots.end(shoot) <= run.from()) {
        shoot++;
      }
      for (int k = shoot; k < shoots.count() && begin(k) < run.to(); k++) {
        add(run, k);
      }
    }
  }

  private double begin(int k) {
    return k == 0 ? shoots.onHand() : shoots.end(k - 1);
  }

  private void add(FeedLine.Run run, int k) {
    double from = Math.max(run.from(), begin(k));
    double to = Math.min(run.to(), shoots.end(k));
    double last = crossing(run, to) - shoots.time(k);
    double first = crossing(run, from) - shoots.time(k);
    worst = Math.max(worst, last);
    weighted += (to - from) * (first + last) / 2;
    bytes += to - from;
  }

  private static double crossing(FeedLine.Run run, double position) {
    double share = (position - run.from()) / (run.to() - run.from());
    return run.start() + share * (run.end() - run.start());
  }

  private OptionalDouble firstFill(Copy copy, double bytesPerSecond, double horizon) {
    if (copy.startsFull()) {
      return OptionalDouble.of(shoots.onHand() / bytesPerSecond / Units.SECONDS_PER_HOUR);
    }
    for (int i = 0; i < line.runCount() && line.run(i).end() <= horizon; i++) {
      if (line.run(i).to() >= shoots.total(line.run(i).end())) {
        return OptionalDouble.of(line.run(i).end());
      }
    }
    return OptionalDouble.empty();
  }
}
