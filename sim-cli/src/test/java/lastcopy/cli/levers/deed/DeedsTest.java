package lastcopy.cli.levers.deed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastcopy.cli.edit.Change;
import lastcopy.cli.edit.ScenarioTree;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single deeds on one small file: where there is something to do, and next to it where not. */
class DeedsTest {

  private static final String FILE =
      """
      lastcopy: 1
      studio: A
      years: 5
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 24 GB}}
      desk: {malware: {rate: 1 %/year, noticed: {mean: 2 days}}}
      boxes: {tower: {rate: 1 %/year}}
      drives:
        d: {size: 12 TB, price: 200, fails: 2 %/year}
        used: {size: 9 TB, price: 50, age: 3 years, bought_at: 0 h, fails: 9 %/year}
      layouts:
        a:
          copies:
            main: {place: studio, drives: 1 x d}
            far: {place: home, drives: 1 x d, feed: {from: main, every: 1 day, link: 40 Mbit/s}}
      """;

  private static Found found(String text) throws ScenarioException {
    ScenarioTree tree = ScenarioTree.parse("a.yaml", text);
    Studio studio = tree.scenario().studio();
    return Catalogue.of(new LeverSubject(tree, studio, studio.layouts().get(0)));
  }

  private static List<String> ids(String text) throws ScenarioException {
    return found(text).deeds().stream().map(Deed::id).toList();
  }

  private static Deed deed(String text, String id) throws ScenarioException {
    return found(text).deeds().stream().filter(d -> d.id().equals(id)).findFirst().orElseThrow();
  }

  private static String why(String text, String id) throws ScenarioException {
    return found(text).leftOut().stream()
        .filter(each -> each.id().equals(id))
        .map(NotPossible::why)
        .findFirst()
        .orElse("it is possible");
  }

  private static List<String> changes(Deed deed) {
    return deed.changes().stream()
        .map((Change c) -> c.key().replace("layouts.a.copies.", "") + ": " + c.to())
        .toList();
  }

  private static String main(String more) {
    return FILE.replace("main: {", "main: {" + more + ", ");
  }

  private static String far(String more) {
    return FILE.replace("far: {", "far: {" + more + ", ");
  }

  /** Thirty days are kept thirty days already, and 29 are not. */
  @Test
  void deletedFilesAreKeptLonger() throws Exception {
    assertThat(ids(main("keeps_deleted: 29 days"))).contains("deleted-kept-30-days-main");
    assertThat(ids(main("keeps_deleted: 30 days")))
        .doesNotContain("deleted-kept-30-days-main")
        .contains("deleted-kept-30-days-far", "deleted-kept-90-days-main");
    String noDesk = FILE.replaceAll("desk: .*\n", "");
    assertThat(why(noDesk, "deleted-kept-30-days"))
        .isEqualTo("the file says nothing of deletion or malware");
    assertThat(why(FILE, "deleted-kept-30-days")).isEqualTo("it is possible");
    String deletion = "desk: {deletion: {rate: 1 %/year, size: 1 shoots}}\n";
    assertThat(ids(FILE.replaceAll("desk: .*\n", deletion))).contains("deleted-kept-30-days-main");
  }

  @Test
  void aCopyIsPutOutOfReachOfMalware() throws Exception {
    String deletion = "desk: {deletion: {rate: 1 %/year, size: 1 shoots}}\n";
    assertThat(ids(FILE)).contains("out-of-reach-far");
    assertThat(why(FILE.replaceAll("desk: .*\n", deletion), "out-of-reach"))
        .isEqualTo("the file says nothing of malware");
    String alone = FILE.substring(0, FILE.indexOf("      far:"));
    assertThat(why(alone, "out-of-reach")).isEqualTo("there is no second copy");
    assertThat(why(alone, "in-another-place")).isEqualTo("there is no second copy");
  }

  @Test
  void aCopyLeavesTheBoxThatItShares() throws Exception {
    String together = FILE.replace("place: home", "place: studio");
    assertThat(changes(deed(together, "in-another-place-far"))).hasSize(1);
    String own = together.replace("far: {", "far: {box: tower, ");
    assertThat(changes(deed(own, "in-another-place-far"))).as("its own box").hasSize(1);
    Deed shared = deed(own.replace("main: {", "main: {box: tower, "), "in-another-place-far");
    assertThat(changes(shared)).hasSize(2).last().isEqualTo("far.box: ");
    assertThat(shared.assumes()).contains("It leaves the box that it shares, and stands in none.");
  }

  @Test
  void aMirrorTakesADriveMore() throws Exception {
    assertThat(deed(FILE, "mirror-main").assumes())
        .containsExactly(
            "The drive more costs what the file says for a d, 200. No box that holds both is"
                + " counted.");
    assertThat(deed(main("box: tower"), "mirror-main").assumes())
        .containsExactly("The drive more costs what the file says for a d, 200.");
  }

  /** A new model of that size in any layout, else the same model without its age. */
  @Test
  void newDrivesInsteadOfUsedOnes() throws Exception {
    String used = FILE.replace("main: {place: studio, drives: 1 x d", "main: {drives: 1 x used");
    Deed same = deed(used, "new-instead-of-used-main");
    assertThat(changes(same))
        .containsExactly(
            "drives.used-new: {size: 9 TB, price: 50, fails: 9 %/year}",
            "main.drives: 1 x used-new");
    assertThat(same.isPriced()).isFalse();
    assertThat(same.assumes().get(0)).startsWith("The new drives are the same model at age 0");
    Deed known = deed(used.replace("size: 9 TB", "size: 12 TB"), "new-instead-of-used-main");
    assertThat(changes(known)).containsExactly("main.drives: 1 x d");
    assertThat(known.isPriced()).isTrue();
    assertThat(known.assumes())
        .containsExactly("Each new drive costs what the file says for a d, 200.");
    String free = used.replace("size: 9 TB", "size: 12 TB").replace("price: 200, ", "");
    assertThat(deed(free, "new-instead-of-used-main").isPriced()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "1 day, no copy is fed more seldom than that",
    "25 h, it is possible",
    "12 h, no copy is fed more seldom than that"
  })
  void aFeedRunsEachDay(String every, String why) throws Exception {
    assertThat(why(FILE.replace("every: 1 day", "every: " + every), "fed-every-day"))
        .isEqualTo(why);
  }

