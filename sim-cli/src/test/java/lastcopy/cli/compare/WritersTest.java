package lastcopy.cli.compare;

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
import java.util.Optional;
import java.util.regex.Pattern;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.sentence.PairSentences;
import lastcopy.cli.sentence.Remarks;
import lastcopy.outlook.Omission;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WritersTest {

  private static final List<Omission> OMITTED =
      List.of(
          new Omission(Omission.Kind.MALWARE, List.of()),
          new Omission(Omission.Kind.READ_ERRORS, List.of("far")));

  @TempDir Path directory;

  @Test
  void jsonHasEveryKeyInTheOrderOfTheFormat() throws IOException {
    JsonNode json = json();
    assertThat(keys(json))
        .containsExactly(
            "format",
            "scenario",
            "years",
            "seed",
            "confidence",
            "finished",
            "not_counted",
            "not_priced",
            "layouts",
            "comparisons");
    assertThat(json.get("format").asText()).isEqualTo("lastcopy-result/1");
    assertThat(keys(json.get("layouts").get(0)))
        .containsExactly(
            "id",
            "title",
            "histories",
            "method",
            "precision_reached",
            "effective_histories",
            "largest_weight_share",
            "trusted",
            "doubts",
            "notes",
            "assumed",
            "any_loss",
            "everything_lost",
            "loss_events",
            "bytes_lost",
            "shoots_lost",
            "shoots_hit",
            "money_lost",
            "curve",
            "exceedance",
            "exceedance_shoots",
            "exceedance_money",
            "causes",
            "exposure",
            "recovery");
    assertThat(keys(json.get("comparisons").get(0)))
        .containsExactly(
            "a",
            "b",
            "ratio",
            "low",
            "high",
            "difference",
            "difference_low",
            "difference_high",
            "paired_histories");
  }

  @Test
  void jsonHasTheKeysOfEachPart() throws IOException {
    JsonNode layout = json().get("layouts").get(0);
    assertThat(keys(layout.get("any_loss"))).containsExactly("probability", "low", "high");
    assertThat(keys(layout.get("bytes_lost"))).containsExactly("mean", "low", "high");
    assertThat(keys(layout.get("curve").get(0)))
        .containsExactly("years", "probability", "low", "high");
    assertThat(keys(layout.get("exceedance").get(0))).startsWith("bytes", "probability");
    assertThat(keys(layout.get("exceedance_shoots").get(0))).startsWith("shoots", "probability");
    assertThat(keys(layout.get("exceedance_money").get(0))).startsWith("money", "probability");
    assertThat(keys(layout.get("causes").get(0)))
        .containsExactly("id", "cause", "share", "low", "high", "share_of_bytes");
    assertThat(keys(layout.get("exposure")))
        .containsExactly(
            "single_copy_days_per_year",
            "single_copy_days_per_year_low",
            "single_copy_days_per_year_high",
            "no_redundancy_days_per_year",
            "no_redundancy_days_per_year_low",
            "no_redundancy_days_per_year_high",
            "largest_single_copy_bytes",
            "no_working_copy_days_per_year",
            "refilling_days_per_year");
    assertThat(keys(layout.at("/recovery/0")))
        .containsExactly("cause", "sentence", "seen", "work_hours", "whole_hours");
    assertThat(keys(layout.at("/recovery/0/whole_hours"))).containsExactly("mean", "low", "high");
    assertThat(layout.at("/recovery/0/whole_hours/mean").asDouble()).isEqualTo(91);
    assertThat(layout.at("/recovery/1/work_hours/high").isNull()).isTrue();
  }

  @Test
  void jsonIsUnroundedAndNullWhereThereIsNoRatio() throws IOException {
    JsonNode json = json();
    assertThat(json.at("/layouts/0/any_loss/low").asDouble()).isEqualTo(0.07 - 0.002);
    assertThat(json.at("/layouts/2/any_loss/high").asDouble()).isEqualTo(3e-5);
    assertThat(json.at("/layouts/2").has("money_lost")).isFalse();
    assertThat(json.at("/layouts/2").has("exceedance_money")).isFalse();
    assertThat(json.at("/layouts/2/causes").isEmpty()).isTrue();
    assertThat(json.at("/comparisons/1/ratio").isNull()).isTrue();
    assertThat(json.at("/comparisons/1/low").asDouble()).isEqualTo(2300);
    assertThat(json.at("/comparisons/1/high").isNull()).isTrue();
  }

  @Test
  void csvTablesHaveHeadersAndARowForEachFigure() throws IOException {
    CsvResult.write(SampleComparison.result(true), directory);
    assertThat(lines("summary.csv")).hasSize(4);
    assertThat(lines("summary.csv").get(0))
        .startsWith("layout,title,years,seed,confidence,finished,histories,method")
        .contains("any_loss_probability,any_loss_probability_low")
        .contains("bytes_lost_mean")
        .contains("single_copy_days_per_year");
    assertThat(lines("summary.csv").get(3)).contains("\"Mirror, a copy off site and a service\"");
    assertThat(lines("curve.csv"))
        .hasSize(7)
        .startsWith("layout,years,probability,probability_low,probability_high");
    assertThat(lines("exceedance.csv")).hasSize(7).contains("three-copies,96000000000,0,0,3.0E-5");
    assertThat(lines("causes.csv")).hasSize(3);
    assertThat(lines("recovery.csv"))
        .hasSize(5)
        .contains("mirror,place:fire,fire struck at 'studio',1,72,0,,,,");
    assertThat(lines("comparisons.csv").get(2)).startsWith("one-drive,three-copies,,2300,,0.07");
  }

  @Test
  void textIsAsStored() throws IOException {
    String text =
        TextReport.of(SampleComparison.result(true), warning("The upload never catches up."), true);
    try (var stored = WritersTest.class.getResourceAsStream("three-layouts.txt")) {
      assertThat(text).isEqualTo(new String(stored.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  @Test
  void textFitsEightyColumnsWhateverTheNames() {
    String longWord = "x".repeat(200);
    var layout =
        SampleComparison.layout(
            "a-layout-with-a-very-long-name", longWord, SampleComparison.seen(0.2, 0.1), true);
    var rare =
        SampleComparison.layout("b", "words ".repeat(60), SampleComparison.seen(2e-6, 1e-6), true);
    var base = SampleComparison.result(false);
    var wide =
        new lastcopy.experiment.Comparison(
            longWord, 5, base.currency(), 1, 0.95, false, List.of(layout, rare), List.of());
    String text = TextReport.of(wide, warning(longWord), true);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    assertThat(text).contains("UNFINISHED").contains("a-layout-with-a-very-long-name");
    assertThat(text).contains("(100,000 to 300,000)").contains("Of 1,000,000 studios");
  }

  /** A mean has one in bytes wherever it has one in money, however wide its interval. */
  @Test
  void aWideMeanIsStillAMean() {
    assertThat(Numbers.bytes(new lastcopy.interval.Estimate(1e9, 1e8, 1e11, true)))
        .isEqualTo("1 GB (0.1 to 100)");
    assertThat(Numbers.bytes(new lastcopy.interval.Estimate(0, 0, 1e11, false)))
        .isEqualTo("at most 100 GB");
  }

  @Test
  void doubtsAreInJson() throws IOException {
    var base = SampleComparison.result(true).layouts().get(0);
    var doubted =
        SampleComparison.doubted(base, List.of("Few decide."), List.of("There was no time."));
    var result =
        new lastcopy.experiment.Comparison(
            "s", 1, Optional.empty(), 1, 0.95, true, List.of(doubted), List.of());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    JsonResult.write(result, NOTHING, out);
    JsonNode layout = new ObjectMapper().readTree(out.toByteArray()).at("/layouts/0");
    assertThat(layout.at("/trusted").isBoolean()).isTrue();
    assertThat(layout.at("/trusted").asBoolean()).isFalse();
    assertThat(layout.at("/doubts")).hasSize(1);
    assertThat(layout.at("/doubts/0").asText()).isEqualTo("Few decide.");
    assertThat(layout.at("/notes/0").asText()).isEqualTo("There was no time.");
    assertThat(TextReport.of(result, NOTHING, false).replaceAll("\\s+", " "))
        .contains("\"One external drive\": not to be trusted. Few decide.")
        .contains("\"One external drive\": There was no time.");
  }

  @Test
  void noDifferenceIsSaidSo() {
    var base = SampleComparison.result(true);
    var pair =
        SampleComparison.pair(
            "one-drive",
            "mirror",
            SampleComparison.of(1.1),
            SampleComparison.of(0.9),
            SampleComparison.of(1.3),
            SampleComparison.seen(0.001, 0.002));
    var same =
        new lastcopy.experiment.Comparison(
            "s", 1, base.currency(), 1, 0.95, true, base.layouts(), List.of(pair));
    assertThat(PairSentences.of(same, new OutOf(1_000), false))
        .containsExactly(
            "Over 1 year, no difference could be shown between \"One external drive\" (70 of 1,000 studios)"
                + " and \"Two drives mirrored in one box\" (8.0).");
  }

  @Test
  void theWorseLayoutIsNamedFirst() {
    var base = SampleComparison.result(true);
    var pair =
        SampleComparison.pair(
            "mirror",
            "one-drive",
            SampleComparison.of(0.1),
            SampleComparison.of(0.08),
            SampleComparison.of(0.125),
            SampleComparison.seen(-0.062, 0.002));
    var reversed =
        new lastcopy.experiment.Comparison(
            "s",
            5,
            base.currency(),
            1,
            0.95,
            true,
            List.of(base.layouts().get(1), base.layouts().get(0)),
            List.of(pair));
    assertThat(PairSentences.of(reversed, new OutOf(1_000), false))
        .containsExactly(
            "Over 5 years, \"One external drive\" loses footage in 70 of 1,000 studios and"
                + " \"Two drives mirrored in one box\" in 8.0: 62 more (60 to 64), 10 times as often"
                + " (8 to 13).");
  }

  /** Against the safest only, unless every pair is asked for. */
  @Test
  void pairsThatDoNotMatterAreToldOnRequest() {
    var three = SampleComparison.result(true);
    assertThat(PairSentences.of(three, new OutOf(1_000), false))
        .hasSize(2)
        .allMatch(sentence -> sentence.contains("Mirror, a copy off site and a service"));
    assertThat(PairSentences.of(three, new OutOf(1_000), true)).hasSize(3);
  }

  /** One denominator for all, at most 1,000,000: what is less is said so, and how many times. */
  @Test
  void whatIsRarerThanOneOfAMillionIsSaidSo() {
    var base = SampleComparison.result(true);
    var often =
        SampleComparison.layout("often", "Often", SampleComparison.seen(0.008, 0.0002), true);
    var rare = SampleComparison.layout("rare", "Rare", SampleComparison.seen(2e-14, 1e-15), true);
    var pair =
        SampleComparison.pair(
            "often",
            "rare",
            SampleComparison.of(4e11),
            SampleComparison.of(3e11),
            SampleComparison.of(5e11),
            SampleComparison.seen(0.008, 0.0002));
    var both =
        new lastcopy.experiment.Comparison(
            "s", 5, base.currency(), 1, 0.95, true, List.of(often, rare), List.of(pair));
    String text = TextReport.of(both, NOTHING, false);
    assertThat(text)
        .contains("Of 1,000,000 studios like yours")
        .contains("fewer than 1")
        .contains("over a million times as often")
        .doesNotContain("10^")
        .doesNotContain("weight")
        .doesNotContain("seed");
    assertThat(Pattern.compile("[Oo]f ([0-9,]+)\\s+studios").matcher(text).results())
        .extracting(found -> found.group(1))
        .hasSize(3)
        .containsOnly("1,000,000");
    assertThat(TextReport.of(both, NOTHING, true)).contains("2.000e-14");
  }

  /** The electrician stands where a cause has to do with wiring or fire. */
  @Test
  void theElectricianIsNamedWhereWiringOrFireMatters() {
    var base = SampleComparison.result(true);
    assertThat(TextReport.of(base, NOTHING, false)).contains("electrician");
    var quiet =
        new lastcopy.experiment.Comparison(
            "s", 5, base.currency(), 1, 0.95, true, List.of(base.layouts().get(2)), List.of());
    assertThat(TextReport.of(quiet, NOTHING, false)).doesNotContain("electrician");
  }

  /** By how many histories, and with what weight, where they are biased; told with details only. */
  @Test
  void howTheFiguresWereMadeIsToldOfEachLayout() {
    var plain = SampleComparison.result(true).layouts().get(0);
    var rare =
        SampleComparison.biased(
            SampleComparison.layout("b", "B", SampleComparison.seen(0.01, 0.001), false));
    String text =
        TextReport.of(SampleComparison.of(plain, rare), NOTHING, true).replaceAll("\\s+", " ");
    assertThat(text)
        .contains(
            "How it was made: 100,000 histories of each layout, random numbers from --seed 1. Losses"
                + " estimated from histories biased towards them and weighted: b (an effective number"
                + " of 100,000 losing histories, the heaviest with 0.0 % of the weight). The chances"
                + " of losing any footage: One external drive (one-drive): 0.07000 (0.06800 to"
                + " 0.07200) B (b): 0.01000 (0.009000 to 0.01100)");
    assertThat(TextReport.of(SampleComparison.of(plain), NOTHING, true))
        .contains("How it was made")
        .doesNotContain("biased");
    assertThat(TextReport.of(SampleComparison.of(plain, rare), NOTHING, false))
        .doesNotContain("How it was made");
  }

  @Test
  void jsonSaysOfEachLayoutWhatIsAssumed() throws IOException {
    assertThat(json().at("/layouts/0/assumed")).isEmpty();
    assertThat(json().at("/layouts/1/assumed/0").asText()).isEqualTo("a deletion is seen at once");
  }

  @Test
  void jsonSaysWhatIsNotCounted() throws IOException {
    JsonNode left = json().get("not_counted");
    assertThat(left).hasSize(2);
    assertThat(keys(left.get(1))).containsExactly("id", "title");
    assertThat(left.at("/0/id").asText()).isEqualTo("malware");
    assertThat(left.at("/1/id").asText()).isEqualTo("read-errors");
    assertThat(left.at("/1/title").asText()).isEqualTo("bits that cannot be read (far)");
  }

  private static final Remarks LEFT_OUT =
      new Remarks(
          OMITTED, Map.of("mirror", List.of("a deletion is seen at once")), List.of(), List.of());

  private static final Remarks NOTHING = new Remarks(List.of(), Map.of(), List.of(), List.of());

  private static Remarks warning(String sentence) {
    return new Remarks(List.of(), Map.of(), List.of(), List.of(sentence));
  }

  private static JsonNode json() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    JsonResult.write(SampleComparison.result(true), LEFT_OUT, out);
    return new ObjectMapper().readTree(out.toByteArray());
  }

  private static List<String> keys(JsonNode node) {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  private List<String> lines(String file) throws IOException {
    return Files.readAllLines(directory.resolve(file));
  }
}
