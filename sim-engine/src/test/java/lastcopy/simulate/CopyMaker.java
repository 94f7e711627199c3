package lastcopy.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Delay;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.DriveModelBuilder;
import lastcopy.scenario.DriveSetBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.FeedBuilder;
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

  private final CopyBuilder copy;
  private final DriveModelBuilder drive;
  private final DriveSetBuilder set;
  private final int drives;
  private final Optional<Rate> service;

  /** By drive what makes it differ from the others; none if all are alike. */
  private final List<Consumer<DriveModelBuilder>> differs = new ArrayList<>();

  private CopyMaker(String id, Arrangement arrangement, int drives, Optional<Rate> service) {
    copy = Copy.builder(id).at(Place.of("quiet")).restoresAt(AT_ONCE);
    drive = DriveModel.builder("drive", DRIVE_BYTES).fails(new Fixed(1e12));
    set = Medium.DriveSet.builder(arrangement, drives).rebuild(new Fixed(0));
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

  /** States something of the copy, by the names of the library. */
  public CopyMaker copy(Consumer<CopyBuilder> states) {
    states.accept(copy);
    return this;
  }

  /** States something of its drives. */
  public CopyMaker drive(Consumer<DriveModelBuilder> states) {
    states.accept(drive);
    return this;
  }

  /** States something of its set of drives. */
  public CopyMaker set(Consumer<DriveSetBuilder> states) {
    states.accept(set);
    return this;
  }

  /** The next drive, from the first on, differs so from what else is said of all of them. */
  public CopyMaker each(Consumer<DriveModelBuilder> drives) {
    differs.add(drives);
    return this;
  }

  /** Each drive has an exponential life, by its mean in hours. */
  public CopyMaker lives(double... meanHours) {
    for (double mean : meanHours) {
      each(made -> made.fails(new Exponential(mean)));
    }
    return this;
  }

  public CopyMaker life(Law law) {
    return drive(made -> made.fails(law));
  }

  public CopyMaker aged(Law law) {
    return drive(made -> made.age(law));
  }

  public CopyMaker rebuild(Law law) {
    return set(made -> made.rebuild(law));
  }

  public CopyMaker strain(double factor) {
    return set(made -> made.strain(factor));
  }

  public CopyMaker readErrors(double perBit) {
    return set(made -> made.readErrors(perBit));
  }

  public CopyMaker driveBytes(double bytes) {
    return drive(made -> made.size(bytes));
  }

  /** Drives that come later are bought at an age. */
  CopyMaker boughtAt(double hours) {
    return drive(made -> made.boughtAt(hours));
  }

  CopyMaker failsOff(Law law) {
    return drive(made -> made.failsOff(law));
  }

  /** What a rebuild reads. */
  CopyMaker reads(Rebuild.Reads what) {
    return set(made -> made.reads(what));
  }

  /** Drives grow unreadable spots after a law. */
  public CopyMaker latentDefects(Law law) {
    return set(made -> made.latentDefects(law));
  }

  CopyMaker scrub(Law law) {
    return set(made -> made.scrub(law));
  }

  public CopyMaker batch(String name, double spread) {
    return set(made -> made.batch(name, spread));
  }

  CopyMaker replacedAt(double hours) {
    return set(made -> made.replaceAt(hours));
  }

  public CopyMaker at(Place where) {
    return copy(made -> made.at(where));
  }

  CopyMaker boxed(double ratePerHour) {
    return copy(made -> made.in(Box.of("box", new Rate(ratePerHour))));
  }

  /** Somebody looks every so many hours, by the clock. */
  public CopyMaker lookedAtEvery(double hours) {
    return copy(made -> made.noticed(new Delay.Looks(hours)));
  }

  public CopyMaker arrival(Law law) {
    return copy(made -> made.arrival(law));
  }

  /** Never replaced within any horizon. */
  CopyMaker neverReplaced() {
    return arrival(new Fixed(1e12));
  }

  /** Fed every day at an hour, at a rate in bytes per second. */
  public CopyMaker nightly(String from, double atHours, double bytesPerSecond) {
    return fed(Feed.from(from).every(Units.HOURS_PER_DAY, atHours).link(bytesPerSecond));
  }

  public CopyMaker fed(String from, Feed.Schedule schedule, double bytesPerSecond) {
    return fed(Feed.from(from).schedule(schedule).link(bytesPerSecond));
  }

  /** Drives that take turns offline, each visiting from the start of its run. */
  CopyMaker rotates(String from, int turns, Feed.Every every, double visitHours) {
    copy.rotation(turns, every.everyHours()).offline();
    return fed(Feed.from(from).schedule(every).link(AT_ONCE).visits(visitHours));
  }

  private CopyMaker fed(FeedBuilder feed) {
    return copy(made -> made.fed(feed.build()));
  }

  public CopyMaker restores(double bytesPerSecond) {
    return copy(made -> made.restoresAt(bytesPerSecond));
  }

  CopyMaker keepsDeleted(double hours) {
    return copy(made -> made.keepsDeleted(hours));
  }

  /** Turns out unusable at a rate, and nobody tries. */
  CopyMaker spoils(Rate rate) {
    return copy(made -> made.spoils(rate));
  }

  CopyMaker startsEmpty() {
    return copy(CopyBuilder::startsEmpty);
  }

  CopyMaker offline() {
    return copy(CopyBuilder::offline);
  }

  Copy make() {
    return copy.on(service.<Medium>map(Medium.Service::losing).orElseGet(this::driveSet)).build();
  }

  private Medium driveSet() {
    if (differs.isEmpty()) {
      return set.of(drive.build()).build();
    }
    DriveModel[] each = new DriveModel[drives];
    for (int i = 0; i < drives; i++) {
      each[i] = unlike(drive.build(), i);
    }
    return set.ofEach(each).build();
  }

  private DriveModel unlike(DriveModel as, int i) {
    DriveModelBuilder made =
        DriveModel.builder("drive " + i, as.sizeBytes())
            .fails(as.fails())
            .age(as.age())
            .boughtAt(as.boughtAtHours());
    differs.get(i).accept(made);
    return made.build();
  }
}
