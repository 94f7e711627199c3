package lastcopy.cli.scenario;

import java.util.List;
import lastcopy.scenario.Studio;

/**
 * A scenario file that was read without mistakes.
 *
 * @param studio the studio and its layouts
 * @param defaults each default that was used, in the order of the file
 */
public record Scenario(Studio studio, List<Default> defaults) {

  /** Copies the list. */
  public Scenario {
    defaults = List.copyOf(defaults);
  }
}
