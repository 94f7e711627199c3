package lastcopy.decide.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lastcopy.exact.RepairablePair;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * Changes whose effect is known in closed form. Each check has an alarm rate of 1e-6: so much, and
 * no more, is outside the intervals, which hold all together.
 */
class EffectMeasurementTest {

  private static final double CONFIDENCE = 1 - 1e-6;
  private static final double YEARS = 5;
  private static final double HOURS = YEARS * Units.HOURS_PER_YEAR;
  private static final double LIFE = 200_000;

  private static Settings settings(long histories, int threads, Method method) {
    return settings(1, CONFIDENCE, histories, threads, method);
  }

  private static Settings settings(
      long seed, double confidence, long histories, int threads, Method method) {
    return new Settings(
        seed, confidence, 0.05, OptionalLong.of(histories), Optional.empty(), threads, method);
  }

  private static CopyBuilder copy(
      String id, Arrangement arrangement, int drives, double life, Law rebuild) {
    DriveModel drive =
        DriveModel.builder("drive", 8 * Units.TB).fails(new Exponential(life)).price(100).build();
    return Copy.builder(id)
        .on(Medium.DriveSet.builder(arrangement, drives).of(drive).rebuild(rebuild).build());
  }

  private static CopyBuilder single(String id, double life) {
    return copy(id, Arrangement.SINGLE, 1, life, new Exponential(1));
  }

  private static CopyBuilder mirror(double rebuildHours) {
    return copy("main", Arrangement.MIRROR, 2, LIFE, new Exponential(rebuildHours));
  }

  private static Alternative alternative(String id, CopyBuilder copy, Desk desk) {
    Shoots shoots = new Shoots(Units.HOURS_PER_WEEK, 24 * Units.GB, Shoots.Spacing.EVEN);
    Layout layout = Layout.builder(id).title(id).copy(copy.build()).build();
    Studio studio =
        Studio.builder("Closed forms", YEARS)
            .footage(Footage.builder(shoots).onHand(Units.TB).worthPerShoot(900).build())
            .desk(desk)
            .layout(layout)
            .build();
    return new Alternative(id, studio, layout);
  }

  private static Alternative alternative(String id, CopyBuilder copy) {
    return alternative(id, copy, Desk.QUIET);
  }

  private static void holds(Estimate estimate, double exact) {
    assertThat(exact).isBetween(estimate.low(), estimate.high());
  }

  private static MeasuredEffect effect(Effects effects, String id) {
    return effects.ranked().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
  }

  private static double singleLoses(double life) {
    return -Math.expm1(-HOURS / life);
  }

  /** Red with a difference of the wrong sign, or of the base's own luck. */
  @Test
  void aDriveThatFailsHalfAsOften() {
    Effects effects =
        EffectMeasurement.run(
            alternative("base", single("main", LIFE)),
            List.of(
                alternative("worse", single("main", LIFE / 2)),
                alternative("nothing", single("main", LIFE).arrival(new Exponential(9))),
                alternative("better", single("main", 2 * LIFE))),
            settings(40_000, 2, Method.PLAIN),
            Progress.SILENT);
    Estimate better = effect(effects, "better").difference();
    Estimate worse = effect(effects, "worse").difference();

    assertThat(effects.ranked()).extracting(MeasuredEffect::id).first().isEqualTo("better");
    assertThat(effects.histories()).isEqualTo(40_000);
    holds(effects.base().anyLoss(), singleLoses(LIFE));
    holds(better, singleLoses(2 * LIFE) - singleLoses(LIFE));
    holds(worse, singleLoses(LIFE / 2) - singleLoses(LIFE));
    assertThat(effect(effects, "better").direction()).isEqualTo(Direction.LESS);
    assertThat(effect(effects, "worse").direction()).isEqualTo(Direction.MORE);
    assertThat(effect(effects, "nothing").direction()).isEqualTo(Direction.NOT_MEASURABLE);
    assertThat(effects.ties()).isEmpty();
    // The first drive is bought either way; fewer replacements are bought later.
    assertThat(effect(effects, "better").costDifference().orElseThrow().high()).isNegative();
  }

  @Test
  void aRepairTwiceAsFast() {
    Effects effects =
        EffectMeasurement.run(
            alternative("base", mirror(1_000)),
            List.of(alternative("fast", mirror(500))),
            settings(60_000, 2, Method.PLAIN),
            Progress.SILENT);

    double base = new RepairablePair(1 / LIFE, 1 / 1_000.0).lossBy(HOURS);
    double fast = new RepairablePair(1 / LIFE, 1 / 500.0).lossBy(HOURS);
    holds(effect(effects, "fast").difference(), fast - base);
    assertThat(effect(effects, "fast").direction()).isEqualTo(Direction.LESS);
  }

