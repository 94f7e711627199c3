package lastcopy.cli.story;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import lastcopy.history.report.Happening.Kind;
import lastcopy.story.Moment;
import lastcopy.story.Story;

/**
 * A life as a page shows it.
 *
 * @param id unique in the page
 * @param title what kind of life it is
 * @param how it was chosen, and how to tell it again
 * @param lanes a copy each
 * @param ticks where in the picture it went wrong
 * @param marks what happened there
 * @param ending what was lost and why, or how nearly
 */
record LifePicture(
    String id,
    String title,
    List<String> how,
    List<Lane> lanes,
    List<Tick> ticks,
    List<Happened> marks,
    List<String> ending) {

  private static final int GAP = 18;
  private static final int MOST = 8;
  private static final int BEFORE = 5;

  /** A part of the picture's width, which a label takes. */
  private static final double NEAR = 0.14;

  LifePicture {
    how = List.copyOf(how);
    lanes = List.copyOf(lanes);
    ticks = List.copyOf(ticks);
    marks = List.copyOf(marks);
    ending = List.copyOf(ending);
  }

  /**
   * What a copy holds over time.
   *
   * @param points of its shape
   */
  record Lane(String name, int top, String points) {
    int textTop() {
      return top - 4;
    }
  }

  /**
   * A happening.
   *
   * @param number in the picture
   * @param hours when
   * @param when in words
   * @param sentence what happened
   */
  record Happened(int number, double hours, String when, String sentence) {}

  /**
   * Happenings so near each other that they have one label.
   *
   * @param x where the first of them is
   * @param label the numbers of the first and the last
   */
  record Tick(String x, String label) {}

  /** The picture of a life that was told. */
  static LifePicture of(String id, String title, Told told, StoryClock clock) {
    Story story = told.story().orElseThrow();
    StoryEnding end = new StoryEnding(story, clock);
    List<String> ending = new ArrayList<>(List.of(end.outcome()));
    ending.addAll(end.why());
    List<String> how = new ArrayList<>(told.how());
    how.add(
        String.format(
            Locale.ROOT,
            "%s %,d under seed %d; --history %d%s tells it in full.",
            told.biased() ? "Biased history" : "History",
            story.number(),
            story.seed(),
            story.number(),
            told.biased() ? " --biased" : ""));
    List<Happened> marks = marks(story, clock, end.focus());
    return new LifePicture(
        id, title, how, lanes(story), ticks(marks, story.studio().horizonHours()), marks, ending);
  }

  private static List<Lane> lanes(Story story) {
    return IntStream.range(0, story.copies().size())
        .mapToObj(
            c ->
                new Lane(
                    story.copies().get(c),
                    GAP + c * (LaneShape.HEIGHT + GAP),
                    LaneShape.of(story, c)))
        .toList();
  }

  private static List<Happened> marks(Story story, StoryClock clock, int focus) {
    StorySentences sentences = new StorySentences(story, clock);
    List<Happened> marks = new ArrayList<>();
    BitSet chosen = chosen(story.moments(), focus);
    for (int i = chosen.nextSetBit(0); i >= 0; i = chosen.nextSetBit(i + 1)) {
      double hours = story.moments().get(i).hours();
      marks.add(new Happened(marks.size() + 1, hours, clock.day(hours), sentences.of(i)));
    }
    return marks;
  }

  private static List<Tick> ticks(List<Happened> marks, double horizon) {
    List<Tick> ticks = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= marks.size(); i++) {
      double first = marks.get(from).hours();
      if (i == marks.size() || marks.get(i).hours() - first > NEAR * horizon) {
        String label = i - from == 1 ? "" + i : (from + 1) + " to " + i;
        String x = String.format(Locale.ROOT, "%.1f", LaneShape.WIDTH * first / horizon);
        ticks.add(new Tick(x, label));
        from = i;
      }
    }
    return ticks;
  }

  /** The moment that matters most, those before it that are nearest, and what came of it. */
  private static BitSet chosen(List<Moment> moments, int focus) {
    BitSet chosen = new BitSet();
    List<Integer> unplanned =
        IntStream.range(0, moments.size())
            .filter(i -> !moments.get(i).routine() || (i == focus && focus > 0))
            .boxed()
            .toList();
    int at = Math.max(0, unplanned.indexOf(focus));
    int from = Math.max(0, at - BEFORE);
    unplanned.subList(from, Math.min(unplanned.size(), from + MOST)).forEach(chosen::set);
    IntStream.range(0, moments.size())
        .filter(i -> moments.get(i).kind() == Kind.LOST)
        .limit(2)
        .forEach(chosen::set);
    return chosen;
  }

  int width() {
    return LaneShape.WIDTH;
  }

  int height() {
    return axis() + GAP;
  }

  int laneHeight() {
    return LaneShape.HEIGHT;
  }

  /** Where the axis of time is. */
  int axis() {
    return lanes.size() * (LaneShape.HEIGHT + GAP) + GAP;
  }

  int labelTop() {
    return axis() + 13;
  }

  String pictured() {
    return title
        + ": what each copy holds over time, "
        + (marks.size() == 1 ? "1 happening marked" : marks.size() + " happenings marked");
  }
}
