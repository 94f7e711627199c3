package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Ledger;
import lastcopy.law.Never;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Studio;
import lastcopy.simulate.count.Chunk;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.rare.Biasable;
import lastcopy.simulate.rare.Decorated;
import lastcopy.simulate.rare.Pilot;
import lastcopy.simulate.rare.StandIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What a whole simulation does with biased histories: a stand-in simulates them, the engine the
 * plain ones of the very same repairable pairs.
 */
class RareRunTest {

  private static final double REPAIR = 72;
  private static final double HOURS = 43_800;

  /** A pair of drives that fails once in so many hours each. */
  private static Comparison run(Settings settings, double life, double livesOfStandIn) {
    Studio studio =
        Studios.archive(HOURS, CopyMaker.markov("main", Arrangement.MIRROR, 2, life, REPAIR));
    StandIn standIn = new StandIn(2, 1, 1 / livesOfStandIn, 1 / REPAIR, 0, HOURS);
    return Simulation.run(studio, settings, Progress.SILENT, layout -> standIn::histories);
  }

  private static double exact(double life) {
    return new StandIn(2, 1, 1 / life, 1 / REPAIR, 0, HOURS).exact();
  }

  private static Settings settings(Method method, int threads) {
    return new Settings(5, 0.95, 0.05, OptionalLong.empty(), Optional.empty(), threads, method);
  }

  private static LayoutResult only(Comparison result) {
    return result.layouts().get(0);
  }

  @Test
  void rareLossesAreBiasedAndPrecise() {
    LayoutResult result = only(run(settings(Method.AUTO, 2), 5e5, 5e5));
    assertThat(result.method()).isEqualTo(Method.RARE);
    assertThat(result.precisionReached()).isTrue();
    assertThat(result.doubts()).isEmpty();
    assertThat(result.anyLoss().relativeHalfWidth()).isLessThanOrEqualTo(0.05);
    assertThat(result.anyLoss().value() / exact(5e5)).isBetween(0.88, 1.12); // five errors
    assertThat(result.effectiveHistories()).isLessThan((double) result.histories());
    assertThat(result.largestWeightShare()).isLessThan(0.2);
    assertThat(result.exposure().histories()).isEqualTo(LossTally.TIMED_HISTORIES);
    assertThat(result.causes().get(0).share().value()).isEqualTo(1);
  }

  @Test
  void commonLossesStayPlain() {
    LayoutResult result = only(run(settings(Method.AUTO, 2), 2_000, 2_000));
    assertThat(result.method()).isEqualTo(Method.PLAIN);
    assertThat(result.doubts()).isEmpty();
  }

  /** With a cap, since plain histories would take long. */
  @ParameterizedTest
  @EnumSource
  void aMethodAskedForIsUsed(Method method) {
    Settings asked =
        new Settings(5, 0.95, 0.05, OptionalLong.of(10_000), Optional.empty(), 2, method);
    LayoutResult result = only(run(asked, 5e5, 5e5));
    assertThat(result.histories()).isEqualTo(10_000);
    assertThat(result.method() == Method.PLAIN).isEqualTo(method == Method.PLAIN);
  }

  @Test
  void threadsChangeNothing() {
    assertThat(run(settings(Method.AUTO, 3), 5e5, 5e5))
        .isEqualTo(run(settings(Method.AUTO, 1), 5e5, 5e5));
  }

  /**
   * Biased histories that miss what plain ones have seen are dropped; asked for, they are doubted.
   */
  @Test
  void biasedHistoriesThatContradictPlainOnesAreRefused() {
    Settings capped =
        new Settings(5, 0.95, 0.01, OptionalLong.of(50_000), Optional.empty(), 2, Method.AUTO);
    LayoutResult result = only(run(capped, 40_000, 4e6));
    assertThat(result.method()).isEqualTo(Method.PLAIN);
    assertThat(result.histories()).isEqualTo(50_000);
    assertThat(result.trusted()).isTrue();
    assertThat(result.notes()).singleElement().asString().contains("contradict each other");
    LayoutResult forced =
        only(
            run(
                new Settings(
                    5, 0.95, 0.01, OptionalLong.of(50_000), Optional.empty(), 2, Method.RARE),
                40_000,
                4e6));
    assertThat(forced.method()).isEqualTo(Method.RARE);
    assertThat(forced.trusted()).isFalse();
    assertThat(forced.doubts()).singleElement().asString().contains("contradict each other");
    assertThat(forced.precisionReached()).isFalse();
    assertThat(forced.anyLoss().high()).isGreaterThan(exact(40_000));
  }

