package lastcopy.outlook;

import java.util.Locale;
import lastcopy.law.Law;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Units;

/** Whether some copy still has what a mistake or malware destroyed, by the time it is noticed. */
final class DeskRules {

  /** The share of cases that the remedy named is to catch. */
  private static final double CAUGHT = 0.95;

  /** From this share of cases that are noticed too late on it is worth a warning. */
  private static final double TOO_MANY = 0.1;

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
    Memory memory = memory(subject, false);
    boolean forgotten = keeps(subject) == 0 && memory.late(noticed) > TOO_MANY;
    if (forgotten && nothingElseHasIt(subject)) {
      subject.warn(
          "no-versions",
          "",
          "Nothing keeps what is deleted: a deletion (%s a year) is final at once. Add a copy in"
              + " another place with keeps_deleted: %s.",
          Subject.yearly(rate.perHour()),
          remedy(noticed));
    } else if (forgotten) {
      subject.warn(
          "no-versions",
          "",
          "No copy keeps what was deleted: a deletion (%s a year) is final %s. Set keeps_deleted: %s"
              + " on one copy.",
          Subject.yearly(rate.perHour()),
          subject.copies().size() == 1
              ? "at once"
              : "once the feeds have passed it on, in "
                  + Subject.percent(memory.late(noticed))
                  + " of cases before it is noticed",
          remedy(noticed));
    } else {
      forgets(subject, memory, "a deletion", noticed);
    }
  }

  private static boolean nothingElseHasIt(Subject subject) {
    return subject.copies().size() == 1 && subject.layout().cardsKeepHours().isEmpty();
  }

  private static void malware(Subject subject, Rate rate, Law noticed) {
    if (keeps(subject) == 0 && subject.copies().stream().allMatch(c -> inReach(c.copy()))) {
      subject.warn(
          "malware-reaches-all",
          "",
          "Malware (%s a year) reaches every copy and none keeps old versions: everything goes at"
              + " once. Keep one copy offline, or set keeps_deleted: %s.",
          Subject.yearly(rate.perHour()),
          remedy(noticed));
    } else {
      forgets(subject, memory(subject, true), "malware", noticed);
    }
  }

  private static Memory memory(Subject subject, boolean malware) {
    return new Memory(
        subject.layout(), subject.forecast(), subject.studio().horizonHours(), malware);
  }

  private static void forgets(Subject subject, Memory memory, String what, Law noticed) {
    int best = 0;
    for (int c = 1; c < subject.copies().size(); c++) {
      best = memory.mean(c) > memory.mean(best) ? c : best;
    }
    double late = memory.late(noticed);
    if (late > TOO_MANY) {
      boolean never = Double.isInfinite(noticed.mean());
      subject.warn(
          "forgets-too-soon",
          subject.copies().get(best).copy().id(),
          "It holds what was destroyed for %s on average, no copy longer; %s is %s, in %s of cases"
              + " too late. keeps_deleted: %s%s.",
          Subject.timeExactly(memory.mean(best)),
          what,
          never
              ? "never noticed"
              : "noticed after " + Subject.timeExactly(noticed.mean()) + " on average",
          Subject.percent(late),
          remedy(noticed),
          never ? " would help" : " catches 19 of 20 or more");
    }
  }

  /** The longest that any copy keeps on purpose what was destroyed at its source. */
  private static double keeps(Subject subject) {
    return subject.copies().stream()
        .mapToDouble(outlook -> outlook.copy().keepsDeletedHours())
        .max()
        .orElse(0);
  }

  private static boolean inReach(Copy copy) {
    return copy.reach() == Copy.Reach.ONLINE && copy.rotation().isEmpty();
  }

  private static String remedy(Law noticed) {
    double hours = noticed.inverseCumulativeHazard(-StrictMath.log1p(-CAUGHT));
    if (Double.isInfinite(hours)) {
      return "for good";
    }
    return String.format(
        Locale.ROOT, "%.0f days", Math.max(1, Math.ceil(hours / Units.HOURS_PER_DAY)));
  }
}
