package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.simulate.Agreement;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Simulation;
import lastcopy.simulate.Studios;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Biased histories against plain ones by brute force, where nothing is exponential: ageing drives,
 * strain, repairs of fixed and Weibull length, looks by the clock, shoots, lags, mishaps.
 *
 * <p>Null hypothesis: both estimate the same. Red when two intervals of confidence 1 − 1e-6 do not
 * meet, so at a rate below 1e-6 each. An error of six or so of their joint errors shows.
 */
class RareBruteForceTest {

  private static final double YEAR = 8_760;

  private static CopyMaker ageing(String id, int drives, double scale) {
    Arrangement arrangement = drives == 1 ? Arrangement.SINGLE : Arrangement.MIRROR;
    return CopyMaker.set(id, arrangement, drives)
        .life(new Weibull(1.8, scale, 0))
        .aged(new Fixed(2 * YEAR));
  }

  /**
   * Ageing mirror, strained, its failures seen at a weekly look: about 3e-6 with lives of 60 years.
   */
  private static Studio strainedMirror(double scale) {
    Law rebuild = new Weibull(2, 12, 6);
    return Studios.archive(
        3 * YEAR, ageing("main", 2, scale).strain(4).rebuild(rebuild).lookedAtEvery(168));
  }

  /** A mirror at a place with fires, and a far drive fed at night with a lag: about 2e-4. */
  private static Studio farCopy(double fires) {
    Footage footage = Studios.shooting(Units.TB, 168, 50e9, 0.2);
    CopyMaker main =
        ageing("main", 2, 40 * YEAR)
            .arrival(new Fixed(72))
            .rebuild(new Fixed(20))
            .at(Studios.place("studio", fires / YEAR, 0.8));
    CopyMaker far =
        ageing("far", 1, 40 * YEAR)
            .lookedAtEvery(720)
            .arrival(new Fixed(72))
            .restores(50e6)
            .nightly("main", 2, 2.5e6);
    CopyMaker service =
        CopyMaker.service("service", Rate.perYear(0.01))
            .arrival(new Exponential(100))
            .restores(5e6)
            .nightly("main", 3, 5e6);
    return Studios.of(3 * YEAR, footage, Studios.layout("three", main, far, service));
  }

  /**
   * A third copy that is away half of the time and never matters, so that the course is left and
   * met again; red by half if a hazard is counted off the course and once more on it. About 5e-3.
   */
  private static Studio oftenDisturbed() {
    Footage footage = Studios.shooting(Units.TB, 168, 50e9, 0);
    CopyMaker main = ageing("main", 1, 8 * YEAR).arrival(new Fixed(20));
    CopyMaker far = CopyMaker.single("far", new Fixed(1e12)).nightly("main", 2, 2.5e6);
    CopyMaker third =
        CopyMaker.single("third", new Weibull(1.3, 500, 0))
            .arrival(new Fixed(400))
            .nightly("far", 9, 1e9);
    return Studios.of(YEAR, footage, Studios.layout("two", main, far, third));
  }

  /**
   * A mirror that rebuilds often and cannot read all, while the newest shoot is not yet elsewhere:
   * about 3e-3. Red if the likelihood ratio of where spots are put is left out.
   */
  private static Studio unreadable() {
    Footage footage = Studios.shooting(Units.TB, 168, 50e9, 0);
    CopyMaker main =
        CopyMaker.set("main", Arrangement.MIRROR, 2)
            .life(new Weibull(1.2, 3_000, 0))
            .rebuild(new Fixed(2))
            .driveBytes(8 * Units.TB)
            .readErrors(1e-13);
    CopyMaker far = CopyMaker.single("far", new Fixed(1e12)).nightly("main", 2, 2.5e6);
    return Studios.of(YEAR / 2, footage, Studios.layout("two", main, far));
  }

