package lastcopy.cli.edit;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastcopy.cli.scenario.CandidateReader;
import lastcopy.cli.scenario.Scenario;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.cli.scenario.yaml.Problem;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * The values of a scenario file under their keys. Immutable: an edit gives another tree, which
 * shares what it did not change. A range that stands in a layout is one unknown in each copy of
 * that layout too, in memory and, as an alias, in the file that is written.
 */
public final class ScenarioTree {
  private static final String LAYOUTS = "layouts";

  /** How a range is written; a value that has it by chance is merely written as an alias. */
  private static final String RANGE = "..";

  private final String name;
  private final Node root;

  private ScenarioTree(String name, Node root) {
    this.name = name;
    this.root = root;
  }

  /**
   * Reads a file that is a valid scenario.
   *
   * @throws ScenarioException if it is none; it knows every mistake
   * @throws IOException if it cannot be read
   */
  public static ScenarioTree read(Path file) throws ScenarioException, IOException {
    return new ScenarioTree(file.toString(), ScenarioReader.tree(file));
  }

  /**
   * Reads a text that is a valid scenario.
   *
   * @param name what messages call it
   * @throws ScenarioException if it is none; it knows every mistake
   */
  public static ScenarioTree parse(String name, String text) throws ScenarioException {
    return new ScenarioTree(name, ScenarioReader.tree(name, text));
  }

  /** What stands at a path of keys, in one line; empty if nothing does. */
  public Optional<String> text(List<String> path) {
    return find(path).map(TreeTexts::line);
  }

  /** The keys of the mapping at a path; none if there is no mapping. */
  public List<String> keys(List<String> path) {
    return find(path).orElse(null) instanceof MappingNode mapping
        ? mapping.getValue().stream().map(TreeTexts::name).toList()
        : List.of();
  }

  private Optional<Node> find(List<String> path) {
    Optional<Node> at = Optional.of(root);
    for (String key : path) {
      at = at.flatMap(node -> TreeTexts.find(node, key));
    }
    return at;
  }

  /** The change that puts a text at a path. */
  public Change change(List<String> path, String to) {
    return new Change(path, text(path).orElse(""), to);
  }

  /** The tree with a value, written in one line, at a path; what leads there is made if missing. */
  public ScenarioTree with(List<String> path, String text) {
    return new ScenarioTree(name, put(root, path, Optional.of(TreeTexts.node(text))));
  }

  /** The tree without what stands at a path. */
  public ScenarioTree without(List<String> path) {
    return find(path).isEmpty() ? this : new ScenarioTree(name, put(root, path, Optional.empty()));
  }

  /** The tree with what stands at a path at another path too. */
  public ScenarioTree copied(List<String> from, List<String> to) {
    Node copy = copy(find(from).orElseThrow(), new IdentityHashMap<>());
    return new ScenarioTree(name, put(root, to, Optional.of(copy)));
  }

  /** The tree with some of its layouts only, in that order. */
  public ScenarioTree withLayouts(List<String> ids) {
    Node layouts = find(List.of(LAYOUTS)).orElseThrow();
    Node chosen = new MappingNode(Tag.MAP, List.of(), FlowStyle.BLOCK);
    for (String id : ids) {
      chosen = put(chosen, List.of(id), Optional.of(TreeTexts.find(layouts, id).orElseThrow()));
    }
    return new ScenarioTree(name, put(root, List.of(LAYOUTS), Optional.of(chosen)));
  }

  /** The tree as it is today: of each choice what stands first. */
  public ScenarioTree today() {
    return new ScenarioTree(name, choices().today());
  }

  /** What the layouts leave open. */
  CandidateReader choices() {
    return ScenarioReader.candidates(name, root);
  }

  /** The tree with these layouts only, by their ids, in that order. */
  ScenarioTree withLayouts(Map<String, Node> layouts) {
    Node all = new MappingNode(Tag.MAP, List.of(), FlowStyle.BLOCK);
    for (Map.Entry<String, Node> layout : layouts.entrySet()) {
      Node own = copy(layout.getValue(), new IdentityHashMap<>());
      all = put(all, List.of(layout.getKey()), Optional.of(own));
    }
    return new ScenarioTree(name, put(root, List.of(LAYOUTS), Optional.of(all)));
  }

