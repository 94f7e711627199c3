package lastcopy.cli.scenario.part;

import java.util.List;
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
import lastcopy.scenario.Carried;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DailyHours;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Uplink;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads how a copy is fed, and its rotation. */
final class FeedReader {
  private static final String EVERY = "every: 1 day, or continuous: true";

  private final Notes notes;
  private final Values values;
  private final LinkReader links;
  private final Known known;
  private final List<String> copies;

  FeedReader(Notes notes, Known known, List<String> copies) {
    this.notes = notes;
    this.known = known;
    this.links = new LinkReader(notes);
    this.values = new Values(notes);
    this.copies = copies;
  }

  /** The feed; empty if its source could not be read, which is noted. */
  Optional<Feed> read(Node node, String copy, String where, Optional<Copy.Rotation> rotation) {
    Section section = Section.of(notes, Kind.FEED, node, where + ".feed");
    Optional<String> from = section.require("from", copies.get(0)).flatMap(n -> source(n, copy));
    Feed.Schedule schedule = schedule(section, rotation);
    Optional<Uplink> uplink = section.get("link").flatMap(n -> links.uplink(n, known.uplinks()));
    OptionalDouble link = Maybe.number(section.get("link"), n -> links.rate(n, uplink));
    Optional<DailyHours> between = section.get("between").flatMap(links::hours);
    Optional<Carried> carried = section.get("carried").flatMap(n -> links.carried(n, where));
    if (rotation.isPresent()) {
      refuseBesideTurns(section, uplink);
    }
    Maybe.noteDefault(section, "link", "the slowest drive or box on the way");
    Rate stops = section.get("stops").map(n -> values.chance(n).rate()).orElse(Rate.NONE);
    OptionalDouble checked =
        Maybe.number(section.get("checked_every"), n -> values.time(n, Bound.ABOVE_ZERO));
    double visits =
        section
            .get("visits")
            .map(n -> values.time(n, Bound.ABOVE_ZERO))
            .orElse(Feed.DEFAULT_VISIT_HOURS);
    return from.flatMap(
        id ->
            notes.build(
                node,
                () ->
                    new Feed(
                        id, schedule, link, stops, checked, visits, between, uplink, carried)));
  }

  /** A drive that takes turns stands at its source's place when its run comes. */
  private static void refuseBesideTurns(Section section, Optional<Uplink> uplink) {
    String accepted = "a rate, since the drive stands at its source's place during its run";
    uplink.ifPresent(line -> section.refuse("link", "of an uplink beside 'rotation'", accepted));
    section.refuse("carried", "beside 'rotation'", "one of the two: its drives are carried anyway");
  }

  private Optional<String> source(Node node, String copy) {
    List<String> others = copies.stream().filter(id -> !id.equals(copy)).toList();
    if (Nodes.text(node).equals(copy)) {
      notes.problem(node, "'" + copy + "', which is this copy itself", String.join(", ", others));
      return Optional.empty();
    }
    return values.reference(node, "copy of this layout", others);
  }

  private Feed.Schedule schedule(Section section, Optional<Copy.Rotation> rotation) {
    if (isContinuous(section)) {
      section.refuse("every", "beside 'continuous'", "one of the two");
      section.refuse("at", "beside 'continuous'", "'at' beside 'every'");
      return new Feed.Continuous();
    }
    double at = section.get("at").map(n -> values.time(n, Bound.AT_LEAST_ZERO)).orElse(0.0);
    Maybe.noteDefault(section, "at", "0 h");
    return new Feed.Every(every(section, rotation), at);
  }

  private boolean isContinuous(Section section) {
    return section
        .get("continuous")
        .map(n -> values.word(n, List.of("false", "true")).equals("true"))
        .orElse(false);
  }

  private double every(Section section, Optional<Copy.Rotation> rotation) {
    Optional<Node> node = section.get("every");
    if (node.isEmpty() && rotation.isPresent()) {
      return rotation.get().everyHours();
    }
    if (node.isEmpty() && section.isMapping()) {
      notes.problem(section.node(), "a feed without 'every' or 'continuous'", EVERY);
    }
    double every = node.map(n -> values.time(n, Bound.ABOVE_ZERO)).orElse(1.0);
    if (rotation.filter(turns -> turns.everyHours() != every).isPresent()) {
      notes.problem(
          node.orElseThrow(),
          Nodes.describe(node.get()) + ", which is not the 'every' of the rotation",
          "the same time as in 'rotation'");
    }
    return every;
  }

  /** Drives that take turns; empty if they could not be read, which is noted. */
  Optional<Copy.Rotation> rotation(Node node, String where) {
    Section section = Section.of(notes, Kind.ROTATION, node, where + ".rotation");
    int turns = section.require("drives", "2").map(this::turns).orElse(2);
    double every =
        section.require("every", "7 days").map(n -> values.time(n, Bound.ABOVE_ZERO)).orElse(1.0);
    return notes.build(node, () -> new Copy.Rotation(turns, every));
  }

  private int turns(Node node) {
    String text = Nodes.text(node);
    if (text.matches("\\d{1,3}") && Integer.parseInt(text) >= 2) {
      return Integer.parseInt(text);
    }
    values.wrong(node, "a whole number from 2 to 999");
    return 2;
  }
}
