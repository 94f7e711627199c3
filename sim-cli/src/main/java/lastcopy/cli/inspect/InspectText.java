package lastcopy.cli.inspect;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.OmissionWords;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.PriceWords;
import lastcopy.cli.output.UnknownWords;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.FeedOutlook;
import lastcopy.outlook.FirstPayments;
import lastcopy.outlook.Omissions;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Route;
import lastcopy.outlook.Unpriced;
import lastcopy.outlook.Warning;
import lastcopy.outlook.room.CopyRoom;
import lastcopy.outlook.room.LayoutRoom;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Priced;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Unknown;
import lastcopy.words.ByteUnit;
import lastcopy.words.YearWords;

/** What a scenario means, for a terminal or a pipe. */
public final class InspectText {

  private final InspectLines page;
  private final RoomAndTime room;
  private final RoomTables tables;
  private final WayTables ways;
  private final boolean all;

  private InspectText(RoomAndTime room, boolean all, PageLook look) {
    this.page = new InspectLines(look);
    this.ways = new WayTables(page);
    this.room = room;
    this.all = all;
    this.tables = new RoomTables(page, room, all);
  }

  /** Renders the outlooks of a studio, with the usual fill limit. */
  public static String render(Studio studio, List<Outlook> outlooks, List<String> defaults) {
    return render(studio, outlooks, RoomAndTime.usual(studio, outlooks), defaults);
  }

  /** Renders the outlooks of a studio; the same input gives the same text. */
  public static String render(
      Studio studio, List<Outlook> outlooks, RoomAndTime room, List<String> defaults) {
    return render(
        PossibleStudios.only(studio),
        outlooks,
        room,
        defaults,
        Optional.empty(),
        false,
        PageLook.PLAIN);
  }

  /**
   * Renders the outlooks of a studio.
   *
   * @param open what the file leaves open, in a sentence
   * @param all whether long lists are told whole
   * @param look how it looks
   */
  static String render(
      PossibleStudios studios,
      List<Outlook> outlooks,
      RoomAndTime room,
      List<String> defaults,
      Optional<String> open,
      boolean all,
      PageLook look) {
    InspectText text = new InspectText(room, all, look);
    text.head(studios.central(), outlooks, open);
    for (Outlook outlook : outlooks) {
      text.layout(studios.central(), outlook);
    }
    text.unknowns(studios.unknowns());
    if (!defaults.isEmpty()) {
      text.page.gap();
      text.wrap("", "", "Defaults used because the file says nothing (--all lists each)");
      defaults.forEach(line -> text.wrap("  ", "      ", line));
    }
    return text.page.written();
  }

  private void head(Studio studio, List<Outlook> outlooks, Optional<String> open) {
    page.heading(
        "",
        studio.name()
            + ": what is sure over "
            + YearWords.of(studio.years())
            + ", if nothing fails");
    open.ifPresent(sentence -> wrap("", "", sentence));
    InShort.of(outlooks, room).forEach(line -> wrap("- ", "  ", line));
    OmissionWords.paragraph(Omissions.of(studio), outlooks.size())
        .ifPresent(words -> wrap("", "", words));
    wrap("", "", prices(studio));
    tables.byYear(outlooks);
    tables.drives();
  }

  private void unknowns(List<Unknown> unknowns) {
    if (!unknowns.isEmpty()) {
      page.gap();
      wrap(
          "",
          "",
          "Not known, each with 9 chances in 10 of lying between its ends; the figures above take"
              + " its middle (by factors, not by steps)");
      unknowns.forEach(unknown -> wrap("  ", "      ", UnknownWords.line(unknown)));
    }
  }

