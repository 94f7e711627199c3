package lastcopy.oracle;

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
 * Makes a copy in which any mechanism can be set; what is not set does not happen. Its drives live
 * for ever, failures are seen at once and replaced after 40 h; rates are GB an hour.
 */
final class Part {

  private static final double GB_PER_HOUR = Units.GB / Units.SECONDS_PER_HOUR;

  final String id;
  final Arrangement arrangement;
  final int drives;
  Law life = new Fixed(1e12);
  Law age = new Fixed(0);
  double boughtAt;
  Optional<Law> failsOff = Optional.empty();
  double driveBytes = Units.TB;
  Optional<Medium.Batch> batch = Optional.empty();
  Rebuild.Time rebuild = new Rebuild.ByLaw(new Fixed(20));
  Rebuild.Reads rebuildReads = Rebuild.Reads.ALL;
  OptionalDouble replaceAt = OptionalDouble.empty();
  Optional<Law> defects = Optional.empty();
  Optional<Law> scrub = Optional.empty();
  double strain = 1;
  double readErrors;
  Optional<Rate> service = Optional.empty();
  Place place;
  Optional<Box> box = Optional.empty();
  Delay noticed = Delay.none();
  Optional<Delay> goneNoticed = Optional.empty();
  Law arrival = new Fixed(40);
  Optional<Feed> feed = Optional.empty();
  double restores = 5 * GB_PER_HOUR;
  double keepsDeleted;
  Copy.Reach reach = Copy.Reach.ONLINE;
  boolean startsFull = true;
  Optional<Copy.Spoils> spoils = Optional.empty();
  Optional<Copy.Rotation> rotation = Optional.empty();

  Part(String id, Arrangement arrangement, int drives) {
    this.id = id;
    this.arrangement = arrangement;
    this.drives = drives;
    place = new Place(id + "'s", List.of());
  }

  static Part single(String id, double meanLife) {
    return new Part(id, Arrangement.SINGLE, 1).lives(new Exponential(meanLife));
  }

  static Part set(String id, Arrangement arrangement, int drives, double meanLife) {
    return new Part(id, arrangement, drives).lives(new Exponential(meanLife));
  }

  static Part service(String id, double meanHours) {
    Part part = new Part(id, Arrangement.SINGLE, 1);
    part.service = Optional.of(new Rate(1 / meanHours));
    return part;
  }

  Part lives(Law law) {
    life = law;
    return this;
  }

  Part aged(Law law) {
    age = law;
    return this;
  }

  Part boughtAt(double hours) {
    boughtAt = hours;
    return this;
  }

  Part livesOff(Law law) {
    failsOff = Optional.of(law);
    return this;
  }

  Part sized(double gigabytes) {
    driveBytes = gigabytes * Units.GB;
    return this;
  }

  Part batch(String name, double spread) {
    batch = Optional.of(new Medium.Batch(name, spread));
    return this;
  }

  Part rebuilds(Law law) {
    rebuild = new Rebuild.ByLaw(law);
    return this;
  }

  Part rebuildsAt(double gigabytesPerHour, Rebuild.Reads reads) {
    rebuild = new Rebuild.ByRate(OptionalDouble.of(gigabytesPerHour * GB_PER_HOUR), 0);
    rebuildReads = reads;
    return this;
  }

  Part replacedAt(double hours) {
    replaceAt = OptionalDouble.of(hours);
    return this;
  }

  Part defects(Law next, Law scrubbed) {
    defects = Optional.of(next);
    scrub = Optional.of(scrubbed);
    return this;
  }

  Part strained(double factor) {
    strain = factor;
    return this;
  }

  Part readErrors(double perBit) {
    readErrors = perBit;
    return this;
  }

  Part at(Place where) {
    place = where;
    return this;
  }

  Part in(Box where) {
    box = Optional.of(where);
    return this;
  }

  Part noticed(Delay delay) {
    noticed = delay;
    return this;
  }

  Part goneNoticed(Delay delay) {
    goneNoticed = Optional.of(delay);
    return this;
  }

  Part arrives(Law law) {
    arrival = law;
    return this;
  }

  Part nightly(String from, double at, double gigabytesPerHour) {
    return every(from, Units.HOURS_PER_DAY, at, gigabytesPerHour);
  }

  Part every(String from, double hours, double at, double gigabytesPerHour) {
    return fed(from, new Feed.Every(hours, at), gigabytesPerHour);
  }

  Part continuous(String from, double gigabytesPerHour) {
    return fed(from, new Feed.Continuous(), gigabytesPerHour);
  }

  private Part fed(String from, Feed.Schedule schedule, double gigabytesPerHour) {
    feed =
        Optional.of(
            new Feed(
                from,
                schedule,
                OptionalDouble.of(gigabytesPerHour * GB_PER_HOUR),
                Rate.NONE,
                OptionalDouble.empty(),
                Feed.DEFAULT_VISIT_HOURS));
    return this;
  }

  Part stops(double meanHours, double checkedEvery) {
    feed =
        feed.map(
            f ->
                new Feed(
                    f.from(),
                    f.schedule(),
                    f.bytesPerSecond(),
                    new Rate(1 / meanHours),
                    OptionalDouble.of(checkedEvery),
                    f.visitHours()));
    return this;
  }

  Part rotates(int turns, double every, double visits) {
    rotation = Optional.of(new Copy.Rotation(turns, every));
    feed =
        feed.map(
            f ->
                new Feed(
                    f.from(),
                    f.schedule(),
                    f.bytesPerSecond(),
                    f.stops(),
                    f.checkedEveryHours(),
                    visits));
    return this;
  }

  Part restores(double gigabytesPerHour) {
    restores = gigabytesPerHour * GB_PER_HOUR;
    return this;
  }

  Part keepsDeleted(double hours) {
    keepsDeleted = hours;
    return this;
  }

  Part offline() {
    reach = Copy.Reach.OFFLINE;
    return this;
  }

  Part startsEmpty() {
    startsFull = false;
    return this;
  }

  Part spoils(double meanHours, double triedEvery) {
    spoils = Optional.of(new Copy.Spoils(new Rate(1 / meanHours), OptionalDouble.of(triedEvery)));
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
        new Copy.Repair(noticed, goneNoticed.orElse(noticed), arrival),
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
            id + "-drive",
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
        new Rebuild(rebuild, rebuildReads),
        replaceAt,
        defects,
        scrub,
        strain,
        readErrors);
  }
}
