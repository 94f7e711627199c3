package lastcopy.cli.scenario.part;

import java.util.LinkedHashMap;
import java.util.Map;
import lastcopy.cli.scenario.value.Bound;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Maybe;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.DriveModel;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads drive models. */
final class DriveReader {
  private final Notes notes;
  private final Values values;
  private final LawReader laws;
  private final MoneyReader money;

  DriveReader(Notes notes) {
    this.notes = notes;
    this.values = new Values(notes);
    this.laws = new LawReader(notes);
    this.money = new MoneyReader(notes);
  }

  /** The models by name, in the order of the file. */
  Map<String, DriveModel> read(Node node) {
    Map<String, DriveModel> models = new LinkedHashMap<>();
    for (Nodes.Named entry : Nodes.named(notes, node, "drives")) {
      Section section = Section.of(notes, Kind.DRIVE, entry.value(), "drives." + entry.name());
      notes
          .build(entry.key(), () -> model(entry.name(), section))
          .ifPresent(model -> models.put(entry.name(), model));
    }
    return models;
  }

  private DriveModel model(String name, Section section) {
    noteDefaults(section);
    double size =
        section.require("size", "8 TB").map(n -> values.size(n, Bound.ABOVE_ZERO)).orElse(1.0);
    Law fails = section.require("fails", "2 %/year").map(laws::life).orElse(new Fixed(1));
    new TypicalReader(notes).note(section, "fails");
    new TypicalReader(notes).note(section, "fails_off");
    Law age = section.get("age").map(laws::law).orElse(new Fixed(0));
    double boughtAt =
        section.get("bought_at").map(n -> values.time(n, Bound.AT_LEAST_ZERO)).orElse(0.0);
    return new DriveModel(
        name,
        size,
        Maybe.number(section.get("price"), money::amount),
        section.get("owned").map(money::isTrue).orElse(false),
        Maybe.number(section.get("power"), money::watts),
        Maybe.number(section.get("speed"), values::link),
        new TypicalReader(notes).withFirstDays(section, fails, age, boughtAt),
        age,
        boughtAt,
        section.get("fails_off").map(laws::life));
  }

  private static void noteDefaults(Section section) {
    if (!section.has("speed")) {
      section.assumed("speed", "120 MB/s");
    }
    Maybe.noteDefault(section, "age", "0 h");
    Maybe.noteDefault(section, "bought_at", "0 h");
  }
}
