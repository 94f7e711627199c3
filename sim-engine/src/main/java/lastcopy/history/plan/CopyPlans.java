package lastcopy.history.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import lastcopy.random.SourceKey;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Periodic;
import lastcopy.scenario.Units;
import lastcopy.scenario.Uplink;
import lastcopy.scenario.Ways;

/** Compiles the copies of a layout, each turn of a rotation as one. */
final class CopyPlans {

  private final Layout layout;
  private final List<Copy> copies = new ArrayList<>();
  private final List<Integer> turn = new ArrayList<>();

  private CopyPlans(Layout layout) {
    this.layout = layout;
    for (Copy each : layout.copies()) {
      for (int j = 0; j < each.rotation().map(Copy.Rotation::turns).orElse(1); j++) {
        copies.add(each);
        turn.add(j);
      }
    }
  }

  static CopyPlan[] of(Layout layout, double mostEverShot) {
    CopyPlans compiled = new CopyPlans(layout);
    CopyPlan[] all = new CopyPlan[compiled.copies.size()];
    for (int c = 0; c < all.length; c++) {
      all[c] = compiled.copy(c, c == 0 ? 0 : all[c - 1].endSlot(), mostEverShot);
    }
    return all;
  }

  private CopyPlan copy(int c, int firstSlot, double mostEverShot) {
    Copy copy = copies.get(c);
    String name = turn.get(c) == 0 ? copy.id() : copy.id() + "#" + (turn.get(c) + 1);
    Optional<Way> way = copy.feed().map(feed -> way(c, feed));
    boolean rotates = copy.rotation().isPresent() && way.isPresent();
    return new CopyPlan(
        c,
        name,
        copy,
        SourceKey.of("copy", name),
        SetPlan.of(copy, mostEverShot),
        firstSlot,
        way.orElse(null),
        rotates ? new Visits(way.get().due().get(), copy.feed().orElseThrow().visitHours()) : null,
        refillPerHour(c));
  }

  private Way way(int c, Feed feed) {
    int source = copies.indexOf(layout.copies().get(layout.indexOf(feed.from())));
    double rate = Ways.feed(copies.get(source), copies.get(c)) * Units.SECONDS_PER_HOUR;
    Optional<Copy.Rotation> rotation = copies.get(c).rotation();
    return new Way(
        source,
        rotation.map(each -> turns(c, each, feed)).or(() -> byTheClock(feed)),
        rate,
        link(feed));
  }

  /** What is special about a link; an uplink that only one feed uses is a link like any other. */
  private FeedLink link(Feed feed) {
    List<String> shared =
        layout.copies().stream()
            .flatMap(copy -> copy.feed().flatMap(Feed::uplink).map(Uplink::id).stream())
            .toList();
    String uplink = feed.uplink().map(Uplink::id).orElse("");
    boolean alone = Collections.frequency(shared, uplink) < 2;
    FeedLink link =
        new FeedLink(
            feed.between().filter(hours -> !hours.always()),
            alone ? FeedLink.NOT_SHARED : shared.indexOf(uplink),
            feed.carried());
    return link.isPlain() ? null : link;
  }

  private Periodic turns(int c, Copy.Rotation rotation, Feed feed) {
    double at = feed.schedule() instanceof Feed.Every every ? every.atHours() : 0;
    return new Periodic(
        at + turn.get(c) * rotation.everyHours(), rotation.turns() * rotation.everyHours());
  }

  private static Optional<Periodic> byTheClock(Feed feed) {
    return feed.schedule() instanceof Feed.Every every
        ? Optional.of(every.due())
        : Optional.empty();
  }

  private double[] refillPerHour(int c) {
    double[] perHour = new double[copies.size()];
    for (int from = 0; from < perHour.length; from++) {
      if (from != c && copies.get(from).feed().isPresent()) {
        perHour[from] = Ways.refill(copies.get(from), copies.get(c)) * Units.SECONDS_PER_HOUR;
      }
    }
    return perHour;
  }
}
