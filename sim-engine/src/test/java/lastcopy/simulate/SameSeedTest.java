package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.history.History;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must be exactly equal under one seed; no alarm rate, since nothing is left to chance. */
class SameSeedTest {

  private static final double YEAR = Units.HOURS_PER_YEAR;
  private static final Footage WEEKLY = Studios.shooting(1e12, 168, 1e11, 0);

  /** Each loss of a history as text, to compare whole histories. */
  private static final class Losses implements Ledger {
    final List<String> events = new ArrayList<>();

    @Override
    public void lost(Loss loss) {
      events.add(
          loss.hours()
              + " "
              + loss.bytes()
              + " "
              + loss.shoots()
              + " "
              + loss.shootsHit()
              + " "
              + loss.everything());
    }

    @Override
    public void recovered(Cause cause, double work, double whole) {}

    @Override
    public void passed(
        double h, double bare, double fragile, double down, double refill, double m) {}

    @Override
    public boolean wantsTime() {
      return false;
    }
  }

  private static CopyMaker main() {
    return CopyMaker.single("main", new Weibull(1.3, 40_000, 0)).arrival(new Fixed(48));
  }

  private static CopyMaker far() {
    return CopyMaker.single("far", new Weibull(1.3, 40_000, 0))
        .arrival(new Fixed(100))
        .nightly("main", 2, 5e6);
  }

  private static List<String> losses(Studio studio, Layout layout, int histories) {
    History history = new History(studio, layout, 7);
    List<String> all = new ArrayList<>();
    for (int k = 0; k < histories; k++) {
      Losses losses = new Losses();
      history.simulate(k, losses);
      all.add(losses.events.toString());
    }
    return all;
  }

  /** Red if a tally depends on which thread was first, or a stop on what was not merged. */
  @ParameterizedTest
  @ValueSource(ints = {2, 8})
  void anyNumberOfThreadsGivesTheSameResult(int threads) {
    Studio studio =
        Studios.of(
            5 * YEAR, WEEKLY, Studios.layout("one", main()), Studios.layout("two", main(), far()));
    // The cap is far beyond the stop: an engine that never loses would otherwise go on for good.
    OptionalLong cap = OptionalLong.of(1_000_000);
    Settings one = new Settings(3, .95, .08, cap, Optional.empty(), 1);
    Settings many = new Settings(3, .95, .08, cap, Optional.empty(), threads);
    Comparison alone = Simulation.run(studio, one, Progress.SILENT);
    assertThat(alone.layouts()).allMatch(LayoutResult::precisionReached);
    assertThat(Simulation.run(studio, many, Progress.SILENT)).isEqualTo(alone);
  }

  /** Red if a history keeps anything of the one before it. */
  @Test
  void aHistoryAloneEqualsItselfAmongOthers() {
    Layout layout = Studios.layout("two", main(), far());
    Studio studio = Studios.of(10 * YEAR, WEEKLY, layout);
    List<String> row = losses(studio, layout, 400);
    assertThat(row.stream().filter(s -> !s.equals("[]")).count()).isPositive();
    for (int k = 0; k < 400; k++) {
      Losses alone = new Losses();
      new History(studio, layout, 7).simulate(k, alone);
      assertThat(alone.events.toString()).isEqualTo(row.get(k));
    }
  }

  /**
   * Red if draws are numbered in the order of the copies: a copy that never gets data adds none.
   */
  @Test
  void addingACopyOrAMishapMovesNoOtherDraw() {
    CopyMaker idle =
        CopyMaker.single("idle", new Exponential(20_000)).startsEmpty().nightly("main", 1e9, 5e6);
    CopyMaker struck =
        CopyMaker.single("gone", new Exponential(20_000))
            .at(Studios.place("shed", 1e-4, 0.5))
            .startsEmpty()
            .nightly("main", 1e9, 5e6);
    Layout plain = Studios.layout("a", main());
    Layout more = Studios.layout("a", main(), struck, idle);
    Studio studio = Studios.of(10 * YEAR, WEEKLY, plain);
    assertThat(losses(studio, more, 2_000)).isEqualTo(losses(studio, plain, 2_000));
  }

  /** A third drive that cannot fail leaves a set that lost with two safe, and never the reverse. */
  @Test
  void addingADriveOnlySavesFootage() {
    Studio studio = Studios.of(YEAR, WEEKLY, Studios.layout("m", main()));
    Layout two = Studios.layout("m", CopyMaker.markov("main", Arrangement.MIRROR, 2, 2_000, 200));
    Layout three = Studios.layout("m", CopyMaker.markov("main", Arrangement.MIRROR, 3, 2_000, 200));
    List<String> withTwo = losses(studio, two, 2_000);
    List<String> withThree = losses(studio, three, 2_000);
    for (int k = 0; k < 2_000; k++) {
      // The first loss of three drives needs both of the first two down at once.
      if (!withThree.get(k).equals("[]")) {
        assertThat(withTwo.get(k)).isNotEqualTo("[]");
      }
    }
  }

  /** Red if a constant of time hides in the engine. */
  @Test
  void doublingEveryTimeChangesNothingButTheClock() {
    Footage slow = Studios.shooting(1e12, 336, 1e11, 0);
    Layout one = Studios.layout("a", CopyMaker.markov("main", Arrangement.MIRROR, 2, 4_000, 400));
    Layout twice = Studios.layout("a", CopyMaker.markov("main", Arrangement.MIRROR, 2, 8_000, 800));
    long lost = count(losses(Studios.of(YEAR, WEEKLY, one), one, 5_000));
    assertThat(lost).isPositive();
    assertThat(count(losses(Studios.of(2 * YEAR, slow, twice), twice, 5_000))).isEqualTo(lost);
  }

  private static long count(List<String> histories) {
    return histories.stream().filter(s -> !s.equals("[]")).count();
  }

  /** A copy that never fails and lags by nothing to speak of saves everything. */
  @Test
  void aServiceThatNeverFailsIsASecondCopy() {
    Layout safe =
        Studios.layout(
            "a",
            main(),
            CopyMaker.service("far", Rate.NONE)
                .fed("main", new lastcopy.scenario.Feed.Continuous(), CopyMaker.AT_ONCE));
    assertThat(count(losses(Studios.of(10 * YEAR, WEEKLY, safe), safe, 500))).isZero();
  }
}