  /** Losses of 1e-7: red where weights are those of the other alternative. */
  @Test
  void aRepairTwiceAsFastWhereLossesAreRare() {
    Effects effects =
        EffectMeasurement.run(
            alternative("base", mirror(0.05)),
            List.of(
                alternative("fast", mirror(0.025)),
                alternative("same", mirror(0.05).arrival(new Exponential(1e-9))),
                alternative("no-mirror", single("main", LIFE))),
            settings(6_000, 2, Method.AUTO),
            Progress.SILENT);

    double base = new RepairablePair(1 / LIFE, 20).lossBy(HOURS);
    double fast = new RepairablePair(1 / LIFE, 40).lossBy(HOURS);
    assertThat(base).isLessThan(2e-7);
    assertThat(effects.method()).isEqualTo(Method.RARE);
    holds(effects.base().anyLoss(), base);
    holds(effect(effects, "fast").result().anyLoss(), fast);
    holds(effect(effects, "fast").difference(), fast - base);
    holds(effect(effects, "no-mirror").difference(), singleLoses(LIFE) - base);
    assertThat(effect(effects, "fast").direction()).isEqualTo(Direction.LESS);
    assertThat(effect(effects, "same").direction()).isEqualTo(Direction.NOT_MEASURABLE);
    // Pairs share their luck: apart, the two intervals alone would be wider than this.
    Estimate difference = effect(effects, "fast").difference();
    assertThat(difference.high() - difference.low()).isLessThan(0.3 * base);
  }

  /**
   * A deletion that is noticed after an exponential time of mean m is lost where that is longer
   * than the copy keeps it, K: with rate r so many come to a loss by T as P = 1 − exp(−r (T − K)
   * e^(−K/m)).
   */
  @Test
  void deletedFilesKept() {
    double rate = 0.5 / Units.HOURS_PER_YEAR;
    double keeps = 30 * Units.HOURS_PER_DAY;
    double mean = 20 * Units.HOURS_PER_DAY;
    Desk desk =
        Desk.of(new Desk.Deletion(new Rate(rate), new Desk.ShootCount(1), new Exponential(mean)));
    Effects effects =
        EffectMeasurement.run(
            alternative("base", single("main", 1e12), desk),
            List.of(alternative("kept", single("main", 1e12).keepsDeleted(keeps), desk)),
            settings(20_000, 2, Method.PLAIN),
            Progress.SILENT);

    double base = -Math.expm1(-rate * HOURS);
    double kept = -Math.expm1(-rate * (HOURS - keeps) * Math.exp(-keeps / mean));
    holds(effect(effects, "kept").difference(), kept - base);
    // A shoot is 24 GB, and each loss takes one shoot.
    double shoots = rate * ((HOURS - keeps) * Math.exp(-keeps / mean) - HOURS);
    holds(effect(effects, "kept").bytesDifference(), shoots * 24 * Units.GB);
    holds(effect(effects, "kept").moneyDifference().orElseThrow(), shoots * 900);
  }

  /**
   * Fifteen drives of other names have other luck and the same law: nothing is better or worse. Of
   * 100 studies at 95 % at most 5 may say otherwise on average; 19 or more have a chance under 1e-6
   * (binomial). Red, with 30 or more, where each difference holds by itself only.
   */
  @Test
  void falseAlarmsAreAsRareAsStated() {
    List<Alternative> others = new ArrayList<>();
    for (int i = 0; i < 15; i++) {
      others.add(alternative("other-" + i, single("drive-" + i, LIFE)));
    }
    int alarms = 0;
    for (int seed = 0; seed < 100; seed++) {
      Effects effects =
          EffectMeasurement.run(
              alternative("base", single("main", LIFE)),
              others,
              settings(seed, 0.95, 400, 1, Method.PLAIN),
              Progress.SILENT);
      boolean alarm =
          effects.ranked().stream().anyMatch(e -> e.direction() != Direction.NOT_MEASURABLE);
      alarms += alarm ? 1 : 0;
    }
    assertThat(alarms).isLessThan(19);
  }

  @Test
  void theSameOnAnyNumberOfThreads() {
    for (Method method : List.of(Method.PLAIN, Method.RARE)) {
      Effects one = run(1, method);
      Effects three = run(3, method);
      assertThat(three).isEqualTo(one);
    }
  }

  private static Effects run(int threads, Method method) {
    return EffectMeasurement.run(
        alternative("base", mirror(20)),
        List.of(alternative("fast", mirror(10)), alternative("slow", mirror(40))),
        settings(2_000, threads, method),
        Progress.SILENT);
  }
}
