package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The page of every demo in a real browser, as a partner opens it: on a desk and on a phone, in
 * light and in the dark, printed, by keyboard, and by an accessibility engine. Where there is no
 * browser the test says that it was skipped.
 *
 * <p>Sabotage seen red: a picture from elsewhere, a table that cannot scroll by itself, grey on
 * grey, a number of another layout.
 */
class PagesInBrowserIT {

  private static final int PHONE = 360;
  private static final int DESK = 1280;
  private static final Pattern NUMBER =
      Pattern.compile("(at most )?([0-9,]+(?:\\.([0-9]+))?) of ([0-9,]+)");

  @TempDir static Path folder;

  private static Browser browser;

  @BeforeAll
  static void start() {
    assumeTrue(Browser.missing().isEmpty(), () -> Browser.missing().orElseThrow());
    browser = Browser.start();
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  static Stream<Path> demos() throws IOException {
    return DemosTest.demos().stream().filter(demo -> demo.toString().endsWith(".yaml"));
  }

  private static JsonNode made(Path demo, Path page) throws IOException {
    Path json = folder.resolve("result.json");
    Host host =
        new Host(
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
            System.err,
            false,
            ScenarioLoading::fromFile,
            WorldSimulation::run,
            () -> LocalDate.of(2026, 1, 1),
            new Interruption());
    int status =
        new Program(host)
            .run(
                "compare",
                demo.toString(),
                "--precision",
                "20%",
                "--report",
                page.toString(),
                "--json",
                json.toString(),
                "--force");
    assertThat(status).isZero();
    return new ObjectMapper().readTree(Files.readString(json));
  }

  @ParameterizedTest
  @MethodSource("demos")
  void aPageThatAnybodyCanRead(Path demo) throws IOException {
    Path page = folder.resolve(demo.getFileName() + ".html");
    JsonNode result = made(demo, page);
    looked(page, DESK, true);
    looked(page, PHONE, false);
    assertThat(browser.outOfReach()).isEmpty();
    assertThat(browser.sheets()).as("sheets of A4").isBetween(1L, 2L);
    assertThat(browser.complaints()).isEmpty();
    assertThat(browser.requests()).isEmpty();
    numbersAreTheResults(result.get("layouts"));
  }

  private static void looked(Path page, int width, boolean dark) {
    browser.open(page, width, dark);
    assertThat(browser.tooWide()).as("pixels too wide at " + width).isZero();
    assertThat(browser.barriers()).as(width + " wide, dark " + dark).isEmpty();
  }

  private static void numbersAreTheResults(JsonNode layouts) {
    List<String> titles =
        browser.words(
            "return [...document.querySelectorAll('article.card h3')].map(e => e.textContent);");
    List<String> numbers =
        browser.words(
            "return [...document.querySelectorAll('article.card .number')]"
                + ".map(e => e.textContent);");
    assertThat(titles).hasSize(layouts.size());
    for (int i = 0; i < titles.size(); i++) {
      JsonNode layout = layouts.get(i);
      assertThat(titles.get(i)).isEqualTo(layout.get("title").asText());
      shows(numbers.get(i), layout.get("any_loss"));
    }
  }

  /** A number on the page is the result's to its last digit. */
  private static void shows(String number, JsonNode chance) {
    Matcher found = NUMBER.matcher(number);
    assertThat(found.lookingAt()).as(number).isTrue();
    double shown = Double.parseDouble(found.group(2).replace(",", ""));
    double of = Double.parseDouble(found.group(4).replace(",", ""));
    double digit = found.group(3) == null ? 1 : Math.pow(10, -found.group(3).length());
    double exact = chance.get(found.group(1) == null ? "probability" : "high").asDouble() * of;
    assertThat(Math.abs(exact - shown)).as(number).isLessThanOrEqualTo(digit * (1 + 1e-9));
  }
}
