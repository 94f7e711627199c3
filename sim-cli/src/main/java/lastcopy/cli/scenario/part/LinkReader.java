package lastcopy.cli.scenario.part;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastcopy.cli.scenario.value.Bound;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Maybe;
import lastcopy.cli.scenario.value.Quantity;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.value.UnitTable;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.cli.scenario.yaml.Spelling;
import lastcopy.scenario.Carried;
import lastcopy.scenario.DailyHours;
import lastcopy.scenario.Units;
import lastcopy.scenario.Uplink;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads uplinks, hours of the day at which a link may be used, and what is carried by hand. */
final class LinkReader {
  private static final String HOURS =
      "two different hours of the day, from 0 h to 24 h, such as [20 h, 6 h]";

  private final Notes notes;
  private final Values values;

  LinkReader(Notes notes) {
    this.notes = notes;
    this.values = new Values(notes);
  }

  /** The uplinks by name, in the order of the file. */
  Map<String, Uplink> uplinks(Node node) {
    Map<String, Uplink> uplinks = new LinkedHashMap<>();
    for (Nodes.Named entry : Nodes.named(notes, node, "uplinks")) {
      notes
          .build(entry.key(), () -> uplink(entry))
          .ifPresent(line -> uplinks.put(entry.name(), line));
    }
    return uplinks;
  }

  private Uplink uplink(Nodes.Named entry) {
    Section section = Section.of(notes, Kind.UPLINK, entry.value(), "uplinks." + entry.name());
    double speed = section.require("speed", "20 Mbit/s").map(values::link).orElse(1.0);
    return new Uplink(entry.name(), speed, Maybe.number(section.get("price"), this::perMonth));
  }

  private double perMonth(Node node) {
    return new MoneyReader(notes).per(node, UnitTable.PER_MONTH);
  }

  /**
   * The uplink that a link names; empty for a rate, and for a name that is none, which is noted.
   */
  Optional<Uplink> uplink(Node node, Map<String, Uplink> uplinks) {
    String text = Nodes.text(node);
    if (uplinks.containsKey(text) || text.isEmpty() || Quantity.parse(text).isPresent()) {
      return Optional.ofNullable(uplinks.get(text));
    }
    List<String> names = List.copyOf(uplinks.keySet());
    String accepted = UnitTable.LINK.example() + ", or an uplink of this file";
    notes.problem(
        node,
        Nodes.describe(node) + ", which is no rate and no uplink",
        names.isEmpty() ? accepted : accepted + ": " + String.join(", ", names),
        Spelling.nearest(text, names));
    return Optional.empty();
  }

  /** The rate of a link in bytes a second: that of its uplink, or as it stands there. */
  double rate(Node node, Optional<Uplink> uplink) {
    String text = Nodes.text(node);
    boolean noted = uplink.isEmpty() && !text.isEmpty() && Quantity.parse(text).isEmpty();
    return noted ? 1 : uplink.map(Uplink::bytesPerSecond).orElseGet(() -> values.link(node));
  }

  /** Hours of the day; empty if they could not be read, which is noted. */
  Optional<DailyHours> hours(Node node) {
    int before = notes.count();
    List<Double> ends =
        Nodes.items(notes, node, HOURS).stream()
            .map(end -> values.time(end, Bound.AT_LEAST_ZERO))
            .toList();
    if (notes.count() > before) {
      return Optional.empty();
    }
    boolean two = ends.size() == 2 && ends.stream().allMatch(end -> end <= Units.HOURS_PER_DAY);
    double opens = two ? ends.get(0) % Units.HOURS_PER_DAY : 0;
    if (!two || opens == ends.get(1)) {
      String found = two ? "hours that end when they begin" : "not two hours of a day";
      notes.problem(node, found, HOURS + "; [0 h, 24 h] is always");
      return Optional.empty();
    }
    return Optional.of(new DailyHours(opens, ends.get(1)));
  }

  /** How footage is carried by hand. */
  Optional<Carried> carried(Node node, String where) {
    Section section = Section.of(notes, Kind.CARRIED, node, where + ".feed.carried");
    double takes =
        section
            .require("takes", "2 days")
            .map(n -> values.time(n, Bound.AT_LEAST_ZERO))
            .orElse(0.0);
    double rate = section.require("rate", "100 MB/s").map(values::link).orElse(1.0);
    return notes.build(node, () -> new Carried(takes, rate));
  }
}
