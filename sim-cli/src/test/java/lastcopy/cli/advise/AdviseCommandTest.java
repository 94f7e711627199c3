package lastcopy.cli.advise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lastcopy.cli.Ran;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The command advise from its options to its outputs. The studio has lone drives alone, so that its
 * answers are known by hand: a chance p a year is 1 - (1 - p)^5 over five years.
 */
class AdviseCommandTest {

  private static final int YEARS = 5;

  private static final String STUDIO =
      """
      lastcopy: 1
      studio: Lone Drives
      years: 5
      currency: EUR
      footage: {on_hand: 1 TB, shoots: {every: 30 days, size: 24 GB}}
      drives:
        worst: {size: 8 TB, fails: 9 %/year, price: 40}
        usual: {size: 8 TB, fails: 4 %/year, price: 200}
        best: {size: 8 TB, fails: 1 %/year, price: 500}
        vain: {size: 8 TB, fails: 6 %/year, price: 450}
      layouts:
        one:
          title: A drive
          copies:
            main:
              drives: {one_of: [1 x worst, 1 x usual, 1 x best, 1 x vain, 2 x vain]}
              arrangement: {one_of: [single, mirror]}
              noticed: 1 h
              wait: 50 years
      """;

  @TempDir Path directory;

  private Path file;
  private Ran ran;

  @BeforeEach
  void write() throws IOException {
    file = Files.writeString(directory.resolve("lone.yaml"), STUDIO);
  }

  private static double loses(double perYear) {
    return 1 - Math.pow(1 - perYear, YEARS);
  }

  /** 37.6, 18.5, 4.9 and 26.6 % lose; one that is dearer and worse than another is on no front. */
  @Test
  void theAnswersAreThoseKnownByHand() throws IOException {
    JsonNode advice = json("--target", "20%", "--budget", "510", "--confidence", "99.99%");

    assertThat(advice.get("format").asText()).isEqualTo("lastcopy-advice/1");
    assertThat(advice.get("years").asInt()).isEqualTo(YEARS);
    assertThat(advice.get("target").asDouble()).isEqualTo(0.2);
    assertThat(advice.get("budget").asDouble()).isEqualTo(510);
    assertThat(advice.get("chance_of_a_wrong_pick").asDouble()).isCloseTo(1e-4, within(1e-9));
    assertThat(advice.get("finished").asBoolean()).isTrue();
    assertThat(advice.get("cheapest_under_target").asText()).isEqualTo("one-3");
    assertThat(advice.get("safest_under_budget").asText()).isEqualTo("one-5");
    assertThat(texts(advice.get("front"))).containsExactly("one", "one-3", "one-5");
    assertThat(advice.at("/counted/candidates").asInt()).isEqualTo(5);
    assertThat(advice.at("/counted/impossible").asInt()).isEqualTo(5);
    double two = loses(0.06) * loses(0.06);
    double[] exact = {loses(0.09), loses(0.04), loses(0.01), loses(0.06), two};
    for (int i = 0; i < exact.length; i++) {
      JsonNode each = advice.get("candidates").get(i);
      assertThat(exact[i])
          .isBetween(each.at("/any_loss/low").asDouble(), each.at("/any_loss/high").asDouble());
      assertThat(each.get("layout").asText()).isEqualTo("one");
      assertThat(each.get("on_front").asBoolean()).isEqualTo(i < 3);
    }
    assertThat(advice.at("/candidates/1/choices").toString())
        .isEqualTo("{\"copies.main.drives\":\"1 x usual\",\"copies.main.arrangement\":\"single\"}");
    JsonNode step = advice.get("steps").get(0);
    assertThat(step.get("from").asText()).isEqualTo("one");
    assertThat(step.get("to").asText()).isEqualTo("one-3");
    assertThat(step.at("/cost_difference/value").asDouble()).isCloseTo(160, within(1e-9));
    assertThat(loses(0.04) - loses(0.09))
        .isBetween(step.at("/difference/low").asDouble(), step.at("/difference/high").asDouble());
    assertThat(advice.at("/impossible/0/why").asText())
        .endsWith("accepted: at least 2 drives for mirror");
  }

