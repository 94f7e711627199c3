package lastcopy.cli.scenario.value;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.cli.scenario.yaml.Spelling;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;

/** A mapping whose keys are fixed by the format; unknown keys are noted as problems. */
public final class Section {
  private static final String SPARE =
      "wait: 0 h, which is what a spare on the shelf means: the replacement is there at once";

  private static final Pattern DIGITS = Pattern.compile("\\d");

  /** Words that owners use for what the format says otherwise. */
  private static final Map<String, String> MEANT =
      Map.of(
          "spare", SPARE,
          "spares", SPARE,
          "hot_spare", SPARE);

  private final Notes notes;
  private final Kind kind;
  private final Node node;
  private final String where;
  private final Map<String, NodeTuple> entries = new LinkedHashMap<>();

  private Section(Notes notes, Kind kind, Node node, String where) {
    this.notes = notes;
    this.kind = kind;
    this.node = node;
    this.where = where;
  }

  /** Reads the keys; a node that is no mapping is noted and gives a section without keys. */
  public static Section of(Notes notes, Kind kind, Node node, String where) {
    Section section = new Section(notes, kind, node, where);
    if (node instanceof MappingNode mapping) {
      mapping.getValue().forEach(section::add);
    } else {
      String accepted = "keys with values, such as " + Spelling.few("", kind.keys());
      notes.problem(node, Nodes.describe(node) + " for " + kind.phrase(), accepted);
    }
    return section;
  }

  private void add(NodeTuple entry) {
    String key = Nodes.text(entry.getKeyNode());
    if (kind.keys().contains(key)) {
      entries.putIfAbsent(key, entry);
      return;
    }
    if (Nodes.isEmpty(entry.getValueNode()) && DIGITS.matcher(key).lookingAt()) {
      notes.problem(
          entry.getKeyNode(),
          "'" + key + "' after a comma, which begins a new key",
          "a number with a point, such as 1.5 %/year");
      return;
    }
    if (MEANT.containsKey(key)) {
      notes.problem(
          entry.getKeyNode(), "'" + key + "', which is no key of " + kind.phrase(), MEANT.get(key));
      return;
    }
    notes.problem(
        entry.getKeyNode(),
        Nodes.quote(key) + ", which is no key of " + kind.phrase(),
        notes.many() ? "other keys" : Spelling.few(key, kind.keys()),
        notes.many() ? "" : Spelling.nearest(key, kind.keys()));
  }

  /** Whether it has a key. */
  public boolean has(String key) {
    return entries.containsKey(key);
  }

  /** The value of a key that may be left out. */
  public Optional<Node> get(String key) {
    return Optional.ofNullable(entries.get(key)).map(NodeTuple::getValueNode);
  }

  /** The value of a key that must be there; its absence is noted with an example. */
  public Optional<Node> require(String key, String example) {
    if (!has(key) && node instanceof MappingNode) {
      notes.problem(node, kind.phrase() + " without '" + key + "'", key + ": " + example);
    }
    return get(key);
  }

  /** Notes that a key stands where it has no effect. */
  public void refuse(String key, String why, String accepted) {
    if (has(key)) {
      notes.problem(entries.get(key).getKeyNode(), "'" + key + "' " + why, accepted);
    }
  }

  /** Notes a default of this section. */
  public void defaulted(String key, String value) {
    notes.defaulted(where, key, value);
  }

  /** Notes a default of this section that is a guess of this project. */
  public void assumed(String key, String value) {
    notes.assumed(where, key, value);
  }

  /** Whether it is a block with keys at all. */
  public boolean isMapping() {
    return node instanceof MappingNode;
  }

  /** Where it stands. */
  public Node node() {
    return node;
  }

  /** Its path in the file, such as {@code layouts.mirror}. */
  public String where() {
    return where;
  }
}
