package lastcopy.law;

import java.util.Arrays;
import java.util.List;

/** A table of yearly probabilities by year of age: a hazard constant within each year of age. */
public final class ByAge implements Law {

  private static final double HOURS_PER_YEAR = 8_760;

  private final List<Double> probabilities;
  private final double[] hazardPerHour;
  private final double[] hazardAtYear;

  /**
   * The law of a table.
   *
   * @param yearlyProbabilities the chance to fail within the 1st, 2nd, ... year of age, each in [0,
   *     1), at least one; the last goes on for good
   */
  public ByAge(List<Double> yearlyProbabilities) {
    if (yearlyProbabilities.isEmpty()) {
      throw new IllegalArgumentException("by_age needs at least one yearly probability");
    }
    probabilities = List.copyOf(yearlyProbabilities);
    int n = probabilities.size();
    hazardPerHour = new double[n];
    hazardAtYear = new double[n];
    for (int i = 0; i < n; i++) {
      double p = probabilities.get(i);
      Domain.that(p >= 0 && p < 1, "yearly probability must be in [0, 1)", p);
      hazardPerHour[i] = -StrictMath.log1p(-p) / HOURS_PER_YEAR;
      hazardAtYear[i] = i == 0 ? 0 : hazardAtYear[i - 1] + hazardPerHour[i - 1] * HOURS_PER_YEAR;
    }
  }

  /** The yearly probabilities as given. */
  public List<Double> yearlyProbabilities() {
    return probabilities;
  }

  @Override
  public double cumulativeHazard(double age) {
    int i = yearOf(age);
    return hazardAtYear[i] + hazardPerHour[i] * (age - i * HOURS_PER_YEAR);
  }

  @Override
  public double inverseCumulativeHazard(double hazard) {
    if (hazard <= 0) {
      return 0;
    }
    int i = hazardAtYear.length - 1;
    while (hazardAtYear[i] >= hazard) {
      i--;
    }
    return i * HOURS_PER_YEAR + (hazard - hazardAtYear[i]) / hazardPerHour[i];
  }

  @Override
  public double hazard(double age) {
    return hazardPerHour[yearOf(age)];
  }

  @Override
  public double mean() {
    double sum = 0;
    for (int i = 0; i < hazardPerHour.length; i++) {
      boolean last = i == hazardPerHour.length - 1;
      double alive = StrictMath.exp(-hazardAtYear[i]);
      double h = hazardPerHour[i];
      double width = last ? Double.POSITIVE_INFINITY : HOURS_PER_YEAR;
      sum += h == 0 ? alive * width : -alive * StrictMath.expm1(-h * width) / h;
    }
    return sum;
  }

  private int yearOf(double age) {
    return Math.min(hazardPerHour.length - 1, (int) (age / HOURS_PER_YEAR));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ByAge law && probabilities.equals(law.probabilities);
  }

  @Override
  public int hashCode() {
    return probabilities.hashCode();
  }

  @Override
  public String toString() {
    return "ByAge" + Arrays.toString(probabilities.toArray());
  }
}
