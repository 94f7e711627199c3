package lastcopy.prove;

import static lastcopy.prove.Reference.approximation;

import lastcopy.exact.PlannedReplacement;
import lastcopy.exact.RepairablePair;
import lastcopy.experiment.LayoutResult;
import lastcopy.law.Exponential;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.law.Weibull;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Units;

/** Copies in two places, deletions, planned replacement and drives that take turns. */
final class HabitChecks {

  private static final double YEAR = Units.HOURS_PER_YEAR;
  private static final double MONTH = 30 * Units.HOURS_PER_DAY;

  private HabitChecks() {}

  static Topic habits() {
    Law wears = new Weibull(3, 20_000, 0);
    return new Topic("Engine: habits")
        .from("formula of a repairable pair, for two copies in two places")
        .engineExact(
            "1,000 h, 50 h: by 1,500 h",
            () -> new RepairablePair(1.0 / 1_000, 1.0 / 50).lossBy(1_500),
            () -> fragile().beside(fragile()).overHours(1_500))
        .from("a Weibull law, new drives each year: 1 - S(1 year)^3")
        .engineExact(
            "replaced at 1 year, 3 years",
            () -> 1 - new PlannedReplacement(wears, YEAR).survival(3 * YEAR),
            () -> Rig.single(wears).replacedAt(YEAR).over(3))
        .from("Poisson process of deletions that are noticed after more than 30 days")
        .engineExact(
            "kept for 30 days, 5 years",
            () -> -Math.expm1(-0.3 / YEAR * (5 * YEAR - MONTH) * Math.exp(-1.5)),
            () ->
                still()
                    .deleting(Rate.perYear(0.3), new Exponential(20 * Units.HOURS_PER_DAY))
                    .beside(still().keepingDeleted(MONTH))
                    .over(5))
        .from("Poisson process of malware that is noticed after more than 4 h")
        .engineExact(
            "versions of 4 h, 5 years",
            () -> -Math.expm1(-0.3 / YEAR * (5 * YEAR - 4) * Math.exp(-2)),
            () ->
                still()
                    .infected(Rate.perYear(0.3), new Exponential(2))
                    .beside(still().keepingDeleted(4))
                    .over(5))
        .from("spoils (s), then the drive fails (L): 1 - (Le^(-st) - se^(-Lt))/(L - s)")
        .engineExact(
            "never tried, 2 years",
            () -> spoiltThenFailed(0.5, 1.5, 2),
            () ->
                Rig.single(new Exponential(YEAR / 1.5))
                    .beside(still().spoiling(Rate.perYear(0.5)))
                    .over(2))
        .from("rule of thumb: a fire takes half of what is shot between two swaps")
        .engine(
            "two drives swapped weekly",
            () -> approximation(".5", -0.02, 0),
            () ->
                still()
                    .at(Rate.perYear(1), 1)
                    .shooting(24, 24 * Units.GB)
                    .besideTurns(still(), 2, 168, 12)
                    .overHours(12 + 52 * 168),
            HiddenChecks.per(LayoutResult::bytesLost, 52 * 168 / YEAR * 168 * Units.GB));
  }

  private static double spoiltThenFailed(double spoils, double fails, double years) {
    double first = fails * Math.exp(-spoils * years);
    double second = spoils * Math.exp(-fails * years);
    return 1 - (first - second) / (fails - spoils);
  }

  private static Rig fragile() {
    return Rig.single(new Exponential(1_000)).arrivingAfter(new Exponential(50));
  }

  private static Rig still() {
    return Rig.single(new Never());
  }
}
