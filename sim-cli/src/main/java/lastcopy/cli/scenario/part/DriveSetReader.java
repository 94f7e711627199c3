package lastcopy.cli.scenario.part;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.cli.scenario.value.Bound;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Known;
import lastcopy.cli.scenario.value.Maybe;
import lastcopy.cli.scenario.value.Quantity;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rebuild;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads the drives of a copy and how they hold it. */
final class DriveSetReader {
  private final Notes notes;
  private final Known known;
  private final Values values;
  private final LawReader laws;

  DriveSetReader(Notes notes, Known known) {
    this.notes = notes;
    this.known = known;
    this.values = new Values(notes);
    this.laws = new LawReader(notes);
  }

  /** The drives; empty if they could not be read, which is noted. */
  Optional<Medium> read(Section copy, Node node) {
    Optional<List<DriveModel>> drives = new DriveListReader(notes, known).read(node);
    Optional<Integer> count = drives.map(List::size);
    Optional<Arrangement> arrangement = arrangement(copy, node, count);
    Rebuild rebuild = rebuild(copy, count.orElse(1));
    Optional<Medium.Batch> batch = copy.get("batch").map(n -> batch(n, copy.where()));
    OptionalDouble replaceAt =
        Maybe.number(
            Maybe.unlessNever(copy.get("replace_at")), n -> values.time(n, Bound.ABOVE_ZERO));
    Optional<Law> defects = copy.get("latent_defects").map(laws::life);
    Optional<Law> scrub = copy.get("scrub").map(laws::law);
    double strain = copy.get("strain").map(n -> values.number(n, Bound.FACTOR)).orElse(1.0);
    double errors = copy.get("read_errors").map(n -> values.number(n, Bound.SHARE)).orElse(0.0);
    if (drives.isEmpty() || arrangement.isEmpty()) {
      return Optional.empty();
    }
    return notes.build(
        node,
        () ->
            new Medium.DriveSet(
                drives.get(),
                arrangement.get(),
                batch,
                rebuild,
                replaceAt,
                defects,
                scrub,
                strain,
                errors));
  }

  private Optional<Arrangement> arrangement(Section copy, Node drives, Optional<Integer> count) {
    Optional<Node> node = copy.get("arrangement");
    if (node.isEmpty()) {
      return byDefault(copy, drives, count.orElse(1));
    }
    List<String> words = Arrays.stream(Arrangement.values()).map(Arrangement::word).toList();
    String word = values.word(node.get(), words);
    Arrangement arrangement = Arrangement.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    boolean ofThisWord = word.equals(Nodes.text(node.get()));
    return ofThisWord && count.isPresent()
        ? fitting(node.get(), arrangement, count.get())
        : Optional.empty();
  }

  private Optional<Arrangement> byDefault(Section copy, Node drives, int count) {
    if (count == 1) {
      copy.defaulted("arrangement", "single");
      return Optional.of(Arrangement.SINGLE);
    }
    String accepted = "arrangement: mirror, pairs, parity, double-parity, stripe or shelf";
    if (copy.has("rotation")) {
      // Whoever writes this has most likely counted the turns here.
      accepted =
          "drives: 1 x a model, since 'drives' is what each turn of 'rotation' consists of and"
              + " 'rotation' counts the turns; or, for sets that take turns, "
              + accepted;
    }
    notes.problem(drives, count + " drives without 'arrangement'", accepted);
    return Optional.empty();
  }

  private Optional<Arrangement> fitting(Node node, Arrangement arrangement, int count) {
    if (arrangement.fits(count)) {
      return Optional.of(arrangement);
    }
    String accepted =
        switch (arrangement) {
          case SINGLE -> "1 drive for single";
          case PAIRS -> "an even number of drives for pairs";
          default -> "at least " + arrangement.leastDrives() + " drives for " + arrangement.word();
        };
    notes.problem(node, "'" + arrangement.word() + "' with drives: " + count, accepted);
    return Optional.empty();
  }

  private Medium.Batch batch(Node node, String where) {
    Section section = Section.of(notes, Kind.BATCH, node, where + ".batch");
    String name = section.require("name", "spring").map(n -> values.text(n, "a name")).orElse("?");
    double spread =
        section.require("spread", "0.5").map(n -> values.number(n, Bound.SPREAD)).orElse(1.0);
    return new Medium.Batch(name, spread);
  }

  private Rebuild rebuild(Section copy, int drives) {
    if (drives > 1) {
      Maybe.noteDefault(copy, "rebuild", "the drive's speed");
      Maybe.noteDefault(copy, "rebuild_reads", "all");
    }
    double daily = copy.get("daily_work_takes").map(n -> values.share(n, Bound.PART)).orElse(0.0);
    Rebuild.Reads reads = copy.get("rebuild_reads").map(this::reads).orElse(Rebuild.Reads.ALL);
    return new Rebuild(time(copy, daily), reads);
  }

  private Rebuild.Reads reads(Node node) {
    String word = values.word(node, List.of("all", "used"));
    return Rebuild.Reads.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private Rebuild.Time time(Section copy, double daily) {
    Optional<Node> node = copy.get("rebuild");
    if (node.isEmpty() || isRate(node.get())) {
      return new Rebuild.ByRate(Maybe.number(node, values::link), daily);
    }
    copy.refuse("daily_work_takes", "beside a law for 'rebuild'", "a rate for 'rebuild'");
    return new Rebuild.ByLaw(laws.law(node.get()));
  }

  private static boolean isRate(Node node) {
    return Quantity.parse(Nodes.text(node))
        .filter(q -> q.unit().contains("/s") || q.unit().contains("ps"))
        .isPresent();
  }
}
