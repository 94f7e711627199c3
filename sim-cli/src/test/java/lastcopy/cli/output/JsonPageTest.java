package lastcopy.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import lastcopy.interval.Estimate;
import lastcopy.outlook.Omission;
import lastcopy.outlook.Unpriced;
import lastcopy.scenario.Unknown;
import org.junit.jupiter.api.Test;

/** Pages of JSON to the last character, as another program reads them. */
class JsonPageTest {

  /** A stream that must not be closed. */
  private static final class Kept extends ByteArrayOutputStream {
    private boolean closed;

    @Override
    public void close() {
      closed = true;
    }
  }

  private static String page(JsonPage.Content fields) throws IOException {
    Kept out = new Kept();
    JsonPage.write(
        out,
        page -> {
          page.generator().writeStartObject();
          fields.writeTo(page);
          page.generator().writeEndObject();
        });
    assertThat(out.closed).as("the caller's stream").isFalse();
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void numbersHaveAllTheirDigitsAndWholeOnesNoPoint() throws IOException {
    assertThat(
            page(
                json -> {
                  json.number("whole", 8e12);
                  json.number("third", 1.0 / 3);
                  json.number("never", Double.POSITIVE_INFINITY);
                  json.number("unknown", Double.NaN);
                }))
        .isEqualTo(
            """
            {
              "whole" : 8000000000000,
              "third" : 0.3333333333333333,
              "never" : null,
              "unknown" : null
            }
            """);
  }

  @Test
  void aFigureComesWithItsInterval() throws IOException {
    assertThat(
            page(
                json ->
                    json.estimate(
                        "any_loss", "probability", new Estimate(0.07, 0.068, 0.072, true))))
        .isEqualTo(
            """
            {
              "any_loss" : {
                "probability" : 0.07,
                "low" : 0.068,
                "high" : 0.072
              }
            }
            """);
  }

  @Test
  void whatIsNotCountedAndWhatIsNotPricedHaveNamesForProgramsAndForPeople() throws IOException {
    assertThat(
            page(
                json -> {
                  json.omissions(
                      List.of(
                          new Omission(Omission.Kind.MALWARE, List.of()),
                          new Omission(Omission.Kind.SPOILS, List.of("far"))));
                  json.unpriced(
                      List.of(
                          new Unpriced(Unpriced.Kind.DRIVES, List.of("desk-8tb")),
                          new Unpriced(Unpriced.Kind.WORK, List.of())));
                }))
        .isEqualTo(
            """
            {
              "not_counted" : [ {
                "id" : "malware",
                "title" : "malware"
              }, {
                "id" : "spoils",
                "title" : "copies that turn out unusable when they are needed (far)"
              } ],
              "not_priced" : [ {
                "id" : "drives",
                "title" : "drives (desk-8tb)"
              }, {
                "id" : "work",
                "title" : "the owner's own time"
              } ]
            }
            """);
    assertThat(page(json -> json.omissions(List.of()))).contains("\"not_counted\" : [ ]");
  }

  @Test
  void whatIsNotKnownHasItsEndsAndTheirUnit() throws IOException {
    Unknown fails = new Unknown("drives.desk-8tb.fails", 1, 4, "%/year");
    Unknown factor = new Unknown("copies.main.factor", 0.5, 2, "");
    assertThat(UnknownWords.line(fails)).isEqualTo("drives.desk-8tb.fails: 1 to 4 %/year");
    assertThat(UnknownWords.line(factor)).isEqualTo("copies.main.factor: 0.5 to 2 times");
    assertThat(page(json -> UnknownWords.list(json, List.of(fails, factor))))
        .isEqualTo(
            """
            {
              "unknowns" : [ {
                "key" : "drives.desk-8tb.fails",
                "from" : 1,
                "to" : 4,
                "unit" : "%/year"
              }, {
                "key" : "copies.main.factor",
                "from" : 0.5,
                "to" : 2,
                "unit" : ""
              } ]
            }
            """);
    assertThat(page(json -> UnknownWords.list(json, List.of()))).isEqualTo("{ }\n");
  }
}
