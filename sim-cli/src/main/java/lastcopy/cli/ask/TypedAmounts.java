package lastcopy.cli.ask;

import java.util.Map;
import java.util.Optional;
import lastcopy.cli.scenario.value.Measure;
import lastcopy.words.YearWords;

/** Answers that are a number with a unit. */
final class TypedAmounts {

  /** So much by the end is no small studio's. */
  private static final double MOST_BYTES = 1.5e15;

  private TypedAmounts() {}

  static Reply.Measured size(String example, double low, double high, String range) {
    return new Reply.Measured(Measure.SIZE, example, low, high, range, Map.of());
  }

  static Reply.Measured time(
      String example, double low, double high, String range, Map<String, String> words) {
    return new Reply.Measured(Measure.TIME, example, low, high, range, words);
  }

  /** What is wrong with the size of a shoot beside how many there are. */
  static Optional<String> notTooMuch(Answers before, String size) {
    double shot =
        before.whole("years")
            * RoomNeeded.yearly(before.with("size", new Answers.Given(size, true)));
    return shot > MOST_BYTES
        ? Optional.of(
            "That would be "
                + RoomNeeded.words(shot)
                + " within "
                + YearWords.of(before.whole("years"))
                + "; this is for up to 1500 TB.")
        : Optional.empty();
  }
}
