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

  public static final String CANNOT_LOSE =
      "Nothing in the file can lose this footage: nothing ever befalls its working copy. The chance"
          + " is 0; \"at most\" says only what so few histories would show by themselves.";

  public static final String NEVER_LOST =
      "No history lost any footage, not even those in which failures and mishaps were made far more"
          + " frequent on purpose.";

  /** Before the reason. */
  public static final String DROPPED =
      "Histories in which failures were made more frequent on purpose were set aside, so its"
          + " figures come from histories as they fall. ";

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
