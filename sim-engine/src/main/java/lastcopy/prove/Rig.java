package lastcopy.prove;

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
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.DriveModelBuilder;
import lastcopy.scenario.DriveSetBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.FeedBuilder;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.LayoutBuilder;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
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
  private final List<Consumer<CopyBuilder>> stated = new ArrayList<>();
  private final DriveModelBuilder drive = DriveModel.builder("drive", DRIVE);
  private final Optional<Rate> service;
  private final DriveSetBuilder set;
  private boolean isUnlike;
  private Desk desk = Desk.QUIET;
  private double onHand = Units.TB;
  private Shoots shoots = new Shoots(BEYOND_ANY_HORIZON, Units.TB, Shoots.Spacing.EVEN);

  private Rig(Optional<Rate> service, Arrangement arrangement, int drives) {
    this.service = service;
    set = Medium.DriveSet.builder(arrangement, drives);
    stated.add(copy -> copy.at(Place.of("quiet")).restoresAt(AT_ONCE));
  }

  static Rig set(Arrangement arrangement, int drives, Law life, Law rebuild) {
    Rig rig = new Rig(Optional.empty(), arrangement, drives);
    rig.drive.fails(life);
    rig.set.rebuild(rebuild);
    return rig;
  }

  /** Drives of several models, each of an exponential life by its mean in hours. */
  static Rig unlike(Arrangement arrangement, Law rebuild, double... meanLives) {
    Rig rig = new Rig(Optional.empty(), arrangement, meanLives.length);
    DriveModel[] each = new DriveModel[meanLives.length];
    for (int i = 0; i < each.length; i++) {
      String id = "drive of " + meanLives[i] + " h";
      each[i] = DriveModel.builder(id, DRIVE).fails(new Exponential(meanLives[i])).build();
    }
    rig.set.ofEach(each).rebuild(rebuild);
    rig.isUnlike = true;
    return rig;
  }

  static Rig single(Law life) {
    return set(Arrangement.SINGLE, 1, life, new Fixed(0));
  }

  static Rig service(Rate loses) {
    return new Rig(Optional.of(loses), Arrangement.SINGLE, 1);
  }

  private Rig copy(Consumer<CopyBuilder> states) {
    stated.add(states);
    return this;
  }

  private Rig set(Consumer<DriveSetBuilder> states) {
    states.accept(set);
    return this;
  }

  Rig aged(double hours) {
    drive.age(new Fixed(hours));
    return this;
  }

  Rig neverReplaced() {
    return arrivingAfter(new Fixed(BEYOND_ANY_HORIZON));
  }

  Rig lookedAtEvery(double hours) {
    return copy(copy -> copy.noticed(new Delay.Looks(hours)));
  }

  Rig strained(double factor) {
    return set(drives -> drives.strain(factor));
  }

  Rig boxed(double ratePerHour) {
    return copy(copy -> copy.in(Box.of("box", new Rate(ratePerHour))));
  }

  /** At a place whose mishap takes each copy there with a chance. */
  Rig at(Rate rate, double takes) {
    return copy(copy -> copy.at(Place.of("studio", new Mishap("fire", rate, takes))));
  }

  /** All drives of one batch with a variance of their frailty. */
  Rig ofOneBatch(double spread) {
    return set(drives -> drives.batch("batch", spread));
  }

  /** Drives grow unreadable spots, which a scrub finds, if there is one. */
  Rig hiding(Law next, Optional<Law> found) {
    found.ifPresent(set::scrub);
    return set(drives -> drives.latentDefects(next));
  }

  Rig misreading(double perBit) {
    return set(drives -> drives.readErrors(perBit));
  }

  Rig replacedAt(double hours) {
    return set(drives -> drives.replaceAt(hours));
  }

  Rig keepingDeleted(double hours) {
    return copy(copy -> copy.keepsDeleted(hours));
  }

  /** Somebody deletes a gigabyte at a rate, which is noticed after a time. */
  Rig deleting(Rate rate, Law seen) {
    desk = Desk.of(new Desk.Deletion(rate, new Desk.Bytes(Units.GB), seen));
    return this;
  }

  /** Malware strikes at a rate, which is noticed after a time. */
  Rig infected(Rate rate, Law seen) {
    desk = Desk.of(new Desk.Malware(rate, seen));
    return this;
  }

  /** Turns unusable at a rate, and nobody tries to restore from it. */
  Rig spoiling(Rate rate) {
    return copy(copy -> copy.spoils(rate));
  }

  /** So much on hand that the set of the working copy is full. */
  Rig full() {
    onHand = driveSet().usableBytes();
    return this;
  }

  Rig shooting(double everyHours, double bytes) {
    shoots = new Shoots(everyHours, bytes, Shoots.Spacing.EVEN);
    return this;
  }

  Rig arrivingAfter(Law law) {
    return copy(copy -> copy.arrival(law));
  }

  /** Beside another copy that is fed from this one without a lag. */
  Rig beside(Rig other) {
    return fed(other, Feed.from("main").continuous());
  }

  /** Beside drives that take turns at a period, their visits over at once. */
  Rig besideTurns(Rig other, int turns, double everyHours, double atHours) {
    other.copy(copy -> copy.rotation(turns, everyHours));
    return fed(other, Feed.from("main").every(everyHours, atHours).visits(1e-3));
  }

  private Rig fed(Rig other, FeedBuilder feed) {
    other.copy(copy -> copy.fed(feed.link(AT_ONCE).build()));
    others.add(other.copy("copy " + (others.size() + 2)));
    return this;
  }

  /** The studio over a number of years. */
  Studio over(double years) {
    LayoutBuilder layout = Layout.builder("proof").copy(copy("main"));
    others.forEach(layout::copy);
    return Studio.builder("proof", years)
        .footage(Footage.builder(shoots).onHand(onHand).build())
        .desk(desk)
        .layout(layout.build())
        .build();
  }

  /** The studio over a number of hours. */
  Studio overHours(double hours) {
    return over(hours / Units.HOURS_PER_YEAR);
  }

  private Copy copy(String id) {
    CopyBuilder copy = Copy.builder(id);
    stated.forEach(states -> states.accept(copy));
    return copy.on(service.<Medium>map(Medium.Service::losing).orElseGet(this::driveSet)).build();
  }

  private Medium.DriveSet driveSet() {
    return isUnlike ? set.build() : set.of(drive.build()).build();
  }
}
