package lastcopy.prove;

import static lastcopy.prove.Reference.approximation;

import lastcopy.exact.ClassicFormulas;
import lastcopy.exact.MarkovChain;
import lastcopy.exact.ParityGroup;
import lastcopy.exact.ProofTestedPair;
import lastcopy.exact.RepairablePair;
import lastcopy.exact.SharedShock;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Units;

/** Closed forms and chains against printed values, and against the rules of thumb they replace. */
final class FormulaChecks {

  private static final double YEAR = Units.HOURS_PER_YEAR;

  private FormulaChecks() {}

  static Topic pair() {
    RepairablePair textbook = new RepairablePair(1.0 / 150, 1.0 / 5);
    RepairablePair second = new RepairablePair(0.01, 0.1);
    RepairablePair drives = new RepairablePair(1e-6, 1.0 / 24);
    return new Topic("Two units, one repaired while the other works")
        .from("textbook exercise: life 150 h, repair 5 h, (3L+M)/(2L^2)")
        .printed(
            "MTTF unrepaired, h", "225", () -> new RepairablePair(1.0 / 150, 0).meanTimeToLoss())
        .printed("MTTF repaired, h", "2475", textbook::meanTimeToLoss)
        .from("R(t) of the same formula, from R, scipy or mpmath")
        .printed("150 h and 5 h: R(10)", ".997594144577321", () -> textbook.survival(10))
        .printed("150 h and 5 h: R(100)", ".962103262209419", () -> textbook.survival(100))
        .printed("150 h and 5 h: R(1000)", ".668352094815189", () -> textbook.survival(1_000))
        .printed(".01 and .1 per h: MTTF, h", "650", second::meanTimeToLoss)
        .printed(".01 and .1 per h: R(50)", ".936430627833849", () -> second.survival(50))
        .printed(".01 and .1 per h: R(100)", ".866308506473875", () -> second.survival(100))
        .printed("1e-6 and 1/24 per h: MTTF, h", "20834833333.3", drives::meanTimeToLoss)
        .printed("the same: loss in 5 years", "2.10109459908e-6", () -> drives.lossBy(43_800))
        .from("rule of thumb 1 - exp(-t/MTTF), too high early on")
        .approximation(
            "the same: loss in 5 years",
            () -> approximation(-Math.expm1(-43_800 / drives.meanTimeToLoss()), -6e-4, -5e-4),
            () -> drives.lossBy(43_800));
  }

  static Topic classics() {
    double day = 1.0 / 30_000;
    return new Topic("Mean time to data loss as the literature gives it")
        .from("Greenan, Plank, Wylie, HotStorage 2010, against the chain")
        .exact(
            "8 units, MTTF, h",
            () -> ClassicFormulas.oneSurvived(8, 1e-5, 0.1),
            () -> new ParityGroup(8, 1, 1e-5, 0.1).meanTimeToLoss())
        .from("Ford et al., OSDI 2010, section 8.2: one repair at a time")
        .printed(
            "three copies, MTTF, h",
            "1735166.667",
            () ->
                MarkovChain.row(new double[] {3e-3, 2e-3, 1e-3}, new double[] {0.1, 0.1})
                    .meanTimeToAbsorption(0))
        .from("the same with repairs side by side, as here")
        .printed(
            "three copies, MTTF, h",
            "3451833.333",
            () -> new ParityGroup(3, 2, 1e-3, 0.1).meanTimeToLoss())
        .from("Patterson, Gibson, Katz, SIGMOD 1988: its formula, 100 data disks")
        .printed("mirrored, h", "4500000", () -> patterson(1))
        .printed("a check disk per 10, h", "8.2e5", () -> patterson(10))
        .printed("a check disk per 25, h", "3.46e5", () -> patterson(25))
        .from("the same disks by the exact chain, which has more terms")
        .approximation(
            "mirrored, h",
            () -> approximation("4500000", 0.5e-4, 1.5e-4),
            () -> new RepairablePair(day, 1).meanTimeToLoss() / 100)
        .approximation(
            "a check disk per 10, h",
            () -> approximation(patterson(10), 6e-4, 8e-4),
            () -> new ParityGroup(11, 1, day, 1).meanTimeToLoss() / 10)
        .from("Chen et al., ACM Computing Surveys 26(2), 1994: its formula, 100 disks")
        .printed("groups of 16, h", "26666667", () -> ClassicFormulas.chen(200_000, 1, 100, 16))
        .from("Baker et al., EuroSys 2006: its approximations, mirror with hidden faults")
        .printed("never scrubbed, years", "32.0", () -> 2.8e5 / YEAR)
        .approximation(
            "the same: loss in 50 years",
            () -> approximation(".790", 0, 2e-3),
            () -> -Math.expm1(-50 * YEAR / 2.8e5))
        .approximation(
            "scrubbed 3 a year, years",
            () -> approximation("6128.7", -1e-4, 3e-4),
            FormulaChecks::scrubbed)
        .printed("the same: loss in 50 years", ".008", () -> -Math.expm1(-50 / scrubbed()))
        .from("Elerath, Pecht, DSN 2007: the MTTDL formula that they warn of")
        .printed("7+1 drives, years", "36162", () -> ClassicFormulas.chen(461_386, 12, 8, 8) / YEAR)
        .printed(
            "of 1,000 in 10 years, lost",
            ".2765",
            () -> 1_000 * 10 * YEAR / ClassicFormulas.chen(461_386, 12, 8, 8));
  }

