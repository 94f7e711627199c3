package lastcopy.cli.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code inspect} writes for programs, field by field, and its page of a long horizon. */
class InspectJsonTest {

  /** 120 shoots of 1 GB a year: 0.12 TB a year, and 2.44 TB in 12 years. */
  private static final String STUDIO =
      """
      lastcopy: 1
      studio: Quay Films
      years: 12
      footage: {on_hand: 1 TB, shoots: {every: 73 h, size: 1 GB}}
      drives:
        desk: {size: 2 TB, speed: 80 MB/s, fails: 2 %/year}
        e1: {size: 3 TB, speed: 80 MB/s, fails: 2 %/year}
        e2: {size: 4 TB, speed: 80 MB/s, fails: 2 %/year}
        e3: {size: 5 TB, speed: 80 MB/s, fails: 2 %/year}
      layouts:
        pair:
          copies:
            main: {place: studio, drives: 2 x desk, arrangement: mirror}
            far: {place: home, drives: 1 x e1,
                  feed: {from: main, every: 1 day, at: 1 h, link: 20 Mbit/s, between: [20 h, 6 h]}}
        others:
          copies:
            main: {place: studio, drives: 1 x e2}
            far: {place: home, drives: 1 x e3, feed: {from: main, every: 1 day, link: 20 Mbit/s}}
      """;

  private static JsonNode json(String text) throws Exception {
    Studio studio = ScenarioReader.parse("quay.yaml", text).studio();
    List<Outlook> outlooks = Outlook.of(studio);
    RoomAndTime room = RoomAndTime.of(studio, outlooks, 0.8, OptionalDouble.of(25e6));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    InspectJson.write(studio, outlooks, room, List.of("a default"), out);
    return new ObjectMapper().readTree(out.toByteArray());
  }

