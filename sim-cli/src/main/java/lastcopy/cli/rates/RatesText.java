package lastcopy.cli.rates;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import lastcopy.cli.output.Wrap;
import lastcopy.typical.DriveKind;
import lastcopy.typical.Level;
import lastcopy.typical.TypicalLives;
import lastcopy.typical.TypicalMishaps;
import lastcopy.typical.TypicalValue;

/** Typical values as a page for a terminal of 80 columns. */
final class RatesText {

  private static final int KIND = 16;
  private static final int LEVEL = 10;
  private static final int YEAR = 5;
  private static final int WHAT = 48;
  private static final int VALUE = 20;

  private final StringBuilder text = new StringBuilder();

  private RatesText() {}

  /** The page. */
  static String page() {
    RatesText page = new RatesText();
    page.paragraph(
        "Typical values, for those who know nothing better of their own drives and places. They are"
            + " guesses: what a source is named for suggests them, no more. In a scenario: fails:"
            + " {typical: hard-disk}, and level: low or cautious beside it; mishaps: {typical: home}"
            + " or business; desk: {typical: usual} or careful.");
    page.lives();
    page.mishaps();
    return page.text.toString();
  }

  private void lives() {
    text.append("\nChance to fail in each year of age, %\n");
    String head = Wrap.column("Drive", KIND) + Wrap.column("level", LEVEL);
    for (int year = 1; year <= 10; year++) {
      head += String.format(Locale.ROOT, "%5s", year < 10 ? year : "10+");
    }
    text.append(head).append('\n').append("-".repeat(Wrap.WIDTH)).append('\n');
    for (DriveKind kind : DriveKind.values()) {
      for (Level level : Level.values()) {
        life(kind, level);
      }
    }
    text.append(Wrap.lines("  [", "  ", "assumption: " + TypicalLives.SOURCE + "]"));
  }

  private void life(DriveKind kind, Level level) {
    String name = level == Level.LOW ? kind.id() : "";
    text.append(Wrap.column(name, KIND));
    text.append(Wrap.column(level.name().toLowerCase(Locale.ROOT), LEVEL));
    List<Double> chances = TypicalLives.yearlyChances(kind, level);
    chances.forEach(p -> text.append(String.format(Locale.ROOT, "%" + YEAR + ".1f", 100 * p)));
    text.append('\n');
  }

  private void mishaps() {
    text.append('\n');
    row("What happens", "typical", "");
    text.append("-".repeat(Wrap.WIDTH)).append('\n');
    Set<String> told = new HashSet<>();
    for (TypicalValue value : TypicalMishaps.values()) {
      row(value.what(), value.value(), value.mark().words());
      if (!value.source().isEmpty() && told.add(value.source())) {
        text.append(Wrap.lines("  [", "  ", value.source() + "]"));
      }
    }
  }

  private void row(String what, String value, String mark) {
    String line = Wrap.column(what, WHAT) + Wrap.column(value, VALUE) + mark;
    text.append(line.stripTrailing()).append('\n');
  }

  private void paragraph(String words) {
    text.append(Wrap.lines("", "", words));
  }
}
