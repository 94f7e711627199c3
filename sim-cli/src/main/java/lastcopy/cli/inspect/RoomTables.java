package lastcopy.cli.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Room;
import lastcopy.outlook.room.DriveChoice;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.outlook.room.RoomNeed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.DriveModel;
import lastcopy.words.ByteUnit;

/** Room by year, and the drives that hold the footage under the fill limit. */
final class RoomTables {

  /** Of more models only the first are told. */
  private static final int MODELS = 3;

  /** Years that are told of a long horizon: the first of them, and each fifth. */
  private static final int LONG = 10;

  private static final int EACH = 3;
  private static final int FIFTH = 5;

  /** In the order of the columns; a stripe takes as many as a shelf, but is none of the advice. */
  private static final List<Arrangement> SHOWN =
      List.of(
          Arrangement.SINGLE,
          Arrangement.MIRROR,
          Arrangement.PAIRS,
          Arrangement.PARITY,
          Arrangement.DOUBLE_PARITY,
          Arrangement.SHELF);

  private static final List<String> HEAD =
      List.of("drives", "years", "single", "mirror", "pairs", "parity", "double parity", "shelf");

  /** So many copies have room beside each other. */
  private static final int COPIES = 4;

  /** Columns of all but the name. */
  private static final int NUMBERS = 62;

  private final InspectLines page;
  private final RoomAndTime room;
  private final boolean all;

  RoomTables(InspectLines page, RoomAndTime room, boolean all) {
    this.page = page;
    this.room = room;
    this.all = all;
  }

  /** Footage and the room that it needs, by year. */
  void byYear(List<Outlook> outlooks) {
    List<Room.Year> years = outlooks.get(0).room();
    boolean shrinks =
        IntStream.range(0, years.size())
            .anyMatch(i -> years.get(i).footageBytes() < room.needs().get(i).mostBytes());
    List<List<String>> rows = new ArrayList<>();
    rows.add(row("year", "footage", "most until then", room(), shrinks));
    for (int i = 0; i < years.size(); i++) {
      RoomNeed need = room.needs().get(i);
      if (all || isTold(i, years.size())) {
        rows.add(
            row(
                number(years.get(i).years()),
                InspectLines.bytes(years.get(i).footageBytes()),
                InspectLines.bytes(need.mostBytes()),
                InspectLines.bytes(need.roomBytes()),
                shrinks));
      }
    }
    page.gap();
    page.table(0, rows);
  }

  private String room() {
    return "room that is at most " + InspectLines.percent(room.fill()) + " full then";
  }

  /** The most is told where it is more than what there is. */
  private static List<String> row(
      String year, String footage, String most, String room, boolean shrinks) {
    return shrinks ? List.of(year, footage, most, room) : List.of(year, footage, room);
  }

  private static boolean isTold(int year, int count) {
    return count <= LONG || year <= EACH || year % FIFTH == 0 || year == count - 1;
  }

  private static String number(double years) {
    return ByteUnit.digits(years);
  }

  /** How many drives of each model hold it in each arrangement. */
  void drives() {
    List<DriveModel> models = room.choices().stream().map(DriveChoice::model).distinct().toList();
    if (models.isEmpty()) {
      return;
    }
    page.gap();
    page.wrap(
        "",
        "  ",
        "Drives that hold it so (a fill limit, and buying for 2 to 3 years ahead, are common"
            + " practice, no source):");
    List<DriveModel> told = all ? models : models.subList(0, Math.min(MODELS, models.size()));
    choices(told);
    int more = models.size() - told.size();
    if (more > 0) {
      page.wrap(
          "  ", "  ", "(" + more + " more " + (more == 1 ? "model" : "models") + " with --all)");
    }
    if (room.choices().stream().anyMatch(choice -> choice.drives().isEmpty())) {
      RoomNeed end = room.needs().get(room.needs().size() - 1);
      page.wrap(
          "  ",
          "  ",
          "-: no number will do, since each drive holds everything; to the end it takes one of "
              + InspectLines.bytes(end.roomBytes())
              + ".");
    }
  }

  /** A name too long to stand beside its numbers stands above them. */
  private void choices(List<DriveModel> models) {
    int longest = models.stream().mapToInt(model -> model.id().length()).max().orElse(0);
    if (page.fits(longest, NUMBERS)) {
      List<List<String>> rows = new ArrayList<>();
      rows.add(HEAD);
      models.forEach(model -> rows.addAll(rows(model)));
      page.table(2, rows);
      return;
    }
    for (DriveModel model : models) {
      page.wrap("  ", "  ", model.id());
      List<List<String>> rows = new ArrayList<>();
      rows.add(HEAD.subList(1, HEAD.size()));
      rows(model).forEach(row -> rows.add(row.subList(1, row.size())));
      page.table(2, rows);
    }
  }

  private List<List<String>> rows(DriveModel model) {
    List<Double> horizons =
        room.choices().stream()
            .filter(choice -> choice.model().equals(model))
            .map(DriveChoice::years)
            .distinct()
            .toList();
    List<List<String>> rows = new ArrayList<>();
    for (double years : horizons) {
      List<String> cells = new ArrayList<>();
      cells.add(rows.isEmpty() ? model.id() : "");
      cells.add(number(years));
      SHOWN.forEach(arrangement -> cells.add(cell(model, arrangement, years)));
      rows.add(cells);
    }
    return rows;
  }

  private String cell(DriveModel model, Arrangement arrangement, double years) {
    return room.choices().stream()
        .filter(choice -> choice.model().equals(model))
        .filter(choice -> choice.arrangement() == arrangement && choice.years() == years)
        .map(
            choice ->
                choice.drives().isEmpty()
                    ? "-"
                    : String.format(Locale.ROOT, "%,d", choice.drives().getAsInt()))
        .findFirst()
        .orElse("-");
  }

  /** What is free on each copy of a layout, by year; of many copies in tables below each other. */
  void free(Outlook outlook) {
    List<CopyOutlook> sized =
        outlook.copies().stream().filter(copy -> copy.usableBytes().isPresent()).toList();
    for (int from = 0; from < sized.size(); from += COPIES) {
      free(outlook, sized.subList(from, Math.min(from + COPIES, sized.size())));
    }
  }

  private void free(Outlook outlook, List<CopyOutlook> shown) {
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("year"));
    shown.forEach(copy -> head.add("on " + copy.copy().id()));
    rows.add(head);
    for (Room.Year year : outlook.room()) {
      List<String> cells = new ArrayList<>(List.of(number(year.years())));
      for (CopyOutlook copy : shown) {
        double left = copy.usableBytes().getAsDouble() - year.footageBytes();
        cells.add(left < 0 ? "too small" : InspectLines.bytes(left) + " free");
      }
      rows.add(cells);
    }
    page.table(2, rows);
  }
}
