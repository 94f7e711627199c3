package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each default that the format's tables of keys state, written out as they state it: the same
 * studio as when the key is left out, and another where the key says something else.
 */
class DefaultsTest {

  @ParameterizedTest
  @CsvSource({
    "arrangement, single, shelf",
    "noticed, 0 h, 1 day",
    "wait, 0 h, 1 day",
    "rebuild_reads, all, used",
    "daily_work_takes, 0, 0.5",
    "replace_at, never, 3 years",
    "strain, 1, 2",
    "spoils, never, {rate: 2 %/year}",
    "gone_noticed, 0 h, 1 day",
    "read_errors, 0, 1e-15",
    "keeps_deleted, nothing, for good",
    "keeps_deleted, nothing, 30 days",
    "reach, online, offline",
    "starts, full, empty"
  })
  void ofACopy(String key, String byDefault, String other) {
    String far = "drives: 1 x desk, feed: {from: main, every: 1 day}, ";
    same(Texts.withFar(far + key + ": " + byDefault));
    differs(Texts.withFar(far + key + ": " + other));
  }

  @ParameterizedTest
  @CsvSource({"at, 0 h, 2 h", "stops, 0 per year, 1 per year", "visits, 24 h, 1 h"})
  void ofAFeed(String key, String byDefault, String other) {
    String far = "drives: 1 x desk, feed: {from: main, every: 1 day, %s: %s}";
    same(Texts.withFar(far.formatted(key, byDefault)));
    differs(Texts.withFar(far.formatted(key, other)));
  }

  @ParameterizedTest
  @CsvSource({"on_hand, 0 TB, 1 TB", "growth, 0 %/year, 5 %/year", "clip, 1 GB, 2 GB"})
  void ofFootage(String key, String byDefault, String other) {
    String footage = "shoots: {every: 7 days, size: 96 GB}\n  ";
    same(Texts.withFootage(footage + key + ": " + byDefault));
    differs(Texts.withFootage(footage + key + ": " + other));
  }

  @ParameterizedTest
  @CsvSource({"speed, 120 MB/s, 100 MB/s", "age, 0 h, 1 year", "bought_at, 0 h, 1 year"})
  void ofADrive(String key, String byDefault, String other) {
    String drive = "size: 8 TB, fails: 2 %%/year, %s: %s";
    differs(Texts.withDrive(drive.formatted(key, other)));
    if (key.equals("speed")) { // a speed that was not stated is remembered as such
      assertThat(Texts.model(Texts.withDrive(drive.formatted(key, byDefault))).speed())
          .isEqualTo(Texts.model(Texts.VALID).speed());
    } else {
      same(Texts.withDrive(drive.formatted(key, byDefault)));
    }
  }

  @Test
  void ofAMishapAndOfShoots() {
    same(Texts.VALID.replace("rate: 1 %/year}}}", "rate: 1 %/year, takes: 1}}}"));
    differs(Texts.VALID.replace("rate: 1 %/year}}}", "rate: 1 %/year, takes: 0.5}}}"));
    same(Texts.VALID.replace("size: 96 GB}", "size: 96 GB, spacing: even}"));
    differs(Texts.VALID.replace("size: 96 GB}", "size: 96 GB, spacing: random}"));
  }

  /** A chance of nothing, a number with an exponent, and a service that stands somewhere. */
  @Test
  void valuesThatTheFormatNames() {
    String fed = "feed: {from: main, every: 1 day}";
    assertThat(Texts.mainDrives(Texts.withMain("drives: 1 x desk, read_errors: 1e-15")))
        .satisfies(set -> assertThat(set.readErrorsPerBit()).isEqualTo(1e-15));
    assertThat(Texts.model(Texts.withDrive("size: 8 TB, fails: 0 %/year")).fails().mean())
        .isInfinite();
    Copy service = Texts.far(Texts.withFar("place: studio, service: {loses: 0 %/year}, " + fed));
    assertThat(service.place().id()).isEqualTo("studio");
    assertThat(service.medium()).isEqualTo(Medium.Service.of(Rate.NONE, OptionalDouble.empty()));
  }

  private static void same(String text) {
    assertThat(said(text)).isEqualTo(said(Texts.VALID));
  }

  private static void differs(String text) {
    assertThat(said(text)).isNotEqualTo(said(Texts.VALID));
  }

  /** All that a studio consists of, but for which keys were left out: that does differ. */
  private static String said(String text) {
    return Texts.studio(text).toString().replaceAll("leftOut=\\[[^\\]]*\\]", "");
  }
}
