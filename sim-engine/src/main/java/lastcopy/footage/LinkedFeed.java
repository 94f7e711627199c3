package lastcopy.footage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import lastcopy.scenario.Carried;
import lastcopy.scenario.DailyHours;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Periodic;

/**
 * One feed among those of a layout that are worked out together, run by run, while nothing fails
 * ({@link LinkedFeeds}). Times are hours, positions bytes, rates bytes per hour.
 */
final class LinkedFeed {

  /** What would cross within it is not left for the next opening: it is a rounding. */
  private static final double ROUNDING_HOURS = 1e-9;

  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final Optional<Periodic> due;
  private final double rate;
  private final double longest;
  private final Optional<DailyHours> hours;
  private final Optional<Carried> carried;
  private final DoubleUnaryOperator aged;
  private final double atStart;
  private final List<FeedLine.Run> stretches = new ArrayList<>();
  private final List<FeedLine.Run> runs = new ArrayList<>();

  /** The uplink that it shares; empty for a link of its own. */
  final String uplink;

  private boolean firstFill;
  private boolean going;
  private double start;
  private double first;
  private double to;
  private double since;
  private double from;
  private double pace;
  private double across;
  private double byHandUntil;
  private double next;

  /**
   * A feed that has moved nothing yet.
   *
   * @param due when runs are due; empty for a continuous feed
   * @param longest the longest that a run may last before it is cut, infinite if it is not
   * @param uplink the uplink that it shares with others; empty for none
   * @param atStart what the target holds at the start
   * @param firstFill whether the first run fills a copy that starts empty
   */
  LinkedFeed(
      Feed feed,
      Optional<Periodic> due,
      double rate,
      double longest,
      String uplink,
      DoubleUnaryOperator aged,
      double atStart,
      boolean firstFill) {
    this.due = due;
    this.rate = rate;
    this.longest = longest;
    this.hours = feed.between().filter(daily -> !daily.always());
    this.carried = feed.carried();
    this.uplink = uplink;
    this.aged = aged;
    this.atStart = atStart;
    this.firstFill = firstFill;
    across = atStart;
    next = due.map(Periodic::at).orElse(0.0);
  }

  boolean isContinuous() {
    return due.isEmpty();
  }

  boolean isGoing() {
    return going;
  }

  double rate() {
    return rate;
  }

  /** What is across by a time that is not before the last one asked for. */
  double across(double now) {
    return going && !isByHand() ? Math.min(to, from + pace * (now - since)) : across;
  }

  private boolean isByHand() {
    return byHandUntil < NEVER;
  }

  /** When a run is to start; infinite while none is waited for. */
  double next() {
    return going ? NEVER : next;
  }

  /** Looks again at a time, or at the first run that is due from then on. */
  void wakes(double time, boolean inclusive) {
    next = due.map(runs -> inclusive ? runs.from(time) : runs.after(time)).orElse(time);
  }

  /** Waits to be woken. */
  void sleeps() {
    next = NEVER;
  }

  /** Whether it moves on its link at a time. */
  boolean flows(double now) {
    return going && !isByHand() && isOpen(now);
  }

  /** Whether its link may be used at a time. */
  boolean isOpen(double now) {
    return hours.map(daily -> daily.isOpen(now)).orElse(true);
  }

  /** The first instant after a time at which its run ends or its link opens or closes. */
  double nextChange(double now) {
    if (!going) {
      return NEVER;
    }
    if (isByHand()) {
      return byHandUntil;
    }
    double end = pace > 0 ? since + (to - from) / pace : NEVER;
    double cut = Math.min(Math.max(end, now), start + longest);
    return Math.min(cut, hours.map(daily -> daily.changeAfter(now)).orElse(NEVER));
  }

  /** How much a run that starts would carry of what its source holds. */
  double lacks(double now, double held) {
    return Math.max(0, held - firstLacking(now));
  }

  private double firstLacking(double now) {
    return Math.max(across, aged.applyAsDouble(now));
  }

  /** A run starts with what its source holds; whether there is anything to carry. */
  boolean starts(double now, double held) {
    double bytes = lacks(now, held);
    if (!(bytes > 0) || now + bytes / rate == now) {
      firstFill = false;
      across = Math.max(across, held);
      return false;
    }
    going = true;
    start = now;
    since = now;
    to = held;
    first = firstLacking(now);
    from = first;
    pace = 0;
    double hand = firstFill ? now + carried.map(c -> c.hours(bytes)).orElse(NEVER) : NEVER;
    byHandUntil = hand < end(now, bytes / rate) ? hand : NEVER;
    return true;
  }

  private double end(double now, double use) {
    return hours.map(daily -> daily.end(now, use)).orElse(now + use);
  }

  /** From now on it moves at another pace, if that is another. */
  void flowsAt(double perHour, double now) {
    boolean more = to - across(now) > pace * ROUNDING_HOURS;
    if (going && !isByHand() && perHour != pace && more) {
      closeStretch(now);
      pace = perHour;
    }
  }

  private void closeStretch(double now) {
    closeStretch(now, across(now));
  }

  private void closeStretch(double now, double reached) {
    across = reached;
    if (across > from && now > since) {
      stretches.add(new FeedLine.Run(since, now, from, across));
    }
    since = now;
    from = across;
  }

  /** What has aged out meanwhile does not cross any more. */
  void agesOut(double now) {
    double gone = aged.applyAsDouble(now);
    if (going && !isByHand() && across(now) < gone) {
      closeStretch(now);
      from = Math.min(to, gone);
      across = from;
    }
  }

  /** Whether its run has come to its end, which it then has. */
  boolean ends(double now) {
    boolean over =
        isByHand()
            ? byHandUntil <= now
            : to - across(now) <= pace * ROUNDING_HOURS || now >= start + longest;
    if (!going || !over) {
      return false;
    }
    if (isByHand()) {
      stretches.add(new FeedLine.Run(Math.nextDown(now), now, first, to));
      across = to;
    } else {
      closeStretch(now, to - across(now) <= pace * ROUNDING_HOURS ? to : across(now));
    }
    over(now);
    return true;
  }

  private void over(double now) {
    going = false;
    firstFill = false;
    if (across > first) {
      runs.add(new FeedLine.Run(start, Math.max(now, Math.nextUp(start)), first, across));
    }
    next = Math.max(now, due.map(each -> each.after(start)).orElse(now));
  }

  /** After the horizon what is under way goes on as if it had its link to itself. */
  FeedLine line(double horizon) {
    if (going && isByHand()) {
      ends(byHandUntil);
    } else if (going) {
      closeStretch(horizon);
      double cut = start + longest;
      double end = Math.min(end(horizon, (to - across) / rate), cut);
      double reached = end < cut ? to : Math.min(to, across + rate * (cut - horizon));
      if (reached > across && end > horizon) {
        stretches.add(new FeedLine.Run(horizon, end, across, reached));
      }
      across = Math.max(across, reached);
      over(end);
    }
    return new FeedLine(atStart, stretches, runs);
  }
}
