package lastcopy.cli.sentence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import lastcopy.cli.output.Numbers;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Comparison.Pair;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;

/** Sentences that compare two layouts: the difference in studios first, then how many times. */
public final class PairSentences {

  /** Of larger factors nobody has an idea. */
  private static final double MANY = 1e6;

  private PairSentences() {}

  /**
   * Each layout against the one that matters, see {@link Answer#anchor}, in the scenario's order.
   *
   * @param outOf of how many studios, as in the table above
   * @param all whether to tell every other pair too
   */
  public static List<String> of(Comparison result, OutOf outOf, boolean all) {
    String anchor = Answer.anchor(result).id();
    Map<String, LayoutResult> layouts =
        result.layouts().stream().collect(Collectors.toMap(LayoutResult::id, Function.identity()));
    List<String> sentences = new ArrayList<>();
    for (Pair pair : result.pairs()) {
      if (all || pair.a().equals(anchor) || pair.b().equals(anchor)) {
        String losses = sentence(Horizon.of(result), pair, layouts, outOf);
        sentences.add(losses + costs(pair, layouts, result.currency()));
      }
    }
    return sentences;
  }

  private static String sentence(
      String horizon, Pair pair, Map<String, LayoutResult> layouts, OutOf outOf) {
    LayoutResult a = layouts.get(pair.a());
    LayoutResult b = layouts.get(pair.b());
    if (undecided(pair)) {
      return String.format(
          "Over %s, no difference could be shown between %s (%s of %s) and %s (%s).",
          horizon,
          quoted(a),
          Numbers.studiosAlone(a.anyLoss(), outOf),
          outOf.words(),
          quoted(b),
          Numbers.studiosAlone(b.anyLoss(), outOf));
    }
    return pair.difference().value() >= 0
        ? worseFirst(horizon, pair, a, b, outOf)
        : worseFirst(horizon, swapped(pair), b, a, outOf);
  }

  /** What the safer one costs more, or the second where neither was shown to be safer. */
  private static String costs(
      Pair pair, Map<String, LayoutResult> layouts, Optional<String> currency) {
    boolean ofB = undecided(pair) || pair.difference().value() >= 0;
    String name = quoted(layouts.get(ofB ? pair.b() : pair.a()));
    return pair.costDifference()
        .map(ofA -> ofB ? ofA.negated() : ofA)
        .map(more -> " " + CostWords.difference(more, name, currency))
        .orElse("");
  }

  /** A title as it stands in a sentence. */
  public static String quoted(LayoutResult layout) {
    return '"' + layout.title() + '"';
  }

  private static String worseFirst(
      String horizon, Pair pair, LayoutResult worse, LayoutResult better, OutOf outOf) {
    String both =
        String.format(
            "Over %s, %s loses footage in %s of %s and %s in %s",
            horizon,
            quoted(worse),
            Numbers.studiosAlone(worse.anyLoss(), outOf),
            outOf.words(),
            quoted(better),
            Numbers.studiosAlone(better.anyLoss(), outOf));
    Estimate more = pair.difference();
    if (Numbers.belowOne(more, outOf)) {
      return both + times(pair) + ".";
    }
    return both + ": " + studios(more, "more", outOf) + times(pair) + ".";
  }

  /**
   * A difference in studios with its interval behind a word, such as {@code 62 more (60 to 64)}.
   */
  static String studios(Estimate difference, String word, OutOf outOf) {
    double one = outOf.count(1);
    String range = Numbers.range(difference, one).map(text -> " (" + text + ")").orElse("");
    int decimals = Numbers.decimals(difference, one);
    return Numbers.fixed(outOf.count(difference.value()), decimals) + " " + word + range;
  }

  private static String times(Pair pair) {
    if (pair.ratio().isEmpty()) {
      return pair.ratioLow().isEmpty() ? "" : ", at least " + often(pair.ratioLow().getAsDouble());
    }
    double ratio = pair.ratio().getAsDouble();
    if (ratio > MANY) {
      return ", " + often(ratio);
    }
    double low = pair.ratioLow().orElse(ratio);
    double high = pair.ratioHigh().orElse(ratio);
    Estimate times = new Estimate(ratio, low, high, true);
    String range = Numbers.range(times, 1).map(text -> " (" + text + ")").orElse("");
    String value =
        range.isEmpty() ? ByteUnit.digits(ratio) : Numbers.fixed(ratio, Numbers.decimals(times, 1));
    return ", " + value + " times as often" + range;
  }

  private static String often(double ratio) {
    return ratio > MANY
        ? "over a million times as often"
        : ByteUnit.digits(ratio) + " times as often";
  }

  /** The interval of the ratio holds 1, or, where there is no ratio, that of the difference 0. */
  private static boolean undecided(Pair pair) {
    if (pair.ratioLow().isPresent() && pair.ratioHigh().isPresent()) {
      return pair.ratioLow().getAsDouble() <= 1 && pair.ratioHigh().getAsDouble() >= 1;
    }
    return pair.difference().low() <= 0 && pair.difference().high() >= 0;
  }

  private static Pair swapped(Pair pair) {
    return new Pair(
        pair.b(),
        pair.a(),
        inverse(pair.ratio()),
        inverse(pair.ratioHigh()),
        inverse(pair.ratioLow()),
        pair.difference().negated(),
        pair.pairedHistories(),
        pair.costDifference().map(Estimate::negated));
  }

  private static OptionalDouble inverse(OptionalDouble ratio) {
    return ratio.isPresent() && ratio.getAsDouble() > 0
        ? OptionalDouble.of(1 / ratio.getAsDouble())
        : OptionalDouble.empty();
  }
}
