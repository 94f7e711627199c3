package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.scenario.Layout;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The page for teaching in a real browser, as a class sees it: drawn by keyboard to the last
 * studio, without a script, on a phone, printed, and by an accessibility engine. Where there is no
 * browser the test says that it was skipped.
 *
 * <p>Sabotage seen red: a picture without its title, a heading wider than the screen, an error on
 * the console, a picture from elsewhere, a last studio that cannot be drawn, buttons that stand
 * there without a script, answers that are closed without one, a third sheet, grey on white.
 */
class LessonInBrowserIT {

  private static final int PHONE = 360;
  private static final int DESK = 1280;

  /** For the class, and for whoever teaches. */
  private static final long SHEETS = 2;

  private static final Path DEMO = Path.of("..", "scenarios", "harbour-mirror-or-far-copy.yaml");
  private static final String SHOWN =
      "[...document.querySelectorAll('[data-place]')].filter(e => getComputedStyle(e).display !=="
          + " 'none').length";

  private static final Pattern TOLD =
      Pattern.compile("Studio 1,000 of 1,000: .*So far (\\d+) of 1,000 lost footage\\.");
  private static final Pattern SAID =
      Pattern.compile("first 1,000 simulated studios of the seed, none left out: (\\d+) of them");

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
    return PagesInBrowserIT.demos();
  }

  private static Path lesson(Path demo, String layout) {
    Path page = folder.resolve(demo.getFileName() + "-" + layout + ".html");
    Ran.of(
            "story",
            demo.toString(),
            "--layout",
            layout,
            "--histories",
            "3000",
            "--report",
            page.toString())
        .done();
    return page;
  }

  /** The safest layouts of most demos are their last ones: no squares, and losses that are rare. */
  @ParameterizedTest
  @MethodSource("demos")
  void aPageThatAClassCanRead(Path demo) throws IOException, ScenarioException {
    List<Layout> layouts = ScenarioReader.read(demo).studio().layouts();
    Path page = lesson(demo, layouts.get(layouts.size() - 1).id());
    looked(page, DESK, true);
    looked(page, PHONE, false);
    assertThat(browser.outOfReach()).isEmpty();
    assertThat(browser.sheets()).as("sheets of A4").isEqualTo(SHEETS);
    assertThat(browser.complaints()).isEmpty();
    assertThat(browser.requests()).isEmpty();
  }

  /** At the beginning nothing is told; then all is, when everything is drawn and opened. */
  private static void looked(Path page, int width, boolean dark) {
    browser.open(page, width, dark);
    assertThat(browser.words("return [...document.querySelectorAll('details[open]')];")).isEmpty();
    looked(width, dark);
    browser.script(
        "document.getElementById('all').click();"
            + "document.querySelectorAll('details').forEach(e => e.open = true);");
    looked(width, dark);
  }

  private static void looked(int width, boolean dark) {
    assertThat(browser.tooWide()).as("pixels too wide at " + width).isZero();
    assertThat(browser.barriers()).as(width + " wide, dark " + dark).isEmpty();
  }

  /** One studio a key, until the array is full, as many as a comparison of the same seed counts. */
  @Test
  void drawnByKeyToTheLastStudio() throws IOException {
    JsonNode result =
        new ObjectMapper()
            .readTree(
                Ran.of(
                        "compare",
                        DEMO.toString(),
                        "--histories",
                        "1000",
                        "--method",
                        "plain",
                        "--json",
                        "-")
                    .done());
    for (JsonNode layout : result.get("layouts")) {
      browser.open(lesson(DEMO, layout.get("id").asText()), DESK, false);
      long counted = Math.round(1_000 * layout.at("/any_loss/probability").asDouble());
      assertThat(told()).isEqualTo("No studio is drawn yet.");
      assertThat(browser.script("return " + SHOWN)).isEqualTo(0L);
      browser.press("n", 1);
      assertThat(told()).startsWith("Studio 1 of 1,000: loses ");
      browser.press("N", 499);
      assertThat(told()).startsWith("Studio 500 of 1,000: loses ");
      // One key more than there are studios changes nothing.
      browser.press("n", 501);
      Matcher end = TOLD.matcher(told());
      assertThat(end.matches()).as(told()).isTrue();
      assertThat(Long.parseLong(end.group(1))).isEqualTo(counted);
      assertThat(browser.script("return " + SHOWN)).isEqualTo(counted);
      assertThat(
              browser.script(
                  "return document.getElementById('studios').dataset.lost"
                      + ".split(';').filter(Boolean).length"))
          .isEqualTo(counted);
      Matcher said = SAID.matcher(text("details"));
      assertThat(said.find()).isTrue();
      assertThat(Long.parseLong(said.group(1))).isEqualTo(counted);
      assertThat(browser.complaints()).isEmpty();
    }
  }

  /**
   * Without a script everything is drawn and told, and no button stands there that does nothing.
   */
  @Test
  void aFinishedPictureWithoutAScript() {
    browser.openWithoutScripts(lesson(DEMO, "one-drive"), DESK);
    assertThat(browser.script("return document.getElementById('controls').offsetParent")).isNull();
    Matcher said = SAID.matcher(text("details"));
    assertThat(said.find()).isTrue();
    assertThat(browser.script("return " + SHOWN)).isEqualTo(Long.parseLong(said.group(1)));
    assertThat(browser.script("return document.querySelectorAll('details:not([open])').length"))
        .isEqualTo(0L);
    assertThat(
            browser.script(
                "return document.getElementById('rows').getBBox().height / 10 * 50"
                    + " + document.getElementById('rest').getBBox().width / 10"))
        .asString()
        .isEqualTo("1000");
  }

  private static String told() {
    return text("#told");
  }

  private static String text(String selector) {
    return (String)
        browser.script("return document.querySelector(arguments[0]).textContent", selector);
  }
}
