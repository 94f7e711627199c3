package lastcopy.cli.levers;

import static lastcopy.cli.levers.MadeLevers.base;
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
import lastcopy.cli.output.Page;
import lastcopy.cli.output.PageLook;
import lastcopy.decide.assumed.Assumption;
import lastcopy.decide.assumed.Flip;
import lastcopy.decide.effect.Effects;
import lastcopy.decide.effect.MeasuredEffect;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which assumption matters, in words, of figures made by hand. */
class AssumptionWordsTest {

  private static final Assumption FIRE = assumption("fire", 0.02, Assumption.Unit.SHARE_PER_YEAR);
  private static final Assumption WAIT = assumption("wait", 48, Assumption.Unit.HOURS);
  private static final String NO_VALUE =
      "No value between a tenth and ten times flips which is safer.";

  private static Assumption assumption(String id, double value, Assumption.Unit unit) {
    return new Assumption(id, "how long " + id, value, unit, factor -> null);
  }

  private static MeasuredEffect half(String id, double more) {
    return free(id + AssumptionStudy.HALF, more);
  }

  private static MeasuredEffect twice(String id, double more) {
    return free(id + AssumptionStudy.DOUBLE, more);
  }

  private static Layout layout(String title) {
    DriveModel model = DriveModel.builder("m", 1e12).fails(new Exponential(9)).build();
    Medium on = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build();
    return Layout.of(title, Copy.builder("main").on(on).build());
  }

  private static AssumptionStudy study(Effects effects, Flip... flips) {
    Optional<Layout> first = flips.length == 0 ? Optional.empty() : Optional.of(layout("A"));
    Optional<Layout> second = flips.length == 0 ? Optional.empty() : Optional.of(layout("B"));
    return new AssumptionStudy(List.of(WAIT, FIRE), effects, first, second, List.of(flips));
  }

  private static Effects moving(double wait, double fire) {
    return effects(
        base(true),
        List.of(),
        half("wait", wait),
        twice("wait", -wait),
        half("fire", -fire / 2),
        twice("fire", fire));
  }

  private static String section(AssumptionStudy study) {
    Page page = new Page(PageLook.PLAIN);
    new AssumptionText(new AssumptionWords(study, new OutOf(1_000)), page).section();
    return page.taken().replaceAll("\\s+", " ");
  }

  /** What moves the chance most comes first: 20 of 1,000 at double, then 3 at half. */
  @Test
  void whatMovesTheChanceMostIsFirst() {
    assertThat(section(study(moving(3, 20))))
        .isEqualTo(
            " Which assumption matters What is assumed at half and at double: of 1,000 studios, so"
                + " many lose any footage then, and so many more or fewer: At half At double "
                + "-".repeat(80)
                + " How long fire: 2 % a year 10 (9 to 11) fewer 20 (19 to 21) more How long wait: 2"
                + " days 3 (2 to 4) more 3 (2 to 4) fewer What is assumed, from 4,096 histories of"
                + " each. ");
  }

  @Test
  void whatCannotBeMeasuredIsNamed() {
    assertThat(section(study(moving(0, 20))))
        .contains(" No effect could be measured of: how long wait. What is assumed,")
        .doesNotContain("How long wait");
    assertThat(section(study(moving(0, 1.5))))
        .as("not at half, but at double")
        .contains("How long fire: 2 % a year not measurable 2 (1 to 3) more");
    assertThat(section(study(moving(0, 0))))
        .contains(
            "None of the numbers that this layout takes for granted moves its chance of loss"
                + " measurably at half or at double. What is assumed,")
        .doesNotContain("No effect could be measured", "At half");
    Effects plain = moving(3, 20);
    Effects rare = new Effects(plain.base(), plain.ranked(), List.of(), Method.RARE, 9, true);
    assertThat(section(study(rare)))
        .endsWith("What is assumed, from 9 histories of each, biased towards losses. ");
  }

  private static Flip turns(Assumption of) {
    return new Flip(of, Optional.of(new Estimate(2, 1.5, 3, true)), true);
  }

  private static Flip never(Assumption of) {
    return new Flip(of, Optional.empty(), true);
  }

  private static Flip late(Assumption of) {
    return new Flip(of, Optional.empty(), false);
  }

