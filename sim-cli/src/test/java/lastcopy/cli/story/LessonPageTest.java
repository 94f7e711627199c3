package lastcopy.cli.story;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import lastcopy.cli.Program;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

/** The page for teaching: its figures are those of other commands, and it stands alone. */
class LessonPageTest {

  private static final String YAML =
      """
      lastcopy: 1
      studio: "Heron <b>&\\" Films"
      years: 5
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 20 GB}, worth: 500 per shoot}
      places:
        studio: {mishaps: {fire: {rate: 1 %/year}}}
      desk: {deletion: {rate: 5 %/year, size: 1 shoots, noticed: 3 days}}
      drives:
        disk: {size: 8 TB, fails: 5 %/year}
      layouts:
        mirror:
          title: Two <i>drives</i>
          copies:
            main: {place: studio, drives: 2 x disk, arrangement: mirror, noticed: 1 day, wait: 2 days}
        far:
          title: A drive and a copy
          copies:
            main: {place: studio, drives: 1 x disk, noticed: 1 day, wait: 2 days}
            far:
              place: home
              drives: 1 x disk
              noticed: 1 day
              wait: 2 days
              keeps_deleted: 30 days
              feed: {from: main, every: 1 day, at: 2 h, link: 100 Mbit/s}
        four:
          title: Four places
          copies:
            main: {place: studio, drives: 1 x disk, noticed: 0 h, wait: 0 h}
            b: {place: b, drives: 1 x disk, noticed: 0 h, wait: 0 h, keeps_deleted: for good, feed: {from: main, continuous: true, link: 1 GB/s}}
            c: {place: c, drives: 1 x disk, noticed: 0 h, wait: 0 h, keeps_deleted: for good, feed: {from: main, continuous: true, link: 1 GB/s}}
      """;

  @TempDir static Path folder;

  private static String file;
  private static String mirror;
  private static String far;

  @BeforeAll
  static void make() throws IOException {
    file = Files.writeString(folder.resolve("heron.yaml"), YAML).toString();
    mirror = page("mirror");
    far = page("far");
  }

  private static String page(String layout) throws IOException {
    Path page = folder.resolve(layout + ".html");
    run("story", file, "--layout", layout, "--histories", "3000", "--report", page.toString());
    return Files.readString(page);
  }

  /** A near miss is there only where some history loses nothing, and the heading counts. */
  @Test
  void asManyLivesAsTheHeadingSays() throws IOException {
    assertThat(mirror).contains("<h2>Three lives</h2>").contains("A near miss");
    String doomed = YAML.replace("fails: 5 %/year", "fails: 99.99 %/year");
    String written = Files.writeString(folder.resolve("doomed.yaml"), doomed).toString();
    Path page = folder.resolve("doomed.html");
    run("story", written, "--layout", "mirror", "--histories", "300", "--report", page.toString());
    assertThat(Files.readString(page))
        .contains("<h2>Two lives</h2>")
        .doesNotContain("A near miss")
        .contains("histories lost footage: none is a near miss.");
  }

