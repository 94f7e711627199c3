package lastcopy.cli.edit;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Present;
import org.snakeyaml.engine.v2.api.lowlevel.Serialize;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Text of YAML from nodes, and nodes from text. */
final class TreeTexts {
  private static final int WIDTH = 100;
  private static final int NEVER_FOLDED = 1_000_000;

  private TreeTexts() {}

  /** The node of a text, such as {@code {checked_every: 30 days}}. */
  static Node node(String text) {
    return new Compose(LoadSettings.builder().build()).composeString(text).orElseThrow();
  }

  /** A text as the name of something, whatever is in it. */
  static String quoted(String text) {
    return line(new ScalarNode(Tag.STR, text, ScalarStyle.PLAIN));
  }

  static Node key(String name) {
    return new ScalarNode(Tag.STR, name, ScalarStyle.PLAIN);
  }

  /** The node in one line. */
  static String line(Node node) {
    return dump(flow(node), NEVER_FOLDED).strip();
  }

  /** A whole file. */
  static String page(Node root) {
    return dump(root, WIDTH);
  }

  private static String dump(Node node, int width) {
    DumpSettings settings = DumpSettings.builder().setWidth(width).build();
    return new Present(settings)
        .emitToString(new Serialize(settings).serializeOne(node).iterator());
  }

  /** A copy without what is shared, so that no anchor is in the line. */
  private static Node flow(Node node) {
    if (node instanceof MappingNode mapping) {
      List<NodeTuple> entries =
          mapping.getValue().stream()
              .map(entry -> new NodeTuple(flow(entry.getKeyNode()), flow(entry.getValueNode())))
              .toList();
      return new MappingNode(mapping.getTag(), entries, FlowStyle.FLOW);
    }
    if (node instanceof SequenceNode list) {
      List<Node> items = list.getValue().stream().map(TreeTexts::flow).toList();
      return new SequenceNode(list.getTag(), items, FlowStyle.FLOW);
    }
    ScalarNode scalar = (ScalarNode) node;
    return new ScalarNode(scalar.getTag(), scalar.getValue().strip(), inLine(scalar));
  }

  private static ScalarStyle inLine(ScalarNode scalar) {
    ScalarStyle style = scalar.getScalarStyle();
    boolean block = style == ScalarStyle.LITERAL || style == ScalarStyle.FOLDED;
    return block ? ScalarStyle.DOUBLE_QUOTED : style;
  }

  /** The value of a key, if the node is a mapping that has it. */
  static Optional<Node> find(Node node, String key) {
    return node instanceof MappingNode mapping
        ? mapping.getValue().stream()
            .filter(entry -> isNamed(entry, key))
            .map(NodeTuple::getValueNode)
            .findFirst()
        : Optional.empty();
  }

  static boolean isNamed(NodeTuple entry, String key) {
    return name(entry).equals(key);
  }

  static String name(NodeTuple entry) {
    return entry.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue().strip() : "";
  }
}
