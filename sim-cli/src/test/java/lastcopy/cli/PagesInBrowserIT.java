package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
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
 * grey, a number of another layout, a cause of another, a cost without its cents.
 */
class PagesInBrowserIT {

  private static final int PHONE = 360;
  private static final int DESK = 1280;

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
    Ran.of(
            "compare",
            demo.toString(),
            "--precision",
            "20%",
            "--report",
            page.toString(),
            "--json",
            json.toString(),
            "--force")
        .done();
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
    new PageFigures(browser, result).areTheResults();
  }

  private static void looked(Path page, int width, boolean dark) {
    browser.open(page, width, dark);
    assertThat(browser.tooWide()).as("pixels too wide at " + width).isZero();
    assertThat(browser.barriers()).as(width + " wide, dark " + dark).isEmpty();
  }
}