  private static String run(String... line) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Host host =
        new Host(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false,
            ScenarioLoading::fromFile,
            WorldSimulation::run,
            () -> LocalDate.EPOCH,
            new Interruption());
    assertThat(new Program(host).run(line)).as(err.toString(StandardCharsets.UTF_8)).isZero();
    return out.toString(StandardCharsets.UTF_8);
  }

  /** The squares are the histories that a comparison counts under the same seed. */
  @Test
  void asManySquaresAreFilledAsACompareOfAThousandCounts() throws IOException {
    JsonNode json =
        new ObjectMapper()
            .readTree(
                run("compare", file, "--histories", "1000", "--method", "plain", "--json", "-"));
    JsonNode layouts = json.get("layouts");
    for (int i = 0; i < 2; i++) {
      long lost = Math.round(1_000 * layouts.get(i).at("/any_loss/probability").asDouble());
      String page = i == 0 ? mirror : far;
      assertThat(count(page, "<rect class=\"lost\" data-place")).isEqualTo(lost).isPositive();
      assertThat(page).contains(lost + " of them lose footage.");
      assertThat(page).contains("1,000 studios drawn as squares: " + lost + " lose footage");
      String data = find(page, "data-lost=\"([^\"]*)\"").get(0);
      assertThat(data.split(";", -1)).hasSize((int) lost);
    }
  }

  /** Each life says what the same history says when it is told by its number. */
  @Test
  void eachLifeIsTheHistoryOfItsNumber() throws IOException {
    for (String page : List.of(mirror, far)) {
      String layout = page.equals(mirror) ? "mirror" : "far";
      List<String> articles = find(page, "(?s)<article class=\"life\">(.*?)</article>");
      assertThat(articles).hasSize(3);
      for (String article : articles) {
        String number = find(article, "--history (\\d+) tells it").get(0);
        JsonNode json =
            new ObjectMapper()
                .readTree(
                    run("story", file, "--layout", layout, "--history", number, "--json", "-"));
        assertThat(article).contains(escaped(json.at("/outcome/sentence").asText()));
        json.at("/outcome/why").forEach(why -> assertThat(article).contains(escaped(why.asText())));
        List<String> told =
            json.findValuesAsText("sentence").stream().map(LessonPageTest::escaped).toList();
        for (String item : find(article, "<li>day [0-9,]+: (.*?)</li>")) {
          assertThat(told).contains(item);
        }
      }
      assertThat(articles.get(1)).contains("Nothing was lost.");
      assertThat(articles.get(2)).contains("Lost: ");
      String first = find(articles.get(2), "--history (\\d+) tells it").get(0);
      // By hand: the first square that is filled is the first loss.
      assertThat(page).contains("data-lost=\"" + (Long.parseLong(first) + 1) + ":");
    }
  }

  /** Each has a layout in which it is true and one in which it would be false. */
  @Test
  void sentencesForTheTeacherStandWhereTheyAreTrueOnly() {
    assertThat(mirror)
        .contains("Every copy stands in one place")
        .contains("Drives that stand in for each other are one copy")
        .contains("No copy keeps what was deleted")
        .doesNotContain("A second copy is behind the first");
    assertThat(far)
        .doesNotContain("Every copy stands in one place")
        .doesNotContain("Drives that stand in for each other are one copy")
        .doesNotContain("No copy keeps what was deleted")
        .contains("A second copy is behind the first");
  }

  /** Where a class sees no loss, the page says how rare one is, and tells a biased life. */
  @Test
  void aRareLossIsToldWithItsChance() throws IOException {
    String rare = page("four");
    String seen = "On average one loses footage in ";
    assertThat(rare).contains(seen).contains("A loss, which is rare", "Of 100,000 studios");
    assertThat(mirror).doesNotContain(seen).contains("The first loss");
    assertThat(count(rare, "<rect class=\"lost\" data-place")).isZero();
    assertThat(rare).contains("none of them loses footage.");
  }

  @Test
  void namesAreEscapedAndNothingIsAskedOfANetwork() {
    assertThat(mirror)
        .contains("Heron &lt;b&gt;&amp;&quot; Films", "Two &lt;i&gt;drives")
        .doesNotContain("<b>", "<i>", "://", "@import", "<link", "src=", "Optional[", "href");
    assertThat(mirror).contains("<html lang=\"en\"").contains("id=\"controls\" hidden");
  }

  /** Red if a tag is not closed, an id is there twice, or a picture has no title. */
  @Test
  void thePageIsWellFormed() throws Exception {
    for (String page : List.of(mirror, far)) {
      String plain =
          page.replace("<!DOCTYPE html>\n", "")
              .replaceAll("<meta ([^>]*)>", "<meta $1/>")
              .replaceAll("(?s)<(script|style)>.*?</\\1>", "")
              .replaceAll(" (hidden|open)>", ">");
      Document document =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(plain.getBytes(StandardCharsets.UTF_8)));
      assertThat(document.getElementsByTagName("svg").getLength()).isEqualTo(4);
      assertThat(document.getElementsByTagName("title").getLength()).isEqualTo(5);
      assertThat(find(plain, " id=\"([^\"]+)\"")).doesNotHaveDuplicates();
    }
  }

  /** Time runs from left to right, no copy holds more than there is, and the last point is down. */
  @Test
  void shapesStayWithinTheirFrame() {
    for (String points : find(mirror + far, "points=\"([^\"]+)\"")) {
      double last = 0;
      for (String point : points.split(" ", -1)) {
        double x = Double.parseDouble(point.split(",", 2)[0]);
        assertThat(x).isBetween(last, (double) LaneShape.WIDTH);
        assertThat(Double.parseDouble(point.split(",", 2)[1]))
            .isBetween(0.0, (double) LaneShape.HEIGHT);
        last = x;
      }
      assertThat(points)
          .endsWith(String.format(Locale.ROOT, "%d.0,%d.0", LaneShape.WIDTH, LaneShape.HEIGHT));
    }
  }

  private static String escaped(String sentence) {
    return sentence.replace("&", "&amp;").replace("'", "&#39;").replace("\"", "&quot;");
  }

  private static long count(String page, String what) {
    return find(page, "(" + Pattern.quote(what) + ")").size();
  }

  private static List<String> find(String text, String pattern) {
    return Pattern.compile(pattern)
        .matcher(text)
        .results()
        .map((MatchResult m) -> m.group(1))
        .toList();
  }
}
