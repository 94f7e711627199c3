package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import lastcopy.history.Bias;
import lastcopy.history.Ledger;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Studio;
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
    assertThat(result.method()).isEqualTo(LayoutResult.Method.RARE);
    assertThat(result.precisionReached()).isTrue();
    assertThat(result.doubt()).isEmpty();
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
    assertThat(result.method()).isEqualTo(LayoutResult.Method.PLAIN);
    assertThat(result.doubt()).isEmpty();
  }

  /** With a cap, since plain histories would take long. */
  @ParameterizedTest
  @EnumSource
  void aMethodAskedForIsUsed(Method method) {
    Settings asked =
        new Settings(5, 0.95, 0.05, OptionalLong.of(10_000), Optional.empty(), 2, method);
    LayoutResult result = only(run(asked, 5e5, 5e5));
    assertThat(result.histories()).isEqualTo(10_000);
    assertThat(result.method() == LayoutResult.Method.PLAIN).isEqualTo(method == Method.PLAIN);
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
    assertThat(result.method()).isEqualTo(LayoutResult.Method.PLAIN);
    assertThat(result.histories()).isEqualTo(50_000);
    assertThat(result.doubt().orElseThrow()).startsWith("biased histories disagree with plain");
    LayoutResult forced =
        only(
            run(
                new Settings(
                    5, 0.95, 0.01, OptionalLong.of(50_000), Optional.empty(), 2, Method.RARE),
                40_000,
                4e6));
    assertThat(forced.method()).isEqualTo(LayoutResult.Method.RARE);
    assertThat(forced.doubt()).isPresent();
    assertThat(forced.precisionReached()).isFalse();
    assertThat(forced.anyLoss().high()).isGreaterThan(exact(40_000));
  }

  /** Twenty biased histories say next to nothing, and that is what is said. */
  @Test
  void tooFewBiasedHistoriesAreDoubtedAndWide() {
    Settings few =
        new Settings(5, 0.95, 0.02, OptionalLong.of(20), Optional.empty(), 2, Method.RARE);
    LayoutResult result = only(run(few, 5e5, 5e5));
    assertThat(result.doubt().orElseThrow()).contains("too uneven");
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
    return new Biasable() {
      @Override
      public int groups() {
        return of.groups();
      }

      @Override
      public int levels() {
        return of.levels();
      }

      @Override
      public int depth(int level) {
        return of.depth(level);
      }

      @Override
      public void simulate(long number, Bias bias, Ledger to) {
        count.incrementAndGet();
        LockSupport.parkNanos(1_000_000);
        of.simulate(number, bias, to);
      }

      @Override
      public double events(int group, int level) {
        return of.events(group, level);
      }

      @Override
      public double hazard(int group, int level) {
        return of.hazard(group, level);
      }

      @Override
      public double logOfTheRest() {
        return of.logOfTheRest();
      }
    };
  }
}
