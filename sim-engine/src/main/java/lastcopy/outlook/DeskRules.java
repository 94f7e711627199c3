package lastcopy.outlook;

import java.util.Comparator;
import java.util.Locale;
import lastcopy.law.Law;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Units;

/** Whether some copy still has what a mistake or malware destroyed, by the time it is noticed. */
final class DeskRules {

  /** The share of cases that the remedy named is to catch. */
  private static final double CAUGHT = 0.95;

  private DeskRules() {}

  static void apply(Subject subject) {
    subject
        .studio()
        .desk()
        .deletion()
        .filter(deletion -> deletion.rate().strikes())
        .ifPresent(deletion -> deletion(subject, deletion.rate(), deletion.noticed()));
    subject
        .studio()
        .desk()
        .malware()
        .filter(malware -> malware.rate().strikes())
        .ifPresent(malware -> malware(subject, malware.rate(), malware.noticed()));
  }

  private static void deletion(Subject subject, Rate rate, Law noticed) {
    Copy best = best(subject);
    if (noticed.mean() > 0 && memory(best) == 0) {
      subject.warn(
          "no-versions",
          "",
          "No copy keeps what was deleted at its source: a deletion (%s a year) that is not noticed"
              + " at once is final. Set keeps_deleted: %s on one copy.",
          Subject.yearly(rate.perHour()),
          remedy(noticed));
    } else {
      forgets(subject, best, "a deletion", noticed);
    }
  }

  private static void malware(Subject subject, Rate rate, Law noticed) {
    Copy best = best(subject);
    if (memory(best) == 0 && subject.copies().stream().allMatch(c -> inReach(c.copy()))) {
      subject.warn(
          "malware-reaches-all",
          "",
          "Malware (%s a year) reaches every copy and none keeps old versions: everything goes at"
              + " once. Keep one copy offline, or set keeps_deleted: %s.",
          Subject.yearly(rate.perHour()),
          remedy(noticed));
    } else {
      forgets(subject, best, "malware", noticed);
    }
  }

  private static void forgets(Subject subject, Copy best, String what, Law noticed) {
    double memory = memory(best);
    if (memory < noticed.mean()) {
      subject.warn(
          "forgets-too-soon",
          best.id(),
          "It keeps what was destroyed for %s, no copy longer; %s is noticed after %s on average,"
              + " in %s of cases too late. keeps_deleted: %s catches 19 of 20.",
          Subject.time(memory),
          what,
          Subject.time(noticed.mean()),
          Subject.percent(noticed.survival(memory)),
          remedy(noticed));
    }
  }

  /** The first of the copies that keep longest what was destroyed at their source. */
  private static Copy best(Subject subject) {
    return subject.copies().stream()
        .map(CopyOutlook::copy)
        .max(Comparator.comparingDouble(DeskRules::memory))
        .filter(copy -> memory(copy) > 0)
        .orElse(subject.layout().workingCopy());
  }

  /** For how long at least; of drives that take turns, one is fed only after all the others. */
  private static double memory(Copy copy) {
    double turns = copy.rotation().map(r -> (r.turns() - 1) * r.everyHours()).orElse(0.0);
    return copy.keepsDeletedHours() + turns;
  }

  private static boolean inReach(Copy copy) {
    return copy.reach() == Copy.Reach.ONLINE && copy.rotation().isEmpty();
  }

  private static String remedy(Law noticed) {
    double hours = noticed.inverseCumulativeHazard(-StrictMath.log1p(-CAUGHT));
    return String.format(
        Locale.ROOT, "%.0f days", Math.max(1, Math.ceil(hours / Units.HOURS_PER_DAY)));
  }
}
