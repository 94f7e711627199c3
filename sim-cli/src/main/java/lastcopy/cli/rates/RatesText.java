package lastcopy.cli.rates;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import lastcopy.cli.output.Page;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.Table;
import lastcopy.cli.output.Wrap;
import lastcopy.typical.DriveKind;
import lastcopy.typical.Level;
import lastcopy.typical.TypicalLives;
import lastcopy.typical.TypicalMishaps;
import lastcopy.typical.TypicalValue;

/** Typical values as a page. */
final class RatesText {

  private static final int KIND = 16;
  private static final int LEVEL = 10;
  private static final int YEAR = 5;
  private static final int WHAT = 48;
  private static final int VALUE = 20;

  private static final int YEARS = 10;
  private static final int MARK = 12;

  private final Page page;

  private RatesText(PageLook look) {
    page = new Page(look);
  }

  /** The page. */
  static String of(PageLook look) {
    RatesText rates = new RatesText(look);
    rates.page.paragraph(
        "Typical values, for those who know nothing better of their own drives and places. They are"
            + " guesses: what a source is named for suggests them, no more. In a scenario: fails:"
            + " {typical: hard-disk}, and level: low or cautious beside it; mishaps: {typical: home}"
            + " or business; desk: {typical: usual} or careful.");
    rates.lives();
    rates.mishaps();
    return rates.page.taken();
  }

  private void lives() {
    page.gap();
    page.heading("Chance to fail in each year of age, %");
    StringBuilder years = new StringBuilder();
    for (int year = 1; year <= YEARS; year++) {
      years.append(String.format(Locale.ROOT, "%" + YEAR + "s", year < YEARS ? year : "10+"));
    }
    List<String> heads = List.of(kindAndLevel("Drive", "level"), years.toString());
    Table table = new Table(page.look(), heads, KIND + LEVEL, YEARS * YEAR);
    page.add(table.head());
    for (DriveKind kind : DriveKind.values()) {
      for (Level level : Level.values()) {
        page.add(life(table, kind, level));
      }
    }
    page.lines("  [", "  ", "assumption: " + TypicalLives.SOURCE + "]");
  }

  private String life(Table table, DriveKind kind, Level level) {
    boolean isNamed = level == Level.LOW || page.look().width() < Wrap.WIDTH;
    String name = isNamed ? kind.id() : "";
    StringBuilder chances = new StringBuilder();
    TypicalLives.yearlyChances(kind, level)
        .forEach(p -> chances.append(String.format(Locale.ROOT, "%" + YEAR + ".1f", 100 * p)));
    return table.row(kindAndLevel(name, level.name().toLowerCase(Locale.ROOT)), chances.toString());
  }

  private static String kindAndLevel(String kind, String level) {
    return Wrap.column(kind, KIND) + Wrap.column(level, LEVEL);
  }

  private void mishaps() {
    page.gap();
    Table table = new Table(page.look(), List.of("What happens", "typical", ""), WHAT, VALUE, MARK);
    page.add(table.head());
    Set<String> told = new HashSet<>();
    for (TypicalValue value : TypicalMishaps.values()) {
      page.add(table.row(value.what(), value.value(), value.mark().words()));
      if (!value.source().isEmpty() && told.add(value.source())) {
        page.lines("  [", "  ", value.source() + "]");
      }
    }
  }
}
