package lastcopy.oracle;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Costs;
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
import lastcopy.scenario.Uplink;

/**
 * Makes a copy in which any mechanism can be set; what is not set does not happen. Its drives live
 * for ever, failures are seen at once and replaced after 40 h; rates are GB an hour.
 */
final class Part {

  private static final double GB_PER_HOUR = Units.GB / Units.SECONDS_PER_HOUR;

  final String id;
  private final CopyBuilder copy;
  private final DriveModelBuilder drive;
  private final DriveSetBuilder set;
  private final int drives;
  private Consumer<DriveModelBuilder> other;
  private Optional<Rate> service = Optional.empty();
  private OptionalDouble perTbMonth = OptionalDouble.empty();
  private double restoresIn;
  private FeedBuilder feed;

  Part(String id, Arrangement arrangement, int drives) {
    this.id = id;
    this.drives = drives;
    copy = Copy.builder(id).at(Place.of(id + "'s")).arrival(new Fixed(40));
    drive = DriveModel.builder(id + "-drive", Units.TB).fails(new Fixed(1e12));
    set = Medium.DriveSet.builder(arrangement, drives).rebuild(new Fixed(20));
    restores(5);
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

  private Part copy(Consumer<CopyBuilder> states) {
    states.accept(copy);
    return this;
  }

  private Part drive(Consumer<DriveModelBuilder> states) {
    states.accept(drive);
    return this;
  }

  private Part set(Consumer<DriveSetBuilder> states) {
    states.accept(set);
    return this;
  }

  /** Every second drive, from the second on, differs so from what has been said until now. */
  Part everySecond(Consumer<DriveModelBuilder> differs) {
    other = differs;
    return this;
  }

  Part lives(Law law) {
    return drive(made -> made.fails(law));
  }

  Part aged(Law law) {
    return drive(made -> made.age(law));
  }

  Part boughtAt(double hours) {
    return drive(made -> made.boughtAt(hours));
  }

  Part livesOff(Law law) {
    return drive(made -> made.failsOff(law));
  }

  Part sized(double gigabytes) {
    return drive(made -> made.size(gigabytes * Units.GB));
  }

  /** Each drive, or each TB and month of a service, has a price; drives draw power. */
  Part priced(double price, double watts) {
    perTbMonth = OptionalDouble.of(price);
    return drive(made -> made.price(price).power(watts));
  }

  Part owned() {
    return drive(DriveModelBuilder::owned);
  }

  Part costs(Costs others) {
    return copy(made -> made.costs(others));
  }

  Part batch(String name, double spread) {
    return set(made -> made.batch(name, spread));
  }

  Part rebuilds(Law law) {
    return set(made -> made.rebuild(law));
  }

  Part rebuildsAt(double gigabytesPerHour, Rebuild.Reads reads) {
    OptionalDouble rate = OptionalDouble.of(gigabytesPerHour * GB_PER_HOUR);
    return set(made -> made.rebuild(new Rebuild.ByRate(rate, 0)).reads(reads));
  }

  Part replacedAt(double hours) {
    return set(made -> made.replaceAt(hours));
  }

  Part defects(Law next, Law scrubbed) {
    return set(made -> made.latentDefects(next).scrub(scrubbed));
  }

  Part strained(double factor) {
    return set(made -> made.strain(factor));
  }

  Part readErrors(double perBit) {
    return set(made -> made.readErrors(perBit));
  }

  Part at(Place where) {
    return copy(made -> made.at(where));
  }

  Part in(Box where) {
    return copy(made -> made.in(where));
  }

  Part noticed(Delay delay) {
    return copy(made -> made.noticed(delay));
  }

  Part goneNoticed(Delay delay) {
    return copy(made -> made.goneNoticed(delay));
  }

  Part arrives(Law law) {
    return copy(made -> made.arrival(law));
  }

  Part nightly(String from, double at, double gigabytesPerHour) {
    return every(from, Units.HOURS_PER_DAY, at, gigabytesPerHour);
  }

  Part every(String from, double hours, double at, double gigabytesPerHour) {
    return fed(Feed.from(from).every(hours, at), gigabytesPerHour);
  }

  Part continuous(String from, double gigabytesPerHour) {
    return fed(Feed.from(from).continuous(), gigabytesPerHour);
  }

  private Part fed(FeedBuilder by, double gigabytesPerHour) {
    feed = by.link(gigabytesPerHour * GB_PER_HOUR);
    return this;
  }

  Part stops(double meanHours, double checkedEvery) {
    feed.stops(new Rate(1 / meanHours)).checkedEvery(checkedEvery);
    return this;
  }

  /** Its link may be used between two hours of the day. */
  Part between(double opens, double closes) {
    feed.between(opens, closes);
    return this;
  }

  /** It shares the uplink of that name. */
  Part over(String uplink, double gigabytesPerHour) {
    feed.over(Uplink.of(uplink, gigabytesPerHour * GB_PER_HOUR));
    return this;
  }

  Part carried(double takes, double gigabytesPerHour) {
    feed.carried(takes, gigabytesPerHour * GB_PER_HOUR);
    return this;
  }

  /** A refill from the service begins after a while. */
  Part restoresIn(double hours) {
    restoresIn = hours;
    return this;
  }

  Part rotates(int turns, double every, double visits) {
    feed.visits(visits);
    return copy(made -> made.rotation(turns, every));
  }

  Part restores(double gigabytesPerHour) {
    return copy(made -> made.restoresAt(gigabytesPerHour * GB_PER_HOUR));
  }

  Part keepsDeleted(double hours) {
    return copy(made -> made.keepsDeleted(hours));
  }

  Part offline() {
    return copy(CopyBuilder::offline);
  }

  Part startsEmpty() {
    return copy(CopyBuilder::startsEmpty);
  }

  Part spoils(double meanHours, double triedEvery) {
    return copy(made -> made.spoils(new Rate(1 / meanHours), triedEvery));
  }

  Copy make() {
    if (feed != null) {
      copy.fed(feed.build());
    }
    return copy.on(service.<Medium>map(this::paid).orElseGet(this::driveSet)).build();
  }

  private Medium paid(Rate loses) {
    return new Medium.Service(loses, perTbMonth, OptionalDouble.empty(), restoresIn);
  }

  private Medium driveSet() {
    DriveModel first = drive.build();
    if (other == null) {
      return set.of(first).build();
    }
    DriveModelBuilder differs =
        DriveModel.builder(id + "-other", first.sizeBytes()).fails(first.fails()).age(first.age());
    other.accept(differs);
    DriveModel second = differs.build();
    DriveModel[] each = new DriveModel[drives];
    Arrays.setAll(each, i -> i % 2 == 0 ? first : second);
    return set.ofEach(each).build();
  }
}
