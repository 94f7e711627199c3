package lastcopy.simulate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Units;

/**
 * Makes one copy for a test. Unless told otherwise its failures are seen and replaced at once, it
 * stands where nothing happens, starts full and gives data back in next to no time.
 */
public final class CopyMaker {

  /** So fast (bytes per second) that a terabyte crosses in a nanosecond: time drops out. */
  public static final double AT_ONCE = 1e21;

  private static final double DRIVE_BYTES = 1_000 * Units.TB;

  private final String id;
  private final Arrangement arrangement;
  private final int drives;
  private final Optional<Rate> service;
  private Law life = new Fixed(1e12);
  private Law age = new Fixed(0);
  private Law rebuild = new Fixed(0);
  private double strain = 1;
  private Place place = new Place("quiet", List.of());
  private Optional<Box> box = Optional.empty();
  private Delay noticed = Delay.none();
  private Law arrival = new Fixed(0);
  private Optional<Feed> feed = Optional.empty();
  private double restores = AT_ONCE;
  private double keepsDeleted;
  private Copy.Reach reach = Copy.Reach.ONLINE;
  private boolean startsFull = true;
  private double driveBytes = DRIVE_BYTES;
  private double boughtAt;
  private Optional<Law> failsOff = Optional.empty();
  private Optional<Medium.Batch> batch = Optional.empty();
  private OptionalDouble replaceAt = OptionalDouble.empty();
  private Optional<Law> latent = Optional.empty();
  private Optional<Law> scrub = Optional.empty();
  private double readErrors;
  private Rebuild.Reads reads = Rebuild.Reads.ALL;
  private Optional<Copy.Spoils> spoils = Optional.empty();
  private Optional<Copy.Rotation> rotation = Optional.empty();

  private CopyMaker(String id, Arrangement arrangement, int drives, Optional<Rate> service) {
    this.id = id;
    this.arrangement = arrangement;
    this.drives = drives;
    this.service = service;
  }

  /** One drive of a law of life. */
  public static CopyMaker single(String id, Law life) {
    return set(id, Arrangement.SINGLE, 1).life(life);
  }

  /** A set of drives. */
  public static CopyMaker set(String id, Arrangement arrangement, int drives) {
    return new CopyMaker(id, arrangement, drives, Optional.empty());
  }

  /** A set of exponential life and exponential repair, both by their means in hours. */
  public static CopyMaker markov(
      String id, Arrangement arrangement, int drives, double meanLife, double meanRepair) {
    return set(id, arrangement, drives)
        .life(new Exponential(meanLife))
        .rebuild(new Exponential(meanRepair));
  }

  /** A service that loses the copy at a rate. */
  public static CopyMaker service(String id, Rate loses) {
    return new CopyMaker(id, Arrangement.SINGLE, 1, Optional.of(loses));
  }

  public CopyMaker life(Law law) {
    life = law;
    return this;
  }

  public CopyMaker aged(Law law) {
    age = law;
    return this;
  }

  public CopyMaker rebuild(Law law) {
    rebuild = law;
    return this;
  }

  public CopyMaker strain(double factor) {
    strain = factor;
    return this;
  }

  public CopyMaker driveBytes(double bytes) {
    driveBytes = bytes;
    return this;
  }

  /** Drives that come later are bought at an age. */
  CopyMaker boughtAt(double hours) {
    boughtAt = hours;
    return this;
  }

  CopyMaker failsOff(Law law) {
    failsOff = Optional.of(law);
    return this;
  }

  CopyMaker batch(String name, double spread) {
    batch = Optional.of(new Medium.Batch(name, spread));
    return this;
  }

  CopyMaker replacedAt(double hours) {
    replaceAt = OptionalDouble.of(hours);
    return this;
  }

  /** Drives grow unreadable spots after a law. */
  CopyMaker latentDefects(Law law) {
    latent = Optional.of(law);
    return this;
  }

  CopyMaker scrub(Law law) {
    scrub = Optional.of(law);
    return this;
  }

  public CopyMaker readErrors(double perBit) {
    readErrors = perBit;
    return this;
  }

  /** What a rebuild reads. */
  CopyMaker reads(Rebuild.Reads what) {
    reads = what;
    return this;
  }

  public CopyMaker at(Place where) {
    place = where;
    return this;
  }

  CopyMaker boxed(double ratePerHour) {
    box =
        Optional.of(
            new Box("box", new Rate(ratePerHour), OptionalDouble.empty(), OptionalDouble.empty()));
    return this;
  }

  /** Somebody looks every so many hours, by the clock. */
  public CopyMaker lookedAtEvery(double hours) {
    noticed = new Delay.Looks(hours);
    return this;
  }

  public CopyMaker arrival(Law law) {
    arrival = law;
    return this;
  }

  /** Never replaced within any horizon. */
  CopyMaker neverReplaced() {
    return arrival(new Fixed(1e12));
  }

  /** Fed every day at an hour, at a rate in bytes per second. */
  public CopyMaker nightly(String from, double atHours, double bytesPerSecond) {
    return fed(from, new Feed.Every(Units.HOURS_PER_DAY, atHours), bytesPerSecond);
  }

  public CopyMaker fed(String from, Feed.Schedule schedule, double bytesPerSecond) {
    return fed(from, schedule, bytesPerSecond, Feed.DEFAULT_VISIT_HOURS);
  }

  /** Drives that take turns offline, each visiting from the start of its run. */
  CopyMaker rotates(String from, int turns, Feed.Every every, double visitHours) {
    rotation = Optional.of(new Copy.Rotation(turns, every.everyHours()));
    return fed(from, every, AT_ONCE, visitHours).offline();
  }

  private CopyMaker fed(
      String from, Feed.Schedule schedule, double bytesPerSecond, double visitHours) {
    feed =
        Optional.of(
            new Feed(
                from,
                schedule,
                OptionalDouble.of(bytesPerSecond),
                Rate.NONE,
                OptionalDouble.empty(),
                visitHours));
    return this;
  }

  public CopyMaker restores(double bytesPerSecond) {
    restores = bytesPerSecond;
    return this;
  }

  CopyMaker keepsDeleted(double hours) {
    keepsDeleted = hours;
    return this;
  }

  /** Turns out unusable at a rate, and nobody tries. */
  CopyMaker spoils(Rate rate) {
    spoils = Optional.of(new Copy.Spoils(rate, OptionalDouble.empty()));
    return this;
  }

  CopyMaker offline() {
    reach = Copy.Reach.OFFLINE;
    return this;
  }

  CopyMaker startsEmpty() {
    startsFull = false;
    return this;
  }

  Copy make() {
    return new Copy(
        id,
        place,
        box,
        service
            .<Medium>map(rate -> new Medium.Service(rate, OptionalDouble.empty()))
            .orElseGet(this::driveSet),
        new Copy.Repair(noticed, noticed, arrival),
        feed,
        OptionalDouble.of(restores),
        keepsDeleted,
        reach,
        startsFull,
        spoils,
        rotation);
  }

  private Medium driveSet() {
    return new Medium.DriveSet(
        drives,
        new DriveModel(
            "drive",
            driveBytes,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            life,
            age,
            boughtAt,
            failsOff),
        arrangement,
        batch,
        new Rebuild(new Rebuild.ByLaw(rebuild), reads),
        replaceAt,
        latent,
        scrub,
        strain,
        readErrors);
  }
}
