package lastcopy.cli.output;

import java.io.IOException;
import java.util.List;
import lastcopy.scenario.Unknown;
import lastcopy.words.ByteUnit;

/** What a file leaves unknown, in words and as JSON. */
public final class UnknownWords {

  private UnknownWords() {}

  /** One of them, such as {@code drives.desk-8tb.fails: 1 to 4 %/year}. */
  public static String line(Unknown unknown) {
    return unknown.key() + ": " + range(unknown);
  }

  /** Between what it lies, such as {@code 1 to 4 %/year}. */
  public static String range(Unknown unknown) {
    return range(unknown.from(), unknown.to(), unknown.unit());
  }

  /** The same of its parts; a factor has no unit. */
  public static String range(double from, double to, String unit) {
    String ends = ByteUnit.digits(from) + " to " + ByteUnit.digits(to);
    return ends + " " + (unit.isEmpty() ? "times" : unit);
  }

  /**
   * The fields of one of them, within an object.
   *
   * @throws IOException if the page cannot be written
   */
  public static void fields(JsonPage page, Unknown unknown) throws IOException {
    page.generator().writeStringField("key", unknown.key());
    page.number("from", unknown.from());
    page.number("to", unknown.to());
    page.generator().writeStringField("unit", unknown.unit());
  }

  /**
   * All of them, as the field {@code unknowns}; no field where all is known.
   *
   * @throws IOException if the page cannot be written
   */
  public static void list(JsonPage page, List<Unknown> unknowns) throws IOException {
    if (unknowns.isEmpty()) {
      return;
    }
    page.generator().writeArrayFieldStart("unknowns");
    for (Unknown unknown : unknowns) {
      page.generator().writeStartObject();
      fields(page, unknown);
      page.generator().writeEndObject();
    }
    page.generator().writeEndArray();
  }
}
