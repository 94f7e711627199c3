package lastcopy.cli.scenario.part;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.scenario.value.Bound;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Quantity;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.law.ByAge;
import lastcopy.law.Competing;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Stretched;
import lastcopy.law.Uniform;
import lastcopy.law.Weibull;
import lastcopy.scenario.Delay;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads laws of a time; a mistake is noted and a harmless law stands in for it. */
final class LawReader {
  private static final String EXAMPLE =
      "a law such as 2 %/year, 4 days, {mean: 50000 h}, {fixed: 4 days}, "
          + "{weibull: {shape: 1.12, scale: 461386 h}}, {uniform: [1 day, 3 days]}, "
          + "{by_age: [2 %/year, 4 %/year]} or {sum: [law, law]}";
  private static final List<String> LAW_KEYS =
      Kind.LAW.keys().stream().filter(key -> !key.equals("law")).toList();
  private static final Law STAND_IN = new Fixed(1);

  private final Notes notes;
  private final Values values;

  LawReader(Notes notes) {
    this.notes = notes;
    this.values = new Values(notes);
  }

  /** A law in hours. */
  Law law(Node node) {
    return law(node, false);
  }

  private Law law(Node node, boolean life) {
    return node instanceof MappingNode
        ? mapping(node, life)
        : notes.build(node, () -> scalar(node, life)).orElse(STAND_IN);
  }

  private Law mapping(Node node, boolean life) {
    Section section = Section.of(notes, life ? Kind.LIFE : Kind.LAW, node, "");
    return section.has("typical") ? new TypicalReader(notes).life(section) : form(section, life);
  }

  /** A law of a life: one that is over at once is a mistake. */
  Law life(Node node) {
    Law law = law(node, true);
    if (law instanceof Fixed fixed && fixed.hours() == 0) {
      notes.problem(node, Nodes.describe(node), "a life above 0");
    }
    return law;
  }

  /** A law, or looks by the clock. */
  Delay delay(Node node) {
    if (!(node instanceof MappingNode)) {
      return new Delay.Lawful(law(node));
    }
    Section section = Section.of(notes, Kind.LOOKS, node, "");
    Optional<Node> every = section.get("checked_every");
    if (every.isEmpty()) {
      return new Delay.Lawful(form(section, false));
    }
    LAW_KEYS.forEach(key -> section.refuse(key, "beside 'checked_every'", "one of the two"));
    return new Delay.Looks(values.time(every.get(), Bound.ABOVE_ZERO));
  }

  private Law scalar(Node node, boolean life) {
    Optional<Quantity> parsed = Quantity.parse(Nodes.text(node));
    if (parsed.isEmpty()) {
      boolean never = Nodes.text(node).equalsIgnoreCase("never");
      notes.problem(node, Nodes.describe(node), EXAMPLE, never ? "0 %/year" : "");
      return STAND_IN;
    }
    String unit = parsed.get().unit();
    if (unit.isEmpty()) {
      notes.problem(
          node,
          Nodes.describe(node) + ", a number without a unit",
          EXAMPLE,
          life ? yearly(parsed.get().low()) : "");
      return STAND_IN;
    }
    boolean chance = unit.contains("%") || unit.contains("per") || unit.startsWith("/");
    return chance ? values.chance(node).law() : new Fixed(values.time(node, Bound.AT_LEAST_ZERO));
  }

  /** A bare number below 1 for a life is often meant as the chance of a year. */
  private static String yearly(double number) {
    return number > 0 && number < 1
        ? new BigDecimal(Double.toString(number))
                .movePointRight(2)
                .stripTrailingZeros()
                .toPlainString()
            + " %/year"
        : "";
  }