  private void layout(Studio studio, Outlook outlook) {
    LayoutRoom its = room.layout(outlook.layout().id());
    page.gap();
    page.heading("  ", outlook.layout().title() + " (" + outlook.layout().id() + ")");
    if (all) {
      tables.free(outlook);
    }
    for (CopyOutlook copy : outlook.copies()) {
      copy(copy, its.copy(copy.copy().id()));
      if (copy.equals(outlook.copies().get(0))) {
        its.offload().ifPresent(offload -> page.entry("offload", RoomWords.offload(offload)));
        its.streams().ifPresent(streams -> page.entry("streams", RoomWords.streams(streams)));
      }
    }
    ways.limits(outlook, its);
    ways.comebacks(outlook);
    if (Priced.in(studio)) {
      firstPayments(studio, outlook);
    }
    warnings(outlook);
  }

  private void warnings(Outlook outlook) {
    for (Warning warning : outlook.warnings()) {
      String about = warning.copy().isEmpty() ? "" : warning.copy() + ": ";
      page.warning(about + warning.text() + " [" + warning.id() + "]");
    }
  }

  /** What is priced, and what costs nothing because it is not. */
  private static String prices(Studio studio) {
    return Priced.in(studio)
        ? PriceWords.sentence(Unpriced.of(studio)).orElse("All that layouts take has a price.")
        : "The file prices nothing: what a layout costs is not told.";
  }

  private void firstPayments(Studio studio, Outlook outlook) {
    FirstPayments paid = FirstPayments.of(outlook.layout(), studio.footage().onHandBytes());
    String currency = studio.currency().map(label -> label + " ").orElse("");
    String parts =
        Stream.of(
                part("drives", paid.drives()),
                part("boxes", paid.boxes()),
                part("other", paid.other()))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(", "));
    wrap(
        "  ",
        "    ",
        "paid at the start: "
            + currency
            + ByteUnit.digits(paid.total())
            + (parts.isEmpty() ? "" : " (" + parts + ")"));
  }

  private static Optional<String> part(String kind, double money) {
    return money == 0 ? Optional.empty() : Optional.of(kind + " " + ByteUnit.digits(money));
  }

  private void copy(CopyOutlook outlook, CopyRoom its) {
    wrap("  ", "  ", outlook.copy().id());
    page.entry("room", RoomWords.room(outlook, its, room, all));
    rebuild(outlook);
    outlook.feed().ifPresent(feed -> feed(outlook, feed));
  }

  private void rebuild(CopyOutlook outlook) {
    if (outlook.rebuildHours().isEmpty()) {
      return;
    }
    double hours = outlook.rebuildHours().getAsDouble();
    if (outlook.way(Route.Kind.REBUILD).isEmpty()) {
      boolean ends = Double.isFinite(hours);
      page.entry("rebuild", ends ? InspectLines.time(hours) + " on average" : "may never end");
    } else {
      String what = readsUsed(outlook) ? " for what is in use at the end" : " a drive";
      page.entry("rebuild", InspectLines.time(hours) + what);
    }
  }

  private static boolean readsUsed(CopyOutlook outlook) {
    return outlook
        .copy()
        .driveSet()
        .filter(set -> set.rebuild().reads() == Rebuild.Reads.USED)
        .isPresent();
  }

  private void feed(CopyOutlook outlook, FeedOutlook feed) {
    feed.link().ifPresent(link -> page.entry("link time", LinkWords.of(link)));
    if (feed.neverCatchesUp()) {
      String megabits = Numbers.fixed(feed.megabitsNeeded(), 2);
      page.entry("lag", "never catches up; it would at " + megabits + " Mbit/s");
    } else if (feed.meanLagHours().isPresent()) {
      page.entry(
          "lag",
          InspectLines.time(feed.meanLagHours())
              + " on average, "
              + InspectLines.time(feed.worstLagHours())
              + " at worst");
    }
    String done = outlook.copy().startsFull() ? ", done before the start" : "";
    page.entry(
        "first fill",
        feed.firstFillHours().isEmpty()
            ? "not complete by the end"
            : InspectLines.time(feed.firstFillHours()) + done);
  }

  private void wrap(String first, String rest, String value) {
    page.wrap(first, rest, value);
  }
}
