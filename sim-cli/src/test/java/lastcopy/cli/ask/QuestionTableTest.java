package lastcopy.cli.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.outlook.Omissions;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;

/** Every question has a suggestion and a reason; whatever is answered, the file can be read. */
class QuestionTableTest {

  private static final int STUDIOS = 250;

  /** What may be typed beside the suggestions and the choices; some of it is wrong in its place. */
  private static final List<String> TYPED =
      List.of(
          "1",
          "2",
          "3",
          "4",
          "7",
          "30",
          "0",
          "1000",
          "12.5",
          "10 TB",
          "800 GB",
          "0 GB",
          "1 GB",
          "500 TB",
          "2 TiB",
          "16TB",
          "1 month",
          "2 years",
          "30 years",
          "0 h",
          "90 min",
          "1 day",
          "for good",
          "never",
          "at once",
          "0.5 Mbit/s",
          "1 Gbit/s",
          "100 MB/s",
          "yes",
          "no",
          "\"",
          "a: b",
          "€",
          "-1",
          "1e3 GB",
          "x",
          "-",
          "200",
          "201");

  @Test
  void everyQuestionHasASuggestionThatIsAnAnswerAndAReason() {
    Set<String> met = new HashSet<>();
    SplittableRandom luck = new SplittableRandom(3);
    for (int i = 0; i < 100; i++) {
      Answers answers = Answers.NONE;
      for (OwnerQuestion question : QuestionTable.all()) {
        if (question.asked().test(answers)) {
          met.add(question.id());
          String preset = question.preset().apply(answers);
          assertThat(preset).as(question.id()).isNotBlank();
          assertThat(question.read(answers, preset).value())
              .as(question.id() + " " + preset + " after " + answers)
              .isPresent();
          assertThat(question.reason().apply(answers)).as(question.id()).endsWith(".");
          assertThat(question.words()).as(question.id()).matches(".*[?)]");
          answers = answers.with(question.id(), answer(question, answers, luck));
        }
      }
    }
    assertThat(met)
        .containsExactlyInAnyOrderElementsOf(
            QuestionTable.all().stream().map(OwnerQuestion::id).toList());
  }

  /** One screen each, on a terminal of 80 by 24. */
  @Test
  void everyQuestionFitsOnAScreen() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
    String lines = "\n".repeat(40);
    Input input =
        new PlainInput(
            new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)), stream, false);
    new Conversation(input, stream, QuestionTable.all()).ask();
    for (String screen : out.toString(StandardCharsets.UTF_8).split("\n-{20,}", -1)) {
      assertThat(screen.lines()).hasSizeLessThan(15).allMatch(line -> line.length() <= 80);
      assertThat(screen).matches("(?s)[\\x20-\\x7E\\n]*");
    }
  }

  /** Red if a name is not quoted, a time not checked, or a number of drives does not fit. */
  @Test
  void whateverIsAnsweredTheFileCanBeRead() throws Exception {
    SplittableRandom luck = new SplittableRandom(11);
    Set<List<String>> sets = new HashSet<>();
    for (int i = 0; i < STUDIOS; i++) {
      Answers answers = random(luck);
      List<LayoutSketch> plans = Steps.of(answers);
      String text = ScenarioPage.of(answers, plans);
      Studio studio = ScenarioReader.parse("asked.yaml", text).studio();
      List<String> ids = studio.layouts().stream().map(Layout::id).toList();
      assertThat(ids).isEqualTo(plans.stream().map(LayoutSketch::id).toList()).hasSizeBetween(3, 4);
      assertThat(studio.name()).isEqualTo(answers.text("studio"));
      for (LayoutSketch plan : plans) {
        assertThat(Picture.of(plan, answers.text("drive-size")).lines())
            .allMatch(line -> line.length() <= 80);
      }
      sets.add(ids);
    }
    assertThat(sets).hasSize(6);
  }

  /** The steps have room for everything, and differ from today's. */
  @Test
  void stepsHaveRoomForAllFootage() throws Exception {
    SplittableRandom luck = new SplittableRandom(12);
    for (int i = 0; i < 60; i++) {
      Answers answers = random(luck);
      List<LayoutSketch> plans = Steps.of(answers);
      assertThat(plans.stream().map(LayoutSketch::title)).doesNotHaveDuplicates();
      Studio studio = ScenarioReader.parse("asked.yaml", ScenarioPage.of(answers, plans)).studio();
      for (Layout layout : studio.layouts()) {
        for (Copy copy : layout.copies()) {
          if (!copy.id().equals("main") || layout.id().startsWith("mirror")) {
            copy.driveSet()
                .ifPresent(
                    set ->
                        assertThat(set.usableBytes())
                            .as(layout.id() + " " + answers)
                            .isGreaterThanOrEqualTo(RoomNeeded.byTheEnd(answers) * (1 - 1e-9)));
          }
        }
      }
    }
  }

  /** A file that is asked for leaves out nothing that an owner could be asked. */
  @Test
  void nothingButAFewSourcesOfLuckIsLeftOut() throws Exception {
    Answers answers = suggested();
    Studio studio =
        ScenarioReader.parse("asked.yaml", ScenarioPage.of(answers, Steps.of(answers))).studio();
    assertThat(Omissions.of(studio).stream().map(o -> o.kind().id())).isSubsetOf("batch");
  }

  private static Answers suggested() {
    Answers answers = Answers.NONE;
    for (OwnerQuestion question : QuestionTable.all()) {
      if (question.asked().test(answers)) {
        String preset = question.preset().apply(answers);
        answers = answers.with(question.id(), new Answers.Given(preset, false));
      }
    }
    return answers;
  }

  private static Answers random(SplittableRandom luck) {
    Answers answers = Answers.NONE;
    for (OwnerQuestion question : QuestionTable.all()) {
      if (question.asked().test(answers)) {
        answers = answers.with(question.id(), answer(question, answers, luck));
      }
    }
    return answers;
  }

  /** The suggestion in half of the cases, else the first of a few that is an answer. */
  private static Answers.Given answer(
      OwnerQuestion question, Answers answers, SplittableRandom luck) {
    String preset = question.preset().apply(answers);
    int choices = question.reply().choices().size();
    if (choices > 0) {
      String number = String.valueOf(1 + luck.nextInt(choices));
      return new Answers.Given(question.read(answers, number).value().orElseThrow(), true);
    }
    List<String> tries = new ArrayList<>();
    for (int i = 0; i < 6 && luck.nextBoolean(); i++) {
      tries.add(TYPED.get(luck.nextInt(TYPED.size())));
    }
    Optional<String> found =
        tries.stream().flatMap(t -> question.read(answers, t).value().stream()).findFirst();
    return new Answers.Given(found.orElse(preset), found.isPresent());
  }
}
