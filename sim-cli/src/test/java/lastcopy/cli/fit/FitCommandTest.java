package lastcopy.cli.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the command prints and writes.
 *
 * <p>Seen red: days taken for hours, the record's begin ignored, the prior left out, "at most" of
 * the two-sided limit.
 */
class FitCommandTest {

  /** NIST/SEMATECH e-Handbook of Statistical Methods, 8.2.2.1: hours. */
  static final String NIST =
      "exit,failed\n54,1\n187,1\n216,yes\n240,1\n244,1\n335,1\n361,1\n373,1\n375,1\n386,1\n"
          + "500,0\n".repeat(9)
          + "500,no\n";

  @TempDir Path folder;

  // NIST/SEMATECH e-Handbook 8.4.1.3, and R 4.2's survival 3.5-3 beyond its digits.
  @Test
  void jsonIsAsTheContractShows() throws IOException {
    JsonNode page = FitRun.of(folder, NIST, "--json", "-").json();
    assertThat(page.path("format").asText()).isEqualTo("lastcopy-fit/1");
    assertThat(page.path("unit").asText()).isEqualTo("hours");
    JsonNode all = page.path("groups").path(0);
    assertThat(all.path("group").asText()).isEqualTo("all");
    assertThat(all.path("records").asInt()).isEqualTo(20);
    assertThat(all.path("failures").asInt()).isEqualTo(10);
    assertThat(all.path("time_at_risk").asDouble()).isEqualTo(7771);
    JsonNode weibull = all.path("weibull");
    assertThat(weibull.path("shape").asDouble()).isCloseTo(1.720797, within(5e-7));
    assertThat(weibull.path("scale").asDouble()).isCloseTo(606.5276, within(5e-5));
    assertThat(weibull.path("log_likelihood").asDouble()).isCloseTo(-75.13462, within(5e-6));
    assertThat(weibull.path("scale_low").asDouble()).isCloseTo(437.5567, within(1e-3));
    JsonNode exponential = all.path("exponential");
    assertThat(exponential.path("mean").asDouble()).isCloseTo(777.1, within(1e-9));
    assertThat(exponential.path("log_likelihood").asDouble()).isCloseTo(-76.55569, within(5e-6));
    JsonNode first = all.path("survival").path(0);
    assertThat(first.path("age").asDouble()).isEqualTo(54);
    assertThat(first.path("at_risk").asInt()).isEqualTo(20);
    assertThat(first.path("survival").asDouble()).isCloseTo(0.95, within(1e-12));
    assertThat(first.path("standard_error").asDouble()).isCloseTo(0.04873397, within(5e-9));
    assertThat(first.path("low").asDouble()).isCloseTo(0.6947432, within(5e-8));
    assertThat(first.path("high").asDouble()).isCloseTo(0.9928022, within(5e-8));
    assertThat(all.path("survival")).hasSize(10);
  }

  // −ln 0.05 / 20 as a chance, by hand: 13.9 %. The prior by hand: three years of age, of which the
  // hazards per year are 0.70, 0.80, 1.01 % and 2.02, 3.05, 5.13 %.
  @Test
  void noFailureIsToldAsAtMostAndBesideTheTypicalValue() throws IOException {
    String nine = "exit,failed\n3,0\n3,0\n3,0\n3,0\n" + "1.6,0\n".repeat(5);
    FitRun run = FitRun.of(folder, nine, "--unit", "years");
    assertThat(run.status()).isZero();
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("No failure among 9 drives in 20 drive-years: at most 14 % a year (95 % sure)")
        .contains("Typical hard disks of these ages (an assumption) would have had 0.27 failures")
        .contains("With that as prior (a Gamma law of the rate")
        .contains("fails: 1.");
    JsonNode all = FitRun.of(folder, nine, "--unit", "years", "--json", "-").json();
    JsonNode typical = all.path("groups").path(0).path("typical");
    double low = 9 * -Math.log(1 - .007) + (4 + 5 * .6) * -Math.log(1 - .008) - 4 * Math.log(.99);
    assertThat(typical.path("failures_low").asDouble()).isCloseTo(low, within(1e-12));
    double events = typical.path("prior_events").asDouble();
    double time = typical.path("prior_time").asDouble();
    assertThat(typical.path("posterior_rate").asDouble())
        .isCloseTo(events / (time + 20), within(1e-12));
    FitRun alone = FitRun.of(folder, nine, "--unit", "years", "--kind", "none");
    assertThat(alone.out()).contains("no rate can be told").doesNotContain("fails:");
  }

