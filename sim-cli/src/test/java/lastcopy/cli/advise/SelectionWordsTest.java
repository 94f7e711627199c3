package lastcopy.cli.advise;

import static lastcopy.cli.advise.MadeAdvice.BEST;
import static lastcopy.cli.advise.MadeAdvice.MIRROR;
import static lastcopy.cli.advise.MadeAdvice.USUAL;
import static lastcopy.cli.advise.MadeAdvice.WORST;
import static lastcopy.cli.compare.SampleComparison.seen;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lastcopy.charts.CostRiskChart;
import lastcopy.cli.Ran;
import lastcopy.decide.Advice.About;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of the selection itself: what was weighed, what is settled and how surely. */
class SelectionWordsTest {

  private final MadeAdvice made = new MadeAdvice();

  @Test
  void layoutsAndCombinationsAreCounted() {
    assertThat(made.words())
        .contains(
            "What the file leaves open makes 4 layouts. 4 more combinations are no valid layout"
                + " (--impossible tells why). Not counted")
        .doesNotContain("left early", "leaves nothing open");
    made.candidates.replaceAll(each -> each.id().equals(USUAL) ? MadeAdvice.leftEarly(each) : each);
    assertThat(made.words())
        .contains("1 layout was left early, since another surely costs no more and surely loses");
    made.candidates.replaceAll(each -> each.id().equals(BEST) ? MadeAdvice.leftEarly(each) : each);
    assertThat(made.words()).contains("2 layouts were left early, since");
    assertThat(made.findings().toTheEnd()).isEqualTo(2);
  }

  /** Pairs take an even number of drives, a mirror any. */
  @Test
  void oneIsCountedAsOne() {
    made.yaml =
        MadeAdvice.YAML
            .replaceFirst("\\{one_of: \\[1 x worst[^}]*}", "{one_of: [4 x worst, 3 x worst]}")
            .replace("[single, mirror]", "[mirror, pairs]");
    made.front = List.of(WORST);
    made.safest = Optional.of(WORST);
    made.candidates.remove(3);
    assertThat(made.words())
        .contains("leaves open makes 3 layouts. 1 more combination is no valid layout (--imp");
    made.yaml = made.yaml.replaceAll("\\{one_of: \\[([^,]*),[^}]*}", "$1");
    made.candidates.subList(1, 3).clear();
    assertThat(made.words())
        .contains("The file leaves nothing open: its 1 layout was weighed. Not counted")
        .doesNotContain("no valid", "What the file leaves open");
  }

  @Test
  void whatIsNoLayoutIsToldOnRequestOnly() {
    assertThat(made.text(true).replaceAll("\\s+", " "))
        .contains("No valid layout: one with main 1 x worst, main mirror: found")
        .contains("; accepted: at least 2 drives for mirror one with main 1 x usual, main mirror");
    assertThat(made.words()).doesNotContain("No valid layout:");
    made.yaml =
        MadeAdvice.YAML.replace(", 2 x best", "").replace("{one_of: [single, mirror]}", "single");
    made.candidates.remove(3);
    made.front = List.of(WORST, "one-2", "one-3");
    made.safest = Optional.of(USUAL);
    made.candidates.set(1, MadeAdvice.of("one-2", seen(0.2, 0.01), 200));
    made.candidates.set(2, MadeAdvice.of("one-3", seen(0.1, 0.01), 500));
    assertThat(made.text(true)).doesNotContain("No valid layout", "combination");
  }

  @Test
  void otherLayoutsThatMayBeAsGoodAreNamed() {
    assertThat(made.words()).doesNotContain("Not settled", "may tell");
    made.open(About.FRONT, MIRROR, BEST).open(About.TARGET, MIRROR, USUAL);
    assertThat(made.words())
        .contains(
            "Not settled: 1 other layout (one-8) may be as good as what is named here, or better."
                + " More time (--time) may tell.");
    made.open(About.FRONT, BEST, USUAL);
    assertThat(made.words()).contains("Not settled: 2 other layouts (one-8, one-5) may be");
    for (String id : new String[] {"a", "b", "c"}) {
      made.open(About.FRONT, id, USUAL);
    }
    assertThat(made.words()).contains("5 other layouts (one-8, one-5, a, b, c) may be");
    made.open(About.FRONT, "d", USUAL);
    assertThat(made.words()).contains("6 other layouts (one-8, one-5, a, b, c, ...) may be");
  }

