package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the engine cannot do yet is refused with one sentence. */
class NotYetTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          arrangement: shelf                              | a shelf of drives
          latent_defects: {mean: 9000 h}                  | latent defects
          scrub: 30 days                                  | scrubbing
          read_errors: 1e-15                              | read errors
          batch: {name: spring, spread: 0.5}              | drives of one batch
          strain: 2                                       | strain on the other drives
          spoils: {rate: 2 %/year, tried_every: 90 days}  | a copy that spoils
          replace_at: 4 years                             | planned replacement
          noticed: {mean: 1..4 days}                      | a range of a rate
          """)
  void ofACopy(String key, String what) {
    expectRefusal(Texts.withMain("drives: 1 x desk, " + key), what);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          size: 8 TB, fails: 2 %/year, fails_off: 1 %/year | failures while powered off
          size: 8 TB, fails: 2 %/year, power: 6 W          | the cost of power
          size: 8 TB, fails: 1..4 %/year                   | a range of a rate
          size: 8 TB, fails: 0.01 .. 0.04 per year         | a range of a rate
          """)
  void ofADrive(String drive, String what) {
    expectRefusal(Texts.withDrive(drive), what);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          feed: {from: main, every: 1 day, stops: 0.5 per year}                | a feed that stops
          feed: {from: main, every: 1 day, visits: 12 h}                       | visits of drives that take turns
          feed: {from: main}, rotation: {drives: 2, every: 7 days}             | drives that take turns
          """)
  void ofAFeed(String keys, String what) {
    expectRefusal(Texts.withFar("drives: 1 x desk, " + keys), what);
  }

  @Test
  void ofTheRest() {
    String desk = "desk: {deletion: {rate: 3 %/year, size: 1 shoots, noticed: 3 days}}\n";
    expectRefusal(Texts.VALID + desk, "deletion by mistake");
    expectRefusal(Texts.VALID + "desk: {malware: {rate: 1 %/year}}\n", "malware");
    expectRefusal(Texts.withFootage("ingest: 5 TB/year\n  keep_for: 4 years"), "ages out");
    expectRefusal(
        Texts.VALID.replace("    copies:", "    cards: {keep: 7 days}\n    copies:"), "cards");
  }

  @Test
  void whatHasNoEffectIsAccepted() {
    String main =
        "drives: 1 x desk, read_errors: 0, strain: 1, latent_defects: 0 %/year,"
            + " spoils: {rate: 0 %/year}";
    String desk = "desk: {malware: {rate: 0 %/year}, deletion: {rate: 0 %/year, size: 1 GB}}\n";
    assertThat(Texts.problems(Texts.withMain(main) + desk)).isEmpty();
  }

  @Test
  void theSentenceHasItsPosition() {
    assertThat(Texts.problems(Texts.withMain("drives: 1 x desk, scrub: 30 days")))
        .containsExactly(
            "demo.yaml:15:32: found 'scrub': scrubbing, which is not simulated yet; accepted: no"
                + " such key.");
  }

  private static void expectRefusal(String text, String what) {
    assertThat(Texts.problems(text))
        .singleElement()
        .asString()
        .contains(what)
        .contains("which is not simulated yet");
  }
}
