package lastcopy.cli.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.LongStream;
import lastcopy.cli.Written;
import lastcopy.experiment.Progress;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.story.SearchLimit;
import lastcopy.story.Stories;
import lastcopy.story.UnlikelyLosses;
import lastcopy.words.ByteUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How a life was chosen is told as it was, of studios that lose nothing, everything, or some. */
class StoryChoiceTest {

  private static final String YAML =
      """
      lastcopy: 1
      studio: A
      years: 5
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 10 GB}}
      drives: {d: {size: 8 TB, fails: FAILS}}
      layouts:
        one: {copies: {main: COPY}}
      """;

  private static final String ONE = "{drives: 1 x d, noticed: 1 day, wait: 2 days}";

  /** A drive that cannot fail. */
  private static final Studio QUIET = studio("0 %/year", ONE);

  /** One that lasts four days on average. */
  private static final Studio DOOMED = studio("{mean: 100 h}", ONE);

  private static final SearchLimit TEN = SearchLimit.histories(10);

  private static final Progress STOPPED =
      new Progress() {
        @Override
        public void merged(String layout, long histories, double precision, double share) {
          // nobody watches
        }

        @Override
        public boolean cancelled() {
          return true;
        }
      };

  private static Studio studio(String fails, String copy) {
    return Written.of(YAML.replace("FAILS", fails).replace("COPY", copy)).studio();
  }

  private static Stories stories(Studio studio, long seed) {
    return new Stories(studio, studio.layouts().get(0), seed);
  }

  private static StoryChoice choice(Studio studio, long seed, Progress watch) {
    Layout layout = studio.layouts().get(0);
    return new StoryChoice(stories(studio, seed), new UnlikelyLosses(studio, layout, seed), watch);
  }

  private static StoryChoice choice(Studio studio) {
    return choice(studio, 1, Progress.SILENT);
  }

  private static long number(Told told) {
    return told.story().orElseThrow().number();
  }

  private static boolean loses(Studio studio, long seed, long number) {
    return !stories(studio, seed).tell(number).losses().isEmpty();
  }

  @Test
  void oneThatWasAskedForByItsNumber() {
    Told told = choice(DOOMED).history(7);
    assertThat(number(told)).isEqualTo(7);
    assertThat(told.how()).containsExactly("It was asked for by its number.");
    assertThat(told.selector()).isEqualTo("history");
    assertThat(told.finished()).isTrue();
    assertThat(told.biased()).isFalse();
  }

  /** Each before it, told by its number, loses nothing. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void theFirstThatLoses(long seed) {
    Studio some = studio("8 %/year", ONE);
    Told told = choice(some, seed, Progress.SILENT).firstLoss(SearchLimit.histories(1_000));
    long first = number(told);
    assertThat(loses(some, seed, first)).isTrue();
    assertThat(LongStream.range(0, first)).noneMatch(n -> loses(some, seed, n));
    String before = first == 1 ? "the one" : "the " + first;
    assertThat(told.how())
        .containsExactly(
            first == 0
                ? "It is the very first history, and it loses footage."
                : "It is the first that loses footage; " + before + " before it lost nothing.");
    assertThat(told.searched()).isEqualTo(first + 1);
    assertThat(choice(some, seed, Progress.SILENT).any(TEN).how()).isEqualTo(told.how());
  }

  /** 1 − 0.05^(1/50) is 58.2 of 1,000, rounded up; a drive that cannot fail has no bias. */
  @Test
  void noneThatLoses() {
    Told told = choice(QUIET).firstLoss(SearchLimit.histories(50));
    assertThat(told.story()).isEmpty();
    assertThat(told.selector()).isEqualTo("first-loss");
    assertThat(told.searched()).isEqualTo(50);
    assertThat(told.finished()).isTrue();
    assertThat(told.how())
        .containsExactly(
            "None of 50 histories loses anything: at most 59 of 1,000 studios lose any (95 % sure,"
                + " one-sided).",
            "--near-miss tells the plain history in which a loss was nearest.");
    Told plain = choice(QUIET).biased(3);
    assertThat(number(plain)).isEqualTo(3);
    assertThat(plain.biased()).isFalse();
    assertThat(plain.how())
        .containsExactly(
            "It was asked for by its number.", "It is a plain one: no bias of it leads to a loss.");
  }

  /** Without a loss in a short search the near miss is told, after what the search found. */
  @Test
  void withoutAChoiceItIsTheFirstLossOrANearMiss() {
    Told told = choice(QUIET).any(TEN);
    assertThat(told.how()).hasSize(2);
    assertThat(told.how().get(0)).startsWith("None of ").contains(" histories loses anything: ");
    assertThat(told.how().get(1)).isEqualTo(choice(QUIET).nearMiss(TEN).how().get(0));
    assertThat(told.selector()).isEqualTo("near-miss");
    assertThat(told.finished()).isTrue();
    assertThat(number(told)).isZero();
  }

  @Test
  void anInterruptedSearchTellsNothing() {
    Told told = choice(QUIET, 1, STOPPED).any(TEN);
    assertThat(told.story()).isEmpty();
    assertThat(told.finished()).isFalse();
    assertThat(told.how()).hasSize(1);
    assertThat(choice(QUIET, 1, STOPPED).firstLoss(TEN).finished()).isFalse();
  }

