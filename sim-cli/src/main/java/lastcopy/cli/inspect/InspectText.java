package lastcopy.cli.inspect;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.OmissionWords;
import lastcopy.cli.output.PriceWords;
import lastcopy.cli.output.UnknownWords;
import lastcopy.cli.output.Wrap;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.FeedOutlook;
import lastcopy.outlook.FirstPayments;
import lastcopy.outlook.Omissions;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Room;
import lastcopy.outlook.Route;
import lastcopy.outlook.Unpriced;
import lastcopy.outlook.Warning;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Priced;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Unknown;
import lastcopy.words.ByteUnit;

/** What a scenario means, for a terminal of 80 columns. */
public final class InspectText {

  private static final String NEXT = " ".repeat(18);
  private static final int COLUMN = 12;

  /** From here on a time is told in days. */
  private static final double LONG_HOURS = 72;

  private final StringBuilder text = new StringBuilder();

  private InspectText() {}

  /** Renders the outlooks of a studio; the same input gives the same text. */
  public static String render(Studio studio, List<Outlook> outlooks, List<String> defaults) {
    return render(PossibleStudios.only(studio), outlooks, defaults);
  }

  static String render(PossibleStudios studios, List<Outlook> outlooks, List<String> defaults) {
    Studio studio = studios.central();
    InspectText page = new InspectText();
    String years = ByteUnit.digits(studio.years());
    page.wrap("", "", studio.name() + ": what is sure over " + years + " years, if nothing fails");
    OmissionWords.paragraph(Omissions.of(studio), outlooks.size())
        .ifPresent(words -> page.wrap("", "", words));
    boolean priced = Priced.in(studio);
    page.wrap("", "", prices(studio));
    for (Outlook outlook : outlooks) {
      page.layout(outlook);
      if (priced) {
        page.firstPayments(studio, outlook);
      }
      page.warnings(outlook);
    }
    page.unknowns(studios.unknowns());
    if (!defaults.isEmpty()) {
      page.text.append("\nDefaults used because the file says nothing (--all lists each)\n");
      defaults.forEach(line -> page.wrap("  ", "      ", line));
    }
    return page.text.toString();
  }

  private void unknowns(List<Unknown> unknowns) {
    if (!unknowns.isEmpty()) {
      text.append('\n');
      wrap(
          "",
          "",
          "Not known, each with 9 chances in 10 of lying between its ends; the figures above take"
              + " its middle (by factors, not by steps)");
      unknowns.forEach(unknown -> wrap("  ", "      ", UnknownWords.line(unknown)));
    }
  }

  private void layout(Outlook outlook) {
    text.append('\n');
    wrap("", "  ", outlook.layout().title() + " (" + outlook.layout().id() + ")");
    room(outlook);
    outlook.copies().forEach(this::copy);
  }

