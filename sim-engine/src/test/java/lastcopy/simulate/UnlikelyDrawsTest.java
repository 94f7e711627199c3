package lastcopy.simulate;

import static lastcopy.simulate.UnlikelyDrawStudios.FAILS;
import static lastcopy.simulate.UnlikelyDrawStudios.HOURS;
import static lastcopy.simulate.UnlikelyDrawStudios.WAIT;
import static lastcopy.simulate.UnlikelyDrawStudios.perHour;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.scenario.Studio;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Biased histories find losses that need an unlikely draw, such as a notice later than any copy
 * keeps what was deleted, beside losses that do not.
 *
 * <p>Null hypothesis: the chance of any loss is the exact one, summed by hand to the first order,
 * which is right to 0.3 %. Red outside of the interval of confidence 1 − 1e-6, widened by that; it
 * must be narrower than 15 % to either side. Sabotage: each draw left as it falls, which takes from
 * 30 % to all of its losses away; a likelihood ratio left out.
 */
class UnlikelyDrawsTest {

  private static final long HISTORIES = 12_000;
  private static final double FIRST_ORDER = 0.003;

  /** A studio and its exact chance of any loss. */
  record Case(String name, Studio studio, double exact) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> cases() {
    double late = Math.exp(-10);
    double takes = 0.01 * 0.01;
    return Stream.of(
        new Case(
            "a deletion is noticed late",
            UnlikelyDrawStudios.deletion(),
            perHour(0.2) * (HOURS - 720) * late + twoDrives()),
        new Case(
            "malware is noticed late",
            UnlikelyDrawStudios.malware(),
            perHour(0.02) * (HOURS - 240) * late + twoDrives()),
        new Case(
            "a fire takes both copies, which it seldom does",
            UnlikelyDrawStudios.fire(),
            perHour(0.01) * HOURS * (takes + 0.01 * crossing())),
        new Case(
            "a defect is alive when a drive fails",
            UnlikelyDrawStudios.defects(),
            2 * FAILS * HOURS * (FAILS * WAIT + 24 / 1e6)));
  }

  /**
   * One drive fails while the other is gone or filled again, with 4.6 TB in the mean at 1 GB/s; or
   * the working copy fails while the newest shoot crosses.
   */
  private static double twoDrives() {
    double filled = (2e12 + 20e9 * 130) / UnlikelyDrawStudios.GIGABYTE_PER_SECOND / 3_600;
    return 2 * FAILS * FAILS * (WAIT + filled) * HOURS + FAILS * HOURS * crossing();
  }

  /** The share of time in which the newest shoot crosses: 20 s of each week. */
  private static double crossing() {
    return 20.0 / 3_600 / 168;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void unlikelyDrawsAreFound(Case given) {
    Settings settings =
        new Settings(
            Agreement.SEED,
            1 - Agreement.ALARM,
            0.01,
            OptionalLong.of(HISTORIES),
            Optional.empty(),
            2,
            Method.RARE);
    LayoutResult result = Simulation.run(given.studio, settings, Progress.SILENT).layouts().get(0);
    assertThat(result.doubts()).isEmpty();
    assertThat(given.exact)
        .as("exact chance against %s", result.anyLoss())
        .isBetween(
            result.anyLoss().low() * (1 - FIRST_ORDER),
            result.anyLoss().high() * (1 + FIRST_ORDER));
    assertThat(result.anyLoss().relativeHalfWidth()).isLessThan(0.2);
  }

  /**
   * Parity loses clips in one of 40 studios, and everything in four of a million, which plain
   * histories have not seen: its mean bytes are twice those of the clips. Red if the interval of
   * the mean is that of the clips alone.
   */
  @Test
  void whatWasNeverSeenIsInTheMean() {
    Settings settings =
        new Settings(
            Agreement.SEED, 0.95, 0.01, OptionalLong.of(20_000), Optional.empty(), 2, Method.PLAIN);
    LayoutResult result =
        Simulation.run(UnlikelyDrawStudios.parity(), settings, Progress.SILENT).layouts().get(0);
    double fails = perHour(0.01);
    double everything = 3 * fails * 2 * fails * WAIT * HOURS;
    assertThat(result.everythingLost().seen()).isFalse();
    assertThat(result.everythingLost().high()).isGreaterThan(everything);
    assertThat(result.bytesLost().low()).isLessThan(everything * 20e12);
    assertThat(result.bytesLost().high())
        .isGreaterThan(result.bytesLost().low() + everything * 23e12);
  }

  /**
   * A clip is deleted for good with a rate of 0.05 over the horizon, and everything goes once in
   * some 20 million studios. Losing n clips is Poisson's tail, or to lose everything: seven are
   * 1.5e-13 by deletions, five 2.5e-9, four 2.5e-7. Since hazards fall back to their own after the
   * first loss, no biased history deletes so often, while the few that lose everything are known to
   * a few per cent. Red if a row's interval is theirs alone, which is a fifth of the chance of
   * four.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void whatFurtherLossesAddUpToIsInTheRows(long seed) {
    double mean = 0.05;
    Settings settings =
        new Settings(
            seed, 0.999, 0.01, OptionalLong.of(HISTORIES), Optional.empty(), 2, Method.RARE);
    LayoutResult result =
        Simulation.run(UnlikelyDrawStudios.deletions(mean / HOURS), settings, Progress.SILENT)
            .layouts()
            .get(0);
    assertThat(result.doubts()).isEmpty();
    double everything = HOURS / 1e12;
    assertThat(result.everythingLost().value()).isCloseTo(everything, withPercentage(30));
    for (Point row : result.exceedanceBytes()) {
      long clips = (long) Math.ceil(row.at() / 1e9 - 1e-9);
      if (clips > 12) {
        continue; // far fewer than all footage, and more than are ever deleted
      }
      double exact = everything + poissonTail(clips, mean);
      assertThat(exact)
          .as("%d clips, against %s", clips, row.chance())
          .isBetween(row.chance().low(), row.chance().high());
    }
  }

  /** The chance of at least n, summed from there on. */
  private static double poissonTail(long n, double mean) {
    double sum = 0;
    for (long k = n; k < n + 30; k++) {
      sum += new PoissonDistribution(mean).probability((int) k);
    }
    return sum;
  }
}
