package lastcopy.oracle;

import static lastcopy.oracle.Part.service;
import static lastcopy.oracle.Part.set;
import static lastcopy.oracle.Part.single;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Uniform;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** Small studios in which much goes wrong within a few weeks. */
final class Harsh {

  private static final double HORIZON = 600;
  private static final OptionalDouble NO_CARDS = OptionalDouble.empty();

  private final Map<String, Studio> all = new LinkedHashMap<>();

  private Harsh() {}

  static Map<String, Studio> all() {
    Harsh harsh = new Harsh();
    harsh.setsAndFeeds();
    harsh.links();
    harsh.drives();
    harsh.desk();
    harsh.time();
    return harsh.all;
  }

  // ---- sets, feeds, places, boxes and services

  private void setsAndFeeds() {
    add("single", even(), single("main", 3_000));
    add(
        "mirror, looked at, rebuilt by rate",
        even(),
        set("main", Arrangement.MIRROR, 2, 500)
            .noticed(new Delay.Looks(30))
            .rebuildsAt(3, Rebuild.Reads.USED));
    add(
        "parity with Weibull lives",
        random(),
        set("main", Arrangement.PARITY, 3, 1)
            .lives(new Weibull(2, 700, 0))
            .aged(new Uniform(0, 300))
            .rebuilds(new Exponential(60)));
    add(
        "double parity",
        even(),
        set("main", Arrangement.DOUBLE_PARITY, 5, 400).rebuilds(new Fixed(50)));
    add("stripe and mirror", even(), set("main", Arrangement.STRIPE, 2, 1_000), slowFar(900));
    add(
        "drive and nightly far copy",
        even(),
        single("main", 700),
        single("far", 800).nightly("main", 2, 0.7));
    add(
        "drive and continuous far copy",
        random(),
        single("main", 600).goneNoticed(new Delay.Looks(24)),
        single("far", 700).continuous("main", 0.9).restores(1.5));
    add(
        "three in a chain",
        random(),
        single("main", 500),
        single("far", 500).nightly("main", 2, 2),
        single("third", 600).nightly("far", 5, 1.5).restores(2));
    add(
        "two far copies, one starts empty",
        even(),
        single("main", 500),
        single("far", 600).nightly("main", 2, 3).restores(1),
        single("other", 600).every("main", 100, 10, 1).restores(4).startsEmpty());
    Place studio = place("studio", new Mishap("fire", new Rate(1 / 1_500.0), 0.7));
    Place home = place("home", new Mishap("water", new Rate(1 / 1_200.0), 1));
    Box box = Box.of("tower", new Rate(1 / 2_000.0));
    add(
        "places, a box and a service",
        random(),
        set("main", Arrangement.MIRROR, 2, 1_000).at(studio).in(box),
        single("second", 1_500).every("main", 6, 1, 5).at(studio).in(box),
        single("far", 2_000).nightly("main", 1, 1).at(home),
        service("cloud", 900).every("second", 168, 3, 0.5).restores(0.8));
    add(
        "growing shoots, lagging far copy",
        footage(10, 60, 15, 3, Shoots.Spacing.RANDOM),
        single("main", 800),
        single("far", 900).nightly("main", 2, 0.2));
  }

  private static Part slowFar(double meanLife) {
    return set("far", Arrangement.MIRROR, 2, meanLife).nightly("main", 12, 1).restores(0.5);
  }

  // ---- links

