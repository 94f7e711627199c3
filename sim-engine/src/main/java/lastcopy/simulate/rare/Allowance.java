package lastcopy.simulate.rare;

import java.util.function.BooleanSupplier;
import lastcopy.experiment.Progress;

/**
 * How long biased histories of a layout may go on, and who is told how they get on.
 *
 * @param progress told after each merged chunk
 * @param over whether not to wait for the next chunk
 * @param givesWay whether plain histories need the rest of the time if these cannot be trusted by
 *     now
 */
public record Allowance(Progress progress, BooleanSupplier over, BooleanSupplier givesWay) {

  /** As long as it takes, and nobody is told. */
  public static Allowance endless() {
    return new Allowance(Progress.SILENT, () -> false, () -> false);
  }
}
