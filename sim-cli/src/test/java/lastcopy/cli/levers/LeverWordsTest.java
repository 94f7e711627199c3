package lastcopy.cli.levers;

import static lastcopy.cli.compare.SampleComparison.doubted;
import static lastcopy.cli.compare.SampleComparison.layout;
import static lastcopy.cli.compare.SampleComparison.seen;
import static lastcopy.cli.levers.MadeLevers.DAYS_30;
import static lastcopy.cli.levers.MadeLevers.DAYS_90;
import static lastcopy.cli.levers.MadeLevers.DRIVE;
import static lastcopy.cli.levers.MadeLevers.HALF;
import static lastcopy.cli.levers.MadeLevers.MIRROR;
import static lastcopy.cli.levers.MadeLevers.SEEN;
import static lastcopy.cli.levers.MadeLevers.SERVICE;
import static lastcopy.cli.levers.MadeLevers.SPARE;
import static lastcopy.cli.levers.MadeLevers.YAML;
import static lastcopy.cli.levers.MadeLevers.at;
import static lastcopy.cli.levers.MadeLevers.base;
import static lastcopy.cli.levers.MadeLevers.effect;
import static lastcopy.cli.levers.MadeLevers.effects;
import static lastcopy.cli.levers.MadeLevers.findings;
import static lastcopy.cli.levers.MadeLevers.free;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.output.PageLook;
import lastcopy.decide.effect.Effects;
import lastcopy.decide.effect.MeasuredEffect;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What changes do, in words and for programs, of figures made by hand. */
class LeverWordsTest {

  private static final String MOST =
      "What helps most: a second copy, on a drive elsewhere. Of 1,000 studios like yours, 40 (39 to"
          + " 41) fewer lose footage within 5 years then.";

  private static LeverWords words(LeverFindings findings) {
    return new LeverWords(findings, new OutOf(1_000));
  }

  private static String answer(MeasuredEffect... ranked) {
    return words(findings(ranked)).answer();
  }

  /** Where an empty line parts two sections, and only there. */
  @Test
  void sectionsStandApart() {
    List<Effects.Tie> ties = List.of(new Effects.Tie(DAYS_90, DRIVE));
    Effects effects =
        effects(
            base(true),
            ties,
            free(DAYS_90, -40),
            at(400, DRIVE, -40),
            at(200, SPARE, 0),
            at(200, MIRROR, 3));
    List<String> sections =
        List.of(LeversText.of(findings(YAML, effects, true), PageLook.PLAIN).split("\n\n", -1));
    assertThat(sections)
        .extracting(section -> section.split("[ ,:]", 2)[0])
        .containsExactly("A", "What", "As", "", "Makes", "No", "So", "Not", "Taken", "What");
  }

  private static String page(LeverFindings findings) {
    return LeversText.of(findings, PageLook.PLAIN).replaceAll("\\s+", " ");
  }

  @Test
  void whereNothingHelpsItIsSaid() {
    assertThat(answer(free(SEEN, 0), free(MIRROR, 5), free(HALF, -9)))
        .as("a yardstick is no deed")
        .isEqualTo(
            "No single change was found that takes anything off the risk that could be measured.");
  }

  @Test
  void whatHelpsMostHasItsCost() {
    assertThat(answer(free(DRIVE, -40)))
        .isEqualTo(MOST + " It costs nothing more, by the prices of the file.");
    assertThat(answer(at(90, DRIVE, -40))).isEqualTo(MOST + " It costs EUR 90 (85 to 95) more.");
    assertThat(answer(at(-90, DRIVE, -40))).isEqualTo(MOST + " It saves EUR 90 (85 to 95).");
    assertThat(answer(at(4, DRIVE, -40)))
        .isEqualTo(MOST + " No difference in cost could be shown.");
    assertThat(answer(effect(DRIVE, -40, Optional.of(new Estimate(5, 0, 10, true)))))
        .isEqualTo(MOST + " No difference in cost could be shown.");
    assertThat(answer(effect(DRIVE, -40, Optional.of(new Estimate(-5, -10, 0, true)))))
        .isEqualTo(MOST + " No difference in cost could be shown.");
    assertThat(answer(free(SERVICE, -40)))
        .endsWith(" fewer lose footage within 5 years then. The file does not say what it costs.");
  }

