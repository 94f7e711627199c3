package lastcopy.cli.levers.deed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lastcopy.cli.edit.ScenarioTree;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;

/** What is found to do with a layout, what each changes, and why the rest cannot be done. */
class CatalogueTest {

  private static final String FILE =
      """
      lastcopy: 1
      studio: A
      years: 5
      currency: EUR
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 24 GB}, growth: 10 %/year}
      places:
        studio: {mishaps: {fire: {rate: 1 %/year}}}
        home: {mishaps: {fire: {rate: 1 %/year}}}
      boxes: {tower: {rate: 1 %/year}}
      uplinks: {office: {speed: 20 Mbit/s, price: 40 per month}}
      desk:
        deletion: {rate: 20 %/year, size: 1 shoots, noticed: {mean: 20 days}}
        malware: {rate: 1 %/year, noticed: {mean: 2 days}}
      drives:
        new-12: {size: 12 TB, price: 200, fails: 2 %/year}
        old-12: {size: 12 TB, price: 50, age: 3 years, fails: 9 %/year}
      layouts:
        much:
          title: Much
          cards: {keep: 7 days}
          copies:
            main:
              place: studio
              box: tower
              drives: 3 x old-12
              arrangement: parity
              batch: {name: spring, spread: 0.5}
              noticed: {checked_every: 30 days}
              wait: 4 days
              replace_at: 4 years
            second:
              place: studio
              box: tower
              drives: 1 x new-12
              noticed: 1 day
              costs: {once: 10}
              spoils: {rate: 2 %/year, tried_every: 1 years}
              feed: {from: main, every: 7 days, link: office, stops: 1 per year, checked_every: 8 days}
        best:
          title: Best
          cards: {keep: 14 days}
          copies:
            main: {place: studio, drives: 2 x new-12, arrangement: mirror, keeps_deleted: for good}
            far:
              place: home
              service: {loses: 0.1 %/year, price: 5 per TB per month}
              keeps_deleted: 90 days
              reach: offline
              feed: {from: main, continuous: true}
      """;

  private static Found found(String text, String id) throws ScenarioException {
    ScenarioTree tree = ScenarioTree.parse("a.yaml", text);
    Studio studio = tree.scenario().studio();
    Layout layout =
        studio.layouts().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
    return Catalogue.of(new LeverSubject(tree, studio, layout));
  }

  /** By id, each change as {@code key: from -> to}, keys below the layout. */
  private static Map<String, List<String>> changes(Found found) {
    return found.deeds().stream()
        .collect(
            Collectors.toMap(
                Deed::id,
                deed ->
                    deed.changes().stream()
                        .map(
                            c ->
                                c.key().replaceFirst("^layouts\\.\\w+\\.(copies\\.)?", "")
                                    + ": "
                                    + c.from()
                                    + " -> "
                                    + c.to())
                        .toList(),
                (a, b) -> a,
                TreeMap::new));
  }

  @Test
  void eachLeverIsAnEditOfTheFile() throws Exception {
    Map<String, List<String>> changes = changes(found(FILE, "much"));

    assertThat(changes)
        .containsEntry(
            "seen-at-once-main", List.of("main.noticed: {checked_every: 30 days} -> 0 h"))
        .containsEntry("seen-at-once-second", List.of("second.noticed: 1 day -> 0 h"))
        .containsEntry(
            "looked-for-twice-as-often-main",
            List.of("main.noticed: {checked_every: 30 days} -> {checked_every: 15 days}"))
        .containsEntry(
            "feed-looked-for-twice-as-often-second",
            List.of("second.feed.checked_every: 8 days -> 4 days"))
        .containsEntry(
            "spare-on-the-shelf-main",
            List.of("main.wait: 4 days -> 0 h", "main.costs.once:  -> 50"))
        .containsEntry("fed-every-day-second", List.of("second.feed.every: 7 days -> 1 day"))
        .containsEntry(
            "twice-the-link-second",
            List.of(
                "uplinks.office-twice:  -> {speed: 40 Mbit/s, price: 40 per month}",
                "second.feed.link: office -> office-twice"))
        .containsEntry("deleted-kept-30-days-main", List.of("main.keeps_deleted:  -> 30 days"))
        .containsEntry("deleted-kept-90-days-second", List.of("second.keeps_deleted:  -> 90 days"))
        .containsEntry(
            "in-another-place-second",
            List.of("second.place: studio -> home", "second.box: tower -> "))
        .containsEntry("out-of-reach-second", List.of("second.reach:  -> offline"))
        .containsEntry(
            "one-more-copy-on-a-drive",
            List.of(
                "further:  -> {place: home, drives: 1 x old-12, noticed: 1 day, wait: 2 days,"
                    + " restores_at: 100 MB/s, feed: {from: main, every: 1 day, at: 2.5 h,"
                    + " link: office}}"))
        .containsEntry(
            "one-more-copy-at-a-service",
            List.of(
                "further:  -> {service: {loses: 0.1 %/year, price: 5 per TB per month}, feed:"
                    + " {from: main, every: 1 day, at: 2.5 h, link: office}}"))
        .containsEntry("new-instead-of-used-main", List.of("main.drives: 3 x old-12 -> 3 x new-12"))
        .containsEntry("other-batches-main", List.of("main.batch: {name: spring, spread: 0.5} -> "))
        .containsEntry(
            "double-parity-main",
            List.of(
                "main.drives: 3 x old-12 -> 4 x old-12",
                "main.arrangement: parity -> double-parity"))
        .containsEntry(
            "mirror-second",
            List.of("second.drives: 1 x new-12 -> 2 x new-12", "second.arrangement:  -> mirror"))
        .containsEntry("replaced-earlier-main", List.of("main.replace_at: 4 years -> 2 years"))
        .containsEntry("cards-kept-two-weeks", List.of("cards.keep: 7 days -> 14 days"))
        .containsEntry(
            "restore-tried-each-quarter-second",
            List.of("second.spoils.tried_every: 1 years -> 90 days"))
        .containsEntry("half-the-growth", List.of("footage.growth: 10 %/year -> 5 %/year"))
        .containsEntry("half-the-footage", List.of("footage.shoots.size: 24 GB -> 12 GB"));
    assertThat(changes).doesNotContainKeys("spare-on-the-shelf-second", "out-of-reach-main");
  }

