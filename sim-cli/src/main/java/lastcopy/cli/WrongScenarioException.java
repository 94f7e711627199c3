package lastcopy.cli;

import java.util.List;

/** A scenario is wrong; nothing was written. */
final class WrongScenarioException extends Exception {

  private static final long serialVersionUID = 1L;

  /** One line for each problem. */
  WrongScenarioException(List<String> problems) {
    super(String.join(System.lineSeparator(), problems));
  }
}