  /** What costs nothing more comes before what is most for the money. */
  @Test
  void whatIsMostForTheMoney() {
    assertThat(answer(at(90, DRIVE, -40), free(DAYS_90, -20), free(DAYS_30, -10)))
        .isEqualTo(
            MOST
                + " It costs EUR 90 (85 to 95) more. Of what costs nothing more, deleted files kept"
                + " 90 days helps most: 20 (19 to 21) fewer.");
    assertThat(answer(free(DRIVE, -40), free(DAYS_90, -20)))
        .as("the first costs nothing more itself")
        .isEqualTo(MOST + " It costs nothing more, by the prices of the file.");
    // 40 for 800 are 5 for 100, 20 for 100 are 20, and 30 for 200 are 15.
    assertThat(answer(at(800, DRIVE, -40), at(200, SPARE, -30), at(100, MIRROR, -20)))
        .isEqualTo(
            MOST
                + " It costs EUR 800 (795 to 805) more. Most for the money is a mirror of two drives:"
                + " 20 (19 to 21) fewer. It costs EUR 100 (95 to 105) more.");
    assertThat(answer(at(90, DRIVE, -40), at(200, SPARE, -30)))
        .as("it is the first")
        .isEqualTo(MOST + " It costs EUR 90 (85 to 95) more.");
    assertThat(answer(at(90, DRIVE, -40), free(SERVICE, -30)))
        .as("what has no price costs not nothing")
        .isEqualTo(MOST + " It costs EUR 90 (85 to 95) more.");
    Effects unpriced =
        effects(
            base(false),
            List.of(),
            effect(DRIVE, -40, Optional.empty()),
            effect(DAYS_90, -20, Optional.empty()));
    assertThat(words(findings(YAML, unpriced, true)).answer()).isEqualTo(MOST + " ");
  }

  @ParameterizedTest
  @CsvSource({"1, 1 year", "2.5, 2.5 years", "10, 10 years"})
  void overTheYearsOfTheFile(String years, String words) {
    String yaml = YAML.replace("years: 5", "years: " + years);
    LeverFindings findings = findings(yaml, effects(base(true), List.of()), true);
    assertThat(words(findings).asItIs())
        .isEqualTo(
            "As it is, 70 (68 to 72) of 1,000 studios lose footage within "
                + words
                + " and pay EUR 500 (490 to 510) by then on average. With one change, so many fewer"
                + " lose any:");
  }

  /** Per 100 of money: 40 for 400 are 10. */
  @Test
  void aRowHasFewerStudiosLessLostAndItsPrice() {
    LeverWords words = words(findings(at(400, DRIVE, -40)));
    assertThat(words.cells(at(400, DRIVE, -40)))
        .containsExactly("", "40 (39 to 41)", "40 GB (39.5 to 40.5)", "400 (395 to 405)", "10");
    assertThat(words.cells(free(DRIVE, -40))).endsWith("0", "");
    assertThat(words.cells(at(4, DRIVE, -40))).endsWith("not measurable", "");
    assertThat(words.cells(at(-90, DRIVE, -40))).endsWith("-90 (-95 to -85)", "");
    assertThat(words.cells(at(90, SERVICE, -40))).endsWith("not priced", "");
    assertThat(words.cells(at(400, DRIVE, 40)))
        .containsExactly("", "-40 (-41 to -39)", "-40 GB (-40.5 to -39.5)", "400 (395 to 405)", "");
    assertThat(words.cells(free(DRIVE, 0)))
        .containsExactly("", "not measurable", "not measurable", "0", "");
    assertThat(words.cells(free(DRIVE, -0.5)))
        .as("from nothing to two")
        .containsExactly("", "not measurable", "not measurable", "0", "");
    // One that costs from 1 on is not worth the word, one that costs more is: 40 for 6.01.
    assertThat(words.cells(at(6, DRIVE, -40))).endsWith("6 (1 to 11)", "");
    assertThat(words.cells(at(6.25, DRIVE, -40))).endsWith("6 (1 to 11)", "640");
    LeverWords unpriced = words(findings(YAML, effects(base(false), List.of()), true));
    assertThat(unpriced.cells(effect(DRIVE, -40, Optional.empty())))
        .containsExactly("", "40 (39 to 41)", "40 GB (39.5 to 40.5)");
    assertThat(words.cells(effect(SERVICE, -40, Optional.empty()))).endsWith("", "");
  }

