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

  private static final double HORIZON = 1_500;
  private static final double ON_HAND = 100 * Units.GB;

  private final Map<String, Studio> all = new LinkedHashMap<>();

  private Harsh() {}

  static Map<String, Studio> all() {
    Harsh harsh = new Harsh();
    harsh.setsAndFeeds();
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
    Box box =
        new Box("tower", new Rate(1 / 2_000.0), OptionalDouble.empty(), OptionalDouble.empty());
    add(
        "places, a box and a service",
        random(),
        set("main", Arrangement.MIRROR, 2, 1_000).at(studio).in(box),
        single("second", 1_500).continuous("main", 5).at(studio).in(box),
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

  // ---- studios

  private void add(String name, Footage footage, Part... parts) {
    add(name, footage, Desk.QUIET, OptionalDouble.empty(), parts);
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
    return footage(ON_HAND / Units.GB, 50, 12, 0, Shoots.Spacing.EVEN);
  }

  private static Footage random() {
    return footage(ON_HAND / Units.GB, 50, 12, 0, Shoots.Spacing.RANDOM);
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