  private void links() {
    add(
        "a night's link, slow",
        even(),
        single("main", 500),
        single("far", 600).nightly("main", 12, 2).between(20, 6).restores(2));
    add(
        "a continuous feed by day",
        random(),
        single("main", 500),
        single("far", 500).continuous("main", 1.5).between(8, 18).restores(2));
    add(
        "two that share an uplink",
        random(),
        single("main", 500),
        single("far", 500).nightly("main", 2, 1).over("office", 1.2).restores(2),
        single("other", 600).continuous("main", 1).over("office", 1.2).restores(1));
    add(
        "three that share an uplink, in different hours",
        even(),
        single("main", 400),
        single("far", 500).nightly("main", 2, 1).over("office", 2).between(18, 8),
        single("other", 500).every("main", 48, 5, 1).over("office", 2).between(0, 12).startsEmpty(),
        single("third", 500).continuous("far", 1).over("office", 2).restores(1));
    add(
        "who carries on what comes to others shares their uplink",
        even(),
        single("main", 400),
        single("far", 500).nightly("main", 2, 0.4),
        single("third", 400).continuous("far", 1).over("office", 2).stops(100, 24).restores(2),
        single("other", 500).nightly("main", 1, 1).over("office", 2),
        single("fourth", 400).continuous("main", 1).over("office", 2));
    add(
        "two that share an uplink, and may be unusable",
        even(),
        single("main", 400),
        single("far", 500).nightly("main", 2, 1).over("office", 2).spoils(150, 100).restores(2),
        single("other", 500).nightly("main", 1, 1).over("office", 2).spoils(150, 100));
    add(
        "a drive that is carried, slower than some runs",
        footage(60, 40, 8, 0, Shoots.Spacing.RANDOM),
        single("main", 500),
        single("far", 300).nightly("main", 2, 1).carried(20, 10).restores(2));
    add(
        "a first fill that is carried, beside a link by night that stops",
        footage(100, 40, 8, 0, Shoots.Spacing.EVEN),
        single("main", 300),
        single("far", 500)
            .nightly("main", 22, 1)
            .between(20, 6)
            .stops(200, 50)
            .carried(30, 8)
            .startsEmpty()
            .restores(1),
        single("other", 700).continuous("far", 3).carried(5, 30).restores(2));
    add(
        "a shelf brought back by hand, and read errors",
        random(),
        set("main", Arrangement.SHELF, 8, 500).sized(80).readErrors(5e-13),
        set("far", Arrangement.SHELF, 8, 400)
            .sized(80)
            .nightly("main", 2, 1)
            .between(1, 7)
            .carried(12, 20)
            .restores(2));
    add(
        "a service that gives back late, beside a slower drive",
        random(),
        single("main", 300),
        service("cloud", 900).nightly("main", 1, 2).restores(4).restoresIn(30),
        single("far", 700).nightly("main", 3, 2).restores(0.7),
        single("third", 300).continuous("cloud", 3).restores(0.3));
    add(
        "rotated, by day",
        even(),
        single("main", 400),
        single("far", 700).every("main", 60, 9, 2).between(10, 20).rotates(2, 60, 30).restores(2));
  }

  // ---- what happens to drives

  private void drives() {
    add(
        "mirror with strain and a batch",
        even(),
        set("main", Arrangement.MIRROR, 3, 1)
            .lives(new Weibull(1.5, 500, 0))
            .aged(new Uniform(0, 400))
            .batch("spring", 0.8)
            .strained(3)
            .rebuilds(new Exponential(60)));
    add(
        "a batch across two copies",
        random(),
        single("main", 900).batch("spring", 1.5).aged(new Fixed(500)),
        set("far", Arrangement.PARITY, 3, 700)
            .batch("spring", 1.5)
            .strained(2)
            .boughtAt(200)
            .nightly("main", 1, 1));
    add(
        "replaced at an age",
        even(),
        set("main", Arrangement.MIRROR, 2, 1)
            .lives(new Weibull(4, 350, 0))
            .aged(new Uniform(0, 300))
            .replacedAt(250)
            .rebuilds(new Fixed(80)));
    add(
        "read errors of a mirror, part in use",
        even(),
        set("main", Arrangement.MIRROR, 2, 700)
            .readErrors(1e-12)
            .rebuildsAt(8, Rebuild.Reads.USED)
            .noticed(new Delay.Looks(20)));
    add(
        "read errors of double parity and of a refill from a drive",
        random(),
        set("main", Arrangement.DOUBLE_PARITY, 4, 250)
            .sized(600)
            .readErrors(4e-13)
            .rebuildsAt(3, Rebuild.Reads.ALL),
        single("far", 500).readErrors(8e-13).nightly("main", 3, 2));
    add(
        "latent defects of a mirror",
        even(),
        set("main", Arrangement.MIRROR, 2, 600)
            .defects(new Exponential(300), new Exponential(200))
            .rebuilds(new Fixed(40)));
    add(
        "latent defects of parity, refilled from a drive with defects",
        random(),
        set("main", Arrangement.PARITY, 4, 600)
            .defects(new Exponential(400), new Fixed(150))
            .rebuilds(new Fixed(20)),
        single("far", 900)
            .defects(new Exponential(300), new Exponential(250))
            .nightly("main", 3, 2));
    add(
        "a clip goes while it is on its way",
        even(),
        set("main", Arrangement.MIRROR, 2, 300)
            .defects(new Exponential(50), new Exponential(200))
            .rebuilds(new Fixed(1))
            .arrives(new Fixed(1)),
        single("far", 250).continuous("main", 2).restores(1_000));
    add("shelf", even(), set("main", Arrangement.SHELF, 2, 1_200).sized(60));
    unlike();
    pairs();
    add(
        "a shelf of a used drive that is empty at the start",
        footage(0, 50, 12, 0, Shoots.Spacing.EVEN),
        set("main", Arrangement.SHELF, 8, 500)
            .lives(new Weibull(2, 500, 0))
            .aged(new Fixed(300))
            .batch("spring", 0.5)
            .sized(60));
    add(
        "pair of shelves",
        random(),
        set("main", Arrangement.SHELF, 8, 600).sized(80).noticed(new Delay.Looks(30)),
        set("far", Arrangement.SHELF, 8, 700).sized(110).every("main", 48, 4, 1).restores(2));
    add(
        "a shelf feeds a mirror at another place",
        even(),
        set("main", Arrangement.SHELF, 8, 700)
            .sized(50)
            .at(place("studio", new Mishap("fire", new Rate(1 / 1_500.0), 0.8))),
        set("far", Arrangement.MIRROR, 2, 400).continuous("main", 1).restores(1));
  }

