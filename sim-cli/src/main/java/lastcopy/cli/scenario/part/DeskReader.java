package lastcopy.cli.scenario.part;

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
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Rate;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads mishaps at the desk. */
final class DeskReader {
  private final Notes notes;
  private final Values values;
  private final LawReader laws;

  DeskReader(Notes notes) {
    this.notes = notes;
    this.values = new Values(notes);
    this.laws = new LawReader(notes);
  }

  Desk read(Node node) {
    Section section = Section.of(notes, Kind.DESK, node, "desk");
    Optional<Desk.Deletion> deletion = section.get("deletion").map(this::deletion);
    Optional<Desk.Malware> malware = section.get("malware").map(this::malware);
    section.get("typical").ifPresent(n -> notes.typical("desk", "typical", Nodes.text(n)));
    Optional<Desk> typical = section.get("typical").map(new TypicalReader(notes)::desk);
    return new Desk(
        deletion.or(() -> typical.flatMap(Desk::deletion)),
        malware.or(() -> typical.flatMap(Desk::malware)));
  }

  private Desk.Deletion deletion(Node node) {
    Section section = Section.of(notes, Kind.DELETION, node, "desk.deletion");
    Rate rate = rate(section);
    Desk.Amount size =
        section.require("size", "1 shoots").map(this::amount).orElse(new Desk.ShootCount(1));
    return new Desk.Deletion(rate, size, noticed(section), section.has("noticed"));
  }

  private Desk.Malware malware(Node node) {
    Section section = Section.of(notes, Kind.MALWARE, node, "desk.malware");
    return new Desk.Malware(rate(section), noticed(section), section.has("noticed"));
  }

  private Rate rate(Section section) {
    return section.require("rate", "1 %/year").map(n -> values.chance(n).rate()).orElse(Rate.NONE);
  }

  private Law noticed(Section section) {
    Maybe.noteDefault(section, "noticed", "0 h");
    return section.get("noticed").map(laws::law).orElse(new Fixed(0));
  }

  private Desk.Amount amount(Node node) {
    boolean bytes =
        Quantity.parse(Nodes.text(node))
            .filter(q -> UnitTable.SIZE.factor(q.unit()).isPresent())
            .isPresent();
    return bytes
        ? new Desk.Bytes(values.size(node, Bound.ABOVE_ZERO))
        : new Desk.ShootCount(values.quantity(node, UnitTable.SHOOTS, Bound.ABOVE_ZERO));
  }
}
