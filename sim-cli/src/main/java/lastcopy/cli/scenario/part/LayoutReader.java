package lastcopy.cli.scenario.part;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.cli.scenario.value.Bound;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Known;
import lastcopy.cli.scenario.value.Maybe;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Costs;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Place;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads layouts. */
public final class LayoutReader {
  private final Notes notes;
  private final Known known;
  private final boolean onHand;
  private final Values values;

  /**
   * Notes mistakes into these.
   *
   * @param known what the layouts may name
   * @param onHand whether there is footage at the start
   */
  public LayoutReader(Notes notes, Known known, boolean onHand) {
    this.notes = notes;
    this.known = known;
    this.onHand = onHand;
    this.values = new Values(notes);
  }

  /** The layouts that could be read; at least one must be there. */
  List<Layout> read(Node node) {
    List<Layout> layouts = new ArrayList<>();
    if (node instanceof MappingNode mapping && mapping.getValue().isEmpty()) {
      notes.problem(node, "no layout", "at least one layout");
    }
    for (Nodes.Named entry : Nodes.named(notes, node, "layouts")) {
      layout(entry).ifPresent(layouts::add);
    }
    return layouts;
  }

  /** One layout; empty if it could not be read, which is noted. */
  public Optional<Layout> layout(Nodes.Named entry) {
    String where = "layouts." + entry.name();
    Section section = Section.of(notes, Kind.LAYOUT, entry.value(), where);
    String title = section.get("title").map(n -> values.text(n, "a title")).orElse(entry.name());
    OptionalDouble cards = Maybe.number(section.get("cards"), n -> cards(n, where));
    Costs costs =
        section.get("costs").map(n -> new MoneyReader(notes).costs(n, where)).orElse(Costs.NONE);
    List<Copy> copies =
        section
            .require("copies", "{main: {drives: 1 x desk-8tb}}")
            .map(n -> copies(n, where))
            .orElse(List.of());
    if (onHand && !copies.isEmpty() && copies.stream().noneMatch(Copy::startsFull)) {
      String found = "layout '" + entry.name() + "', where no copy holds the footage on hand";
      notes.problem(entry.key(), found, "one copy or more that starts full");
    }
    return copies.isEmpty()
        ? Optional.empty()
        : notes.build(entry.key(), () -> new Layout(entry.name(), title, copies, cards, costs));
  }

  private double cards(Node node, String where) {
    Section section = Section.of(notes, Kind.CARDS, node, where + ".cards");
    return section.require("keep", "7 days").map(n -> values.time(n, Bound.ABOVE_ZERO)).orElse(1.0);
  }

  private List<Copy> copies(Node node, String where) {
    List<Nodes.Named> entries = Nodes.named(notes, node, "copies");
    if (node instanceof MappingNode && entries.isEmpty()) {
      notes.problem(node, "no copy", "at least one copy");
    }
    List<String> ids = entries.stream().map(Nodes.Named::name).toList();
    noteCircles(entries, ids);
    List<Copy> copies = new ArrayList<>();
    CopyReader reader = new CopyReader(notes, known);
    for (Nodes.Named entry : entries) {
      reader.read(entry, where + "." + entry.name(), ids).ifPresent(copies::add);
    }
    noteSharedBoxes(entries, copies);
    // With a copy missing, the rest would only bring mistakes that follow from it.
    return copies.size() == entries.size() ? copies : List.of();
  }

  /** A box stands in one place: each copy that has it elsewhere is noted at its box. */
  private void noteSharedBoxes(List<Nodes.Named> entries, List<Copy> copies) {
    Map<String, Copy> first = new HashMap<>();
    for (Copy copy : copies) {
      String box = copy.box().map(Box::id).orElse("");
      Copy other = first.putIfAbsent(box, copy);
      if (!box.isEmpty() && other != null && !other.place().id().equals(copy.place().id())) {
        String found =
            String.format(
                "the box '%s' %s, and with copy '%s' %s",
                box, standing(copy), other.id(), standing(other));
        String accepted = "one place for all copies in a box, or a box of its own for each place";
        notes.problem(nodeOf(entries, copy.id(), "box"), found, accepted);
      }
    }
  }

  private static String standing(Copy copy) {
    return copy.place().id().equals(Place.ofItsOwn(copy.id()).id())
        ? "in a place of its own ('place' is left out)"
        : "in the place '" + copy.place().id() + "'";
  }

  private static Node nodeOf(List<Nodes.Named> entries, String copy, String key) {
    Nodes.Named named =
        entries.stream().filter(entry -> entry.name().equals(copy)).findFirst().orElseThrow();
    return Nodes.find(named.value(), key).orElse(named.key());
  }

  /** Notes each circle of feeds once, at the source that its first copy names. */
  private void noteCircles(List<Nodes.Named> entries, List<String> ids) {
    Map<String, Node> sources = new HashMap<>();
    // A feed of the first copy is a mistake of its own.
    for (Nodes.Named entry : entries.stream().skip(1).toList()) {
      Nodes.find(entry.value(), "feed")
          .flatMap(feed -> Nodes.find(feed, "from"))
          .ifPresent(from -> sources.put(entry.name(), from));
    }
    for (String id : ids) {
      List<String> circle = circle(id, sources);
      boolean firstOfIt = circle.stream().allMatch(other -> ids.indexOf(other) >= ids.indexOf(id));
      if (circle.size() > 1 && firstOfIt) {
        String found = "feeds in a circle: " + String.join(" from ", circle) + " from " + id;
        String accepted = "feeds that lead back to the first copy, " + ids.get(0);
        notes.problem(sources.get(id), found, accepted);
      }
    }
  }

  /** The copies from one back to itself along their sources; empty if there is no way back. */
  private static List<String> circle(String id, Map<String, Node> sources) {
    List<String> way = new ArrayList<>();
    String at = id;
    while (sources.containsKey(at) && !way.contains(at)) {
      way.add(at);
      at = Nodes.text(sources.get(at));
    }
    return at.equals(id) ? way : List.of();
  }
}