  @Test
  void theTextAnswersFirstWithinTheLine() {
    assertThat(run("--target", "20%", "--budget", "510")).isZero();
    String text = ran.out();
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    assertThat(words(text))
        .startsWith("Lone Drives: which layout, at what cost, over 5 years?")
        .contains("The cheapest layout in which at most 20 % of studios lose footage within 5")
        .contains("years is \"A drive: main 1 x usual\" (one-3) at EUR 200, with which 18")
        .contains(
            "The safest layout for at most EUR 510 over 5 years is \"A drive: main 1 x best\"")
        .contains("Today's layout is \"A drive\" (one) at EUR 40")
        .contains("From one to one-3 (main 1 x usual): EUR 160 more over 5 years, 3")
        .contains(
            "makes 5 layouts. 5 more combinations are no valid layout (--impossible tells why).")
        .contains("2 layouts were left early")
        .contains("Not counted, since the file says nothing about it: mishaps of any place")
        .contains("right with a chance of 95 %, all together")
        .doesNotContain("Not settled")
        .doesNotContain("No valid layout:")
        .doesNotContain("medians");
    assertThat(ran.err()).isEmpty();
  }

  /** 10.7 and 10.0 of 1,000: that is no whole studio fewer, and not said as if it were. */
  @Test
  void aStepOfLessThanAStudioIsToldByItsEndsAlone() throws IOException {
    Files.writeString(
        file, STUDIO.replace("fails: 9 %/year", "fails: 0.215 %/year").replace("4 %", "0.2 %"));
    assertThat(run("--budget", "300")).isZero();
    assertThat(words(ran.out()))
        .containsPattern(
            "From one to one-3 \\(main 1 x usual\\): EUR 160 .{0,20}more over 5 years,"
                + " 10\\.\\d of 1,000 studios down to (9|10)\\.\\d\\. ");
  }

  @Test
  void whereNothingKeepsTheTargetItSaysWhatComesNearest() {
    assertThat(run("--target", "1%", "--budget", "30")).isZero();
    assertThat(words(ran.out()))
        .contains("There is no layout in which at most 1 % of studios lose footage within 5 years.")
        .contains("Nearest comes \"A drive: main 1 x best\" (one-5)")
        .contains("No layout costs EUR 30 or less over 5 years. The cheapest is \"A drive\" (one)");
  }

  @Test
  void withoutLimitsTheFrontIsTheAnswer() {
    assertThat(run()).isZero();
    assertThat(words(ran.out()))
        .contains("Each of 3 layouts is the safest for its cost, from \"A drive\" (one)")
        .doesNotContain("The cheapest layout in which");
  }

  @Test
  void withoutPricesOnlyRiskIsCompared() throws IOException {
    Files.writeString(file, STUDIO.replaceAll(", price: \\d+", ""));
    assertThat(run("--target", "20%")).isZero();
    assertThat(words(ran.out()))
        .contains("The file prices nothing, so only risk is compared.")
        .contains("The safest, by their estimates:")
        .doesNotContain("EUR");
    assertThat(run("--budget", "100")).isEqualTo(2);
    assertThat(ran.err()).contains("a budget (--budget) needs prices, and the file has none");
  }

  @Test
  void aFileWithoutChoicesIsItsLayouts() throws IOException {
    Files.writeString(
        file,
        STUDIO
            .replaceFirst("\\{one_of: \\[1 x worst[^}]*}", "1 x worst")
            .replace("{one_of: [single, mirror]}", "single"));
    assertThat(run()).as(ran.err()).isZero();
    assertThat(words(ran.out())).contains("The file leaves nothing open: its 1 layout was weighed");
  }

  @Test
  void whatIsImpossibleIsToldOnRequest() {
    assertThat(run("--impossible", "--histories", "100")).isZero();
    assertThat(words(ran.out()))
        .contains("No valid layout: one with main 1 x worst, main mirror: found")
        .contains("accepted: at least 2 drives for mirror");
  }

  /** So few histories settle little, and it says so. */
  @Test
  void whatIsNotSettledIsSaid() {
    assertThat(run("--target", "20%", "--histories", "20")).isZero();
    assertThat(words(ran.out())).contains("Not settled:").contains("more time (--time) may tell.");
  }

