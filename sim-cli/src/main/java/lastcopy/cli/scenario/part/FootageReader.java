package lastcopy.cli.scenario.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.cli.scenario.value.Bound;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Maybe;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.value.UnitTable;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Units;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads what the studio shoots. */
final class FootageReader {
  private static final Shoots STAND_IN = new Shoots(1, 1, Shoots.Spacing.EVEN);

  private final Notes notes;
  private final Values values;

  FootageReader(Notes notes) {
    this.notes = notes;
    this.values = new Values(notes);
  }

  Optional<Footage> read(Node node) {
    Section section = Section.of(notes, Kind.FOOTAGE, node, "footage");
    double onHand = section.get("on_hand").map(this::onHand).orElse(0.0);
    double growth = section.get("growth").map(this::growth).orElse(0.0);
    double clip =
        section
            .get("clip")
            .map(n -> values.size(n, Bound.ABOVE_ZERO))
            .orElse(Footage.DEFAULT_CLIP_BYTES);
    OptionalDouble keep =
        Maybe.number(section.get("keep_for"), n -> values.time(n, Bound.ABOVE_ZERO));
    OptionalDouble worth = Maybe.number(section.get("worth"), this::worth);
    Shoots shoots = shoots(section);
    noteDefaults(section);
    return notes.build(node, () -> new Footage(onHand, shoots, growth, keep, clip, worth));
  }

  private double onHand(Node node) {
    return values.size(node, Bound.AT_LEAST_ZERO);
  }

  private double growth(Node node) {
    return values.quantity(node, UnitTable.GROWTH, Bound.ABOVE_MINUS_ONE);
  }

  private double worth(Node node) {
    return new MoneyReader(notes).per(node, UnitTable.PER_SHOOT);
  }

  private void noteDefaults(Section section) {
    Maybe.noteDefault(section, "on_hand", "0 GB");
    Maybe.noteDefault(section, "growth", "0 %/year");
    Maybe.noteDefault(section, "clip", "1 GB");
  }

  private Shoots shoots(Section section) {
    if (section.has("shoots") == section.has("ingest")) {
      if (section.isMapping()) {
        String found = section.has("shoots") ? "both" : "neither";
        String accepted = "one of shoots: {every: 7 days, size: 96 GB} and ingest: 5 TB/year";
        notes.problem(section.node(), found + " 'shoots' and 'ingest' in footage", accepted);
      }
      return STAND_IN;
    }
    return section.get("ingest").map(this::ingest).orElseGet(() -> ofShoots(section));
  }

  private Shoots ofShoots(Section footage) {
    Node node = footage.get("shoots").orElseThrow();
    Section section = Section.of(notes, Kind.SHOOTS, node, "footage.shoots");
    double size =
        section.require("size", "96 GB").map(n -> values.size(n, Bound.ABOVE_ZERO)).orElse(1.0);
    Maybe.noteDefault(section, "spacing", "even");
    Shoots.Spacing spacing = section.get("spacing").map(this::spacing).orElse(Shoots.Spacing.EVEN);
    return notes.build(node, () -> new Shoots(every(section), size, spacing)).orElse(STAND_IN);
  }

  private Shoots.Spacing spacing(Node node) {
    String word = values.word(node, List.of("even", "random"));
    return Shoots.Spacing.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private double every(Section section) {
    if (section.has("every") == section.has("per_year")) {
      if (section.isMapping()) {
        String found = section.has("every") ? "both" : "neither";
        String accepted = "one of every: 7 days and per_year: 40";
        notes.problem(section.node(), found + " 'every' and 'per_year' in shoots", accepted);
      }
      return 1;
    }
    return section
        .get("every")
        .map(n -> values.time(n, Bound.ABOVE_ZERO))
        .or(() -> section.get("per_year").map(this::perYear))
        .orElse(1.0);
  }

  private double perYear(Node node) {
    return Units.HOURS_PER_YEAR / values.number(node, Bound.ABOVE_ZERO);
  }

  /** A volume a year, month, week or day: one shoot a day of the size that brings it. */
  private Shoots ingest(Node node) {
    double bytesPerHour = values.quantity(node, Ingest.UNITS, Bound.ABOVE_ZERO);
    double size = bytesPerHour * Units.HOURS_PER_DAY;
    return notes
        .build(node, () -> new Shoots(Units.HOURS_PER_DAY, size, Shoots.Spacing.EVEN))
        .orElse(STAND_IN);
  }
}
