package lastcopy.cli.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Answers that come from a pipe, and the file that is made of them. */
class AskCommandTest {

  /** All is taken as suggested. */
  private static final String NOTHING = "";

  @TempDir Path folder;

  private final Asked asked = new Asked();
  private Path file;

  @BeforeEach
  void name() {
    file = folder.resolve("studio.yaml");
  }

  /** Red if a line of the file changes. */
  @Test
  void aScriptGivesTheExactFile() throws IOException {
    String script =
        """
        Fen & Söhne: "Film" \\ Ton
        3
        40
        120 GB
        6 TB
        2 years
        mirror
        used
        12 TB
        4
        4 years
        1 month
        at once
        no
        home
        elsewhere
        2 weeks
        100 Mbit/s
        never
        careful
        CHF
        1500
        90.50
        35
        """;
    assertThat(asked.run(script, "--write", file.toString())).as(asked.err()).isZero();
    assertThat(Files.readString(file)).isEqualTo(resource("script.yaml"));
    assertThat(asked.out()).isEqualTo(resource("script.txt").replace("FILE", file.toString()));
  }

  @Test
  void whatWasAnsweredIsInTheStudio() throws Exception {
    asked.run("A\n3\n40\n120 GB\n6 TB\n2 years\n", "--write", file.toString());
    Studio studio = read();
    assertThat(studio.years()).isEqualTo(3);
    assertThat(studio.footage().onHandBytes()).isEqualTo(6e12);
    assertThat(studio.footage().shoots().sizeBytes()).isEqualTo(120e9);
    assertThat(studio.footage().shoots().everyHours()).isEqualTo(8760.0 / 40);
  }

  @Test
  void goingBackAsksAgainAndKeepsWhatWasSaid() throws Exception {
    asked.run("First\n<\nSecond\n7\n80\n<\n<\n\n90\n", "--write", file.toString());
    Studio studio = read();
    assertThat(studio.name()).isEqualTo("Second");
    assertThat(studio.years()).isEqualTo(7);
    assertThat(studio.footage().shoots().everyHours()).isEqualTo(8760.0 / 90);
    assertThat(asked.out()).contains("[7] is what you said before.");
  }

  @Test
  void atTheFirstQuestionThereIsNothingToGoBackTo() throws Exception {
    asked.run("<\n<\nNamed\n", "--write", file.toString());
    assertThat(read().name()).isEqualTo("Named");
  }

  @Test
  void aWrongAnswerIsToldAndAskedAgain() throws Exception {
    String script = "A\nsoon\n0\n5\nmany\n50\n60\n60 Gb\n60 GB\n";
    asked.run(script, "--write", file.toString());
    assertThat(asked.out())
        .contains("A whole number from 1 to 30.")
        .contains("A whole number from 1 to 1000.")
        .contains("A number with its unit, such as 100 GB.")
        .contains("Did you mean 60 GB?");
    assertThat(read().footage().shoots().sizeBytes()).isEqualTo(60e9);
  }

  /** Red if an answer is not held against those before it. */
  @Test
  void answersThatDoNotFitEachOtherAreTold() throws Exception {
    String toDrives = "A\n5\n50\n60 GB\n3 TB\n\n2\n\n";
    asked.run(toDrives + "1 TB\n3\n4\n10\n", "--write", file.toString());
    assertThat(asked.out())
        .contains("Pairs take an even number of drives.")
        .contains("They hold 2 TB, which is less than the footage you have");
    asked.run("A\n30\n1000\n10 TB\n20 GB\n", "--write", file.toString(), "--force");
    assertThat(asked.out()).contains("this is for up to 1500 TB");
    asked.run("A\n30\n1000\n20 GB\n\n\n\n\n1 TB\n24 TB\n", "--write", file + "2");
    assertThat(asked.out()).contains("more than 100 drives");
  }

  @Test
  void theEndOfThePipeTakesTheRestAsSuggestedAndSaysSo() throws Exception {
    assertThat(asked.run("Only a name", "--write", file.toString())).isZero();
    assertThat(asked.out()).contains("The answers end here");
    assertThat(asked.ran()).isEmpty();
    assertThat(Files.readString(file)).contains("years: 5").doesNotContain("# (your answer)");
    assertThat(read().layouts()).hasSize(4);
  }

