package lastcopy.prove;

import lastcopy.interval.Estimate;

/**
 * What came of a check.
 *
 * @param check which
 * @param reference what the figure is held against
 * @param ours the figure with its 95 % interval, a single point where nothing is simulated
 * @param from lower end of the interval that decides, far wider than that of 95 %
 * @param to its upper end
 */
public record Finding(Check check, Reference reference, Estimate ours, double from, double to) {

  /** Whether the figure agrees with the reference. */
  public boolean holds() {
    return reference.agrees(from, to);
  }

  /** The deviation from the reference as a share of it. */
  public double deviation() {
    return ours.value() / reference.value() - 1;
  }
}
