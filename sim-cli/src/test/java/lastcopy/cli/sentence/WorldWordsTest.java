package lastcopy.cli.sentence;

import static lastcopy.cli.compare.SampleComparison.layout;
import static lastcopy.cli.compare.SampleComparison.seen;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import lastcopy.cli.output.PageLook;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is not known, in words, of results made by hand. */
class WorldWordsTest {

  private static final OutOf THOUSAND = new OutOf(1_000);
  private static final Worlds.Percentiles SOME = all(0.0062, 0.05, 0.12345, 0.0035);

  private static Worlds.Percentiles all(double p5, double p50, double p95, double half) {
    return new Worlds.Percentiles(seen(p5, half / 2), seen(p50, half / 3), seen(p95, half));
  }

  private static Worlds.OfLayout of(String id, Optional<Worlds.Percentiles> all) {
    Worlds.Spread spread = new Worlds.Spread(seen(0.05, 0.001), all);
    return new Worlds.OfLayout(id, 9, spread, spread, Optional.empty(), List.of());
  }

  private static Worlds.OfUnknown unknown(String key, double... shares) {
    List<Worlds.Share> of =
        Arrays.stream(shares).mapToObj(s -> new Worlds.Share("a", seen(s, 0.001))).toList();
    return new Worlds.OfUnknown(key, 1, 4, "%/year", of);
  }

  private static Worlds.OfPair pair(String a, String b, double share, double half) {
    return new Worlds.OfPair(a, b, seen(share, half), SOME);
  }

  private static Comparison result(
      int layouts, List<Worlds.OfPair> pairs, Worlds.OfUnknown... unknowns) {
    List<LayoutResult> all = new ArrayList<>();
    List<Worlds.OfLayout> worlds = new ArrayList<>();
    for (String id : List.of("a", "b", "c", "d").subList(0, layouts)) {
      all.add(layout(id, id.toUpperCase(Locale.ROOT), seen(0.05, 0.001), false));
      worlds.add(of(id, Optional.of(SOME)));
    }
    return comparison(all, new Worlds(worlds, pairs, List.of(unknowns)));
  }

  private static Comparison comparison(List<LayoutResult> layouts, Worlds worlds) {
    return new Comparison(
        "s", 5, Optional.empty(), 1, 0.95, true, layouts, List.of(), Optional.of(worlds));
  }

  private static List<String> lines(Comparison result) {
    return WorldWords.sentences(result, THOUSAND).stream().map(WorldWords.Said::line).toList();
  }

  /** 0.0062, 0.05 and 0.12345 of 1,000, the last known to 3.5. */
  @Test
  void aPageOfBothKindsOfUncertainty() {
    Comparison result =
        result(
            2,
            List.of(pair("a", "b", 0.8, 0.05)),
            unknown("drives.d.fails", 0.2, 0.4),
            unknown("places.p.fire", 0.6, 0.7),
            unknown("boxes.b", 0.0049, 0.0049));
    assertThat(WorldWords.of(result, THOUSAND, new PageLook(100, false, false)))
        .isEqualTo(
            """
            Some rates in the file are ranges. The chances are means over the worlds that they leave possible;
            in 9 of 10 of these, of 1,000 studios, so many lose any footage:
              A: between 6.2 and 123, most likely about 50 (what is not known); the simulation's own error is
                under 4
              B: between 6.2 and 123, most likely about 50 (what is not known); the simulation's own error is
                under 4

            How much of that comes from each of what is not known, on average over the layouts:
               65 %  places.p.fire: 1 to 4 %/year
               30 %  drives.d.fails: 1 to 4 %/year

            "A" loses less than "B" in 80 of 100 possible worlds (75 to 85).

            """);
    List<WorldWords.Said> said = WorldWords.sentences(result, THOUSAND);
    assertThat(said).extracting(WorldWords.Said::words).doesNotContain("");
    assertThat(said)
        .extracting(WorldWords.Said::item)
        .containsExactly(false, true, true, false, true, true, false);
    assertThat(said.get(4).line()).isEqualTo("65 % places.p.fire: 1 to 4 %/year");
  }

  @Test
  void oneLayoutWithoutUnknownsThatMatter() {
    List<String> lines = lines(result(1, List.of(), unknown("a", 0.004)));
    assertThat(lines).hasSize(2);
    assertThat(lines(result(1, List.of(), unknown("k", 0.4))))
        .contains("How much of that comes from each of what is not known:");
    assertThat(lines(result(1, List.of(), unknown("k", 0.005)))).hasSize(4);
  }

  @Test
  void theFiveThatMatterMost() {
    Worlds.OfUnknown[] seven =
        IntStream.rangeClosed(1, 7)
            .mapToObj(i -> unknown("k" + i, i / 100.0))
            .toArray(Worlds.OfUnknown[]::new);
    assertThat(lines(result(1, List.of(), seven)).stream().skip(3))
        .containsExactly(
            "7 % k7: 1 to 4 %/year",
            "6 % k6: 1 to 4 %/year",
            "5 % k5: 1 to 4 %/year",
            "4 % k4: 1 to 4 %/year",
            "3 % k3: 1 to 4 %/year");
  }

  private static String told(OutOf outOf, Estimate any, Optional<Worlds.Percentiles> all) {
    Comparison one =
        comparison(
            List.of(layout("a", "A", any, false)),
            new Worlds(List.of(of("a", all)), List.of(), List.of()));
    return WorldWords.sentences(one, outOf).get(1).line();
  }

