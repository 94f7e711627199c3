package lastcopy.cli.scenario.choice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lastcopy.cli.scenario.part.MoneyReader;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.cli.scenario.yaml.Spelling;
import lastcopy.scenario.Costs;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Finds what a layout leaves open. Mistakes of choices themselves are noted. */
public final class ChoiceFinder {
  private static final String ONE_OF = "one_of";
  private static final String OPTIONAL = "optional";
  private static final String USE = "use";
  private static final String COSTS = "costs";
  private static final String COPIES = "copies";

  private static final String EXAMPLE = "one_of: [7 days, 1 day]";

  private final Notes notes;
  private final String layout;
  private final List<OpenChoice> found = new ArrayList<>();
  private final Set<Node> met = new HashSet<>();
  private String working = "";

  private ChoiceFinder(Notes notes, String layout) {
    this.notes = notes;
    this.layout = layout;
  }

  /** The choices of a layout, in the order of the file. */
  public static List<OpenChoice> of(Notes notes, Nodes.Named layout) {
    ChoiceFinder finder = new ChoiceFinder(notes, layout.name());
    finder.look(layout.value(), List.of(), Optional.empty());
    return List.copyOf(finder.found);
  }

  /** Notes choices that stand where there are none. */
  public static void refuse(Notes notes, Node node) {
    if (node instanceof MappingNode mapping) {
      for (NodeTuple entry : mapping.getValue()) {
        if (Nodes.text(entry.getKeyNode()).equals(ONE_OF)) {
          notes.problem(entry.getKeyNode(), "'one_of' outside of a layout", "it below a layout");
        }
        refuse(notes, entry.getValueNode());
      }
    } else if (node instanceof SequenceNode list) {
      list.getValue().forEach(item -> refuse(notes, item));
    }
  }

  private void look(Node node, List<String> path, Optional<Integer> within) {
    if (node instanceof SequenceNode list) {
      for (int i = 0; i < list.getValue().size(); i++) {
        look(list.getValue().get(i), with(path, Integer.toString(i + 1)), within);
      }
    } else if (node instanceof MappingNode mapping) {
      look(mapping, path, within);
    }
  }

  private void look(MappingNode mapping, List<String> path, Optional<Integer> within) {
    Optional<Node> list = Nodes.find(mapping, ONE_OF).or(() -> nearly(mapping));
    if (list.isPresent()) {
      if (met.add(mapping)) {
        choice(mapping, list.get(), path, within);
      }
      return;
    }
    if (path.equals(List.of(COPIES)) && !mapping.getValue().isEmpty()) {
      working = Nodes.text(mapping.getValue().get(0).getKeyNode());
    }
    Optional<Integer> inside = isCopy(path) ? copy(mapping, path) : within;
    for (NodeTuple entry : mapping.getValue()) {
      look(entry.getValueNode(), with(path, Nodes.text(entry.getKeyNode())), inside);
    }
  }

  private static boolean isCopy(List<String> path) {
    return path.size() == 2 && path.get(0).equals(COPIES);
  }

  private static List<String> with(List<String> path, String key) {
    List<String> longer = new ArrayList<>(path);
    longer.add(key);
    return longer;
  }

  /** A list below a word that is almost the right one, which is noted. */
  private Optional<Node> nearly(MappingNode mapping) {
    if (mapping.getValue().size() != 1) {
      return Optional.empty();
    }
    NodeTuple only = mapping.getValue().get(0);
    String key = Nodes.text(only.getKeyNode());
    boolean near = !Spelling.nearest(key.replace(' ', '_'), List.of(ONE_OF)).isEmpty();
    if (!near || !(only.getValueNode() instanceof SequenceNode)) {
      return Optional.empty();
    }
    notes.problem(only.getKeyNode(), Nodes.quote(key) + " with a list", EXAMPLE, ONE_OF);
    return Optional.of(only.getValueNode());
  }

