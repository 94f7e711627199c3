package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastcopy.cli.scenario.part.StudioReader;
import lastcopy.cli.scenario.yaml.Loader;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.exact.UnlikeSet;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Warning;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each warning with a scenario that gives it and one, next to it, that does not; figures by hand.
 */
class WarningsTest {

  private static final String QUIET =
      """
      lastcopy: 1
      studio: Reed Bank Films
      years: 5
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 10 GB}}
      desk: {}
      places:
        studio: {mishaps: {fire: {rate: 1 %/year}, theft: {rate: 2 %/year}}}
        home:
      boxes:
        bay: {rate: 1 %/year}
      drives:
        desk: {size: 8 TB, speed: 120 MB/s, fails: 2 %/year}
      layouts:
        pair:
          copies:
            main: {place: studio, drives: 1 x desk, noticed: 1 day, wait: 2 days}
            far: {place: home, drives: 1 x desk, noticed: 1 day, wait: 2 days, restores_at: 9 MB/s,
                  feed: {from: main, every: 1 day, at: 2 h, link: 20 Mbit/s}}
      """;

  @Test
  void aSoundScenarioHasNone() {
    assertThat(warnings(QUIET)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          one-place       | home, drives | studio, drives | hall, drives
          fills           | 8 TB | 3 TB | 3.7 TB
          feed-too-slow   | 20 Mbit/s | 0.13 Mbit/s | 0.14 Mbit/s
          run-at-shoot    | at: 2 h | at: 0 h | at: 1 h
          rate-above-hardware | 9 MB/s | 121 MB/s | 120 MB/s
          line-rate       | 20 Mbit/s | 95 Mbit/s | 94 Mbit/s
          seen-at-once    | noticed: 1 day, wait: 2 days | wait: 0 h | wait: 2 days
          nobody-watches  | 1 x desk, noticed: 1 day | 2 x desk, arrangement: mirror, noticed: {checked_every: 90 days} | 2 x desk, arrangement: mirror, noticed: {checked_every: 7 days}
          nobody-watches  | 1 x desk, noticed: 1 day | 2 x desk, arrangement: mirror, noticed: {mean: 60 days} | 2 x desk, arrangement: mirror, noticed: {mean: 2 days}
          rebuild-too-slow | 1 x desk, noticed: 1 day | 9 x desk, arrangement: parity, rebuild: 7 years, noticed: 1 day | 9 x desk, arrangement: parity, rebuild: 6 years, noticed: 1 day
          slow-restore    | 9 MB/s | 5 MB/s | 6.1 MB/s
          one-batch       | 1 x desk | 2 x desk, arrangement: mirror, batch: {name: spring, spread: 0.5} | 2 x desk, arrangement: mirror
          never-tried     | restores_at | spoils: {rate: 2 %/year}, restores_at | spoils: {rate: 2 %/year, tried_every: 90 days}, restores_at
          service-too-good | drives: 1 x desk, noticed: 1 day, wait: 2 days, restores_at | service: {loses: 0 %/year}, restores_at | service: {loses: 0.2 %/year}, restores_at
          service-too-good | drives: 1 x desk, noticed: 1 day, wait: 2 days, restores_at | service: {loses: 0.001 %/year}, restores_at | service: {loses: 0.02 %/year}, restores_at
          never-scrubbed  | 1 x desk | 2 x desk, arrangement: mirror, latent_defects: {mean: 1 year} | 2 x desk, arrangement: mirror, latent_defects: {mean: 1 year}, scrub: 30 days
          feed-unwatched  | 20 Mbit/s | 20 Mbit/s, stops: 0.5 per year | 20 Mbit/s, stops: 0.5 per year, checked_every: 30 days
          no-versions     | desk: {} | desk: {deletion: {rate: 20 %/year, size: 1 shoots, noticed: 3 days}} | desk: {deletion: {rate: 20 %/year, size: 1 shoots}}
          malware-reaches-all | desk: {} | desk: {malware: {rate: 1 %/year, noticed: 3 days}} | desk: {malware: {rate: 0 %/year, noticed: 3 days}}
          """)
  void isGivenAndNotGiven(String id, String old, String bad, String good) {
    assertThat(ids(QUIET.replace(old, bad))).contains(id);
    assertThat(ids(QUIET.replace(old, good))).doesNotContain(id);
  }

  /**
   * Deletions are noticed after 20 days on average. They are held for 10 days from the next nightly
   * run on: e^(-10/20) · 20 · (1 − e^(-1/20)) = 59 % are noticed later.
   */
  @Test
  void whatIsForgottenTooSoon() {
    String text =
        QUIET.replace(
            "desk: {}",
            "desk: {deletion: {rate: 20 %/year, size: 1 shoots, noticed: {mean: 20 days}}}");
    String far = "restores_at: 9 MB/s";
    Warning warning = warnings(text.replace(far, far + ", keeps_deleted: 10 days")).get(0);
    assertThat(warning.id()).isEqualTo("forgets-too-soon");
    assertThat(warning.copy()).isEqualTo("far");
    // 20 days times ln 20 = 59.9 days.
    assertThat(warning.text()).contains("for 10.5 days").contains("59 %").contains("60 days");
    assertThat(ids(text.replace(far, far + ", keeps_deleted: 40 days")))
        .containsExactly("forgets-too-soon");
    assertThat(ids(text.replace(far, far + ", keeps_deleted: 50 days"))).isEmpty();
    assertThat(ids(text.replace(far, far + ", keeps_deleted: for good"))).isEmpty();
  }

  /** Where there is one copy no feed passes a deletion on: it is final when it is made. */
  @Test
  void aDeletionWithNothingElseAndWithAFeed() {
    String text =
        QUIET.replace(
            "desk: {}", "desk: {deletion: {rate: 20 %/year, size: 1 shoots, noticed: 3 days}}");
    assertThat(textOf(text, "no-versions")).contains("once the feeds have passed it on");
    String alone = text.substring(0, text.indexOf("      far:"));
    assertThat(textOf(alone, "no-versions")).contains("final at once").doesNotContain("feed");
  }

  private static String textOf(String text, String id) {
    return warnings(text).stream()
        .filter(warning -> warning.id().equals(id))
        .map(Warning::text)
        .findFirst()
        .orElseThrow();
  }

  /** A copy out of reach takes malware's work over at its next run, unless it keeps what was. */
  @Test
  void malwareAndACopyOutOfReach() {
    String text = QUIET.replace("desk: {}", "desk: {malware: {rate: 1 %/year, noticed: 4 days}}");
    String far = "restores_at: 9 MB/s";
    assertThat(ids(text.replace(far, far + ", reach: offline")))
        .containsExactly("forgets-too-soon");
    assertThat(ids(text.replace(far, far + ", reach: offline, keeps_deleted: 5 days"))).isEmpty();
    assertThat(ids(text.replace(far, far + ", keeps_deleted: 5 days"))).isEmpty();
    // Of two drives that take turns each week, one is a week behind the other.
    assertThat(ids(rotated(text, "7 days", "24 h"))).isEmpty();
  }

  /** 10 GB a week: two drives that swap each week get 20 GB a turn; 20 Mbit/s are 9 GB an hour. */
  @Test
  void rotation() {
    assertThat(ids(rotated(QUIET, "7 days", "24 h"))).isEmpty();
    List<Warning> shortVisit = warnings(rotated(QUIET, "7 days", "2 h"));
    assertThat(shortVisit).extracting(Warning::id).containsExactly("visit-too-short");
    assertThat(shortVisit.get(0).text())
        .contains("18 GB")
        .contains("20 GB")
        .contains("visits: 3 h");
    List<Warning> gap = warnings(rotated(QUIET, "21 days", "24 h"));
    assertThat(gap).extracting(Warning::id).containsExactly("rotation-gap");
    assertThat(gap.get(0).text()).contains("30 GB");
  }

  private static String rotated(String text, String every, String visits) {
    return text.replace("restores_at", "rotation: {drives: 2, every: " + every + "}, restores_at")
        .replace("every: 1 day, at", "visits: " + visits + ", every: " + every + ", at");
  }

  /**
   * 2 %/year for 5 years: 1 − .98^5 = 9.6 %; fire and theft: 1 − .99·.98 = 3.0 %, with box 4.0 %.
   */
  @Test
  void aSingleCopy() {
    String alone = QUIET.substring(0, QUIET.indexOf("      far:"));
    assertThat(warnings(alone).get(0).id()).isEqualTo("one-drive");
    assertThat(warnings(alone).get(0).text()).contains("9.6 %");
    String mirror = alone.replace("1 x desk", "2 x desk, arrangement: mirror, box: bay");
    assertThat(warnings(mirror)).extracting(Warning::id).containsExactly("one-copy");
    assertThat(warnings(mirror).get(0).text()).contains("4.0 %");
    assertThat(warnings(QUIET.replace("home, drives", "studio, drives")).get(0).text())
        .contains("3.0 %");
  }

  /** Two batches, one of them in both copies. */
  @Test
  void aBatchAcrossCopies() {
    String text = QUIET.replace("1 x desk", "1 x desk, batch: {name: spring, spread: 0.5}");
    assertThat(warnings(text)).extracting(Warning::id).containsExactly("one-batch");
    assertThat(warnings(text).get(0).text()).contains("2 drives (main, far)").contains("1.5 times");
  }

  /** Drives of 8 and 3 TB mirror each other: 3 TB of room, and 5 TB that nobody uses. */
  @Test
  void roomThatTheSmallestDriveWastes() {
    String text = unlike("[1 x desk, 1 x small], arrangement: mirror");
    assertThat(ids(text)).containsExactly("fills", "idle-room");
    assertThat(textOf(text, "idle-room"))
        .contains("drive, 3.0 TB,")
        .contains("5.0 TB of the larger");
    assertThat(ids(unlike("2 x desk, arrangement: mirror"))).isEmpty();
    assertThat(ids(unlike("[1 x desk, 1 x small], arrangement: shelf"))).isEmpty();
  }

  /**
   * Two drives of 2 and two of 10 %/year: hazards a and b, so (a² + b²)/2ab = 2.70 times; and the
   * whole chain of four drives says the same of losses that are rare.
   */
  @Test
  void pairsOfLikeDrives() {
    String text = unlike("[2 x desk, 2 x worn], arrangement: pairs");
    assertThat(ids(text)).containsExactly("like-beside-like");
    assertThat(textOf(text, "like-beside-like"))
        .contains("about 2.7 times as often")
        .contains("(desk, worn, desk, worn)");
    assertThat(ids(unlike("[1 x desk, 1 x worn, 1 x worn, 1 x desk], arrangement: pairs")))
        .isEmpty();
    assertThat(ids(unlike("4 x worn, arrangement: pairs"))).isEmpty();
    assertThat(ids(unlike("[2 x desk, 2 x worn], arrangement: parity"))).isEmpty();
    double a = -Math.log(0.98) / 8_760;
    double b = -Math.log(0.9) / 8_760;
    assertThat(pairs(a, a, b, b) / pairs(a, b, a, b)).isCloseTo(2.70, within(0.02));
  }

  private static double pairs(Double... perHour) {
    return new UnlikeSet(List.of(perHour), 1.0 / 72, 2, 1, 1).lossBy(5 * 8_760);
  }

  private static String unlike(String drives) {
    return QUIET
        .replace(
            "layouts:",
            "  worn: {size: 8 TB, fails: 10 %/year}\n  small: {size: 3 TB, fails: 2 %/year}\nlayouts:")
        .replace(
            "main: {place: studio, drives: 1 x desk", "main: {place: studio, drives: " + drives);
  }

  /** What never happens is said in words; what is never noticed needs memory for good. */
  @Test
  void neverIsNoNumberOfDays() {
    String never =
        QUIET
            .replace(
                "desk: {}",
                "desk: {deletion: {rate: 20 %/year, size: 1 shoots, noticed: 0 %/year}}")
            .replace(
                "main: {place: studio, drives: 1 x desk, noticed: 1 day",
                "main: {place: studio, drives: 2 x desk, arrangement: mirror,"
                    + " latent_defects: 0 %/year, noticed: 0 %/year");
    String kept =
        never.replace("restores_at: 9 MB/s", "restores_at: 9 MB/s, keeps_deleted: 9 days");
    assertThat(ids(never)).containsExactly("no-versions", "nobody-watches");
    assertThat(warnings(never)).extracting(Warning::text).noneMatch(t -> t.contains("nfinit"));
    assertThat(warnings(never).get(0).text()).contains("keeps_deleted: for good");
    assertThat(warnings(never).get(1).text()).contains("stays unseen for ever");
    assertThat(warnings(kept).get(0).text())
        .contains("never noticed")
        .contains("keeps_deleted: for good would help")
        .doesNotContain("nfinit");
  }

  private static List<String> ids(String text) {
    return warnings(text).stream().map(Warning::id).toList();
  }

  private static List<Warning> warnings(String text) {
    Notes notes = new Notes("demo.yaml");
    Studio studio =
        new Loader(notes).load(text).flatMap(new StudioReader(notes)::read).orElseThrow();
    assertThat(notes.problems()).isEmpty();
    return Outlook.of(studio).get(0).warnings();
  }
}
