package lastcopy.cli.scenario;

import java.util.List;
import java.util.function.Predicate;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * What the format allows but the engine does not simulate yet: it is refused, never ignored in
 * silence. A row goes away when the engine can do what it says.
 */
final class NotYet {
  private static final List<Row> ROWS =
      List.of(
          new Row(
              Kind.COPY,
              "arrangement",
              NotYet::isShelf,
              "a shelf of drives",
              "another arrangement"),
          new Row(Kind.COPY, "latent_defects", NotYet::notZero, "latent defects", "no such key"),
          new Row(Kind.COPY, "scrub", NotYet::always, "scrubbing", "no such key"),
          new Row(Kind.COPY, "read_errors", NotYet::notZero, "read errors", "read_errors: 0"),
          new Row(Kind.COPY, "batch", NotYet::always, "drives of one batch", "no such key"),
          new Row(Kind.COPY, "strain", NotYet::notOne, "strain on the other drives", "strain: 1"),
          new Row(Kind.SPOILS, "rate", NotYet::notZero, "a copy that spoils", "rate: 0 %/year"),
          new Row(Kind.DELETION, "rate", NotYet::notZero, "deletion by mistake", "rate: 0 %/year"),
          new Row(Kind.MALWARE, "rate", NotYet::notZero, "malware", "rate: 0 %/year"),
          new Row(Kind.COPY, "rotation", NotYet::always, "drives that take turns", "no such key"),
          new Row(Kind.LAYOUT, "cards", NotYet::always, "cards that are kept", "no such key"),
          new Row(Kind.FOOTAGE, "keep_for", NotYet::always, "footage that ages out", "no such key"),
          new Row(Kind.FEED, "stops", NotYet::notZero, "a feed that stops", "stops: 0 per year"),
          new Row(
              Kind.FEED,
              "visits",
              NotYet::always,
              "visits of drives that take turns",
              "no such key"),
          new Row(
              Kind.DRIVE, "fails_off", NotYet::always, "failures while powered off", "no such key"),
          new Row(Kind.DRIVE, "power", NotYet::always, "the cost of power", "no such key"),
          new Row(Kind.COPY, "replace_at", NotYet::always, "planned replacement", "no such key"),
          new Row(Kind.VALUE, "range", NotYet::always, "a range of a rate", "a single number"));

  private NotYet() {}

  /**
   * One thing that is not built.
   *
   * @param kind the section of the key
   * @param key the key
   * @param refused which values of it are refused
   * @param what what a message calls it
   * @param instead what is accepted
   */
  private record Row(Kind kind, String key, Predicate<Node> refused, String what, String instead) {
    boolean refuses(Notes.Use use) {
      return use.kind() == kind && use.key().equals(key) && refused.test(use.value());
    }

    Problem problem(String file, Notes.Use use) {
      int line = use.keyNode().getStartMark().map(Mark::getLine).orElse(0) + 1;
      int column = use.keyNode().getStartMark().map(Mark::getColumn).orElse(0) + 1;
      String quoted = kind == Kind.VALUE ? Nodes.text(use.value()) : key;
      String found = "'" + quoted + "': " + what + ", which is not simulated yet";
      return new Problem(file, line, column, found, instead, "");
    }
  }

  /** What of the keys in use is refused, one problem for each. */
  static List<Problem> check(String file, List<Notes.Use> uses) {
    return uses.stream()
        .flatMap(
            use -> ROWS.stream().filter(row -> row.refuses(use)).map(row -> row.problem(file, use)))
        .toList();
  }

  private static boolean always(Node node) {
    return node != null;
  }

  private static boolean isShelf(Node node) {
    return Nodes.text(node).equals("shelf");
  }

  private static boolean notZero(Node node) {
    return number(node) != 0;
  }

  private static boolean notOne(Node node) {
    return number(node) != 1;
  }

  /** The number that a value begins with; NaN, which equals nothing, if there is none. */
  private static double number(Node node) {
    return Quantity.parse(Nodes.text(node)).map(Quantity::low).orElse(Double.NaN);
  }
}
