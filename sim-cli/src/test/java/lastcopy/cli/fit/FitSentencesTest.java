package lastcopy.cli.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the page says of records, where it is true and where it would not be. */
class FitSentencesTest {

  @TempDir Path folder;

  private String words(String records, String... options) throws IOException {
    FitRun run = FitRun.of(folder, records, options);
    assertThat(run.status()).as(run.err()).isZero();
    return run.out().replaceAll("\\s+", " ");
  }

  private static String years(int running, double... failed) {
    StringBuilder records = new StringBuilder("exit,failed\n");
    for (double age : failed) {
      records.append(age).append(",1\n");
    }
    return records.append("2,0\n".repeat(running)).toString();
  }

  /** Neither 99.9 nor 99.99 % is certain. */
  @ParameterizedTest
  @CsvSource({"95%, 95", "99.9%, 99.9", "99.99%, 99.99"})
  void howSureIsToldAsItWasAskedFor(String confidence, String told) throws IOException {
    assertThat(words(years(10), "--unit", "years", "--confidence", confidence))
        .contains("(" + told + " % sure)")
        .contains("In brackets: " + told + " % intervals.");
  }

  /** Ten drives for two years each, less what those that failed did not run. */
  @Test
  void drivesTheirTimeAndTheirFailuresAreCounted() throws IOException {
    assertThat(words(years(10), "--unit", "years"))
        .contains("10 drives were watched for 20 drive-years in all; none failed.")
        .contains("No failure among 10 drives in 20 drive-years: at most 14 % a year")
        .doesNotContain("would be no surprise", "Law parameters");
    assertThat(words(years(9, 1), "--unit", "years"))
        .contains("10 drives were watched for 19 drive-years in all; 1 of them failed.")
        .contains("That is 5.1 % a year; with one failure anything from")
        .contains("1 failure in 19 drive-years of records.csv")
        .doesNotContain("No failure among");
    assertThat(words(years(8, 1, 1.5), "--unit", "years"))
        .contains("18.5 drive-years in all; 2 of them failed.")
        .contains("; with 2 failures anything from")
        .contains("2 failures in 18.5 drive-years of records.csv");
    assertThat(words("exit,failed\n1,0\n", "--unit", "years"))
        .contains("1 drive was watched for 1 drive-year in all; none failed.")
        .contains("No failure among 1 drive in 1 drive-year: at most");
  }

  /** Of 100 failures the rate is known to within a fifth. */
  @Test
  void howFarTheRateIsKnownIsToldWhereItIsFar() throws IOException {
    assertThat(words(years(8, 1, 1.5), "--unit", "years"))
        .contains("would be no surprise: the rate is known only to within a factor of");
    assertThat(words("exit,failed\n" + "1,1\n1,0\n".repeat(100), "--unit", "years"))
        .contains("would be no surprise.")
        .doesNotContain("known only to within");
  }

  @Test
  void olderDrivesFailMoreOnlyWhereTheRecordsSaySo() throws IOException {
    String old = "exit,failed\n" + "4,1\n4.5,1\n5,1\n5.5,1\n".repeat(5);
    String young = "exit,failed\n" + "0.01,1\n0.02,1\n0.1,1\n5,1\n".repeat(5);
    assertThat(words(old, "--unit", "years"))
        .contains("Older drives fail more (Weibull shape", "; 1 would be no difference).")
        .doesNotContain("Younger", "do not say");
    assertThat(words(young, "--unit", "years"))
        .contains("Younger drives fail more (Weibull shape")
        .doesNotContain("Older drives", "do not say");
    assertThat(words(years(8, 1, 1.5), "--unit", "years"))
        .contains("Whether older drives fail more these records do not say (Weibull shape")
        .doesNotContain("Older drives fail", "Younger");
    assertThat(words(years(9, 1), "--unit", "years")).doesNotContain("Weibull shape");
  }