  @Test
  void whatDoesNotHelpHasItsCost() {
    LeverWords words = words(findings());
    assertThat(words.worse(free(MIRROR, 3)))
        .isEqualTo("a mirror of two drives, with which 3 (2 to 4) of 1,000 more lose footage");
    assertThat(words.without(at(200, SPARE, 0)))
        .isEqualTo("a spare drive on the shelf (which costs EUR 200 (195 to 205) more)");
    assertThat(words.without(at(6, SPARE, 0))).isEqualTo("a spare drive on the shelf");
    assertThat(words.without(at(200, SERVICE, 0)))
        .as("the file does not price all of it")
        .isEqualTo("a second copy, at a service");
    assertThat(words.without(effect(SPARE, 0, Optional.empty())))
        .isEqualTo("a spare drive on the shelf");
  }

  @Test
  void whatCouldNotBePutInOrder() {
    List<Effects.Tie> ties = List.of(new Effects.Tie(DAYS_30, DAYS_90));
    MeasuredEffect[] ranked = {free(DAYS_30, -21), free(DAYS_90, -20), free(DRIVE, -10)};
    assertThat(words(findings(YAML, effects(base(true), ties, ranked), true)).ties())
        .hasValue(
            "So few histories do not tell in which order these belong: deleted files kept 30 days;"
                + " deleted files kept 90 days. More time (--time) would.");
    assertThat(words(findings(ranked)).ties()).isEmpty();
  }

  @Test
  void thePageAnswersThenListsThenSaysWhatItTakesForGranted() {
    List<Effects.Tie> ties = List.of(new Effects.Tie(DAYS_90, DRIVE));
    Effects effects =
        effects(
            base(true),
            ties,
            free(DAYS_90, -40),
            at(400, DRIVE, -40),
            at(-50, HALF, -9),
            at(200, SPARE, 0),
            at(200, MIRROR, 3));
    assertThat(page(findings(YAML, effects, true)))
        .startsWith(
            "A: what would help \"One drive\"? What helps most: deleted files kept 90 days. Of 1,000")
        .contains(
            "lose any: Fewer of 1,000 Less lost on average More cost (EUR) Per 100 ---",
            "--- Deleted files kept 90 days 40 (39 to 41) 40 GB (39.5 to 40.5) 0 A second copy, on a"
                + " drive elsewhere 40 (39 to 41) 40 GB (39.5 to 40.5) 400 (395 to 405) 10 For"
                + " comparison, no deeds: Half as much shot 9 (8 to 10) 9 GB (8.5 to 9.5) -50 (-55"
                + " to -45) Makes it worse: a mirror of two drives, with which 3 (2 to 4) of 1,000"
                + " more lose footage. No effect could be measured: a spare drive on the shelf (which"
                + " costs EUR 200 (195 to 205) more). So few histories do not tell",
            " Not possible here: Looked for failures twice as often: nobody looks by the clock",
            " Taken for granted beyond the file: Deleted files kept 90 days: What is kept takes no"
                + " room that would have to be paid. A second copy, on a drive elsewhere: ")
        .doesNotContain("The spare costs", "UNFINISHED", "medians", "prices nothing")
        .endsWith(
            "What changes do, from 4,096 histories of each, which share their luck; seed 7. Ranges of"
                + " differences hold all together in 95 % of such studies, those of costs each by"
                + " itself. ");
  }

  @Test
  void whatIsNotThereIsNotOnThePage() {
    String none = page(findings());
    assertThat(none)
        .doesNotContain("---", "Makes it worse", "No effect could", "For comparison", "So few")
        .doesNotContain("Taken for granted beyond");
    assertThat(page(findings(free(HALF, -9)))).contains("--- For comparison, no deeds: Half as");
    assertThat(page(findings(free(DAYS_90, -9)))).contains("---").doesNotContain("no deeds:");
    LeverFindings of = findings(free(DAYS_90, -9));
    Effects rare =
        new Effects(
            doubted(base(false), List.of("Few decide."), List.of()),
            List.of(),
            List.of(),
            Method.RARE,
            9,
            false);
    LeverFindings unfinished =
        new LeverFindings(of.study(), rare, Optional.empty(), of.settings(), true, false);
    assertThat(page(unfinished))
        .startsWith("A: what would help \"One drive\"? - UNFINISHED ")
        .contains("Rates that the file gives as ranges have their medians here.")
        .contains("from 9 histories of each, biased towards losses, which share their luck")
        .endsWith("Few decide. The file prices nothing, so no change has a cost here. ");
  }

