package lastcopy.worlds;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.experiment.Comparison;
import lastcopy.experiment.Cost;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Unknown;
import lastcopy.simulate.Studios;
import org.junit.jupiter.api.Test;

/**
 * What a layout costs where its drives' hazard is not known: a lone drive that is replaced at once
 * is a Poisson process (Cox, Renewal Theory, 1962, 3.1), so of hazard h it costs price·(1 + h·t) on
 * average. What is not known is that mean over worlds; how many drives fail in one history is luck
 * and not in it. Null hypothesis: each interval of confidence 1 − 1e-6 holds the exact value. Red
 * where percentiles over worlds are those of histories, which may only cost whole drives.
 */
class WorldCostsTest {

  private static final double YEARS = 5;
  private static final double PRICE = 100;

  private static Studio studio(double perYear) {
    DriveModel drive =
        DriveModel.builder("drive", 8 * Units.TB)
            .price(PRICE)
            .fails(new Exponential(Units.HOURS_PER_YEAR / perYear))
            .build();
    Copy main =
        Copy.builder("main")
            .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(drive).build())
            .build();
    return Studio.builder("test", YEARS)
        .footage(Studios.onHand(Units.TB))
        .layout(Layout.builder("only").copy(main).build())
        .build();
  }

  private static double costs(double perYear) {
    return PRICE * (1 + perYear * YEARS);
  }

  private static void holds(Estimate estimate, double exact) {
    assertThat(exact).isBetween(estimate.low(), estimate.high());
    assertThat(estimate.relativeHalfWidth()).isLessThan(0.15);
  }

  @Test
  void aDriveReplacedAtOnce() {
    Comparison result =
        Doubtful.run(Doubtful.studios(1, z -> studio(Unknown.between(0.05, 0.5, z[0]))), 0.1);
    Worlds.Spread cost = result.worlds().orElseThrow().layouts().get(0).cost().orElseThrow();
    holds(cost.percentiles().orElseThrow().p5(), costs(0.05));
    holds(cost.percentiles().orElseThrow().p50(), costs(Math.sqrt(0.05 * 0.5)));
    holds(cost.percentiles().orElseThrow().p95(), costs(0.5));
    holds(cost.mean(), Doubtful.mean(z -> costs(Unknown.between(0.05, 0.5, z))));
    Cost histories = result.layouts().get(0).cost().orElseThrow();
    assertThat(histories.p5()).isEqualTo(PRICE); // no drive failed: luck
  }
}
