package lastcopy.cli.host;

import java.util.List;

/** A scenario is wrong; nothing was written. */
public final class WrongScenarioException extends Exception {

  private static final long serialVersionUID = 1L;

  // Never serialized: for whoever prints the message.
  private final transient List<String> lines;

  /** One line for each problem. */
  public WrongScenarioException(List<String> problems) {
    super(String.join(System.lineSeparator(), problems));
    lines = List.copyOf(problems);
  }

  /** One line for each problem. */
  List<String> lines() {
    return lines;
  }
}
