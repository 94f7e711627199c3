package lastcopy.cli.fit;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import lastcopy.cli.scenario.yaml.Printable;
import lastcopy.fit.LifeRecord;
import lastcopy.scenario.Units;

/** Reads one line of records; what is wrong with it is noted, and nothing is guessed. */
final class RecordLine {

  private static final Pattern NUMBER = Pattern.compile("(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");
  private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  /** In years; what is older is a slip of the pen. */
  private static final int OLDEST = 200;

  private static final int LONGEST = 60;
  private static final LocalDate FIRST = LocalDate.of(1950, 1, 1);
  private static final String A_DATE = "a date such as 2024-03-14, from 1950 until today";

  private final Columns columns;
  private final AgeUnit unit;
  private final LocalDate today;
  private final Mistakes mistakes;

  RecordLine(Columns columns, AgeUnit unit, LocalDate today, Mistakes mistakes) {
    this.columns = columns;
    this.unit = unit;
    this.today = today;
    this.mistakes = mistakes;
  }

  /** The life that a line tells, or nothing if something is wrong with it. */
  Optional<LifeRecord> life(List<String> cells) {
    Optional<Boolean> failed = failed(cells);
    Optional<double[]> ages = columns.dates() ? dates(cells) : ages(cells);
    if (failed.isEmpty() || ages.isEmpty()) {
      return Optional.empty();
    }
    return life(cells, failed.get(), ages.get());
  }

  /** The group of a line, or nothing if it has no name that can be shown. */
  Optional<String> group(List<String> cells) {
    String name = cells.get(columns.group()).strip();
    boolean plain = name.equals(Printable.of(name));
    if (name.isEmpty() || name.length() > LONGEST || !plain) {
      String what = name.isEmpty() ? "no name" : shown(name);
      return wrong(columns.group(), what, "a name of at most " + LONGEST + " characters");
    }
    return Optional.of(name);
  }

  private Optional<LifeRecord> life(List<String> cells, boolean failed, double... ages) {
    double entry = ages[0];
    double seen = ages[1];
    double exit = ages[2];
    int end = columns.of(columns.dates() ? Columns.UNTIL : Columns.EXIT);
    if (!(exit > entry)) {
      return wrong(
          end,
          "'" + cells.get(end).strip() + "', not after its record begins",
          columns.dates() ? "a later date" : "an age above its entry");
    }
    if (Double.isNaN(seen)) {
      return Optional.of(
          failed ? LifeRecord.failedAt(entry, exit) : LifeRecord.running(entry, exit));
    }
    int column = columns.of(Columns.SEEN);
    String found = shown(cells.get(column));
    if (!failed) {
      return wrong(column, found + " beside a drive that still runs", "nothing there");
    }
    if (seen < entry || seen > exit) {
      String accepted = "a time from when its record begins until it was found failed";
      return wrong(column, found + ", outside of its record", accepted);
    }
    return Optional.of(LifeRecord.failedBetween(entry, seen, exit));
  }

  private Optional<Boolean> failed(List<String> cells) {
    int column = columns.of(Columns.FAILED);
    String word = cells.get(column).strip().toLowerCase(Locale.ROOT);
    return switch (word) {
      case "1", "yes" -> Optional.of(true);
      case "0", "no" -> Optional.of(false);
      default -> wrong(column, shown(cells.get(column)), "1 or yes, 0 or no");
    };
  }

  /** Entry, last seen running (or no number) and exit, in the unit. */
  private Optional<double[]> ages(List<String> cells) {
    Optional<Double> entry =
        columns.has(Columns.ENTRY) ? age(cells, Columns.ENTRY) : Optional.of(0.0);
    Optional<Double> seen = given(cells) ? age(cells, Columns.SEEN) : Optional.of(Double.NaN);
    Optional<Double> exit = age(cells, Columns.EXIT);
    return all(entry, seen, exit);
  }

  private Optional<double[]> dates(List<String> cells) {
    Optional<LocalDate> service = date(cells, Columns.IN_SERVICE);
    boolean late = columns.has(Columns.FROM) && !blank(cells, Columns.FROM);
    Optional<LocalDate> from = late ? date(cells, Columns.FROM) : service;
    Optional<LocalDate> until = date(cells, Columns.UNTIL);
    Optional<LocalDate> seen = given(cells) ? date(cells, Columns.SEEN) : Optional.empty();
    if (service.isEmpty()
        || from.isEmpty()
        || until.isEmpty()
        || (given(cells) && seen.isEmpty())) {
      return Optional.empty();
    }
    if (from.get().isBefore(service.get())) {
      return wrong(
          columns.of(Columns.FROM),
          "'" + from.get() + "', before it went into service",
          "a date from " + service.get() + " on");
    }
    return all(
        Optional.of(age(service.get(), from.get())),
        Optional.of(seen.map(at -> age(service.get(), at)).orElse(Double.NaN)),
        Optional.of(age(service.get(), until.get())));
  }

  private static Optional<double[]> all(
      Optional<Double> entry, Optional<Double> seen, Optional<Double> exit) {
    return entry.isPresent() && seen.isPresent() && exit.isPresent()
        ? Optional.of(new double[] {entry.get(), seen.get(), exit.get()})
        : Optional.empty();
  }

  private double age(LocalDate from, LocalDate to) {
    return unit.ofHours(ChronoUnit.DAYS.between(from, to) * Units.HOURS_PER_DAY);
  }

  private boolean given(List<String> cells) {
    return columns.has(Columns.SEEN) && !blank(cells, Columns.SEEN);
  }

  private boolean blank(List<String> cells, String name) {
    return cells.get(columns.of(name)).isBlank();
  }

  private Optional<Double> age(List<String> cells, String name) {
    String text = cells.get(columns.of(name)).strip();
    String accepted = "an age in " + unit + " from 0 to " + OLDEST + " years, such as 1234.5";
    if (!NUMBER.matcher(text).matches()) {
      return wrong(columns.of(name), shown(text), accepted);
    }
    double age = Double.parseDouble(text);
    return age <= OLDEST * unit.year()
        ? Optional.of(age)
        : wrong(columns.of(name), shown(text), accepted);
  }

  private Optional<LocalDate> date(List<String> cells, String name) {
    String text = cells.get(columns.of(name)).strip();
    try {
      if (DATE.matcher(text).matches()) {
        LocalDate date = LocalDate.parse(text);
        if (!date.isBefore(FIRST) && !date.isAfter(today)) {
          return Optional.of(date);
        }
      }
    } catch (DateTimeException e) {
      // Such as the 30th of February: told below, as all that is no date.
    }
    return wrong(columns.of(name), shown(text), A_DATE);
  }

  /** What stands in a cell, cut where it is long. */
  private static String shown(String cell) {
    String text = cell.strip();
    return "'" + (text.length() > LONGEST ? text.substring(0, LONGEST) + "..." : text) + "'";
  }

  private <T> Optional<T> wrong(int cell, String found, String accepted) {
    mistakes.note(cell, found, accepted, "");
    return Optional.empty();
  }
}
