package lastcopy.outlook;

import java.util.Locale;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/** Room, and the rates of the ways on which footage moves. */
final class RoomRules {

  private static final double LONG_RESTORE_HOURS = Units.HOURS_PER_WEEK;

  private RoomRules() {}

  static void apply(Subject subject, CopyOutlook copy) {
    fills(subject, copy);
    overstated(subject, copy);
    lineRate(subject, copy);
    slowRestore(subject, copy.copy());
  }

  private static void fills(Subject subject, CopyOutlook outlook) {
    if (outlook.fillsAtYears().isEmpty()) {
      return;
    }
    boolean shelf =
        outlook.copy().driveSet().map(set -> set.arrangement() == Arrangement.SHELF).orElse(false);
    subject.warn(
        "fills",
        outlook.copy().id(),
        "Its room is full after %.1f of %s (%s would be enough); %s.",
        outlook.fillsAtYears().getAsDouble(),
        Subject.years(subject.studio().years()),
        Subject.bytes(shelf ? subject.allFootage() : subject.mostFootage()),
        shelf
            ? "another drive is bought then"
            : "the simulation goes on as if room had been added in time");
  }

  private static void overstated(Subject subject, CopyOutlook outlook) {
    for (Route way : outlook.ways()) {
      if (way.overstated()) {
        subject.warn(
            "rate-above-hardware",
            outlook.copy().id(),
            "The stated rate of its %s, %.0f MB/s, is more than %s can do (%.0f MB/s); it is taken"
                + " as it is.",
            way.kind().word(),
            way.bytesPerSecond() / Units.MB,
            way.slowest().name(),
            way.slowest().bytesPerSecond() / Units.MB);
      }
    }
  }

  private static void lineRate(Subject subject, CopyOutlook outlook) {
    outlook
        .copy()
        .feed()
        .filter(feed -> feed.bytesPerSecond().isPresent())
        .flatMap(feed -> Ethernet.linePromisedBy(feed.bytesPerSecond().getAsDouble()))
        .ifPresent(
            line ->
                subject.warn(
                    "line-rate",
                    outlook.copy().id(),
                    "A network line of %.0f Mbit/s carries at most %.1f MB/s of files; its link is"
                        + " stated faster.",
                    line / 1e6,
                    Ethernet.ceiling(line) / Units.MB));
  }

  private static void slowRestore(Subject subject, Copy copy) {
    Copy main = subject.layout().workingCopy();
    if (subject.isWorkingCopy(copy) || copy.place().id().equals(main.place().id())) {
      return;
    }
    double all =
        new Room(subject.studio(), subject.shoots()).footage(subject.studio().horizonHours());
    double waits = Ways.restoresIn(copy);
    double hours = waits + RefillReckoner.hours(all, WayFinder.refill(copy, main));
    if (hours > LONG_RESTORE_HOURS) {
      double left = LONG_RESTORE_HOURS - waits;
      subject.warn(
          "slow-restore",
          copy.id(),
          "Getting everything back from it takes %.0f days at the end of %s; %s.",
          hours / Units.HOURS_PER_DAY,
          Subject.years(subject.studio().years()),
          left > 0
              ? String.format(
                  Locale.ROOT,
                  "a week needs %.0f MB/s (restores_at)",
                  Math.ceil(all / left / Units.SECONDS_PER_HOUR / Units.MB))
              : "it begins to give back only after " + Subject.timeExactly(waits));
    }
  }
}