  /** The ids of its layouts. */
  public List<String> layouts() {
    return keys(List.of(LAYOUTS));
  }

  /**
   * What the ordinary reader makes of it.
   *
   * @throws ScenarioException if it is no valid scenario
   */
  public Scenario scenario() throws ScenarioException {
    return ScenarioReader.of(name, root);
  }

  /** Why it is no valid scenario: what was found first, and what would be accepted. */
  public Optional<String> mistake() {
    try {
      scenario();
      return Optional.empty();
    } catch (ScenarioException e) {
      Problem first = e.problems().get(0);
      return Optional.of(first.found() + "; accepted: " + first.accepted());
    }
  }

  /** The whole file, without the comments of the one that it came from. */
  public String page() {
    return TreeTexts.page(root);
  }

  /** Writes the whole file below some lines of comment. */
  public void writeTo(OutputStream out, List<String> comments) throws IOException {
    StringBuilder page = new StringBuilder();
    comments.forEach(line -> page.append("# ").append(line).append('\n'));
    out.write(page.append(page()).toString().getBytes(StandardCharsets.UTF_8));
  }

  /** A node with a value below it, or without. */
  private static Node put(Node at, List<String> path, Optional<Node> value) {
    if (path.isEmpty()) {
      return value.orElseThrow();
    }
    boolean mapping = at instanceof MappingNode;
    List<NodeTuple> entries = new ArrayList<>();
    boolean found = false;
    for (NodeTuple entry : mapping ? ((MappingNode) at).getValue() : List.<NodeTuple>of()) {
      if (!TreeTexts.isNamed(entry, path.get(0))) {
        entries.add(entry);
        continue;
      }
      found = true;
      if (path.size() > 1 || value.isPresent()) {
        entries.add(entry(entry.getKeyNode(), entry.getValueNode(), path, value));
      }
    }
    if (!found && value.isPresent()) {
      Node empty = new MappingNode(Tag.MAP, List.of(), FlowStyle.FLOW);
      entries.add(entry(TreeTexts.key(path.get(0)), empty, path, value));
    }
    return new MappingNode(
        Tag.MAP,
        true,
        entries,
        mapping ? ((MappingNode) at).getFlowStyle() : FlowStyle.FLOW,
        at.getStartMark(),
        at.getEndMark());
  }

  private static NodeTuple entry(Node key, Node below, List<String> path, Optional<Node> value) {
    return new NodeTuple(key, put(below, path.subList(1, path.size()), value));
  }

  /** A copy that shares ranges alone; what was shared in it stays shared in the copy. */
  private static Node copy(Node node, Map<Node, Node> copies) {
    Node known = copies.get(node);
    if (known != null) {
      return known;
    }
    Node copy = copyOf(node, copies);
    copies.put(node, copy);
    return copy;
  }

  private static Node copyOf(Node node, Map<Node, Node> copies) {
    if (node instanceof MappingNode mapping) {
      List<NodeTuple> entries =
          mapping.getValue().stream()
              .map(e -> new NodeTuple(copy(e.getKeyNode(), copies), copy(e.getValueNode(), copies)))
              .toList();
      return new MappingNode(
          mapping.getTag(), true, entries, mapping.getFlowStyle(), at(node), node.getEndMark());
    }
    if (node instanceof SequenceNode list) {
      List<Node> items = list.getValue().stream().map(item -> copy(item, copies)).toList();
      return new SequenceNode(
          list.getTag(), true, items, list.getFlowStyle(), at(node), node.getEndMark());
    }
    ScalarNode scalar = (ScalarNode) node;
    return scalar.getValue().contains(RANGE)
        ? scalar
        : new ScalarNode(
            scalar.getTag(),
            true,
            scalar.getValue(),
            scalar.getScalarStyle(),
            at(node),
            node.getEndMark());
  }

  private static Optional<Mark> at(Node node) {
    return node.getStartMark();
  }
}
