package lastcopy.charts;

/** A chart could not be drawn, for a reason that its message tells a user. */
public final class ChartException extends Exception {

  private static final long serialVersionUID = 1L;

  /** A message for a user, and what went wrong underneath. */
  public ChartException(String message, Throwable cause) {
    super(message, cause);
  }

  /** The Java runtime found no fonts or no font library. */
  static ChartException noFonts(Throwable cause) {
    return new ChartException(
        "cannot draw charts: this system lacks the fonts or the font library that Java needs;"
            + " on Debian or Ubuntu: apt-get install fontconfig fonts-dejavu-core libfreetype6",
        cause);
  }
}
