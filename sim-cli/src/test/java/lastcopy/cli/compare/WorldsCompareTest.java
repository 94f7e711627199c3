package lastcopy.cli.compare;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import lastcopy.cli.Program;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A scenario with ranges through the whole command: what is printed and written. */
class WorldsCompareTest {

  private static final String FILE =
      """
      lastcopy: 1
      studio: Elder Wharf Films
      years: 2
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 10 GB}}
      places: {studio: {mishaps: {fire: {rate: FIRE}}}}
      drives: {desk: {size: 8 TB, fails: FAILS}}
      layouts:
        one: {copies: {main: {place: studio, drives: 1 x desk, noticed: 1 day, wait: 2 days}}}
        two: {copies: {main: {place: studio, drives: 2 x desk, arrangement: mirror,
              noticed: 1 day, wait: 2 days}}}
      """;

  @TempDir private Path folder;

  private String run(String text, String... more) throws IOException {
    Path file = Files.writeString(folder.resolve("worlds.yaml"), text);
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
    List<String> args = new ArrayList<>(List.of("compare", file.toString(), "--time", "none"));
    args.addAll(List.of(more));
    assertThat(new Program(host).run(args.toArray(String[]::new)))
        .as(err.toString(StandardCharsets.UTF_8))
        .isZero();
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String with(String fails, String fire) {
    return FILE.replace("FAILS", fails).replace("FIRE", fire);
  }

  /** Not a digit differs. */
  @Test
  void aRangeWithoutWidthIsThePlainResult() throws IOException {
    String[] how = {"--histories", "30000", "--json", "-"};
    String plain = run(with("4 %/year", "1 %/year"), how);
    assertThat(run(with("4..4 %/year", "1..1 %/year"), how)).isEqualTo(plain);
    assertThat(plain).doesNotContain("worlds", "unknowns");
  }

  @Test
  void theJsonHasTheFieldsOfTheContract() throws IOException {
    String json = run(with("2..8 %/year", "0.5..2 %/year"), "--histories", "200000", "--json", "-");
    JsonNode root = new ObjectMapper().readTree(json);
    JsonNode one = root.at("/layouts/0/worlds");
    assertThat(one.path("count").asInt()).isGreaterThan(400);
    for (String figure : List.of("any_loss", "bytes_lost")) {
      JsonNode spread = one.path(figure);
      assertThat(spread.path("low").asDouble()).isLessThan(spread.path("mean").asDouble());
      assertThat(spread.path("mean").asDouble()).isLessThan(spread.path("high").asDouble());
      assertThat(spread.path("p5").asDouble())
          .isPositive()
          .isLessThan(spread.path("p50").asDouble());
      assertThat(spread.path("p50").asDouble()).isLessThan(spread.path("p95").asDouble());
      assertThat(spread.path("p5_low").asDouble()).isLessThan(spread.path("p5").asDouble());
    }
    assertThat(one.at("/any_loss/mean")).isEqualTo(root.at("/layouts/0/any_loss/probability"));
    assertThat(one.path("curve")).hasSize(8);
    assertThat(one.at("/curve/7/p95")).isEqualTo(one.at("/any_loss/p95"));
    JsonNode pair = root.at("/comparisons/0/worlds");
    assertThat(pair.at("/a_loses_less/share").asDouble()).isZero();
    assertThat(pair.path("ratio_p5").asDouble()).isLessThan(pair.path("ratio_p95").asDouble());
    JsonNode unknown = root.at("/unknowns/1");
    assertThat(unknown.path("key").asText()).isEqualTo("drives.desk.fails");
    assertThat(unknown.path("from").asDouble()).isEqualTo(2);
    assertThat(unknown.path("to").asDouble()).isEqualTo(8);
    assertThat(unknown.path("unit").asText()).isEqualTo("%/year");
    assertThat(unknown.at("/shares/0/layout").asText()).isEqualTo("one");
    double both =
        root.at("/unknowns/0/shares/0/share").asDouble() + unknown.at("/shares/0/share").asDouble();
    assertThat(both).isBetween(0.95, 1.0);
  }

  @Test
  void theWordsTellBothKindsOfUncertainty() throws IOException {
    Path csv = folder.resolve("csv");
    String text =
        run(
                with("2..8 %/year", "0.5..2 %/year"),
                "--histories",
                "200000",
                "--worlds",
                "320",
                "--csv",
                csv.toString())
            .replaceAll("\\s+", " ");
    assertThat(text)
        .containsPattern(
            "one: between [\\d,.]+ and [\\d,.]+, most likely about [\\d,.]+ \\(what is not known\\);"
                + " the simulation's own error is under \\d+")
        .contains("drives.desk.fails: 2 to 8 %/year")
        .contains("\"two\" loses less than \"one\" in more than 99 of 100 possible worlds.");
    assertThat(csv.resolve("worlds.csv")).content().contains("one,320,any_loss_probability,");
    assertThat(csv.resolve("worlds_curve.csv")).content().contains("one,0.25,");
    assertThat(csv.resolve("worlds_pairs.csv")).content().contains("one,two,0,");
    assertThat(csv.resolve("unknowns.csv")).content().contains("drives.desk.fails,2,8,%/year,one,");
  }

  /** A file that uses a range and a typical life that nobody is sure of; all as one would write. */
  @Test
  void everyFormIsSimulated() throws IOException {
    String text =
        run(
            with("{typical: hard-disk, level: unsure}", "0.005..0.02 per year")
                .replace("wait: 2 days}}}", "wait: {mean: 1..4 days}}}}"),
            "--histories",
            "50000");
    assertThat(text).contains("drives.desk.fails");
  }

  /**
   * Of a mirror nearly all lose, within 300 histories, and few of a service that does. Red with an
   * error of 1,700,000 of 1,000 studios, and with "between 1,000 and 1,000".
   */
  @Test
  void whatIsKnownTooBadlyIsNotGivenAsARange() throws IOException {
    String text =
        """
        lastcopy: 1
        studio: Elder Wharf Films
        years: 5
        footage: {on_hand: 3 TB, shoots: {every: 7 days, size: 60 GB}}
        places:
          studio: {mishaps: {fire: {rate: 0.1..0.6 %/year}, theft: {rate: 0.2..2 %/year}}}
        desk: {deletion: {rate: 0.5..5 per year, size: 100 shoots, noticed: {mean: 5..40 days}}}
        drives: {desk-20tb: {size: 20 TB, fails: {typical: hard-disk, level: unsure}}}
        layouts:
          mirror: {copies: {main: {place: studio, drives: 2 x desk-20tb, arrangement: mirror,
            noticed: 1 day, wait: 2 days}}}
          kept:
            copies:
              main: {place: studio, drives: 1 x desk-20tb, keeps_deleted: for good, noticed: 1 day,
                wait: 2 days}
              far: {service: {loses: 0.2 %/year}, feed: {from: main, continuous: true, link: 1000 MB/s}}
        """;
    assertThat(run(text, "--histories", "300").replaceAll("\\s+", " "))
        .contains("mirror: too few kept all to say what the ranges leave possible")
        .contains("kept: too few lost any to say what the ranges leave possible");
  }

  /** A wide range of failures beside a narrow one of fires, and the other way round. */
  @Test
  void thePageNamesTheAssumptionThatMattersMost() throws IOException {
    assertThat(page("1..20 %/year", "0.4..0.5 %/year"))
        .contains("The assumption that matters most is drives.desk.fails, given as 1 to 20 %/year");
    assertThat(page("3.9..4 %/year", "0.1..20 %/year"))
        .contains("The assumption that matters most is places.studio.mishaps.fire.rate, given as");
    assertThat(page("4 %/year", "1 %/year"))
        .contains("Which assumption matters most is not told")
        .doesNotContain("The assumption that matters most");
  }

  private String page(String fails, String fire) throws IOException {
    Path page = folder.resolve("page.html");
    run(with(fails, fire), "--histories", "60000", "--report", page.toString(), "--force");
    return Files.readString(page);
  }
}
