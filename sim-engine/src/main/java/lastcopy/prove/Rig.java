package lastcopy.prove;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Never;
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
import lastcopy.scenario.Units;

/**
 * Builds the small studios of the proof: a terabyte on hand, no shoots, drives of 8 TB, a working
 * copy that is seen and replaced at once and stands where nothing happens, unless it is told
 * otherwise.
 */
final class Rig {

  /** So fast that a terabyte crosses in a nanosecond: time drops out. Bytes per second. */
  private static final double AT_ONCE = 1e21;

  private static final double DRIVE = 8 * Units.TB;
  private static final double BEYOND_ANY_HORIZON = 1e9;

  private final List<Copy> others = new ArrayList<>();
  private final Optional<Rate> service;
  private final Arrangement arrangement;
  private final int drives;
  private final Law life;
  private final Law rebuild;
  private Law age = new Fixed(0);
  private Law arrival = new Fixed(0);
  private Delay noticed = Delay.none();
  private double strain = 1;
  private Optional<Medium.Batch> batch = Optional.empty();
  private Optional<Law> defects = Optional.empty();
  private Optional<Law> scrub = Optional.empty();
  private double readErrors;
  private OptionalDouble replaceAt = OptionalDouble.empty();
  private double keepsDeleted;
  private Optional<Copy.Spoils> spoils = Optional.empty();
  private Optional<Copy.Rotation> rotation = Optional.empty();
  private Desk desk = Desk.QUIET;
  private double onHand = Units.TB;
  private Shoots shoots = new Shoots(BEYOND_ANY_HORIZON, Units.TB, Shoots.Spacing.EVEN);
  private Place place = new Place("quiet", List.of());
  private Optional<Box> box = Optional.empty();
  private Optional<Feed> feed = Optional.empty();

  private Rig(Optional<Rate> service, Arrangement arrangement, int drives, Law life, Law rebuild) {
    this.service = service;
    this.arrangement = arrangement;
    this.drives = drives;
    this.life = life;
    this.rebuild = rebuild;
  }

  static Rig set(Arrangement arrangement, int drives, Law life, Law rebuild) {
    return new Rig(Optional.empty(), arrangement, drives, life, rebuild);
  }

  static Rig single(Law life) {
    return set(Arrangement.SINGLE, 1, life, new Fixed(0));
  }

  static Rig service(Rate loses) {
    return new Rig(Optional.of(loses), Arrangement.SINGLE, 1, new Never(), new Fixed(0));
  }

  Rig aged(double hours) {
    age = new Fixed(hours);
    return this;
  }

  Rig neverReplaced() {
    arrival = new Fixed(BEYOND_ANY_HORIZON);
    return this;
  }

  Rig lookedAtEvery(double hours) {
    noticed = new Delay.Looks(hours);
    return this;
  }

  Rig strained(double factor) {
    strain = factor;
    return this;
  }

  Rig boxed(double ratePerHour) {
    Rate rate = new Rate(ratePerHour);
    box = Optional.of(new Box("box", rate, OptionalDouble.empty(), OptionalDouble.empty()));
    return this;
  }

  /** At a place whose mishap takes each copy there with a chance. */
  Rig at(Rate rate, double takes) {
    place = new Place("studio", List.of(new Mishap("fire", rate, takes)));
    return this;
  }

  /** All drives of one batch with a variance of their frailty. */
  Rig ofOneBatch(double spread) {
    batch = Optional.of(new Medium.Batch("batch", spread));
    return this;
  }

  /** Drives grow unreadable spots, which a scrub finds, if there is one. */
  Rig hiding(Law next, Optional<Law> found) {
    defects = Optional.of(next);
    scrub = found;
    return this;
  }

  Rig misreading(double perBit) {
    readErrors = perBit;
    return this;
  }

  Rig replacedAt(double hours) {
    replaceAt = OptionalDouble.of(hours);
    return this;
  }

  Rig keepingDeleted(double hours) {
    keepsDeleted = hours;
    return this;
  }

  /** Somebody deletes a gigabyte at a rate, which is noticed after a time. */
  Rig deleting(Rate rate, Law seen) {
    Desk.Deletion deletion = new Desk.Deletion(rate, new Desk.Bytes(Units.GB), seen);
    desk = new Desk(Optional.of(deletion), Optional.empty());
    return this;
  }

  /** Malware strikes at a rate, which is noticed after a time. */
  Rig infected(Rate rate, Law seen) {
    desk = new Desk(Optional.empty(), Optional.of(new Desk.Malware(rate, seen)));
    return this;
  }

  /** Turns unusable at a rate, and nobody tries to restore from it. */
  Rig spoiling(Rate rate) {
    spoils = Optional.of(new Copy.Spoils(rate, OptionalDouble.empty()));
    return this;
  }

  /** So much on hand that the set of the working copy is full. */
  Rig full() {
    onHand = arrangement.usableDrives(drives) * DRIVE;
    return this;
  }

  Rig shooting(double everyHours, double bytes) {
    shoots = new Shoots(everyHours, bytes, Shoots.Spacing.EVEN);
    return this;
  }

  Rig arrivingAfter(Law law) {
    arrival = law;
    return this;
  }

  /** Beside another copy that is fed from this one without a lag. */
  Rig beside(Rig other) {
    return fed(other, new Feed.Continuous(), Feed.DEFAULT_VISIT_HOURS);
  }

  /** Beside drives that take turns at a period, their visits over at once. */
  Rig besideTurns(Rig other, int turns, double everyHours, double atHours) {
    other.rotation = Optional.of(new Copy.Rotation(turns, everyHours));
    return fed(other, new Feed.Every(everyHours, atHours), 1e-3);
  }

  private Rig fed(Rig other, Feed.Schedule schedule, double visitHours) {
    other.feed =
        Optional.of(
            new Feed(
                "main",
                schedule,
                OptionalDouble.of(AT_ONCE),
                Rate.NONE,
                OptionalDouble.empty(),
                visitHours));
    others.add(other.copy("copy " + (others.size() + 2)));
    return this;
  }

  /** The studio over a number of years. */
  Studio over(double years) {
    List<Copy> copies = new ArrayList<>(List.of(copy("main")));
    copies.addAll(others);
    Footage footage =
        new Footage(
            onHand,
            shoots,
            0,
            OptionalDouble.empty(),
            Footage.DEFAULT_CLIP_BYTES,
            OptionalDouble.empty());
    Layout layout = new Layout("proof", "proof", copies, OptionalDouble.empty());
    return new Studio("proof", years, Optional.empty(), footage, desk, List.of(layout));
  }

  /** The studio over a number of hours. */
  Studio overHours(double hours) {
    return over(hours / Units.HOURS_PER_YEAR);
  }

  private Copy copy(String id) {
    return new Copy(
        id,
        place,
        box,
        service
            .<Medium>map(rate -> new Medium.Service(rate, OptionalDouble.empty()))
            .orElseGet(this::driveSet),
        new Copy.Repair(noticed, noticed, arrival),
        feed,
        OptionalDouble.of(AT_ONCE),
        keepsDeleted,
        Copy.Reach.ONLINE,
        true,
        spoils,
        rotation);
  }

  private Medium driveSet() {
    DriveModel model =
        new DriveModel(
            "drive",
            DRIVE,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            life,
            age,
            0,
            Optional.empty());
    Rebuild byLaw = new Rebuild(new Rebuild.ByLaw(rebuild), Rebuild.Reads.ALL);
    return new Medium.DriveSet(
        drives, model, arrangement, batch, byLaw, replaceAt, defects, scrub, strain, readErrors);
  }
}
