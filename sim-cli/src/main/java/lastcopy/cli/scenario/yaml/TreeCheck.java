package lastcopy.cli.scenario.yaml;

import java.util.HashSet;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Checks of a whole tree: its size with aliases expanded, and keys given twice. */
public final class TreeCheck {
  private static final int MOST_NODES = 100_000;
  // Aliases can nest deeper than the text does.
  private static final int DEEPEST = 60;

  private final Notes notes;
  private int nodes;
  private int depth;

  /** Notes mistakes into these. */
  public TreeCheck(Notes notes) {
    this.notes = notes;
  }

  /** Whether the tree can be read on; what is wrong with it is noted in either case. */
  public boolean holds(Node node) {
    if (node.isRecursive() || ++nodes > MOST_NODES || depth > DEEPEST) {
      String found = node.isRecursive() ? "an alias of what it stands in" : "too many aliases";
      notes.problem(node, found, "at most " + MOST_NODES + " values, aliases written out");
      return false;
    }
    depth++;
    boolean holds = childrenHold(node);
    depth--;
    return holds;
  }

  private boolean childrenHold(Node node) {
    if (node instanceof SequenceNode list) {
      return list.getValue().stream().allMatch(this::holds);
    }
    return !(node instanceof MappingNode mapping) || entriesHold(mapping);
  }

  private boolean entriesHold(MappingNode mapping) {
    Set<String> seen = new HashSet<>();
    for (NodeTuple entry : mapping.getValue()) {
      checkKey(entry.getKeyNode(), seen);
      if (!holds(entry.getValueNode())) {
        return false;
      }
    }
    return true;
  }

  private void checkKey(Node key, Set<String> seen) {
    if (!(key instanceof ScalarNode)) {
      notes.problem(key, Nodes.describe(key) + " as a key", "a word as a key");
    } else if (!seen.add(Nodes.text(key))) {
      notes.problem(
          key, "the key " + Nodes.quote(Nodes.text(key)) + " a second time", "each key once");
    }
  }
}
