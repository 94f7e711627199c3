package lastcopy.words;

/** Numbers of years in words. */
public final class YearWords {

  private YearWords() {}

  /** Such as {@code 5 years}, {@code 4.02 years} or {@code 1 year}. */
  public static String of(double years) {
    String number = ByteUnit.digits(years);
    return number + (number.equals("1") ? " year" : " years");
  }
}
