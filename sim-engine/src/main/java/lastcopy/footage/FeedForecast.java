package lastcopy.footage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Periodic;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/**
 * What the feeds of a layout will carry as long as nothing fails: what each copy holds at any time.
 * Built once for a layout; lookups are binary searches. Times are hours from the start, amounts
 * bytes.
 *
 * <p>A run that is due at the very instant of a shoot does not carry it. A copy whose drives take
 * turns has one line for each turn: turn j is fed every k·P from {@code at} + j·P on, and its run
 * is cut when the visit ends.
 */
public final class FeedForecast {

  private final List<List<FeedLine>> lines;

  private FeedForecast(List<List<FeedLine>> lines) {
    this.lines = lines;
  }

  /** The forecast of a layout's feeds under a studio's footage, over the studio's horizon. */
  public static FeedForecast of(Studio studio, Layout layout, ShootTable shoots) {
    Footage footage = studio.footage();
    DoubleUnaryOperator aged = t -> aged(footage, shoots, t);
    if (LinkedFeeds.are(layout)) {
      return new FeedForecast(LinkedFeeds.lines(studio, layout, shoots, aged));
    }
    List<List<FeedLine>> lines = new ArrayList<>();
    layout.copies().forEach(copy -> lines.add(new ArrayList<>()));
    for (int copy = 1; copy < layout.copies().size(); copy++) {
      build(studio, layout, shoots, aged, copy, lines);
    }
    return new FeedForecast(lines);
  }

  /** Bytes that have aged out by t; footage on hand counts as shot at time 0. */
  static double aged(Footage footage, ShootTable shoots, double t) {
    double since = t - footage.keepHours().orElse(Double.POSITIVE_INFINITY);
    return since < 0 ? 0 : shoots.total(since);
  }

  private static void build(
      Studio studio,
      Layout layout,
      ShootTable shoots,
      DoubleUnaryOperator aged,
      int copy,
      List<List<FeedLine>> lines) {
    if (!lines.get(copy).isEmpty()) {
      return;
    }
    Copy target = layout.copies().get(copy);
    int from = layout.indexOf(target.feed().orElseThrow().from());
    if (from > 0) {
      build(studio, layout, shoots, aged, from, lines);
    }
    Source source =
        from > 0 ? new Source(shoots, lines.get(from).get(0)) : new Source(shoots, null);
    double rate = Ways.feed(layout.copies().get(from), target) * Units.SECONDS_PER_HOUR;
    double atStart = target.startsFull() ? shoots.onHand() : 0;
    int turns = target.rotation().map(Copy.Rotation::turns).orElse(1);
    for (int turn = 0; turn < turns; turn++) {
      FeedRuns runs = new FeedRuns(rate, studio.horizonHours(), aged, atStart);
      lines.get(copy).add(line(target, turn, source, runs));
    }
  }

  private static FeedLine line(Copy target, int turn, Source source, FeedRuns runs) {
    Feed feed = target.feed().orElseThrow();
    if (target.rotation().isPresent()) {
      Periodic due = due(feed, target.rotation().get(), turn);
      return runs.scheduled(due, source::held, source::more, feed.visitHours());
    }
    if (feed.schedule() instanceof Feed.Every every) {
      return runs.scheduled(every.due(), source::held, source::more, Double.POSITIVE_INFINITY);
    }
    return source.line == null ? runs.continuous(source.shoots) : runs.following(source.line);
  }

  /** When the runs of a turn of a rotation are due. */
  static Periodic due(Feed feed, Copy.Rotation rotation, int turn) {
    double at = feed.schedule() instanceof Feed.Every every ? every.atHours() : 0;
    double round = rotation.turns() * rotation.everyHours();
    return new Periodic(at + turn * rotation.everyHours(), round);
  }

  /** When the runs of a feed are due; empty if it is continuous. */
  static Optional<Periodic> due(Feed feed) {
    return feed.schedule() instanceof Feed.Every every
        ? Optional.of(every.due())
        : Optional.empty();
  }

  /** Where a feed reads: the working copy if there is no line. */
  private record Source(ShootTable shoots, FeedLine line) {
    /** What a run that starts at s finds: feed runs that start come before offloads. */
    double held(double s) {
      return line == null ? before(shoots, s) : line.carried(s);
    }

    /** When a run may find more than one at s does, at the earliest; infinite for never. */
    double more(double s) {
      if (line != null) {
        return line.movesFrom(s);
      }
      int k = shoots.shotBefore(s);
      return k < shoots.count() ? shoots.time(k) : Double.POSITIVE_INFINITY;
    }
  }

  /** The total just before t, without a shoot at t itself. */
  static double before(ShootTable shoots, double t) {
    int k = shoots.shotBy(t);
    while (k > 0 && shoots.time(k - 1) >= t) {
      k--;
    }
    return k == 0 ? shoots.onHand() : shoots.end(k - 1);
  }

  /** How many drives of a fed copy take turns; 1 without rotation. */
  public int turns(int copy) {
    return Math.max(1, lines.get(copy).size());
  }

  /**
   * The line of one turn of a fed copy.
   *
   * @throws IndexOutOfBoundsException for the working copy or a turn that does not exist
   */
  public FeedLine line(int copy, int turn) {
    return lines.get(copy).get(turn);
  }
}
