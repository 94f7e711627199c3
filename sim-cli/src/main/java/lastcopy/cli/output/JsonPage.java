package lastcopy.cli.output;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import lastcopy.interval.Estimate;
import lastcopy.outlook.Omission;
import lastcopy.outlook.Unpriced;

/**
 * A page of JSON whose numbers are never rounded.
 *
 * @param generator writes it
 */
public record JsonPage(JsonGenerator generator) {

  /** Writes the content of a page. */
  @FunctionalInterface
  public interface Content {
    /** Writes everything between the start of the page and its end. */
    void writeTo(JsonPage page) throws IOException;
  }

  /**
   * Writes a page and a line end; leaves the stream open.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(OutputStream out, Content content) throws IOException {
    try (JsonGenerator json = new JsonFactory().createGenerator(out, JsonEncoding.UTF8)) {
      json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
      json.setPrettyPrinter(new DefaultPrettyPrinter());
      content.writeTo(new JsonPage(json));
      json.writeRaw('\n');
    }
  }

  /** A field with a number. */
  public void number(String field, double value) throws IOException {
    generator.writeFieldName(field);
    value(value);
  }

  /**
   * A figure with its interval.
   *
   * @param value what the field of the figure itself is called
   */
  public void estimate(String field, String value, Estimate estimate) throws IOException {
    generator.writeObjectFieldStart(field);
    values(value, estimate);
    generator.writeEndObject();
  }

  /** The same fields in an object that has others too. */
  public void values(String value, Estimate estimate) throws IOException {
    number(value, estimate.value());
    number("low", estimate.low());
    number("high", estimate.high());
  }

  /** What is not counted because the scenario says nothing about it. */
  public void omissions(List<Omission> omissions) throws IOException {
    generator.writeArrayFieldStart("not_counted");
    for (Omission omission : omissions) {
      generator.writeStartObject();
      generator.writeStringField("id", omission.kind().id());
      generator.writeStringField("title", OmissionWords.title(omission));
      generator.writeEndObject();
    }
    generator.writeEndArray();
  }

  /** What costs nothing because the scenario does not price it. */
  public void unpriced(List<Unpriced> unpriced) throws IOException {
    generator.writeArrayFieldStart("not_priced");
    for (Unpriced each : unpriced) {
      generator.writeStartObject();
      generator.writeStringField("id", PriceWords.id(each));
      generator.writeStringField("title", PriceWords.title(each));
      generator.writeEndObject();
    }
    generator.writeEndArray();
  }

  /** A number; JSON has no infinity: null stands for what is not a finite number. */
  public void value(double value) throws IOException {
    if (!Double.isFinite(value)) {
      generator.writeNull();
    } else if (Numbers.isWhole(value)) {
      generator.writeNumber((long) value);
    } else {
      generator.writeNumber(value);
    }
  }
}
