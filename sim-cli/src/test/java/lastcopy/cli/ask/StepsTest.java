package lastcopy.cli.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The steps that follow from answers, and what the file says of them. */
class StepsTest {

  private static List<String> steps(String... own) {
    return Steps.of(Answered.by(own)).stream()
        .map(step -> step.id() + ": " + step.title())
        .toList();
  }

  @Test
  void fromOneDriveThereAreAMirrorADriveElsewhereAndAService() {
    assertThat(steps("drive-size", "16 TB"))
        .containsExactly(
            "today: Today: one drive",
            "mirror: Each drive twice, in one box",
            "far-drive: Today's, and a drive at home",
            "service: Today's, and a paid service");
    assertThat(steps("drive-size", "8 TB", "place", "home"))
        .containsExactly(
            "today: Today: 2 drives",
            "mirror: Each drive twice, in one box",
            "far-drive: Today's, and drives at a friend's",
            "service: Today's, and a paid service");
    assertThat(steps("drive-size", "8 TB", "drives", "1"))
        .contains("today: Today: one drive after the other");
  }

  @Test
  void whatIsThereAlreadyIsNoStep() {
    assertThat(steps("main", "mirror", "second", "elsewhere", "drive-size", "16 TB"))
        .containsExactly(
            "today: Today: two drives that hold the same, the same at home",
            "service: Today's, and a paid service",
            "watched: Today's, looked at every day, with a spare drive");
    assertThat(steps("main", "parity", "second", "service", "drive-size", "8 TB"))
        .containsExactly(
            "today: Today: 3 drives, one may fail, and a paid service",
            "far-drive: Today's, and drives at home",
            "watched: Today's, looked at every day, with a spare drive");
    assertThat(steps("second", "elsewhere", "drive-size", "16 TB"))
        .containsExactly(
            "today: Today: one drive, the same at home",
            "mirror: Each drive twice, in one box",
            "service: Today's, and a paid service",
            "mirror-and-service: A mirror in one box, and a paid service");
    assertThat(steps("second", "service", "drive-size", "16 TB"))
        .contains("mirror-and-far: A mirror in one box, and a drive at home");
    assertThat(steps("main", "mirror", "drives", "4", "drive-size", "8 TB", "second", "beside"))
        .containsExactly(
            "today: Today: 4 drives in pairs, the same beside it",
            "far-drive: Today's, and drives at home",
            "service: Today's, and a paid service",
            "far-drive-and-service: Today's, drives at home, and a paid service");
  }

  /** 2 TB a year are 63 kB/s: half of a line of 1.015 Mbit/s. */
  @ParameterizedTest
  @CsvSource({"1.02 Mbit/s, over the line, day", "1.01 Mbit/s, carried there, 7 days"})
  void whatALineTakesTooLongForIsCarried(String line, String by, String every) {
    LayoutSketch far = Steps.of(Answered.by("uplink", line, "drive-size", "16 TB")).get(2);
    assertThat(Picture.of(far, "16 TB"))
        .contains("v  from main, " + by + ", every " + every + "\n")
        .contains("| main: 1 x 16 TB |")
        .doesNotContain("looked at every day");
  }

  private static String page(String... own) throws IOException {
    Answers answers = Answered.by(own);
    return ScenarioPage.of(answers, Steps.of(answers));
  }

  @Test
  void theFileSaysWhoseAnAnswerIs() throws IOException {
    assertThat(page()).contains("price (as suggested), times").doesNotContain("keep_for");
    assertThat(page("hour", "35")).contains("price: 35 per h").contains("price (your answer)");
    assertThat(page("keep", "2 years")).contains("keep_for: 2 years");
    assertThat(page("tried", "never"))
        .contains("spoils: {rate: 2 %/year}")
        .contains("tries (your answer)");
    assertThat(page()).contains("tried_every: 3 months}").contains("tries (as suggested)");
  }

  /** Only drives that were bought together, in one box, share a fault. */
  @Test
  void aBatchIsOfABoxBoughtAtOnce() throws IOException {
    String[] box = {"main", "mirror", "drives", "2", "drive-size", "16 TB"};
    assertThat(page(box)).contains("batch: {name: main, spread: 0.5}");
    assertThat(page("main", "mirror", "drives", "2", "drive-size", "16 TB", "together", "no"))
        .doesNotContain("batch:");
    assertThat(page("drives", "2", "drive-size", "8 TB")).doesNotContain("batch:");
  }

  @Test
  void lookingEveryDayNeverMakesItLater() throws IOException {
    String[] few = {"main", "parity", "second", "service", "noticed", "1 month"};
    assertThat(page(few)).contains("somebody looks every day").contains("the spare is put in");
    assertThat(page("main", "parity", "second", "service", "noticed", "1 h"))
        .doesNotContain("somebody looks every day")
        .contains("the spare is put in at once");
    assertThat(page()).doesNotContain("the spare is put in");
  }
}
