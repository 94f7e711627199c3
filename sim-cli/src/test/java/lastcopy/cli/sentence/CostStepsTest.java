package lastcopy.cli.sentence;

import static lastcopy.cli.compare.SampleComparison.costing;
import static lastcopy.cli.compare.SampleComparison.doubted;
import static lastcopy.cli.compare.SampleComparison.layout;
import static lastcopy.cli.compare.SampleComparison.losing;
import static lastcopy.cli.compare.SampleComparison.none;
import static lastcopy.cli.compare.SampleComparison.seen;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Comparison.Pair;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;

/** What a step costs and whether it pays, by results made by hand: true ones, and false ones. */
class CostStepsTest {

  private static final OutOf THOUSAND = new OutOf(1_000);
  private static final LayoutResult DRIVE =
      at(200, layout("drive", "Drive", seen(0.07, 0.002), true));
  private static final LayoutResult MIRROR =
      at(290, layout("mirror", "Mirror", seen(0.03, 0.001), true));
  private static final LayoutResult BOX = at(400, layout("box", "Box", seen(0.05, 0.001), true));

  private static LayoutResult at(double money, LayoutResult layout) {
    Cost cost = new Cost(seen(money, 1), money, money, money, List.of(), List.of(), 20_000);
    return costing(layout, Optional.of(cost));
  }

  private static Pair pair(LayoutResult a, LayoutResult b) {
    Estimate difference = seen(a.anyLoss().value() - b.anyLoss().value(), 0.002);
    double dearer = cost(a) - cost(b);
    return new Pair(
        a.id(), b.id(), none(), none(), none(), difference, 1_000, Optional.of(seen(dearer, 2)));
  }

  private static double cost(LayoutResult layout) {
    return layout.cost().map(cost -> cost.total().value()).orElse(0.0);
  }

  private static Comparison result(LayoutResult... layouts) {
    List<Pair> pairs = new java.util.ArrayList<>();
    for (int a = 0; a < layouts.length; a++) {
      for (int b = a + 1; b < layouts.length; b++) {
        pairs.add(pair(layouts[a], layouts[b]));
      }
    }
    return new Comparison(
        "Reed Bank", 5, Optional.of("EUR"), 1, 0.95, true, List.of(layouts), pairs);
  }

  private static List<String> steps(LayoutResult... layouts) {
    return CostSteps.sentences(result(layouts), THOUSAND);
  }

  /** The loss costs 900 times the chance: 63 and 27, so 36 is spared, and 90 is paid. */
  @Test
  void aStepThatDoesNotPayByMoneyAlone() {
    assertThat(steps(DRIVE, MIRROR))
        .containsExactly(
            "From \"Drive\" to \"Mirror\": 40 fewer (38 to 42) of 1,000 studios lose footage within"
                + " 5 years. It costs EUR 90 (88 to 92) more. What is lost is worth EUR 36 (35 to"
                + " 37) less on average, which is less than it costs: by money alone the step does"
                + " not pay.");
  }

  @Test
  void aStepThatPays() {
    LayoutResult cheap = at(210, MIRROR);
    assertThat(steps(DRIVE, cheap).get(0))
        .contains("It costs EUR 10 (8 to 12) more.")
        .endsWith("which is more than it costs.");
    LayoutResult even = at(236, MIRROR);
    assertThat(steps(DRIVE, even).get(0))
        .endsWith("whether that is more than it costs cannot be told.");
  }

  /** In any order of the file; what is dearer and no safer than a cheaper one is no step. */
  @Test
  void onlyWhatIsSaferThanAllCheaperOnesIsAStep() {
    assertThat(steps(BOX, MIRROR, DRIVE))
        .singleElement()
        .asString()
        .startsWith("From \"Drive\" to \"Mirror\"");
    assertThat(CostSteps.rows(result(BOX, MIRROR, DRIVE), THOUSAND))
        .containsExactly(
            new CostSteps.Row("Drive", "EUR 200 (199 to 201)", "70 (68 to 72)", "the cheapest"),
            new CostSteps.Row(
                "Mirror",
                "EUR 290 (289 to 291)",
                "30 (29 to 31)",
                "safer than all that is cheaper"),
            new CostSteps.Row(
                "Box",
                "EUR 400 (399 to 401)",
                "50 (49 to 51)",
                "not shown to be safer than something cheaper"));
    assertThat(steps(DRIVE, at(100, MIRROR)))
        .containsExactly(
            "Nothing dearer than \"Mirror\" is shown to lose footage in fewer studios.");
  }