  @Test
  void datesGiveTheSameAsAges() throws IOException {
    String dates =
        """
        in_service,from,until,last_seen_running,failed
        2020-01-01,,2022-01-01,,yes
        2020-01-01,2021-01-01,2023-01-01,2022-06-01,yes
        2019-01-01,2020-07-01,2025-01-01,,no
        """;
    String ages = "entry,exit,last_seen_running,failed\n0,731,,1\n366,1096,882,1\n547,2192,,0\n";
    JsonNode ofDates = FitRun.of(folder, dates, "--unit", "days", "--json", "-").json();
    JsonNode ofAges = FitRun.of(folder, ages, "--unit", "days", "--json", "-").json();
    assertThat(ofDates).isEqualTo(ofAges);
    assertThat(ofDates.path("groups").path(0).path("survival_estimate").asText())
        .isEqualTo("turnbull");
    JsonNode hours = FitRun.of(folder, dates, "--json", "-").json();
    assertThat(hours.path("groups").path(0).path("time_at_risk").asDouble())
        .isCloseTo(
            24 * ofDates.path("groups").path(0).path("time_at_risk").asDouble(), within(1e-6));
  }

  /** The log-rank test of two groups, as in the tests of the engine. */
  @Test
  void groupsAreCompared() throws IOException {
    StringBuilder two = new StringBuilder("model,exit,failed\n");
    String mp = "6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+";
    String placebo = "1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23";
    for (String t : mp.split(" ", -1)) {
      two.append("a,").append(t.replace("+", "")).append(t.endsWith("+") ? ",0\n" : ",1\n");
    }
    for (String t : placebo.split(" ", -1)) {
      two.append("b,").append(t).append(",1\n");
    }
    FitRun run = FitRun.of(folder, two.toString(), "--unit", "months");
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("The groups do not fail alike")
        .contains("chi-square 16.8, 1 degree of freedom, p = below 0.0001")
        .contains("# a, 9 failures");
    JsonNode page = FitRun.of(folder, two.toString(), "--json", "-").json();
    assertThat(page.path("comparison").path("chi_square").asDouble())
        .isCloseTo(16.7929409892, within(1e-9));
    assertThat(page.path("groups")).hasSize(3);
    assertThat(page.path("groups").path(1).path("group").asText()).isEqualTo("a");
  }

  /** Whatever the records, no line is longer than a terminal and no number is none. */
  @Test
  void thePageFitsATerminal() throws IOException {
    String few = "entry,exit,failed\n0,100,1\n";
    String same = "exit,failed\n" + "100,1\n".repeat(8);
    String many = "exit,failed,group\n";
    for (int i = 1; i <= 300; i++) {
      many +=
          400 * i + "," + (i % 3 == 0 ? 1 : 0) + ",a-rather-long-name-of-a-group-" + i % 4 + "\n";
    }
    for (String records : new String[] {NIST, few, same, many}) {
      FitRun run = FitRun.of(folder, records, "--details");
      assertThat(run.status()).as(run.err()).isZero();
      assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
      assertThat(run.out()).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("null");
    }
  }

