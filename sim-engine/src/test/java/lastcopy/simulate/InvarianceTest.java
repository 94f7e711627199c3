package lastcopy.simulate;

import static lastcopy.simulate.Agreement.sameLosses;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Progress;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Results that must be equal to the last digit under one seed, whole comparisons at a time: nothing
 * here is statistical. {@link SameSeedTest} holds the same for single histories.
 */
class InvarianceTest {

  private static final long HISTORIES = 20_000;
  private static final double WEEK = Units.HOURS_PER_WEEK;

  @ParameterizedTest
  @ValueSource(ints = {2, 8})
  void anyNumberOfThreads(int threads) {
    Studio studio = lively(1, mirror(1), single(1));
    assertThat(run(studio, 7, threads)).isEqualTo(run(studio, 7, 1));
  }

  /** Guards the others: were the seed ignored, they would pass for nothing. */
  @Test
  void anotherSeedIsAnotherResult() {
    Studio studio = lively(1, single(1));
    assertThat(run(studio, 7, 1).layouts()).isNotEqualTo(run(studio, 8, 1).layouts());
  }

  @Test
  void anotherLayoutMovesNothing() {
    List<LayoutResult> both = run(lively(1, mirror(1), single(1)), 7, 1).layouts();
    assertThat(run(lively(1, mirror(1)), 7, 1).layouts().get(0)).isEqualTo(both.get(0));
    assertThat(run(lively(1, single(1)), 7, 1).layouts().get(0)).isEqualTo(both.get(1));
  }

  /** A copy that nothing ever reaches, with failures of its own, changes no loss. */
  @Test
  void anotherCopyMovesNothing() {
    CopyMaker beside =
        CopyMaker.single("beside", new Exponential(900))
            .fed("main", new Feed.Every(WEEK, 1e9), CopyMaker.AT_ONCE)
            .startsEmpty();
    sameLosses(
        lively(1, Studios.layout("a", drive(1))), lively(1, Studios.layout("a", drive(1), beside)));
  }

  /** A mishap that takes nothing changes no loss, listed before or after another. */
  @Test
  void anotherMishapMovesNothing() {
    Mishap fire = new Mishap("fire", Rate.perYear(0.5), 0.7);
    Mishap scare = new Mishap("scare", Rate.perYear(3), 0);
    Place plain = new Place("studio", List.of(fire));
    Studio before = lively(1, Studios.layout("a", drive(1).at(plain)));
    for (List<Mishap> mishaps : List.of(List.of(fire, scare), List.of(scare, fire))) {
      Place scared = new Place("studio", mishaps);
      sameLosses(before, lively(1, Studios.layout("a", drive(1).at(scared))));
    }
  }

  /** Powers of two scale a binary fraction without rounding, so even the digits must agree. */
  @ParameterizedTest
  @ValueSource(doubles = {2, 0.25})
  void anotherUnitOfTimeChangesNothing(double scale) {
    LayoutResult was = only(lively(1, mirror(1)));
    LayoutResult is = only(lively(scale, mirror(scale)));
    assertThat(is.anyLoss()).isEqualTo(was.anyLoss());
    assertThat(is.everythingLost()).isEqualTo(was.everythingLost());
    assertThat(is.lossEvents()).isEqualTo(was.lossEvents());
    assertThat(is.bytesLost()).isEqualTo(was.bytesLost());
    assertThat(is.shootsHit()).isEqualTo(was.shootsHit());
    assertThat(is.exposure()).isEqualTo(was.exposure());
  }

  private static LayoutResult only(Studio studio) {
    return run(studio, 7, 1).layouts().get(0);
  }

  private static Comparison run(Studio studio, long seed, int threads) {
    return Simulation.run(
        studio, Agreement.settings(seed, 0.95, HISTORIES, threads), Progress.SILENT);
  }

  /** A studio that shoots every week; every time is multiplied by the scale. */
  private static Studio lively(double scale, Layout... layouts) {
    Footage footage = Studios.shooting(Units.TB, scale * WEEK, Units.TB, 0);
    return Studios.of(scale * 8_960, footage, layouts);
  }

  private static Layout single(double scale) {
    return Studios.layout("single", drive(scale), far(scale));
  }

  private static CopyMaker drive(double scale) {
    return CopyMaker.single("main", new Weibull(1.3, scale * 8_192, scale * 64))
        .aged(new Fixed(scale * 512))
        .arrival(new Fixed(scale * 48));
  }

  private static Layout mirror(double scale) {
    CopyMaker mirror =
        CopyMaker.set("main", Arrangement.MIRROR, 2)
            .life(new Weibull(1.3, scale * 8_192, scale * 64))
            .aged(new Fixed(scale * 512))
            .arrival(new Fixed(scale * 48))
            .rebuild(new Exponential(scale * 512))
            .lookedAtEvery(scale * 128)
            .at(Studios.place("studio", 1e-4 / scale, 0.5));
    return Studios.layout("mirror", mirror, far(scale));
  }

  private static CopyMaker far(double scale) {
    double rate = Units.TB / (10 * Units.SECONDS_PER_HOUR) / scale;
    return CopyMaker.single("far", new Exponential(scale * 8_192))
        .arrival(new Fixed(scale * 96))
        .restores(rate)
        .fed("main", new Feed.Every(scale * Units.HOURS_PER_DAY, scale * 3), rate);
  }
}
