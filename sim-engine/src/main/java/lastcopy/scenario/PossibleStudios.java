package lastcopy.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * A studio some rates of which are not known: one studio for each point of as many standard normal
 * deviates as there are unknowns. One point is one possible world, shared by all layouts; larger
 * deviates stand for larger hazards.
 *
 * @param central the studio at the point of zeros, where each unknown has its median
 * @param unknowns in the order of the deviates; none if all is known
 * @param at the studio at a point; called on any thread, must not keep the array
 */
public record PossibleStudios(
    Studio central, List<Unknown> unknowns, Function<double[], Studio> at) {

  /** Copies the list. */
  public PossibleStudios {
    Require.present(central, "studio");
    unknowns = List.copyOf(unknowns);
  }

  /** The only possible one. */
  public static PossibleStudios only(Studio studio) {
    return new PossibleStudios(studio, List.of(), z -> studio);
  }

  /** Whether nothing is unknown. */
  public boolean isOne() {
    return unknowns.isEmpty();
  }

  /** The studio in which every deviate is the same. */
  public Studio atAll(double deviate) {
    double[] point = new double[unknowns.size()];
    Arrays.fill(point, deviate);
    return at.apply(point);
  }

  /** The same over another horizon. */
  public PossibleStudios withYears(double years) {
    return new PossibleStudios(
        central.withYears(years), unknowns, point -> at.apply(point).withYears(years));
  }
}
