package lastcopy.cli.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.outlook.Outlook;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;

/** What {@code inspect} says of prices: sums by hand. */
class InspectPricesTest {

  /** Two drives and a box; three drives of a shelf that are full or begun; two turns of a pair. */
  private static final String PRICED =
      """
      lastcopy: 1
      studio: Quay Films
      years: 5
      currency: EUR
      footage: {on_hand: 5 TB, shoots: {every: 7 days, size: 10 GB}}
      boxes:
        bay: {price: 150}
      drives:
        desk: {size: 8 TB, price: 180, fails: 2 %/year}
        slim: {size: 2 TB, price: 70.5, fails: 2 %/year}
        old: {size: 8 TB, price: 60, owned: true, fails: 2 %/year}
      layouts:
        mirror:
          costs: {once: 30, per_year: 12}
          copies:
            main: {box: bay, drives: 2 x desk, arrangement: mirror}
        rows:
          copies:
            main: {drives: 5 x slim, arrangement: shelf}
            turns: {drives: 2 x desk, arrangement: mirror, rotation: {drives: 2, every: 7 days},
                    feed: {from: main}, costs: {once: 5}}
        there:
          copies:
            main: {drives: 1 x old}
      """;

  private static Studio studio(String text) {
    try {
      return ScenarioReader.parse("quay.yaml", text).studio();
    } catch (ScenarioException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  private static String text(String scenario) {
    Studio studio = studio(scenario);
    return InspectText.render(studio, Outlook.of(studio), List.of()).replaceAll("\\s+", " ");
  }

  private static JsonNode json(String scenario) throws IOException {
    Studio studio = studio(scenario);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    InspectJson.write(studio, Outlook.of(studio), List.of(), out);
    return new ObjectMapper().readTree(out.toByteArray());
  }

  @Test
  void whatIsPaidAtTheStart() throws IOException {
    assertThat(text(PRICED))
        .contains("paid at the start: EUR 540 (drives 360, boxes 150, other 30)")
        .contains("paid at the start: EUR 937 (drives 932, other 5)")
        .contains("paid at the start: EUR 0 ");
    JsonNode layouts = json(PRICED).get("layouts");
    assertThat(layouts.at("/0/paid_at_the_start").toString())
        .isEqualTo("{\"total\":540,\"drives\":360,\"boxes\":150,\"other\":30}");
    assertThat(layouts.at("/1/paid_at_the_start").toString())
        .isEqualTo("{\"total\":936.5,\"drives\":931.5,\"boxes\":0,\"other\":5}");
    assertThat(layouts.at("/2/paid_at_the_start/total").asDouble()).isZero();
  }

  @Test
  void whatIsNotPriced() throws IOException {
    assertThat(text(PRICED))
        .contains(
            "What the file does not price counts as costing nothing: electric power; the owner's"
                + " own time.");
    assertThat(json(PRICED).get("not_priced").toString())
        .isEqualTo(
            "[{\"id\":\"power\",\"title\":\"electric power\"},"
                + "{\"id\":\"work\",\"title\":\"the owner's own time\"}]");
    String all =
        PRICED
            .replace("footage:", "energy: 0.3 per kWh\nwork: {price: 9 per h, look: 1 h}\nfootage:")
            .replace("price: ", "power: 5 W, price: ")
            .replace("work: {power: 5 W, ", "work: {");
    assertThat(text(all)).contains("All that layouts take has a price.");
    assertThat(json(all).get("not_priced")).isEmpty();
  }

  @Test
  void aFileWithoutPricesIsToldSo() throws IOException {
    String bare =
        PRICED
            .replaceAll(", price: [0-9.]+", "")
            .replace("{price: 150}", "{}")
            .replaceAll(" *costs: \\{once: 30, per_year: 12\\}\\n", "")
            .replace(", costs: {once: 5}", "");
    assertThat(text(bare))
        .contains("The file prices nothing: what a layout costs is not told.")
        .doesNotContain("paid at the start");
    assertThat(json(bare).get("not_priced")).isEmpty();
    assertThat(json(bare).at("/layouts/0").has("paid_at_the_start")).isFalse();
  }
}
