package lastcopy.cli.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/** What is noted while a file is read: mistakes, defaults, and which keys are used where. */
final class Notes {
  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Default> defaults = new ArrayList<>();

  Notes(String file) {
    this.file = file;
  }

  void problem(Node at, String found, String accepted) {
    problem(at, found, accepted, "");
  }

  void problem(Node at, String found, String accepted, String suggestion) {
    problem(at.getStartMark(), found, accepted, suggestion);
  }

  void problem(Optional<Mark> at, String found, String accepted, String suggestion) {
    int line = at.map(Mark::getLine).orElse(0) + 1;
    int column = at.map(Mark::getColumn).orElse(0) + 1;
    Problem problem = new Problem(file, line, column, found, accepted, suggestion);
    // An alias brings the same mistake again; once is enough.
    if (!problems.contains(problem)) {
      problems.add(problem);
    }
  }

  void defaulted(String where, String key, String value) {
    defaults.add(new Default(where, key, value, "format default"));
  }

  void assumed(String where, String key, String value) {
    defaults.add(new Default(where, key, value, "assumption"));
  }

  /** Builds a record; its own check of ranges becomes a problem, unless others explain it. */
  <T> Optional<T> build(Node at, Supplier<T> record) {
    try {
      return Optional.of(record.get());
    } catch (IllegalArgumentException e) {
      if (problems.isEmpty()) {
        problem(at, "values that do not fit together", e.getMessage());
      }
      return Optional.empty();
    }
  }

  boolean hasProblems() {
    return !problems.isEmpty();
  }

  /** Whether a mistake was noted between the start and the end of a node. */
  boolean hasProblemWithin(Node node) {
    return problems.stream().anyMatch(problem -> within(problem, node));
  }

  private static boolean within(Problem problem, Node node) {
    return node.getStartMark().filter(mark -> compare(problem, mark) >= 0).isPresent()
        && node.getEndMark().filter(mark -> compare(problem, mark) < 0).isPresent();
  }

  private static int compare(Problem problem, Mark mark) {
    int lines = Integer.compare(problem.line(), mark.getLine() + 1);
    return lines != 0 ? lines : Integer.compare(problem.column(), mark.getColumn() + 1);
  }

  /** Every mistake, in the order of the file. */
  List<Problem> problems() {
    return problems.stream()
        .sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column))
        .toList();
  }

  List<Default> defaults() {
    return defaults;
  }

  String file() {
    return file;
  }
}
