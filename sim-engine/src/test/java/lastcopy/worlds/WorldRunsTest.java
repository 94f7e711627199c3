package lastcopy.worlds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Method;
import lastcopy.experiment.NothingSimulatedException;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.law.Exponential;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Unknown;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Simulation;
import lastcopy.simulate.Studios;
import org.junit.jupiter.api.Test;

/** How runs over worlds begin, stop and repeat themselves; nothing here is left to chance. */
class WorldRunsTest {

  private static final double YEAR = 8_760;

  private static PossibleStudios studios() {
    return Doubtful.studios(
        1,
        z -> {
          double mean = YEAR / Unknown.between(0.01, 0.05, z[0]);
          return Studios.of(
              5 * YEAR,
              Studios.onHand(1e12),
              Studios.layout("a", CopyMaker.single("x", new Exponential(mean))),
              Studios.layout("b", CopyMaker.single("y", new Exponential(mean / 2))));
        });
  }

  private static Settings settings(OptionalLong histories, OptionalInt worlds, int threads) {
    return new Settings(7, 0.95, 0.03, histories, Optional.empty(), threads, Method.AUTO, worlds);
  }

  private static Comparison run(OptionalLong histories, OptionalInt worlds, int threads) {
    return WorldSimulation.run(studios(), settings(histories, worlds, threads), Progress.SILENT);
  }

  @Test
  void threadsChangeNothing() {
    Comparison one = run(OptionalLong.empty(), OptionalInt.empty(), 1);
    assertThat(run(OptionalLong.empty(), OptionalInt.empty(), 3)).isEqualTo(one);
    assertThat(one.layouts()).allMatch(layout -> layout.precisionReached());
  }

  @Test
  void whereAllIsKnownItIsThePlainSimulation() {
    PossibleStudios one = PossibleStudios.only(studios().central());
    Settings settings = settings(OptionalLong.of(5_000), OptionalInt.empty(), 1);
    assertThat(WorldSimulation.run(one, settings, Progress.SILENT))
        .isEqualTo(Simulation.run(one.central(), settings, Progress.SILENT));
  }

  /** So many histories and worlds at most, and each world has as many as another. */
  @Test
  void capsAreKept() {
    Comparison few = run(OptionalLong.of(10_000), OptionalInt.of(40), 1);
    assertThat(few.worlds().orElseThrow().layouts()).allMatch(layout -> layout.count() == 48);
    assertThat(few.layouts())
        .allMatch(layout -> layout.histories() <= 10_000 && layout.histories() > 9_900);
    Comparison least = run(OptionalLong.of(3), OptionalInt.of(1), 1);
    assertThat(least.layouts()).allMatch(layout -> layout.histories() == 16);
    assertThat(least.worlds().orElseThrow().layouts().get(0).anyLoss().percentiles()).isEmpty();
  }

  @Test
  void whatIsDoneWhenItIsStoppedCounts() {
    int[] asked = {0};
    Progress impatient =
        new Progress() {
          @Override
          public void merged(String layout, long histories, double precision, double share) {
            asked[0]++;
          }

          @Override
          public boolean cancelled() {
            return asked[0] > 20;
          }
        };
    Comparison some =
        WorldSimulation.run(
            studios(), settings(OptionalLong.empty(), OptionalInt.empty(), 1), impatient);
    assertThat(some.finished()).isFalse();
    assertThat(some.layouts().get(0).histories()).isPositive();
    Progress never =
        new Progress() {
          @Override
          public void merged(String layout, long histories, double precision, double share) {}

          @Override
          public boolean cancelled() {
            return true;
          }
        };
    assertThatThrownBy(
            () ->
                WorldSimulation.run(
                    studios(), settings(OptionalLong.empty(), OptionalInt.empty(), 1), never))
        .isInstanceOf(NothingSimulatedException.class);
  }
}
