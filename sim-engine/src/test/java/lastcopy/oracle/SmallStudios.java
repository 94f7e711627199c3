package lastcopy.oracle;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** Makes studios in which one mechanism is at work; times in hours, sizes in GB. */
final class SmallStudios {

  /** So fast (GB an hour) that time drops out. */
  static final double AT_ONCE = 1e9;

  static final double MEAN_LIFE = 500;

  private SmallStudios() {}

  static Part eternal(String id) {
    return new Part(id, Arrangement.SINGLE, 1);
  }

  /** A drive that is replaced the moment it fails. */
  static Part mortal() {
    return Part.single("main", MEAN_LIFE).arrives(new Fixed(0));
  }

  static Desk deletes(double meanHours, double gigabytes, double noticed) {
    return new Desk(
        Optional.of(
            new Desk.Deletion(
                new Rate(1 / meanHours),
                new Desk.Bytes(gigabytes * Units.GB),
                new Exponential(noticed))),
        Optional.empty());
  }

  static Footage onHand() {
    return footage(100, 1e9, 1, Shoots.Spacing.EVEN);
  }

  static Footage even() {
    return footage(0, 50, 12, Shoots.Spacing.EVEN);
  }

  static Footage random(double everyHours, double gigabytes) {
    return footage(0, everyHours, gigabytes, Shoots.Spacing.RANDOM);
  }

  static Footage footage(
      double onHand, double everyHours, double gigabytes, Shoots.Spacing spacing) {
    return new Footage(
        onHand * Units.GB,
        new Shoots(everyHours, gigabytes * Units.GB, spacing),
        0,
        OptionalDouble.empty(),
        Units.GB,
        OptionalDouble.empty());
  }

  static Studio studio(
      double horizon, Footage footage, Desk desk, OptionalDouble cards, Part... parts) {
    return new Studio(
        "test",
        horizon / Units.HOURS_PER_YEAR,
        Optional.empty(),
        footage,
        desk,
        List.of(new Layout("only", "only", Arrays.stream(parts).map(Part::make).toList(), cards)));
  }
}
