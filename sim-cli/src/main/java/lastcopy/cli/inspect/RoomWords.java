package lastcopy.cli.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.room.CopyRoom;
import lastcopy.outlook.room.DriveDue;
import lastcopy.outlook.room.Offload;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.outlook.room.RoomNeed;
import lastcopy.outlook.room.Streams;
import lastcopy.scenario.Arrangement;
import lastcopy.words.ByteUnit;

/** What is said of one copy's room, and of what a working copy takes in and gives out. */
final class RoomWords {

  /** More dates are told with {@code --all} only. */
  private static final int DATES = 3;

  private static final double BITS_PER_MEGABYTE = 8e-6;
  private static final double[] LINES = {1e9, 2.5e9, 1e10};

  private RoomWords() {}

  /** The room of a copy, when it is full, and what it takes then. */
  static String room(CopyOutlook outlook, CopyRoom copy, RoomAndTime room, boolean all) {
    if (outlook.usableBytes().isEmpty()) {
      return "as much as is paid for";
    }
    String usable = InspectLines.bytes(outlook.usableBytes().getAsDouble()) + " usable, ";
    String full =
        outlook.fillsAtYears().isPresent()
            ? "full after " + InspectLines.years(outlook.fillsAtYears().getAsDouble())
            : "enough to the end";
    if (copy.dues().isEmpty()) {
      return usable + full;
    }
    boolean shelf = outlook.copy().driveSet().orElseThrow().arrangement() == Arrangement.SHELF;
    return shelf
        ? usable + full + "; " + dates(copy.dues(), all)
        : usable
            + InspectLines.percent(room.fill())
            + " full after "
            + InspectLines.years(copy.dues().get(0).years())
            + (outlook.fillsAtYears().isPresent() ? ", " : " but ")
            + full
            + "; then "
            + then(copy.dues(), room);
  }

  private static String dates(List<DriveDue> dues, boolean all) {
    List<DriveDue> told = all ? dues : dues.subList(0, Math.min(DATES, dues.size()));
    return "the next drive is due after "
        + told.stream().map(due -> ByteUnit.digits(due.years())).collect(Collectors.joining(", "))
        + (told.get(told.size() - 1).years() == 1 ? " year" : " years")
        + (told.size() < dues.size()
            ? String.format(Locale.ROOT, " (%d more by the end)", dues.size() - told.size())
            : "");
  }

  private static String then(List<DriveDue> dues, RoomAndTime room) {
    RoomNeed end = room.needs().get(room.needs().size() - 1);
    OptionalInt first = dues.get(0).drives();
    OptionalInt last = dues.get(dues.size() - 1).drives();
    if (first.isEmpty() || last.isEmpty()) {
      return "larger drives, " + InspectLines.bytes(end.roomBytes()) + " to the end";
    }
    return drives(first.getAsInt())
        + (first.equals(last) ? "" : ", by the end " + drives(last.getAsInt()));
  }

  private static String drives(int count) {
    return String.format(Locale.ROOT, "%,d drives", count);
  }

  /** How long a shoot takes onto the working copy. */
  static String offload(Offload offload) {
    boolean grows = offload.hoursInLastYear() != offload.hoursNow();
    return InspectLines.time(offload.hoursNow())
        + " for "
        + InspectLines.bytes(offload.shootNow())
        + (grows
            ? " now, "
                + InspectLines.time(offload.hoursInLastYear())
                + " for "
                + InspectLines.bytes(offload.shootInLastYear())
                + " in the last year"
            : "")
        + " at "
        + InspectLines.megabytes(offload.slowest().bytesPerSecond())
        + " ("
        + offload.slowest().name()
        + "), if cards are as fast; as long again to check it";
  }

  /** How many can edit at once, and over which network fewer. */
  static String streams(Streams streams) {
    List<String> fewer = new ArrayList<>();
    for (double line : LINES) {
      if (streams.over(line) < streams.count()) {
        fewer.add(
            String.format(
                Locale.ROOT,
                "of %2$s Gbit/s %1$,d",
                streams.over(line),
                ByteUnit.digits(line / 1e9)));
      }
    }
    return String.format(
        Locale.ROOT,
        "%,d of %s Mbit/s at once: %s does %s%s; fewer where hard disks seek between them",
        streams.count(),
        ByteUnit.digits(streams.bytesPerSecond() * BITS_PER_MEGABYTE),
        streams.slowest().name(),
        InspectLines.megabytes(streams.slowest().bytesPerSecond()),
        fewer.isEmpty()
            ? ", and a network of 1 Gbit/s is enough"
            : "; by a network " + String.join(", ", fewer));
  }
}
