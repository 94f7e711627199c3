package lastcopy.outlook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;

/** What a layout as a whole lacks: a second copy, another place, drives that differ. */
final class LayoutRules {

  private LayoutRules() {}

  static void apply(Subject subject) {
    oneCopy(subject);
    onePlace(subject);
    oneBatch(subject);
  }

  private static void oneCopy(Subject subject) {
    if (subject.copies().size() > 1) {
      return;
    }
    Copy main = subject.layout().workingCopy();
    boolean bare = main.driveSet().map(set -> set.survives() == 0).orElse(false);
    if (bare) {
      Medium.DriveSet set = main.driveSet().orElseThrow();
      subject.warn(
          "one-drive",
          "",
          "One failed drive loses footage, and a drive fails with %s within %.1f years: there is"
              + " no other copy. Add one, best in another place.",
          Subject.percent(failsWithin(subject, set)),
          subject.studio().years());
    } else {
      double rate = mishaps(main);
      subject.warn(
          "one-copy",
          "",
          "All footage is in one copy: its parts back each other, but a mishap of the box or the"
              + " place, or a mistake at the desk, takes it whole%s. Add a copy in another place.",
          rate > 0 ? " (place and box: " + Subject.yearly(rate) + " a year)" : "");
    }
  }

  /** The chance that one drive fails by the horizon, at the mean age of its model. */
  private static double failsWithin(Subject subject, Medium.DriveSet set) {
    double age = set.model().age().mean();
    double horizon = subject.studio().horizonHours();
    return -StrictMath.expm1(
        set.model().fails().cumulativeHazard(age)
            - set.model().fails().cumulativeHazard(age + horizon));
  }

  private static double mishaps(Copy copy) {
    double place = copy.place().mishaps().stream().mapToDouble(m -> m.rate().perHour()).sum();
    return place + copy.box().map(box -> box.rate().perHour()).orElse(0.0);
  }

  private static void onePlace(Subject subject) {
    Copy main = subject.layout().workingCopy();
    if (subject.copies().size() > 1
        && subject.copies().stream()
            .allMatch(outlook -> outlook.copy().place().id().equals(main.place().id()))) {
      double rate = main.place().mishaps().stream().mapToDouble(m -> m.rate().perHour()).sum();
      subject.warn(
          "one-place",
          "",
          "All copies stand in one place (%s): one mishap takes them (%s a year). Move one copy to"
              + " another place.",
          main.place().id(),
          Subject.yearly(rate));
    }
  }

  /** After one failure of a batch the hazard of the others is 1 + spread times the mean. */
  private static void oneBatch(Subject subject) {
    Map<Medium.Batch, Integer> drives = new LinkedHashMap<>();
    for (CopyOutlook outlook : subject.copies()) {
      outlook
          .copy()
          .driveSet()
          .ifPresent(
              set -> set.batch().ifPresent(b -> drives.merge(b, set.drives(), Integer::sum)));
    }
    drives.forEach(
        (batch, count) -> {
          if (count > 1) {
            subject.warn(
                "one-batch",
                "",
                "%d drives (%s) are of one batch, %s: once one has failed, the others fail %.2g"
                    + " times as often. Mix makes or dates of purchase.",
                count,
                copiesOf(subject, batch),
                batch.name(),
                1 + batch.spread());
          }
        });
  }

  private static String copiesOf(Subject subject, Medium.Batch batch) {
    return subject.copies().stream()
        .map(CopyOutlook::copy)
        .filter(
            copy ->
                copy.driveSet().flatMap(Medium.DriveSet::batch).filter(batch::equals).isPresent())
        .map(Copy::id)
        .collect(Collectors.joining(", "));
  }
}
