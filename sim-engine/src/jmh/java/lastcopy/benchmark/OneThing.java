package lastcopy.benchmark;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.ByAge;
import lastcopy.law.Competing;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Uniform;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
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

/**
 * A studio with a mirror of three drives and a far drive fed nightly, over ten years, and the same
 * with one mechanism or law more. Rates are assumptions of a usual size.
 */
final class OneThing {

  private static final double YEAR = 8_760;
  private static final double DAY = 24;

  private Law life = Exponential.ofYearlyProbability(0.02);
  private Law age = new Fixed(0);
  private double boughtAt;
  private Arrangement arrangement = Arrangement.MIRROR;
  private int drives = 3;
  private Optional<Medium.Batch> batch = Optional.empty();
  private Rebuild.Reads reads = Rebuild.Reads.ALL;
  private OptionalDouble replaceAt = OptionalDouble.empty();
  private Optional<Law> defects = Optional.empty();
  private Optional<Law> scrub = Optional.empty();
  private double strain = 1;
  private double readErrors;
  private Delay noticed = new Delay.Lawful(new Fixed(DAY));
  private Law wait = new Fixed(2 * DAY);
  private Optional<Box> box = Optional.empty();
  private double takes = 1;
  private Optional<Copy.Spoils> spoils = Optional.empty();
  private Rate stops = Rate.NONE;
  private Feed.Schedule schedule = new Feed.Every(DAY, 2);
  private Optional<Copy.Rotation> rotation = Optional.empty();
  private boolean service;
  private Desk desk = Desk.QUIET;
  private OptionalDouble cards = OptionalDouble.empty();
  private OptionalDouble keep = OptionalDouble.empty();
  private Shoots.Spacing spacing = Shoots.Spacing.EVEN;
  private double growth;

  private OneThing() {}

  /** The studio with one thing more; {@code nothing} for the one without. */
  static Studio with(String thing) {
    OneThing studio = new OneThing();
    studio.add(thing);
    return studio.make();
  }

  private void add(String thing) {
    switch (thing) {
      case "nothing" -> {}
      case "weibull" -> life = new Weibull(1.5, 200_000, 0);
      case "byAge" -> life = new ByAge(List.of(0.03, 0.015, 0.02, 0.04));
      case "sum" -> life = sum();
      case "age" -> age = new Uniform(0, 3 * YEAR);
      case "boughtAt" -> boughtAt = YEAR;
      case "parity" -> arrangement = Arrangement.PARITY;
      case "doubleParity" -> {
        arrangement = Arrangement.DOUBLE_PARITY;
        drives = 5;
      }
      case "shelf" -> arrangement = Arrangement.SHELF;
      case "batch" -> batch = Optional.of(new Medium.Batch("spring", 0.5));
      case "used" -> reads = Rebuild.Reads.USED;
      case "replaceAt" -> replaceAt = OptionalDouble.of(5 * YEAR);
      case "defects" -> {
        defects = Optional.of(new Exponential(3 * YEAR));
        scrub = Optional.of(new Fixed(30 * DAY));
      }
      case "strain" -> strain = 6;
      case "strainAndSum" -> {
        strain = 6;
        life = sum();
      }
      case "readErrors" -> readErrors = 1e-15;
      case "looks" -> noticed = new Delay.Looks(30 * DAY);
      case "waitByLaw" -> wait = new Weibull(2, 2 * DAY, 0);
      case "box" -> box = Optional.of(new Box("box", yearly(0.01), empty(), empty()));
      case "takes" -> takes = 0.5;
      case "spoils" ->
          spoils = Optional.of(new Copy.Spoils(yearly(0.02), OptionalDouble.of(90 * DAY)));
      case "stops" -> stops = yearly(0.3);
      case "continuous" -> schedule = new Feed.Continuous();
      case "rotation" -> rotation = Optional.of(new Copy.Rotation(2, 7 * DAY));
      case "service" -> service = true;
      case "deletion" ->
          desk =
              new Desk(
                  Optional.of(
                      new Desk.Deletion(
                          yearly(0.2), new Desk.Bytes(4e10), new Exponential(3 * DAY))),
                  Optional.empty());
      case "malware" ->
          desk =
              new Desk(
                  Optional.empty(),
                  Optional.of(new Desk.Malware(yearly(0.02), new Exponential(DAY))));
      case "cards" -> cards = OptionalDouble.of(7 * DAY);
      case "keepFor" -> keep = OptionalDouble.of(3 * YEAR);
      case "randomShoots" -> spacing = Shoots.Spacing.RANDOM;
      case "growth" -> growth = 0.1;
      default -> throw new IllegalArgumentException(thing);
    }
  }

  private static Law sum() {
    return new Competing(List.of(new Weibull(0.6, 3e7, 0), new Weibull(3, 200_000, 0)));
  }

  private static Rate yearly(double chance) {
    return new Rate(-StrictMath.log1p(-chance) / YEAR);
  }

  private static OptionalDouble empty() {
    return OptionalDouble.empty();
  }

  private Studio make() {
    Place home = new Place("studio", List.of(new Mishap("fire", yearly(0.003), takes)));
    Copy main =
        copy(
            "main",
            home,
            box,
            set(drives, arrangement, batch, replaceAt, defects, scrub, strain, readErrors),
            Optional.empty(),
            spoils,
            Optional.empty());
    Feed.Schedule runs = rotation.isPresent() ? new Feed.Every(7 * DAY, 2) : schedule;
    Feed feed =
        new Feed("main", runs, OptionalDouble.of(1e8), stops, OptionalDouble.of(30 * DAY), DAY);
    Medium away =
        service
            ? new Medium.Service(yearly(0.001), OptionalDouble.empty())
            : set(
                1,
                Arrangement.SINGLE,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                1,
                0);
    Copy far =
        copy(
            "far",
            new Place("home", List.of()),
            Optional.empty(),
            away,
            Optional.of(feed),
            Optional.empty(),
            rotation);
    Footage footage =
        new Footage(2e12, new Shoots(7 * DAY, 2e10, spacing), growth, keep, 1e9, empty());
    return new Studio(
        "one thing",
        10,
        Optional.empty(),
        footage,
        desk,
        List.of(new Layout("only", "only", List.of(main, far), cards)));
  }

  private Copy copy(
      String id,
      Place place,
      Optional<Box> in,
      Medium medium,
      Optional<Feed> feed,
      Optional<Copy.Spoils> spoilt,
      Optional<Copy.Rotation> turns) {
    return new Copy(
        id,
        place,
        in,
        medium,
        new Copy.Repair(noticed, noticed, wait),
        feed,
        OptionalDouble.of(1e8),
        30 * DAY,
        Copy.Reach.ONLINE,
        true,
        spoilt,
        turns);
  }

  private Medium set(
      int count,
      Arrangement as,
      Optional<Medium.Batch> of,
      OptionalDouble swapped,
      Optional<Law> latent,
      Optional<Law> found,
      double strained,
      double unread) {
    DriveModel model =
        new DriveModel(
            "drive", 8e12, empty(), empty(), empty(), life, age, boughtAt, Optional.empty());
    Rebuild rebuild = new Rebuild(new Rebuild.ByRate(OptionalDouble.of(1e8), 0), reads);
    return new Medium.DriveSet(
        count, model, as, of, rebuild, swapped, latent, found, strained, unread);
  }
}
