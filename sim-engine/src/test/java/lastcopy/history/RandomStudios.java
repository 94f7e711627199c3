package lastcopy.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Carried;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Costs;
import lastcopy.scenario.DailyHours;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Uplink;
import lastcopy.scenario.Work;

/**
 * Harsh studios of the whole model, drawn from a fixed seed: each mechanism is on half the time.
 */
final class RandomStudios {

  private static final double GB = 1e9;
  private final SplittableRandom random;
  private final boolean unlikely;

  /** The uplink of the layout that is being drawn. */
  private Uplink shared = Uplink.of("office", 1);

  RandomStudios(long seed) {
    this(seed, false);
  }

  /**
   * Studios from a seed.
   *
   * @param unlikely whether draws seldom come out badly: notices that come too late, mishaps that
   *     take a copy, defects that are alive
   */
  RandomStudios(long seed, boolean unlikely) {
    random = new SplittableRandom(seed);
    this.unlikely = unlikely;
  }

  private boolean half() {
    return random.nextBoolean();
  }

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private Rate rate(double meanHours) {
    return half() ? new Rate(1 / between(meanHours, 3 * meanHours)) : Rate.NONE;
  }

  private OptionalDouble sometimes(double low, double high) {
    return half() ? OptionalDouble.of(between(low, high)) : OptionalDouble.empty();
  }

  /**
   * The next of a kind: no tricks, tricks, at random, empty; of the whole model by any other name.
   */
  Studio next(String kind) {
    return switch (kind) {
      case "no tricks" -> nextWithoutTricks();
      case "tricks" -> nextOfSetsWithTricks();
      case "at random" -> nextOfRandomShoots();
      case "empty" -> nextThatStartsEmpty();
      default -> next();
    };
  }

  Studio next() {
    Footage footage =
        new Footage(
            half() ? between(50, 300) * GB : 0,
            new Shoots(between(20, 80), between(5, 30) * GB, Shoots.Spacing.EVEN),
            half() ? 0.3 : 0,
            random.nextInt(4) == 0
                ? OptionalDouble.of(between(400, 1_500))
                : OptionalDouble.empty(),
            GB,
            OptionalDouble.empty());
    Desk desk =
        new Desk(
            half()
                ? Optional.of(
                    new Desk.Deletion(
                        rate(1_000),
                        half() ? new Desk.Bytes(40 * GB) : new Desk.ShootCount(1.5),
                        new Exponential(between(50, 300) / (unlikely ? 10 : 1))))
                : Optional.empty(),
            half()
                ? Optional.of(
                    new Desk.Malware(
                        rate(2_000), new Exponential(between(20, 200) / (unlikely ? 10 : 1))))
                : Optional.empty());
    return new Studio(
        "random",
        0.4,
        Optional.empty(),
        OptionalDouble.of(1),
        new Work(OptionalDouble.of(1), 2, 0.5, 0.25, 1),
        footage,
        desk,
        List.of(layout()));
  }

  /** A studio in which sets only fail and heal, places have mishaps and feeds lag. */
  Studio nextWithoutTricks() {
    return without(RandomStudios::withoutTricks);
  }

  /** The same, but drives of a set matter to each other, are swapped, and hide unread bits. */
  Studio nextOfSetsWithTricks() {
    return without(set -> set);
  }

  /** The first without tricks, with a working copy that is filled from another at the start. */
  Studio nextThatStartsEmpty() {
    Studio drawn = nextWithoutTricks();
    List<Copy> copies = drawn.layouts().get(0).copies();
    if (copies.size() == 1) {
      return nextThatStartsEmpty();
    }
    List<Copy> filled = copies.stream().map(c -> startingFull(c, c.feed().isPresent())).toList();
    return new Studio(
        "random",
        drawn.years(),
        Optional.empty(),
        drawn.footage(),
        drawn.desk(),
        List.of(new Layout("only", "only", filled, OptionalDouble.empty())));
  }

  private static Copy startingFull(Copy copy, boolean full) {
    return with(copy, full, copy.spoils());
  }

  /** A copy that starts full or empty, and spoils in a way or never. */
  static Copy with(Copy copy, boolean full, Optional<Copy.Spoils> spoils) {
    return new Copy(
        copy.id(),
        copy.place(),
        copy.box(),
        copy.medium(),
        copy.repair(),
        copy.feed(),
        copy.restoresAt(),
        copy.keepsDeletedHours(),
        copy.reach(),
        full,
        spoils,
        copy.rotation(),
        copy.costs(),
        copy.leftOut());
  }

