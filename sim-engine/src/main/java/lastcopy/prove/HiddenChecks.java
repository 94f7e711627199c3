package lastcopy.prove;

import static lastcopy.prove.EngineChecks.markov;
import static lastcopy.prove.EngineChecks.printed;
import static lastcopy.prove.Reference.approximation;
import static lastcopy.scenario.Arrangement.MIRROR;
import static lastcopy.scenario.Arrangement.PARITY;

import java.util.Optional;
import java.util.function.Function;
import lastcopy.exact.LatentPair;
import lastcopy.exact.SharedFrailty;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** What hides until a rebuild: batches, unreadable spots and bits. */
final class HiddenChecks {

  private static final double YEAR = Units.HOURS_PER_YEAR;

  private HiddenChecks() {}

  static Topic batches() {
    return new Topic("Engine: drives of one batch, never replaced")
        .from("Gamma frailty (Hougaard 2000): 1 - 2(1 + vH)^(-1/v) + (1 + 2vH)^(-1/v)")
        .engineExact("mirror, v = 0.5", () -> pairOfBatch(0.5), () -> batch(0.5))
        .engineExact("mirror, v = 2", () -> pairOfBatch(2), () -> batch(2));
  }

  private static double pairOfBatch(double spread) {
    return new SharedFrailty(spread).bothFail(0.876, 0.876);
  }

  private static Studio batch(double spread) {
    return Rig.set(MIRROR, 2, new Exponential(10_000), new Fixed(0))
        .ofOneBatch(spread)
        .neverReplaced()
        .over(1);
  }

  static Topic unreadable() {
    Topic topic =
        new Topic("Engine: spots and bits that a rebuild cannot read")
            .from("Markov chain of a mirror: drives down or with a defect, solved here")
            .engineExact(
                "defects found after 200 h",
                () -> new LatentPair(1.0 / 5_000, 1.0 / 50, 1.0 / 2_000, 1.0 / 200).lossBy(2_000),
                () ->
                    markov(MIRROR, 2, 5_000, 50)
                        .hiding(new Exponential(2_000), Optional.of(new Exponential(200)))
                        .overHours(2_000))
            .from(
                "hand arithmetic: a read error in the rebuild of a full set of 8 TB, 1e-15 per bit");
    rebuild(topic, 4, ".175");
    rebuild(topic, 6, ".274");
    rebuild(topic, 8, ".361");
    return topic;
  }

  /** Loss events per rebuild; with rebuilds of no time nothing else loses. */
  private static void rebuild(Topic topic, int drives, String printed) {
    double rebuilds = drives * 0.2;
    topic.engine(
        "parity of " + drives,
        printed(printed),
        () ->
            Rig.set(PARITY, drives, new Exponential(YEAR), new Fixed(0))
                .full()
                .misreading(1e-15)
                .over(0.2),
        per(LayoutResult::lossEvents, rebuilds));
  }

  static Function<LayoutResult, Estimate> per(
      Function<LayoutResult, Estimate> figure, double share) {
    return result -> {
      Estimate of = figure.apply(result);
      return new Estimate(of.value() / share, of.low() / share, of.high() / share, of.seen());
    };
  }

  /** Losses of 1,000 groups; the papers find 2 to 1,500 times what the formula says. */
  static Topic elerathPecht() {
    Weibull scrub = new Weibull(3, 168, 6);
    return new Topic("Engine: the groups of Elerath, Pecht, DSN 2007 (base case from memory)")
        .from("the MTTDL formula, which the papers find 2 to 1,500 times too low")
        .engine(
            "of 1,000 in 10 years, lost",
            () -> approximation(".2765", 1, 1_499),
            () -> groups(Optional.of(scrub)),
            perThousand())
        .from("the papers without a scrub: above 1,200 (order only)")
        .engine(
            "of 1,000 in 10 years, lost",
            () -> approximation("1200", -0.25, 0.25),
            () -> groups(Optional.empty()),
            perThousand());
  }

  private static Function<LayoutResult, Estimate> perThousand() {
    return per(LayoutResult::lossEvents, 1e-3);
  }

  private static Studio groups(Optional<Law> scrub) {
    return Rig.set(PARITY, 8, new Weibull(1.12, 461_386, 0), new Weibull(2, 12, 6))
        .hiding(new Exponential(9_259), scrub)
        .over(10);
  }
}
