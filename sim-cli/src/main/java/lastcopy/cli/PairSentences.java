package lastcopy.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import lastcopy.charts.ByteUnit;
import lastcopy.charts.OutOf;
import lastcopy.interval.Estimate;
import lastcopy.simulate.Comparison;
import lastcopy.simulate.Comparison.Pair;
import lastcopy.simulate.LayoutResult;

/** Sentences that compare two layouts: the difference in studios first, then how many times. */
final class PairSentences {

  private PairSentences() {}

  /** Each layout against the first, and each against its neighbour, in the scenario's order. */
  static List<String> of(Comparison result) {
    List<String> ids = result.layouts().stream().map(LayoutResult::id).toList();
    Map<String, LayoutResult> layouts =
        result.layouts().stream().collect(Collectors.toMap(LayoutResult::id, Function.identity()));
    List<String> sentences = new ArrayList<>();
    for (Pair pair : result.pairs()) {
      int a = ids.indexOf(pair.a());
      int b = ids.indexOf(pair.b());
      if (a == 0 || b == a + 1) {
        Estimate chanceA = layouts.get(pair.a()).anyLoss();
        Estimate chanceB = layouts.get(pair.b()).anyLoss();
        sentences.add(sentence(TextReport.horizon(result), pair, chanceA, chanceB));
      }
    }
    return sentences;
  }

  private static String sentence(String horizon, Pair pair, Estimate a, Estimate b) {
    OutOf outOf = OutOf.showingSmallest(List.of(a, b));
    if (undecided(pair)) {
      return String.format(
          "Over %s, no difference could be shown between %s (%s of %s) and %s (%s).",
          horizon,
          pair.a(),
          Numbers.studiosAlone(a, outOf),
          outOf.words(),
          pair.b(),
          Numbers.studiosAlone(b, outOf));
    }
    return pair.difference().value() >= 0
        ? worseFirst(horizon, pair, a, b, outOf)
        : worseFirst(horizon, swapped(pair), b, a, outOf);
  }

  private static String worseFirst(
      String horizon, Pair pair, Estimate worse, Estimate better, OutOf outOf) {
    Estimate more = pair.difference();
    String range = Numbers.range(more, outOf.count(1)).map(text -> " (" + text + ")").orElse("");
    return String.format(
        "Over %s, %s loses footage in %s of %s and %s in %s: %s more%s%s.",
        horizon,
        pair.a(),
        Numbers.studiosAlone(worse, outOf),
        outOf.words(),
        pair.b(),
        Numbers.studiosAlone(better, outOf),
        Numbers.fixed(outOf.count(more.value()), Numbers.decimals(more, outOf.count(1))),
        range,
        times(pair));
  }

  private static String times(Pair pair) {
    if (pair.ratio().isEmpty()) {
      return pair.ratioLow().isEmpty()
          ? ""
          : ", at least " + ByteUnit.digits(pair.ratioLow().getAsDouble()) + " times as often";
    }
    double ratio = pair.ratio().getAsDouble();
    double low = pair.ratioLow().orElse(ratio);
    double high = pair.ratioHigh().orElse(ratio);
    Estimate times = new Estimate(ratio, low, high, true);
    String range = Numbers.range(times, 1).map(text -> " (" + text + ")").orElse("");
    String value =
        range.isEmpty() ? ByteUnit.digits(ratio) : Numbers.fixed(ratio, Numbers.decimals(times, 1));
    return ", " + value + " times as often" + range;
  }

  /** The interval of the ratio holds 1, or, where there is no ratio, that of the difference 0. */
  private static boolean undecided(Pair pair) {
    if (pair.ratioLow().isPresent() && pair.ratioHigh().isPresent()) {
      return pair.ratioLow().getAsDouble() <= 1 && pair.ratioHigh().getAsDouble() >= 1;
    }
    return pair.difference().low() <= 0 && pair.difference().high() >= 0;
  }

  private static Pair swapped(Pair pair) {
    Estimate d = pair.difference();
    return new Pair(
        pair.b(),
        pair.a(),
        inverse(pair.ratio()),
        inverse(pair.ratioHigh()),
        inverse(pair.ratioLow()),
        new Estimate(-d.value(), -d.high(), -d.low(), d.seen()),
        pair.pairedHistories());
  }

  private static OptionalDouble inverse(OptionalDouble ratio) {
    return ratio.isPresent() && ratio.getAsDouble() > 0
        ? OptionalDouble.of(1 / ratio.getAsDouble())
        : OptionalDouble.empty();
  }
}
