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
          "One failed drive loses footage, and a drive fails within %s with a chance of %s: there is"
              + " no other copy. Add one, best in another place.",
          Subject.years(subject.studio().years()),
          Subject.percent(DriveChances.failsWithin(set, subject.studio().horizonHours())));
    } else {
      double rate = mishaps(main);
      subject.warn(
          "one-copy",
          "",
          "All footage is in one copy: its parts back each other, but a mishap of the box or the"
              + " place, or a mistake at the desk, can take all of it%s. Add a copy in another place.",
          rate > 0 ? " (place and box: " + Subject.yearly(rate) + " a year)" : "");
    }
  }

  private static double mishaps(Copy copy) {
    double place =
        copy.place().mishaps().stream().mapToDouble(m -> m.rate().perHour() * m.takes()).sum();
    return place + copy.box().map(box -> box.rate().perHour()).orElse(0.0);
  }

  private static void onePlace(Subject subject) {
    Copy main = subject.layout().workingCopy();
    if (subject.copies().size() > 1
        && subject.copies().stream()
            .allMatch(outlook -> outlook.copy().place().id().equals(main.place().id()))) {
      int copies = subject.copies().size();
      double rate =
          main.place().mishaps().stream()
              .mapToDouble(m -> m.rate().perHour() * StrictMath.pow(m.takes(), copies))
              .sum();
      subject.warn(
          "one-place",
          "",
          "All copies stand in one place (%s): one mishap there can take all of them%s. Move one"
              + " copy to another place.",
          main.place().id(),
          rate > 0 ? " (" + Subject.yearly(rate) + " a year)" : "");
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