  /** Three digits of what is not known; the error rounded up to two, and whole. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1000 | 0.00123 | 0.0099 | 0.01 | 0.0001 | 1.2 | 9.9 | 10 | 1",
        "1000 | 0.0009 | 0.00996 | 0.1 | 0.0123 | fewer than 1 | 10 | 100 | 13",
        "1000 | 0.001 | 0.5 | 0.9996 | 0.05 | 1.0 | 500 | 1,000 | 51",
        "100000 | 0.12345 | 0.2 | 0.34567 | 0.012345 | 12,300 | 20,000 | 34,600 | 1,300",
        "1000000 | 0.00000994 | 0.2 | 0.34567 | 0.0000015 | 9.9 | 200,000 | 346,000 | 2",
      })
  void asManyDigitsAsAreKnown(
      long studios,
      double p5,
      double p50,
      double p95,
      double half,
      String low,
      String middle,
      String high,
      String error) {
    assertThat(told(new OutOf(studios), seen(0.05, 0.001), Optional.of(all(p5, p50, p95, half))))
        .isEqualTo(
            "A: between "
                + low
                + " and "
                + high
                + ", most likely about "
                + middle
                + " (what is not known); the simulation's own error is under "
                + error);
  }

  /** The larger side of an interval counts, of any of the three. */
  @Test
  void theErrorIsTheWidestSide() {
    Estimate p5 = new Estimate(0.1, 0.093, 0.101, true);
    Estimate exact = Estimate.exact(0.1);
    assertThat(told(THOUSAND, exact, Optional.of(new Worlds.Percentiles(p5, exact, exact))))
        .endsWith("under 8");
    Estimate p50 = new Estimate(0.1, 0.099, 0.1055, true);
    assertThat(told(THOUSAND, exact, Optional.of(new Worlds.Percentiles(exact, p50, exact))))
        .endsWith("under 6");
  }

  @Test
  void whatCannotBeToldIsSaidSo() {
    Estimate few = seen(0.05, 0.001);
    assertThat(told(THOUSAND, few, Optional.empty()))
        .isEqualTo("A: too few lost any to say what the ranges leave possible");
    assertThat(told(THOUSAND, seen(0.5, 0.001), Optional.empty()))
        .startsWith("A: too few lost any");
    assertThat(told(THOUSAND, seen(0.51, 0.001), Optional.empty()))
        .isEqualTo("A: too few kept all to say what the ranges leave possible");
    String histories = "A: too few histories to say what the ranges leave possible";
    assertThat(told(THOUSAND, few, Optional.of(all(0.1, 0.2, 0.3, 0.995)))).isEqualTo(histories);
    assertThat(told(THOUSAND, few, Optional.of(all(0.1, 0.2, 0.3, 0.985)))).endsWith("under 990");
    assertThat(told(THOUSAND, few, Optional.of(all(1e-5, 2e-5, 9.9e-4, 1e-5))))
        .isEqualTo("A: fewer than 1 in nearly all of them");
    assertThat(told(THOUSAND, few, Optional.of(all(1e-5, 2e-5, 1e-3, 1e-5))))
        .isEqualTo(
            "A: between fewer than 1 and 1.0, most likely about fewer than 1 (what is not known); the"
                + " simulation's own error is under 1");
  }

  /** Each against the first and its neighbour; the better one first. */
  @Test
  void pairsInPossibleWorlds() {
    List<String> lines =
        lines(
            result(
                4,
                List.of(
                    pair("a", "b", 0.5, 0.02),
                    pair("a", "c", 0.3, 0.02),
                    pair("a", "d", 0.995, 0.001),
                    pair("b", "c", 0.002, 0.001),
                    pair("b", "d", 0.6, 0.1),
                    pair("c", "d", 0.995, 0.005))));
    assertThat(lines.stream().skip(5))
        .containsExactly(
            "\"A\" loses less than \"B\" in 50 of 100 possible worlds (48 to 52).",
            "\"C\" loses less than \"A\" in 70 of 100 possible worlds (68 to 72).",
            "\"A\" loses less than \"D\" in more than 99 of 100 possible worlds.",
            "\"C\" loses less than \"B\" in more than 99 of 100 possible worlds.",
            "\"C\" loses less than \"D\" in 100 of 100 possible worlds (99 to 100).");
  }

  @Test
  void theAssumptionThatMattersMost() {
    Comparison known =
        new Comparison(
            "s", 5, Optional.empty(), 1, 0.95, true, result(1, List.of()).layouts(), List.of());
    assertThat(WorldWords.mattersMost(known))
        .startsWith("Which assumption matters most is not told: the file gives each rate as one")
        .endsWith("\"lastcopy levers\" tries each at half and at double.");
    assertThat(WorldWords.sentences(known, THOUSAND)).isEmpty();
    assertThat(WorldWords.mattersMost(result(1, List.of(), unknown("k", 0.2), unknown("m", 0.624))))
        .isEqualTo(
            "The assumption that matters most is m, given as 1 to 4 %/year: it makes 62 % of how much"
                + " the chance of loss may differ.");
    String none = "No range in the file makes a difference that could be told.";
    assertThat(WorldWords.mattersMost(result(1, List.of(), unknown("k", 0.004)))).isEqualTo(none);
    assertThat(WorldWords.mattersMost(result(1, List.of(), unknown("k")))).isEqualTo(none);
    assertThat(WorldWords.mattersMost(result(1, List.of(), unknown("k", 0.005))))
        .startsWith("The assumption that matters most is k");
  }
}
