package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import lastcopy.history.History;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.GivenUpException;
import lastcopy.history.report.Silent;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Biased histories are those of the engine: two mirrors of one batch, and a fire that may spare.
 */
class EngineHistoriesTest {

  private EngineHistories biased;
  private History engine;
  private Bias bias;

  @BeforeEach
  void make() {
    DriveModel model = DriveModel.builder("m", 1e12).fails(new Exponential(5_000)).build();
    Medium mirror =
        Medium.DriveSet.builder(Arrangement.MIRROR, 2).of(model).batch("spring", .5).build();
    Place studio = Place.of("studio", new Mishap("fire", new Rate(1e-4), .4));
    Layout layout =
        Layout.of(
            "l",
            Copy.builder("main").on(mirror).at(studio).build(),
            Copy.builder("second")
                .on(mirror)
                .at(studio)
                .fed(Feed.from("main").every(24, 2).build())
                .build());
    Footage footage =
        Footage.builder(new Shoots(168, 1e9, Shoots.Spacing.EVEN)).onHand(1e10).build();
    Studio all = Studio.builder("s", 1).footage(footage).layout(layout).build();
    biased = new EngineHistories(all, layout, 7);
    engine = new History(all, layout, 7);
    double[][] factors = new double[engine.groups()][engine.levels()];
    for (double[] row : factors) {
      Arrays.fill(row, 2);
    }
    bias = Bias.of(factors);
  }

  @Test
  void theyHaveTheShapeOfTheEngine() {
    assertThat(biased.groups()).isEqualTo(engine.groups()).isGreaterThan(4);
    assertThat(biased.levels()).isEqualTo(engine.levels()).isEqualTo(10);
    assertThat(biased.depth(9)).as("four drives down, bare").isEqualTo(4);
    assertThat(biased.depth(1)).isEqualTo(1);
    double least = Double.POSITIVE_INFINITY;
    for (int g = 0; g < biased.groups(); g++) {
      assertThat(biased.mostFactor(g)).isEqualTo(engine.mostFactor(g));
      least = Math.min(least, biased.mostFactor(g));
    }
    assertThat(least).as("of the fire's chance of 0.4").isEqualTo(-1 / Math.log1p(-.4));
    assertThat(biased.channels()).isEqualTo(3);
    assertThat(biased.channel(0)).isEqualTo("fire struck at 'studio' and every copy is taken");
  }

  @Test
  void theyAreTheHistoriesOfTheEngine() {
    double events = 0;
    double places = 0;
    for (int number = 0; number < 40; number++) {
      biased.simulate(number, bias, Silent.LEDGER);
      engine.bias(bias);
      engine.simulate(number, Silent.LEDGER);
      for (int g = 0; g < biased.groups(); g++) {
        for (int v = 0; v < biased.levels(); v++) {
          assertThat(biased.events(g, v)).isEqualTo(engine.statistics().events(g, v));
          assertThat(biased.hazard(g, v)).isEqualTo(engine.statistics().hazard(g, v));
          events += biased.events(g, v);
        }
      }
      assertThat(biased.logOfTheRest()).isEqualTo(engine.statistics().places());
      places += Math.abs(biased.logOfTheRest());
    }
    assertThat(events).isPositive();
    assertThat(places).isPositive();
  }

  @Test
  void theyCanBeGivenUp() {
    biased.giveUpWhen(() -> true);
    assertThatThrownBy(
            () -> {
              for (int number = 0; number < 10_000; number++) {
                biased.simulate(number, bias, Silent.LEDGER);
              }
            })
        .isInstanceOf(GivenUpException.class);
  }
}
