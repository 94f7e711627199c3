package lastcopy.cli.sentence;

import lastcopy.experiment.Comparison;
import lastcopy.words.ByteUnit;

/** The horizon of a result in words. */
public final class Horizon {

  private Horizon() {}

  /** Such as {@code 5 years}. */
  public static String of(Comparison result) {
    String number = ByteUnit.digits(result.years());
    return number.equals("1") ? "1 year" : number + " years";
  }
}
