package lastcopy.cli.scenario;

import java.util.List;
import lastcopy.cli.scenario.yaml.Default;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;

/**
 * A scenario file that was read without mistakes.
 *
 * @param studios the studio and its layouts, in each possible world
 * @param defaults each default that was used, in the order of the file
 * @param open what the file leaves open
 */
public record Scenario(PossibleStudios studios, List<Default> defaults, Open open) {

  /**
   * Choices below layouts.
   *
   * @param choices how many; 0 if all is fixed
   * @param layouts how many layouts that makes in all, those that fit no drive or rule included
   */
  public record Open(int choices, long layouts) {}

  /** Copies the list. */
  public Scenario {
    defaults = List.copyOf(defaults);
  }

  /** The studio in which each unknown has its median. */
  public Studio studio() {
    return studios.central();
  }
}
