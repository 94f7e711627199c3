package lastcopy.cli.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import lastcopy.cli.scenario.Scenario;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.law.ByAge;
import lastcopy.law.Exponential;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The line to paste is read back as the law that was fitted, comments and all.
 *
 * <p>Seen red: the scale left in days, the hazard printed as a chance.
 */
class FailsLineTest {

  @TempDir Path folder;

  @Test
  void aConstantRate() throws IOException {
    String page = page("exit,failed\n" + "2,1\n4,0\n".repeat(6), "--unit", "years");
    // By hand from a table of chi-square: 5.226 / 72 and 23.685 / 72 failures a year.
    assertThat(page).contains("fails: 7..28 %/year");
    Exponential law = (Exponential) law(page);
    assertThat(law.mean()).isCloseTo(6.0 * 8_760, within(0.005 * 6 * 8_760));
  }

  /** So many failures a year that a chance says nothing. */
  @Test
  void aMean() throws IOException {
    Exponential law = (Exponential) law(page(FitCommandTest.NIST));
    assertThat(law.mean()).isCloseTo(777.1, within(0.5));
  }

  @Test
  void aLawThatRisesWithAge() throws IOException {
    StringBuilder records = new StringBuilder("exit,failed\n");
    for (int i = 1; i <= 12; i++) {
      records.append(1_500 + 40 * i).append(",1\n2000,0\n");
    }
    Weibull law = (Weibull) law(page(records.toString(), "--unit", "days"));
    assertThat(law.shape()).isBetween(4.0, 12.0);
    assertThat(law.scale()).isBetween(1_900.0 * 24, 2_200.0 * 24);
  }

  @Test
  void aRateForEachYearOfAge() throws IOException {
    StringBuilder records = new StringBuilder("exit,failed\n");
    for (int year = 1; year <= 4; year++) {
      String failed = (year - 0.5) + ",1\n";
      records.append(failed.repeat(year == 2 ? 60 : 4));
    }
    records.append("4,0\n".repeat(100));
    ByAge law = (ByAge) law(page(records.toString(), "--unit", "years"));
    assertThat(law.yearlyProbabilities()).hasSize(4);
    // By hand: 60 failures among 168 drives, on average half a year before its end.
    assertThat(law.yearlyProbabilities().get(1))
        .isCloseTo(1 - Math.exp(-60 / (168 - 30.0)), within(5e-4));
  }

  @Test
  void fewFailuresLetTheTypicalValueHelp() throws IOException {
    String page = page("exit,failed\n" + "4,0\n".repeat(9) + "3,1\n", "--unit", "years");
    assertThat(page).contains("Fewer than 5 failures are too few");
    Exponential law = (Exponential) law(page);
    double yearly = 1 - Math.exp(-8_760 / law.mean());
    assertThat(yearly).isBetween(0.012, 0.03);
  }

  /** Unless they are so many in so short a time that nothing typical can be meant. */
  @Test
  void whatIsFarFromTypicalIsNotHelped() throws IOException {
    String page = page("exit,failed\n" + "2,1\n".repeat(4) + "4,0\n", "--unit", "years");
    assertThat(page.replaceAll("\\s+", " ")).contains("too far from it for the one to help");
    Exponential law = (Exponential) law(page);
    assertThat(law.mean()).isCloseTo(3.0 * 8_760, within(100.0));
  }

  private String page(String records, String... options) throws IOException {
    FitRun run = FitRun.of(folder, records, options);
    assertThat(run.status()).as(run.err()).isZero();
    return run.out();
  }

  /** The range pastes in as one unknown; so does the one value, whose law this is. */
  private Law law(String page) throws IOException {
    List<String> block =
        page.lines()
            .dropWhile(line -> !line.startsWith("To paste"))
            .filter(line -> line.startsWith("    "))
            .toList();
    assertThat(block).filteredOn(line -> line.startsWith("    fails: ")).hasSize(1);
    assertThat(scenario(block).studios().unknowns()).hasSize(1);
    List<String> alone =
        block.stream()
            .dropWhile(line -> !line.startsWith("    # one value alone: "))
            .map(line -> line.replace("# one value alone: ", "").replace("    #   ", "      "))
            .toList();
    return lawOf(scenario(alone).studio());
  }

  private Scenario scenario(List<String> block) throws IOException {
    String scenario =
        """
        lastcopy: 1
        studio: A
        years: 5
        footage:
          shoots: {every: 7 days, size: 96 GB}
        drives:
          disk:
            size: 8 TB
        """
            + block.stream().collect(Collectors.joining("\n", "", "\n"))
            + """
            layouts:
              one:
                copies:
                  main: {place: studio, drives: 1 x disk}
            """;
    Path file = Files.writeString(folder.resolve("scenario.yaml"), scenario);
    try {
      return ScenarioReader.read(file);
    } catch (ScenarioException e) {
      throw new AssertionError(scenario, e);
    }
  }

  private static Law lawOf(Studio studio) {
    return studio.layouts().get(0).copies().get(0).driveSet().orElseThrow().model(0).fails();
  }
}