  /** The whole model, half of it without tricks, with shoots that come at random. */
  Studio nextOfRandomShoots() {
    Studio drawn = half() ? next() : nextWithoutTricks();
    Footage f = drawn.footage();
    Shoots random =
        new Shoots(f.shoots().everyHours(), f.shoots().sizeBytes(), Shoots.Spacing.RANDOM);
    Footage footage =
        new Footage(
            f.onHandBytes(), random, f.growthPerYear(), f.keepHours(), GB, OptionalDouble.empty());
    return new Studio(
        "random", drawn.years(), Optional.empty(), footage, drawn.desk(), drawn.layouts());
  }

  private Studio without(UnaryOperator<Medium.DriveSet> tricks) {
    Studio drawn = next();
    Footage f = drawn.footage();
    Footage footage =
        new Footage(
            f.onHandBytes(), f.shoots(), 0, OptionalDouble.empty(), GB, OptionalDouble.empty());
    List<Copy> copies =
        drawn.layouts().get(0).copies().stream().map(c -> withoutTricks(c, tricks)).toList();
    Layout layout = new Layout("only", "only", copies, OptionalDouble.empty());
    return new Studio(
        "random", drawn.years(), Optional.empty(), footage, Desk.QUIET, List.of(layout));
  }

  private static Copy withoutTricks(Copy copy, UnaryOperator<Medium.DriveSet> tricks) {
    return new Copy(
        copy.id(),
        copy.place(),
        copy.box(),
        copy.driveSet().<Medium>map(tricks).orElse(copy.medium()),
        copy.repair(),
        copy.feed().map(RandomStudios::withoutStops),
        copy.restoresAt(),
        0,
        copy.reach(),
        copy.startsFull(),
        Optional.empty(),
        Optional.empty(),
        copy.costs(),
        copy.leftOut());
  }

  /** A drive that takes turns stands at its source's place. */
  private static Feed ofTurns(Feed feed) {
    return new Feed(
        feed.from(),
        feed.schedule(),
        feed.bytesPerSecond(),
        feed.stops(),
        feed.checkedEveryHours(),
        feed.visitHours(),
        feed.between(),
        Optional.empty(),
        Optional.empty());
  }

  private static Feed withoutStops(Feed feed) {
    return new Feed(
        feed.from(),
        feed.schedule(),
        feed.bytesPerSecond(),
        Rate.NONE,
        OptionalDouble.empty(),
        Feed.DEFAULT_VISIT_HOURS,
        feed.between(),
        feed.uplink(),
        feed.carried());
  }

  private static Medium.DriveSet withoutTricks(Medium.DriveSet set) {
    boolean shelf = set.arrangement() == Arrangement.SHELF;
    return new Medium.DriveSet(
        set.models(),
        shelf ? Arrangement.STRIPE : set.arrangement(),
        Optional.empty(),
        new Rebuild(set.rebuild().time(), Rebuild.Reads.ALL),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        1,
        0);
  }

  private Layout layout() {
    shared = Uplink.of("office", between(2, 40) * GB / 3_600);
    Place studio = place("studio");
    Place home = place("home");
    List<Copy> copies = new ArrayList<>();
    copies.add(copy("main", studio, Optional.empty(), false));
    if (random.nextInt(5) > 0) {
      copies.add(copy("second", half() ? studio : home, Optional.of(feed("main")), half()));
    }
    if (copies.size() == 2 && half()) {
      String from = copies.get(1).rotation().isEmpty() && half() ? "second" : "main";
      copies.add(copy("third", home, Optional.of(feed(from)), half()));
    }
    return new Layout("only", "only", copies, sometimes(30, 200));
  }

  private Place place(String id) {
    return half()
        ? new Place(
            id, List.of(new Mishap("fire", rate(2_000), half() ? 1 : unlikely ? 0.03 : 0.6)))
        : new Place(id, List.of());
  }

