package lastcopy.cli.story;

import java.util.Locale;
import java.util.Optional;
import lastcopy.cli.output.Spans;
import lastcopy.history.report.Happening;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Medium;
import lastcopy.story.Story;
import lastcopy.words.ByteUnit;

/** A sentence for each kind of happening. */
final class StorySentences {

  private final Story story;
  private final StoryClock clock;

  StorySentences(Story story, StoryClock clock) {
    this.story = story;
    this.clock = clock;
  }

  /** The sentence of a moment, with what can be read from what came before and after. */
  String of(int moment) {
    Happening it = story.moments().get(moment).happening();
    return switch (it.kind()) {
      case COPY_GONE -> StoryOutage.how(story, moment) + of(it);
      case MISHAP ->
          of(it) + (StoryOutage.harmsNothing(story, moment) ? " No copy is harmed." : "");
      case REFILLED -> StoryReturn.filled(story, moment);
      case NOTICED -> StoryReturn.noticed(story, moment, bytes(it.bytes()));
      default -> of(it);
    };
  }

  /** One or two sentences for somebody who does not know the model. */
  String of(Happening it) {
    String copy = name(it.copy());
    String bytes = bytes(it.bytes());
    return switch (it.kind()) {
      case START -> "It begins.";
      case DRIVE_FAILED ->
          capital(drive(it))
              + " fails"
              + (it.bytes() > 0 ? " with the " + bytes + " on it." : ".")
              + (shelf(it)
                  ? expected(it, "A new one", "be there")
                  : expected(it, "It", "be replaced and whole again"));
      case DRIVE_READY ->
          capital(drive(it))
              + (shelf(it) ? " is replaced by a new, empty one." : " is replaced and whole again.");
      case DRIVE_SWAPPED ->
          capital(drive(it)) + " has its planned age: it is swapped for a new one.";
      case DRIVE_ADDED -> copy + " is full: " + drive(it) + " is added.";
      case MISHAP -> mishap(it);
      case COPY_GONE ->
          copy
              + " is gone"
              + (it.bytes() > 0 ? " with the " + bytes + " that it held." : ".")
              + (service(it)
                  ? expected(it, "It", "take footage again")
                  : expected(it, "New hardware", "be there"));
      case COPY_BACK ->
          copy + (service(it) ? " takes footage again" : " has hardware again") + " and is empty.";
      case REFILL_STARTED ->
          copy
              + " is filled again from "
              + it.subject()
              + ": "
              + bytes
              + "."
              + expected(it, "It", "be done");
      case CARRIED ->
          "A drive with "
              + bytes
              + " is carried to "
              + copy
              + ", which is sooner than its link."
              + expected(it, "It", "be there");
      case REFILLED -> copy + " is filled again.";
      case UNREADABLE ->
          "Unreadable spots are found on "
              + copy
              + ": "
              + bytes
              + "."
              + (story.copies().size() > 1 ? " What another copy holds is put back." : "");
      case SPOILT ->
          copy
              + " can no longer be restored from, and nobody knows"
              + (it.bytes() > 0 ? ": " + bytes + "." : ".");
      case SPOIL_FOUND -> "A restore from " + copy + " fails: now it is known to be unusable.";
      case DELETED -> bytes + " is deleted by mistake on " + orDesk(it) + "." + noticed(it);
      case MALWARE ->
          (it.bytes() > 0
                  ? "Malware destroys " + bytes + " on the copies that it can reach."
                  : "Malware strikes and finds nothing to destroy.")
              + noticed(it);
      case DELETION_ARRIVED -> arrived(it);
      case DROPPED -> copy + " drops what it still held of it: " + bytes + ".";
      case NOTICED ->
          it.bytes() > 0
              ? "Somebody notices: " + bytes + " of it is put back, since a copy still held it."
              : "Somebody notices; there is nothing to put back.";
      case FEED_STOPPED -> "The feed of " + copy + " stops, and nobody sees it.";
      case FEED_SEEN -> "Somebody looks: the feed of " + copy + " goes on.";
      case CARDS_EXPIRED -> "Camera cards are formatted that alone still held " + bytes + ".";
      case LOST -> "LOST FOR GOOD: " + bytes + "." + because(it.subject());
      case END -> "The story ends.";
    };
  }

