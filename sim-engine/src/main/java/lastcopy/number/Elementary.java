package lastcopy.number;

/**
 * Logarithm, exponential and power in plain IEEE arithmetic, the same to the last digit on every
 * machine: no intrinsic, no fused multiply-add. Results are within a few units in the last place,
 * and cost a fraction of what StrictMath's native calls do.
 *
 * <p>Table-driven reduction and a short series, after P. T. P. Tang, "Table-driven implementation
 * of the logarithm function in IEEE floating-point arithmetic", ACM TOMS 16(4), 1990, and of the
 * exponential, ACM TOMS 15(2), 1989. The tables are filled by StrictMath.
 */
public final class Elementary {

  private static final int TABLE_BITS = 7;
  private static final int CELLS = 1 << TABLE_BITS;
  private static final int MANTISSA_BITS = 52;
  private static final long EXPONENT_MASK = 0xFFF0000000000000L;
  private static final int BIAS = 1_023;

  /** The bits of 0.6875: mantissas are taken from [0.6875, 1.375), so that ln 1 is met exactly. */
  private static final long LEAST_MANTISSA = 0x3FE6000000000000L;

  // ln 2 in two parts, the first short enough that its product with an exponent is exact.
  private static final double LN2_HIGH = 0x1.62E42FEEp-1;
  private static final double LN2_LOW = 0x1.A39EF35793C76p-33;
  private static final double CELLS_PER_E_FOLD = CELLS / 0.6931471805599453;

  /** Added to a number below 2^51 it leaves the nearest integer in the lowest bits. */
  private static final double ROUNDER = 0x1.8p52;

  private static final long ROUNDER_BITS = Double.doubleToRawLongBits(ROUNDER);

  private static final double LARGEST_EXPONENT = 709;
  private static final double LEAST_EXPONENT = -708;

  /** For each cell of mantissas its centre c, 1/c and ln c. */
  private static final double[] LOGARITHMS = logarithms();

  /** 2^(i/128). */
  private static final double[] POWERS = powers();

  private Elementary() {}

  private static double[] logarithms() {
    double[] table = new double[3 * CELLS];
    for (int i = 0; i < CELLS; i++) {
      double from = Double.longBitsToDouble(LEAST_MANTISSA + cell(i));
      double to = Double.longBitsToDouble(LEAST_MANTISSA + cell(i + 1));
      // Around 1 the series alone, or the small logarithms there would lose their digits.
      double centre = from <= 1 && 1 <= to ? 1 : (from + to) / 2;
      table[3 * i] = centre;
      table[3 * i + 1] = 1 / centre;
      table[3 * i + 2] = StrictMath.log(centre);
    }
    return table;
  }

  private static long cell(int i) {
    return (long) i << (MANTISSA_BITS - TABLE_BITS);
  }

  private static double[] powers() {
    double[] table = new double[CELLS];
    for (int i = 0; i < CELLS; i++) {
      table[i] = StrictMath.pow(2, i / (double) CELLS);
    }
    return table;
  }

  /**
   * The natural logarithm; as {@link Math#log} at 0, infinity, below 0 and for what is no number.
   *
   * @param x any number
   */
  public static double log(double x) {
    if (!(x >= Double.MIN_NORMAL && x <= Double.MAX_VALUE)) {
      return StrictMath.log(x);
    }
    long bits = Double.doubleToRawLongBits(x);
    long above = bits - LEAST_MANTISSA;
    int i = 3 * ((int) (above >>> (MANTISSA_BITS - TABLE_BITS)) & (CELLS - 1));
    // As a conversion from long, but one that does not wait for its register: KeyedRandom has it
    // too.
    double exponent = Double.longBitsToDouble(ROUNDER_BITS + (above >> MANTISSA_BITS)) - ROUNDER;
    double mantissa = Double.longBitsToDouble(bits - (above & EXPONENT_MASK));
    double r = (mantissa - LOGARITHMS[i]) * LOGARITHMS[i + 1];
    double r2 = r * r;
    double tail =
        r2 * (-1.0 / 2 + r * (1.0 / 3) + r2 * (-1.0 / 4 + r * (1.0 / 5) + r2 * (r / 7 - 1.0 / 6)));
    return exponent * LN2_LOW + tail + r + (exponent * LN2_HIGH + LOGARITHMS[i + 2]);
  }

  /**
   * e to the power of x.
   *
   * @param x any number
   * @return at least 0; 0 or infinity where it is out of range
   */
  public static double exp(double x) {
    if (!(x >= LEAST_EXPONENT && x <= LARGEST_EXPONENT)) {
      return StrictMath.exp(x); // where the result or its scale is subnormal or infinite
    }
    double rounded = x * CELLS_PER_E_FOLD + ROUNDER;
    int n = (int) Double.doubleToRawLongBits(rounded);
    double steps = rounded - ROUNDER;
    double r = x - steps * (LN2_HIGH / CELLS) - steps * (LN2_LOW / CELLS);
    double r2 = r * r;
    double series = r + r2 * (1.0 / 2 + r * (1.0 / 6) + r2 * (1.0 / 24 + r * (1.0 / 120)));
    double step = POWERS[n & (CELLS - 1)];
    double scale = Double.longBitsToDouble((long) ((n >> TABLE_BITS) + BIAS) << MANTISSA_BITS);
    return (step + step * series) * scale;
  }

  /**
   * The base to the power of an exponent, exp(exponent · ln base): its relative error grows with
   * |exponent · ln base|, about 3e-16 for each unit of it.
   *
   * @param base at least 0
   * @param exponent finite
   */
  public static double pow(double base, double exponent) {
    return exponent == 0 ? 1 : exp(exponent * log(base));
  }
}
