package lastcopy.cli.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.interval.Estimate;
import lastcopy.story.Story;

/**
 * What a search for a story came to.
 *
 * @param story empty if none was found
 * @param selector how it was chosen, as an option would say it
 * @param searched how many histories were searched
 * @param how sentences that say how it was chosen, or what the search found instead
 * @param finished false if the search was interrupted
 * @param chance the chance of any loss without a bias, where the story is of a biased history
 */
public record Told(
    Optional<Story> story,
    String selector,
    long searched,
    List<String> how,
    boolean finished,
    Optional<Estimate> chance) {

  /** What a search through plain histories came to. */
  Told(Optional<Story> story, String selector, long searched, List<String> how, boolean finished) {
    this(story, selector, searched, how, finished, Optional.empty());
  }

  public Told {
    how = List.copyOf(how);
  }

  /** The same with one more sentence. */
  Told andHow(String sentence) {
    List<String> more = new ArrayList<>(how);
    more.add(sentence);
    return new Told(story, selector, searched, more, finished, chance);
  }

  /** The same, of a scenario some rates of which are not known. */
  Told inTheMiddle() {
    return andHow(
        "Some rates are not known: this is a life in the world in which each has the middle of its"
            + " range (by factors, not by steps).");
  }

  /** Whether the story is of a biased history. */
  boolean biased() {
    return chance.isPresent();
  }
}
