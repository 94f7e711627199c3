package lastcopy.scenario;

/** The engine's units: hours and bytes, decimal prefixes (IEC 80000-13). */
public final class Units {

  /** Hours of a year as the model counts them. */
  public static final double HOURS_PER_YEAR = 8_760;

  /** Hours of a month as the model counts them. */
  public static final double HOURS_PER_MONTH = 730;

  /** Hours of a week. */
  public static final double HOURS_PER_WEEK = 168;

  /** Hours of a day. */
  public static final double HOURS_PER_DAY = 24;

  /** Seconds of an hour. */
  public static final double SECONDS_PER_HOUR = 3_600;

  /** Bytes of a terabyte. */
  public static final double TB = 1e12;

  /** Bytes of a gigabyte. */
  public static final double GB = 1e9;

  /** Bytes of a megabyte. */
  public static final double MB = 1e6;

  private Units() {}
}
