package lastcopy.cli.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import lastcopy.cli.Program;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What inspect says of room and time: each sentence where it is true, and where it is not. */
class InspectRoomTest {

  private static final String STUDIO =
      """
      lastcopy: 1
      studio: Quay Films
      years: 4
      footage: {on_hand: 1 TB, shoots: {every: 73 h, size: 18 GB}}
      boxes:
        tower: {rate: 0.2 %/year, speed: 110 MB/s}
      drives:
        desk: {size: 4 TB, speed: 80 MB/s, fails: 2 %/year}
        large: {size: 18 TB, speed: 200 MB/s, fails: 2 %/year}
      layouts:
        pair:
          copies:
            main: {place: studio, box: tower, drives: 2 x MAIN, arrangement: mirror}
            far:
              place: home
              drives: 1 x large
              feed: {from: main, every: 1 day, at: 1 h, link: LINK, between: [20 h, 6 h]}
              restores_at: 50 MB/s
        alone:
          copies:
            main: {place: studio, drives: 1 x large}
      """;

  @TempDir private Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    Host host =
        new Host(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false,
            ScenarioLoading::fromFile,
            (studio, settings, progress) -> {
              throw new AssertionError("inspect never simulates");
            },
            () -> LocalDate.EPOCH,
            new Interruption());
    return new Program(host).run(args);
  }

  private String told(String main, String link, String... more) throws IOException {
    return toldOf(STUDIO.replace("MAIN", main).replace("LINK", link), more);
  }

  private String toldOf(String text, String... more) throws IOException {
    out.reset();
    Path file = Files.writeString(folder.resolve("quay.yaml"), text);
    String[] args =
        Stream.concat(Stream.of("inspect", file.toString()), Stream.of(more))
            .toArray(String[]::new);
    assertThat(run(args)).as(err.toString(StandardCharsets.UTF_8)).isZero();
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  /** 120 shoots a year of 18 GB: 9.64 TB at the end, so 12.1 TB of room; 18 TB drives have it. */
  @Test
  void theAnswersComeFirst() throws IOException {
    String small = flat(told("desk", "20 Mbit/s"));
    assertThat(small)
        .contains("- Room: up to 9.64 TB of footage, which at most 80 % full need 12.1 TB. More")
        .contains("More room is due after 1.03 years: pair.main.")
        .contains("- Links: each is fast and open long enough, this year and in the last one.")
        .contains("all is back in: pair 53.6 h; alone has no other copy.");
    assertThat(small.indexOf("- Room")).isLessThan(small.indexOf("Not counted"));
    String large = flat(told("large", "0.2 Mbit/s"));
    assertThat(large)
        .contains("need 12.1 TB. Every copy has that.")
        .contains("- Links: not enough, this year or in the last one: pair.far.");
    assertThat(flat(told("desk", "20 Mbit/s", "--fill", "100%")))
        .contains("at most 100 % full need 9.64 TB.")
        .contains("More room is due after 1.39 years: pair.main.");
    assertThat(flat(told("desk", "20 Mbit/s", "--fill", "20%")))
        .contains("More room is due, first now: pair.main, pair.far, alone.main.");
  }

  /** 12.1 TB of room on drives of 4 TB: four of data; on one of 18 TB all of it. */
  @Test
  void tellsHowManyDrivesHoldTheFootage() throws IOException {
    assertThat(told("desk", "20 Mbit/s"))
        .contains(
            """
              drives  years  single  mirror  pairs  parity  double parity  shelf
              desk    2      -       -       4      3       4              2
                      3      -       -       6      4       5              3
                      4      -       -       8      5       6              4
              large   2      1       2       2      2       3              1
                      3      1       2       2      2       3              1
                      4      1       2       2      2       3              1
            """)
        .contains("common")
        .contains("no source");
    assertThat(flat(told("desk", "20 Mbit/s")))
        .contains("to the end it takes one of 12.1 TB.")
        .contains("80 % full after 1.03 years, full after 1.39 years; then larger drives, 12.1 TB");
    assertThat(flat(told("large", "20 Mbit/s").replaceAll("(?s) desk .*? large", " large")))
        .doesNotContain("larger drives")
        .contains("18 TB usable, enough to the end");
  }

  /** By the link 2.5 MB/s; without it the drives of the mirror, 80 MB/s. */
  @Test
  void tellsWhatLimitsEachWayAndHowLongUntilAllIsBack() throws IOException {
    assertThat(told("desk", "20 Mbit/s"))
        .contains(
            """
              way               does      limited by   and without that
              rebuild main      80 MB/s   drive desk   110 MB/s (box tower)
              refill far to main  50 MB/s   restores_at  80 MB/s (drive desk)
              feed main to far  2.5 MB/s  link         80 MB/s (drive desk)
            """
                .replace("way               ", "way                 ")
                .replace("rebuild main      ", "rebuild main        ")
                .replace("feed main to far  ", "feed main to far    "))
        .contains(
            """
              all footage back  today's  at the end  how
              far to main       5.56 h   53.6 h      given back at 50 MB/s
              main to far       11 days  107 days    by its feed at 2.5 MB/s
            """)
        .contains("all footage back: there is no other copy that could give it back");
    assertThat(flat(told("desk", "110 MB/s"))).contains("drive desk the same: taken as stated");
  }

  /** A pair in no box has its drives only; in a box as fast as they are, nothing is gained. */
  @Test
  void tellsWhereNothingElseLimitsAWayOrSomethingElseDoesAtOnce() throws IOException {
    String pair = "main: {place: studio, drives: 2 x desk, arrangement: mirror}";
    String bare = STUDIO.replace("main: {place: studio, drives: 1 x large}", pair);
    String studio = bare.replace("MAIN", "desk").replace("LINK", "20 Mbit/s");
    assertThat(flat(toldOf(studio)))
        .contains("rebuild main 80 MB/s drive desk the file names nothing else")
        .contains("rebuild main 80 MB/s drive desk 110 MB/s (box tower)")
        .doesNotContain("no more (");
    assertThat(flat(toldOf(studio.replace("speed: 110 MB/s", "speed: 80 MB/s"))))
        .contains("rebuild main 80 MB/s drive desk no more (box tower)");
  }

  @Test
  void namesEachLayoutThatHasNoOtherCopy() throws IOException {
    String more =
        """
            lone:
              copies:
                main: {place: studio, drives: 1 x large}
        """;
    String studio = STUDIO.replace("MAIN", "desk").replace("LINK", "20 Mbit/s");
    assertThat(flat(toldOf(studio + more.indent(-2))))
        .contains("all is back in: pair 53.6 h; alone, lone have no other copy.");
    assertThat(flat(toldOf(studio.substring(0, studio.indexOf("  alone:")))))
        .contains("all is back in: pair 53.6 h.");
  }

  /** 80 MB/s are one stream of 400 Mbit/s and 16 of 40; 110 MB/s of the box two, and 22. */
  @Test
  void tellsHowManyCanEditAtOnceAndHowLongAnOffloadTakes() throws IOException {
    assertThat(flat(told("desk", "20 Mbit/s", "--stream", "400Mbit/s")))
        .contains("1 of 400 Mbit/s at once: drive desk does 80 MB/s, and a network of 1 Gbit/s is")
        .contains(
            "3 of 400 Mbit/s".replace("3", "4")
                + " at once: drive large does 200 MB/s; by a network of 1 Gbit/s 2;")
        .contains("offload 3.75 min for 18 GB at 80 MB/s (drive desk), if cards are as fast;");
    assertThat(flat(told("large", "20 Mbit/s", "--stream", "40 Mbit/s")))
        .contains("22 of 40 Mbit/s at once: box tower does 110 MB/s");
    assertThat(told("large", "20 Mbit/s")).doesNotContain("streams");
  }

  @Test
  void jsonHasAllOfIt() throws IOException {
    assertThat(flat(told("desk", "20 Mbit/s", "--stream", "400Mbit/s", "--json", "-")))
        .contains("\"fill\" : 0.8")
        .contains(
            "\"model\" : \"desk\", \"size_bytes\" : 4000000000000, \"arrangement\" : \"parity\", \"years\" : 4, \"drives\" : 5")
        .contains(
            "\"without_slowest_part_bytes_per_second\" : 80000000, \"then_slowest_part\" : \"drive desk\"")
        .contains("\"bits_per_second\" : 400000000, \"count\" : 1")
        .contains("\"by\" : \"feed\", \"bytes_per_second\" : 2500000")
        .doesNotContain("\"streams\" : null");
    assertThat(flat(told("desk", "20 Mbit/s", "--json", "-"))).contains("\"streams\" : null");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --fill=0%     | '0%' must be above 0%
          --fill=101%   | '101%' must be at most 100%
          --fill=80     | '80' needs a percent sign
          --fill=much   | 'much' is not a percentage
          --stream=0 Mbit/s | '0 Mbit/s' is not a rate such as 20 Mbit/s
          --stream=400  | '400' is not a rate such as 20 Mbit/s
          --stream=1..2 Mbit/s | is not a rate
          """)
  void aWrongOptionGivesOneMessage(String option, String message) throws IOException {
    Path file = Files.writeString(folder.resolve("quay.yaml"), STUDIO);
    assertThat(run("inspect", file.toString(), option)).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains(message);
    assertThat(err.toString(StandardCharsets.UTF_8).lines().count()).isEqualTo(2);
  }

  @Test
  void chartsAreWrittenWhereTheyAreAskedFor() throws IOException {
    Path charts = folder.resolve("charts");
    told("desk", "20 Mbit/s", "--charts", charts.toString());
    assertThat(charts.resolve("room.png")).isNotEmptyFile();
    assertThat(charts.resolve("room.svg")).content().contains("Is there room for 4 years?");
  }

  /**
   * Red where columns as wide as long names leave no room for the last one: it was an exception.
   */
  @ParameterizedTest
  @ValueSource(strings = {"60", "80", "100"})
  void longNamesGiveWay(String width) throws IOException {
    String name = "a-model-with-a-very-long-name-indeed";
    String text =
        STUDIO
            .replace("MAIN", name)
            .replace("LINK", "20 Mbit/s")
            .replace("large:", name + ":")
            .replace("1 x large", "1 x " + name)
            .replace("far:", "the-far-copy-has-a-long-name-too:");
    Path file = Files.writeString(folder.resolve("long.yaml"), text);
    assertThat(run("inspect", file.toString(), "--all", "--width", width)).isZero();
    String page = out.toString(StandardCharsets.UTF_8);
    assertThat(page.lines()).allMatch(line -> line.length() <= Integer.parseInt(width));
    assertThat(page).contains("\n  " + name + "\n  years  single  mirror");
  }

  static Stream<Path> demos() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("..", "scenarios"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void everyDemoIsReadableInEightyColumns(Path demo) {
    for (String all : new String[] {"--quick-look", "--all"}) {
      out.reset();
      String[] args =
          all.equals("--all")
              ? new String[] {"inspect", demo.toString(), "--all", "--stream", "400Mbit/s"}
              : new String[] {"inspect", demo.toString()};
      assertThat(run(args)).isZero();
      assertThat(out.toString(StandardCharsets.UTF_8).lines())
          .allMatch(line -> line.length() <= 80)
          .noneMatch(line -> line.contains("NaN") || line.contains("Infinity"));
    }
  }
}
