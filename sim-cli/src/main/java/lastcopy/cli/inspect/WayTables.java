package lastcopy.cli.inspect;

import java.util.ArrayList;
import java.util.List;
import lastcopy.outlook.Comeback;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Route;
import lastcopy.outlook.room.CopyRoom;
import lastcopy.outlook.room.LayoutRoom;
import lastcopy.outlook.room.WayLimit;

/** What limits each way of a layout, and how long until all footage is back, as small tables. */
final class WayTables {

  private final InspectLines page;

  WayTables(InspectLines page) {
    this.page = page;
  }

  /** A row for each way; a refill by the feed is the feed's. */
  void limits(Outlook outlook, LayoutRoom room) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("way", "does", "limited by", "and without that"));
    for (int i = 0; i < outlook.copies().size(); i++) {
      boolean fed = outlook.copies().get(i).feed().isPresent();
      CopyRoom copy = room.copies().get(i);
      copy.limits().stream()
          .filter(limit -> !fed || limit.way().kind() != Route.Kind.REFILL)
          .forEach(limit -> rows.add(row(copy.copy(), limit)));
    }
    if (rows.size() > 1) {
      page.table(2, rows);
    }
  }

  private static List<String> row(String copy, WayLimit limit) {
    return List.of(
        name(copy, limit.way()),
        InspectLines.megabytes(limit.way().bytesPerSecond()),
        limit.way().slowest().name(),
        without(limit));
  }

  private static String name(String copy, Route way) {
    return way.kind() == Route.Kind.REBUILD
        ? "rebuild " + copy
        : way.kind().word() + " " + way.from() + " to " + copy;
  }

  private static String without(WayLimit limit) {
    if (limit.next().isEmpty()) {
      return "the file names nothing else";
    }
    if (limit.way().overstated()) {
      return "the same: taken as stated";
    }
    String by = " (" + limit.next().get().name() + ")";
    return (limit.helps() ? InspectLines.megabytes(limit.without()) : "no more") + by;
  }

  /** A row for each route by which all footage comes back. */
  void comebacks(Outlook outlook) {
    if (outlook.copies().stream().allMatch(copy -> copy.comebacks().isEmpty())) {
      page.wrap("  ", "  ", "all footage back: there is no other copy that could give it back");
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("all footage back", "today's", "at the end", "how"));
    for (CopyOutlook copy : outlook.copies()) {
      for (Comeback route : copy.comebacks()) {
        rows.add(
            List.of(
                route.from() + " to " + copy.copy().id(),
                InspectLines.time(route.hoursNow()),
                InspectLines.time(route.hoursAtEnd()),
                how(route) + " at " + InspectLines.megabytes(route.bytesPerSecond())));
      }
    }
    page.table(2, rows);
  }

  private static String how(Comeback route) {
    return switch (route.by()) {
      case RESTORE -> "given back";
      case FEED -> "by its feed";
      case HAND -> "carried by hand";
    };
  }
}
