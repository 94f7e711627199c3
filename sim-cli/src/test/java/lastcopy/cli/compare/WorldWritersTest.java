package lastcopy.cli.compare;

import static lastcopy.cli.compare.SampleComparison.costing;
import static lastcopy.cli.compare.SampleComparison.layout;
import static lastcopy.cli.compare.SampleComparison.none;
import static lastcopy.cli.compare.SampleComparison.pair;
import static lastcopy.cli.compare.SampleComparison.seen;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastcopy.cli.sentence.Remarks;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is not known, and what is paid, as other programs read it, of results made by hand. */
class WorldWritersTest {

  private static final Estimate SHARE = new Estimate(0.75, 0.5, 0.875, true);

  private static final Worlds.Percentiles PERCENTILES =
      new Worlds.Percentiles(
          new Estimate(2, 1, 3, true), new Estimate(5, 4, 6, true), new Estimate(8, 7, 9, true));

  private static final Worlds.Spread KNOWN =
      new Worlds.Spread(new Estimate(11, 10, 12, true), Optional.of(PERCENTILES));

  private static final Worlds.Spread UNTOLD =
      new Worlds.Spread(new Estimate(14, 13, 15, true), Optional.empty());

  private static final Cost COST =
      new Cost(
          new Estimate(90, 88, 92, true),
          80,
          90,
          110,
          List.of(new Cost.Part("drives", 60), new Cost.Part("power", 30)),
          List.of(70.0, 20.5),
          20_000);

  @TempDir private Path folder;

  /** A layout that is priced and one that is not, of which nothing can be told. */
  private static Comparison result() {
    LayoutResult plain = layout("a", "A", seen(0.07, 0.002), false);
    Comparison.Pair free = pair("a", "b", SampleComparison.of(2), none(), none(), seen(0.5, 0.25));
    Comparison.Pair priced =
        new Comparison.Pair(
            "a",
            "b",
            free.ratio(),
            free.ratioLow(),
            free.ratioHigh(),
            free.difference(),
            7,
            Optional.of(new Estimate(-3, -4, -2, true)));
    Worlds worlds =
        new Worlds(
            List.of(
                new Worlds.OfLayout(
                    "a",
                    9,
                    KNOWN,
                    UNTOLD,
                    Optional.of(KNOWN),
                    List.of(new Worlds.CurvePoint(0.25, 0.1, 0.2, 0.4))),
                new Worlds.OfLayout("b", 8, UNTOLD, KNOWN, Optional.empty(), List.of())),
            List.of(new Worlds.OfPair("a", "b", SHARE, PERCENTILES)),
            List.of(
                new Worlds.OfUnknown(
                    "drives.d.fails", 1, 4, "%/year", List.of(new Worlds.Share("a", SHARE)))));
    return new Comparison(
        "s",
        5,
        Optional.of("EUR"),
        1,
        0.95,
        true,
        List.of(costing(plain, Optional.of(COST)), layout("b", "B", seen(0.06, 0.002), false)),
        List.of(priced, pair("a", "c", none(), none(), none(), seen(0.5, 0.25))),
        Optional.of(worlds));
  }

