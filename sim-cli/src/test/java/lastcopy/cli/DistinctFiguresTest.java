package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lastcopy.cli.compare.CsvResult;
import lastcopy.cli.compare.JsonResult;
import lastcopy.cli.inspect.InspectJson;
import lastcopy.cli.inspect.InspectText;
import lastcopy.cli.sentence.Remarks;
import lastcopy.outlook.Omission;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every figure stands where it belongs: what the writers make of results in which no two figures
 * are alike ({@link Distinct}) is compared with files that were read by hand, field by field, once.
 *
 * <p>Sabotage seen red: {@code exceedance_shoots} holding bytes, {@code difference_low} and {@code
 * _high} swapped, {@code no_working_copy_days} holding refilling, {@code single_copy_days} of the
 * CSV holding no redundancy, {@code rebuild_hours} holding refill, in the file and in the text.
 */
class DistinctFiguresTest {

  /** A working copy and a fed one, both with drives that are rebuilt. */
  private static final String SCENARIO =
      """
      lastcopy: 1
      studio: the studio
      years: 2
      footage:
        shoots: {every: 7 days, size: 72 GB}
      drives:
        d: {size: 4 TB, speed: 80 MB/s, fails: 2 %/year}
      layouts:
        pair:
          title: title of the pair
          copies:
            main: {place: studio, drives: 2 x d, arrangement: mirror}
            far:
              place: home
              drives: 2 x d
              arrangement: mirror
              feed: {from: main, every: 1 day, link: 100 Mbit/s}
      """;

  @TempDir Path directory;

  @Test
  void jsonHoldsEachFigureInItsField() throws IOException {
    same(json(), "result.json");
  }

  /** What makes the references worth anything: no figure occurs twice. */
  @Test
  void noTwoFiguresAreAlike() throws IOException {
    for (String text : List.of(json(), inspectJson())) {
      List<String> numbers = new ArrayList<>();
      collect(new ObjectMapper().readTree(text), numbers);
      assertThat(numbers).hasSizeGreaterThan(20).doesNotHaveDuplicates();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"summary", "curve", "exceedance", "causes", "comparisons", "recovery", "cost"})
  void csvHoldsEachFigureInItsColumn(String table) throws IOException {
    CsvResult.write(Distinct.comparison(), directory);
    same(Files.readString(directory.resolve(table + ".csv")), table + ".csv");
  }

  @Test
  void everyTableIsCompared() throws IOException {
    CsvResult.write(Distinct.comparison(), directory);
    try (Stream<Path> files = Files.list(directory)) {
      assertThat(files).hasSize(7);
    }
  }

  @Test
  void inspectJsonHoldsEachFigureInItsField() throws IOException {
    same(inspectJson(), "inspect.json");
  }

  @Test
  void inspectTextHoldsEachFigureInItsLine() throws IOException {
    Studio studio = Written.of(SCENARIO).studio();
    String text = InspectText.render(studio, outlooks(studio), room(studio), List.of("a default"));
    same(text, "inspect.txt");
  }

  private static String json() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<Omission> omitted = List.of(new Omission(Omission.Kind.SPOILS, List.of("far")));
    Map<String, List<String>> assumed =
        Map.of("first", List.of("of first"), "second", List.of("one of second", "two of second"));
    JsonResult.write(
        Distinct.comparison(), new Remarks(omitted, assumed, List.of(), List.of()), out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String inspectJson() throws IOException {
    Studio studio = Written.of(SCENARIO).studio();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    InspectJson.write(studio, outlooks(studio), room(studio), List.of("a default"), out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static List<Outlook> outlooks(Studio studio) {
    return Outlook.of(studio).stream().map(Distinct::outlook).toList();
  }

  private static RoomAndTime room(Studio studio) {
    return Distinct.room(RoomAndTime.of(studio, Outlook.of(studio), 0.8, OptionalDouble.empty()));
  }

  private static void collect(JsonNode node, List<String> numbers) {
    if (node.isNumber()) {
      numbers.add(node.asText());
    }
    node.forEach(child -> collect(child, numbers));
  }

  /** {@code -Dfigures=renew} writes the references anew; then each line is to be read. */
  private static void same(String text, String name) throws IOException {
    Path stored = Path.of("src/test/resources/lastcopy/cli/distinct", name);
    if (System.getProperty("figures", "").equals("renew")) {
      Files.writeString(stored, text);
    }
    assertThat(text).isEqualTo(Files.readString(stored));
  }
}
