package lastcopy.cli.scenario.part;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.cli.scenario.value.Bound;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Known;
import lastcopy.cli.scenario.value.Maybe;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.value.UnitTable;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Work;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads the whole file. */
public final class StudioReader {
  private static final String VERSION = "1";

  private final Notes notes;
  private final Values values;

  /** Notes mistakes into these. */
  public StudioReader(Notes notes) {
    this.notes = notes;
    this.values = new Values(notes);
  }

  /**
   * All but the layouts.
   *
   * @param footage empty if it could not be read
   * @param known what layouts may name
   */
  public record Ground(
      String name,
      double years,
      Optional<String> currency,
      OptionalDouble energy,
      Work work,
      Optional<Footage> footage,
      Desk desk,
      Known known) {

    /** Whether there is footage at the start. */
    public boolean onHand() {
      return footage.filter(f -> f.onHandBytes() > 0).isPresent();
    }

    public Studio studio(List<Layout> layouts) {
      return new Studio(name, years, currency, energy, work, footage.orElseThrow(), desk, layouts);
    }
  }

  /** The studio; empty if anything that it needs is missing, which is noted. */
  public Optional<Studio> read(Node root) {
    Section section = Section.of(notes, Kind.SCENARIO, root, "");
    Ground ground = ground(section);
    List<Layout> layouts =
        section
            .require("layouts", "{one-drive: {copies: {main: {drives: 1 x desk-8tb}}}}")
            .map(n -> new LayoutReader(notes, ground.known(), ground.onHand()).read(n))
            .orElse(List.of());
    return notes.hasProblems() ? Optional.empty() : notes.build(root, () -> ground.studio(layouts));
  }

  /** All but the layouts; empty if there is a mistake in it, which is noted. */
  public Optional<Ground> ground(Node root) {
    Ground ground = ground(Section.of(notes, Kind.SCENARIO, root, ""));
    return notes.hasProblems() ? Optional.empty() : Optional.of(ground);
  }

  private Ground ground(Section section) {
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
    return new Ground(name, years, currency, energy, work, footage, desk, known(section));
  }

  /** Notes what of a studio is absurdly much to compute. */
  public void limit(Node root, Studio studio) {
    Limits.of(studio).forEach(excess -> note(root, excess));
  }

  private void note(Node root, Excess excess) {
    notes.problem(Nodes.at(root, excess.path()), excess.found(), excess.accepted());
  }

  private Known known(Section section) {
    PlaceReader places = new PlaceReader(notes);
    return new Known(
        section.get("places").map(places::places).orElse(Map.of()),
        section.get("boxes").map(places::boxes).orElse(Map.of()),
        section.get("uplinks").map(n -> new LinkReader(notes).uplinks(n)).orElse(Map.of()),
        section.get("drives").map(n -> new DriveReader(notes).read(n)).orElse(Map.of()));
  }

  private void checkVersion(Node node) {
    if (!Nodes.text(node).equals(VERSION)) {
      notes.problem(node, "format " + Nodes.describe(node), VERSION);
    }
  }
}