  @Test
  void whatCannotBeDoneSaysWhy() throws Exception {
    Found found = found(FILE, "best");

    assertThat(found.leftOut())
        .extracting(each -> each.id() + ": " + each.why())
        .contains(
            "seen-at-once: they are seen at once already",
            "looked-for-twice-as-often: nobody looks by the clock",
            "spare-on-the-shelf: replacements are there at once already",
            "fed-every-day: no copy is fed more seldom than that",
            "twice-the-link: no feed has a link whose speed the file states",
            "deleted-kept-30-days: each copy keeps them that long already",
            "in-another-place: no other copy stands at the working copy",
            "out-of-reach: each other copy is out of reach already",
            "new-instead-of-used: no copy has drives of one model that have an age",
            "double-parity: no copy has single parity",
            "cards-kept-two-weeks: they are kept that long already");
    assertThat(changes(found)).containsKeys("one-more-copy-at-a-service", "replaced-earlier-main");
  }

  @Test
  void whatIsNoValidLayoutIsLeftOutWithTheReadersReason() throws Exception {
    // Each turn of a rotation counts as a copy, and a layout has at most 100.
    String many =
        FILE.substring(0, FILE.indexOf("layouts:"))
            + """
              layouts:
                much:
                  copies:
                    main: {drives: 1 x new-12}
                    turns:
                      drives: 1 x new-12
                      rotation: {drives: 99, every: 7 days}
                      feed: {from: main, link: 1 Gbit/s}
              """;

    Found found = found(many, "much");

    assertThat(found.leftOut())
        .filteredOn(each -> each.id().startsWith("one-more-copy"))
        .hasSize(2)
        .allMatch(each -> each.why().contains("101 copies") && each.why().contains("at most 100"));
  }

  /** Prices that the file does not have are said, and nothing is paid. */
  @Test
  void whatItTakesForGrantedIsSaid() throws Exception {
    Found priced = found(FILE, "much");
    Found unpriced = found(FILE.replace("price: 50, ", ""), "much");

    assertThat(deed(priced, "spare-on-the-shelf-main").assumes().get(0))
        .contains("for a old-12, EUR 50");
    assertThat(deed(priced, "spare-on-the-shelf-main").isPriced()).isTrue();
    assertThat(deed(unpriced, "spare-on-the-shelf-main").assumes().get(0))
        .contains("has no price, since the file has none for a old-12");
    assertThat(deed(unpriced, "spare-on-the-shelf-main").isPriced()).isFalse();
    assertThat(deed(unpriced, "spare-on-the-shelf-main").changes()).hasSize(1);
    assertThat(deed(priced, "in-another-place-second").assumes().get(0)).contains("\"home\"");
    String onePlace =
        FILE.replaceAll("(?m)^ *home: .*\\n", "").replace("place: home", "place: far");
    assertThat(deed(found(onePlace, "much"), "in-another-place-second").assumes().get(0))
        .contains("has no mishaps, since the file names none");
    assertThat(deed(priced, "half-the-growth").isYardstick()).isTrue();
    assertThat(deed(priced, "out-of-reach-second").isYardstick()).isFalse();
  }

  private static Deed deed(Found found, String id) {
    return found.deeds().stream().filter(d -> d.id().equals(id)).findFirst().orElseThrow();
  }
}
