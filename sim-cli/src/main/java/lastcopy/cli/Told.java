package lastcopy.cli;

import java.util.List;
import java.util.Optional;
import lastcopy.simulate.Story;

/**
 * What a search for a story came to.
 *
 * @param story empty if none was found
 * @param selector how it was chosen, as an option would say it
 * @param searched how many histories were searched
 * @param how sentences that say how it was chosen, or what the search found instead
 * @param finished false if the search was interrupted
 */
record Told(
    Optional<Story> story, String selector, long searched, List<String> how, boolean finished) {

  Told {
    how = List.copyOf(how);
  }
}
