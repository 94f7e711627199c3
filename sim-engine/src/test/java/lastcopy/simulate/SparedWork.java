package lastcopy.simulate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/**
 * A working copy and a copy fed nightly, with one thing that takes nothing while the working copy
 * stands, over five years in which the working copy goes in one history out of three or so.
 */
public final class SparedWork {

  private static final double HOURS = 5 * Units.HOURS_PER_YEAR;
  private static final double DAY = 24;

  private SparedWork() {}

  /** The studio of a kind. */
  public static Studio studio(String kind) {
    boolean noticedLate = kind.equals("noticed late") || kind.equals("noticed too late");
    double keeps = noticedLate ? 5 * DAY : 30 * DAY;
    CopyMaker main =
        CopyMaker.single("main", new Exponential(100_000))
            .arrival(new Fixed(50))
            .keepsDeleted(keeps);
    CopyMaker far =
        CopyMaker.single("far", new Exponential(30_000))
            .arrival(new Fixed(90))
            .restores(5e7)
            .nightly("main", 2, 3e6)
            .keepsDeleted(noticedLate ? 0 : DAY);
    Copy[] both = {main.make(), far.make()};
    Exponential soon = new Exponential(3 * DAY);
    Rate often = new Rate(1.0 / 10_000);
    Desk desk = Desk.QUIET;
    Shoots.Spacing spacing = Shoots.Spacing.EVEN;
    switch (kind) {
      case "stops" -> both[1] = with(both[1], often, Optional.empty());
      case "spoilt far" ->
          both[1] =
              with(
                  both[1],
                  Rate.NONE,
                  Optional.of(new Copy.Spoils(often, OptionalDouble.of(90 * DAY))));
      case "deletions", "noticed late" ->
          desk =
              new Desk(
                  Optional.of(new Desk.Deletion(often, new Desk.Bytes(1e11), soon)),
                  Optional.empty());
      case "noticed too late", "noticed after a day" -> {
        Fixed noticed = new Fixed(noticedLate ? 6 * DAY : DAY);
        desk =
            new Desk(
                Optional.of(new Desk.Deletion(often, new Desk.Bytes(1e11), noticed)),
                Optional.empty());
      }
      case "malware" ->
          desk = new Desk(Optional.empty(), Optional.of(new Desk.Malware(often, soon)));
      case "random shoots" -> spacing = Shoots.Spacing.RANDOM;
      case "far hides bits" -> both[1] = far.readErrors(1e-13).latentDefects(soon).make();
      case "mirror hides bits" ->
          both[0] =
              CopyMaker.set("main", Arrangement.MIRROR, 2)
                  .life(new Exponential(60_000))
                  .arrival(new Fixed(1_500))
                  .readErrors(1e-14)
                  .make();
      case "first fill" -> {
        both[0] = CopyMaker.single("main", new Exponential(100_000)).startsEmpty().make();
        both[1] = far.readErrors(1e-14).make();
      }
      case "slow first fill" -> {
        both[0] = main.startsEmpty().make();
        both[1] = far.restores(2e6).make();
      }
      case "working shelf" ->
          both[0] =
              CopyMaker.set("main", Arrangement.SHELF, 5)
                  .life(new Weibull(2, 120_000, 0))
                  .aged(new Fixed(20_000))
                  .boughtAt(30_000)
                  .driveBytes(7e12)
                  .arrival(new Fixed(3_000))
                  .at(Place.of("main's", new Mishap("fire", new Rate(1.0 / 100_000), 1)))
                  .make();
      case "struck mirror", "struck and strained", "struck, hides bits" -> {
        both[0] = struck(kind);
        both[1] =
            CopyMaker.single("far", new Fixed(1e9)).restores(5e7).nightly("main", 2, 3e5).make();
      }
      case "batch", "shelf" -> both[1] = set(both[1], kind.equals("batch"));
      default -> throw new IllegalArgumentException(kind);
    }
    Footage footage =
        new Footage(
            1e12,
            new Shoots(168, 1e11, spacing),
            0.1,
            OptionalDouble.empty(),
            Footage.DEFAULT_CLIP_BYTES,
            OptionalDouble.empty());
    Layout layout = new Layout("only", "only", List.of(both), OptionalDouble.empty());
    return Studios.at(desk, HOURS, footage, layout);
  }

  /**
   * A mirror whose drives are slow to come, in a place with mishaps; the far copy lags for days.
   */
  private static Copy struck(String kind) {
    return CopyMaker.set("main", Arrangement.MIRROR, 2)
        .life(new Exponential(60_000))
        .strain(kind.equals("struck and strained") ? 9 : 1)
        .readErrors(kind.equals("struck, hides bits") ? 1e-13 : 0)
        .arrival(new Fixed(4_000))
        .at(Place.of("main's", new Mishap("fire", new Rate(1.0 / 40_000), 1)))
        .make();
  }

  private static Copy set(Copy far, boolean batch) {
    CopyMaker made =
        batch
            ? CopyMaker.single("far", new Exponential(30_000)).batch("spring", 0.5)
            : CopyMaker.set("far", Arrangement.SHELF, 1)
                .life(new Exponential(60_000))
                .driveBytes(8e12);
    Medium medium = made.make().medium();
    return made(far, medium, far.feed(), far.spoils());
  }

  private static Copy with(Copy far, Rate stops, Optional<Copy.Spoils> spoils) {
    Feed feed = far.feed().orElseThrow();
    Feed stopping =
        new Feed(
            feed.from(),
            feed.schedule(),
            feed.bytesPerSecond(),
            stops,
            OptionalDouble.of(30 * DAY),
            feed.visitHours(),
            feed.between(),
            feed.uplink(),
            feed.carried());
    return made(far, far.medium(), Optional.of(stopping), spoils);
  }

  private static Copy made(
      Copy far, Medium medium, Optional<Feed> feed, Optional<Copy.Spoils> spoils) {
    return new Copy(
        far.id(),
        far.place(),
        far.box(),
        medium,
        far.repair(),
        feed,
        far.restoresAt(),
        far.keepsDeletedHours(),
        far.reach(),
        far.startsFull(),
        spoils,
        far.rotation(),
        far.costs(),
        far.leftOut());
  }
}
