package lastcopy.decide;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/**
 * What is asked of candidates.
 *
 * @param studio all but the layouts
 * @param candidates each a layout of the studio, of different ids; the first is what there is today
 * @param target the chance of any loss over the horizon that is still accepted, in (0, 1]
 * @param budget the cost over the horizon that is still accepted, at least 0
 */
public record Question(
    Studio studio, List<Layout> candidates, OptionalDouble target, OptionalDouble budget) {

  /** Copies the list. */
  public Question {
    candidates = List.copyOf(candidates);
    if (candidates.isEmpty()) {
      throw new IllegalArgumentException("no candidate");
    }
    if (target.isPresent() && !(target.getAsDouble() > 0 && target.getAsDouble() <= 1)) {
      throw new IllegalArgumentException("a target must be in (0, 1]: " + target.getAsDouble());
    }
    if (budget.isPresent() && !(budget.getAsDouble() >= 0)) {
      throw new IllegalArgumentException("a budget must be at least 0: " + budget.getAsDouble());
    }
  }
}
