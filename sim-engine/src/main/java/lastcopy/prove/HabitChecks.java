package lastcopy.prove;

import static lastcopy.prove.Reference.approximation;

import lastcopy.exact.RepairablePair;
import lastcopy.law.Exponential;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.law.Weibull;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Units;
import lastcopy.simulate.LayoutResult;

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
            "1,000 h, 50 h: by 3,000 h",
            () -> new RepairablePair(1.0 / 1_000, 1.0 / 50).lossBy(3_000),
            () -> fragile().beside(fragile()).overHours(3_000))
        .from("a Weibull law, new drives each year: 1 - S(1 year)^3")
        .engineExact(
            "replaced at 1 year, 3 years",
            () -> -Math.expm1(-3 * wears.cumulativeHazard(YEAR)),
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

  private static Rig fragile() {
    return Rig.single(new Exponential(1_000)).arrivingAfter(new Exponential(50));
  }

  private static Rig still() {
    return Rig.single(new Never());
  }
}
