package lastcopy.cli.scenario.choice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.scenario.Costs;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Values with others in the place of some; what is not changed stays the very same. */
public final class Resolved {

  private static final String COSTS = "costs";

  private Resolved() {}

  /**
   * A value with others in the place of some.
   *
   * @param others by what they stand for, each value being itself alone; an empty one leaves an
   *     entry out
   */
  public static Node of(Node node, Map<Node, Optional<Node>> others) {
    if (node instanceof MappingNode mapping) {
      List<NodeTuple> entries = new ArrayList<>();
      boolean same = true;
      for (NodeTuple entry : mapping.getValue()) {
        Node old = entry.getValueNode();
        Optional<Node> value = others.getOrDefault(old, Optional.of(old));
        // A value in the place of another may have some within itself.
        Optional<Node> now = value.map(each -> of(each, others));
        same &= now.isPresent() && now.get().equals(old);
        now.ifPresent(each -> entries.add(new NodeTuple(entry.getKeyNode(), each)));
      }
      return same ? node : mapping(mapping, entries);
    }
    if (node instanceof SequenceNode list) {
      List<Node> items =
          list.getValue().stream()
              .map(item -> of(others.getOrDefault(item, Optional.of(item)).orElse(item), others))
              .toList();
      return items.equals(list.getValue())
          ? node
          : new SequenceNode(
              list.getTag(),
              true,
              items,
              list.getFlowStyle(),
              list.getStartMark(),
              list.getEndMark());
    }
    return node;
  }

  /** A mapping of other entries in the same place. */
  static MappingNode mapping(Node at, List<NodeTuple> entries) {
    return new MappingNode(
        Tag.MAP,
        true,
        entries,
        at instanceof MappingNode mapping ? mapping.getFlowStyle() : FlowStyle.FLOW,
        at.getStartMark(),
        at.getEndMark());
  }

  /** A layout that takes more beside. */
  public static Node withCosts(Node layout, Costs stated, Costs more) {
    if (more.equals(Costs.NONE)) {
      return layout;
    }
    Costs all = stated.plus(more);
    List<NodeTuple> amounts = new ArrayList<>();
    add(amounts, layout, "once", all.once());
    add(amounts, layout, "per_year", all.perYear());
    add(amounts, layout, "per_month", all.perMonth());
    List<NodeTuple> entries = new ArrayList<>(((MappingNode) layout).getValue());
    entries.removeIf(entry -> Nodes.text(entry.getKeyNode()).equals(COSTS));
    Node costs =
        new MappingNode(
            Tag.MAP, true, amounts, FlowStyle.FLOW, layout.getStartMark(), layout.getEndMark());
    entries.add(new NodeTuple(word(layout, COSTS), costs));
    return mapping(layout, entries);
  }

  private static void add(List<NodeTuple> to, Node at, String key, double amount) {
    if (amount > 0) {
      Node value = word(at, BigDecimal.valueOf(amount).toPlainString());
      to.add(new NodeTuple(word(at, key), value));
    }
  }

  private static Node word(Node at, String text) {
    return new ScalarNode(
        Tag.STR, true, text, ScalarStyle.PLAIN, at.getStartMark(), at.getEndMark());
  }

  /** Whether two values are written alike, but for spaces. */
  static boolean isSame(Node a, Node b) {
    if (a instanceof MappingNode one && b instanceof MappingNode other) {
      return one.getValue().size() == other.getValue().size()
          && one.getValue().stream()
              .allMatch(
                  entry ->
                      Nodes.find(other, Nodes.text(entry.getKeyNode()))
                          .filter(value -> isSame(entry.getValueNode(), value))
                          .isPresent());
    }
    if (a instanceof SequenceNode one && b instanceof SequenceNode other) {
      int size = one.getValue().size();
      boolean same = size == other.getValue().size();
      for (int i = 0; same && i < size; i++) {
        same = isSame(one.getValue().get(i), other.getValue().get(i));
      }
      return same;
    }
    return a instanceof ScalarNode && b instanceof ScalarNode && words(a).equals(words(b));
  }

  private static String words(Node scalar) {
    return Nodes.text(scalar).replaceAll("\\s+", " ");
  }
}
