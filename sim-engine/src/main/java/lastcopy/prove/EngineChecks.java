package lastcopy.prove;

import static lastcopy.scenario.Arrangement.DOUBLE_PARITY;
import static lastcopy.scenario.Arrangement.MIRROR;
import static lastcopy.scenario.Arrangement.PARITY;
import static lastcopy.scenario.Arrangement.STRIPE;

import java.util.function.Supplier;
import lastcopy.exact.KOutOfN;
import lastcopy.exact.ParityGroup;
import lastcopy.exact.ProofTestedPair;
import lastcopy.exact.SharedShock;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** The engine's chance of losing footage against printed values, closed forms and chains. */
final class EngineChecks {

  private static final double YEAR = Units.HOURS_PER_YEAR;

  private EngineChecks() {}

  static Topic drives() {
    Law wears = new Weibull(2.5, 30_000, 2_000);
    return new Topic("Engine: one drive, one service, one place")
        .from("hand arithmetic 1 - (1 - p)^years, printed to a tenth of a percent")
        .engine("1.5 %/year, 5 years", printed(".073"), () -> drive(0.015).over(5))
        .engine("1.5 %/year, 10 years", printed(".140"), () -> drive(0.015).over(10))
        .engine("3 %/year, 5 years", printed(".141"), () -> drive(0.03).over(5))
        .engine("5 %/year, 5 years", printed(".226"), () -> drive(0.05).over(5))
        .engine("place 0.5 %/year, 5 years", printed(".025"), () -> place(0.005).over(5))
        .engine("place 0.5 %/year, 10 years", printed(".049"), () -> place(0.005).over(10))
        .from("a Weibull law's own survival from 10,000 h on")
        .engineExact(
            "aged and worn, 2 years",
            () -> new KOutOfN(1, 0, wears, 10_000).lossBy(2 * YEAR),
            () -> Rig.single(wears).aged(10_000).over(2))
        .from("Poisson process")
        .engineExact(
            "service 10 %/year, 3 years",
            () -> 1 - Math.pow(0.9, 3), () -> Rig.service(Rate.ofYearlyProbability(0.1)).over(3))
        .engineExact(
            "takes 1/2 of two copies",
            () -> -Math.expm1(-0.25 * 0.3 * 3),
            () -> still().at(Rate.perYear(0.3), 0.5).beside(fallen()).over(3));
  }

  private static Rig drive(double yearlyChance) {
    return Rig.single(Exponential.ofYearlyProbability(yearlyChance));
  }

  private static Rig place(double yearlyChance) {
    return still().at(Rate.ofYearlyProbability(yearlyChance), 1);
  }

  private static Rig still() {
    return Rig.single(new Never());
  }

  private static Rig fallen() {
    return still().at(Rate.perYear(0.3), 0.5);
  }

  static Topic sets() {
    Topic topic =
        new Topic("Engine: sets of drives, failed ones replaced and rebuilt")
            .from("pair, life 50,000 h, repair 500 h: formula of a repairable pair")
            .engine(
                "loss in 10 years", printed(".03327115"), () -> set(MIRROR, 2, 5e4, 500, 87_600))
            .from("1 - R(t) of a repairable pair, from R, scipy or mpmath")
            .engine(
                "150 h, 5 h: by 100 h", printed(".037896738"), () -> set(MIRROR, 2, 150, 5, 100))
            .engine(
                "150 h, 5 h: by 1,000 h",
                printed(".331647905"),
                () -> set(MIRROR, 2, 150, 5, 1_000))
            .engine(
                "100 h, 10 h: by 100 h", printed(".133691494"), () -> set(MIRROR, 2, 100, 10, 100))
            .from("Markov chain, solved here");
    chain(topic, "mirror of 3", MIRROR, 3, 400, 60, 2_000);
    chain(topic, "parity of 8", PARITY, 8, 10_000, 60, 8_760);
    chain(topic, "double parity of 6", DOUBLE_PARITY, 6, 2_000, 150, 4_000);
    chain(topic, "stripe of 3", STRIPE, 3, 9_000, 1, 2_000);
    return topic
        .engineExact(
            "parity of 4, strain 3",
            () -> new ParityGroup(4, 1, 1.0 / 3_000, 1.0 / 40, 3, 0).lossBy(3_000),
            () -> markov(PARITY, 4, 3_000, 40).strained(3).overHours(3_000))
        .from("k of n without repair, drives of 2,000 h that wear")
        .engineExact("double parity of 7", () -> worn().lossBy(YEAR), EngineChecks::wornSet);
  }

  private static void chain(
      Topic topic, String what, Arrangement kind, int n, double life, double repair, double hours) {
    ParityGroup group = new ParityGroup(n, kind.survives(n), 1 / life, 1 / repair);
    topic.engineExact(what, () -> group.lossBy(hours), () -> set(kind, n, life, repair, hours));
  }

  private static Studio set(Arrangement kind, int n, double life, double repair, double hours) {
    return markov(kind, n, life, repair).overHours(hours);
  }

  static Rig markov(Arrangement kind, int n, double life, double repair) {
    return Rig.set(kind, n, new Exponential(life), new Exponential(repair));
  }

  private static KOutOfN worn() {
    return new KOutOfN(7, 2, new Weibull(1.5, 20_000, 0), 2_000);
  }

  private static Studio wornSet() {
    return Rig.set(DOUBLE_PARITY, 7, worn().life(), new Fixed(0))
        .aged(worn().ageHours())
        .neverReplaced()
        .over(1);
  }

  static Topic shared() {
    double fails = 0.02 / YEAR;
    return new Topic("Engine: mirrors with a common cause, and with looks by the clock")
        .from("two-state shock, 2 %/year a drive, 5 % of it common, repair 72 h")
        .engine(
            "loss in 10 years",
            printed("1.000884076e-2"),
            () -> markov(MIRROR, 2, 1 / (0.95 * fails), 72).boxed(0.05 * fails).over(10))
        .from("Markov chain, solved here: 1,000 h, 50 h, shock 2e-4 per h")
        .engineExact(
            "by 1,500 h",
            () -> new SharedShock(1e-3, 2e-4, 0.02).lossBy(1_500),
            () -> markov(MIRROR, 2, 1_000, 50).boxed(2e-4).overHours(1_500))
        .from("1oo2 with proof tests (IEC 61508-6), 10,000 h, 10 % common")
        .engineExact(
            "a look each 2,000 h",
            () -> new ProofTestedPair(1e-4, 0.1, 2_000).lossWithin(4),
            () ->
                Rig.set(MIRROR, 2, new Exponential(1e4 / 0.9), new Fixed(0))
                    .boxed(1e-5)
                    .lookedAtEvery(2_000)
                    .overHours(8_000));
  }

  static Supplier<Reference> printed(String value) {
    return () -> Reference.published(value);
  }
}
