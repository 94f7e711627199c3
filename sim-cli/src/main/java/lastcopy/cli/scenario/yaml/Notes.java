package lastcopy.cli.scenario.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/** What is noted while a file is read: mistakes, defaults, and which keys are used where. */
public final class Notes {
  private static final int MANY = 500;

  private final String file;
  private final Ranges ranges;
  private final Set<Problem> problems = new LinkedHashSet<>();
  private int noted;
  private final List<Default> defaults = new ArrayList<>();

  /** None yet, of a file without ranges. */
  public Notes(String file) {
    this(file, Ranges.central());
  }

  /**
   * None yet.
   *
   * @param ranges gathers what is given as a range
   */
  public Notes(String file, Ranges ranges) {
    this.file = file;
    this.ranges = ranges;
  }

  /** The ranges that were met, and what stands in for them. */
  public Ranges ranges() {
    return ranges;
  }

  /** Notes a mistake without a suggestion. */
  public void problem(Node at, String found, String accepted) {
    problem(at, found, accepted, "");
  }

  /** Notes a mistake. */
  public void problem(Node at, String found, String accepted, String suggestion) {
    problem(at.getStartMark(), found, accepted, suggestion);
  }

  /** Notes a mistake where a mark stands, or at the start of the file. */
  public void problem(Optional<Mark> at, String found, String accepted, String suggestion) {
    int line = at.map(Mark::getLine).orElse(0) + 1;
    int column = at.map(Mark::getColumn).orElse(0) + 1;
    problem(line, column, found, accepted, suggestion);
  }

  /** A problem at a line and a column, both from 1. */
  public void problem(int line, int column, String found, String accepted, String suggestion) {
    noted++;
    // An alias brings the same mistake again; once is enough.
    problems.add(new Problem(file, line, column, found, accepted, suggestion));
  }

  /** Notes that a default was taken. */
  public void defaulted(String where, String key, String value) {
    defaults.add(new Default(where, key, value, "format default"));
  }

  /** Notes that a typical value was taken. */
  public void assumed(String where, String key, String value) {
    defaults.add(new Default(where, key, value, "assumption"));
  }

  /** A typical value that the file asks for by name. */
  public void typical(String where, String key, String value) {
    defaults.add(new Default(where, key, value, Default.TYPICAL));
  }

  /** Builds a record; its own check of ranges becomes a problem, unless others explain it. */
  public <T> Optional<T> build(Node at, Supplier<T> record) {
    try {
      return Optional.of(record.get());
    } catch (IllegalArgumentException e) {
      if (problems.isEmpty()) {
        problem(at, "values that do not fit together", e.getMessage());
      }
      return Optional.empty();
    }
  }

  /** Whether there is any mistake. */
  public boolean hasProblems() {
    return !problems.isEmpty();
  }

  /** How many mistakes were noted so far, those that an alias brings again included. */
  public int count() {
    return noted;
  }

  /** Whether so many mistakes are known that nobody reads what else might have been meant. */
  public boolean many() {
    return problems.size() > MANY;
  }

  /** Every mistake, in the order of the file. */
  public List<Problem> problems() {
    return problems.stream()
        .sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column))
        .toList();
  }

  /** The defaults and typical values that were taken. */
  public List<Default> defaults() {
    return defaults;
  }

  /** The name of the file. */
  public String file() {
    return file;
  }
}
