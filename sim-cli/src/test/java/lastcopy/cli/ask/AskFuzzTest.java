package lastcopy.cli.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import lastcopy.cli.scenario.ScenarioReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Answers by chance, right, wrong and neither: never a failure, and what is written can be read.
 *
 * <p>Sabotage seen red: a number of drives that is not held against its limit, a name that is
 * written without quotes.
 */
class AskFuzzTest {

  /** What somebody may say, here and there to the wrong question. */
  private static final List<String> WORDS =
      List.of(
          "",
          "",
          "",
          "",
          "<",
          "1",
          "2",
          "3",
          "4",
          "yes",
          "no",
          "0",
          "7",
          "12",
          "30",
          "300",
          "1000",
          "90.50",
          "-5",
          "1e9",
          "40 GB",
          "120 GB",
          "1 TB",
          "6 TB",
          "24 TB",
          "500 TB",
          "0 GB",
          "40 Gb",
          "1 day",
          "2 days",
          "3 months",
          "2 years",
          "0 years",
          "30 years",
          "at once",
          "never",
          "for good",
          "mirror",
          "drives",
          "parity",
          "used",
          "portable",
          "home",
          "studio",
          "elsewhere",
          "service",
          "beside",
          "careful",
          "CHF",
          "100 Mbit/s",
          "0.1 Mbit/s",
          "10 Gbit/s",
          "x",
          "<<",
          "Fen & S\u00f6hne: \"Film\" # \\",
          "\u0000",
          "\u001b[31m",
          "\u5199\u771f",
          "{a: [b",
          "- x",
          "a".repeat(300),
          "\t",
          "NaN",
          "99999999999999999999");

  @TempDir private Path folder;

  private Path file;

  @BeforeEach
  void name() {
    file = folder.resolve("studio.yaml");
  }

  @Test
  void fiveHundredConversationsCannotBreakIt() throws Exception {
    hold(0, 500);
  }

  @Test
  @Tag("slow")
  void tenThousandConversationsCannotBreakIt() throws Exception {
    hold(500, 10_500);
  }

  /** A person who goes away leaves nothing; a pipe that ends leaves a scenario. */
  private void hold(long from, long to) throws Exception {
    int written = 0;
    for (long seed = from; seed < to; seed++) {
      Asked asked = new Asked();
      boolean person = seed % 2 == 0;
      String script = script(seed);
      int status = (person ? asked.person() : asked).run(script, "--write", file.toString());
      String told = "seed " + seed + ": " + asked.err();
      assertThat(status).as(told).isIn(0, 130);
      assertThat(asked.err()).as(told).doesNotContain("unexpectedly");
      if (Files.exists(file)) {
        ScenarioReader.read(file);
        written++;
        Files.delete(file);
      } else {
        assertThat(status).as(told).isEqualTo(130);
      }
      assertThat(left()).as(told).isEmpty();
    }
    // Otherwise little but the questions was tried.
    assertThat(written).isGreaterThan((int) (to - from) / 3);
  }

  private List<Path> left() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    }
  }

  private static String script(long seed) {
    SplittableRandom luck = new SplittableRandom(seed);
    int lines = luck.nextInt(5, 150);
    List<String> all = new ArrayList<>();
    for (int i = 0; i < lines; i++) {
      all.add(WORDS.get(luck.nextInt(WORDS.size())));
    }
    return String.join("\n", all) + "\n";
  }
}