  /** Few records and many, tied, late, found at checks, in groups that may be empty of failures. */
  @Test
  void recordsOfAnySortAreToldInNumbers() throws IOException {
    Random random = new Random(3);
    for (int i = 0; i < 60; i++) {
      FitRun run = FitRun.of(folder, anySort(random), "--unit", "years", "--details");
      assertThat(run.status()).as(run.err()).isZero();
      assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
      assertThat(run.out()).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("null");
      assertThat(run.out()).contains("fails: ");
    }
    Path charts = folder.resolve("charts");
    for (int i = 0; i < 2; i++) {
      FitRun run = FitRun.of(folder, anySort(random), "--charts", charts.toString());
      assertThat(run.status()).as(run.err()).isZero();
    }
  }

  private static String anySort(Random random) {
    StringBuilder records = new StringBuilder("entry,last_seen_running,exit,failed,model\n");
    int drives = 1 + random.nextInt(random.nextBoolean() ? 4 : 40);
    for (int i = 0; i < drives; i++) {
      double entry = random.nextInt(3) == 0 ? random.nextInt(5) : 0;
      double exit = entry + 0.5 + random.nextInt(8);
      boolean failed = random.nextInt(3) == 0;
      boolean seen = failed && random.nextInt(4) == 0;
      records.append(
          String.format(
              Locale.ROOT,
              "%.2f,%s,%.2f,%s,m%d\n",
              entry,
              seen ? String.format(Locale.ROOT, "%.2f", Math.max(entry, exit - 1)) : "",
              exit,
              failed ? "yes" : "no",
              random.nextInt(3)));
    }
    return records.toString();
  }

  @Test
  void whatIsReadIsNeverReplacedAndChartsAreNamed() throws IOException {
    Path records = Files.writeString(folder.resolve("r.csv"), NIST);
    FitRun over = FitRun.ofFile(records, "--json", records.toString(), "--force");
    assertThat(over.status()).isEqualTo(2);
    assertThat(records).hasContent(NIST.strip());
    Path charts = folder.resolve("charts");
    FitRun run = FitRun.ofFile(records, "--charts", charts.toString());
    assertThat(run.status()).isZero();
    assertThat(run.err()).contains("survival.png").contains("probability-plot.svg");
    assertThat(charts.resolve("survival.png")).isNotEmptyFile();
  }

  @Test
  void aWrongOptionIsTold() throws IOException {
    assertThat(FitRun.of(folder, NIST, "--unit", "weeks").status()).isEqualTo(2);
    assertThat(FitRun.of(folder, NIST, "--kind", "floppy").status()).isEqualTo(2);
    FitRun sure = FitRun.of(folder, NIST, "--confidence", "100%");
    assertThat(sure.status()).isEqualTo(2);
    assertThat(sure.err())
        .contains("Invalid value for option '--confidence'", "'100%' must be below 100%");
    assertThat(FitRun.ofFile(folder.resolve("none.csv")).err()).contains("no such file of records");
  }

  /**
   * A hundred thousand drives in three groups, a third of them late, take some 2 s of processor
   * time cold. Red if anything is quadratic, or if a peak is climbed by rounding errors.
   */
  @Test
  void manyRecordsAreQuick() throws IOException {
    Random random = new Random(1);
    StringBuilder records = new StringBuilder("entry,exit,failed,model\n");
    for (int i = 0; i < 100_000; i++) {
      double entry = i % 3 == 0 ? random.nextInt(20_000) : 0;
      double end = entry + 1_000 + 40_000 * random.nextDouble();
      double life = entry + 300_000 * Math.pow(-Math.log(random.nextDouble()), 0.8);
      records.append(
          String.format(
              Locale.ROOT,
              "%.1f,%.1f,%d,m%d%n",
              entry,
              Math.min(life, end),
              life < end ? 1 : 0,
              i % 3));
    }
    Path file = Files.writeString(folder.resolve("many.csv"), records);
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    FitRun run = FitRun.ofFile(file);
    long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("100,000 drives were watched");
    assertThat(took / 1e9).as("seconds").isLessThan(10);
  }
}
