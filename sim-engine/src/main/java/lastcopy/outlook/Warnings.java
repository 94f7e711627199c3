package lastcopy.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lastcopy.footage.ShootTable;
import lastcopy.law.Fixed;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** Looks for what the owner of a layout should know. Each rule is one method with a stable id. */
final class Warnings {

  /** Looks further apart than this leave a failed drive unseen for too long to call it watched. */
  private static final double RARE_LOOK_HOURS = 30 * Units.HOURS_PER_DAY;

  private static final double LONG_RESTORE_HOURS = Units.HOURS_PER_WEEK;

  private final Studio studio;
  private final Layout layout;
  private final List<CopyOutlook> copies;
  private final ShootTable shoots;
  private final List<Warning> found = new ArrayList<>();

  Warnings(Studio studio, Layout layout, List<CopyOutlook> copies, ShootTable shoots) {
    this.studio = studio;
    this.layout = layout;
    this.copies = copies;
    this.shoots = shoots;
  }

  List<Warning> all() {
    oneDrive();
    onePlace();
    for (CopyOutlook outlook : copies) {
      fills(outlook);
      slowFeed(outlook);
      runAtShoot(outlook);
      overstated(outlook);
      lineRate(outlook);
      seenAtOnce(outlook.copy());
      unwatched(outlook.copy());
      slowRebuild(outlook);
      slowRestore(outlook);
      shortMemory(outlook.copy());
    }
    return found;
  }

  private void oneDrive() {
    Copy main = layout.workingCopy();
    boolean bare = main.driveSet().map(set -> set.survives() == 0).orElse(false);
    if (copies.size() == 1 && bare) {
      add("one-drive", "", "One failed drive loses footage: there is no other copy.");
    }
  }

  private void onePlace() {
    String place = layout.workingCopy().place().id();
    if (copies.size() > 1
        && copies.stream().allMatch(outlook -> outlook.copy().place().id().equals(place))) {
      add("one-place", "", "All copies stand in one place (%s): one mishap takes them.", place);
    }
  }

  private void fills(CopyOutlook outlook) {
    outlook
        .fillsAtYears()
        .ifPresent(
            years ->
                add(
                    "fills",
                    outlook.copy().id(),
                    "Its room is full after %.1f of %.1f years; the simulation goes on as if room"
                        + " had been added in time.",
                    years,
                    studio.years()));
  }

  private void slowFeed(CopyOutlook outlook) {
    if (outlook.feed().map(FeedOutlook::neverCatchesUp).orElse(false)) {
      add(
          "feed-too-slow",
          outlook.copy().id(),
          "Its feed never catches up: shoots bring more than the link carries; %.2f Mbit/s would"
              + " keep up.",
          outlook.feed().get().megabitsNeeded());
    }
  }

  private void runAtShoot(CopyOutlook outlook) {
    Optional<Feed.Schedule> schedule = outlook.copy().feed().map(Feed::schedule);
    boolean even = studio.footage().shoots().spacing() == Shoots.Spacing.EVEN;
    boolean direct =
        outlook.copy().feed().map(f -> f.from().equals(layout.workingCopy().id())).orElse(false);
    if (even && direct && schedule.orElse(null) instanceof Feed.Every every && meets(every)) {
      add(
          "run-at-shoot",
          outlook.copy().id(),
          "A run is due at the very instant of a shoot and does not carry it; better: at: %s.",
          betterAt(every));
    }
  }

  private boolean meets(Feed.Every every) {
    for (int k = 0; k < shoots.count(); k++) {
      double since = shoots.time(k) - every.atHours();
      double runs = Math.rint(since / every.everyHours());
      if (since >= 0 && every.atHours() + runs * every.everyHours() == shoots.time(k)) {
        return true;
      }
    }
    return false;
  }

