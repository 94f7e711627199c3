package lastcopy.cli.rates;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import lastcopy.cli.Program;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;
import org.junit.jupiter.api.Test;

/** The list of typical values: every one with its mark, and those of the project's table. */
class RatesCommandTest {

  @Test
  void thePageFitsATerminalAndNamesItsSources() {
    String page = run("rates");
    assertThat(page.lines()).allMatch(line -> line.length() <= 80);
    assertThat(page)
        .contains("hard-disk       low         0.7  0.8  1.0  1.2  1.5  1.8  2.2  2.6  3.0  3.5")
        .contains("                cautious    2.0  3.0  5.0  6.0  7.0  8.0  9.0 10.0 11.0 12.0")
        .contains("solid-state")
        .contains("Schroeder, Gibson, FAST 2007")
        .contains("theft at a business")
        .contains("NCJ 241754");
  }

  @Test
  void jsonHasEachWithItsMark() throws IOException {
    JsonNode page = new ObjectMapper().readTree(run("rates", "--json", "-"));
    assertThat(page.path("format").asText()).isEqualTo("lastcopy-rates/1");
    assertThat(page.path("drives")).hasSize(12);
    assertThat(page.path("drives").path(1).path("chance_by_year_of_age").path(0).asDouble())
        .isCloseTo(0.013, org.assertj.core.api.Assertions.within(1e-12));
    assertThat(page.path("values")).hasSizeGreaterThan(15);
    for (JsonNode value : page.path("values")) {
      assertThat(value.path("mark").asText()).as(value.toString()).isEqualTo("assumption");
      assertThat(value.path("value").asText()).isNotEmpty();
    }
  }

  private static String run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Host host =
        new Host(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            System.err,
            false,
            ScenarioLoading::fromFile,
            WorldSimulation::run,
            () -> LocalDate.EPOCH,
            new Interruption());
    assertThat(new Program(host).run(args)).isZero();
    return out.toString(StandardCharsets.UTF_8);
  }
}