  @Test
  void aTypicalOneOfThoseWhereNothingHappens() {
    Told told = choice(QUIET).typical(TEN);
    assertThat(told.how())
        .containsExactly(
            "Of the first 10 histories, 10 had no mishap and no failure at all, and 0 lost footage.",
            "So the first of them is told.",
            "Typical means no more than that: it is not a forecast.");
    assertThat(number(told)).isZero();
    assertThat(told.selector()).isEqualTo("typical");
  }

  @Test
  void aTypicalOneOfThoseThatLose() {
    Told told = choice(DOOMED).typical(TEN);
    String lost = ByteUnit.format(told.story().orElseThrow().lostBytes());
    assertThat(told.how())
        .containsExactly(
            "Of the first 10 histories, 0 had no mishap and no failure at all, and 10 lost footage.",
            "Of the 10 in which something went wrong, most lost footage, and of those this one lost"
                + " the median amount, "
                + lost
                + ".",
            "Typical means no more than that: it is not a forecast.");
  }

  /** Three drives that fail now and then, and never all at once. */
  @Test
  void aTypicalOneOfThoseThatLoseNothing() {
    Studio mirror =
        studio("40 %/year", ONE.replace("1 x d", "3 x d, arrangement: mirror, rebuild: 1 h"));
    Told told = choice(mirror).typical(TEN);
    long happenings =
        told.story().orElseThrow().moments().stream().filter(m -> !m.routine()).count();
    assertThat(told.how())
        .contains(
            "Of the first 10 histories, 0 had no mishap and no failure at all, and 0 lost footage.",
            "Of the 10 in which something went wrong, most lost nothing, and of those this one has"
                + " the median number of happenings, "
                + happenings
                + ".");
  }

  private static String nearMiss(Studio studio) {
    Told told = choice(studio).nearMiss(TEN);
    assertThat(told.selector()).isEqualTo("near-miss");
    assertThat(told.how()).hasSize(1);
    return told.how().get(0);
  }

  /** Those that lose are counted one by one, by their numbers. */
  @Test
  void thoseThatLoseAreNoNearMisses() {
    Studio some = studio("20 %/year", ONE);
    long losing = LongStream.range(0, 10).filter(n -> loses(some, 1, n)).count();
    assertThat(losing).isBetween(1L, 9L);
    assertThat(nearMiss(some))
        .startsWith(
            "Of the " + (10 - losing) + " among the first 10 histories that lost nothing, ");
  }

  @Test
  void theNearestMiss() {
    String among = "Of the 10 among the first 10 histories that lost nothing, ";
    assertThat(nearMiss(QUIET))
        .isEqualTo(among + "none had a mishap or a failure: the first is told.");
    String mirror = ONE.replace("1 x d", "3 x d, arrangement: mirror, rebuild: 1 h");
    assertThat(nearMiss(studio("40 %/year", mirror)))
        .isEqualTo(
            among
                + "it is the one in which a loss was nearest: the fewest further failures away, then"
                + " the soonest that the only copy was struck after all, then the most footage in"
                + " one copy only, times hours.");
    String far = ", far: {drives: 1 x safe, noticed: 1 day, feed: {from: main, continuous: true}}";
    String both = YAML.replace("COPY", mirror + far);
    Studio fed =
        Written.of(both.replace("FAILS}", "40 %/year}, safe: {size: 8 TB, fails: 0 %/year}"))
            .studio();
    assertThat(nearMiss(fed))
        .as("the other copy holds it all")
        .isEqualTo(
            among
                + "none left half of the footage or more in one copy only after something failed: the"
                + " one with the most happenings is told.");
  }

  /** Where each history loses there is none, and no other is told in its stead. */
  @Test
  void noNearMissWhereEachLoses() {
    Told told = choice(studio("99.9999 %/year", ONE)).nearMiss(TEN);
    assertThat(told.story()).isEmpty();
    assertThat(told.how())
        .containsExactly("Each of the first 10 histories lost footage: none is a near miss.");
    Studio most = studio("40 %/year", ONE);
    assertThat(loses(most, 1, 0)).as("the very first loses").isTrue();
    Told quiet = choice(most).nearMiss(TEN);
    assertThat(quiet.how().get(0)).endsWith("none had a mishap or a failure: the first is told.");
    assertThat(loses(most, 1, number(quiet))).isFalse();
  }

  @Test
  void aBiasedOneSaysHowRareItIs() {
    Told told = choice(studio("1 %/year", ONE)).biased(0);
    assertThat(told.biased()).isTrue();
    assertThat(told.finished()).isTrue();
    assertThat(told.selector()).isEqualTo("history");
    assertThat(told.how()).hasSizeGreaterThan(2).startsWith("It was asked for by its number.");
    assertThat(told.how().get(2))
        .contains("the chance of losing any footage over 5 years is 1 in ");
    // One drive that fails with 1 % a year: 1 - 0.99^5. The interval is of 95 %, 1.96 standard
    // errors to each side; 2.5 times as much is passed once in a million.
    Estimate chance = told.chance().orElseThrow();
    double half = (chance.high() - chance.low()) / 2;
    assertThat(chance.value()).isCloseTo(1 - Math.pow(0.99, 5), within(2.5 * half));
    assertThat(choice(studio("1 %/year", ONE), 1, STOPPED).biased(0).finished()).isFalse();
    assertThat(told.inTheMiddle().how().get(told.how().size()))
        .startsWith("Some rates are not known: this is a life in the world");
  }
}
