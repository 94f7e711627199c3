package lastcopy.footage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Periodic;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Uplink;
import lastcopy.scenario.Ways;

/**
 * What the feeds of a layout carry while nothing fails, where links may be used at certain hours
 * only, are shared, or a first fill is carried by hand: all feeds together, from one instant at
 * which something changes to the next. Between them each moves at one rate, so the result is exact.
 * A continuous feed behind a copy that is itself being fed starts at quarters of an hour, and has
 * its share of an uplink meanwhile.
 */
final class LinkedFeeds {

  private static final Periodic QUARTERS = new Periodic(0, 0.25);
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final Studio studio;
  private final Layout layout;
  private final ShootTable shoots;
  private final List<List<LinkedFeed>> ofCopy = new ArrayList<>();
  private final List<LinkedFeed> all = new ArrayList<>();

  /** By feed, that of its source; null for the working copy. */
  private final List<Integer> sourceCopy = new ArrayList<>();

  private double now;

  private LinkedFeeds(Studio studio, Layout layout, ShootTable shoots) {
    this.studio = studio;
    this.layout = layout;
    this.shoots = shoots;
  }

  /** Whether the feeds of a layout have to be worked out together. */
  static boolean are(Layout layout) {
    return layout.copies().stream()
        .flatMap(copy -> copy.feed().stream())
        .anyMatch(
            feed ->
                feed.between().filter(hours -> !hours.always()).isPresent()
                    || feed.carried().isPresent()
                    || shares(layout, feed));
  }

  /** Whether a feed shares its uplink with another one. */
  static boolean shares(Layout layout, Feed feed) {
    List<String> used =
        layout.copies().stream()
            .flatMap(copy -> copy.feed().flatMap(Feed::uplink).map(Uplink::id).stream())
            .toList();
    return feed.uplink().map(line -> Collections.frequency(used, line.id()) > 1).orElse(false);
  }

  /** By copy, a line for each of its turns; none for the working copy. */
  static List<List<FeedLine>> lines(
      Studio studio, Layout layout, ShootTable shoots, DoubleUnaryOperator aged) {
    LinkedFeeds feeds = new LinkedFeeds(studio, layout, shoots);
    layout.copies().forEach(copy -> feeds.add(copy, aged));
    feeds.run();
    double horizon = studio.horizonHours();
    return feeds.ofCopy.stream()
        .map(turns -> turns.stream().map(feed -> feed.line(horizon)).toList())
        .toList();
  }

  private void add(Copy copy, DoubleUnaryOperator aged) {
    List<LinkedFeed> turns = new ArrayList<>();
    ofCopy.add(turns);
    if (copy.feed().isEmpty()) {
      return;
    }
    Feed feed = copy.feed().get();
    int from = layout.indexOf(feed.from());
    double rate = Ways.feed(layout.copies().get(from), copy) * Units.SECONDS_PER_HOUR;
    String uplink = shares(layout, feed) ? feed.uplink().map(Uplink::id).orElse("") : "";
    double atStart = copy.startsFull() ? shoots.onHand() : 0;
    int count = copy.rotation().map(Copy.Rotation::turns).orElse(1);
    double longest = copy.rotation().isPresent() ? feed.visitHours() : NEVER;
    for (int turn = 0; turn < count; turn++) {
      Optional<Periodic> due = due(copy, feed, turn);
      LinkedFeed one =
          new LinkedFeed(feed, due, rate, longest, uplink, aged, atStart, !copy.startsFull());
      turns.add(one);
      all.add(one);
      sourceCopy.add(from);
    }
  }

  private static Optional<Periodic> due(Copy copy, Feed feed, int turn) {
    if (copy.rotation().isEmpty()) {
      return FeedForecast.due(feed);
    }
    return Optional.of(FeedForecast.due(feed, copy.rotation().get(), turn));
  }

  private void run() {
    double horizon = studio.horizonHours();
    for (now = 0; now <= horizon; now = next()) {
      all.forEach(feed -> feed.agesOut(now));
      boolean changes = true;
      while (changes) {
        changes = endOrStart();
      }
      all.forEach(this::pace);
    }
  }

