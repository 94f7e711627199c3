package lastcopy.cli.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lastcopy.outlook.Comeback;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.FeedOutlook;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.room.CopyRoom;
import lastcopy.outlook.room.LayoutRoom;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.outlook.room.RoomNeed;

/** The answers first: is there room, are the links fast enough, how soon is everything back. */
final class InShort {

  /** So many names stand in a sentence. */
  private static final int FEW = 3;

  private InShort() {}

  /** One sentence or two for each question. */
  static List<String> of(List<Outlook> outlooks, RoomAndTime room) {
    List<String> lines = new ArrayList<>();
    lines.add(room(room));
    if (outlooks.stream().flatMap(InShort::fed).findAny().isPresent()) {
      lines.add(links(outlooks));
    }
    lines.add(back(outlooks));
    return lines;
  }

  private static String room(RoomAndTime room) {
    RoomNeed end = room.needs().get(room.needs().size() - 1);
    String limit = InspectLines.percent(room.fill()) + " full";
    String need =
        String.format(
            Locale.ROOT,
            "Room: up to %s of footage, which at most %s need %s. ",
            InspectLines.bytes(end.mostBytes()),
            limit,
            InspectLines.bytes(end.roomBytes()));
    List<String> small = new ArrayList<>();
    for (LayoutRoom layout : room.layouts()) {
      for (CopyRoom copy : layout.copies()) {
        if (!copy.dues().isEmpty()) {
          small.add(layout.layout() + "." + copy.copy());
        }
      }
    }
    if (small.isEmpty()) {
      return need + "Every copy has that.";
    }
    double first =
        room.layouts().stream()
            .flatMap(layout -> layout.copies().stream())
            .filter(copy -> !copy.dues().isEmpty())
            .flatMapToDouble(copy -> DoubleStream.of(copy.dues().get(0).years()))
            .min()
            .orElseThrow();
    return need
        + "More room is due"
        + (small.size() > 1 ? ", first " : " ")
        + (first == 0 ? "now" : "after " + InspectLines.years(first))
        + ": "
        + few(small)
        + ".";
  }

  private static String links(List<Outlook> outlooks) {
    List<String> slow =
        outlooks.stream()
            .flatMap(
                outlook ->
                    fed(outlook)
                        .filter(copy -> !enough(copy.feed().orElseThrow()))
                        .map(copy -> outlook.layout().id() + "." + copy.copy().id()))
            .toList();
    return slow.isEmpty()
        ? "Links: each is fast and open long enough, this year and in the last one."
        : "Links: not enough, this year or in the last one: " + few(slow) + ".";
  }

  private static boolean enough(FeedOutlook feed) {
    return !feed.neverCatchesUp()
        && feed.link().map(l -> l.now().enough() && l.inLastYear().enough()).orElse(true);
  }

  private static Stream<CopyOutlook> fed(Outlook outlook) {
    return outlook.copies().stream().filter(copy -> copy.feed().isPresent());
  }

  private static String back(List<Outlook> outlooks) {
    List<String> never = new ArrayList<>();
    List<String> times = new ArrayList<>();
    for (Outlook outlook : outlooks) {
      DoubleStream hours =
          outlook.copies().get(0).comebacks().stream().mapToDouble(Comeback::hoursAtEnd);
      double soonest = hours.min().orElse(Double.NaN);
      if (Double.isNaN(soonest)) {
        never.add(outlook.layout().id());
      } else {
        times.add(outlook.layout().id() + " " + InspectLines.time(soonest));
      }
    }
    String gone = "If the working copy is gone, ";
    if (times.isEmpty()) {
      return gone + "nothing gives it back: " + nowhere(never) + ".";
    }
    return gone
        + "all is back in: "
        + few(times)
        + (never.isEmpty() ? "" : "; " + nowhere(never))
        + ".";
  }

  private static String nowhere(List<String> never) {
    return few(never) + (never.size() > 1 ? " have" : " has") + " no other copy";
  }

  private static String few(List<String> names) {
    int more = names.size() - FEW;
    return more <= 0
        ? String.join(", ", names)
        : String.join(", ", names.subList(0, FEW)) + " and " + more + " more";
  }
}
