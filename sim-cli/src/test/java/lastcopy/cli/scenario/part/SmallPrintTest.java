package lastcopy.cli.scenario.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.cli.scenario.Texts;
import lastcopy.law.ByAge;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values that few files have, as they arrive, and slips in them; by hand. */
class SmallPrintTest {

  private static final String FED = "feed: {from: main, every: 1 day";

  private static List<String> problems(String text) {
    return Texts.problems(text);
  }

  @Test
  void anOwnMishapBeforeTheTypicalOnesReplacesItsLike() {
    String own = "mishaps: {theft: {rate: 4 per year}, typical: business}}";
    Studio studio = Texts.studio(Texts.VALID.replace("mishaps: {fire: {rate: 1 %/year}}}", own));
    List<Mishap> found = studio.layouts().get(0).workingCopy().place().mishaps();
    assertThat(found)
        .extracting(Mishap::id)
        .startsWith("theft")
        .containsExactlyInAnyOrder("fire", "theft", "water", "surge");
    assertThat(found.get(0).rate().perHour()).isEqualTo(4.0 / 8_760);
  }

  @Test
  void aDeletionIsOfBytesOrOfShoots() {
    assertThat(deleted("96 GB")).isEqualTo(new Desk.Bytes(96e9));
    assertThat(deleted("2 shoots")).isEqualTo(new Desk.ShootCount(2));
    assertThat(deleted("0.5 shoots")).isEqualTo(new Desk.ShootCount(0.5));
  }

  private static Desk.Amount deleted(String size) {
    String desk = "desk: {deletion: {rate: 1 %/year, size: " + size + "}}\n";
    return Texts.studio(Texts.VALID + desk).desk().deletion().orElseThrow().size();
  }

  @Test
  void powerIsInWattsAndWhatIsCarriedTakesHours() {
    assertThat(Texts.model(Texts.withDrive("size: 8 TB, fails: 2 %/year, power: 6 W")).powerWatts())
        .hasValue(6);
    Copy far =
        Texts.studio(
                Texts.withFar(
                    "drives: 1 x desk, " + FED + ", carried: {takes: 2 days, rate: 100 MB/s}}"))
            .layouts()
            .get(0)
            .copies()
            .get(1);
    assertThat(far.feed().orElseThrow().carried().orElseThrow().takesHours()).isEqualTo(48);
  }

  @ParameterizedTest
  @CsvSource({"0, false", "1, true", "1000, true", "1001, false", "100000, false"})
  void aThousandDrivesAreNotTooMany(int drives, boolean accepted) {
    List<String> told =
        problems(Texts.withMain("drives: " + drives + " x desk, arrangement: shelf"));
    assertThat(told.isEmpty()).as(told.toString()).isEqualTo(accepted);
    assertThat(told).allMatch(problem -> problem.contains("; from 1 to 1000 drives."));
  }

  /** A copy is no source of itself, and not offered as one. */
  @Test
  void aCopyIsNotFedFromItself() {
    assertThat(problems(Texts.VALID.replace("from: main", "from: far")))
        .containsExactly(
            "demo.yaml:16:44: found 'far', which is this copy itself; accepted: main.");
    assertThat(problems(Texts.VALID.replace("from: main", "from: maim")))
        .containsExactly(
            "demo.yaml:16:44: found 'maim', which is no copy of this layout; accepted: main. Did you"
                + " mean 'main'?");
  }

  @Test
  void aLayoutHasACopy() {
    String text = Texts.VALID.substring(0, Texts.VALID.indexOf("    copies:"));
    assertThat(problems(text + "    copies: {}\n"))
        .containsExactly("demo.yaml:14:13: found no copy; accepted: at least one copy.");
    String none = Texts.VALID.substring(0, Texts.VALID.indexOf("layouts:")) + "layouts: {}\n";
    assertThat(problems(none))
        .containsExactly("demo.yaml:12:10: found no layout; accepted: at least one layout.");
  }

  /** Footage on hand stands on a copy; where there is none on hand, all may start empty. */
  @Test
  void footageOnHandStandsSomewhere() {
    String empty =
        Texts.VALID
            .replace("main: {", "main: {starts: empty, ")
            .replace("far: {", "far: {starts: empty, ");
    assertThat(problems(empty)).isEmpty();
    assertThat(problems(empty.replace("footage:\n", "footage:\n  on_hand: 1 TB\n")))
        .singleElement()
        .asString()
        .contains("layout 'pair', where no copy holds the footage on hand");
  }

  @Test
  void drivesAreReadThroughNotTooOften() {
    String set = "drives: 1 x desk, latent_defects: 1 %/year, scrub: ";
    assertThat(problems(Texts.withMain(set + "30 days"))).isEmpty();
    assertThat(problems(Texts.withMain(set + "0.001 s")))
        .singleElement()
        .asString()
        .contains(" scrubs in 5 years");
  }

  /** At the far end 200 a year: a chance of 1 in all digits, which is the end of the range only. */
  @Test
  void aRangeOfRatesMayReachBeyondWhatANumberTellsFromOne() {
    assertThat(problems(aged("1..200 per year"))).isEmpty();
    assertThat(problems(aged("200 per year")))
        .singleElement()
        .asString()
        .contains("a chance of less than 100 % within a year");
    Studio far = Texts.scenario(aged("1..200 per year")).studios().atAll(4);
    ByAge life =
        (ByAge) far.layouts().get(0).workingCopy().driveSet().orElseThrow().model(0).fails();
    assertThat(life.yearlyProbabilities()).containsExactly(0.02, Math.nextDown(1.0));
  }

  /** A mean of 10,000 h that may be 37 h at four deviates, of which 1,000 years have 237,000. */
  @Test
  void otherYearsAreHeldAgainstTheEndsOfRanges() {
    String range = "size: 8 TB, fails: {mean: 1000..100000 h}";
    PossibleStudios studios = Texts.scenario(Texts.withDrive(range)).studios();
    assertThat(ScenarioReader.excess(studios.withYears(5))).isEmpty();
    assertThat(ScenarioReader.excess(studios.withYears(1_000)))
        .hasValueSatisfying(words -> assertThat(words).contains(" failures in 1,000 years"));
    PossibleStudios sure =
        Texts.scenario(Texts.withDrive("size: 8 TB, fails: {mean: 10000 h}")).studios();
    assertThat(ScenarioReader.excess(sure.withYears(1_000))).isEmpty();
  }

  private static String aged(String chance) {
    return Texts.withDrive("size: 8 TB, fails: {by_age: [2 %/year, " + chance + "]}");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "studio: Reed Bank Films | studio: \"\" | found nothing; accepted: a title.",
        "rate: 1 %/year}}} | rate: often}}} | found 'often'; accepted: a chance such as 2 %/year",
        "years: 5 | years: five | found 'five'; accepted: a number above 0 and at most 1000.",
      })
  void noValueAtAll(String right, String wrong, String told) {
    assertThat(Texts.VALID).contains(right);
    assertThat(problems(Texts.VALID.replace(right, wrong)))
        .singleElement()
        .asString()
        .contains(told);
  }
}
