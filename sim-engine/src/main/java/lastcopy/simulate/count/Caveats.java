package lastcopy.simulate.count;

import java.util.ArrayList;
import java.util.List;

/**
 * What a layout's result says of itself, sentences for a layman.
 *
 * @param doubts why its figures are not to be trusted
 * @param notes how they were made, where that is not as asked or as usual
 */
public record Caveats(List<String> doubts, List<String> notes) {

  public static final Caveats NONE = new Caveats(List.of(), List.of());

  /** Copies the lists. */
  public Caveats {
    doubts = List.copyOf(doubts);
    notes = List.copyOf(notes);
  }

  /** These and one more note. */
  public Caveats note(String sentence) {
    List<String> more = new ArrayList<>(notes);
    more.add(sentence);
    return new Caveats(doubts, more);
  }

  /** The same notes, with these doubts. */
  public Caveats doubted(List<String> why) {
    return new Caveats(why, notes);
  }
}