  @Test
  void whatIsTypicalIsToldUpToNineteenFailures() throws IOException {
    String nineteen = "exit,failed\n" + "9,0\n".repeat(100) + "5,1\n".repeat(19);
    assertThat(words(nineteen, "--unit", "years")).contains("Typical hard disks of these ages");
    assertThat(words(nineteen + "5,1\n", "--unit", "years")).doesNotContain("Typical hard disks");
    assertThat(words(nineteen, "--unit", "years", "--kind", "none")).doesNotContain("Typical");
  }

  @Test
  void recordsThatAreFarFromTypicalAreNotMixedWithIt() throws IOException {
    String bad = "exit,failed\n" + "0.1,1\n".repeat(12);
    assertThat(words(bad, "--unit", "years"))
        .contains("These records are too far from it for the one to help the other.")
        .doesNotContain("With that as prior");
    assertThat(words(years(10), "--unit", "years"))
        .contains("With that as prior (a Gamma law of the rate,")
        .doesNotContain("too far from it");
  }

  @Test
  void cautionIsOfTheRecordsAtHand() throws IOException {
    String usual = words(years(9, 1), "--unit", "years");
    assertThat(usual)
        .contains("Nothing is known of ages above 2 years nor of other models, and a few drives")
        .doesNotContain("found at checks", "before their records began");
    assertThat(words("entry,exit,failed\n1,3,0\n0,2,1\n", "--unit", "years"))
        .contains("Drives that ran before their records began count from then on:")
        .contains("Nothing is known of ages above 3 years")
        .doesNotContain("found at checks");
    assertThat(words("last_seen_running,exit,failed\n1,2,1\n,2,0\n", "--unit", "years"))
        .contains("Some failures were found at checks: when between two checks is not known")
        .doesNotContain("before their records began");
  }

  private static String groups(String a, String b) {
    return "model,exit,failed\n" + a.replace(";", "\n") + b.replace(";", "\n");
  }

  @Test
  void groupsAreComparedAsFarAsTheyCanBe() throws IOException {
    assertThat(words(groups("a,1,0;", "b,2,0;"), "--unit", "years"))
        .contains("Nothing failed in any group, so they cannot be compared.")
        .contains("# all groups together, 0 failures in 3 drive-years of records.csv")
        .contains("All groups together: ");
    assertThat(words(groups("a,1,1;a,2,1;a,3,0;", "b,1,1;b,2,1;b,3,0;"), "--unit", "years"))
        .contains("The groups may well fail alike: luck alone often parts them so far (log-rank")
        .contains("chi-square 0, 1 degree of freedom, p = 1).")
        .doesNotContain("may differ", "do not fail alike");
    String late = "a,1,1;a,2,1;a,3,1;a,4,1;a,5,1;";
    String later = "b,4,1;b,5,1;b,6,1;b,7,1;b,8,1;";
    assertThat(words(groups(late, later), "--unit", "years"))
        .contains("The groups may differ: luck alone would seldom part them so far (log-rank")
        .doesNotContain("may well", "do not fail alike");
    assertThat(words("model,last_seen_running,exit,failed\na,1,2,1\nb,,2,0\n", "--unit", "years"))
        .contains("The groups are not compared: that needs the ages at failure, and some failures");
    String one = words(years(9, 1), "--unit", "years");
    assertThat(one).doesNotContain("group", "Group");
  }

  @Test
  void lawsAreDetails() throws IOException {
    String few = years(8, 1, 1.5);
    assertThat(words(few, "--unit", "years"))
        .doesNotContain("AIC", "A scenario has no lognormal law");
    assertThat(words(few, "--unit", "years", "--details"))
        .contains("Law parameters AIC (less is better)")
        .contains("constant mean 9.2 years")
        .contains("Weibull shape")
        .contains("lognormal sigma")
        .contains("constant by year of age 2 rates")
        .contains("A scenario has no lognormal law; the others can be written there.");
  }
}