  private Optional<Integer> copy(MappingNode copy, List<String> path) {
    Optional<Node> optional = Nodes.find(copy, OPTIONAL);
    if (optional.isEmpty()) {
      return Optional.empty();
    }
    if (path.get(1).equals(working)) {
      notes.problem(
          optional.get(), "'optional' on the first copy, the one for work", "it on another copy");
      return Optional.empty();
    }
    if (!Nodes.text(optional.get()).equals("true")) {
      notes.problem(
          optional.get(),
          Nodes.describe(optional.get()) + " for 'optional'",
          "true; a copy that is always there says nothing");
      return Optional.empty();
    }
    List<OpenChoice.Alternative> both =
        List.of(
            new OpenChoice.Alternative(Optional.empty(), Costs.NONE),
            new OpenChoice.Alternative(Optional.of(without(copy)), Costs.NONE));
    found.add(new OpenChoice(path, copy, both, Optional.empty()));
    return Optional.of(found.size() - 1);
  }

  private static Node without(MappingNode copy) {
    return Resolved.mapping(
        copy,
        copy.getValue().stream()
            .filter(entry -> !Nodes.text(entry.getKeyNode()).equals(OPTIONAL))
            .toList());
  }

  /** What is wrong with a choice is noted, and its first entry stands in for it. */
  private void choice(MappingNode at, Node list, List<String> path, Optional<Integer> within) {
    List<Node> items = list instanceof SequenceNode all ? all.getValue() : List.of();
    if (at.getValue().size() > 1) {
      notes.problem(at, "'one_of' beside other keys", "one_of alone, or a choice for each key");
    } else if (items.size() < 2) {
      String few = items.isEmpty() ? "an empty list" : "one entry";
      String what = list instanceof SequenceNode ? few : Nodes.describe(list);
      notes.problem(list, what + " for 'one_of'", "two entries or more, such as " + EXAMPLE);
    }
    List<OpenChoice.Alternative> alternatives = new ArrayList<>();
    for (Node item : items) {
      OpenChoice.Alternative one = alternative(item);
      noteWithin(one.value().orElseThrow());
      if (alternatives.stream().anyMatch(other -> isSame(one, other))) {
        notes.problem(item, "an entry of 'one_of' a second time", "each alternative once");
      }
      alternatives.add(one);
    }
    if (alternatives.isEmpty()) {
      alternatives.add(new OpenChoice.Alternative(Optional.empty(), Costs.NONE));
    }
    found.add(new OpenChoice(path, at, alternatives, within));
  }

  private static boolean isSame(OpenChoice.Alternative one, OpenChoice.Alternative other) {
    return one.costs().equals(other.costs())
        && Resolved.isSame(one.value().orElseThrow(), other.value().orElseThrow());
  }

  /** A choice within an alternative would be another one for each alternative. */
  private void noteWithin(Node node) {
    if (node instanceof SequenceNode list) {
      list.getValue().forEach(this::noteWithin);
    } else if (node instanceof MappingNode mapping) {
      for (NodeTuple entry : mapping.getValue()) {
        String key = Nodes.text(entry.getKeyNode());
        if (key.equals(ONE_OF) || key.equals(OPTIONAL)) {
          notes.problem(
              entry.getKeyNode(),
              "'" + key + "' within an alternative",
              "every combination as an alternative of its own");
        }
        noteWithin(entry.getValueNode());
      }
    }
  }

  private OpenChoice.Alternative alternative(Node item) {
    Optional<Node> use = Nodes.find(item, USE);
    if (use.isEmpty()) {
      return new OpenChoice.Alternative(Optional.of(item), Costs.NONE);
    }
    Section section = Section.of(notes, Kind.ALTERNATIVE, item, "layouts." + layout);
    Costs costs =
        section
            .require(COSTS, "{per_year: 12}")
            .map(node -> new MoneyReader(notes).costs(node, section.where()))
            .orElse(Costs.NONE);
    return new OpenChoice.Alternative(use, costs);
  }
}