  private void unlike() {
    add(
        "a new drive mirrored by a used one",
        even(),
        set("main", Arrangement.MIRROR, 2, 900)
            .noticed(new Delay.Looks(30))
            .everySecond(used -> used.fails(new Weibull(2, 500, 0)).age(new Fixed(300)))
            .strained(2)
            .batch("spring", 0.5),
        slowFar(700));
    add(
        "parity of unlike drives, swapped, read errors",
        random(),
        set("main", Arrangement.PARITY, 4, 900)
            .sized(400)
            .everySecond(
                used -> used.size(300 * Units.GB).fails(new Exponential(500)).boughtAt(100))
            .rebuildsAt(6, Rebuild.Reads.ALL)
            .replacedAt(400)
            .readErrors(4e-13));
    add(
        "shelf of unlike drives",
        random(),
        set("main", Arrangement.SHELF, 3, 900)
            .sized(50)
            .everySecond(
                used -> used.size(80 * Units.GB).fails(new Exponential(400)).age(new Fixed(50))),
        single("far", 600).nightly("main", 2, 2));
  }

  private void pairs() {
    add(
        "pairs",
        even(),
        set("main", Arrangement.PAIRS, 6, 500)
            .noticed(new Delay.Looks(30))
            .strained(3)
            .rebuildsAt(4, Rebuild.Reads.USED));
    add(
        "pairs of unlike drives feed a drive",
        random(),
        set("main", Arrangement.PAIRS, 4, 800)
            .everySecond(used -> used.fails(new Weibull(2, 500, 0)).age(new Fixed(200)))
            .batch("spring", 0.7)
            .rebuilds(new Exponential(40)),
        single("far", 700).nightly("main", 3, 2));
    add(
        "latent defects and read errors of pairs that a drive is refilled from",
        random(),
        single("main", 400),
        set("far", Arrangement.PAIRS, 4, 300)
            .defects(new Exponential(300), new Exponential(250))
            .readErrors(1e-12)
            .rebuilds(new Fixed(60))
            .nightly("main", 3, 2));
    add(
        "latent defects and read errors of pairs",
        even(),
        set("main", Arrangement.PAIRS, 4, 500)
            .defects(new Exponential(300), new Exponential(200))
            .readErrors(6e-13)
            .rebuildsAt(10, Rebuild.Reads.ALL)
            .sized(300));
  }

  // ---- the desk

  private void desk() {
    Desk deletes = deletes(250, new Desk.ShootCount(2), 60);
    add("deletion from a drive", even(), deletes, NO_CARDS, eternal("main").keepsDeleted(30));
    add(
        "deletion travels to a nightly far copy",
        random(),
        deletes,
        NO_CARDS,
        single("main", 900).keepsDeleted(10),
        single("far", 900).nightly("main", 2, 0.8).keepsDeleted(50));
    add(
        "deletion travels hop by hop",
        even(),
        deletes(200, new Desk.Bytes(40 * Units.GB), 100),
        NO_CARDS,
        single("main", 1_500),
        single("far", 1_500).continuous("main", 3).keepsDeleted(20),
        single("third", 1_500).every("far", 72, 6, 1_000).keepsDeleted(40));
    add(
        "malware, copies online and offline",
        random(),
        malware(500, 60),
        NO_CARDS,
        single("main", 2_000).keepsDeleted(20),
        single("far", 2_000).nightly("main", 2, 2).keepsDeleted(30),
        single("vault", 2_000).every("main", 168, 10, 2).keepsDeleted(24).offline());
    add(
        "deletion and malware with cards",
        random(),
        new Desk(deletes(300, new Desk.ShootCount(3), 80).deletion(), malware(700, 90).malware()),
        OptionalDouble.of(120),
        single("main", 900).at(place("studio", new Mishap("fire", new Rate(1 / 1_500.0), 0.6))),
        single("far", 900).nightly("main", 2, 1).offline().keepsDeleted(36));
    add(
        "malware and a rotated pair",
        even(),
        malware(600, 100),
        NO_CARDS,
        single("main", 1_500).keepsDeleted(12),
        single("swap", 2_000).every("main", 144, 8, 2).rotates(2, 72, 30).offline());
  }

