package lastcopy.cli.scenario.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lastcopy.cli.scenario.value.Bound;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Maybe;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.scenario.Box;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads places and boxes. */
final class PlaceReader {
  private final Notes notes;
  private final Values values;
  private final MoneyReader money;

  PlaceReader(Notes notes) {
    this.notes = notes;
    this.values = new Values(notes);
    this.money = new MoneyReader(notes);
  }

  /** The places by name, in the order of the file. */
  Map<String, Place> places(Node node) {
    Map<String, Place> places = new LinkedHashMap<>();
    for (Nodes.Named entry : Nodes.named(notes, node, "places")) {
      notes
          .build(entry.key(), () -> new Place(entry.name(), mishaps(entry)))
          .ifPresent(place -> places.put(entry.name(), place));
    }
    return places;
  }

  private List<Mishap> mishaps(Nodes.Named place) {
    List<Mishap> mishaps = new ArrayList<>();
    if (Nodes.isEmpty(place.value())) {
      return mishaps;
    }
    String where = "places." + place.name();
    Section section = Section.of(notes, Kind.PLACE, place.value(), where);
    section
        .get("mishaps")
        .ifPresent(
            node ->
                Nodes.named(notes, node, "mishaps").forEach(entry -> add(mishaps, entry, where)));
    return mishaps;
  }

  /** A mishap of its own goes before the typical one of that name. */
  private void add(List<Mishap> mishaps, Nodes.Named entry, String where) {
    if (!entry.name().equals("typical") || entry.value() instanceof MappingNode) {
      mishaps.removeIf(other -> other.id().equals(entry.name()));
      mishaps.add(mishap(entry, where));
      return;
    }
    notes.typical(where + ".mishaps", "typical", Nodes.text(entry.value()));
    Set<String> own = mishaps.stream().map(Mishap::id).collect(Collectors.toSet());
    new TypicalReader(notes)
        .mishaps(entry.value()).stream()
            .filter(typical -> !own.contains(typical.id()))
            .forEach(mishaps::add);
  }

  private Mishap mishap(Nodes.Named entry, String where) {
    Section section =
        Section.of(notes, Kind.MISHAP, entry.value(), where + ".mishaps." + entry.name());
    Rate rate =
        section.require("rate", "0.3 %/year").map(n -> values.chance(n).rate()).orElse(Rate.NONE);
    double takes = section.get("takes").map(n -> values.share(n, Bound.SHARE)).orElse(1.0);
    Maybe.noteDefault(section, "takes", "1");
    return new Mishap(entry.name(), rate, takes);
  }

  /** The boxes by name, in the order of the file. */
  Map<String, Box> boxes(Node node) {
    Map<String, Box> boxes = new LinkedHashMap<>();
    for (Nodes.Named entry : Nodes.named(notes, node, "boxes")) {
      notes.build(entry.key(), () -> box(entry)).ifPresent(box -> boxes.put(entry.name(), box));
    }
    return boxes;
  }

  private Box box(Nodes.Named entry) {
    Section section = Section.of(notes, Kind.BOX, entry.value(), "boxes." + entry.name());
    Rate rate = section.get("rate").map(n -> values.chance(n).rate()).orElse(Rate.NONE);
    Maybe.noteDefault(section, "rate", "0 %/year");
    return new Box(
        entry.name(),
        rate,
        Maybe.number(section.get("price"), money::amount),
        Maybe.number(section.get("power"), money::watts),
        Maybe.number(section.get("speed"), values::link));
  }
}