  private static List<String> keys(JsonNode node) {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  @Test
  void aStudioHasAllItsFields() throws Exception {
    JsonNode json = json(STUDIO);
    assertThat(keys(json))
        .containsExactly(
            "format",
            "scenario",
            "years",
            "not_counted",
            "not_priced",
            "fill",
            "room_by_year",
            "drives_that_hold_it",
            "layouts",
            "defaults");
    assertThat(json.get("years").asDouble()).isEqualTo(12);
    assertThat(json.get("defaults").toString()).isEqualTo("[\"a default\"]");
    // 1.12 TB after a year, which are 80 % of 1.4 TB.
    assertThat(json.get("room_by_year")).hasSize(13);
    assertThat(json.at("/room_by_year/1/years").asDouble()).isEqualTo(1);
    assertThat(json.at("/room_by_year/1/most_bytes").asDouble()).isEqualTo(1.12e12);
    assertThat(json.at("/room_by_year/1/room_bytes").asDouble()).isEqualTo(1.4e12);
    assertThat(keys(json.at("/drives_that_hold_it/0")))
        .containsExactly("model", "size_bytes", "arrangement", "years", "drives");
    assertThat(json.at("/layouts/0/footage_by_year/12/bytes").asDouble()).isEqualTo(2.44e12);
    assertThat(json.at("/layouts/0/footage_by_year/12/years").asDouble()).isEqualTo(12);
    assertThat(keys(json.at("/layouts/0")))
        .containsExactly(
            "id", "title", "footage_by_year", "copies", "offload", "streams", "warnings");
    assertThat(keys(json.at("/layouts/0/warnings/0"))).containsExactly("id", "copy", "text");
  }

  /** 1 GB at 80 MB/s are 12.5 s; 80 MB/s are three streams of 25. */
  @Test
  void aWorkingCopyTakesInAndGivesOut() throws Exception {
    JsonNode layout = json(STUDIO).at("/layouts/0");
    assertThat(layout.get("offload").toString())
        .isEqualTo(
            "{\"slowest_part\":\"drive desk\",\"slowest_part_bytes_per_second\":80000000,"
                + "\"shoot_bytes_now\":1000000000,\"hours_now\":0.003472222222222222,"
                + "\"shoot_bytes_in_last_year\":1000000000,"
                + "\"hours_in_last_year\":0.003472222222222222}");
    assertThat(layout.get("streams").toString())
        .isEqualTo(
            "{\"bits_per_second\":200000000,\"count\":3,\"slowest_part\":\"drive desk\","
                + "\"slowest_part_bytes_per_second\":80000000,\"over_1_gigabit\":3,"
                + "\"over_2_5_gigabit\":3,\"over_10_gigabit\":3}");
  }

  @Test
  void eachCopyHasAllItsFields() throws Exception {
    JsonNode main = json(STUDIO).at("/layouts/0/copies/0");
    JsonNode far = json(STUDIO).at("/layouts/0/copies/1");
    for (JsonNode copy : List.of(main, far)) {
      assertThat(keys(copy))
          .containsExactly(
              "id",
              "usable_bytes",
              "fills_at_years",
              "rebuild_hours",
              "refill_hours",
              "refill_by_hand_hours",
              "first_fill_hours",
              "lag_hours",
              "never_catches_up",
              "rate_needed",
              "link_time",
              "ways",
              "back",
              "drives_due");
      assertThat(keys(copy.at("/ways/0")))
          .containsExactly(
              "way",
              "from",
              "bytes_per_second",
              "slowest_part",
              "slowest_part_bytes_per_second",
              "without_slowest_part_bytes_per_second",
              "then_slowest_part");
      assertThat(keys(copy.at("/back/0")))
          .containsExactly("from", "by", "bytes_per_second", "hours_now", "hours_at_end");
    }
    for (String fed : List.of("first_fill_hours", "lag_hours", "never_catches_up", "rate_needed")) {
      assertThat(main.get(fed).isNull()).isTrue();
    }
    assertThat(main.get("link_time").isNull()).isTrue();
    // 2 TB are 80 % full at 1.6 TB, which shoot 601 exceeds, and full by shoot 1,001.
    assertThat(keys(main.at("/drives_due/0"))).containsExactly("years", "drives", "room_bytes");
    assertThat(main.at("/drives_due/0/years").asDouble()).isEqualTo(601 * 73 / 8_760.0);
    assertThat(main.get("fills_at_years").asDouble()).isEqualTo(1_001 * 73 / 8_760.0);
    assertThat(keys(far.get("lag_hours"))).containsExactly("worst", "mean");
    assertThat(far.get("never_catches_up").isBoolean()).isTrue();
    assertThat(keys(far.get("link_time")))
        .containsExactly("hours_a_day", "feeds", "now", "in_last_year");
    assertThat(far.at("/link_time/hours_a_day").asDouble()).isEqualTo(10);
    assertThat(far.at("/link_time/feeds").asInt()).isEqualTo(1);
    assertThat(keys(far.at("/link_time/now")))
        .containsExactly("enough", "hours_a_day_needed", "rate_needed");
    // 1 GB in 73 h are 0.3288 GB a day, at 2.5 MB/s 131.5 s.
    assertThat(far.at("/link_time/now/hours_a_day_needed").asDouble())
        .isCloseTo(131.5 / 3_600, within(1e-4));
  }

  private static String page(String text, boolean all) throws Exception {
    Studio studio = ScenarioReader.parse("quay.yaml", text).studio();
    List<Outlook> outlooks = Outlook.of(studio);
    return InspectText.render(
        PossibleStudios.only(studio),
        outlooks,
        RoomAndTime.usual(studio, outlooks),
        List.of(),
        Optional.empty(),
        all,
        PageLook.PLAIN);
  }

  private static List<String> firstCells(String page, String head) {
    return page.lines()
        .dropWhile(line -> !line.strip().startsWith(head))
        .skip(1)
        .takeWhile(line -> line.matches(" *\\d.*"))
        .map(line -> line.strip().replaceFirst(" .*", ""))
        .toList();
  }

  /** Of twelve years the first three, each fifth and the last; of ten all. */
  @Test
  void ofALongHorizonSomeYearsAreTold() throws Exception {
    assertThat(firstCells(page(STUDIO, false), "year "))
        .containsExactly("0", "1", "2", "3", "5", "10", "12");
    assertThat(firstCells(page(STUDIO, true), "year ")).hasSize(13);
    assertThat(firstCells(page(STUDIO.replace("years: 12", "years: 9"), false), "year "))
        .hasSize(10);
  }

  @Test
  void threeModelsAreToldAndTheRestOnRequest() throws Exception {
    String more = "(1 more model with --all)";
    assertThat(page(STUDIO, false)).contains("\n  e2 ", more).doesNotContain("\n  e3 ");
    assertThat(page(STUDIO, true)).contains("\n  e3 ").doesNotContain(more);
  }

  /** 2 TB less 1, 1.12 and so on; after nine years there are 2.08 TB. */
  @Test
  void whatIsFreeIsToldOnRequest() throws Exception {
    assertThat(page(STUDIO, true))
        .contains("  year  on main      on far\n  0     1 TB free    2 TB free\n")
        .contains("  1     880 GB free  1.88 TB free\n")
        .contains("  9     too small");
    assertThat(page(STUDIO, false)).doesNotContain("on main", "TB free");
  }

  /** 2 TB at 80 MB/s are 6.94 h; of the 2.44 TB at the end, as if there were room, 8.47 h. */
  @ParameterizedTest
  @CsvSource({
    "noticed: 0 h, 6.94 h a drive",
    "rebuild_reads: used, 8.47 h for what is in use at the end",
    "'rebuild: {fixed: 300 h}', 12.5 days on average",
    "rebuild: 0 %/year, may never end",
  })
  void howLongARebuildTakes(String says, String words) throws Exception {
    String text = STUDIO.replace("arrangement: mirror", "arrangement: mirror, " + says);
    assertThat(page(text, false)).contains("    rebuild       " + words + "\n");
  }

  @Test
  void aFeedHasItsLagAndItsFirstFill() throws Exception {
    String page = page(STUDIO, false);
    assertThat(page)
        .containsPattern("    lag           [\\d.]+ \\w+ on average, [\\d.]+ \\w+ at worst");
    assertThat(page).containsPattern("    first fill    [\\d.]+ \\w+, done before the start\n");
  }
}