  private static String flips(Flip... flips) {
    String section = section(study(moving(3, 20), flips));
    assertThat(section).contains("\"A\" or \"B\"?");
    return section
        .replaceAll(".*\"A\" or \"B\"\\? ", "")
        .replaceAll(" What is assumed, from.*", "");
  }

  /** Twice two days are four, and between 1.5 and 3 times as many. */
  @Test
  void whereTheOrderTurnsRound() {
    String turn =
        "Which is safer turns round at 4 days (between 3 days and 6 days), how long wait: it is 2"
            + " days now.";
    assertThat(flips(turns(WAIT))).isEqualTo(turn);
    assertThat(flips(turns(WAIT), never(FIRE)))
        .isEqualTo(turn + " Of 1 other number no value between a tenth and ten times does.");
    assertThat(flips(never(WAIT), never(FIRE))).isEqualTo(NO_VALUE);
    String late =
        " it could not be told whether any value flips which is safer: too few histories, too rare"
            + " losses or too little time.";
    assertThat(flips(late(WAIT), late(FIRE))).isEqualTo("Of 2" + late);
    assertThat(flips(never(WAIT), late(FIRE)))
        .isEqualTo("Of 1 number no value between a tenth and ten times does. Of 1" + late);
    assertThat(flips(turns(WAIT), late(FIRE))).isEqualTo(turn + " Of 1" + late);
    assertThat(section(study(moving(3, 20)))).doesNotContain("or \"");
  }

  /** 1 - exp(-0.0202) is 2 %, and at ten times it is 18.3 %; a megabyte a second is 8 Mbit/s. */
  @ParameterizedTest
  @CsvSource({
    "HAZARD_PER_YEAR, 0.020202707, 1, 2 % a year",
    "HAZARD_PER_YEAR, 0.020202707, 10, 18.3 % a year",
    "HOURS, 12, 2, 24 hours",
    "BYTES_PER_SECOND, 2.5e6, 2, 40 Mbit/s",
    "FACTOR, 1.5, 2, 3",
    "SHARE_PER_YEAR, 0.1, 2, 20 % a year",
    "CHANCE, 1e-15, 2, 2.0e-15 of each bit",
  })
  void numbersAreToldAsOwnersWould(
      Assumption.Unit unit, double value, double factor, String words) {
    assertThat(AssumptionWords.value(assumption("x", value, unit), factor)).isEqualTo(words);
  }

  @Test
  void programsReadTheSame() throws IOException {
    LeverFindings of = findings();
    AssumptionStudy study = study(moving(3, 20), turns(WAIT), late(FIRE));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    LeversJson.write(
        new LeverFindings(of.study(), of.effects(), Optional.of(study), of.settings(), true, true),
        out);
    JsonNode json = new ObjectMapper().readTree(out.toByteArray());
    assertThat(json.get("medians_of_ranges").asBoolean()).isTrue();
    assertThat(json.at("/assumptions/1").toString())
        .isEqualTo(
            "{\"id\":\"wait\",\"title\":\"how long wait\",\"value\":48,\"unit\":\"hours\","
                + "\"difference_at_half\":{\"value\":0.003,\"low\":0.002,\"high\":0.004},"
                + "\"difference_at_double\":{\"value\":-0.003,\"low\":-0.004,\"high\":-0.002},"
                + "\"effect_at_half\":\"more\",\"effect_at_double\":\"less\"}");
    assertThat(json.get("flips").toString())
        .isEqualTo(
            "{\"a\":\"A\",\"b\":\"B\",\"numbers\":[{\"id\":\"wait\",\"title\":\"how long wait\","
                + "\"value\":48,\"unit\":\"hours\",\"looked_for\":true,\"factor\":{\"value\":2,"
                + "\"low\":1.5,\"high\":3}},{\"id\":\"fire\",\"title\":\"how long fire\","
                + "\"value\":0.02,\"unit\":\"share_per_year\",\"looked_for\":false}]}");
    LeverFindings alone =
        new LeverFindings(
            of.study(), of.effects(), Optional.of(study(moving(3, 20))), of.settings(), true, true);
    out.reset();
    LeversJson.write(alone, out);
    assertThat(new ObjectMapper().readTree(out.toByteArray()).get("flips").toString())
        .isEqualTo("{\"numbers\":[]}");
    assertThat(LeversText.of(alone, PageLook.PLAIN)).contains("Which assumption matters");
    assertThat(LeversText.of(of, PageLook.PLAIN)).doesNotContain("Which assumption matters");
  }
}
