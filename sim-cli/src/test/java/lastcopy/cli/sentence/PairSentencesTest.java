package lastcopy.cli.sentence;

import static lastcopy.cli.compare.SampleComparison.layout;
import static lastcopy.cli.compare.SampleComparison.none;
import static lastcopy.cli.compare.SampleComparison.pair;
import static lastcopy.cli.compare.SampleComparison.seen;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Comparison.Pair;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;

/** Two layouts against each other, of results made by hand: 70 and 35 of 1,000 lose footage. */
class PairSentencesTest {

  private static final LayoutResult A = layout("a", "A", seen(0.07, 0.002), true);
  private static final LayoutResult B = layout("b", "B", seen(0.035, 0.001), true);
  private static final Estimate MORE = seen(0.035, 0.002);
  private static final String BOTH =
      "Over 5 years, \"A\" loses footage in 70 of 1,000 studios and \"B\" in 35";
  private static final String NO_DIFFERENCE =
      "Over 5 years, no difference could be shown between \"A\" (70 of 1,000 studios) and \"B\""
          + " (35).";

  private static OptionalDouble times(double ratio) {
    return OptionalDouble.of(ratio);
  }

  private static String said(Pair pair) {
    Comparison result =
        new Comparison("s", 5, Optional.of("EUR"), 1, 0.95, true, List.of(A, B), List.of(pair));
    List<String> sentences = PairSentences.of(result, new OutOf(1_000), true);
    assertThat(sentences).hasSize(1);
    return sentences.get(0);
  }

  private static String said(
      OptionalDouble ratio, OptionalDouble low, OptionalDouble high, Estimate difference) {
    return said(pair("a", "b", ratio, low, high, difference));
  }

  private static Pair at(Pair pair, Estimate cost) {
    return new Pair(
        pair.a(),
        pair.b(),
        pair.ratio(),
        pair.ratioLow(),
        pair.ratioHigh(),
        pair.difference(),
        pair.pairedHistories(),
        Optional.of(cost));
  }

  /** The price of the safer one, whichever the pair names first; of the second if neither is. */
  @Test
  void theSaferOneHasItsPrice() {
    Pair worseFirst = pair("a", "b", times(2), times(1.9), times(2.1), MORE);
    String lose = BOTH + ": 35 more (33 to 37), 2.0 times as often (1.9 to 2.1).";
    assertThat(said(worseFirst)).isEqualTo(lose);
    assertThat(said(at(worseFirst, seen(-90, 2))))
        .isEqualTo(lose + " \"B\" costs EUR 90 (88 to 92) more.");
    assertThat(said(at(worseFirst, seen(90, 2))))
        .isEqualTo(lose + " \"B\" costs EUR 90 (88 to 92) less.");
    Pair betterFirst = pair("b", "a", times(0.5), times(1 / 2.1), times(1 / 1.9), MORE.negated());
    assertThat(said(at(betterFirst, seen(90, 2))))
        .isEqualTo(lose + " \"B\" costs EUR 90 (88 to 92) more.");
    Pair alike =
        pair("a", "b", times(1.1), times(0.9), times(1.3), new Estimate(-0.001, -0.01, 0.01, true));
    assertThat(said(at(alike, seen(-90, 2))))
        .isEqualTo(NO_DIFFERENCE + " \"B\" costs EUR 90 (88 to 92) more.");
  }

  /** A ratio of which one end is 1 may be 1; without one, a difference that may be 0. */
  @Test
  void whatMayBeChanceIsNoDifference() {
    assertThat(said(times(1.1), times(1), times(1.2), MORE)).isEqualTo(NO_DIFFERENCE);
    assertThat(said(times(0.9), times(0.8), times(1), MORE.negated())).isEqualTo(NO_DIFFERENCE);
    assertThat(said(times(1.1), times(1.01), times(1.2), MORE)).startsWith(BOTH);
    assertThat(said(none(), none(), none(), new Estimate(0.001, 0, 0.002, true)))
        .isEqualTo(NO_DIFFERENCE);
    assertThat(said(none(), none(), none(), new Estimate(-0.001, -0.002, 0, true)))
        .isEqualTo(NO_DIFFERENCE);
    assertThat(said(none(), times(2), none(), MORE))
        .isEqualTo(BOTH + ": 35 more (33 to 37), at least 2 times as often.");
    assertThat(said(none(), none(), times(0.5), new Estimate(-0.001, -0.003, 0.001, true)))
        .as("one end alone is no ratio")
        .isEqualTo(NO_DIFFERENCE);
    assertThat(said(none(), none(), none(), MORE)).isEqualTo(BOTH + ": 35 more (33 to 37).");
  }

  /** 4 of 10,000 make no studio of 1,000, so only how many times is told. */
  @Test
  void lessThanOneStudioIsToldInTimesOnly() {
    assertThat(said(times(2), times(1.5), times(2.5), seen(0.0004, 0.0001)))
        .isEqualTo(BOTH + ", 2.0 times as often (1.5 to 2.5).");
  }

  @Test
  void ofMoreThanAMillionTimesNobodyHasAnIdea() {
    String more = BOTH + ": 35 more (33 to 37), ";
    assertThat(said(times(1e6), times(9e5), times(1.1e6), MORE))
        .isEqualTo(more + "1,000,000 times as often (900,000 to 1,100,000).");
    assertThat(said(times(1.01e6), times(9e5), times(1.1e6), MORE))
        .isEqualTo(more + "over a million times as often.");
    assertThat(said(none(), times(1e6), none(), MORE))
        .isEqualTo(more + "at least 1,000,000 times as often.");
    assertThat(said(none(), times(1.01e6), none(), MORE))
        .isEqualTo(more + "at least over a million times as often.");
    assertThat(said(times(2), none(), none(), MORE)).isEqualTo(more + "2 times as often.");
  }
}
