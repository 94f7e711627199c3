package lastcopy.outlook;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Units;

/** Failures and faults that are seen too late or mended too slowly. */
final class RepairRules {

  /** Looks further apart than this leave a failed drive unseen too long to call it watched. */
  private static final double RARE_LOOK_HOURS = 30 * Units.HOURS_PER_DAY;

  /** A tenth of what this project assumes of an account, 0.2 % a year. */
  private static final Rate CREDIBLE = Rate.ofYearlyProbability(0.0002);

  private RepairRules() {}

  static void apply(Subject subject, CopyOutlook outlook) {
    Copy copy = outlook.copy();
    seenAtOnce(subject, copy);
    neverTried(subject, copy);
    tooGood(subject, copy);
    copy.driveSet()
        .ifPresent(
            set -> {
              unwatched(subject, copy, set);
              slowRebuild(subject, outlook, set);
              neverScrubbed(subject, copy, set);
            });
  }

  private static void seenAtOnce(Subject subject, Copy copy) {
    boolean atOnce = copy.repair().arrival() instanceof Fixed fixed && fixed.hours() == 0;
    if (copy.driveSet().isPresent() && copy.repair().noticed().isNone() && atOnce) {
      subject.warn(
          "seen-at-once", copy.id(), "assumes that failures are seen and replaced at once");
    }
  }

  private static void unwatched(Subject subject, Copy copy, Medium.DriveSet set) {
    boolean looks = copy.repair().noticed() instanceof Delay.Looks;
    double worst =
        copy.repair().noticed() instanceof Delay.Looks clock
            ? clock.periodHours()
            : 2 * ((Delay.Lawful) copy.repair().noticed()).law().mean();
    if (set.survives() > 0 && worst >= RARE_LOOK_HOURS) {
      subject.warn(
          "nobody-watches",
          copy.id(),
          "%s a failed drive stays unseen %s, without the redundancy that was paid"
              + " for. Let it raise an alarm, or look every week.",
          looks ? "Somebody looks only every " + Subject.time(worst) + ":" : "Nobody watches it:",
          Double.isInfinite(worst) ? "for ever" : "for " + Subject.time(worst / 2) + " on average");
    }
  }

  private static void slowRebuild(Subject subject, CopyOutlook outlook, Medium.DriveSet set) {
    if (outlook.rebuildHours().isEmpty()) {
      return;
    }
    double rebuild = outlook.rebuildHours().getAsDouble();
    List<Law> others = others(set);
    double next = DriveChances.untilFirst(others);
    if (rebuild > next) {
      subject.warn(
          "rebuild-too-slow",
          outlook.copy().id(),
          "A rebuild %s; the %s fails after %.0f h on average."
              + " Use fewer or better drives, or a faster rebuild.",
          Double.isInfinite(rebuild)
              ? "never ends"
              : String.format(Locale.ROOT, "takes %.0f h", rebuild),
          others.size() == 1 ? "other drive" : "next of the other " + others.size() + " drives",
          next);
    }
  }

  /**
   * The lives of those that stand in for the drive that lives longest: the first of them is next.
   */
  private static List<Law> others(Medium.DriveSet set) {
    int together = set.arrangement().together(set.drives());
    int best = 0;
    for (int i = 1; i < set.drives(); i++) {
      best = set.model(i).fails().mean() > set.model(best).fails().mean() ? i : best;
    }
    int lot = best / together;
    int but = best;
    return IntStream.range(lot * together, (lot + 1) * together)
        .filter(i -> i != but)
        .mapToObj(i -> set.model(i).fails())
        .toList();
  }

  private static void neverScrubbed(Subject subject, Copy copy, Medium.DriveSet set) {
    double mean = set.latentDefects().map(Law::mean).orElse(Double.POSITIVE_INFINITY);
    if (Double.isFinite(mean) && set.scrub().isEmpty()) {
      subject.warn(
          "never-scrubbed",
          copy.id(),
          "Its drives grow unreadable spots, about one each in %s, and nobody reads them through:"
              + " a rebuild meets them all. Read everything once a month, such as scrub: 30 days.",
          Subject.time(mean));
    }
  }

  /** Durability figures are design goals of the storage; accounts are lost more often than that. */
  private static void tooGood(Subject subject, Copy copy) {
    if (copy.medium() instanceof Medium.Service service
        && service.loses().perHour() < CREDIBLE.perHour()) {
      subject.warn(
          "service-too-good",
          copy.id(),
          "It %s: such a figure is a goal of the storage, without the account (a lost password, an"
              + " unpaid bill, a deletion). Count that too, such as loses: 0.2 %%/year.",
          service.loses().strikes()
              ? "is said to be lost with less than 0.02 % a year"
              : "is said never to be lost");
    }
  }

  private static void neverTried(Subject subject, Copy copy) {
    copy.spoils()
        .filter(spoils -> spoils.rate().strikes() && spoils.triedEveryHours().isEmpty())
        .ifPresent(
            spoils ->
                subject.warn(
                    "never-tried",
                    copy.id(),
                    "Nobody tries to restore from it: by the end of %s it has become unusable with"
                        + " a chance of %s. Try a restore, such as tried_every: 90 days.",
                    Subject.years(subject.studio().years()),
                    Subject.percent(
                        -StrictMath.expm1(
                            -spoils.rate().perHour() * subject.studio().horizonHours()))));
  }
}