  /**
   * Three pairs, a used drive beside each new one, of one batch, strained, with hidden spots, and a
   * far drive that lags. Red if a drive that stands alone is counted in another group than the one
   * whose factor it had.
   */
  private static Studio unlikePairs() {
    Footage footage = Studios.shooting(Units.TB, 168, 50e9, 0);
    CopyMaker main =
        CopyMaker.set("main", Arrangement.PAIRS, 6)
            .life(new Weibull(1.3, 20 * YEAR, 0))
            .batch("spring", 0.5)
            .strain(3)
            .rebuild(new Weibull(2, 48, 6))
            .arrival(new Fixed(48))
            .driveBytes(8 * Units.TB)
            .latentDefects(new Exponential(4 * YEAR));
    for (int pair = 0; pair < 3; pair++) {
      main.each(made -> {})
          .each(used -> used.fails(new Exponential(4 * YEAR)).age(new Fixed(YEAR)));
    }
    CopyMaker far =
        CopyMaker.single("far", new Exponential(9 * YEAR))
            .arrival(new Fixed(100))
            .nightly("main", 2, 2.5e6);
    return Studios.of(YEAR, footage, Studios.layout("two", main, far));
  }

  static Stream<Studio> studios() {
    return Stream.of(strainedMirror(60 * YEAR), farCopy(0.002), unreadable(), unlikePairs());
  }

  @ParameterizedTest
  @MethodSource("studios")
  void agreesWithPlainHistories(Studio studio) {
    compare(studio, 200_000, 40_000);
  }

  @Tag("slow")
  @ParameterizedTest
  @MethodSource("studios")
  void agreesWithManyPlainHistories(Studio studio) {
    compare(studio, 30_000_000, 1_000_000);
  }

  @Test
  void agreesWhereTheCourseIsLeftOften() {
    compare(oftenDisturbed(), 60_000, 20_000);
  }

  @Tag("slow")
  @Test
  void agreesWhereTheCourseIsLeftOftenWithManyPlainHistories() {
    compare(oftenDisturbed(), 3_000_000, 400_000);
  }

  @Tag("slow")
  @Test
  void agreesAtOneInAHundredThousand() {
    compare(strainedMirror(40 * YEAR), 150_000_000, 200_000);
  }

  /** Shoots at random times, so that there is no undisturbed course: about 3e-3. */
  @Tag("slow")
  @Test
  void agreesWhereShootsComeAtRandom() {
    Footage footage =
        new Footage(
            Units.TB,
            new Shoots(168, 50e9, Shoots.Spacing.RANDOM),
            0,
            OptionalDouble.empty(),
            Footage.DEFAULT_CLIP_BYTES,
            OptionalDouble.empty());
    CopyMaker main = ageing("main", 1, 40 * YEAR).arrival(new Fixed(72));
    CopyMaker far = ageing("far", 1, 40 * YEAR).arrival(new Fixed(72)).nightly("main", 2, 2.5e6);
    compare(Studios.of(3 * YEAR, footage, Studios.layout("two", main, far)), 1_000_000, 100_000);
  }

  private static void compare(Studio studio, long plain, long rare) {
    LayoutResult brute = run(studio, plain, Method.PLAIN);
    LayoutResult biased = run(studio, rare, Method.RARE);
    assertThat(biased.method()).isEqualTo(Method.RARE);
    assertThat(biased.doubts()).isEmpty();
    meet(biased.anyLoss(), brute.anyLoss());
    meet(biased.everythingLost(), brute.everythingLost());
    meet(biased.lossEvents(), brute.lossEvents());
    meet(biased.bytesLost(), brute.bytesLost());
    for (int i = 0; i < brute.curve().size(); i++) {
      meet(biased.curve().get(i).chance(), brute.curve().get(i).chance());
    }
    int both = 0;
    for (LayoutResult.Point point : brute.exceedanceBytes()) {
      for (LayoutResult.Point other : biased.exceedanceBytes()) {
        if (other.at() == point.at()) {
          meet(other.chance(), point.chance());
          both++;
        }
      }
    }
    assertThat(both).as("rows that both have").isGreaterThanOrEqualTo(40);
  }

  private static LayoutResult run(Studio studio, long histories, Method method) {
    Settings settings =
        new Settings(
            3, 1 - Agreement.ALARM, 0.01, OptionalLong.of(histories), Optional.empty(), 2, method);
    return Simulation.run(studio, settings, Progress.SILENT).layouts().get(0);
  }

  private static void meet(Estimate one, Estimate other) {
    assertThat(one.low()).as("%s and %s", one, other).isLessThanOrEqualTo(other.high());
    assertThat(other.low()).as("%s and %s", one, other).isLessThanOrEqualTo(one.high());
  }
}
