package lastcopy.cli.sentence;

import static lastcopy.cli.compare.SampleComparison.layout;
import static lastcopy.cli.compare.SampleComparison.none;
import static lastcopy.cli.compare.SampleComparison.pair;
import static lastcopy.cli.compare.SampleComparison.seen;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lastcopy.cli.compare.SampleComparison;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Comparison.Pair;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;

/** The first sentence of a report is true of results made by hand, and only of them. */
class AnswerTest {

  private static final OutOf THOUSAND = new OutOf(1_000);
  private static final LayoutResult DRIVE = layout("drive", "Drive", seen(0.07, 0.002), true);
  private static final LayoutResult MIRROR = layout("mirror", "Mirror", seen(0.008, 0.0004), true);
  private static final LayoutResult FAR = layout("far", "Far", seen(0.0081, 0.0004), true);

  @Test
  void theSafestIsNamedWithHowManyFewerThanWithTheFirst() {
    assertThat(answer(List.of(DRIVE, MIRROR), more("drive", "mirror", 0.062, 0.002)))
        .contains(
            "Safest here: \"Mirror\". Of 1,000 studios like yours, 8.0 lose footage within 5 years,"
                + " 62 fewer (60 to 64) than with \"Drive\".");
  }

  /** The price of the step, seen from the safest; red if its sign is that of the pair. */
  @Test
  void theStepHasItsPrice() {
    Pair free = more("drive", "mirror", 0.062, 0.002);
    Pair pair =
        new Pair(
            free.a(),
            free.b(),
            free.ratio(),
            free.ratioLow(),
            free.ratioHigh(),
            free.difference(),
            free.pairedHistories(),
            Optional.of(seen(-90, 2)));
    assertThat(answer(List.of(DRIVE, MIRROR), pair).orElseThrow())
        .endsWith("than with \"Drive\". It costs 90 (88 to 92) more.");
    assertThat(answer(List.of(DRIVE, MIRROR), free).orElseThrow()).endsWith("\"Drive\".");
  }

  /** Where the first is the safest, it stands against the next best; pairs in either order. */
  @Test
  void theFirstIsComparedWithTheNextBest() {
    assertThat(
            answer(
                List.of(MIRROR, DRIVE, FAR),
                more("mirror", "drive", -0.062, 0.002),
                more("mirror", "far", -0.004, 0.001),
                more("drive", "far", 0.058, 0.002)))
        .contains(
            "Safest here: \"Mirror\". Of 1,000 studios like yours, 8.0 lose footage within 5 years,"
                + " 4 fewer (3 to 5) than with \"Far\", the next best.");
  }

  /** Red if the smaller figure is called safer though chance may have made it so. */
  @Test
  void whatChanceMayHaveMadeIsNoAnswer() {
    assertThat(
            answer(
                List.of(DRIVE, MIRROR, FAR),
                more("drive", "mirror", 0.062, 0.002),
                more("drive", "far", 0.062, 0.002),
                more("mirror", "far", -0.0001, 0.0006)))
        .contains(
            "No layout is shown to be the safest: between \"Mirror\" and \"Far\" the simulation finds"
                + " no difference that could not be chance. All others lose footage more often.");
  }

  /** A range that begins at none is one that chance may have made. */
  @Test
  void aRangeThatBeginsAtNoneShowsNothing() {
    Pair touching =
        pair("drive", "mirror", none(), none(), none(), new Estimate(0.002, 0, 0.004, true));
    assertThat(answer(List.of(DRIVE, MIRROR), touching).orElseThrow())
        .startsWith("No layout is shown to be the safest")
        .endsWith("no difference that could not be chance.");
  }

  @Test
  void noneIsTheSafestWhileOneIsNotTrusted() {
    assertThat(answer(List.of(DRIVE, doubted(MIRROR)), more("drive", "mirror", 0.062, 0.002)))
        .contains(
            "Which layout is safest cannot be told: the figures of \"Mirror\" are not to be trusted,"
                + " as said below.");
  }

  @Test
  void neverSeenIsAtMost() {
    LayoutResult never = layout("never", "Never", new Estimate(0, 0, 3e-5, false), false);
    Pair pair =
        pair("drive", "never", none(), SampleComparison.of(2300), none(), seen(0.07, 0.002));
    assertThat(answer(List.of(DRIVE, never), pair))
        .contains(
            "Safest here: \"Never\". Of 1,000 studios like yours, fewer than 1 loses footage within 5"
                + " years, 70 fewer (68 to 72) than with \"Drive\".");
  }

  /** Red if pairs are told against a layout that only happens to have the least figure. */
  @Test
  void whereNoneIsTheSafestEachStandsAgainstTheFirst() {
    List<LayoutResult> layouts = List.of(DRIVE, MIRROR, FAR);
    Pair worse = more("drive", "mirror", 0.062, 0.002);
    Pair alsoWorse = more("drive", "far", 0.062, 0.002);
    assertThat(
            Answer.anchor(
                result(layouts, worse, alsoWorse, more("mirror", "far", -0.0001, 0.0006))))
        .isEqualTo(DRIVE);
    assertThat(
            Answer.anchor(result(layouts, worse, alsoWorse, more("mirror", "far", -0.002, 0.0006))))
        .isEqualTo(MIRROR);
  }

  @Test
  void oneLayoutAloneIsNoChoice() {
    assertThat(answer(List.of(DRIVE))).isEmpty();
    assertThat(Answer.isSafest(result(List.of(DRIVE)), DRIVE)).isFalse();
    Comparison two = result(List.of(DRIVE, MIRROR), more("drive", "mirror", 0.062, 0.002));
    assertThat(Answer.isSafest(two, MIRROR)).isTrue();
    assertThat(Answer.isSafest(two, DRIVE)).isFalse();
  }

  private static Pair more(String a, String b, double difference, double half) {
    return pair(
        a,
        b,
        SampleComparison.of(1),
        SampleComparison.of(1),
        SampleComparison.of(1),
        seen(difference, half));
  }

  private static Optional<String> answer(List<LayoutResult> layouts, Pair... pairs) {
    return Answer.of(result(layouts, pairs), THOUSAND);
  }

  private static Comparison result(List<LayoutResult> layouts, Pair... pairs) {
    return new Comparison("s", 5, Optional.empty(), 1, 0.95, true, layouts, List.of(pairs));
  }

  private static LayoutResult doubted(LayoutResult of) {
    return SampleComparison.doubted(of, List.of("Few decide."), List.of());
  }
}
