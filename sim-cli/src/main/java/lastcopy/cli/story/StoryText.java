package lastcopy.cli.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.Page;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.Spans;
import lastcopy.interval.OneIn;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DailyHours;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Studio;
import lastcopy.story.Story;
import lastcopy.words.YearWords;

/** A told history as text for a terminal or a pipe. */
final class StoryText {

  private final Page page;

  private StoryText(PageLook look) {
    page = new Page(look);
  }

  /**
   * How it is told.
   *
   * @param clock what days are called
   * @param all whether a long story leaves out nothing
   * @param look of the page
   */
  record Telling(StoryClock clock, boolean all, PageLook look) {}

  /** The whole page. */
  static String of(Told told, Studio studio, Layout layout, Telling telling) {
    StoryText text = new StoryText(telling.look());
    text.head(told, studio, layout);
    told.how().forEach(text.page::paragraph);
    told.story().ifPresent(story -> text.story(story, telling));
    if (!told.finished()) {
      text.page.gap();
      text.page.warning("", "", "Unfinished: the search was interrupted; this is what there was.");
    }
    return text.page.taken();
  }

  private void head(Told told, Studio studio, Layout layout) {
    String mark = told.finished() ? "" : " - UNFINISHED";
    page.heading(
        studio.name() + ": one simulated life over " + YearWords.of(studio.years()) + mark);
    page.heading(layout.id() + ": " + layout.title());
    for (Copy copy : layout.copies()) {
      page.lines("  ", "    ", copy.id() + ": " + describe(copy));
    }
    page.gap();
    told.story()
        .ifPresent(
            story ->
                page.paragraph(
                    String.format(
                        Locale.ROOT,
                        "%s %,d under seed %d (--history %d%s --seed %d tells it again).",
                        told.biased() ? "Biased history" : "History",
                        story.number(),
                        story.seed(),
                        story.number(),
                        told.biased() ? " --biased" : "",
                        story.seed())));
  }

  private static String describe(Copy copy) {
    String what = copy.driveSet().map(StoryText::drives).orElse("a service");
    String turns = copy.rotation().map(r -> r.turns() + " in turn, each ").orElse("");
    // A copy without a place of its own stands at one that the reader never named.
    boolean placed = !copy.place().id().equals("copy:" + copy.id());
    return turns
        + what
        + (placed ? " at '" + copy.place().id() + "'" : "")
        + copy.feed().map(StoryText::fed).orElse(", the working copy");
  }

  private static String drives(Medium.DriveSet set) {
    String arrangement =
        set.drives() == 1 ? "" : " (" + set.arrangement().word() + models(set) + ")";
    return set.drives() + (set.drives() == 1 ? " drive" : " drives") + arrangement;
  }

  /** Of unlike drives which, as the file lists them. */
  private static String models(Medium.DriveSet set) {
    if (set.kinds().size() == 1) {
      return "";
    }
    List<String> runs = new ArrayList<>();
    int alike = 1;
    for (int i = 0; i < set.drives(); i += alike) {
      alike = 1;
      while (i + alike < set.drives() && set.model(i + alike).equals(set.model(i))) {
        alike++;
      }
      runs.add(alike + " x " + set.model(i).id());
    }
    return ": " + String.join(", ", runs);
  }

  private static String fed(Feed feed) {
    String when =
        feed.schedule() instanceof Feed.Every every
            ? " every " + Spans.period(every.everyHours())
            : " all the time";
    return ", fed from " + feed.from() + when + feed.between().map(StoryText::hours).orElse("");
  }

  private static String hours(DailyHours hours) {
    return hours.always()
        ? ""
        : " between "
            + StoryClock.ofDay(hours.opens())
            + " and "
            + StoryClock.ofDay(hours.closes());
  }

  private void story(Story story, Telling telling) {
    StoryEnding ending = new StoryEnding(story, telling.clock());
    if (story.weight() != 1 && Double.isFinite(story.weight())) {
      page.paragraph(
          "It was drawn with failures made likelier on purpose: a plain history like it is about "
              + (story.weight() < 1
                  ? OneIn.many(story.weight()) + " times rarer."
                  : Numbers.fixed(story.weight(), 1) + " times as likely."));
    }
    page.paragraph("Each bar is what a copy holds of all footage that there is at that moment.");
    page.gap();
    page.add(StoryTimeline.of(story, ending.focus(), telling));
    page.gap();
    page.heading(ending.outcome());
    ending.why().forEach(page::paragraph);
    page.gap();
    StoryEnding.cautions().forEach(line -> page.lines("- ", "  ", line));
  }
}