  // ---- what time brings: rotation, cards, age, stops, spoils

  private void time() {
    Place studio = place("studio", new Mishap("fire", new Rate(1 / 800.0), 0.8));
    Place home = place("home", new Mishap("water", new Rate(1 / 1_200.0), 1));
    add(
        "rotated pair with mishaps of both places",
        random(),
        single("main", 1_500).at(studio),
        single("swap", 1)
            .lives(new Exponential(600))
            .livesOff(new Exponential(3_000))
            .every("main", 192, 8, 0.6)
            .rotates(2, 96, 20)
            .at(home));
    add("cards and a drive", even(), Desk.QUIET, OptionalDouble.of(70), single("main", 700));
    add(
        "cards at a place with mishaps",
        random(),
        Desk.QUIET,
        OptionalDouble.of(150),
        single("main", 700).at(studio),
        single("far", 900).every("main", 120, 10, 1).at(home));
    add("aged footage", aging(even(), 400), single("main", 900));
    add(
        "aged footage with a lagging far copy",
        aging(random(), 300),
        set("main", Arrangement.MIRROR, 2, 400).rebuildsAt(4, Rebuild.Reads.USED),
        single("far", 600).nightly("main", 2, 0.25).restores(0.6));
    add(
        "a feed that stops",
        even(),
        single("main", 800),
        single("far", 2_000).nightly("main", 2, 1).stops(300, 240));
    add(
        "a continuous feed that stops",
        random(),
        single("main", 700).at(studio),
        single("far", 1_500).continuous("main", 0.5).stops(200, 168));
    add(
        "a far copy that spoils",
        even(),
        single("main", 900),
        single("far", 3_000).nightly("main", 2, 2).spoils(400, 250));
    add(
        "much at once",
        aging(random(), 700),
        new Desk(deletes(500, new Desk.ShootCount(2), 60).deletion(), malware(1_500, 60).malware()),
        OptionalDouble.of(60),
        set("main", Arrangement.MIRROR, 2, 500)
            .at(studio)
            .batch("spring", 0.7)
            .strained(2)
            .readErrors(4e-13)
            .defects(new Exponential(500), new Exponential(200))
            .rebuildsAt(6, Rebuild.Reads.USED)
            .keepsDeleted(24),
        single("far", 700)
            .nightly("main", 2, 0.8)
            .stops(500, 168)
            .spoils(900, 300)
            .readErrors(4e-13)
            .batch("spring", 0.7)
            .keepsDeleted(48)
            .at(home),
        service("cloud", 1_500).every("far", 168, 3, 0.5).restores(0.8).offline());
  }

  private static Part eternal(String id) {
    return new Part(id, Arrangement.SINGLE, 1);
  }

  private static Desk deletes(double meanHours, Desk.Amount size, double noticed) {
    return new Desk(
        Optional.of(new Desk.Deletion(new Rate(1 / meanHours), size, new Exponential(noticed))),
        Optional.empty());
  }

  private static Desk malware(double meanHours, double noticed) {
    return new Desk(
        Optional.empty(),
        Optional.of(new Desk.Malware(new Rate(1 / meanHours), new Exponential(noticed))));
  }

  private static Footage aging(Footage footage, double keepHours) {
    return new Footage(
        footage.onHandBytes(),
        footage.shoots(),
        footage.growthPerYear(),
        OptionalDouble.of(keepHours),
        footage.clipBytes(),
        footage.worthPerShoot());
  }

  // ---- studios

  private void add(String name, Footage footage, Part... parts) {
    add(name, footage, Desk.QUIET, NO_CARDS, parts);
  }

  private void add(String name, Footage footage, Desk desk, OptionalDouble cards, Part... parts) {
    Layout layout = new Layout("only", name, Arrays.stream(parts).map(Part::make).toList(), cards);
    all.put(
        name,
        new Studio(
            name,
            HORIZON / Units.HOURS_PER_YEAR,
            Optional.empty(),
            footage,
            desk,
            List.of(layout)));
  }

  /** 100 GB on hand and 12 GB every 50 h. */
  private static Footage even() {
    return footage(100, 50, 12, 0, Shoots.Spacing.EVEN);
  }

  private static Footage random() {
    return footage(100, 50, 12, 0, Shoots.Spacing.RANDOM);
  }

  private static Footage footage(
      double onHand, double every, double size, double growth, Shoots.Spacing spacing) {
    return new Footage(
        onHand * Units.GB,
        new Shoots(every, size * Units.GB, spacing),
        growth,
        OptionalDouble.empty(),
        Units.GB,
        OptionalDouble.empty());
  }

  private static Place place(String id, Mishap... mishaps) {
    return new Place(id, List.of(mishaps));
  }
}
