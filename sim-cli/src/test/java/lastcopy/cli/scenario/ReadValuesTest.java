package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastcopy.cli.scenario.yaml.Default;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers of a file arrive as they are written, in hours, bytes and money; by hand. */
class ReadValuesTest {

  private static final String FEED = "feed: {from: main, every: 1 day}";

  /** 100 days are 2,400 hours. */
  @Test
  void footageAgesOutAndHasAWorth() {
    Studio studio =
        Texts.studio(
            Texts.withFootage(
                "shoots: {every: 7 days, size: 96 GB}\n  keep_for: 100 days\n  worth: 900 per shoot"));
    assertThat(studio.footage().keepHours()).hasValue(2_400);
    assertThat(studio.footage().worthPerShoot()).hasValue(900);
    assertThat(studio.footage().shoots().everyHours()).isEqualTo(168);
    assertThat(studio.footage().shoots().sizeBytes()).isEqualTo(96e9);
    assertThat(Texts.studio(Texts.VALID).footage().keepHours()).isEmpty();
    assertThat(Texts.studio(Texts.VALID).footage().worthPerShoot()).isEmpty();
  }

  @Test
  void cardsAreKeptAndMoneyHasAName() {
    String text =
        Texts.VALID
            .replace("    copies:\n", "    cards: {keep: 7 days}\n    copies:\n")
            .replace("years: 5", "years: 5\ncurrency: CHF");
    assertThat(Texts.studio(text).layouts().get(0).cardsKeepHours()).hasValue(168);
    assertThat(Texts.studio(text).currency()).hasValue("CHF");
    assertThat(Texts.studio(Texts.VALID).layouts().get(0).cardsKeepHours()).isEmpty();
    assertThat(Texts.studio(Texts.VALID).currency()).isEmpty();
  }

  /** Three days are 72 hours. */
  @Test
  void aServiceHasItsPricesAndItsTime() {
    Copy far =
        Texts.far(
            Texts.withFar(
                "service: {loses: 1 %/year, price: 5 per TB per month, retrieval: 20 per TB,"
                    + " restores_in: 3 days}, costs: {once: 30, per_year: 12}, "
                    + FEED));
    Medium.Service service = (Medium.Service) far.medium();
    assertThat(service.pricePerTbMonth()).hasValue(5);
    assertThat(service.retrievalPerTb()).hasValue(20);
    assertThat(service.restoresInHours()).isEqualTo(72);
    assertThat(far.costs().once()).isEqualTo(30);
    assertThat(far.costs().perYear()).isEqualTo(12);
  }

  /** What a place says itself stands in the place of the typical value of the same mishap. */
  @Test
  void anOwnRateReplacesTheTypicalOne() {
    String typical =
        Texts.VALID.replace("mishaps: {fire: {rate: 1 %/year}}", "mishaps: {typical: home}");
    List<Mishap> all = Texts.main(typical).place().mishaps();
    String own = typical.replace("{typical: home}", "{typical: home, fire: {rate: 9 %/year}}");
    List<Mishap> some = Texts.main(own).place().mishaps();
    assertThat(all).extracting(Mishap::id).contains("fire", "theft").doesNotHaveDuplicates();
    assertThat(some)
        .extracting(Mishap::id)
        .containsExactlyInAnyOrderElementsOf(all.stream().map(Mishap::id).toList());
    assertThat(some)
        .filteredOn(mishap -> mishap.id().equals("fire"))
        .singleElement()
        .satisfies(
            fire ->
                assertThat(fire.rate().perHour() * 8_760)
                    .isCloseTo(-Math.log(0.91), within(1e-12)));
  }

  /** Each default that is used is told with where it stands. */
  @ParameterizedTest
  @CsvSource({
    "desk.deletion, noticed, 0 h",
    "desk.malware, noticed, 0 h",
    "layouts.pair.main, rebuild_reads, all",
    "footage.shoots, spacing, even",
    "places.studio.mishaps.fire, takes, 1",
  })
  void defaultsAreTold(String where, String key, String value) {
    String text =
        Texts.withMain("place: studio, drives: 2 x desk, arrangement: mirror")
            .replace(
                "places:",
                "desk:\n  deletion: {rate: 1 %/year, size: 1 shoots}\n  malware: {rate: 1 %/year}\nplaces:");
    assertThat(Texts.scenario(text).defaults())
        .filteredOn(one -> one.key().equals(key) && one.where().startsWith(where))
        .isNotEmpty()
        .extracting(Default::value)
        .containsOnly(value);
  }

  @Test
  void aLayoutWithoutCopiesIsAMistake() {
    String text = Texts.VALID.substring(0, Texts.VALID.indexOf("      main:"));
    assertThat(Texts.problems(text.replace("copies:\n", "copies: {}\n")))
        .singleElement()
        .asString()
        .contains("accepted: ");
  }

  @Test
  void aNameIsNotEmpty() {
    assertThat(Texts.problems(Texts.VALID.replace("  tower: {rate", "  \"\": {rate")))
        .anySatisfy(
            problem -> assertThat(problem).contains("an empty name").endsWith("accepted: a name."));
  }

  /** What is absurdly much at one end of a range is refused, though its middle is not. */
  @Test
  void theEndsOfARangeAreHeldAgainstTheLimits() {
    assertThat(Texts.problems(Texts.withDrive("size: 8 TB, fails: {mean: 100..1000 h}"))).isEmpty();
    assertThat(Texts.problems(Texts.withDrive("size: 8 TB, fails: {mean: 0.001..1000000 h}")))
        .singleElement()
        .asString()
        .contains(" failures in 5 years");
  }
}