  /** An answer near its limit is no other layout. */
  @Test
  void onWhichSideOfALimitOneIsIsAQuestionOfItsOwn() {
    made.open(About.TARGET, USUAL, USUAL);
    assertThat(made.words())
        .contains("Not settled: whether one-3 stays within the target. More time (--time) may tell")
        .doesNotContain("1 other layout", "within the budget");
    made.open(About.TARGET, BEST, BEST).open(About.BUDGET, MIRROR, MIRROR);
    made.open(About.FRONT, BEST, USUAL);
    assertThat(made.words())
        .contains(
            "Not settled: 1 other layout (one-5) may be as good as what is named here, or better."
                + " Not settled: whether any of one-3, one-5 stays within the target."
                + " Not settled: whether one-8 stays within the budget. More time (--time) may");
  }

  @Test
  void whatMayTellMoreIsWhatStoppedIt() {
    made.open(About.FRONT, MIRROR, BEST);
    made.histories = OptionalLong.of(100);
    assertThat(made.words())
        .contains("or better. More histories (--histories) or more time (--time) may tell.");
    made.histories = OptionalLong.empty();
    made.time = Optional.empty();
    assertThat(made.words()).contains("or better. Not counted").doesNotContain("may tell");
    made.finished = false;
    assertThat(made.words()).contains("or better. More time (--time) may tell. Not counted");
  }

  @ParameterizedTest
  @CsvSource({"0.05, 95", "0.005, 99.5", "0.00001, 99.999", "0.1, 90"})
  void howSureItIsIsToldAsItWasAskedFor(double wrong, String sure) {
    made.wrongPick = wrong;
    assertThat(made.words())
        .contains("What is settled is right with a chance of " + sure + " %, all together,")
        .contains("share their luck; seed 7.");
  }

  @Test
  void thePageSaysWhetherItIsFinishedAndOfMedians() {
    assertThat(made.words()).doesNotContain("UNFINISHED", "medians");
    made.finished = false;
    made.median = true;
    assertThat(made.words())
        .startsWith("Lone Drives: which layout, at what cost, over 5 years? - UNFINISHED Each of")
        .contains("Rates that the file gives as ranges have their medians here.");
  }

  @Test
  void theFrontIsATableOfCostAndRisk() {
    assertThat(made.text(false))
        .contains("Cost (EUR)                        Lose any, of 1,000")
        .contains("A drive (one)\n  40                                376 (370 to 382)\n")
        .contains("A drive: main 1 x best (one-5)\n  500   ");
    made.yaml = MadeAdvice.YAML.replace("currency: EUR\n", "");
    assertThat(made.text(false)).contains("Cost   ").doesNotContain("EUR", "Cost (");
  }

  /** By their estimates, the five safest; what nobody looked at is not among them. */
  @Test
  void withoutPricesTheSafestAreATable() {
    made.withoutPrices();
    made.candidates.set(2, MadeAdvice.neverLookedAt(made.candidates.get(2)));
    String text = made.text(false);
    assertThat(text)
        .contains("The safest, by their estimates:\n  Lose any, of 1,000\n")
        .containsSubsequence(
            "estimates:",
            "mirror (one-8)\n",
            "  2.4 (2.2 to 2.6)\n",
            "usual (one-3)\n",
            "drive (one)\n")
        .doesNotContain("one-5", "The front:", "Step by step");
  }

  /** On a chart nothing is twice, and what nobody looked at is not on it. */
  @Test
  void theChartHasTheFrontTodaysAndTheOthers() {
    made.front = List.of(USUAL, MIRROR);
    made.candidates.set(0, MadeAdvice.leftEarly(made.candidates.get(0)));
    made.candidates.set(2, MadeAdvice.leftEarly(made.candidates.get(2)));
    CostRiskChart.Layouts pictured = made.findings().pictured();
    assertThat(pictured.front())
        .extracting(CostRiskChart.Point::name)
        .containsExactly(USUAL, MIRROR);
    assertThat(pictured.today().name()).isEqualTo(WORST);
    assertThat(pictured.today().cost().value()).isEqualTo(40);
    assertThat(pictured.others()).extracting(CostRiskChart.Point::name).containsExactly(BEST);
    made.candidates.set(2, MadeAdvice.neverLookedAt(made.candidates.get(2)));
    assertThat(made.findings().pictured().others()).isEmpty();
    assertThat(made.findings().toTheEnd()).isEqualTo(2);
    CostRiskChart.Frame frame = made.findings().frame(new OutOf(10_000), Ran.TODAY);
    assertThat(frame)
        .isEqualTo(
            new CostRiskChart.Frame(
                "Lone Drives", 5, Optional.of("EUR"), new OutOf(10_000), 0.95, true, Ran.TODAY));
  }
}
