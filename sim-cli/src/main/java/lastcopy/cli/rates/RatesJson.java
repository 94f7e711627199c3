package lastcopy.cli.rates;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import lastcopy.cli.output.JsonPage;
import lastcopy.typical.DriveKind;
import lastcopy.typical.Level;
import lastcopy.typical.Mark;
import lastcopy.typical.TypicalLives;
import lastcopy.typical.TypicalMishaps;
import lastcopy.typical.TypicalValue;

/** Typical values for other programs: format lastcopy-rates/1. */
final class RatesJson {

  private final JsonPage page;
  private final JsonGenerator json;

  private RatesJson(JsonPage page) {
    this.page = page;
    this.json = page.generator();
  }

  /**
   * Writes them all; leaves the stream open.
   *
   * @throws IOException if the stream fails
   */
  static void write(OutputStream out) throws IOException {
    JsonPage.write(out, page -> new RatesJson(page).document());
  }

  private void document() throws IOException {
    json.writeStartObject();
    json.writeStringField("format", "lastcopy-rates/1");
    json.writeArrayFieldStart("drives");
    for (DriveKind kind : DriveKind.values()) {
      for (Level level : Level.values()) {
        drive(kind, level);
      }
    }
    json.writeEndArray();
    json.writeArrayFieldStart("values");
    for (TypicalValue value : TypicalMishaps.values()) {
      json.writeStartObject();
      json.writeStringField("id", value.id());
      json.writeStringField("what", value.what());
      json.writeStringField("value", value.value());
      json.writeStringField("mark", value.mark().words());
      json.writeStringField("source", value.source());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void drive(DriveKind kind, Level level) throws IOException {
    json.writeStartObject();
    json.writeStringField("typical", kind.id());
    json.writeStringField("level", level.name().toLowerCase(Locale.ROOT));
    json.writeArrayFieldStart("chance_by_year_of_age");
    for (double chance : TypicalLives.yearlyChances(kind, level)) {
      page.value(chance);
    }
    json.writeEndArray();
    json.writeStringField("mark", Mark.ASSUMPTION.words());
    json.writeStringField("source", TypicalLives.SOURCE);
    json.writeEndObject();
  }
}
