package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import org.junit.jupiter.api.Test;

/** Each reason not to trust biased histories, where it holds and where it just does not. */
class DoubtTest {

  private static final double[] ROWS = {1};
  private static final Thresholds ROW = new Thresholds(ROWS, ROWS, ROWS, 1);

  private final RareTally tally = new RareTally(ROW, 1);
  private LossTally plain = plain(0, 1);

  private static LossTally plain(int losses, int histories) {
    LossTally chunk = new LossTally(ROW);
    for (int i = 0; i < histories; i++) {
      chunk.begin(i);
      if (i < losses) {
        chunk.lost(OnePath.loss(1, false));
      }
      chunk.end();
    }
    LossTally all = new LossTally(ROW);
    all.merge(chunk);
    return all;
  }

  private void lose(int losses, double weight, int histories) {
    for (int i = 0; i < losses; i++) {
      tally.any.add(weight);
    }
    tally.any.addHistories(histories);
  }

  private String doubt() {
    Biasable one =
        new Decorated(OnePath.losing(1, new ArrayList<>())) {
          @Override
          public String channel(int index) {
            return "channel " + index + " came";
          }
        };
    return Doubt.of(tally, plain, one).orElse("");
  }

  @Test
  void noTimeIsNoDoubtOfLuck() {
    assertThat(doubt())
        .isEqualTo("There was no time to count any history that is biased towards losses.");
  }

  @Test
  void nothingWasLost() {
    lose(0, 1, 1_000);
    assertThat(doubt())
        .isEqualTo(
            "No history lost any footage, although failures and mishaps were made more frequent on"
                + " purpose.");
  }

  @Test
  void enoughAlikeLossesAreNotDoubted() {
    lose(30, .001, 1_000);
    assertThat(doubt()).isEmpty();
  }

  @Test
  void aFixedAgeHasNoWeight() {
    lose(200, .001, 1_000);
    tally.weightless = 1;
    assertThat(doubt())
        .isEqualTo(
            "Some drives reach a fixed age at which they fail for certain; histories that are"
                + " biased towards losses cannot be weighed then.");
  }

  /** A tenth of the chance of 0.0002 is 0.00002, of a thousand histories 0.02. */
  @Test
  void whatFewSawMayAddTooMuch() {
    lose(200, .001, 1_000);
    risk(.004, .0159);
    assertThat(doubt()).isEmpty();
    tally.channels = new Channels(2);
    risk(.004, .0161);
    assertThat(doubt())
        .isEqualTo(
            "Too few of the simulated histories saw that channel 1 came; that may add up to 1 in"
                + " 49,700 to the chance of a loss.");
  }

  private void risk(double first, double second) {
    tally.channels = new Channels(2);
    tally.channels.risked(0, first);
    tally.channels.risked(1, second);
    tally.channels.endHistory();
    tally.channels.addHistories(1_000);
  }

  /** Nine of 0.1 and one of 1: as many as 1.9²/1.09 = 3.3 equal ones, of which 1/1.9 is one. */
  @Test
  void aFewDecideNearlyAll() {
    lose(9, .1, 1_000);
    lose(1, 1, 0);
    assertThat(doubt())
        .isEqualTo(
            "Of the 10 simulated histories that lost footage a few decide nearly all of the figure"
                + " (they say no more than 3 equal ones would; one alone makes up 53 %), so the"
                + " true chance may lie far from it.");
  }

  @Test
  void plainHistoriesContradict() {
    lose(200, 1, 1_000);
    plain = plain(20, 100);
    assertThat(doubt()).isEmpty();
    plain = plain(2, 100);
    assertThat(doubt())
        .isEqualTo(
            "Two ways to estimate the chance contradict each other: of 100 histories as they fall 2"
                + " lost footage, which does not fit those that are biased towards losses.");
    plain = plain(60, 100);
    assertThat(doubt()).startsWith("Two ways to estimate the chance contradict each other");
  }
}
