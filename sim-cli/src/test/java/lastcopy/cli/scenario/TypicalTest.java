package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastcopy.cli.scenario.yaml.Default;
import lastcopy.law.ByAge;
import lastcopy.law.Competing;
import lastcopy.law.Law;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Typical values that a file asks for by name: the numbers are those of the project's table, which
 * {@code lastcopy rates} prints.
 *
 * <p>Seen red: levels exchanged, the knock of a portable drive left out, a typical mishap before
 * one of the file's own.
 */
class TypicalTest {

  // First and fifth year, %. Portable by hand: 1 − (1 − p)² × 0.99; used: 1 − (1 − p)^1.5.
  @ParameterizedTest
  @CsvSource({
    "{typical: hard-disk}, 1.3, 2.2",
    "'{typical: hard-disk, level: low}', 0.7, 1.5",
    "'{typical: hard-disk, level: cautious}', 2, 7",
    "{typical: portable}, 3.5572693, 5.3080848",
    "'{typical: used-hard-disk, level: central}', 1.9436487, 3.2817829",
    "{typical: solid-state}, 0.5, 1",
  })
  void aTypicalLife(String fails, double first, double fifth) {
    Law law = Texts.model(Texts.withDrive("size: 8 TB, fails: " + fails)).fails();
    Law years = law instanceof Competing both ? both.laws().get(0) : law;
    List<Double> chances = ((ByAge) years).yearlyProbabilities();
    assertThat(chances).hasSize(10);
    assertThat(100 * chances.get(0)).isCloseTo(first, within(1e-6));
    assertThat(100 * chances.get(4)).isCloseTo(fifth, within(1e-6));
  }

  /**
   * A used drive that is four years old when it is bought: of those, 1 % more fail in its first 30
   * days, and none after them. Red if they are counted from new, or for good.
   */
  @Test
  void aUsedDriveHasAFirstMonthOfItsOwn() {
    String used = "size: 8 TB, fails: {typical: used-hard-disk}";
    Law bought = Texts.model(Texts.withDrive(used + ", age: 4 years, bought_at: 4 years")).fails();
    Law years = ((Competing) bought).laws().get(0);
    double age = 4 * 8_760;
    assertThat(bought.survival(age)).isEqualTo(years.survival(age));
    assertThat(bought.survival(age + 360) / years.survival(age + 360))
        .isCloseTo(Math.sqrt(0.99), within(1e-12));
    assertThat(bought.survival(age + 720) / years.survival(age + 720))
        .isCloseTo(0.99, within(1e-12));
    assertThat(bought.survival(9e4) / years.survival(9e4)).isCloseTo(0.99, within(1e-12));
    Law later = Texts.model(Texts.withDrive(used + ", age: 4 years")).fails();
    assertThat(later.survival(800) / years.survival(800)).isCloseTo(0.99, within(1e-12));
    assertThat(later.survival(9e4) / years.survival(9e4)).isCloseTo(0.99 * 0.99, within(1e-12));
    Law unsure =
        Texts.model(Texts.withDrive("size: 8 TB, fails: {typical: used-hard-disk, level: low}"))
            .fails();
    assertThat(((Competing) unsure).laws()).hasSize(2);
  }

  @Test
  void typicalMishapsOfAPlaceGiveWayToItsOwn() {
    String mishaps = "mishaps: {typical: business, theft: {rate: 4 per year}}}";
    Studio studio =
        Texts.studio(Texts.VALID.replaceFirst("mishaps: \\{fire: \\{rate: 1 %/year}}}", mishaps));
    List<Mishap> found = studio.layouts().get(0).workingCopy().place().mishaps();
    assertThat(found)
        .extracting(Mishap::id)
        .containsExactlyInAnyOrder("fire", "theft", "water", "surge");
    for (Mishap mishap : found) {
      double expected =
          mishap.id().equals("theft") ? 4 : -Math.log(mishap.id().equals("surge") ? .999 : .998);
      assertThat(yearly(mishap.rate())).isCloseTo(expected, within(1e-12));
    }
  }

  /** Half of deletions are noticed within 3 days, 95 of 100 within 90. */
  @Test
  void aTypicalDesk() {
    Desk usual = Texts.studio(Texts.VALID + "desk: {typical: usual}\n").desk();
    assertThat(yearly(usual.deletion().orElseThrow().rate()))
        .isCloseTo(-Math.log(.97), within(1e-12));
    Law noticed = usual.deletion().orElseThrow().noticed();
    assertThat(noticed.survival(3 * 24)).isCloseTo(0.5, within(0.01));
    assertThat(noticed.survival(90 * 24)).isCloseTo(0.05, within(0.005));
    assertThat(usual.malware().orElseThrow().noticed().survival(5 * 24))
        .isCloseTo(0.5, within(0.01));
    Desk own =
        Texts.studio(Texts.VALID + "desk: {typical: careful, malware: {rate: 9 per year}}\n")
            .desk();
    assertThat(yearly(own.malware().orElseThrow().rate())).isCloseTo(9, within(1e-9));
    assertThat(yearly(own.deletion().orElseThrow().rate()))
        .isCloseTo(-Math.log(.985), within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{typical: hard-disc} | Did you mean 'hard-disk'?",
        "{typical: hard-disk, level: unsur} | Did you mean 'unsure'?",
        "{typical: hard-disk, level: worst} | accepted: low, central, cautious",
        "{typical: hard-disk, mean: 5 years} | 'mean' beside 'typical'",
        "{level: low} | 'level' without 'typical'",
      })
  void mistakesAreTold(String fails, String told) {
    assertThatThrownBy(() -> Texts.model(Texts.withDrive("size: 8 TB, fails: " + fails)))
        .hasStackTraceContaining(told);
  }

  /** Hazards add: 1 − e^−H is 1 − 0.987 × 0.98 after a year. Red if a sum knows no typical life. */
  @Test
  void aTypicalLifeInASum() {
    String fails = "{sum: [{typical: hard-disk}, {by_age: [2 %/year]}]}";
    String text =
        Texts.withDrive("size: 8 TB, fails: " + fails + ", fails_off: {typical: portable}");
    assertThat(Texts.model(text).fails().cumulativeHazard(8_760))
        .isCloseTo(-Math.log(0.987 * 0.98), within(1e-12));
    assertThat(Texts.scenario(text).defaults())
        .contains(
            new Default("drives.desk", "fails", "hard-disk, central", Default.TYPICAL),
            new Default("drives.desk", "fails_off", "portable, central", Default.TYPICAL));
    assertThatThrownBy(() -> Texts.studio(Texts.withMain("drives: 1 x desk, wait: " + fails)))
        .hasStackTraceContaining("'typical', which is no key of");
  }

  /** A delay has no typical life. */
  @Test
  void onlyALifeIsTypical() {
    assertThatThrownBy(
            () -> Texts.studio(Texts.withMain("drives: 1 x desk, wait: {typical: hard-disk}")))
        .hasStackTraceContaining("'typical', which is no key of");
  }

  private static double yearly(Rate rate) {
    return 8_760 * rate.perHour();
  }
}