  private void warnings(Outlook outlook) {
    for (Warning warning : outlook.warnings()) {
      String about = warning.copy().isEmpty() ? "" : warning.copy() + ": ";
      wrap("  ! ", "    ", about + warning.text() + " [" + warning.id() + "]");
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

  private void room(Outlook outlook) {
    // More columns than these do not fit beside the year and the footage.
    List<CopyOutlook> shown =
        outlook.copies().stream().filter(c -> c.usableBytes().isPresent()).limit(4).toList();
    text.append("  ").append(Wrap.column("year", COLUMN));
    cell("footage");
    shown.forEach(c -> cell("on " + c.copy().id()));
    endLine();
    for (Room.Year year : outlook.room()) {
      text.append("  ").append(Wrap.column(ByteUnit.digits(year.years()), COLUMN));
      cell(bytes(year.footageBytes()));
      for (CopyOutlook copy : shown) {
        double left = copy.usableBytes().getAsDouble() - year.footageBytes();
        cell(left < 0 ? "too small" : bytes(left) + " free");
      }
      endLine();
    }
  }

  private void cell(String value) {
    text.append(Wrap.column(value, COLUMN + 2));
  }

  private void endLine() {
    text.setLength(text.toString().stripTrailing().length());
    text.append('\n');
  }

  private void copy(CopyOutlook outlook) {
    wrap("  ", "  ", outlook.copy().id());
    entry("room", roomOf(outlook));
    for (Route way : outlook.ways()) {
      entry(way.kind().word(), way(outlook, way));
    }
    if (outlook.rebuildHours().isPresent() && outlook.way(Route.Kind.REBUILD).isEmpty()) {
      boolean ends = Double.isFinite(outlook.rebuildHours().getAsDouble());
      entry("rebuild", ends ? time(outlook.rebuildHours()) + " on average" : "may never end");
    }
    outlook.feed().ifPresent(feed -> feed(outlook, feed));
  }

  private static String roomOf(CopyOutlook outlook) {
    if (outlook.usableBytes().isEmpty()) {
      return "as much as is paid for";
    }
    String full =
        outlook.fillsAtYears().isPresent()
            ? "full after " + ByteUnit.digits(outlook.fillsAtYears().getAsDouble()) + " years"
            : "enough to the end";
    return bytes(outlook.usableBytes().getAsDouble()) + " usable, " + full;
  }

  private static String way(CopyOutlook outlook, Route way) {
    String rate = megabytes(way.bytesPerSecond());
    String slowest = "; slowest part: " + way.slowest().name();
    String its = " (" + megabytes(way.slowest().bytesPerSecond()) + ")";
    return switch (way.kind()) {
      case FEED -> "from " + way.from() + " at " + rate + slowest + its;
      case REBUILD ->
          time(outlook.rebuildHours())
              + (readsUsed(outlook) ? " for what is in use at the end, at " : " a drive at ")
              + rate
              + slowest
              + its;
      case REFILL ->
          time(outlook.refillHours())
              + " for all footage at the end, "
              + (outlook.copy().feed().isPresent() ? "by its feed " : "")
              + "from "
              + way.from()
              + " at "
              + rate
              + slowest
              + its;
    };
  }

  private static boolean readsUsed(CopyOutlook outlook) {
    return outlook
        .copy()
        .driveSet()
        .filter(set -> set.rebuild().reads() == Rebuild.Reads.USED)
        .isPresent();
  }

  private void feed(CopyOutlook outlook, FeedOutlook feed) {
    feed.link().ifPresent(link -> entry("link time", LinkWords.of(link)));
    byHand(outlook);
    if (feed.neverCatchesUp()) {
      String megabits = Numbers.fixed(feed.megabitsNeeded(), 2);
      entry("lag", "never catches up; it would at " + megabits + " Mbit/s");
    } else if (feed.meanLagHours().isPresent()) {
      entry(
          "lag",
          time(feed.meanLagHours()) + " on average, " + time(feed.worstLagHours()) + " at worst");
    }
    String done = outlook.copy().startsFull() ? ", done before the start" : "";
    entry(
        "first fill",
        feed.firstFillHours().isEmpty()
            ? "not complete by the end"
            : time(feed.firstFillHours()) + done);
  }

  private void byHand(CopyOutlook outlook) {
    if (outlook.byHandHours().isPresent()) {
      double byHand = outlook.byHandHours().getAsDouble();
      boolean sooner = byHand < outlook.refillHours().orElse(Double.POSITIVE_INFINITY);
      entry(
          "by hand",
          time(outlook.byHandHours())
              + " for all footage at the end, "
              + (sooner ? "sooner than by its link" : "no sooner than by its link"));
    }
  }

  private void entry(String name, String value) {
    wrap("    " + Wrap.column(name, NEXT.length() - 4), NEXT, value);
  }

  private void wrap(String first, String rest, String value) {
    text.append(Wrap.lines(first, rest, value));
  }

  private static String bytes(double amount) {
    return amount == 0 ? "0 GB" : ByteUnit.format(amount);
  }

  private static String megabytes(double bytesPerSecond) {
    return ByteUnit.digits(bytesPerSecond / Units.MB) + " MB/s";
  }

  private static String time(OptionalDouble hours) {
    double h = hours.orElse(Double.NaN);
    if (Double.isInfinite(h)) {
      return "never done";
    }
    return h < LONG_HOURS
        ? ByteUnit.digits(h) + " h"
        : ByteUnit.digits(h / Units.HOURS_PER_DAY) + " days";
  }
}