  private Law form(Section section, boolean life) {
    section.refuse("level", "without 'typical'", "typical: hard-disk beside it");
    if (section.has("times")) {
      return stretched(section, life);
    }
    section.refuse("law", "without 'times'", "times: 0.5..2.5 beside it");
    List<String> present = LAW_KEYS.stream().filter(section::has).toList();
    if (present.size() != 1) {
      if (section.isMapping()) {
        String found = present.isEmpty() ? "no law" : "several laws: " + String.join(", ", present);
        notes.problem(section.node(), found, EXAMPLE);
      }
      return STAND_IN;
    }
    Node node = section.get(present.get(0)).orElseThrow();
    return notes.build(node, () -> read(present.get(0), node, life)).orElse(STAND_IN);
  }

  private Law read(String key, Node node, boolean life) {
    return switch (key) {
      case "mean" -> new Exponential(values.mean(node));
      case "fixed" -> new Fixed(values.time(node, Bound.AT_LEAST_ZERO));
      case "weibull" -> weibull(node);
      case "uniform" -> uniform(node);
      case "by_age" -> byAge(node);
      default -> sum(node, life);
    };
  }

  private Law stretched(Section section, boolean life) {
    LAW_KEYS.stream()
        .filter(key -> !key.equals("times"))
        .forEach(key -> section.refuse(key, "beside 'times'", "it below 'law'"));
    double factor = section.get("times").map(values::factor).orElse(1.0);
    Optional<Node> node = section.require("law", "2 %/year");
    Law law = node.map(n -> law(n, life)).orElse(STAND_IN);
    if (law instanceof Fixed && node.isPresent() && !notes.hasProblems()) {
      notes.problem(node.get(), "a fixed time, which has no hazard to stretch", EXAMPLE);
    }
    return Stretched.of(law, factor);
  }

  private Law weibull(Node node) {
    Section section = Section.of(notes, Kind.WEIBULL, node, "");
    double shape =
        section.require("shape", "1.12").map(n -> values.number(n, Bound.SHAPE)).orElse(1.0);
    double scale =
        section.require("scale", "461386 h").map(n -> values.time(n, Bound.ABOVE_ZERO)).orElse(1.0);
    double location =
        section.get("location").map(n -> values.time(n, Bound.AT_LEAST_ZERO)).orElse(0.0);
    return new Weibull(shape, scale, location);
  }

  private Law uniform(Node node) {
    String accepted = "two times, the earlier first, such as [1 day, 3 days]";
    List<Node> ends = Nodes.items(notes, node, accepted);
    List<Double> hours = new ArrayList<>();
    int before = notes.count();
    ends.forEach(end -> hours.add(values.time(end, Bound.AT_LEAST_ZERO)));
    if (hours.size() == 2 && hours.get(0) < hours.get(1)) {
      return new Uniform(hours.get(0), hours.get(1));
    }
    // Where an end was a mistake, that is already noted.
    if (!ends.isEmpty() && notes.count() == before) {
      notes.problem(node, "ends in the wrong order or not two of them", accepted);
    }
    return STAND_IN;
  }

  private Law byAge(Node node) {
    String accepted = "a chance for each year of age, such as [2 %/year, 4 %/year]";
    List<Double> chances = new ArrayList<>();
    Nodes.items(notes, node, accepted).forEach(n -> chances.add(yearly(n)));
    return chances.isEmpty() ? STAND_IN : new ByAge(chances);
  }

  /** A high rate makes a chance that no number can tell from 1. */
  private double yearly(Node node) {
    double chance = values.chance(node).yearly();
    if (chance == 1 && isRange(node)) {
      return Math.nextDown(1.0); // in a world beyond the upper end
    }
    return chance < 1 ? chance : values.wrong(node, "a chance of less than 100 % within a year");
  }

  private static boolean isRange(Node node) {
    return Quantity.parse(Nodes.text(node)).filter(q -> q.high() > q.low()).isPresent();
  }

  private Law sum(Node node, boolean life) {
    List<Law> laws = new ArrayList<>();
    Nodes.items(notes, node, "a list of laws").forEach(n -> laws.add(law(n, life)));
    return laws.isEmpty() ? STAND_IN : new Competing(laws);
  }
}
