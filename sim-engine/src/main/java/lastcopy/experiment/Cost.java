package lastcopy.experiment;

import java.util.List;
import lastcopy.interval.Estimate;

/**
 * What a layout costs over the horizon, undiscounted, from plain histories. What a loss would cost
 * is not in it.
 *
 * @param total the mean with its sampling interval
 * @param p5 the smallest amount that at least 5 % of the histories do not exceed: one that some
 *     history did cost
 * @param p50 the same of 50 %
 * @param p95 the same of 95 %
 * @param byKind means by what is paid for, each once, in a fixed order; they add up to the total
 * @param byYear means by year, the last of which may be shorter; they add up to the total
 * @param histories how many histories these figures come from
 */
public record Cost(
    Estimate total,
    double p5,
    double p50,
    double p95,
    List<Part> byKind,
    List<Double> byYear,
    long histories) {

  /**
   * What is paid for something.
   *
   * @param kind stable id: drives, boxes, services, power, work or other
   * @param mean over all histories
   */
  public record Part(String kind, double mean) {}

  /** Copies the lists. */
  public Cost {
    byKind = List.copyOf(byKind);
    byYear = List.copyOf(byYear);
  }
}
