package lastcopy.cli.sentence;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lastcopy.cli.output.Numbers;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Comparison.Pair;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;

/**
 * What a reader asks first: which layout loses footage in the fewest studios, and how much safer it
 * is. Only what the intervals of paired histories bear out is said.
 */
public final class Answer {

  private final Comparison result;
  private final OutOf outOf;

  private Answer(Comparison result, OutOf outOf) {
    this.result = result;
    this.outOf = outOf;
  }

  /**
   * The sentences; empty where there is nothing to choose from.
   *
   * @param outOf of how many studios, as in the table below
   */
  public static Optional<String> of(Comparison result, OutOf outOf) {
    return result.layouts().size() < 2
        ? Optional.empty()
        : Optional.of(new Answer(result, outOf).sentences());
  }

  /**
   * The layout against which each other one is told: the safest, or, where none is shown to be, the
   * first, which is what there is today as a rule.
   */
  public static LayoutResult anchor(Comparison result) {
    LayoutResult safest = new Answer(result, new OutOf(1_000)).safest();
    return isSafest(result, safest) ? safest : result.layouts().get(0);
  }

  /** Whether a layout is shown to lose footage in fewer studios than each other one. */
  public static boolean isSafest(Comparison result, LayoutResult layout) {
    Answer answer = new Answer(result, new OutOf(1_000));
    return result.layouts().size() > 1
        && result.layouts().stream().allMatch(LayoutResult::trusted)
        && answer.safest().equals(layout)
        && answer.alike(layout).size() == 1;
  }

  private LayoutResult safest() {
    return result.layouts().stream().min(Comparator.comparingDouble(Answer::told)).orElseThrow();
  }

  /** Those that are not shown to be worse than the safest, and itself. */
  private List<LayoutResult> alike(LayoutResult safest) {
    return result.layouts().stream().filter(other -> !isWorse(other, safest)).toList();
  }

  private String sentences() {
    List<LayoutResult> doubted = result.layouts().stream().filter(l -> !l.trusted()).toList();
    if (!doubted.isEmpty()) {
      return "Which layout is safest cannot be told: the figures of "
          + names(doubted)
          + " are not to be trusted, as said below.";
    }
    LayoutResult safest = safest();
    List<LayoutResult> alike = alike(safest);
    return alike.size() > 1 ? undecided(alike) : decided(safest);
  }

  private String decided(LayoutResult safest) {
    LayoutResult first = result.layouts().get(0);
    LayoutResult against = first.equals(safest) ? next(safest) : first;
    return String.format(
        "Safest here: %s. Of %s like yours, %s %s footage within %s, %s%s.%s",
        PairSentences.quoted(safest),
        outOf.words(),
        Numbers.studiosAlone(safest.anyLoss(), outOf),
        loses(safest),
        Horizon.of(result),
        fewer(against, safest),
        first.equals(safest) ? ", the next best" : "",
        price(safest, against));
  }

  /** What it costs more than the other, where the scenario prices anything. */
  private String price(LayoutResult safest, LayoutResult against) {
    return pair(safest, against)
        .flatMap(
            pair ->
                pair.costDifference()
                    .map(ofA -> pair.a().equals(safest.id()) ? ofA : ofA.negated()))
        .map(more -> " " + CostWords.difference(more, "It", result.currency()))
        .orElse("");
  }

  /** Fewer than one and one lose in the singular. */
  private String loses(LayoutResult layout) {
    String told = Numbers.studiosAlone(layout.anyLoss(), outOf);
    return told.equals("1") || told.endsWith(" 1") ? "loses" : "lose";
  }

  private String fewer(LayoutResult worse, LayoutResult safest) {
    Estimate more = difference(worse, safest);
    String fewer =
        Numbers.belowOne(more, outOf) ? "fewer" : PairSentences.studios(more, "fewer", outOf);
    return fewer + " than with " + PairSentences.quoted(worse);
  }

  private String undecided(List<LayoutResult> alike) {
    String others =
        alike.size() == result.layouts().size() ? "" : " All others lose footage more often.";
    return "No layout is shown to be the safest: between "
        + names(alike)
        + " the simulation finds no difference that could not be chance."
        + others;
  }

  private LayoutResult next(LayoutResult safest) {
    return result.layouts().stream()
        .filter(layout -> !layout.equals(safest))
        .min(Comparator.comparingDouble(Answer::told))
        .orElseThrow();
  }

  private boolean isWorse(LayoutResult layout, LayoutResult safest) {
    return !layout.equals(safest) && difference(layout, safest).low() > 0;
  }

  /** P(one loses) - P(other loses), by paired histories; unknown where they were not compared. */
  private Estimate difference(LayoutResult one, LayoutResult other) {
    return pair(one, other)
        .map(pair -> pair.a().equals(one.id()) ? pair.difference() : pair.difference().negated())
        .orElse(new Estimate(0, -1, 1, false));
  }

  private Optional<Pair> pair(LayoutResult one, LayoutResult other) {
    Set<String> both = Set.of(one.id(), other.id());
    return result.pairs().stream().filter(p -> Set.of(p.a(), p.b()).equals(both)).findFirst();
  }

  private static double told(LayoutResult layout) {
    return layout.anyLoss().value();
  }

  private static String names(List<LayoutResult> layouts) {
    return layouts.stream().map(PairSentences::quoted).collect(Collectors.joining(" and "));
  }
}
