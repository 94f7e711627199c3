package lastcopy.cli.scenario.yaml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lastcopy.scenario.Unknown;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * The ranges of a file, each place one unknown, and the values that stand in for them in one
 * possible world. An alias is the place that it names.
 */
public final class Ranges {

  /** A range and where it stands. */
  private record Found(Node node, double from, double to, String unit) {}

  /** As many as quasi-random sequences have dimensions for, with one for what no surface says. */
  public static final int MOST = 999;

  private final double[] point;
  private final Map<Node, Integer> numbers = new HashMap<>();
  private final List<Found> found = new ArrayList<>();

  private Ranges(double[] point) {
    this.point = point;
  }

  /** Each unknown has its median. */
  static Ranges central() {
    return new Ranges(new double[0]);
  }

  /** Each unknown has the value of its standard normal deviate, in the order of reading. */
  public static Ranges in(double[] point) {
    return new Ranges(point.clone());
  }

  /** The deviate of the range at a node; the larger, the more hazard. */
  public double deviate(Node node, double from, double to, String unit) {
    int number = numbers.computeIfAbsent(node, n -> found.size());
    if (number == found.size()) {
      found.add(new Found(node, from, to, unit));
    }
    return number < point.length ? point[number] : 0;
  }

  /** Notes that there are more than can be drawn, at the first that is too much. */
  public void limit(Notes notes) {
    if (found.size() > MOST) {
      String many = String.format(Locale.ROOT, "%,d ranges", found.size());
      notes.problem(found.get(MOST).node, many, "at most " + MOST + " in a file");
    }
  }

  /** The unknowns, in the order of their deviates, by their keys below the root of the file. */
  public List<Unknown> unknowns(Node root) {
    return found.stream()
        .map(
            range ->
                new Unknown(path(root, range.node).orElseThrow(), range.from, range.to, range.unit))
        .toList();
  }

  private static Optional<String> path(Node at, Node wanted) {
    if (at.equals(wanted)) { // a node equals itself alone
      return Optional.of("");
    }
    if (at instanceof MappingNode mapping) {
      for (NodeTuple entry : mapping.getValue()) {
        Optional<String> rest = path(entry.getValueNode(), wanted);
        if (rest.isPresent()) {
          return Optional.of(join(Nodes.text(entry.getKeyNode()), rest.get()));
        }
      }
    }
    return at instanceof SequenceNode list ? item(list.getValue(), wanted) : Optional.empty();
  }

  private static Optional<String> item(List<Node> items, Node wanted) {
    for (int i = 0; i < items.size(); i++) {
      Optional<String> rest = path(items.get(i), wanted);
      if (rest.isPresent()) {
        return Optional.of(join(Integer.toString(i + 1), rest.get()));
      }
    }
    return Optional.empty();
  }

  private static String join(String key, String rest) {
    return rest.isEmpty() ? key : key + "." + rest;
  }
}
