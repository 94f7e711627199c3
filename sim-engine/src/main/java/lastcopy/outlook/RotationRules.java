package lastcopy.outlook;

import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Units;

/** Drives that take turns: what a visit carries, and what stands in one place between swaps. */
final class RotationRules {

  private RotationRules() {}

  static void apply(Subject subject, CopyOutlook outlook) {
    outlook
        .copy()
        .rotation()
        .ifPresent(
            rotation -> {
              shortVisit(subject, outlook, rotation);
              gap(subject, outlook.copy(), rotation);
            });
  }

  private static void shortVisit(Subject subject, CopyOutlook outlook, Copy.Rotation rotation) {
    double rate = outlook.way(Route.Kind.FEED).orElseThrow().bytesPerSecond();
    double visit = outlook.copy().feed().map(Feed::visitHours).orElseThrow();
    double carries = rate * visit * Units.SECONDS_PER_HOUR;
    double brought = subject.mostShotWithin(rotation.turns() * rotation.everyHours());
    if (carries < brought) {
      subject.warn(
          "visit-too-short",
          outlook.copy().id(),
          "A visit of %s carries %s, but up to %s are shot from one turn of a drive to its next:"
              + " the rest waits. Set visits: %.0f h or use a faster link.",
          Subject.time(visit),
          Subject.bytes(carries),
          Subject.bytes(brought),
          Math.ceil(brought / rate / Units.SECONDS_PER_HOUR));
    }
  }

  /**
   * A mishap of the place strikes half a period after a swap on average; during a visit it takes
   * the visiting drive too, and the one before it is a period older.
   */
  private static double lostOnAverage(Copy copy, Copy.Rotation rotation, double shot) {
    double visit = copy.feed().map(Feed::visitHours).orElseThrow();
    return shot * (0.5 + Math.min(1, visit / rotation.everyHours()));
  }

  private static void gap(Subject subject, Copy copy, Copy.Rotation rotation) {
    boolean onlyTurns =
        subject.copies().stream()
            .map(CopyOutlook::copy)
            .allMatch(other -> subject.isWorkingCopy(other) || other.rotation().isPresent());
    double shot = subject.mostShotWithin(rotation.everyHours());
    if (onlyTurns && shot > subject.largestShoot()) {
      subject.warn(
          "rotation-gap",
          copy.id(),
          "Up to %s are shot between two swaps and stand in one place until the next: a mishap"
              + " there takes about %s of new footage on average, the drive on its visit with it."
              + " Swap after each large shoot.",
          Subject.bytes(shot),
          Subject.bytes(lostOnAverage(copy, rotation, shot)));
    }
  }
}