  private static JsonNode json() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Remarks nothing = new Remarks(List.of(), Map.of(), List.of(), List.of());
    JsonResult.write(result(), nothing, out);
    return new ObjectMapper().readTree(out.toByteArray());
  }

  private static JsonNode read(String json) throws IOException {
    return new ObjectMapper().readTree(json.replace('\'', '"'));
  }

  @Test
  void jsonSaysOfEachLayoutWhatTheWorldsLeavePossible() throws IOException {
    String all =
        """
        'p5': 2, 'p5_low': 1, 'p5_high': 3, 'p50': 5, 'p50_low': 4, 'p50_high': 6,
        'p95': 8, 'p95_low': 7, 'p95_high': 9}""";
    String known = "{'mean': 11, 'low': 10, 'high': 12, " + all;
    String untold = "{'mean': 14, 'low': 13, 'high': 15, " + all.replaceAll(": [0-9]", ": null");
    assertThat(json().at("/layouts/0/worlds"))
        .isEqualTo(
            read(
                "{'count': 9, 'any_loss': "
                    + known
                    + ", 'bytes_lost': "
                    + untold
                    + ", 'cost': "
                    + known
                    + ", 'curve': [{'years': 0.25, 'p5': 0.1, 'p50': 0.2, 'p95': 0.4}]}"));
    assertThat(json().at("/layouts/1/worlds"))
        .isEqualTo(
            read(
                "{'count': 8, 'any_loss': "
                    + untold
                    + ", 'bytes_lost': "
                    + known
                    + ", 'curve': []}"));
  }

  @Test
  void jsonSaysOfPairsAndUnknownsWhatIsKnownOfThem() throws IOException {
    assertThat(json().at("/comparisons/0/worlds"))
        .isEqualTo(
            read(
                """
                {'a_loses_less': {'share': 0.75, 'low': 0.5, 'high': 0.875},
                 'ratio_p5': 2, 'ratio_p5_low': 1, 'ratio_p5_high': 3,
                 'ratio_p50': 5, 'ratio_p50_low': 4, 'ratio_p50_high': 6,
                 'ratio_p95': 8, 'ratio_p95_low': 7, 'ratio_p95_high': 9}
                """));
    assertThat(json().at("/comparisons/1").has("worlds")).as("of a pair not compared").isFalse();
    assertThat(json().get("unknowns"))
        .isEqualTo(
            read(
                """
                [{'key': 'drives.d.fails', 'from': 1, 'to': 4, 'unit': '%/year',
                  'shares': [{'layout': 'a', 'share': 0.75, 'low': 0.5, 'high': 0.875}]}]
                """));
  }

  @Test
  void jsonSaysWhatIsPaid() throws IOException {
    assertThat(json().at("/layouts/0/cost"))
        .isEqualTo(
            read(
                """
                {'total': 90, 'low': 88, 'high': 92, 'currency': 'EUR', 'p5': 80, 'p50': 90,
                 'p95': 110, 'by_kind': {'drives': 60, 'power': 30}, 'by_year': [70, 20.5],
                 'histories': 20000}
                """));
    assertThat(json().at("/layouts/1").has("cost")).isFalse();
    assertThat(json().at("/comparisons/0/cost_difference").asInt()).isEqualTo(-3);
    assertThat(json().at("/comparisons/0/cost_difference_low").asInt()).isEqualTo(-4);
    assertThat(json().at("/comparisons/0/cost_difference_high").asInt()).isEqualTo(-2);
  }

  private String table(String name) throws IOException {
    List<Path> written = CsvResult.write(result(), folder);
    assertThat(written).contains(folder.resolve(name));
    return Files.readString(folder.resolve(name));
  }

  @Test
  void tablesOfWhatIsNotKnown() throws IOException {
    assertThat(table("worlds.csv"))
        .isEqualTo(
            """
            layout,worlds,figure,mean,mean_low,mean_high,p5,p5_low,p5_high,p50,p50_low,p50_high,p95,p95_low,p95_high
            a,9,any_loss_probability,11,10,12,2,1,3,5,4,6,8,7,9
            a,9,bytes_lost,14,13,15,,,,,,,,,
            a,9,cost,11,10,12,2,1,3,5,4,6,8,7,9
            b,8,any_loss_probability,14,13,15,,,,,,,,,
            b,8,bytes_lost,11,10,12,2,1,3,5,4,6,8,7,9
            """);
    assertThat(table("worlds_curve.csv"))
        .isEqualTo(
            """
            layout,years,p5,p50,p95
            a,0.25,0.1,0.2,0.4
            """);
    assertThat(table("worlds_pairs.csv"))
        .isEqualTo(
            """
            a,b,a_loses_less,a_loses_less_low,a_loses_less_high,ratio_p5,ratio_p5_low,ratio_p5_high,ratio_p50,ratio_p50_low,ratio_p50_high,ratio_p95,ratio_p95_low,ratio_p95_high
            a,b,0.75,0.5,0.875,2,1,3,5,4,6,8,7,9
            """);
    assertThat(table("unknowns.csv"))
        .isEqualTo(
            """
            key,from,to,unit,layout,share,share_low,share_high
            drives.d.fails,1,4,%/year,a,0.75,0.5,0.875
            """);
  }

  @Test
  void tablesOfWhatIsPaid() throws IOException {
    assertThat(table("cost.csv"))
        .isEqualTo(
            """
            layout,what,money,money_low,money_high
            a,total,90,88,92
            a,p5,80,,
            a,p50,90,,
            a,p95,110,,
            a,drives,60,,
            a,power,30,,
            a,year 1,70,,
            a,year 2,20.5,,
            """);
    assertThat(table("comparisons.csv"))
        .isEqualTo(
            """
            a,b,ratio,ratio_low,ratio_high,difference,difference_low,difference_high,paired_histories,cost_difference,cost_difference_low,cost_difference_high
            a,b,2,,,0.5,0.25,0.75,7,-3,-4,-2
            a,c,,,,0.5,0.25,0.75,100000
            """);
  }

  private Map<String, String> summary(LayoutResult... layouts) throws IOException {
    CsvResult.write(SampleComparison.of(layouts), folder);
    List<String> lines = Files.readAllLines(folder.resolve("summary.csv"));
    assertThat(lines).hasSize(1 + layouts.length);
    String[] heads = lines.get(0).split(",", -1);
    String[] cells = lines.get(1).split(",", -1);
    assertThat(cells).hasSameSizeAs(heads);
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < heads.length; i++) {
      row.put(heads[i], cells[i]);
    }
    return row;
  }

  /** Half of all lose, 9 TB each, worth 900. */
  @Test
  void theSummaryHasEachFigureWithItsEnds() throws IOException {
    LayoutResult worth = layout("a", "A", seen(0.5, 0.25), true);
    assertThat(summary(costing(worth, Optional.of(COST))))
        .containsEntry("layout", "a")
        .containsEntry("title", "A")
        .containsEntry("confidence", "0.95")
        .containsEntry("method", "plain")
        .containsEntry("precision_reached", "true")
        .containsEntry("any_loss_probability", "0.5")
        .containsEntry("any_loss_probability_low", "0.25")
        .containsEntry("any_loss_probability_high", "0.75")
        .containsEntry("bytes_lost_mean", "4500000000000")
        .containsEntry("money_lost_mean", "450")
        .containsEntry("money_lost_mean_low", "445")
        .containsEntry("single_copy_days_per_year", "365")
        .containsEntry("largest_single_copy_bytes", "21000000000000")
        .containsEntry("cost_mean", "90")
        .containsEntry("cost_mean_high", "92");
    LayoutResult plain = layout("b", "B", seen(0.5, 0.25), false);
    assertThat(summary(plain)).doesNotContainKeys("money_lost_mean", "cost_mean");
    assertThat(summary(plain, worth))
        .as("beside one that has a worth")
        .containsEntry("money_lost_mean", "0");
  }

  /** 72.5 hours, one more or less, and 91, one and a half more or less. */
  @Test
  void howLongWorkStops() throws IOException {
    CsvResult.write(SampleComparison.of(layout("a", "A", seen(0.5, 0.25), true)), folder);
    assertThat(folder.resolve("recovery.csv"))
        .content()
        .isEqualTo(
            """
            layout,id,cause,seen,work_hours,work_hours_low,work_hours_high,whole_hours,whole_hours_low,whole_hours_high
            a,drive,a drive failed,950,72.5,71.5,73.5,91,89.5,92.5
            a,place:fire,fire struck at 'studio',1,72,0,,,,
            """);
    assertThat(json().at("/layouts/0/recovery/1").has("whole_hours")).isTrue();
    assertThat(json().at("/layouts/0/recovery/1/whole_hours").isNull()).isTrue();
  }

  /** What a spreadsheet would take for a formula begins with an apostrophe. */
  @Test
  void noTextIsAFormula() {
    for (String cell : List.of("=A", "+A", "-A", "@A", "\tA", "\rA", "\nA")) {
      assertThat(CsvResult.text(cell)).isEqualTo("'" + cell);
    }
    for (String cell : List.of("", "A", "A=B", "1")) {
      assertThat(CsvResult.text(cell)).isEqualTo(cell);
    }
  }
}
