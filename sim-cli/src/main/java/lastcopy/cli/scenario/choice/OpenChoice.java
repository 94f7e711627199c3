package lastcopy.cli.scenario.choice;

import java.util.List;
import java.util.Optional;
import lastcopy.scenario.Costs;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * What a file leaves open below a layout.
 *
 * @param path the keys that lead to it from the layout
 * @param at where it stands
 * @param alternatives two or more; the first is what there is today
 * @param within the number, among those of the layout, of the choice whether the copy is there that
 *     this one is about; empty if it is always there
 */
public record OpenChoice(
    List<String> path, Node at, List<Alternative> alternatives, Optional<Integer> within) {

  /** Copies the lists. */
  public OpenChoice {
    path = List.copyOf(path);
    alternatives = List.copyOf(alternatives);
  }

  /**
   * One of them.
   *
   * @param value what stands there then; empty where a copy is left out
   * @param costs what it takes beside
   */
  public record Alternative(Optional<Node> value, Costs costs) {}

  /** Whether a copy is there or not. */
  public boolean isOfCopy() {
    return alternatives.get(0).value().isEmpty();
  }
}
