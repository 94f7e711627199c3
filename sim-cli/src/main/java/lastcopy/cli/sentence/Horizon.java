package lastcopy.cli.sentence;

import lastcopy.experiment.Comparison;
import lastcopy.words.YearWords;

/** The horizon of a result in words. */
public final class Horizon {

  private Horizon() {}

  /** Such as {@code 5 years}. */
  public static String of(Comparison result) {
    return YearWords.of(result.years());
  }
}
