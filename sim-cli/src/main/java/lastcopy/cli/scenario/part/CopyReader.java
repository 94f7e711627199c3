package lastcopy.cli.scenario.part;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lastcopy.cli.scenario.value.Bound;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Known;
import lastcopy.cli.scenario.value.Maybe;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.value.UnitTable;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Costs;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads one copy of a layout. */
final class CopyReader {
  /** Keys that say something about drives only. */
  private static final List<String> OF_DRIVES =
      List.of(
          "drives",
          "box",
          "arrangement",
          "batch",
          "rebuild",
          "rebuild_reads",
          "daily_work_takes",
          "replace_at",
          "latent_defects",
          "scrub",
          "strain",
          "read_errors",
          "rotation");

  /** The chance that a service loses a copy, with its account; an assumption of this project. */
  private static final String ACCOUNT_LOST = "0.2 %/year";

  private final Notes notes;
  private final Known known;
  private final Values values;
  private final LawReader laws;
  private final MoneyReader money;

  CopyReader(Notes notes, Known known) {
    this.notes = notes;
    this.known = known;
    this.values = new Values(notes);
    this.laws = new LawReader(notes);
    this.money = new MoneyReader(notes);
  }

  /** The copy; empty if it could not be read, which is noted. */
  Optional<Copy> read(Nodes.Named entry, String where, List<String> copies) {
    Section section = Section.of(notes, Kind.COPY, entry.value(), where);
    boolean first = entry.name().equals(copies.get(0));
    FeedReader feeds = new FeedReader(notes, known, copies);
    Optional<Medium> medium = medium(section);
    Optional<Copy.Rotation> rotation =
        section.get("rotation").flatMap(n -> feeds.rotation(n, where));
    Optional<Feed> feed = feed(feeds, section, entry, first, rotation);
    Place place = place(section, entry.name());
    Optional<Box> box = section.get("box").flatMap(n -> known.box(values, n));
    Copy.Repair repair = repair(section);
    OptionalDouble restores = Maybe.number(section.get("restores_at"), values::link);
    double keeps = section.get("keeps_deleted").map(this::keeps).orElse(0.0);
    Copy.Reach reach = section.get("reach").map(this::reach).orElse(Copy.Reach.ONLINE);
    boolean full = section.get("starts").map(this::startsFull).orElse(true);
    Optional<Copy.Spoils> spoils =
        Maybe.unlessNever(section.get("spoils")).map(n -> spoils(n, where));
    Costs costs = section.get("costs").map(n -> money.costs(n, where)).orElse(Costs.NONE);
    noteDefaults(section, first);
    return medium.flatMap(
        on ->
            notes.build(
                entry.key(),
                () ->
                    new Copy(
                        entry.name(),
                        place,
                        box,
                        on,
                        repair,
                        feed,
                        restores,
                        keeps,
                        reach,
                        full,
                        spoils,
                        rotation,
                        costs,
                        leftOut(section))));
  }

  private static Set<Copy.LeftOut> leftOut(Section section) {
    Set<Copy.LeftOut> keys = EnumSet.noneOf(Copy.LeftOut.class);
    for (Copy.LeftOut key : Copy.LeftOut.values()) {
      if (!section.has(key.name().toLowerCase(Locale.ROOT))) {
        keys.add(key);
      }
    }
    return keys;
  }

  private Optional<Medium> medium(Section section) {
    Optional<Node> service = section.get("service");
    if (service.isPresent()) {
      OF_DRIVES.forEach(
          key -> section.refuse(key, "beside 'service'", "'service', or 'drives' with its keys"));
      return Optional.of(service(service.get(), section.where()));
    }
    if (!section.has("drives") && section.isMapping()) {
      String accepted = "drives: 1 x desk-8tb, or service: {loses: " + ACCOUNT_LOST + "}";
      notes.problem(section.node(), "a copy without 'drives' or 'service'", accepted);
    }
    return section
        .get("drives")
        .flatMap(node -> new DriveSetReader(notes, known).read(section, node));
  }

  private Medium service(Node node, String where) {
    Section section = Section.of(notes, Kind.SERVICE, node, where + ".service");
    Rate loses =
        section
            .require("loses", ACCOUNT_LOST + ", which counts the account itself (an assumption)")
            .map(n -> values.chance(n).rate())
            .orElse(Rate.NONE);
    return new Medium.Service(
        loses,
        Maybe.number(section.get("price"), n -> price(n, UnitTable.PER_TB_MONTH)),
        Maybe.number(section.get("retrieval"), n -> price(n, UnitTable.PER_TB)),
        section.get("restores_in").map(n -> values.time(n, Bound.AT_LEAST_ZERO)).orElse(0.0));
  }

  private double price(Node node, UnitTable units) {
    return money.per(node, units);
  }

  private Optional<Feed> feed(
      FeedReader feeds,
      Section section,
      Nodes.Named entry,
      boolean first,
      Optional<Copy.Rotation> rotation) {
    if (first) {
      section.refuse("feed", "of the first copy, which is the working copy", "no feed there");
      section.refuse("rotation", "of the first copy, which is the working copy", "it on another");
      return Optional.empty();
    }
    if (!section.has("feed") && section.isMapping()) {
      String accepted = "feed: {from: main, every: 1 day}; only the first copy has none";
      notes.problem(entry.key(), "the copy '" + entry.name() + "' without 'feed'", accepted);
    }
    return section
        .get("feed")
        .flatMap(node -> feeds.read(node, entry.name(), section.where(), rotation));
  }

  private Place place(Section section, String copy) {
    Optional<Node> node = section.get("place");
    if (node.isEmpty()) {
      section.defaulted("place", "its own, without mishaps");
      return Place.ofItsOwn(copy);
    }
    return known.place(notes, node.get(), values.text(node.get(), "the name of a place"));
  }

  private Copy.Repair repair(Section section) {
    Delay noticed = section.get("noticed").map(laws::delay).orElse(Delay.none());
    Delay gone = section.get("gone_noticed").map(laws::delay).orElse(noticed);
    Law wait = section.get("wait").map(laws::law).orElse(new Fixed(0));
    return new Copy.Repair(noticed, gone, wait);
  }

  private double keeps(Node node) {
    return switch (Nodes.text(node)) {
      case "for good" -> Double.POSITIVE_INFINITY;
      case "nothing" -> 0;
      default -> values.time(node, Bound.AT_LEAST_ZERO);
    };
  }

  private Copy.Reach reach(Node node) {
    String word = values.word(node, List.of("online", "offline"));
    return Copy.Reach.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private boolean startsFull(Node node) {
    return values.word(node, List.of("full", "empty")).equals("full");
  }

  private Copy.Spoils spoils(Node node, String where) {
    Section section = Section.of(notes, Kind.SPOILS, node, where + ".spoils");
    Rate rate =
        section.require("rate", "2 %/year").map(n -> values.chance(n).rate()).orElse(Rate.NONE);
    return new Copy.Spoils(
        rate, Maybe.number(section.get("tried_every"), n -> values.time(n, Bound.ABOVE_ZERO)));
  }

  private static void noteDefaults(Section section, boolean first) {
    Maybe.noteDefault(section, "noticed", "0 h");
    Maybe.noteDefault(section, "wait", "0 h");
    Maybe.noteDefault(section, "gone_noticed", "as noticed");
    Maybe.noteDefault(section, "restores_at", first ? "the drive's speed" : "the feed's link");
    Maybe.noteDefault(section, "keeps_deleted", "nothing");
    Maybe.noteDefault(section, "reach", "online");
    Maybe.noteDefault(section, "starts", "full");
  }
}