  /**
   * What has no time to be biased is plain, and says so; and nobody says of histories that were
   * never simulated that they lost nothing. Red if the fall-back is silent.
   */
  @Test
  void tuningThatRunsOutOfTimeIsSaid() {
    Studio studio =
        Studios.archive(HOURS, CopyMaker.markov("main", Arrangement.MIRROR, 2, 5e5, REPAIR));
    StandIn standIn = new StandIn(2, 1, 1 / 5e5, 1 / REPAIR, 0, HOURS);
    LayoutResult result =
        only(
            Simulation.run(
                studio,
                within(Duration.ofMillis(600), Method.RARE),
                Progress.SILENT,
                layout -> seed -> slow(standIn.histories(seed), new AtomicLong())));
    assertThat(result.method()).isEqualTo(Method.PLAIN);
    assertThat(result.notes()).singleElement().asString().startsWith("There was no time");
    assertThat(result.doubts()).isEmpty();
  }

  /** Red if a lone layout leaves half of the time, for plain histories that nobody needs. */
  @Test
  void aLoneLayoutHasAllTheTime() {
    long began = System.nanoTime();
    LayoutResult result = only(run(within(Duration.ofSeconds(1), Method.RARE), 5e5, 5e5));
    assertThat(Duration.ofNanos(System.nanoTime() - began)).isGreaterThan(Duration.ofMillis(950));
    assertThat(result.precisionReached()).isFalse();
  }

  private static Settings within(Duration time, Method method) {
    return new Settings(5, 0.95, 1e-9, OptionalLong.empty(), Optional.of(time), 2, method);
  }

  /** Without a cap on time: red if what cannot be seen to lose is simulated for good. */
  @Test
  void whatNoBiasMakesLoseEnds() {
    LayoutResult result = only(run(settings(Method.AUTO, 2), 1e12, Double.POSITIVE_INFINITY));
    assertThat(result.notes()).singleElement().asString().startsWith("No history lost any");
    assertThat(result.trusted()).isTrue();
    assertThat(result.anyLoss().seen()).isFalse();
    assertThat(result.histories()).isBetween(1L << 22, 1L << 23);
  }

  /** The same where the scenario itself says so. */
  @ParameterizedTest
  @EnumSource
  void whatCannotLoseEndsAtOnce(Method method) {
    Studio studio = Studios.archive(HOURS, CopyMaker.single("main", new Never()));
    LayoutResult result = only(Simulation.run(studio, settings(method, 2), Progress.SILENT));
    assertThat(result.notes()).singleElement().asString().startsWith("Nothing in the file can");
    assertThat(result.precisionReached()).isTrue();
    assertThat(result.histories()).isBetween(1L << 18, 1L << 19);
    assertThat(result.anyLoss().high()).isBetween(5e-6, 1.2e-5); // about 3 / histories
  }

  /** Twenty biased histories say next to nothing, and that is what is said. */
  @Test
  void tooFewBiasedHistoriesAreDoubtedAndWide() {
    Settings few =
        new Settings(5, 0.95, 0.02, OptionalLong.of(20), Optional.empty(), 2, Method.RARE);
    LayoutResult result = only(run(few, 5e5, 5e5));
    assertThat(result.doubts()).singleElement().asString().contains("a few decide nearly all");
    assertThat(result.anyLoss().low()).isLessThan(exact(5e5));
    assertThat(result.anyLoss().high()).isGreaterThan(exact(5e5));
    assertThat(result.precisionReached()).isFalse();
  }

  /** Red if tuning goes on to its end, some thousands of histories later. */
  @Test
  void anInterruptionEndsTuning() {
    AtomicLong tuned = new AtomicLong();
    Studio studio =
        Studios.archive(HOURS, CopyMaker.markov("main", Arrangement.MIRROR, 2, 5e5, REPAIR));
    StandIn standIn = new StandIn(2, 1, 1 / 5e5, 1 / REPAIR, 0, HOURS);
    Progress interrupted =
        new Progress() {
          @Override
          public void merged(String layout, long histories, double precision, double share) {}

          @Override
          public boolean cancelled() {
            return tuned.get() > 0;
          }
        };
    Comparison result =
        Simulation.run(
            studio,
            settings(Method.RARE, 2),
            interrupted,
            layout -> seed -> slow(standIn.histories(seed), tuned));
    assertThat(result.finished()).isFalse();
    long piloted = only(result).histories();
    assertThat(piloted).isBetween(Pilot.HISTORIES, Pilot.HISTORIES + Chunk.SIZE);
    assertThat(tuned.get()).isLessThan(300);
  }

  /** Histories of a millisecond each. */
  private static Biasable slow(Biasable of, AtomicLong count) {
    return new Decorated(of) {
      @Override
      public void simulate(long number, Bias bias, Ledger to) {
        count.incrementAndGet();
        LockSupport.parkNanos(1_000_000);
        super.simulate(number, bias, to);
      }
    };
  }
}
