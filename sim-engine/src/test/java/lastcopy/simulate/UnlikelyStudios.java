package lastcopy.simulate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Uniform;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Costs;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/**
 * Studios of the whole model as they are in earnest, drawn from a fixed seed: footage is lost in
 * one of 100 to 10 million of them, often by draws that seldom come out badly.
 */
final class UnlikelyStudios {

  private static final double YEAR = Units.HOURS_PER_YEAR;
  private static final double DAY = 24;
  private final SplittableRandom random;

  UnlikelyStudios(long seed) {
    random = new SplittableRandom(seed);
  }

  private boolean one(int of) {
    return random.nextInt(of) == 0;
  }

  /** Evenly in the logarithm. */
  private double between(double low, double high) {
    return low * StrictMath.pow(high / low, random.nextDouble());
  }

  private Rate yearly(double low, double high) {
    return new Rate(between(low, high) / YEAR);
  }

  Studio next() {
    Desk desk =
        new Desk(
            one(2)
                ? Optional.of(
                    new Desk.Deletion(
                        yearly(0.02, 0.5),
                        one(2) ? new Desk.ShootCount(1) : new Desk.Bytes(between(1e9, 2e11)),
                        noticed()))
                : Optional.empty(),
            one(2)
                ? Optional.of(new Desk.Malware(yearly(0.002, 0.05), noticed()))
                : Optional.empty());
    return Studios.at(
        desk,
        between(1, 6) * YEAR,
        Studios.shooting(between(5e11, 5e12), between(DAY, 14 * DAY), between(2e9, 6e10), 0),
        layout());
  }

  private Law noticed() {
    double mean = between(DAY / 2, 5 * DAY);
    return switch (random.nextInt(3)) {
      case 0 -> new Weibull(between(0.6, 2), mean, 0);
      case 1 -> new Uniform(0, 20 * mean);
      default -> new Exponential(mean);
    };
  }

  private Layout layout() {
    Place studio = place("studio");
    Place home = one(3) ? studio : place("home");
    List<Copy> copies = new ArrayList<>();
    boolean alone = one(5);
    copies.add(copy("main", studio, Optional.empty(), alone));
    if (!alone) {
      copies.add(copy("second", home, Optional.of(feed("main")), false));
      if (one(4)) {
        copies.add(copy("third", home, Optional.of(feed(one(2) ? "second" : "main")), false));
      }
    }
    OptionalDouble cards =
        one(3) ? OptionalDouble.of(between(DAY, 20 * DAY)) : OptionalDouble.empty();
    return new Layout("only", "only", copies, cards);
  }

  private Place place(String id) {
    return one(3)
        ? new Place(id, List.of())
        : new Place(
            id,
            List.of(
                new Mishap("fire", yearly(0.001, 0.03), one(3) ? 1 : between(0.003, 0.7)),
                new Mishap("surge", yearly(0.001, 0.03), one(2) ? 1 : between(0.003, 0.7))));
  }

  private Feed feed(String from) {
    Feed.Schedule schedule =
        one(3) ? new Feed.Continuous() : new Feed.Every(between(DAY, 7 * DAY), between(1, 20));
    return new Feed(
        from,
        schedule,
        OptionalDouble.of(between(2e6, 1e9)),
        one(4) ? yearly(0.01, 0.3) : Rate.NONE,
        one(2) ? OptionalDouble.of(between(DAY, 30 * DAY)) : OptionalDouble.empty(),
        between(2, DAY),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private Copy copy(String id, Place place, Optional<Feed> feed, boolean alone) {
    boolean rotates = feed.isPresent() && feed.get().schedule() instanceof Feed.Every && one(4);
    boolean bought = feed.isPresent() && !rotates && one(4);
    double keeps = one(3) ? 0 : one(6) ? Double.POSITIVE_INFINITY : between(3 * DAY, 60 * DAY);
    return new Copy(
        id,
        place,
        !bought && one(4) ? Optional.of(Box.of(id, yearly(5e-4, 5e-3))) : Optional.empty(),
        bought
            ? Medium.Service.of(yearly(1e-4, 1e-2), OptionalDouble.empty())
            : drives(alone || one(2)),
        new Copy.Repair(delay(), delay(), one(2) ? new Fixed(2 * DAY) : new Exponential(3 * DAY)),
        feed,
        OptionalDouble.of(between(2e7, 1e9)),
        keeps,
        one(2) ? Copy.Reach.ONLINE : Copy.Reach.OFFLINE,
        feed.isEmpty() || !one(6),
        one(4)
            ? Optional.of(
                new Copy.Spoils(yearly(0.002, 0.05), OptionalDouble.of(between(7 * DAY, 90 * DAY))))
            : Optional.empty(),
        rotates
            ? Optional.of(
                new Copy.Rotation(2, ((Feed.Every) feed.orElseThrow().schedule()).everyHours()))
            : Optional.empty(),
        Costs.NONE,
        Set.of());
  }

  private Delay delay() {
    return switch (random.nextInt(4)) {
      case 0 -> new Delay.Looks(between(DAY, 7 * DAY));
      case 1 -> new Delay.Lawful(new Weibull(between(0.5, 2), between(2, 2 * DAY), 0));
      default -> new Delay.Lawful(new Fixed(between(1, DAY)));
    };
  }

  private Medium drives(boolean redundant) {
    Arrangement arrangement =
        redundant
            ? List.of(
                    Arrangement.MIRROR,
                    Arrangement.PARITY,
                    Arrangement.DOUBLE_PARITY,
                    Arrangement.PAIRS)
                .get(random.nextInt(4))
            : one(8) ? Arrangement.SHELF : Arrangement.SINGLE;
    int drives =
        switch (arrangement) {
          case MIRROR -> 2;
          case PAIRS -> 6;
          case PARITY -> 3;
          case DOUBLE_PARITY -> 5;
          default -> 1;
        };
    double mean = YEAR / between(0.005, 0.08);
    Law life = one(2) ? new Exponential(mean) : new Weibull(between(0.8, 3), mean, 0);
    boolean defects = redundant ? one(2) : one(4);
    DriveModel model =
        new DriveModel(
            "drive",
            2e13,
            OptionalDouble.empty(),
            false,
            OptionalDouble.empty(),
            OptionalDouble.of(2e8),
            life,
            one(3) ? new Exponential(YEAR) : new Fixed(0),
            0,
            Optional.empty());
    return new Medium.DriveSet(
        Collections.nCopies(drives, model),
        arrangement,
        one(4) ? Optional.of(new Medium.Batch("spring", between(0.1, 2))) : Optional.empty(),
        new Rebuild(
            one(2)
                ? new Rebuild.ByLaw(new Weibull(2, between(6, 2 * DAY), 0))
                : new Rebuild.ByRate(OptionalDouble.empty(), 0.3),
            one(2) ? Rebuild.Reads.ALL : Rebuild.Reads.USED),
        one(6) ? OptionalDouble.of(4 * YEAR) : OptionalDouble.empty(),
        defects ? Optional.of(new Exponential(between(3e4, 1e7))) : Optional.empty(),
        defects && !one(4) ? Optional.of(scrub()) : Optional.empty(),
        one(4) ? between(1.5, 6) : 1,
        one(3) ? between(1e-17, 1e-15) : 0);
  }

  private Law scrub() {
    return one(2) ? new Fixed(between(DAY, 30 * DAY)) : new Weibull(3, between(DAY, 30 * DAY), 0);
  }
}
