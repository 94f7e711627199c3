package lastcopy.law;

import java.util.List;

/**
 * A law whose hazard is multiplied by a factor at every age (proportional hazards: Cox, JRSS B 34
 * (1972) 187-220): H(t) = factor · H₀(t). A time that is fixed stays as it is.
 *
 * @param law the law that is stretched
 * @param factor above 0, finite
 */
public record Stretched(Law law, double factor) implements Law {

  /** Less than 1 by so little that a table of yearly chances can still hold it. */
  private static final double SURE = Math.nextDown(1.0);

  /** Checks the range. */
  public Stretched {
    Domain.above(factor, 0, "factor");
  }

  /**
   * The simplest law with a multiple of the hazard of another; that law itself where the factor is
   * 1.
   *
   * @param factor above 0, finite
   */
  public static Law of(Law law, double factor) {
    Domain.above(factor, 0, "factor");
    if (factor == 1 || law instanceof Never || law instanceof Fixed) {
      return law;
    }
    if (law instanceof Exponential plain) {
      return new Exponential(plain.mean() / factor);
    }
    if (law instanceof Weibull w) {
      double scale = w.scale() * StrictMath.pow(factor, -1 / w.shape());
      return new Weibull(w.shape(), scale, w.location());
    }
    if (law instanceof ByAge table) {
      return new ByAge(chances(table.yearlyProbabilities(), factor));
    }
    if (law instanceof Competing sum) {
      return new Competing(sum.laws().stream().map(each -> of(each, factor)).toList());
    }
    return new Stretched(law, factor);
  }

  private static List<Double> chances(List<Double> yearly, double factor) {
    return yearly.stream()
        .map(p -> Math.min(SURE, -StrictMath.expm1(factor * StrictMath.log1p(-p))))
        .toList();
  }

  @Override
  public double cumulativeHazard(double age) {
    return factor * law.cumulativeHazard(age);
  }

  @Override
  public double inverseCumulativeHazard(double hazard) {
    return law.inverseCumulativeHazard(hazard / factor);
  }

  @Override
  public double hazard(double age) {
    return factor * law.hazard(age);
  }

  /** The integral of the survival function, as that of a sum of laws. */
  @Override
  public double mean() {
    return new Competing(List.of(this)).mean();
  }
}
