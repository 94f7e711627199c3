package lastcopy.cli.scenario;

import java.util.List;
import java.util.stream.Collectors;
import lastcopy.cli.scenario.yaml.Problem;

/** A scenario file is wrong; it knows every mistake of the file. */
public final class ScenarioException extends Exception {
  private static final long serialVersionUID = 1;

  // Never serialized: the list is for whoever prints the message.
  private final transient List<Problem> problems;

  /** An exception for at least one problem, in the order of the file. */
  public ScenarioException(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /** Every mistake, in the order of the file. */
  public List<Problem> problems() {
    return problems;
  }
}
