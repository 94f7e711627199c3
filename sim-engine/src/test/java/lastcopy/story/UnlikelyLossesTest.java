package lastcopy.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import lastcopy.exact.MarkovChain;
import lastcopy.experiment.Progress;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Loss;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Studio;
import lastcopy.simulate.Agreement;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Studios;
import org.junit.jupiter.api.Test;

/** A mirror of exponential drives and repairs that loses about once in 10 million lives. */
class UnlikelyLossesTest {

  private static final double HOURS = 43_800;
  private static final double LIFE = 8_760 / 0.001;
  private static final double REPAIR = 72;

  private final Studio studio =
      Studios.archive(HOURS, CopyMaker.markov("main", Arrangement.MIRROR, 2, LIFE, REPAIR));

  private UnlikelyLosses losses() {
    return new UnlikelyLosses(studio, studio.layouts().get(0), 7);
  }

  /** Red if the story is told under another bias, seed or number than it says. */
  @Test
  void theLossesToldAreThoseOfTheLedger() {
    Story story = losses().first().orElseThrow();
    List<Loss> counted = new ArrayList<>();
    losses().history().orElseThrow().simulate(story.number(), new LossLog(counted));
    assertThat(counted).isNotEmpty().isEqualTo(story.losses());
    assertThat(lost(story))
        .isEqualTo(counted.stream().map(l -> List.of(l.hours(), l.bytes())).toList());
    assertThat(story.weight()).isCloseTo(counted.get(0).weight(), within(1e-9 * story.weight()));
    assertThat(story.weight()).isBetween(0.0, 1e-3);
  }

  @Test
  void itIsTheFirstAndANumberTellsTheSameAgain() {
    UnlikelyLosses one = losses();
    Story first = one.first().orElseThrow();
    for (long number = 0; number < first.number(); number++) {
      assertThat(one.tell(number).orElseThrow().losses()).isEmpty();
    }
    Story again = losses().tell(first.number()).orElseThrow();
    assertThat(again.moments())
        .extracting(Moment::happening)
        .isEqualTo(first.moments().stream().map(Moment::happening).toList());
    assertThat(again.weight()).isEqualTo(first.weight());
  }

  /**
   * Exact by the chain of the mirror; intervals of confidence 1 − 1e-6, so at that rate a false
   * alarm. Red if the chance is that of biased histories without their weights.
   */
  @Test
  void theChanceIsTheOneWithoutABias() {
    double exact =
        MarkovChain.row(new double[] {2 / LIFE, 1 / LIFE}, new double[] {1 / REPAIR})
            .chance(0, 2, HOURS);
    assertThat(exact).isBetween(5e-8, 5e-7);
    Estimate chance = losses().chance(1 - Agreement.ALARM, Progress.SILENT).anyLoss();
    assertThat(exact).as("%s", chance).isBetween(chance.low(), chance.high());
    assertThat(chance.relativeHalfWidth()).isLessThan(0.2);
  }

  /** A copy that nothing strikes loses under no bias. */
  @Test
  void nothingIsToldWhereNothingCanBeLost() {
    Studio safe = Studios.archive(1, CopyMaker.markov("main", Arrangement.MIRROR, 2, 1e300, 72));
    UnlikelyLosses none = new UnlikelyLosses(safe, safe.layouts().get(0), 7);
    assertThat(none.first()).isEmpty();
    assertThat(none.tell(0)).isEmpty();
  }

  private static List<List<Double>> lost(Story story) {
    return story.moments().stream()
        .filter(moment -> moment.kind() == Kind.LOST)
        .map(moment -> List.of(moment.happening().hours(), moment.happening().bytes()))
        .toList();
  }
}
