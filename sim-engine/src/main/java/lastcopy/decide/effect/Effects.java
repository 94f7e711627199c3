package lastcopy.decide.effect;

import java.util.List;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;

/**
 * What changes of a layout do.
 *
 * @param base the layout as it is
 * @param ranked the changes, what takes most off the chance of any loss first
 * @param ties pairs of the first four in the ranking, and of the third with each behind it, that
 *     could not be told apart
 * @param method how losses were estimated
 * @param histories of each alternative
 * @param finished false if it was interrupted
 */
public record Effects(
    LayoutResult base,
    List<MeasuredEffect> ranked,
    List<Tie> ties,
    Method method,
    long histories,
    boolean finished) {

  /**
   * Two changes whose order is not known.
   *
   * @param better id of the one that is ranked first
   * @param worse id of the other
   */
  public record Tie(String better, String worse) {}

  /** Copies the lists. */
  public Effects {
    ranked = List.copyOf(ranked);
    ties = List.copyOf(ties);
  }

  /** Whether two changes could not be told apart, in the order of the ranking. */
  public boolean isTied(String better, String worse) {
    return ties.contains(new Tie(better, worse));
  }
}
