package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalLong;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Ledger;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Studio;
import lastcopy.simulate.rare.Biasable;
import lastcopy.simulate.rare.Channels;
import lastcopy.simulate.rare.Decorated;
import lastcopy.simulate.rare.StandIn;
import org.junit.jupiter.api.Test;

/**
 * What an unlikely draw may add that came out badly too seldom. Nothing here is statistical but the
 * stand-in's own losses, which are the same in all tests.
 */
class ChannelsTest {

  private static final double REPAIR = 72;
  private static final double LIFE = 5e5;
  private static final double HOURS = 43_800;

  @Test
  void whatNeverCameIsTheWholeRisk() {
    Channels channels = new Channels(2);
    channels.risked(1, 0.02);
    channels.endHistory();
    channels.addHistories(10);
    assertThat(channels.missed()).isEqualTo(0.002);
    assertThat(channels.missing()).containsExactly(1);
  }

  @Test
  void whatCameOftenEnoughMissesNothing() {
    Channels channels = new Channels(1);
    for (int i = 0; i < 10; i++) {
      channels.risked(0, 0.02);
      channels.cameOutBadly(0, 0.001);
      channels.endHistory();
    }
    channels.addHistories(100);
    assertThat(channels.missed()).isZero();
  }

  @Test
  void whatCameSeldomMissesTheRest() {
    Channels channels = new Channels(1);
    channels.risked(0, 0.02);
    channels.cameOutBadly(0, 0.005);
    channels.endHistory();
    Channels more = new Channels(1);
    more.risked(0, 0.02);
    more.endHistory();
    channels.merge(more);
    channels.addHistories(10);
    assertThat(channels.missed()).isCloseTo(0.0035, org.assertj.core.api.Assertions.within(1e-12));
  }

  /** A precise common way to lose beside a draw that never comes out badly: not trusted. */
  @Test
  void aDrawThatNeverCameOutBadlyIsNotTrusted() {
    LayoutResult result = run(1e-4, false);
    double exact = new StandIn(2, 1, 1 / LIFE, 1 / REPAIR, 0, HOURS).exact();
    assertThat(result.doubts())
        .singleElement()
        .asString()
        .contains(
            "Too few of the simulated histories saw that a disk sings; that may add up to 1 in")
        .doesNotContainPattern("[0-9]e-");
    assertThat(result.precisionReached()).isFalse();
    assertThat(result.anyLoss().high()).isGreaterThan(exact + 0.9e-4);
    assertThat(result.bytesLost().high()).isGreaterThan(0.9e-4 * 1e12);
  }

  @Test
  void aDrawThatDidIs() {
    assertThat(run(1e-4, true).doubts()).isEmpty();
  }

  private static LayoutResult run(double chance, boolean comes) {
    Studio studio =
        Studios.archive(HOURS, CopyMaker.markov("main", Arrangement.MIRROR, 2, LIFE, REPAIR));
    StandIn standIn = new StandIn(2, 1, 1 / LIFE, 1 / REPAIR, 0, HOURS);
    Settings settings =
        new Settings(5, 0.95, 0.05, OptionalLong.of(5_000), Optional.empty(), 2, Method.RARE);
    return Simulation.run(
            studio,
            settings,
            Progress.SILENT,
            layout -> seed -> new Singing(standIn.histories(seed), chance, comes))
        .layouts()
        .get(0);
  }

  /**
   * Histories that begin with an unlikely draw, which does come out badly in one of 100 or never.
   */
  private static final class Singing extends Decorated {
    private final double chance;
    private final boolean comes;

    Singing(Biasable of, double chance, boolean comes) {
      super(of);
      this.chance = chance;
      this.comes = comes;
    }

    @Override
    public int channels() {
      return 1;
    }

    @Override
    public String channel(int index) {
      return "a disk sings";
    }

    @Override
    public void simulate(long number, Bias bias, Ledger to) {
      super.simulate(number, bias, to);
      to.risked(0, chance);
      if (comes && number % 100 == 0) {
        to.cameOutBadly(0);
      }
    }
  }
}