  private Feed feed(String from) {
    Optional<Uplink> uplink = random.nextInt(3) > 0 ? Optional.of(shared) : Optional.empty();
    Feed.Schedule schedule =
        random.nextInt(3) == 0
            ? new Feed.Continuous()
            : new Feed.Every(between(15, 60), between(0, 15));
    return new Feed(
        from,
        schedule,
        OptionalDouble.of(uplink.map(Uplink::bytesPerSecond).orElse(between(2, 40) * GB / 3_600)),
        rate(800),
        sometimes(50, 300),
        between(5, 20),
        half()
            ? Optional.of(new DailyHours(random.nextInt(24), random.nextInt(24) + 0.5))
            : Optional.empty(),
        uplink,
        half()
            ? Optional.of(new Carried(between(0, 30), between(20, 200) * GB / 3_600))
            : Optional.empty());
  }

  private Copy copy(String id, Place place, Optional<Feed> feed, boolean mayRotate) {
    boolean rotates = mayRotate && feed.isPresent() && feed.get().schedule() instanceof Feed.Every;
    Medium medium =
        feed.isPresent() && !rotates && random.nextInt(4) == 0
            ? new Medium.Service(
                rate(3_000),
                OptionalDouble.of(1_000),
                half() ? OptionalDouble.of(500) : OptionalDouble.empty(),
                half() ? between(5, 50) : 0)
            : drives(rotates);
    boolean boxed = half() && medium instanceof Medium.DriveSet;
    return new Copy(
        id,
        place,
        boxed ? Optional.of(box(id)) : Optional.empty(),
        medium,
        new Copy.Repair(delay(), delay(), half() ? new Fixed(30) : new Exponential(40)),
        rotates ? feed.map(RandomStudios::ofTurns) : feed,
        OptionalDouble.of(between(20, 100) * GB / 3_600),
        half() ? 0 : half() ? between(50, 400) : Double.POSITIVE_INFINITY,
        half() ? Copy.Reach.ONLINE : Copy.Reach.OFFLINE,
        feed.isEmpty() || random.nextInt(4) > 0,
        half() ? Optional.of(new Copy.Spoils(rate(1_500), sometimes(50, 300))) : Optional.empty(),
        rotates ? Optional.of(new Copy.Rotation(2, between(40, 90))) : Optional.empty(),
        Costs.NONE,
        Set.of());
  }

  private Box box(String id) {
    return new Box(
        id, rate(3_000), OptionalDouble.of(40), OptionalDouble.of(5), OptionalDouble.empty());
  }

  private Delay delay() {
    return half() ? new Delay.Looks(between(20, 70)) : new Delay.Lawful(new Exponential(20));
  }

  private Medium drives(boolean rotates) {
    Arrangement arrangement = List.of(Arrangement.values()).get(random.nextInt(7));
    int drives =
        switch (arrangement) {
          case SINGLE -> 1;
          case PAIRS -> 4;
          default -> 3;
        };
    DriveModel first = model(rotates, arrangement, "drive");
    DriveModel second = half() ? first : model(rotates, arrangement, "other");
    return new Medium.DriveSet(
        IntStream.range(0, drives).mapToObj(i -> half() ? first : second).toList(),
        arrangement,
        half() ? Optional.of(new Medium.Batch("spring", 0.5)) : Optional.empty(),
        new Rebuild(
            half()
                ? new Rebuild.ByLaw(new Exponential(30))
                : new Rebuild.ByRate(OptionalDouble.empty(), 0.2),
            half() ? Rebuild.Reads.ALL : Rebuild.Reads.USED),
        sometimes(900, 2_000),
        half() ? Optional.of(new Exponential(700)) : Optional.empty(),
        half() ? Optional.of(new Exponential(unlikely ? 3 : 100)) : Optional.empty(),
        half() ? 3 : 1,
        half() ? 1e-13 : 0);
  }

  private DriveModel model(boolean rotates, Arrangement arrangement, String id) {
    Law life =
        half() ? new Exponential(between(500, 4_000)) : new Weibull(1.5, between(800, 5_000), 0);
    return new DriveModel(
        id,
        arrangement == Arrangement.SHELF ? between(100, 400) * GB : between(3_000, 3_500) * GB,
        OptionalDouble.of(100),
        false,
        OptionalDouble.of(10),
        OptionalDouble.of(100 * GB / 3_600),
        life,
        half() ? new Fixed(0) : new Exponential(500),
        half() ? 0 : 100,
        rotates && half() ? Optional.of(new Exponential(9_000)) : Optional.empty());
  }
}