  /** Years. */
  private static double scrubbed() {
    return ClassicFormulas.bakerScrubbed(2.8e5, 1_460) / YEAR;
  }

  private static double patterson(int group) {
    return ClassicFormulas.patterson(30_000, 1, 100, group, 1);
  }

  static Topic commonCause() {
    double fails = 0.02 / YEAR;
    SharedShock without = SharedShock.ofBeta(fails, 0, 1.0 / 72);
    SharedShock with = SharedShock.ofBeta(fails, 0.05, 1.0 / 72);
    ProofTestedPair alone = new ProofTestedPair(5e-7, 0, YEAR);
    ProofTestedPair common = new ProofTestedPair(5e-7, 0.1, YEAR);
    return new Topic("A mirror with a common cause, and one that is looked at once a year")
        .from("two-state shock, 2 %/year a drive, repair 72 h, from R, scipy or mpmath")
        .printed("none common: MTTF, h", "1.332907e9", without::meanTimeToLoss)
        .printed("none common: loss in 1 year", "6.518089888e-6", () -> without.lossBy(YEAR))
        .printed("none common: loss in 10 years", "6.566487116e-5", () -> without.lossBy(10 * YEAR))
        .printed("5 % common: MTTF, h", "8708347.144", with::meanTimeToLoss)
        .printed("5 % common: loss in 1 year", "1.005377009e-3", () -> with.lossBy(YEAR))
        .printed("5 % common: loss in 10 years", "1.000884076e-2", () -> with.lossBy(10 * YEAR))
        .from("1oo2 of IEC 61508-6, fails 5e-7 per h, mean unavailability")
        .printed("none common", "6.373836e-6", alone::averageUnavailability)
        .printed("10 % common", "2.2413084e-4", common::averageUnavailability)
        .from("the simple form of the standard, (LT)^2/3 + bLT/2")
        .approximation(
            "none common",
            () -> approximation(alone.simpleUnavailability(), -5e-3, -2e-3),
            alone::averageUnavailability)
        .approximation(
            "10 % common",
            () -> approximation(common.simpleUnavailability(), -8e-3, -4e-3),
            common::averageUnavailability);
  }

  /** Loss of a set within a year by λ²-arithmetic: the chain has a little less. */
  static Topic rulesOfThumb() {
    return new Topic("Rules of thumb: a set of drives within a year, three days to repair")
        .from("hand arithmetic n(n-1)L^2 x 72 h x 8,760 h, against the exact chain")
        .approximation("mirror, 1.5 %/year", () -> thumb("3.75e-6"), () -> yearly(2, 0.015))
        .approximation("mirror, 3 %/year", () -> thumb("1.52e-5"), () -> yearly(2, 0.03))
        .approximation("mirror, 5 %/year", () -> thumb("4.32e-5"), () -> yearly(2, 0.05))
        .approximation("parity of 4, 1.5 %/year", () -> thumb("2.25e-5"), () -> yearly(4, 0.015))
        .approximation("parity of 6, 1.5 %/year", () -> thumb("5.6e-5"), () -> yearly(6, 0.015))
        .approximation("parity of 8, 1.5 %/year", () -> thumb("1.05e-4"), () -> yearly(8, 0.015));
  }

  private static Reference thumb(String printed) {
    return approximation(printed, -0.02, 0.005);
  }

  private static double yearly(int drives, double chance) {
    double fails = Rate.ofYearlyProbability(chance).perHour();
    return new ParityGroup(drives, 1, fails, 1.0 / 72).lossBy(YEAR);
  }
}