  private double next() {
    double next = NEVER;
    for (LinkedFeed feed : all) {
      next = Math.min(next, Math.min(feed.nextChange(now), feed.next()));
    }
    return Math.max(Math.min(next, nextAgeing()), Math.nextUp(now));
  }

  /** When some more footage ages out; infinite if none does, or no run is going. */
  private double nextAgeing() {
    double keep = studio.footage().keepHours().orElse(NEVER);
    if (keep == NEVER || all.stream().noneMatch(LinkedFeed::isGoing)) {
      return NEVER;
    }
    int k = shoots.shotAgo(keep, now);
    double next = k < shoots.count() ? shoots.time(k) + keep : NEVER;
    return now < keep ? keep : next;
  }

  private boolean endOrStart() {
    boolean any = false;
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).ends(now)) {
        wakeTargets(all.get(i));
        any = true;
      }
    }
    for (int i = 0; i < all.size() && !any; i++) {
      any = all.get(i).next() <= now && starts(i);
    }
    return any;
  }

  /** A run is due; whether it has anything to carry. */
  private boolean starts(int i) {
    LinkedFeed feed = all.get(i);
    LinkedFeed source = sourceOf(i);
    double held = source == null ? held(feed) : source.across(now);
    boolean behind = feed.isContinuous() && source != null && source.isGoing();
    boolean trickles = behind && feed.lacks(now, held) < QUARTERS.every() * feed.rate();
    if (trickles && QUARTERS.from(now) > now) {
      feed.wakes(QUARTERS.after(now), true);
      return false;
    }
    if (feed.starts(now, held)) {
      wakeTargets(feed);
      return true;
    }
    if (behind) {
      feed.wakes(QUARTERS.after(now), true);
    } else if (source == null) {
      waitsForShoot(feed);
    } else if (source.isGoing()) {
      feed.wakes(now, false);
    } else {
      feed.sleeps();
    }
    return false;
  }

  /** A run that is due at the very instant of a shoot does not carry it. */
  private double held(LinkedFeed feed) {
    return feed.isContinuous() ? shoots.total(now) : FeedForecast.before(shoots, now);
  }

  private void waitsForShoot(LinkedFeed feed) {
    int k = feed.isContinuous() ? shoots.shotBy(now) : shoots.shotBefore(now);
    if (k == shoots.count()) {
      feed.sleeps();
    } else {
      feed.wakes(shoots.time(k), false);
    }
  }

  private void wakeTargets(LinkedFeed source) {
    for (int i = 0; i < all.size(); i++) {
      LinkedFeed feed = all.get(i);
      if (sourceOf(i) == source && !feed.isGoing() && feed.next() > now) {
        feed.wakes(now, true);
      }
    }
  }

  private LinkedFeed sourceOf(int feed) {
    int from = sourceCopy.get(feed);
    return from == 0 ? null : ofCopy.get(from).get(0);
  }

  /** Whether a continuous feed stands idle only until a little more has come to its source. */
  private boolean follows(int i) {
    return !all.get(i).isGoing() && comes(i) >= 0;
  }

  /** The position that comes over a feed now, or over one after another; -1 if none. */
  private double comes(int i) {
    LinkedFeed feed = all.get(i);
    if (feed.isGoing()) {
      return feed.flows(now) ? feed.across(now) : -1;
    }
    LinkedFeed source = sourceOf(i);
    if (source == null || !feed.isContinuous() || !feed.isOpen(now)) {
      return -1;
    }
    double next = comes(all.indexOf(source));
    return next < feed.across(now) ? -1 : next;
  }

  private void pace(LinkedFeed feed) {
    int sharing = 0;
    for (int i = 0; i < all.size(); i++) {
      LinkedFeed other = all.get(i);
      boolean same = other == feed || (!feed.uplink.isEmpty() && feed.uplink.equals(other.uplink));
      sharing += same && (other.flows(now) || follows(i)) ? 1 : 0;
    }
    feed.flowsAt(feed.flows(now) ? feed.rate() / sharing : 0, now);
  }
}
