package lastcopy.cli.ask;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said beside a question, what is suggested, and what is no answer, by hand. */
class AskSentencesTest {

  private static OwnerQuestion question(String id) {
    return QuestionTable.all().stream().filter(q -> q.id().equals(id)).findFirst().orElseThrow();
  }

  private static String reason(String id, String... own) {
    return question(id).reason().apply(Answered.by(own));
  }

  private static String preset(String id, String... own) {
    return question(id).preset().apply(Answered.by(own));
  }

  private static String complaint(String id, String text, String... own) {
    Parsed parsed = question(id).read(Answered.by(own), text);
    return parsed.value().isPresent() ? "" : parsed.complaint();
  }

  /** 50 shoots of 40 GB are 2 TB a year; 500 TB is the most that may be there. */
  @Test
  void aYearOfShootsIsSuggestedAsLongAsThatMayBe() {
    assertThat(preset("on-hand")).isEqualTo("2 TB");
    assertThat(reason("on-hand")).startsWith("That is a year of shoots as you have them now;");
    String[] most = {"years", "1", "shoots", "50", "size", "10 TB"};
    assertThat(preset("on-hand", most)).isEqualTo("500 TB");
    assertThat(reason("on-hand", most)).startsWith("That is a year of shoots");
    String[] more = {"years", "1", "shoots", "51", "size", "10 TB"};
    assertThat(preset("on-hand", more)).isEqualTo("500 TB");
    assertThat(reason("on-hand", more))
        .startsWith("A year of shoots as you have them now is more, but this is for up to so much;")
        .endsWith(" your computer shows how much it is.");
  }

  /** 2 TB and five years of 2 TB; two of them where a shoot is kept for so long. */
  @ParameterizedTest
  @CsvSource({
    "5, for good, 12 TB, 16 TB, Within 5 years you will have up to 12 TB; it",
    "5, 2 years, 6 TB, 8 TB, Within 5 years you will have up to 6 TB; it",
    "1, 2 years, 4 TB, 8 TB, Within 1 year you will have up to 4 TB; it",
    "30, for good, 62 TB, 24 TB, Within 30 years you will have up to 62 TB; it"
  })
  void drivesHoldWhatThereWillBe(
      String years, String keep, String all, String size, String sentence) {
    String[] own = {"years", years, "keep", keep, "on-hand", "2 TB"};
    assertThat(preset("drive-size", own)).isEqualTo(size);
    assertThat(reason("drive-size", own)).startsWith(sentence);
    assertThat(reason("drives", own))
        .isEqualTo(
            "So many hold what you will have within "
                + (years.equals("1") ? "1 year" : years + " years")
                + ", up to "
                + all
                + ".");
  }

  /** 12 TB take three drives of 4 TB: twice as many in pairs, one more with parity. */
  @ParameterizedTest
  @CsvSource({"drives, 3", "mirror, 6", "parity, 4"})
  void soManyDrivesAreSuggestedAsHoldAll(String main, String drives) {
    assertThat(preset("drives", "main", main, "drive-size", "4 TB")).isEqualTo(drives);
  }

  @Test
  void aBoxWithParityHasThreeDrivesAtLeast() {
    assertThat(preset("drives", "main", "parity", "drive-size", "12 TB")).isEqualTo("3");
    assertThat(complaint("drives", "2", "main", "parity"))
        .isEqualTo("A box of drives of which any one may fail has at least 3.");
    assertThat(complaint("drives", "3", "main", "parity")).isEmpty();
    assertThat(complaint("drives", "2", "main", "drives")).isEmpty();
    assertThat(complaint("drives", "3", "main", "mirror"))
        .isEqualTo("Pairs take an even number of drives.");
    assertThat(complaint("drives", "3", "main", "drives")).isEmpty();
  }

  /** Two of 1 TB hold 2 TB apart, 1 TB as a pair; three with parity 2 TB. */
  @Test
  void whatIsThereMustFitOnTheDrives() {
    String[] two = {"on-hand", "2 TB", "drive-size", "1 TB"};
    assertThat(complaint("drives", "2", two)).isEmpty();
    assertThat(complaint("drives", "1", two))
        .isEqualTo(
            "They hold 1 TB, which is less than the footage you have; '<' goes back to that.");
    String[] pair = {"on-hand", "2 TB", "drive-size", "1 TB", "main", "mirror", "drives", "4"};
    assertThat(complaint("drives", "2", pair)).startsWith("They hold 1 TB, which is less");
    assertThat(complaint("drives", "4", pair)).isEmpty();
    String[] parity = {"on-hand", "2 TB", "drive-size", "1 TB", "main", "parity"};
    assertThat(complaint("drives", "3", parity)).isEmpty();
  }

  /** 10 TB and 30 years of 3 TB are just what 100 drives of 1 TB hold. */
  @Test
  void ofTooSmallDrivesItWouldTakeTooMany() {
    String[] most = {"on-hand", "10 TB", "years", "30", "shoots", "30", "size", "100 GB"};
    assertThat(complaint("drive-size", "1 TB", most)).isEmpty();
    assertThat(complaint("drive-size", "999 GB", most))
        .isEqualTo(
            "Of that size it would take more than 100 drives for all footage by then; larger ones"
                + " are needed.");
  }

  /** 150 shoots of 10 TB are 1500 TB within a year. */
  @Test
  void moreThanASmallStudioShootsIsTold() {
    assertThat(complaint("size", "10 TB", "years", "1", "shoots", "150")).isEmpty();
    assertThat(complaint("size", "10 TB", "years", "1", "shoots", "152"))
        .isEqualTo("That would be 1.52 PB within 1 year; this is for up to 1500 TB.");
    assertThat(complaint("size", "10 TB", "years", "2", "shoots", "76"))
        .isEqualTo("That would be 1.52 PB within 2 years; this is for up to 1500 TB.");
  }

  @Test
  void usedDrivesAreOlderAndCheaper() {
    assertThat(preset("age")).isEqualTo("1 year");
    assertThat(reason("age")).startsWith("Drives fail more often as they age;");
    assertThat(preset("age", "kind", "used-hard-disk")).isEqualTo("3 years");
    assertThat(reason("age", "kind", "used-hard-disk")).startsWith("Used drives have often run");
  }

  @ParameterizedTest
  @CsvSource({"hard-disk, 180", "portable, 215", "used-hard-disk, 80", "solid-state, 500"})
  void aDriveOfEightTerabytesCostsSoMuch(String kind, String price) {
    assertThat(preset("price", "kind", kind, "drive-size", "8 TB")).isEqualTo(price);
  }

  @Test
  void carriedDrivesAreCarriedWeekly() {
    assertThat(preset("every", "second", "elsewhere")).isEqualTo("1 week");
    assertThat(reason("every", "second", "elsewhere")).startsWith("Drives that are carried");
    assertThat(preset("every", "second", "service")).isEqualTo("1 day");
    assertThat(reason("every", "second", "beside")).startsWith("Programs that copy do it every");
    assertThat(question("every").asked().test(Answered.by())).isFalse();
    assertThat(question("every").asked().test(Answered.by("second", "beside"))).isTrue();
    assertThat(question("together").asked().test(Answered.by("drives", "1"))).isFalse();
    assertThat(question("together").asked().test(Answered.by("drives", "2"))).isTrue();
  }
}
