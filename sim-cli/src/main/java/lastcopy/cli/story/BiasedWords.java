package lastcopy.cli.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.interval.OneIn;
import lastcopy.words.ByteUnit;

/** Says that a story is of a biased history, and how unlikely a loss is without the bias. */
final class BiasedWords {

  private BiasedWords() {}

  /**
   * The sentences.
   *
   * @param result what weighted biased histories say, at 95 %
   * @param years the horizon
   */
  static List<String> of(LayoutResult result, double years) {
    List<String> words = new ArrayList<>();
    words.add(
        "This is told from a biased history: the rates of failures and mishaps were raised on"
            + " purpose so that something happens.");
    words.add(
        String.format(
            Locale.ROOT,
            "Without that, the chance of losing any footage over %s %s is %s; so rare is a life"
                + " that loses any.",
            ByteUnit.digits(years),
            years == 1 ? "year" : "years",
            chance(result.anyLoss())));
    if (!result.trusted()) {
      words.add("That chance is in doubt and its range widened for it.");
    }
    words.addAll(result.doubts());
    return words;
  }

  private static String chance(Estimate chance) {
    return chance.onlyAtMost()
        ? "at most " + OneIn.words(chance.high()) + " (95 % sure)"
        : OneIn.words(chance.value())
            + (" (" + OneIn.words(chance.low()) + " to " + OneIn.words(chance.high()))
            + ", 95 % sure)";
  }
}