  /** Ten studios at least as it is: 0.009 makes nine of 1,000, so it is told of 10,000. */
  @Test
  void asManyStudiosAsShowParts() {
    assertThat(LeversText.outOf(effects(layout("l", "L", seen(0.009, 0.0005), false), List.of())))
        .isEqualTo(new OutOf(10_000));
    assertThat(LeversText.outOf(effects(layout("l", "L", seen(0.01, 0.001), false), List.of())))
        .isEqualTo(new OutOf(1_000));
  }

  @Test
  void programsReadTheSame() throws IOException {
    List<Effects.Tie> ties = List.of(new Effects.Tie(DAYS_90, DRIVE));
    MeasuredEffect drive = at(400, DRIVE, -40);
    MeasuredEffect money =
        new MeasuredEffect(
            DAYS_90,
            base(true),
            drive.difference(),
            drive.bytesDifference(),
            Optional.of(seen(-8, 1)),
            Optional.of(Estimate.exact(0)),
            drive.direction());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    LeversJson.write(findings(YAML, effects(base(true), ties, money, drive), true), out);
    JsonNode json = new ObjectMapper().readTree(out.toByteArray());
    assertThat(json.get("not_told_apart").toString())
        .isEqualTo("[{\"better\":\"" + DAYS_90 + "\",\"worse\":\"" + DRIVE + "\"}]");
    assertThat(json.get("layout").asText()).isEqualTo("one");
    assertThat(json.get("seed").asInt()).isEqualTo(7);
    assertThat(json.get("finished").asBoolean()).isTrue();
    assertThat(json.get("medians_of_ranges").asBoolean()).isFalse();
    assertThat(json.get("differences_hold").asText()).isEqualTo("together");
    assertThat(json.get("method").asText()).isEqualTo("plain");
    assertThat(json.get("histories").asInt()).isEqualTo(4_096);
    assertThat(json.has("assumptions")).isFalse();
    assertThat(json.at("/base/any_loss/probability").asDouble()).isEqualTo(0.07);
    assertThat(json.at("/base/bytes_lost").has("mean")).isTrue();
    assertThat(json.at("/base/cost").toString())
        .isEqualTo("{\"total\":500,\"low\":490,\"high\":510,\"currency\":\"EUR\"}");
    assertThat(json.at("/base/doubts")).isEmpty();
    JsonNode first = json.at("/levers/0");
    assertThat(first.get("title").asText()).isEqualTo("Deleted files kept 90 days");
    assertThat(first.get("yardstick").asBoolean()).isFalse();
    assertThat(first.get("priced").asBoolean()).isTrue();
    assertThat(first.at("/changes/0").toString())
        .isEqualTo(
            "{\"key\":\"layouts.one.copies.main.keeps_deleted\",\"from\":\"\",\"to\":\"90 days\"}");
    assertThat(first.at("/assumes/0").asText()).startsWith("What is kept takes no room");
    assertThat(first.get("money_difference").toString())
        .isEqualTo("{\"value\":-8,\"low\":-9,\"high\":-7}");
    assertThat(first.has("risk_removed_per_money")).isFalse();
    JsonNode second = json.at("/levers/1");
    assertThat(second.has("money_difference")).isFalse();
    assertThat(second.get("cost_difference").toString())
        .isEqualTo("{\"value\":400,\"low\":395,\"high\":405}");
    assertThat(second.get("bytes_difference").toString())
        .isEqualTo("{\"value\":-40000000000,\"low\":-40500000000,\"high\":-39500000000}");
    // 40 of 1,000 for 400.
    assertThat(second.get("risk_removed_per_money").asDouble()).isEqualTo(0.0001);
    assertThat(second.get("effect").asText()).isEqualTo("less");
    assertThat(json.at("/left_out/0").toString())
        .isEqualTo(
            "{\"id\":\"looked-for-twice-as-often\",\"title\":\"Looked for failures twice as often\","
                + "\"why\":\"nobody looks by the clock\"}");
  }
}
