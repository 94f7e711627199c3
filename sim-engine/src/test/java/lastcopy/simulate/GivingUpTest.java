package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Method;
import lastcopy.experiment.NothingSimulatedException;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.history.History;
import lastcopy.history.report.Cause;
import lastcopy.history.report.GivenUpException;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.simulate.count.Chunk;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Long histories end when the time is over or somebody interrupts, and nothing half done counts.
 */
class GivingUpTest {

  @Test
  void layoutsHaveTakenTurnsWhenTheyAreGivenUp() {
    Studio studio = studio(3, 10);
    AtomicInteger looks = new AtomicInteger();
    History[] layouts =
        studio.layouts().stream()
            .map(layout -> new History(studio, layout, 1))
            .peek(history -> history.giveUpWhen(() -> looks.incrementAndGet() > 60))
            .toArray(History[]::new);
    boolean[] all = {true, true, true};
    Chunk chunk = Chunk.simulate(layouts, all, Thresholds.of(studio), 0, Chunk.SIZE);
    assertThat(chunk.count()).isBetween(1, 40);
    for (int l = 0; l < 3; l++) {
      // At most one turn ahead of the others; turns double in length at first.
      assertThat(chunk.tallies()[l].histories())
          .isBetween((long) chunk.count(), 2L * chunk.count());
      assertThat(chunk.lossy()[l].length()).isLessThanOrEqualTo(chunk.count());
    }
  }

  @Test
  @Timeout(60)
  void theCapOnTimeEndsASingleHistory() {
    assertThatThrownBy(() -> Simulation.run(studio(1, 5_000), settings(1), Progress.SILENT))
        .isInstanceOf(NothingSimulatedException.class)
        .hasMessageContaining("in the time given");
  }

  @Test
  @Timeout(60)
  void anInterruptionEndsASingleHistory() {
    assertThatThrownBy(() -> Simulation.run(studio(1, 1_000), settings(60_000), stopped()))
        .isInstanceOf(NothingSimulatedException.class)
        .hasMessageContaining("interrupted");
  }

  /** Some hundred milliseconds, in which it is asked more than once whether to go on. */
  @Test
  void aLongFirstChunkIsWaitedForIfNobodyStopsIt() {
    Settings settings =
        new Settings(1, 0.95, 0.02, OptionalLong.of(40), Optional.empty(), 2, Method.PLAIN);
    Comparison comparison = Simulation.run(studio(1, 10), settings, Progress.SILENT);
    assertThat(comparison.layouts().get(0).histories()).isEqualTo(40);
    assertThat(comparison.finished()).isTrue();
  }

  @Test
  void whatIsGivenUpLeavesNothingBehind() {
    Studio studio = studio(1, 5);
    Layout layout = studio.layouts().get(0);
    History history = new History(studio, layout, 1);
    LossLedgerOfBytes undisturbed = new LossLedgerOfBytes();
    history.simulate(7, undisturbed);
    AtomicInteger looks = new AtomicInteger();
    history.giveUpWhen(() -> looks.incrementAndGet() == 3);
    LossLedgerOfBytes cut = new LossLedgerOfBytes();
    assertThatThrownBy(() -> history.simulate(7, cut)).isInstanceOf(GivenUpException.class);
    LossLedgerOfBytes again = new LossLedgerOfBytes();
    history.simulate(7, again);
    assertThat(again.bytes).isEqualTo(undisturbed.bytes).isGreaterThan(cut.bytes);
  }

  @Test
  void aTallyForgetsAHistoryThatWasGivenUp() {
    Studio studio = studio(1, 5);
    History history = new History(studio, studio.layouts().get(0), 1);
    LossTally tally = new LossTally(Thresholds.of(studio));
    tally.begin(0);
    history.simulate(0, tally);
    tally.begin(1); // without an end of the history before
    history.simulate(1, tally);
    tally.end();
    LossTally alone = new LossTally(Thresholds.of(studio));
    alone.begin(1);
    history.simulate(1, alone);
    alone.end();
    assertThat(tally.histories()).isEqualTo(1);
    assertThat(tally.causes().get("drive").events())
        .isEqualTo(alone.causes().get("drive").events());
    assertThat(tally.time().recoveries(0.95)).isNotEmpty().isEqualTo(alone.time().recoveries(0.95));
    assertThat(tally.time().exposure(1, 0.95)).isEqualTo(alone.time().exposure(1, 0.95));
  }

  @Test
  void anIntervalIsCutToWhatCanBe() {
    assertThat(new Estimate(0.5, -0.1, 1.2, true).within(0, 1))
        .isEqualTo(new Estimate(0.5, 0, 1, true));
    assertThat(Estimate.exact(365.0012).within(0, 365)).isEqualTo(Estimate.exact(365));
  }

  private static final class LossLedgerOfBytes implements Ledger {
    double bytes;

    @Override
    public void lost(Loss loss) {
      bytes += loss.bytes();
    }

    @Override
    public void passed(
        double hours, double bare, double fragile, double down, double refill, double most) {
      // Times are not wanted.
    }

    @Override
    public void recovered(Cause cause, double workHours, double wholeHours) {
      // Neither are these.
    }

    @Override
    public boolean wantsTime() {
      return false;
    }
  }

  private static Progress stopped() {
    return new Progress() {
      @Override
      public void merged(String layout, long histories, double precision, double share) {
        // Nobody watches.
      }

      @Override
      public boolean cancelled() {
        return true;
      }
    };
  }

  private static Settings settings(long millis) {
    return new Settings(
        1,
        0.95,
        0.02,
        OptionalLong.empty(),
        Optional.of(Duration.ofMillis(millis)),
        2,
        Method.PLAIN);
  }

  /** Single drives that live for five hours: 1,752 failures a year. */
  private static Studio studio(int layouts, double years) {
    DriveModel model = DriveModel.builder("frail", 1e12).fails(new Exponential(5)).build();
    Medium set = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build();
    Copy copy = Copy.builder("main").on(set).build();
    List<Layout> all = IntStream.range(0, layouts).mapToObj(i -> Layout.of("l" + i, copy)).toList();
    Footage footage =
        new Footage(
            1e11,
            new Shoots(168, 1e10, Shoots.Spacing.EVEN),
            0,
            OptionalDouble.empty(),
            1e9,
            OptionalDouble.empty());
    return new Studio("Frail", years, Optional.empty(), footage, Desk.QUIET, all);
  }
}
