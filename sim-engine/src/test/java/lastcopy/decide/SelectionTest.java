package lastcopy.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lastcopy.experiment.NothingSimulatedException;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.law.Exponential;
import lastcopy.law.Never;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.simulate.Studios;
import org.junit.jupiter.api.Test;

/** What a selection answers, stops at and tells of its figures. */
class SelectionTest {

  private static Settings settings(int threads) {
    return new Settings(1, 0.95, 0.2, OptionalLong.empty(), Optional.empty(), threads);
  }

  private static ExactFamily family() {
    return new ExactFamily()
        .single(0.3, 60)
        .single(0.1, 100)
        .single(0.2, 140)
        .mirror(0.05, 20, 120)
        .mirror(0.3, 20, 150);
  }

  @Test
  void answersWithTheirFigures() {
    ExactFamily family = family();
    Advice advice = Selection.run(family.question(0.12, 200), settings(2), Progress.SILENT);
    assertThat(advice.finished()).isTrue();
    assertThat(advice.cheapestUnderTarget()).contains("single-1");
    assertThat(advice.safestWithinBudget()).contains("single-1");
    assertThat(advice.safest()).contains("mirror-3");
    assertThat(advice.front()).containsExactly("single-0", "single-1", "mirror-3");
    assertThat(advice.of("single-2").beaten()).isTrue();
    assertThat(advice.of("mirror-3").biased()).isTrue();
    assertThat(advice.openQuestions()).isEmpty();
    for (String id : advice.front()) {
      assertThat(advice.of(id).anyLoss().low()).isLessThan(family.of(id).chance());
      assertThat(advice.of(id).anyLoss().high()).isGreaterThan(family.of(id).chance());
      assertThat(advice.of(id).anyLoss().relativeHalfWidth()).isLessThan(0.2);
    }
  }

  /** Red if a step is told from the wrong side, or if costs are not those of the two layouts. */
  @Test
  void aStepIsTheDifferenceOfItsTwoLayouts() {
    ExactFamily family = family();
    Advice advice = Selection.run(family.question(0.12, 200), settings(2), Progress.SILENT);
    assertThat(advice.steps()).hasSize(2);
    for (Advice.NextStep step : advice.steps()) {
      ExactFamily.Exact from = family.of(step.from());
      ExactFamily.Exact to = family.of(step.to());
      assertThat(to.chance() - from.chance())
          .isBetween(step.difference().low(), step.difference().high());
      assertThat(to.cost() - from.cost())
          .isBetween(
              step.costDifference().orElseThrow().low(),
              step.costDifference().orElseThrow().high());
      assertThat(step.difference().value())
          .isCloseTo(
              advice.of(step.to()).anyLoss().value() - advice.of(step.from()).anyLoss().value(),
              within(1e-12));
    }
    assertThat(advice.fromToday()).extracting(Advice.NextStep::to).contains("mirror-3", "single-1");
  }

  @Test
  void theSameOnAnyNumberOfThreads() {
    Question question = family().question(0.12, 200);
    assertThat(Selection.run(question, settings(3), Progress.SILENT))
        .isEqualTo(Selection.run(question, settings(1), Progress.SILENT));
  }

  @Test
  void whereNoneKeepsTheTargetNothingIsPicked() {
    Advice advice = Selection.run(family().question(1e-12, 1), settings(2), Progress.SILENT);
    assertThat(advice.cheapestUnderTarget()).isEmpty();
    assertThat(advice.safestWithinBudget()).isEmpty();
    assertThat(advice.safest()).contains("mirror-3");
  }

  @Test
  void withoutPricesTheSafestIsTheFront() {
    ExactFamily family = new ExactFamily().single(0.3, 0).single(0.02, 0).single(0.1, 0);
    Advice advice = Selection.run(family.question(0.12, 0), settings(2), Progress.SILENT);
    assertThat(advice.front()).containsExactly("single-1");
    assertThat(advice.of("single-1").cost()).isEmpty();
    assertThat(advice.fromToday().get(0).costDifference()).isEmpty();
  }

  @Test
  void whatCannotLoseIsTheSafestWithoutAHistoryMore() {
    Studio studio =
        Studio.builder("test", 5)
            .footage(Studios.onHand(Units.TB))
            .layout(drive("often", 0.1))
            .layout(drive("never", 0))
            .build();
    Question question =
        new Question(studio, studio.layouts(), OptionalDouble.empty(), OptionalDouble.empty());
    Advice advice = Selection.run(question, settings(2), Progress.SILENT);
    assertThat(advice.safest()).contains("never");
    assertThat(advice.of("never").anyLoss().high()).isZero();
    assertThat(advice.of("never").histories()).isLessThanOrEqualTo(1_024);
    assertThat(advice.openQuestions()).isEmpty();
  }

  private static Layout drive(String id, double perYear) {
    DriveModel model =
        DriveModel.builder("drive", 2 * Units.TB)
            .fails(perYear > 0 ? Exponential.ofYearlyProbability(perYear) : new Never())
            .build();
    return Layout.of(
        id,
        Copy.builder("main")
            .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
            .build());
  }

  /** Stops at the n-th telling. */
  private static Progress stopsAt(int tellings) {
    return new Progress() {
      private int told;

      @Override
      public void merged(String layout, long histories, double precision, double share) {
        told++;
      }

      @Override
      public boolean cancelled() {
        return told >= tellings;
      }
    };
  }

  @Test
  void anInterruptionKeepsWhatWasLookedAt() {
    Advice advice = Selection.run(family().question(0.12, 200), settings(1), stopsAt(2));
    assertThat(advice.finished()).isFalse();
    assertThat(advice.candidates())
        .extracting(Advice.Candidate::histories)
        .isEqualTo(List.of(1_024L, 1_024L, 0L, 0L, 0L));
    assertThat(advice.front()).isNotEmpty();
  }

  @Test
  void anInterruptionBeforeAnythingWasDoneSaysSo() {
    assertThatThrownBy(() -> Selection.run(family().question(0.12, 200), settings(1), stopsAt(0)))
        .isInstanceOf(NothingSimulatedException.class);
  }

  @Test
  void theTimeEndsItWithWhatIsOpen() {
    Settings settings =
        new Settings(1, 0.95, 1e-4, OptionalLong.empty(), Optional.of(Duration.ofMillis(400)), 2);
    long began = System.nanoTime();
    Advice advice = Selection.run(family().question(0.12, 200), settings, Progress.SILENT);
    assertThat(System.nanoTime() - began).isLessThan(20_000_000_000L);
    assertThat(advice.finished()).isTrue();
    assertThat(advice.front()).isNotEmpty();
  }

  @Test
  void aCapOnHistoriesHolds() {
    Settings settings = new Settings(1, 0.95, 1e-4, OptionalLong.of(700), Optional.empty(), 2);
    Advice advice = Selection.run(family().question(0.12, 200), settings, Progress.SILENT);
    assertThat(advice.candidates()).allMatch(each -> each.histories() == 700);
    assertThat(advice.openQuestions()).isNotEmpty();
  }
}