  @Test
  void aFileIsReplacedOnlyByForce() throws IOException {
    Files.writeString(file, "mine");
    assertThat(asked.run(NOTHING, "--write", file.toString())).isEqualTo(2);
    assertThat(asked.err()).contains("there is a file already").contains("--force");
    assertThat(asked.out()).isEmpty();
    assertThat(file).hasContent("mine");
    // Also one that other commands would take for a result of theirs.
    Files.writeString(file, "{\"format\": \"lastcopy-result/1\"}");
    assertThat(asked.run(NOTHING, "--write", file.toString())).isEqualTo(2);
    assertThat(asked.run(NOTHING, "--write", file.toString(), "--force")).isZero();
    assertThat(file).content().startsWith("# Written by 'lastcopy ask'");
  }

  /** A person is asked for the name, and whether a file of it may go. */
  @Test
  void aPersonIsAskedBeforeAFileIsReplaced() throws IOException {
    Files.writeString(file, "mine");
    Path other = folder.resolve("other.yaml");
    String all = "\n".repeat(QuestionTable.all().size() - 2);
    asked.person().run(all + file + "\n\n" + other + "\nno\n");
    assertThat(file).hasContent("mine");
    assertThat(other).content().contains("lastcopy: 1");
    asked.run(all + file + "\nyes\nno\n");
    assertThat(file).content().contains("lastcopy: 1");
  }

  @Test
  void comparingAndThePageAreOffered() {
    String all = "\n".repeat(QuestionTable.all().size() - 2);
    Path page = folder.resolve("page.html");
    asked.person().run(all + "yes\n" + page + "\n", "--write", file.toString());
    assertThat(asked.ran())
        .containsExactly(
            "compare", file.toString(), "--precision", "5%", "--report", page.toString());
  }

  /** Red if a slip ends the conversation after all was answered. */
  @Test
  void aSlipAtTheEndIsAskedAgain() throws IOException {
    String all = "\n".repeat(QuestionTable.all().size() - 2);
    Path page = folder.resolve("page.html");
    asked
        .person()
        .run(
            all + "of course\nyes\na\u0000b\n" + folder + "\n" + page + "\n",
            "--write",
            file.toString());
    assertThat(asked.out()).contains("Say yes or no.").contains("cannot name a file");
    assertThat(asked.ran()).endsWith("--report", page.toString());
    Files.writeString(page, "mine");
    Asked again = new Asked().person();
    again.run(all + "y\n" + page + "\n\nNo\n", "--write", folder.resolve("b.yaml").toString());
    assertThat(again.ran()).startsWith("compare").endsWith("--precision", "5%");
    Asked replaces = new Asked().person();
    replaces.run(all + "y\n" + page + "\nY\n", "--write", folder.resolve("c.yaml").toString());
    assertThat(replaces.ran()).endsWith("--report", page.toString(), "--force");
  }

  @Test
  void whoeverStopsLeavesNothing() throws IOException {
    assertThat(asked.person().run("A\n3\n", "--write", file.toString())).isEqualTo(130);
    assertThat(asked.err()).isEqualTo("lastcopy: stopped; nothing was written\n");
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).isEmpty();
    }
  }

  @Test
  void namesAreWrittenAsTheyAre() throws Exception {
    for (String name :
        List.of(
            "a: b # c", "\"quoted\" \\n {{x}} {{{y}}}", "'", "映画 ışık", "*a &b", "null", "- x")) {
      asked.run(name + "\n", "--write", file.toString(), "--force");
      assertThat(read().name()).isEqualTo(name);
    }
    asked.run("a\u001bb\nplain\n", "--write", file.toString(), "--force");
    assertThat(asked.out()).contains("letters that cannot be seen").doesNotContain("\u001b");
    assertThat(read().name()).isEqualTo("plain");
  }

  @Test
  void picturesAndFileNameTheSameLayouts() throws Exception {
    asked.run(NOTHING, "--write", file.toString());
    for (Layout layout : read().layouts()) {
      assertThat(asked.out()).contains("\n" + layout.id() + ": " + layout.title() + "\n");
    }
  }

  private Studio read() throws Exception {
    return ScenarioReader.read(file).studio();
  }

  private static String resource(String name) throws IOException {
    try (var in = AskCommandTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
