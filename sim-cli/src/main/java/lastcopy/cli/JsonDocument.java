package lastcopy.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.OptionalDouble;

/** What every JSON document of this program does alike. */
final class JsonDocument {

  /** Writes the document. */
  @FunctionalInterface
  interface Body {
    /** Writes one value. */
    void writeTo(JsonGenerator json) throws IOException;
  }

  private JsonDocument() {}

  /**
   * Writes a document and a line end; leaves the stream open.
   *
   * @throws IOException if the stream fails
   */
  static void write(OutputStream out, Body body) throws IOException {
    JsonFactory factory = new JsonFactory();
    factory.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    try (JsonGenerator json = factory.createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      body.writeTo(json);
      json.writeRaw('\n');
    }
  }

  /** Writes a number unrounded; null where there is none. */
  static void number(JsonGenerator json, String key, OptionalDouble value) throws IOException {
    number(json, key, value.orElse(Double.NaN));
  }

  /** Writes a number unrounded; null where it is not finite. */
  static void number(JsonGenerator json, String key, double value) throws IOException {
    if (!Double.isFinite(value)) {
      json.writeNullField(key);
    } else if (Numbers.isWhole(value)) {
      json.writeNumberField(key, (long) value);
    } else {
      json.writeNumberField(key, value);
    }
  }
}