  private String betterAt(Feed.Every every) {
    for (int hours = 1; hours < every.everyHours(); hours++) {
      double at = (every.atHours() + hours) % every.everyHours();
      if (!meets(new Feed.Every(every.everyHours(), at))) {
        return String.format(Locale.ROOT, "%s h", plain(at));
      }
    }
    double minutes = (every.atHours() + Math.min(1, every.everyHours()) / 2) * 60;
    return plain(minutes) + " min";
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString(Math.round(value)) : Double.toString(value);
  }

  private void overstated(CopyOutlook outlook) {
    for (Way way : outlook.ways()) {
      if (way.overstated()) {
        add(
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

  private void lineRate(CopyOutlook outlook) {
    outlook
        .copy()
        .feed()
        .filter(feed -> feed.bytesPerSecond().isPresent())
        .flatMap(feed -> Ethernet.linePromisedBy(feed.bytesPerSecond().getAsDouble()))
        .ifPresent(
            line ->
                add(
                    "line-rate",
                    outlook.copy().id(),
                    "A network line of %s Mbit/s carries at most %.1f MB/s of files; its link is"
                        + " stated faster.",
                    plain(line / 1e6),
                    Ethernet.ceiling(line) / Units.MB));
  }

  private void seenAtOnce(Copy copy) {
    boolean atOnce = copy.repair().arrival() instanceof Fixed fixed && fixed.hours() == 0;
    if (copy.driveSet().isPresent() && copy.repair().noticed().isNone() && atOnce) {
      add("seen-at-once", copy.id(), "assumes that failures are seen and replaced at once");
    }
  }

  private void unwatched(Copy copy) {
    boolean set = copy.driveSet().map(s -> s.survives() > 0).orElse(false);
    if (set
        && copy.repair().noticed() instanceof Delay.Looks looks
        && looks.periodHours() >= RARE_LOOK_HOURS) {
      add(
          "nobody-watches",
          copy.id(),
          "Somebody looks at it only every %.0f days; a failed drive may stay unseen that long.",
          looks.periodHours() / Units.HOURS_PER_DAY);
    }
  }

  private void slowRebuild(CopyOutlook outlook) {
    Optional<Medium.DriveSet> set = outlook.copy().driveSet();
    if (set.isEmpty() || outlook.rebuildHours().isEmpty()) {
      return;
    }
    double next = set.get().model().fails().mean() / (set.get().drives() - 1);
    if (outlook.rebuildHours().getAsDouble() > next) {
      add(
          "rebuild-too-slow",
          outlook.copy().id(),
          "A rebuild takes %.0f h; the next drive fails after %.0f h on average.",
          outlook.rebuildHours().getAsDouble(),
          next);
    }
  }

  private void slowRestore(CopyOutlook outlook) {
    Copy main = layout.workingCopy();
    Copy copy = outlook.copy();
    if (copy.equals(main) || copy.place().id().equals(main.place().id())) {
      return;
    }
    double years = studio.years();
    double all = new Room(studio, shoots).footage(years * Units.HOURS_PER_YEAR);
    double hours = Outlook.hours(all, WayFinder.refill(copy, main));
    if (hours > LONG_RESTORE_HOURS) {
      add(
          "slow-restore",
          copy.id(),
          "Getting everything back from it takes %.0f days at the end of %.1f years.",
          hours / Units.HOURS_PER_DAY,
          years);
    }
  }

  private void shortMemory(Copy copy) {
    Optional<Desk.Deletion> deletion = studio.desk().deletion().filter(d -> d.rate().strikes());
    if (copy.feed().isPresent()
        && deletion.isPresent()
        && copy.keepsDeletedHours() < deletion.get().noticed().mean()) {
      add(
          "forgets-too-soon",
          copy.id(),
          "It keeps deleted footage for %.0f days; a deletion is noticed after %.0f on average.",
          copy.keepsDeletedHours() / Units.HOURS_PER_DAY,
          deletion.get().noticed().mean() / Units.HOURS_PER_DAY);
    }
  }

  @SuppressWarnings("AnnotateFormatMethod") // the annotation is in no dependency of the engine
  private void add(String id, String copy, String text, Object... values) {
    found.add(new Warning(id, copy, String.format(Locale.ROOT, text, values)));
  }
}