  @Test
  void drivesThatTakeTurnsAreFedByHand() throws Exception {
    String turns =
        FILE.replace(
            "every: 1 day, link: 40 Mbit/s}", "visits: 9 h}, rotation: {drives: 2, every: 7 days}");
    assertThat(why(turns, "fed-every-day")).isEqualTo("its drives take turns, each by hand");
  }

  @Test
  void aLinkOfItsOwnIsTwiceAsFast() throws Exception {
    Deed twice = deed(FILE, "twice-the-link-far");
    assertThat(changes(twice)).containsExactly("far.feed.link: 80 Mbit/s");
    assertThat(twice.assumes()).containsExactly("The file has no price for a faster link.");
    assertThat(twice.isPriced()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "'spoils: {rate: 2 %/year, tried_every: 90 days}', one is tried that often already",
    "'spoils: {rate: 2 %/year, tried_every: 91 days}', it is possible",
    "'spoils: {rate: 2 %/year}', it is possible",
    "noticed: 1 h, the file says of no copy that it may turn out unusable",
  })
  void aRestoreIsTriedEachQuarter(String says, String why) throws Exception {
    assertThat(why(far(says), "restore-tried-each-quarter")).isEqualTo(why);
  }

  @Test
  void failuresAreSeenAtOnce() throws Exception {
    assertThat(why(FILE, "seen-at-once")).isEqualTo("they are seen at once already");
    assertThat(changes(deed(main("noticed: 1 day"), "seen-at-once-main")))
        .containsExactly("main.noticed: 0 h");
    assertThat(changes(deed(main("noticed: 1 day, gone_noticed: 2 days"), "seen-at-once-main")))
        .containsExactly("main.noticed: 0 h", "main.gone_noticed: 0 h");
    assertThat(changes(deed(main("gone_noticed: 2 days"), "seen-at-once-main")))
        .containsExactly("main.gone_noticed: 0 h");
    assertThat(why(main("gone_noticed: 0 h"), "seen-at-once"))
        .isEqualTo("they are seen at once already");
  }

  /** The dearest drive of a set; where one of them has no price, none is paid. */
  @Test
  void aSpareCostsWhatTheDearestDriveCosts() throws Exception {
    String pair =
        FILE.replace(
            "drives: 1 x d}", "drives: [1 x used, 1 x d], arrangement: mirror, wait: 1 day}");
    Deed spare = deed(pair, "spare-on-the-shelf-main");
    assertThat(changes(spare)).containsExactly("main.wait: 0 h", "main.costs.once: 200");
    assertThat(spare.assumes().get(0))
        .startsWith("The spare costs what the file says for a d, 200.");
    Deed free =
        deed(main("wait: 1 day").replace("price: 200", "price: 0"), "spare-on-the-shelf-main");
    assertThat(changes(free)).containsExactly("main.wait: 0 h");
    assertThat(free.isPriced()).isTrue();
    Deed unpriced = deed(pair.replace("price: 50, ", ""), "spare-on-the-shelf-main");
    assertThat(unpriced.isPriced()).isFalse();
    assertThat(changes(unpriced)).hasSize(1);
  }

  /** 1 TB and 260 shoots of 24 GB are 7.24 TB: one drive of 12 TB, and 4 of 2 TB. */
  @Test
  void oneMoreCopyTakesAsManyDrivesAsItNeeds() throws Exception {
    String id = "one-more-copy-on-a-drive";
    assertThat(changes(deed(FILE, id)).get(0)).contains("drives: 1 x d, noticed:");
    assertThat(changes(deed(FILE.replace("size: 12 TB", "size: 2 TB"), id)).get(0))
        .contains("drives: 4 x d, arrangement: shelf, noticed:");
    assertThat(
            why(
                FILE.replace("size: 12 TB", "size: 0.14 TB")
                    .replace("1 x d", "60 x d, arrangement: shelf"),
                id))
        .isEqualTo("all footage by the end would take 52 such drives");
    String paid =
        FILE.replaceAll(
            "(main|far): \\{place: (\\w+), drives: 1 x d",
            "$1: {place: $2, service: {loses: 1 %/year, price: 5 per TB per month}");
    assertThat(why(paid, id)).isEqualTo("the layout has no drives");
    Deed service = deed(paid, "one-more-copy-at-a-service");
    assertThat(service.isPriced()).isTrue();
    assertThat(service.assumes().get(0)).isEqualTo("The service is the one that the file has.");
    Deed assumed = deed(FILE, "one-more-copy-at-a-service");
    assertThat(assumed.isPriced()).isFalse();
    assertThat(assumed.assumes().get(0)).startsWith("The service loses an account with 0.2 %/year");
  }

  @ParameterizedTest
  @CsvSource({"24, 1 day", "48, 2 days", "36, 36 h", "0.5, 0.5 h", "0, 0 days"})
  void timesAreWrittenAsTheyWouldStandInTheFile(double hours, String text) {
    assertThat(AmountTexts.time(hours)).isEqualTo(text);
  }
}