  @Test
  void withoutPricesWorthOrTrustItIsSaid() {
    LayoutResult free = layout("drive", "Drive", seen(0.07, 0.002), true);
    assertThat(steps(free))
        .containsExactly("The file prices nothing, so cost cannot be set against risk.");
    LayoutResult plain = at(200, layout("drive", "Drive", seen(0.07, 0.002), false));
    assertThat(steps(plain, MIRROR).get(0)).contains("does not say what a shoot is worth");
    assertThat(steps(doubted(DRIVE, List.of("Why."), List.of()), MIRROR))
        .containsExactly("Some figures are not to be trusted, so no step can be told.");
    assertThat(steps(DRIVE)).containsExactly("There is only one layout, so no step to another.");
  }

  /** What is lost is worth 40 less (90 - 65 to 110 - 55), the step costs two more or less. */
  @Test
  void aStepPaysOnlyWhereTheRangesDoNotMeet() {
    LayoutResult from = losing(DRIVE, seen(100, 10));
    String told = " What is lost is worth EUR 40 (25 to 55) less on average, ";
    for (String[] each :
        List.of(
            new String[] {"222", "which is more than it costs."},
            new String[] {"223", "and whether that is more than it costs cannot be told."},
            new String[] {"257", "and whether that is more than it costs cannot be told."},
            new String[] {
              "258", "which is less than it costs: by money alone the step does not pay."
            })) {
      LayoutResult to = at(Double.parseDouble(each[0]), losing(MIRROR, seen(60, 5)));
      assertThat(steps(from, to).get(0)).as(each[0]).endsWith(told + each[1]);
    }
  }

  @Test
  void whatSparesNothingIsSaidSo() {
    LayoutResult from = losing(DRIVE, seen(100, 10));
    String none =
        "It costs EUR 90 (88 to 92) more. It is not shown that what is lost is worth less.";
    assertThat(steps(from, losing(MIRROR, seen(100, 10))).get(0)).endsWith(none);
    assertThat(steps(from, losing(MIRROR, seen(110, 10))).get(0)).endsWith(none);
    assertThat(steps(from, losing(MIRROR, seen(99, 10))).get(0)).contains("worth EUR 1");
  }

  /** A range that begins at no difference shows none, nor do layouts that were not compared. */
  @Test
  void whatMayBeChanceIsNoStep() {
    LayoutResult near = at(290, layout("near", "Near", seen(0.069, 0.001), true));
    assertThat(steps(DRIVE, near))
        .containsExactly(
            "Nothing dearer than \"Drive\" is shown to lose footage in fewer studios.");
    Pair touching =
        new Pair(
            "drive",
            "near",
            none(),
            none(),
            none(),
            new Estimate(0.002, 0, 0.004, true),
            1,
            Optional.of(seen(-90, 2)));
    Comparison touches =
        new Comparison(
            "s", 5, Optional.of("EUR"), 1, 0.95, true, List.of(DRIVE, near), List.of(touching));
    assertThat(CostSteps.sentences(touches, THOUSAND).get(0)).startsWith("Nothing dearer");
    Comparison apart =
        new Comparison(
            "s", 5, Optional.of("EUR"), 1, 0.95, true, List.of(DRIVE, MIRROR), List.of());
    assertThat(CostSteps.sentences(apart, THOUSAND).get(0)).startsWith("Nothing dearer");
  }

  @Test
  void whereFiguresAreInDoubtNoRowIsTold() {
    LayoutResult doubted = doubted(DRIVE, List.of("Why."), List.of());
    assertThat(CostSteps.rows(result(doubted, MIRROR), THOUSAND))
        .extracting(CostSteps.Row::step)
        .containsExactly("not told", "not told");
  }

  /** Less than one of 1,000 fewer. */
  @Test
  void aStepOfLessThanOneStudio() {
    LayoutResult often = at(200, layout("often", "Often", seen(0.0015, 0.0001), true));
    LayoutResult rare = at(290, layout("rare", "Rare", seen(0.001, 0.0001), true));
    Pair pair =
        new Pair(
            "rare",
            "often",
            none(),
            none(),
            none(),
            seen(-0.0005, 0.0001),
            1,
            Optional.of(seen(90, 2)));
    Comparison both =
        new Comparison(
            "s", 5, Optional.empty(), 1, 0.95, true, List.of(often, rare), List.of(pair));
    assertThat(CostSteps.sentences(both, THOUSAND).get(0))
        .startsWith(
            "From \"Often\" to \"Rare\": less than 1 fewer of 1,000 studios lose footage within 5"
                + " years. It costs 90 (88 to 92) more.");
  }
}
