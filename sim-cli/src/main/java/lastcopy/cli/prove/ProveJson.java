package lastcopy.cli.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import lastcopy.cli.output.JsonPage;
import lastcopy.prove.Figure;
import lastcopy.prove.Finding;
import lastcopy.prove.Proof;

/** A proof for other programs: format lastcopy-prove/1. Nothing is rounded. */
final class ProveJson {

  private final JsonPage page;
  private final JsonGenerator json;

  private ProveJson(JsonPage page) {
    this.page = page;
    this.json = page.generator();
  }

  /**
   * Writes the findings; leaves the stream open.
   *
   * @throws IOException if the stream fails
   */
  static void write(Proof proof, List<Finding> findings, boolean finished, OutputStream out)
      throws IOException {
    JsonPage.write(out, page -> new ProveJson(page).document(proof, findings, finished));
  }

  private void document(Proof proof, List<Finding> findings, boolean finished) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", "lastcopy-prove/1");
    json.writeNumberField("seed", proof.seed());
    number("alarm_rate", Proof.ALARM_RATE);
    json.writeBooleanField("finished", finished);
    json.writeBooleanField("holds", Proof.holds(findings));
    json.writeArrayFieldStart("checks");
    for (Finding finding : findings) {
      check(finding);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void check(Finding finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("topic", finding.check().topic());
    json.writeStringField("what", finding.check().what());
    json.writeStringField("source", finding.check().source());
    json.writeObjectFieldStart("reference");
    json.writeStringField("kind", finding.reference().kind().name().toLowerCase(Locale.ROOT));
    number("value", finding.reference().value());
    number("low", finding.reference().low());
    number("high", finding.reference().high());
    json.writeEndObject();
    number("ours", finding.ours().value());
    number("low", finding.ours().low());
    number("high", finding.ours().high());
    number("verdict_low", finding.from());
    number("verdict_high", finding.to());
    if (finding.check().figure() instanceof Figure.Simulated simulated) {
      json.writeNumberField("histories", simulated.histories());
    }
    number("deviation", finding.deviation());
    json.writeBooleanField("holds", finding.holds());
    json.writeEndObject();
  }

  private void number(String key, double value) throws IOException {
    page.number(key, value);
  }
}
