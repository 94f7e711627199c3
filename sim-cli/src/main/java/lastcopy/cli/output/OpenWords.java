package lastcopy.cli.output;

import java.util.Locale;
import java.util.Optional;
import lastcopy.cli.scenario.Scenario;

/** What is said of a file that leaves something open, where only what is there today counts. */
public final class OpenWords {

  private OpenWords() {}

  /** One sentence; empty if the file leaves nothing open. */
  public static Optional<String> sentence(Scenario.Open open) {
    if (open.choices() == 0) {
      return Optional.empty();
    }
    String choices = open.choices() == 1 ? "one choice" : open.choices() + " choices";
    return Optional.of(
        String.format(
            Locale.ROOT,
            "The file leaves %s open, %,d layouts in all: what is there today is taken here; advise"
                + " weighs them all.",
            choices,
            open.layouts()));
  }
}
