package lastcopy.cli.sentence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lastcopy.cli.output.Numbers;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Comparison.Pair;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;

/**
 * Cost against risk: from the cheapest layout up, each dearer one that is shown to lose footage in
 * fewer studios, and whether what it spares pays for it. Cost and what is lost stay apart.
 */
public final class CostSteps {

  private final Comparison result;
  private final OutOf outOf;

  private CostSteps(Comparison result, OutOf outOf) {
    this.result = result;
    this.outOf = outOf;
  }

  /**
   * A layout by what it costs.
   *
   * @param title of the layout
   * @param cost over the horizon, with its interval
   * @param losers studios that lose footage, with their interval
   * @param step how it stands to the cheaper ones
   */
  public record Row(String title, String cost, String losers, String step) {}

  /** The layouts, the cheapest first; none where the scenario prices nothing. */
  public static List<Row> rows(Comparison result, OutOf outOf) {
    CostSteps steps = new CostSteps(result, outOf);
    List<LayoutResult> front = steps.front();
    return steps.byCost().stream().map(layout -> steps.row(layout, front)).toList();
  }

  /** A sentence or two for each step, or why there is none. */
  public static List<String> sentences(Comparison result, OutOf outOf) {
    return new CostSteps(result, outOf).sentences();
  }

  private Row row(LayoutResult layout, List<LayoutResult> front) {
    return new Row(
        layout.title(),
        Numbers.money(layout.cost().orElseThrow().total(), result.currency()),
        Numbers.studios(layout.anyLoss(), outOf),
        step(layout, front));
  }

  private String step(LayoutResult layout, List<LayoutResult> front) {
    if (front.isEmpty()) {
      return "not told";
    }
    if (front.get(0).equals(layout)) {
      return "the cheapest";
    }
    return front.contains(layout)
        ? "safer than all that is cheaper"
        : "not shown to be safer than something cheaper";
  }

  private List<LayoutResult> byCost() {
    return result.layouts().stream()
        .filter(layout -> layout.cost().isPresent())
        .sorted(Comparator.comparingDouble(l -> l.cost().orElseThrow().total().value()))
        .toList();
  }

  /** Where figures are not to be trusted there are no steps. */
  private List<LayoutResult> front() {
    List<LayoutResult> front = new ArrayList<>();
    if (result.layouts().stream().allMatch(LayoutResult::trusted)) {
      for (LayoutResult next : byCost()) {
        if (front.isEmpty() || fewer(last(front), next).low() > 0) {
          front.add(next);
        }
      }
    }
    return front;
  }

  private static LayoutResult last(List<LayoutResult> front) {
    return front.get(front.size() - 1);
  }

  private List<String> sentences() {
    if (byCost().isEmpty()) {
      return List.of("The file prices nothing, so cost cannot be set against risk.");
    }
    List<LayoutResult> front = front();
    List<String> all = new ArrayList<>();
    for (int i = 1; i < front.size(); i++) {
      all.add(step(front.get(i - 1), front.get(i)));
    }
    return all.isEmpty() ? List.of(noStep(front)) : all;
  }

  private String noStep(List<LayoutResult> front) {
    if (front.isEmpty()) {
      return "Some figures are not to be trusted, so no step can be told.";
    }
    return result.layouts().size() == 1
        ? "There is only one layout, so no step to another."
        : "Nothing dearer than "
            + PairSentences.quoted(front.get(0))
            + " is shown to lose footage in fewer studios.";
  }

  private String step(LayoutResult from, LayoutResult to) {
    Optional<Estimate> cost = pair(from, to).flatMap(Pair::costDifference);
    Estimate more = cost.map(c -> isFirst(from, to) ? c.negated() : c).orElse(unknown());
    Estimate fewer = fewer(from, to);
    String studios =
        Numbers.belowOne(fewer, outOf)
            ? "less than 1 fewer"
            : PairSentences.studios(fewer, "fewer", outOf);
    return String.format(
        "From %s to %s: %s of %s lose footage within %s. %s%s",
        PairSentences.quoted(from),
        PairSentences.quoted(to),
        studios,
        outOf.words(),
        Horizon.of(result),
        CostWords.difference(more, "It", result.currency()),
        pays(from, to, more));
  }

  /** The losses that it spares have no paired interval, so theirs is the widest possible. */
  private String pays(LayoutResult from, LayoutResult to, Estimate more) {
    if (from.moneyLost().isEmpty() || to.moneyLost().isEmpty()) {
      return " The file does not say what a shoot is worth, so whether that pays is not told.";
    }
    Estimate before = from.moneyLost().get();
    Estimate after = to.moneyLost().get();
    Estimate spared =
        new Estimate(
            before.value() - after.value(),
            before.low() - after.high(),
            before.high() - after.low(),
            true);
    if (spared.value() <= 0) {
      return " It is not shown that what is lost is worth less.";
    }
    String losses =
        " What is lost is worth " + Numbers.money(spared, result.currency()) + " less on average, ";
    if (spared.low() > more.high()) {
      return losses + "which is more than it costs.";
    }
    return spared.high() < more.low()
        ? losses + "which is less than it costs: by money alone the step does not pay."
        : losses + "and whether that is more than it costs cannot be told.";
  }

  /** P(one loses) - P(other loses), by paired histories; unknown where they were not compared. */
  private Estimate fewer(LayoutResult from, LayoutResult to) {
    return pair(from, to)
        .map(p -> isFirst(from, to) ? p.difference() : p.difference().negated())
        .orElse(unknown());
  }

  private static Estimate unknown() {
    return new Estimate(0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, false);
  }

  private boolean isFirst(LayoutResult from, LayoutResult to) {
    return pair(from, to).filter(p -> p.a().equals(from.id())).isPresent();
  }

  private Optional<Pair> pair(LayoutResult one, LayoutResult other) {
    Set<String> both = Set.of(one.id(), other.id());
    return result.pairs().stream().filter(p -> Set.of(p.a(), p.b()).equals(both)).findFirst();
  }
}
