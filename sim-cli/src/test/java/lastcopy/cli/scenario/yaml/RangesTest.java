package lastcopy.cli.scenario.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastcopy.cli.scenario.Texts;
import lastcopy.law.ByAge;
import lastcopy.law.Exponential;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Copy;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Unknown;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands in for a range in a possible world; expected values are worked out by hand. */
class RangesTest {

  /** The 95th percentile of the standard normal law (any table, such as Abramowitz, Stegun 26). */
  private static final double END = 1.6448536269514722;

  private static PossibleStudios studios(String text) {
    return Texts.scenario(text).studios();
  }

  private static PossibleStudios withFails(String fails) {
    return studios(Texts.withDrive("size: 8 TB, fails: " + fails));
  }

  private static Law fails(PossibleStudios studios, double z) {
    return main(studios.atAll(z)).driveSet().orElseThrow().model(0).fails();
  }

  private static Copy main(Studio studio) {
    return studio.layouts().get(0).workingCopy();
  }

  private static double perYear(Law law) {
    return law.hazard(0) * 8760;
  }

  /** 5th and 95th percentile at the ends; the median of the hazard is their geometric mean. */
  @Test
  void aYearlyChanceIsLognormalInItsHazard() {
    PossibleStudios studios = withFails("1..4 %/year");
    double low = -Math.log(0.99);
    double high = -Math.log(0.96);
    assertThat(perYear(fails(studios, -END))).isCloseTo(low, within(1e-14));
    assertThat(perYear(fails(studios, END))).isCloseTo(high, within(1e-14));
    assertThat(perYear(fails(studios, 0))).isCloseTo(Math.sqrt(low * high), within(1e-14));
    assertThat(studios.central().layouts()).isEqualTo(studios.atAll(0).layouts());
    assertThat(studios.unknowns())
        .containsExactly(new Unknown("drives.desk.fails", 1, 4, "%/year"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0.02 .. 0.5 per year       | drives.desk.fails       | 0.02   | 0.5
          {mean: 20000..80000 h}     | drives.desk.fails.mean  | 0.1095 | 0.438
          {mean: 2..4 years}         | drives.desk.fails.mean  | 0.25   | 0.5
          {times: 0.5..2, law: 0.2 per year} | drives.desk.fails.times | 0.1 | 0.4
          {times: 2..8, law: {times: 0.5, law: 0.1 per year}} | drives.desk.fails.times | 0.1 | 0.4
          {by_age: [0.1..0.2 per year, 0.3 per year]} | drives.desk.fails.by_age.1 | 0.1 | 0.2
          {sum: [0.1..0.2 per year, 0.3 per year]} | drives.desk.fails.sum.1 | 0.4 | 0.5
          """)
  void moreDeviateIsMoreHazard(String fails, String key, double least, double most) {
    PossibleStudios studios = withFails(fails);
    assertThat(studios.unknowns()).extracting(Unknown::key).containsExactly(key);
    assertThat(perYear(fails(studios, -END))).isCloseTo(least, within(1e-12));
    assertThat(perYear(fails(studios, END))).isCloseTo(most, within(1e-12));
  }

  /** A Weibull law's hazard is multiplied at every age. */
  @Test
  void anyLawIsStretched() {
    Law plain = new Weibull(1.5, 50_000, 0);
    PossibleStudios studios =
        withFails("{times: 0.5..2.5, law: {weibull: {shape: 1.5, scale: 50000 h}}}");
    assertThat(fails(studios, END).hazard(9_000))
        .isCloseTo(2.5 * plain.hazard(9_000), within(1e-15));
    assertThat(fails(studios, -END).cumulativeHazard(9_000))
        .isCloseTo(0.5 * plain.cumulativeHazard(9_000), within(1e-13));
  }

  /** The typical hazards of rates.md: 0.7 and 2 % in the first year, 3.5 and 12 % in the tenth. */
  @Test
  void unsureIsFromLowToCautious() {
    PossibleStudios studios = withFails("{typical: hard-disk, level: unsure}");
    List<Double> low = ((ByAge) fails(studios, -END)).yearlyProbabilities();
    List<Double> high = ((ByAge) fails(studios, END)).yearlyProbabilities();
    assertThat(low.get(0)).isCloseTo(0.007, within(1e-12));
    assertThat(low.get(9)).isCloseTo(0.035, within(1e-12));
    assertThat(high.get(0)).isCloseTo(0.02, within(1e-12));
    assertThat(high.get(9)).isCloseTo(0.12, within(1e-12));
    assertThat(studios.unknowns()).extracting(Unknown::key).containsExactly("drives.desk.fails");
  }

  @Test
  void everyPlaceOfARateMayHoldOne() {
    String text =
        Texts.VALID
            .replace("fire: {rate: 1 %/year}", "fire: {rate: 0.5..2 %/year}")
            .replace("tower: {rate: 1 %/year}", "tower: {rate: 0.1..1 %/year}")
            .replace(
                "drives:\n",
                "desk: {deletion: {rate: 5..50 %/year, size: 1 shoots, noticed: {mean: 2..20 days}},"
                    + " malware: {rate: 0.1..1 per year}}\ndrives:\n")
            .replace(
                "{place: studio, drives: 1 x desk}",
                "{place: studio, drives: 1 x desk, latent_defects: 1..2 %/year,"
                    + " scrub: {mean: 10..20 days}, wait: {mean: 1..2 days},"
                    + " spoils: {rate: 1..3 %/year}}")
            .replace(
                "{drives: 1 x desk, feed: {from: main, every: 1 day}}",
                "{service: {loses: 0.1..1 %/year}, feed: {from: main, every: 1 day,"
                    + " stops: 0.1..1 per year}}");
    PossibleStudios studios = studios(text);
    assertThat(studios.unknowns())
        .extracting(Unknown::key)
        .containsExactlyInAnyOrder(
            "places.studio.mishaps.fire.rate",
            "boxes.tower.rate",
            "desk.deletion.rate",
            "desk.deletion.noticed.mean",
            "desk.malware.rate",
            "layouts.pair.copies.main.latent_defects",
            "layouts.pair.copies.main.scrub.mean",
            "layouts.pair.copies.main.wait.mean",
            "layouts.pair.copies.main.spoils.rate",
            "layouts.pair.copies.far.service.loses",
            "layouts.pair.copies.far.feed.stops");
    Rate high = studios.atAll(END).desk().malware().orElseThrow().rate();
    assertThat(high.perHour() * 8760).isCloseTo(1, within(1e-12));
  }

  /** Two drives of one model, and two names of one place in the file, have one unknown. */
  @Test
  void onePlaceInTheFileIsOneUnknown() {
    String text =
        Texts.VALID
            .replace(
                "desk: {size: 8 TB, fails: 2 %/year}",
                "desk: {size: 8 TB, fails: &p 1..4 %/year}\n  other: {size: 8 TB, fails: *p}")
            .replace("{drives: 1 x desk, feed", "{drives: 1 x other, feed");
    PossibleStudios studios = studios(text);
    assertThat(studios.unknowns()).hasSize(1);
    Studio far = studios.at().apply(new double[] {1});
    assertThat(far.layouts().get(0).copies())
        .extracting(copy -> copy.driveSet().orElseThrow().model(0).fails())
        .allMatch(law -> law.equals(fails(studios, 1)));
  }

  @Test
  void aRangeWithoutWidthIsThePlainValue() {
    for (String plain : List.of("2 %/year", "0.02 per year", "{mean: 50000 h}")) {
      PossibleStudios studios = withFails(plain.replaceFirst("([0-9.]+)", "$1..$1"));
      assertThat(studios.isOne()).isTrue();
      assertThat(studios.central()).isEqualTo(withFails(plain).central());
    }
    assertThat(fails(withFails("{times: 1..1, law: 2 %/year}"), 0))
        .isEqualTo(Exponential.ofYearlyProbability(0.02));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          4..1 %/year           | 11:29 | a range of two ends above 0, the lower first
          0..1 %/year           | 11:29 | a range of two ends above 0, the lower first
          1..100 %/year         | 11:29 | a chance from 0 to below 100 %/year
          {mean: 3..2 h}        | 11:36 | a range of two ends above 0, the lower first
          {fixed: 1..2 days}    | 11:37 | a range only on a chance, a rate or a mean
          1..2 years            | 11:29 | a range only on a chance, a rate or a mean
          {times: 0..2, law: 2 %/year} | 11:37 | a number from 0.000001 to 1000000
          {times: 1..2 h, law: 2 %/year} | 11:37 | a factor on the hazard, such as 2 or 0.5..2.5
          {times: 1..2}         | 11:29 | law: 2 %/year
          {law: 2 %/year}       | 11:30 | times: 0.5..2.5 beside it
          {times: 1..2, law: 3 years}  | 11:48 | a law such as 2 %/year
          {times: 1..2, mean: 3 years, law: 1 %/year} | 11:43 | it below 'law'
          """)
  void mistakesAreToldWithTheirPlace(String fails, String place, String accepted) {
    List<String> problems = Texts.problems(Texts.withDrive("size: 8 TB, fails: " + fails));
    assertThat(problems)
        .anySatisfy(problem -> assertThat(problem).contains(accepted))
        .anySatisfy(problem -> assertThat(problem).contains(":" + place + ":"));
  }

  @Test
  void whereNoneMayStand() {
    assertThat(Texts.problems(Texts.VALID.replace("size: 96 GB", "size: 90..96 GB")))
        .singleElement()
        .asString()
        .contains("a range only on a chance, a rate or a mean");
    assertThat(Texts.problems(Texts.withMain("drives: 1 x desk, strain: 1..2"))).hasSize(1);
  }

  /** Also far above the upper end nothing absurd is simulated. */
  @Test
  void aWorldTooBusyIsRefused() {
    assertThat(Texts.problems(Texts.withDrive("size: 8 TB, fails: 1..5000 per year")))
        .singleElement()
        .asString()
        .contains("failures");
  }
}
