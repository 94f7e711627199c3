package lastcopy.simulate;

import lastcopy.scenario.Studio;

/** Many histories of each layout of a studio. */
public final class Simulation {

  private Simulation() {}

  /**
   * Simulates every layout of a studio until the settings say stop.
   *
   * @throws UnsupportedOperationException if the studio uses a part of the model that is not built,
   *     with a sentence that says which
   */
  public static Comparison run(Studio studio, Settings settings, Progress progress) {
    if (settings.threads() > 0) {
      throw new UnsupportedOperationException("not built yet");
    }
    return null;
  }
}
