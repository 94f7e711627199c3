package lastcopy.cli.scenario.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Plain questions to nodes of a YAML file. */
public final class Nodes {
  private static final int LONGEST_QUOTE = 60;

  private Nodes() {}

  /** A named entry of a mapping whose keys are names. */
  public record Named(String name, Node key, Node value) {}

  /** The text of a scalar; empty for anything else. */
  public static String text(Node node) {
    return node instanceof ScalarNode scalar ? scalar.getValue().strip() : "";
  }

  /** Whether nothing stands there. */
  public static boolean isEmpty(Node node) {
    return node.getTag().equals(Tag.NULL) || (node instanceof ScalarNode && text(node).isEmpty());
  }

  /** What a message says that it found. */
  public static String describe(Node node) {
    if (node instanceof MappingNode) {
      return "a mapping";
    }
    if (node instanceof SequenceNode) {
      return "a list";
    }
    return isEmpty(node) ? "nothing" : quote(text(node));
  }

  /** A text in quotes, shortened to what a message has room for. */
  public static String quote(String text) {
    String line = text.replaceAll("\\s+", " ");
    boolean tooLong = line.length() > LONGEST_QUOTE;
    return "'" + (tooLong ? line.substring(0, LONGEST_QUOTE) + "..." : line) + "'";
  }

  /** The value of a key, if the node is a mapping that has it. */
  public static Optional<Node> find(Node node, String key) {
    if (!(node instanceof MappingNode mapping)) {
      return Optional.empty();
    }
    return mapping.getValue().stream()
        .filter(entry -> text(entry.getKeyNode()).equals(key))
        .map(NodeTuple::getValueNode)
        .findFirst();
  }

  /** What stands at the end of a path of keys, or as far along it as the file goes. */
  public static Node at(Node root, List<String> path) {
    Node at = root;
    for (String key : path) {
      Optional<Node> next = find(at, key);
      if (next.isEmpty()) {
        return at;
      }
      at = next.get();
    }
    return at;
  }

  /** The entries of a mapping from names, each once; anything else is noted as a problem. */
  public static List<Named> named(Notes notes, Node node, String what) {
    if (!(node instanceof MappingNode mapping)) {
      notes.problem(node, describe(node) + " for " + what, "names with a section each");
      return List.of();
    }
    Map<String, Named> found = new LinkedHashMap<>();
    for (NodeTuple entry : mapping.getValue()) {
      String name = text(entry.getKeyNode());
      if (name.isEmpty()) {
        notes.problem(entry.getKeyNode(), "an empty name", "a name");
      } else {
        found.putIfAbsent(name, new Named(name, entry.getKeyNode(), entry.getValueNode()));
      }
    }
    return List.copyOf(found.values());
  }

  /** The items of a list; anything else is noted as a problem. */
  public static List<Node> items(Notes notes, Node node, String accepted) {
    if (node instanceof SequenceNode list && !list.getValue().isEmpty()) {
      return list.getValue();
    }
    boolean list = node instanceof SequenceNode;
    notes.problem(node, list ? "an empty list" : describe(node), accepted);
    return List.of();
  }
}
