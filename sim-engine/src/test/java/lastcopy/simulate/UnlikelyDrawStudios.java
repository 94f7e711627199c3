package lastcopy.simulate;

import java.util.Optional;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/**
 * Studios that lose footage by a draw that seldom comes out badly, beside another way that is
 * commoner or found more easily. Five years, 2 TB on hand, 20 GB each week, drives of 8 TB at 2 % a
 * year, seen at once and replaced after 12 hours.
 */
final class UnlikelyDrawStudios {

  static final double YEAR = Units.HOURS_PER_YEAR;
  static final double HOURS = 5 * YEAR;
  static final double WAIT = 12;

  /** Failures per hour of a drive, and of mishaps by their chance in a year. */
  static final double FAILS = perHour(0.02);

  static final double GIGABYTE_PER_SECOND = 1e9;

  private UnlikelyDrawStudios() {}

  static double perHour(double yearlyChance) {
    return -StrictMath.log1p(-yearlyChance) / YEAR;
  }

  static Footage footage() {
    return Studios.shooting(2 * Units.TB, 168, 20e9, 0);
  }

  static CopyMaker drives(String id, int drives, double bytes) {
    Arrangement arrangement = drives == 1 ? Arrangement.SINGLE : Arrangement.MIRROR;
    CopyMaker copy =
        CopyMaker.set(id, arrangement, drives)
            .life(new Exponential(1 / FAILS))
            .driveBytes(bytes)
            .arrival(new Fixed(WAIT))
            .restores(GIGABYTE_PER_SECOND);
    return id.equals("main") ? copy : copy.fed("main", new Feed.Continuous(), GIGABYTE_PER_SECOND);
  }

  private static Studio twoCopies(Desk desk, double driveBytes, double keeps) {
    return Studios.at(
        desk,
        HOURS,
        footage(),
        Studios.layout(
            "only",
            drives("main", 1, driveBytes).keepsDeleted(keeps),
            drives("far", 1, driveBytes).keepsDeleted(keeps)));
  }

  /** A shoot is deleted and it is noticed after 3 days in the mean; both copies keep it 30 days. */
  static Studio deletion() {
    return deletion(0.2, 72, 720);
  }

  static Studio deletion(double yearly, double noticed, double keeps) {
    Desk desk =
        new Desk(
            Optional.of(
                new Desk.Deletion(
                    new Rate(perHour(yearly)), new Desk.ShootCount(1), new Exponential(noticed))),
            Optional.empty());
    return twoCopies(desk, 8 * Units.TB, keeps);
  }

  /** Malware is noticed after a day in the mean; versions are kept for 10 days. */
  static Studio malware() {
    Desk desk =
        new Desk(
            Optional.empty(),
            Optional.of(new Desk.Malware(new Rate(perHour(0.02)), new Exponential(24))));
    return twoCopies(desk, 40 * Units.TB, 240);
  }

  /** Each deletion is final and takes one clip; a drive lives for some hundred million years. */
  static Studio deletions(double perHour) {
    Desk desk =
        new Desk(
            Optional.of(new Desk.Deletion(new Rate(perHour), new Desk.Bytes(1e9), new Fixed(0))),
            Optional.empty());
    CopyMaker drive = CopyMaker.single("main", new Exponential(1e12)).driveBytes(8 * Units.TB);
    return Studios.at(desk, HOURS, footage(), Studios.layout("only", drive));
  }

  /** A fire takes each of two mirrors with a chance of 1 %. */
  static Studio fire() {
    Place place = Studios.place("studio", perHour(0.01), 0.01);
    return Studios.of(
        HOURS,
        footage(),
        Studios.layout(
            "only",
            drives("main", 2, 8 * Units.TB).at(place),
            drives("far", 2, 8 * Units.TB).at(place)));
  }

  /** A mirror whose drives hide unreadable spots, each for a day. */
  static Studio defects() {
    CopyMaker mirror =
        CopyMaker.set("main", Arrangement.MIRROR, 2)
            .life(new Exponential(1 / FAILS))
            .driveBytes(8 * Units.TB)
            .rebuild(new Fixed(WAIT))
            .latentDefects(new Exponential(1e6))
            .scrub(new Fixed(24));
    return Studios.of(HOURS, footage(), Studios.layout("only", mirror));
  }

  /** Parity whose rebuilds lose clips, and once in a million studios everything. */
  static Studio parity() {
    CopyMaker parity =
        CopyMaker.set("main", Arrangement.PARITY, 3)
            .life(new Exponential(1 / perHour(0.01)))
            .driveBytes(16 * Units.TB)
            .rebuild(new Fixed(WAIT))
            .readErrors(1e-15);
    return Studios.of(
        HOURS, Studios.shooting(20 * Units.TB, 168, 10e9, 0), Studios.layout("only", parity));
  }
}
