package lastcopy.prove;

import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Studio;

/** How this program gets a figure. */
public sealed interface Figure permits Figure.Computed, Figure.Simulated {

  /**
   * By arithmetic.
   *
   * @param value the closed form
   */
  record Computed(DoubleSupplier value) implements Figure {}

  /**
   * By the engine, as every scenario is simulated.
   *
   * @param studio what is simulated; its first layout counts
   * @param figure the figure taken from the result
   * @param share whether the figure is the share of histories to which something happened
   * @param histories how many histories are simulated
   * @param method how losses are estimated
   */
  record Simulated(
      Supplier<Studio> studio,
      Function<LayoutResult, Estimate> figure,
      boolean share,
      long histories,
      Method method)
      implements Figure {

    /** Checks the range. */
    public Simulated {
      if (histories < 1) {
        throw new IllegalArgumentException("histories must be at least 1: " + histories);
      }
    }
  }
}
