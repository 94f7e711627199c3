package lastcopy.prove;

import static lastcopy.scenario.Arrangement.MIRROR;
import static lastcopy.scenario.Arrangement.PAIRS;
import static lastcopy.scenario.Arrangement.PARITY;

import java.util.Arrays;
import java.util.List;
import lastcopy.exact.RepairablePair;
import lastcopy.exact.UnlikeSet;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** The engine's chance of losing footage on drives of several models, and on mirrored pairs. */
final class UnlikeChecks {

  private static final double REPAIR = 60;
  private static final double MONTH = Units.HOURS_PER_MONTH;

  private UnlikeChecks() {}

  static Topic unlike() {
    Topic topic =
        new Topic("Engine: drives of several models, and mirrored pairs")
            .from("Markov chain of all that may be down, solved here");
    chain(topic, "mirror, 500 and 4,000 h", MIRROR, 3_000, 500, 4_000);
    chain(topic, "parity, 1,500 to 20,000 h", PARITY, 4_000, 1_500, 1_500, 6_000, 20_000);
    chain(topic, "pairs, 500 beside 8,000 h", PAIRS, 3_000, 500, 8_000, 500, 8_000);
    chain(topic, "pairs, 500 beside 500 h", PAIRS, 1_000, 500, 500, 8_000, 8_000);
    return topic
        .from("three disks, each with a mirror, 0.025 a month, none repaired: by hand")
        .engineExact("loss in 2 years", UnlikeChecks::threePairs, UnlikeChecks::threePairsOfDisks)
        .from("product of independent repairable pairs, 1 - (1 - p)^10")
        .engineExact(
            "ten pairs, 5,000 h",
            () -> 1 - Math.pow(1 - new RepairablePair(1.0 / 5_000, 1 / REPAIR).lossBy(1_000), 10),
            () -> EngineChecks.markov(PAIRS, 20, 5_000, REPAIR).overHours(1_000));
  }

  private static void chain(
      Topic topic, String what, Arrangement kind, double hours, double... lives) {
    int n = lives.length;
    List<Double> rates = Arrays.stream(lives).mapToObj(life -> 1 / life).toList();
    UnlikeSet set = new UnlikeSet(rates, 1 / REPAIR, kind.together(n), kind.survives(n), 1);
    topic.engineExact(
        what,
        () -> set.lossBy(hours),
        () -> Rig.unlike(kind, new Exponential(REPAIR), lives).overHours(hours));
  }

  private static double threePairs() {
    double down = -Math.expm1(-0.025 * 24);
    return 1 - Math.pow(1 - down * down, 3);
  }

  private static Studio threePairsOfDisks() {
    return Rig.set(PAIRS, 6, new Exponential(MONTH / 0.025), new Fixed(0))
        .neverReplaced()
        .overHours(24 * MONTH);
  }
}
