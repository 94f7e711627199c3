package lastcopy.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import lastcopy.experiment.Progress;
import lastcopy.history.History;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Loss;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Studios;
import lastcopy.simulate.TwoCopies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Stories are the histories that are counted; nothing here is left to chance. */
class StoriesTest {

  private static final long SEED = 7;
  private static final int HISTORIES = 60;

  private static Stories stories(Studio studio) {
    return new Stories(studio, studio.layouts().get(0), SEED);
  }

  private static List<Loss> counted(Studio studio, long number) {
    List<Loss> losses = new ArrayList<>();
    new History(studio, studio.layouts().get(0), SEED).simulate(number, new LossLog(losses));
    return losses;
  }

  private static List<List<Object>> told(Story story) {
    return story.moments().stream()
        .filter(moment -> moment.kind() == Kind.LOST)
        .map(Moment::happening)
        .map(it -> List.<Object>of(it.hours(), it.bytes(), it.subject()))
        .toList();
  }

  /** Red if a story is told of another number than it says, or with luck of its own. */
  @ParameterizedTest
  @ValueSource(strings = {"nightly", "lagging", "continuous", "chain", "alone", "mirror"})
  void theLossesToldAreTheLossesCounted(String kind) {
    Studio studio = TwoCopies.studio(kind);
    Stories stories = stories(studio);
    long lossy = 0;
    for (long k = 0; k < HISTORIES; k++) {
      Story story = stories.tell(k);
      List<Loss> counted = counted(studio, k);
      assertThat(story.losses()).isEqualTo(counted);
      assertThat(told(story))
          .isEqualTo(
              counted.stream()
                  .map(l -> List.<Object>of(l.hours(), l.bytes(), l.cause().sentence()))
                  .toList());
      lossy += counted.isEmpty() ? 0 : 1;
    }
    assertThat(lossy).isPositive();
  }

  @Test
  void aNumberAlwaysTellsTheSame() {
    Stories stories = stories(TwoCopies.studio("chain"));
    Story first = stories.tell(5);
    stories.tell(6);
    Story again = stories.tell(5);
    assertThat(again.moments())
        .extracting(Moment::happening)
        .isEqualTo(first.moments().stream().map(Moment::happening).toList());
    assertThat(again.moments().stream().map(m -> m.scene().heldBytes()))
        .containsExactlyElementsOf(
            first.moments().stream().map(m -> m.scene().heldBytes()).toList());
  }

  /** Red if a block is skipped, or a later block's loss is taken for the first. */
  @Test
  void theFirstLossIsTheFirstAndNoneIsBoundedHonestly() {
    Layout mirror =
        Studios.layout("mirror", CopyMaker.markov("main", Arrangement.MIRROR, 2, 50_000, 72));
    Studio studio = Studios.of(8_760, Studios.onHand(1e12), mirror);
    History history = new History(studio, mirror, SEED);
    List<Loss> losses = new ArrayList<>();
    long first = -1;
    while (losses.isEmpty()) {
      history.simulate(++first, new LossLog(losses));
    }
    LossSearch found = stories(studio).firstLoss(SearchLimit.histories(1_000_000), Progress.SILENT);
    assertThat(found.number()).hasValue(first);
    assertThat(found.searched()).isEqualTo(first + 1);

    LossSearch none = stories(studio).firstLoss(SearchLimit.histories(first), Progress.SILENT);
    assertThat(none.number()).isEmpty();
    assertThat(none.searched()).isEqualTo(first);
    // The exact one-sided limit: (1 - p)^n = 5 %.
    double high = none.chanceIfNone(0.95).high();
    assertThat(StrictMath.pow(1 - high, (double) first)).isCloseTo(0.05, within(1e-9));
  }

  /** Red if the survey counts an eventless history, forgets one or mixes up the order. */
  @Test
  void aSurveyKeepsEveryHistoryInWhichSomethingHappened() {
    Studio studio = TwoCopies.studio("mirror");
    Stories stories = stories(studio);
    Survey survey = stories.survey(SearchLimit.histories(HISTORIES), Progress.SILENT);
    assertThat(survey.searched()).isEqualTo(HISTORIES);
    List<Long> eventful =
        LongStream.range(0, HISTORIES)
            .filter(k -> stories.tell(k).moments().stream().anyMatch(m -> !m.routine()))
            .boxed()
            .toList();
    assertThat(survey.lives()).extracting(Life::number).isEqualTo(eventful);
    long losing = LongStream.range(0, HISTORIES).filter(k -> !counted(studio, k).isEmpty()).count();
    assertThat(survey.losing()).isEqualTo(losing).isPositive();
  }

  @Test
  void anInterruptedSearchSaysSo() {
    Progress interrupted =
        new Progress() {
          @Override
          public void merged(String layout, long histories, double precision, double share) {}

          @Override
          public boolean cancelled() {
            return true;
          }
        };
    Layout quiet = Studios.layout("quiet", CopyMaker.set("main", Arrangement.MIRROR, 2));
    Studio studio = Studios.of(8_760, Studios.onHand(1e12), quiet);
    LossSearch found = stories(studio).firstLoss(SearchLimit.histories(1_000_000_000), interrupted);
    assertThat(found.finished()).isFalse();
    assertThat(found.searched()).isPositive().isLessThan(1_000_000_000);
  }
}