  private static String because(String cause) {
    return cause.isBlank() ? "" : " Why: " + cause + ".";
  }

  /** Named by a word, such as a theft, or by a whole sentence. */
  private String mishap(Happening it) {
    String what = it.subject().isBlank() ? "a mishap" : it.subject();
    return capital(what) + (what.contains(" struck") || what.contains(" took") ? "." : " strikes.");
  }

  private String arrived(Happening it) {
    String arrives = mistake(it) + " reaches " + name(it.copy());
    if (it.until() == Double.POSITIVE_INFINITY && it.bytes() > 0) {
      return arrives + ", which keeps the old state for good.";
    }
    if (!(it.until() > it.hours())) {
      return arrives + ", which keeps nothing of the old state.";
    }
    if (it.bytes() == 0) {
      return arrives + ", which held nothing of it.";
    }
    return arrives + ", which keeps the old state " + when(it) + ".";
  }

  private static String mistake(Happening it) {
    return it.subject().contains("malware") ? "What malware did" : "The deletion";
  }

  private String expected(Happening it, String who, String what) {
    if (!(it.until() > it.hours())) {
      return "";
    }
    return " " + who + " should " + what + " " + when(it) + ".";
  }

  private String noticed(Happening it) {
    return it.until() > it.hours() ? " It will be noticed " + when(it) + "." : "";
  }

  /** Such as {@code in 3 days (day 490)} or {@code until after the end}. */
  private String when(Happening it) {
    boolean lasts = it.kind() == Happening.Kind.DELETION_ARRIVED;
    if (it.until() > clock.horizonHours()) {
      return lasts ? "until after the end" : "only after the end of the story";
    }
    String span = Spans.span(it.until() - it.hours());
    String day = clock.day(it.until());
    String which = day.equals(clock.day(it.hours())) ? "" : " (" + day + ")";
    return (lasts ? "for " : "in ") + span + which;
  }

  /** The drive of a happening, by number where the copy has several. */
  private String drive(Happening it) {
    boolean several =
        it.copy() >= 0
            && story.copy(it.copy()).driveSet().map(Medium.DriveSet::drives).orElse(1) > 1;
    boolean added = it.kind() == Happening.Kind.DRIVE_ADDED;
    return it.drive() >= 0 && (several || added)
        ? "drive " + (it.drive() + 1) + " of " + name(it.copy()) + model(it)
        : "the drive of " + name(it.copy());
  }

  /** The model of a drive, where not all are of one. */
  private String model(Happening it) {
    return Optional.of(it.copy())
        .filter(copy -> copy >= 0)
        .flatMap(copy -> story.copy(copy).driveSet())
        .filter(set -> set.kinds().size() > 1)
        .map(set -> " (" + set.model(it.drive()).id() + ")")
        .orElse("");
  }

  private boolean shelf(Happening it) {
    return it.copy() >= 0
        && story
            .copy(it.copy())
            .driveSet()
            .filter(set -> set.arrangement() == Arrangement.SHELF)
            .isPresent();
  }

  private boolean service(Happening it) {
    return it.copy() >= 0 && story.copy(it.copy()).driveSet().isEmpty();
  }

  private String orDesk(Happening it) {
    return name(it.copy() >= 0 ? it.copy() : 0);
  }

  /** The name of a copy of the layout. */
  String name(int copy) {
    return copy < 0 ? "a copy" : story.copies().get(copy);
  }

  private static String bytes(double bytes) {
    return bytes > 0 ? ByteUnit.format(bytes) : "nothing";
  }

  /** With a capital letter, unless it begins with the name of a copy. */
  private String capital(String words) {
    boolean named = story.copies().stream().anyMatch(copy -> words.startsWith(copy + " "));
    return named || words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
