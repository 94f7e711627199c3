package lastcopy.cli.scenario.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.law.ByAge;
import lastcopy.law.Competing;
import lastcopy.law.Fixed;
import lastcopy.law.HazardWindow;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Unknown;
import lastcopy.typical.DriveKind;
import lastcopy.typical.Level;
import lastcopy.typical.TypicalLives;
import lastcopy.typical.TypicalMishaps;
import lastcopy.typical.TypicalMishaps.Habit;
import lastcopy.typical.TypicalMishaps.Site;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads where a file asks for typical values; {@code lastcopy rates} lists them. */
final class TypicalReader {

  /** A level that is a range. */
  private static final String UNSURE = "unsure";

  private final Notes notes;
  private final Values values;

  TypicalReader(Notes notes) {
    this.notes = notes;
    this.values = new Values(notes);
  }

  /** The life of a kind of drives, at a level; nothing else may stand beside them. */
  Law life(Section section) {
    Kind.LAW.keys().forEach(key -> section.refuse(key, "beside 'typical'", "one of the two"));
    DriveKind kind = one(section.get("typical").orElseThrow(), DriveKind.values(), DriveKind::id);
    if (section.get("level").filter(n -> Nodes.text(n).equals(UNSURE)).isPresent()) {
      return unsure(section.node(), kind);
    }
    Level level = section.get("level").map(this::level).orElse(Level.CENTRAL);
    return new ByAge(TypicalLives.yearlyChances(kind, level));
  }

  /** From low to cautious at every age: one unknown, told by the mean over the table. */
  private Law unsure(Node node, DriveKind kind) {
    double z =
        notes
            .ranges()
            .deviate(node, percent(kind, Level.LOW), percent(kind, Level.CAUTIOUS), "%/year");
    List<Double> low = TypicalLives.yearlyHazards(kind, Level.LOW);
    List<Double> high = TypicalLives.yearlyHazards(kind, Level.CAUTIOUS);
    List<Double> chances = new ArrayList<>();
    for (int year = 0; year < low.size(); year++) {
      double hazard = Unknown.between(low.get(year), high.get(year), z);
      chances.add(Math.min(Math.nextDown(1.0), -StrictMath.expm1(-hazard)));
    }
    return new ByAge(chances);
  }

  /**
   * A typical life of a used drive has a risk of its first days with its new owner beside it: from
   * the age at which it is bought, and from the start for those that are there then, if their age
   * is a fixed time.
   */
  Law withFirstDays(Section drive, Law fails, Law age, double boughtAtHours) {
    boolean used =
        drive
            .get("fails")
            .filter(MappingNode.class::isInstance)
            .map(form -> word((MappingNode) form, "typical"))
            .filter(DriveKind.USED_HARD_DISK.id()::equals)
            .isPresent();
    if (!used) {
      return fails;
    }
    List<Law> risks = new ArrayList<>(List.of(fails, firstDays(boughtAtHours)));
    if (age instanceof Fixed now && now.hours() != boughtAtHours) {
      risks.add(firstDays(now.hours()));
    }
    return new Competing(risks);
  }

  private static Law firstDays(double from) {
    double perHour =
        -StrictMath.log1p(-TypicalLives.FIRST_DAYS_CHANCE) / TypicalLives.FIRST_DAYS_HOURS;
    return new HazardWindow(perHour, from, from + TypicalLives.FIRST_DAYS_HOURS);
  }

  private static double percent(DriveKind kind, Level level) {
    List<Double> chances = TypicalLives.yearlyChances(kind, level);
    return 100 * chances.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  /** Notes that a key of a section asks for a typical life, alone, in a sum or stretched. */
  void note(Section section, String key) {
    section.get(key).ifPresent(node -> note(section.where(), key, node));
  }

  private void note(String where, String key, Node node) {
    if (!(node instanceof MappingNode form)) {
      return;
    }
    String kind = word(form, "typical");
    String level = word(form, "level");
    if (!kind.isEmpty()) {
      notes.typical(where, key, kind + ", " + (level.isEmpty() ? "central" : level));
    }
    for (NodeTuple entry : form.getValue()) {
      if (Nodes.text(entry.getKeyNode()).equals("law")) {
        note(where, key, entry.getValueNode());
      }
      if (entry.getValueNode() instanceof SequenceNode laws
          && Nodes.text(entry.getKeyNode()).equals("sum")) {
        laws.getValue().forEach(law -> note(where, key, law));
      }
    }
  }

  private static String word(MappingNode form, String key) {
    return form.getValue().stream()
        .filter(entry -> Nodes.text(entry.getKeyNode()).equals(key))
        .map(entry -> Nodes.text(entry.getValueNode()))
        .findFirst()
        .orElse("");
  }

  private Level level(Node node) {
    List<String> words = new ArrayList<>();
    Stream.of(Level.values()).forEach(level -> words.add(level.name().toLowerCase(Locale.ROOT)));
    words.add(UNSURE);
    String word = values.word(node, words);
    return word.equals(UNSURE) ? Level.CENTRAL : Level.valueOf(word.toUpperCase(Locale.ROOT));
  }

  /** The one that is named; a mistake is noted, and the first stands in for it. */
  private <T> T one(Node node, T[] choices, Function<T, String> name) {
    Map<String, T> named = new LinkedHashMap<>();
    for (T choice : choices) {
      named.put(name.apply(choice), choice);
    }
    return named.get(values.word(node, List.copyOf(named.keySet())));
  }

  /** What strikes a kind of place. */
  List<Mishap> mishaps(Node node) {
    Site site = one(node, Site.values(), Site::id);
    return TypicalMishaps.at(site).stream()
        .map(strike -> new Mishap(strike.name(), Rate.ofYearlyProbability(strike.chance()), 1))
        .toList();
  }

  /** What happens at a desk of some habits. */
  Desk desk(Node node) {
    Habit habit = one(node, Habit.values(), Habit::id);
    Law deletion =
        new Weibull(TypicalMishaps.DELETION_SHAPE, TypicalMishaps.DELETION_SCALE_HOURS, 0);
    Law malware = new Weibull(TypicalMishaps.MALWARE_SHAPE, TypicalMishaps.MALWARE_SCALE_HOURS, 0);
    return new Desk(
        Optional.of(
            new Desk.Deletion(
                Rate.ofYearlyProbability(habit.deletionChance()),
                new Desk.ShootCount(1),
                deletion,
                true)),
        Optional.of(
            new Desk.Malware(Rate.ofYearlyProbability(habit.malwareChance()), malware, true)));
  }
}
