package lastcopy.cli.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Work;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads the whole file. */
final class StudioReader {
  private static final String VERSION = "1";

  private final Notes notes;
  private final Values values;

  StudioReader(Notes notes) {
    this.notes = notes;
    this.values = new Values(notes);
  }

  /** The studio; empty if anything that it needs is missing, which is noted. */
  Optional<Studio> read(Node root) {
    Section section = Section.of(notes, Kind.SCENARIO, root, "");
    section.require("lastcopy", VERSION).ifPresent(this::checkVersion);
    String name =
        section
            .require("studio", "Harbour Lane Films")
            .map(n -> values.text(n, "a title"))
            .orElse("?");
    double years =
        section.require("years", "5").map(n -> values.number(n, Bound.YEARS)).orElse(1.0);
    Optional<String> currency = section.get("currency").map(n -> values.text(n, "a label"));
    MoneyReader money = new MoneyReader(notes);
    OptionalDouble energy =
        Maybe.number(section.get("energy"), n -> money.per(n, UnitTable.PER_KWH));
    Work work = section.get("work").map(money::work).orElse(Work.NONE);
    Optional<Footage> footage =
        section
            .require("footage", "{shoots: {every: 7 days, size: 96 GB}}")
            .flatMap(n -> new FootageReader(notes).read(n));
    Desk desk = section.get("desk").map(n -> new DeskReader(notes).read(n)).orElse(Desk.QUIET);
    boolean onHand = footage.filter(f -> f.onHandBytes() > 0).isPresent();
    List<Layout> layouts = layouts(section, onHand);
    if (notes.hasProblems()) {
      return Optional.empty();
    }
    return notes.build(
        root,
        () ->
            new Studio(name, years, currency, energy, work, footage.orElseThrow(), desk, layouts));
  }

  /** Notes what of a studio is absurdly much to compute. */
  void limit(Node root, Studio studio) {
    Limits.of(studio).forEach(excess -> note(root, excess));
  }

  private void note(Node root, Excess excess) {
    notes.problem(Nodes.at(root, excess.path()), excess.found(), excess.accepted());
  }

  private List<Layout> layouts(Section section, boolean onHand) {
    PlaceReader places = new PlaceReader(notes);
    Known known =
        new Known(
            section.get("places").map(places::places).orElse(Map.of()),
            section.get("boxes").map(places::boxes).orElse(Map.of()),
            section.get("uplinks").map(n -> new LinkReader(notes).uplinks(n)).orElse(Map.of()),
            section.get("drives").map(n -> new DriveReader(notes).read(n)).orElse(Map.of()));
    return section
        .require("layouts", "{one-drive: {copies: {main: {drives: 1 x desk-8tb}}}}")
        .map(n -> new LayoutReader(notes, known, onHand).read(n))
        .orElse(List.of());
  }

  private void checkVersion(Node node) {
    if (!Nodes.text(node).equals(VERSION)) {
      notes.problem(node, "format " + Nodes.describe(node), VERSION);
    }
  }
}
