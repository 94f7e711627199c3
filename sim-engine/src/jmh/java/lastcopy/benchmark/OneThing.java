package lastcopy.benchmark;

import java.util.List;
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
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.DriveModelBuilder;
import lastcopy.scenario.DriveSetBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.FeedBuilder;
import lastcopy.scenario.Footage;
import lastcopy.scenario.FootageBuilder;
import lastcopy.scenario.Layout;
import lastcopy.scenario.LayoutBuilder;
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

  /** What a studio may have more. */
  static final String[] ALL = {
    "nothing",
    "weibull",
    "byAge",
    "sum",
    "age",
    "boughtAt",
    "parity",
    "doubleParity",
    "shelf",
    "batch",
    "used",
    "replaceAt",
    "defects",
    "strain",
    "strainAndSum",
    "readErrors",
    "looks",
    "waitByLaw",
    "box",
    "takes",
    "spoils",
    "stops",
    "continuous",
    "rotation",
    "service",
    "deletion",
    "malware",
    "cards",
    "keepFor",
    "randomShoots",
    "startsEmpty",
    "growth"
  };

  private static final double YEAR = 8_760;
  private static final double DAY = 24;

  private final DriveModelBuilder drive =
      DriveModel.builder("drive", 8e12).fails(Exponential.ofYearlyProbability(0.02));
  private DriveSetBuilder drives = Medium.DriveSet.builder(Arrangement.MIRROR, 3);
  private final CopyBuilder main = Copy.builder("main").at(studio(1));
  private final CopyBuilder far = Copy.builder("far").at(Place.of("home"));
  private final FeedBuilder feed = Feed.from("main").every(DAY, 2).link(1e8);
  private final LayoutBuilder layout = Layout.builder("only");
  private boolean service;
  private Desk desk = Desk.QUIET;
  private OptionalDouble keep = OptionalDouble.empty();
  private Shoots.Spacing spacing = Shoots.Spacing.EVEN;
  private double growth;

  private OneThing() {
    for (CopyBuilder copy : List.of(main, far)) {
      copy.noticed(new Delay.Lawful(new Fixed(DAY))).arrival(new Fixed(2 * DAY));
      copy.restoresAt(1e8).keepsDeleted(30 * DAY);
    }
    feed.checkedEvery(30 * DAY);
  }

  /** The studio with one thing more; {@code nothing} for the one without. */
  static Studio with(String thing) {
    OneThing studio = new OneThing();
    studio.add(thing);
    return studio.make();
  }

  private void add(String thing) {
    switch (thing) {
      case "nothing" -> {}
      case "weibull" -> drive.fails(new Weibull(1.5, 200_000, 0));
      case "byAge" -> drive.fails(new ByAge(List.of(0.03, 0.015, 0.02, 0.04)));
      case "sum" -> drive.fails(sum());
      case "age" -> drive.age(new Uniform(0, 3 * YEAR));
      case "boughtAt" -> drive.boughtAt(YEAR);
      case "parity" -> drives = Medium.DriveSet.builder(Arrangement.PARITY, 3);
      case "doubleParity" -> drives = Medium.DriveSet.builder(Arrangement.DOUBLE_PARITY, 5);
      case "shelf" -> drives = Medium.DriveSet.builder(Arrangement.SHELF, 3);
      case "batch" -> drives.batch("spring", 0.5);
      case "used" -> drives.reads(Rebuild.Reads.USED);
      case "replaceAt" -> drives.replaceAt(5 * YEAR);
      case "defects" -> drives.latentDefects(new Exponential(3 * YEAR)).scrub(new Fixed(30 * DAY));
      case "strain" -> drives.strain(6);
      case "strainAndSum" -> {
        drives.strain(6);
        drive.fails(sum());
      }
      case "readErrors" -> drives.readErrors(1e-15);
      case "looks" -> {
        main.noticed(new Delay.Looks(30 * DAY));
        far.noticed(new Delay.Looks(30 * DAY));
      }
      case "waitByLaw" -> {
        main.arrival(new Weibull(2, 2 * DAY, 0));
        far.arrival(new Weibull(2, 2 * DAY, 0));
      }
      case "box" -> main.in(Box.of("box", yearly(0.01)));
      case "takes" -> main.at(studio(0.5));
      case "spoils" -> main.spoils(yearly(0.02), 90 * DAY);
      case "stops" -> feed.stops(yearly(0.3));
      case "continuous" -> feed.continuous();
      case "rotation" -> {
        far.rotation(2, 7 * DAY);
        feed.every(7 * DAY, 2);
      }
      case "service" -> service = true;
      case "deletion" ->
          desk =
              Desk.of(
                  new Desk.Deletion(yearly(0.2), new Desk.Bytes(4e10), new Exponential(3 * DAY)));
      case "malware" -> desk = Desk.of(new Desk.Malware(yearly(0.02), new Exponential(DAY)));
      case "cards" -> layout.cardsKeep(7 * DAY);
      case "keepFor" -> keep = OptionalDouble.of(3 * YEAR);
      case "randomShoots" -> spacing = Shoots.Spacing.RANDOM;
      case "startsEmpty" -> main.startsEmpty();
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

  private static Place studio(double takes) {
    return Place.of("studio", new Mishap("fire", yearly(0.003), takes));
  }

  private Studio make() {
    Medium away =
        service
            ? Medium.Service.losing(yearly(0.001))
            : set(Medium.DriveSet.builder(Arrangement.SINGLE, 1));
    layout.copy(main.on(set(drives)).build()).copy(far.on(away).fed(feed.build()).build());
    FootageBuilder footage =
        Footage.builder(new Shoots(7 * DAY, 2e10, spacing)).onHand(2e12).growth(growth);
    keep.ifPresent(footage::keepFor);
    return Studio.builder("one thing", 10)
        .footage(footage.build())
        .desk(desk)
        .layout(layout.build())
        .build();
  }

  private Medium set(DriveSetBuilder of) {
    return of.of(drive.build()).rebuild(new Rebuild.ByRate(OptionalDouble.of(1e8), 0)).build();
  }
}
