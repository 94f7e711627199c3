package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.DoubleUnaryOperator;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.law.Competing;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Losses of what the other copy does not have yet, so rare that only biased histories see them:
 * against the hazard of the working copy summed by hand over the hours in which a shoot waits.
 *
 * <p>Null hypothesis: the exact chance lies in the interval of confidence 1 − 1e-6. Second failures
 * of one history, which the sums leave out, are a millionth of them. Red if a failure on the course
 * counts at another level than its hazard, or if the hours are taken from another course; if levels
 * did not tell what is behind, the intervals would be wider than is asked for.
 */
public class BehindTest {

  private static final double HOURS = 5 * Units.HOURS_PER_YEAR;
  private static final double WEEK = Units.HOURS_PER_WEEK;
  private static final int HISTORIES = 20_000;
  private static final double LAMBDA = 1e-9;

  static Law[] lives() {
    return new Law[] {
      new Exponential(1e11),
      new Weibull(1.8, 1e8, 0),
      new Weibull(0.7, 1e13, 0),
      new Competing(List.of(new Exponential(1e11), new Weibull(3, 1e7, 0)))
    };
  }

  /** A shoot each week at midnight; the run at two takes three hours. */
  @ParameterizedTest
  @MethodSource("lives")
  void aDriveFailsBeforeTheNight(Law life) {
    CopyMaker far = CopyMaker.single("far", new Fixed(1e12)).nightly("main", 2, perSecond(3));
    double hazard = overWaits(5, life::cumulativeHazard);
    check(CopyMaker.single("main", life), far, hazard);
  }

  /** An ageing drive that is not new: its hazard is that of its age. */
  @Test
  void aDriveThatIsNotNewFailsBeforeTheNight() {
    double age = 20_000;
    Law life = new Weibull(1.8, 1e8, 0);
    CopyMaker far = CopyMaker.single("far", new Fixed(1e12)).nightly("main", 2, perSecond(3));
    double hazard = overWaits(5, t -> life.cumulativeHazard(age + t));
    check(CopyMaker.single("main", life).aged(new Fixed(age)), far, hazard);
  }

  @Test
  void aMirrorFailsBeforeTheFeedIsDone() {
    check(mirror(), mirrorLoses());
  }

  /** A mirror that takes three days to heal, and a copy to which each shoot goes in an hour. */
  public static Studio mirror() {
    CopyMaker main =
        CopyMaker.set("main", Arrangement.MIRROR, 2)
            .life(new Exponential(1 / LAMBDA))
            .rebuild(new Fixed(72));
    CopyMaker far =
        CopyMaker.single("far", new Fixed(1e12)).fed("main", new Feed.Continuous(), perSecond(1));
    return Studios.shootingWeekly(HOURS, main, far);
  }

  /**
   * The chance that its second drive fails while the first is replaced and the newest shoot is on
   * its way: 2λ² times the three days that the first could have failed in, over all hours in which
   * a shoot waits.
   */
  public static double mirrorLoses() {
    return overWaits(1, t -> 2 * LAMBDA * LAMBDA * 72 * t);
  }

  private static double perSecond(double hours) {
    return Units.GB / hours / Units.SECONDS_PER_HOUR;
  }

  /** What a function gains over so many hours after each shoot. */
  private static double overWaits(double hours, DoubleUnaryOperator cumulative) {
    double sum = 0;
    for (double shot = WEEK; shot <= HOURS; shot += WEEK) {
      sum +=
          cumulative.applyAsDouble(Math.min(HOURS, shot + hours)) - cumulative.applyAsDouble(shot);
    }
    return sum;
  }

  private static void check(CopyMaker main, CopyMaker far, double exact) {
    check(Studios.shootingWeekly(HOURS, main, far), exact);
  }

  private static void check(Studio studio, double exact) {
    Settings settings =
        new Settings(
            Agreement.SEED,
            1 - Agreement.ALARM,
            0.01,
            OptionalLong.of(HISTORIES),
            Optional.empty(),
            2,
            Method.RARE);
    LayoutResult result = Simulation.run(studio, settings, Progress.SILENT).layouts().get(0);
    assertThat(result.doubts()).isEmpty();
    Estimate loss = result.anyLoss();
    assertThat(exact).as("exact against %s", loss).isBetween(loss.low(), loss.high());
    assertThat(exact).as("rare").isLessThan(1e-4);
    assertThat(loss.relativeHalfWidth()).isLessThan(0.1);
  }
}
