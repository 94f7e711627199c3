package lastcopy.cli.story;

import java.util.stream.IntStream;
import lastcopy.history.report.Snapshot;
import lastcopy.scenario.Copy;
import lastcopy.story.Moment;
import lastcopy.story.Story;

/** What comes back, and from where: read from what the copies hold before and after. */
final class StoryReturn {

  private StoryReturn() {}

  /** A copy takes no more from others; possibly none had anything for it. */
  static String filled(Story story, int moment) {
    int copy = story.moments().get(moment).happening().copy();
    String name = story.copies().get(copy);
    Snapshot now = story.moments().get(moment).scene();
    boolean othersHold =
        IntStream.range(0, now.heldBytes().length)
            .anyMatch(c -> c != copy && now.heldBytes()[c] > 0);
    if (othersHold && now.heldBytes()[copy] > 0) {
      return name + " holds again everything that the other copies could give back.";
    }
    if (cameFromCards(story, moment, copy)) {
      return name + " takes what camera cards still held.";
    }
    if (story.copies().size() == 1) {
      return "Nothing comes back to " + name + ": there is no other copy.";
    }
    return "Nothing comes back to " + name + (othersHold ? "." : ": no other copy holds anything.");
  }

  /** Without another copy, what a copy gains between its return and now was on cards. */
  private static boolean cameFromCards(Story story, int moment, int copy) {
    for (int i = moment - 1; i >= 0; i--) {
      Moment before = story.moments().get(i);
      if (before.happening().copy() == copy) {
        double gained =
            story.moments().get(moment).scene().heldBytes()[copy]
                - before.scene().heldBytes()[copy];
        return before.hours() == story.moments().get(moment).hours() && gained > 0;
      }
    }
    return false;
  }

  /** Somebody notices a deletion or malware; the working copy may be gone just then. */
  static String noticed(Story story, int moment, String bytes) {
    Moment it = story.moments().get(moment);
    if (!(it.happening().bytes() > 0)) {
      return "Somebody notices; there is nothing to put back.";
    }
    boolean usable = !StoryOutage.unusable(story.moments().subList(0, moment), 0);
    if (it.scene().gone()[0] || !usable) {
      return "Somebody notices: copies still hold "
          + bytes
          + " of it, which can come back once "
          + story.copies().get(0)
          + " does.";
    }
    return "Somebody notices: "
        + bytes
        + " is put back from "
        + (onlyWorkingCopyKeeps(story)
            ? "what " + story.copies().get(0) + " had kept."
            : "where it was still held.");
  }

  /** Whether no copy but the working copy could have held it. */
  private static boolean onlyWorkingCopyKeeps(Story story) {
    Copy main = story.copy(0);
    return story.copies().size() == 1
        && story.layout().cardsKeepHours().isEmpty()
        && main.keepsDeletedHours() > 0;
  }
}
