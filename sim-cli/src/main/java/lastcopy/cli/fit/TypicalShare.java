package lastcopy.cli.fit;

import java.util.List;
import lastcopy.fit.GammaRate;
import lastcopy.fit.Records;
import lastcopy.interval.Estimate;
import lastcopy.typical.DriveKind;
import lastcopy.typical.Level;
import lastcopy.typical.TypicalLives;

/**
 * What typical drives would have done in the time that records tell of, at the same ages.
 *
 * @param kind of drives
 * @param low failures to be expected of the best models
 * @param central of a usual one
 * @param cautious of a poor one
 * @param prior what is held of the rate before looking at the records: a Gamma law whose 5th and
 *     95th percentiles are {@code low} and {@code cautious} over the time at risk
 * @param posterior what is held of it after counting the failures of the records
 */
record TypicalShare(
    DriveKind kind,
    double low,
    double central,
    double cautious,
    GammaRate prior,
    GammaRate posterior) {

  /** For records whose unit has so many of it in a year. */
  static TypicalShare of(DriveKind kind, Records records, double year) {
    double low = expected(kind, Level.LOW, records, year);
    double cautious = expected(kind, Level.CAUTIOUS, records, year);
    double time = records.timeAtRisk();
    GammaRate prior = GammaRate.between(low / time, cautious / time);
    return new TypicalShare(
        kind,
        low,
        expected(kind, Level.CENTRAL, records, year),
        cautious,
        prior,
        prior.after((double) records.failures(), time));
  }

  /** Whether the records are so far from typical that the one says nothing of the other. */
  boolean apart(Estimate rate) {
    boolean more = rate.low() > prior.percentile(0.95);
    return more || rate.high() < prior.percentile(0.05);
  }

  private static double expected(DriveKind kind, Level level, Records records, double year) {
    List<Double> hazards = TypicalLives.yearlyHazards(kind, level);
    double sum = 0;
    for (int i = 0; i < hazards.size(); i++) {
      boolean last = i == hazards.size() - 1;
      double to = last ? Double.POSITIVE_INFINITY : (i + 1) * year;
      sum += hazards.get(i) * records.timeAtRisk(i * year, to) / year;
    }
    return sum;
  }
}