  @Test
  void rangesHaveTheirMedians() throws IOException {
    Files.writeString(file, STUDIO.replace("fails: 4 %/year", "fails: 2..8 %/year"));
    assertThat(run("--histories", "200")).isZero();
    assertThat(words(ran.out())).contains("ranges have their medians here.");
  }

  /** The file that is written has the same layouts, and compare the same figures but for luck. */
  @Test
  void theWrittenFileIsComparedAlike() throws IOException {
    Path written = directory.resolve("written.yaml");
    JsonNode advice = json("--target", "20%", "--write", written.toString());
    assertThat(written).content().contains("those that advise named").doesNotContain("one_of");
    String json = Ran.of("compare", written.toString(), "--json", "-", "--quiet").done();
    JsonNode compared = new ObjectMapper().readTree(json);
    Map<String, JsonNode> own = new HashMap<>();
    advice.get("candidates").forEach(each -> own.put(each.get("id").asText(), each));
    assertThat(compared.get("layouts"))
        .extracting(layout -> layout.get("id").asText())
        .containsExactly("one", "one-3", "one-5");
    for (JsonNode layout : compared.get("layouts")) {
      JsonNode same = own.get(layout.get("id").asText());
      assertThat(layout.get("title")).isEqualTo(same.get("title"));
      assertThat(layout.at("/any_loss/low").asDouble())
          .isLessThan(same.at("/any_loss/high").asDouble());
      assertThat(layout.at("/any_loss/high").asDouble())
          .isGreaterThan(same.at("/any_loss/low").asDouble());
      assertThat(layout.at("/cost/total").asDouble())
          .isCloseTo(same.at("/cost/total").asDouble(), within(1e-6));
    }
    assertThat(run("--write", written.toString())).isEqualTo(2);
    assertThat(ran.err()).contains("--force replaces it");
  }

  /** Without prices there is no cost to draw. */
  @Test
  void theFrontIsDrawn() throws IOException {
    Path charts = directory.resolve("charts");
    String[] drawn = {"--histories", "200", "--charts", charts.toString(), "--chart-format", "svg"};
    assertThat(run(drawn)).isZero();
    assertThat(charts.resolve("cost-and-risk.svg"))
        .content()
        .contains("What does less risk cost?")
        .contains("one-5")
        .doesNotContain("UNFINISHED");
    Files.writeString(file, STUDIO.replaceAll(", price: \\d+", ""));
    Files.delete(charts.resolve("cost-and-risk.svg"));
    assertThat(run(drawn)).isZero();
    assertThat(charts.resolve("cost-and-risk.svg")).doesNotExist();
  }

  @Test
  void anInterruptionBeforeAnythingIsOne() {
    assertThat(program(Ran::interrupted)).isEqualTo(130);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("interrupted");
  }

  @ParameterizedTest
  @CsvSource({
    "--target 0%, must be above 0%",
    "--target 101%, at most 100%",
    "--target 5, needs a percent sign",
    "--budget -1, at least 0",
    "--budget lots, not a",
    "--histories 0, histories"
  })
  void aWrongCommandLineSaysWhy(String options, String message) {
    assertThat(run(options.split(" ", -1))).isEqualTo(2);
    assertThat(ran.err()).contains(message);
  }

  private static List<String> texts(Iterable<JsonNode> array) {
    List<String> texts = new ArrayList<>();
    array.forEach(each -> texts.add(each.asText()));
    return texts;
  }

  private JsonNode json(String... more) throws IOException {
    List<String> args = new ArrayList<>(List.of("--json", "-", "--quiet"));
    args.addAll(List.of(more));
    assertThat(run(args.toArray(String[]::new))).as(ran.err()).isZero();
    return new ObjectMapper().readTree(ran.out());
  }

  private int run(String... options) {
    return program(Ran::of, options);
  }

  private int program(Function<String[], Ran> how, String... options) {
    List<String> args = new ArrayList<>(List.of("advise", file.toString()));
    args.addAll(List.of(options));
    ran = how.apply(args.toArray(String[]::new));
    return ran.status();
  }

  private static String words(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
