package lastcopy.cli.story;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.Spans;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Units;
import lastcopy.story.Moment;
import lastcopy.story.Story;
import lastcopy.words.ByteUnit;

/** The happenings of a story one after another: years headed, quiet stretches in one line. */
final class StoryTimeline {

  private static final int STAMP = 17;
  private static final String NEXT = " ".repeat(2 + STAMP);

  /** From here on a stretch without a happening is told. */
  private static final double QUIET_HOURS = 30 * Units.HOURS_PER_DAY;

  /** More happenings than these are not listed unless asked for. */
  static final int MOST = 40;

  private static final int BEFORE = 24;
  private static final int AFTER = 12;
  private static final int LOSSES = 10;

  private final Story story;
  private final StoryClock clock;
  private final PageLook look;
  private final StorySentences sentences;
  private final List<String> names;
  private final StringBuilder text = new StringBuilder();
  private String year = "";
  private String bars = "";

  private StoryTimeline(Story story, StoryClock clock, PageLook look) {
    this.story = story;
    this.clock = clock;
    this.look = look;
    sentences = new StorySentences(story, clock);
    names = story.copies();
  }

  /**
   * The lines of a story.
   *
   * @param focus the moment that matters most; what is far from it is left out of a long story
   * @param telling how it is told
   */
  static String of(Story story, int focus, StoryText.Telling telling) {
    StoryTimeline timeline = new StoryTimeline(story, telling.clock(), telling.look());
    BitSet shown = shown(story.moments(), focus, telling.all());
    int last = 0;
    for (int i = shown.nextSetBit(0); i >= 0; i = shown.nextSetBit(i + 1)) {
      timeline.between(last, i);
      timeline.moment(i, last);
      last = i;
    }
    return timeline.text.toString();
  }

  static BitSet shown(List<Moment> moments, int focus, boolean all) {
    BitSet shown = new BitSet();
    if (all || moments.size() <= MOST) {
      shown.set(0, moments.size());
      return shown;
    }
    shown.set(0);
    shown.set(moments.size() - 1);
    shown.set(Math.max(0, focus - BEFORE), Math.min(moments.size(), focus + AFTER));
    int losses = 0;
    for (int i = 0; i < moments.size() && losses < LOSSES; i++) {
      if (moments.get(i).kind() == Kind.LOST) {
        shown.set(i);
        losses++;
      }
    }
    return shown;
  }

  private void between(int last, int next) {
    Moment before = story.moments().get(last);
    Moment after = story.moments().get(next);
    int hidden = next - last - 1;
    if (hidden > 0) {
      text.append(
          line(
              "...",
              hidden
                  + (hidden == 1 ? " happening is" : " happenings are")
                  + " left out here (--all tells them)"));
    } else if (after.hours() - before.hours() >= QUIET_HOURS) {
      double shot = after.scene().shotBytes() - before.scene().shotBytes();
      String more = shot > 0 ? "; " + ByteUnit.format(shot) + " is shot" : "";
      text.append(line("...", Spans.span(after.hours() - before.hours()) + " pass" + more));
    }
  }

  /** A happening of the instant of the one told just before has no time of its own. */
  private void moment(int index, int last) {
    Moment moment = story.moments().get(index);
    boolean end = moment.kind() == Kind.END;
    String heading = end ? year : clock.year(moment.hours());
    if (!heading.equals(year)) {
      text.append(year.isEmpty() ? "" : "\n").append(look.heading(heading + "\n"));
      year = heading;
    }
    boolean same = last == index - 1 && story.moments().get(last).hours() == moment.hours();
    String stamp = same ? "" : clock.stamp(moment.hours());
    String told = line(end ? "the end" : stamp, sentences.of(index));
    text.append(moment.kind() == Kind.LOST ? look.warning(told) : told);
    if (pictured(index)) {
      String now = StoryBars.of(names, moment.scene(), there(moment.scene()), NEXT, look.prose());
      text.append(now.equals(bars) ? "" : now);
      bars = now;
    }
  }

  /**
   * Only what changes the picture has one: of one instant the last happening, and the one before a
   * loss.
   */
  private boolean pictured(int index) {
    Moment moment = story.moments().get(index);
    if (index + 1 == story.moments().size()) {
      return true;
    }
    Moment next = story.moments().get(index + 1);
    boolean last = next.hours() > moment.hours() || next.kind() == Kind.LOST;
    return last
        && switch (moment.kind()) {
          case START -> Arrays.stream(moment.scene().heldBytes()).anyMatch(held -> held > 0);
          case DRIVE_FAILED, COPY_GONE, COPY_BACK, REFILL_STARTED, REFILLED -> true;
          case SPOILT, SPOIL_FOUND, DELETED, MALWARE, NOTICED, LOST, END -> true;
          case DRIVE_READY, DRIVE_SWAPPED, DRIVE_ADDED, MISHAP, UNREADABLE, CARRIED -> false;
          case DELETION_ARRIVED, DROPPED, FEED_STOPPED, FEED_SEEN, CARDS_EXPIRED -> false;
        };
  }

  /** What there is; where footage ages out, what the fullest copy holds that lets it go. */
  private double there(Snapshot scene) {
    double left = Math.max(0, scene.shotBytes() - scene.lostBytes());
    if (story.studio().footage().keepHours().isEmpty()) {
      return left;
    }
    return IntStream.range(0, names.size())
        .filter(c -> !story.copy(c).driveSet().filter(StoryTimeline::isShelf).isPresent())
        .mapToDouble(c -> scene.heldBytes()[c])
        .max()
        .orElse(left);
  }

  private static boolean isShelf(Medium.DriveSet set) {
    return set.arrangement() == Arrangement.SHELF;
  }

  private String line(String stamp, String sentence) {
    return look.lines(String.format(Locale.ROOT, "  %-" + STAMP + "s", stamp), NEXT, sentence);
  }
}
