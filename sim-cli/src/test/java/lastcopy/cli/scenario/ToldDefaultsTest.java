package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastcopy.cli.scenario.yaml.Default;
import org.junit.jupiter.api.Test;

/** All that is told of what a file leaves out, and of typical values that it asks for by name. */
class ToldDefaultsTest {

  private static final String FORMAT = "format default";

  private static List<String> told(String text) {
    return Texts.scenario(text).defaults().stream()
        .map(one -> one.where() + " " + one.key() + " = " + one.value())
        .toList();
  }

  /** The file says nothing of all these, and the table of keys has a default for each. */
  @Test
  void eachKeyThatIsLeftOut() {
    assertThat(told(Texts.VALID))
        .containsExactlyInAnyOrder(
            "footage on_hand = 0 GB",
            "footage growth = 0 %/year",
            "footage clip = 1 GB",
            "footage.shoots spacing = even",
            "places.studio.mishaps.fire takes = 1",
            "drives.desk speed = 120 MB/s",
            "drives.desk age = 0 h",
            "drives.desk bought_at = 0 h",
            "layouts.pair.main arrangement = single",
            "layouts.pair.main noticed = 0 h",
            "layouts.pair.main wait = 0 h",
            "layouts.pair.main gone_noticed = as noticed",
            "layouts.pair.main restores_at = the drive's speed",
            "layouts.pair.main keeps_deleted = nothing",
            "layouts.pair.main reach = online",
            "layouts.pair.main starts = full",
            "layouts.pair.far place = its own, without mishaps",
            "layouts.pair.far arrangement = single",
            "layouts.pair.far noticed = 0 h",
            "layouts.pair.far wait = 0 h",
            "layouts.pair.far gone_noticed = as noticed",
            "layouts.pair.far restores_at = the feed's link",
            "layouts.pair.far keeps_deleted = nothing",
            "layouts.pair.far reach = online",
            "layouts.pair.far starts = full",
            "layouts.pair.far.feed link = the slowest drive or box on the way",
            "layouts.pair.far.feed at = 0 h");
  }

  @Test
  void whatIsGivenIsNotTold() {
    String text =
        Texts.withDrive("size: 8 TB, fails: 2 %/year, speed: 1 MB/s, age: 1 year, bought_at: 1 day")
            .replace("main: {", "main: {starts: full, reach: online, ")
            .replace("footage:\n", "footage:\n  on_hand: 1 TB\n");
    assertThat(told(text))
        .noneMatch(one -> one.startsWith("drives.desk"))
        .doesNotContain(
            "layouts.pair.main starts = full",
            "layouts.pair.main reach = online",
            "footage on_hand = 0 GB")
        .contains("layouts.pair.far starts = full");
  }

  @Test
  void aGuessOfThisProjectIsNoDefaultOfTheFormat() {
    assertThat(Texts.scenario(Texts.VALID).defaults())
        .filteredOn(one -> !one.origin().equals(FORMAT))
        .containsExactly(new Default("drives.desk", "speed", "120 MB/s", "assumption"));
  }

  /** Asked for by name they are told as assumptions, however deep in a law they stand. */
  @Test
  void typicalValuesAreAssumptions() {
    String text =
        Texts.withDrive("size: 8 TB, fails: {law: {typical: hard-disk, level: low}, times: 2}")
                .replace("{fire: {rate: 1 %/year}}", "{typical: home}")
            + "desk: {typical: careful}\n";
    assertThat(Texts.scenario(text).defaults())
        .filteredOn(one -> one.origin().equals(Default.TYPICAL))
        .containsExactlyInAnyOrder(
            new Default("drives.desk", "fails", "hard-disk, low", Default.TYPICAL),
            new Default("places.studio.mishaps", "typical", "home", Default.TYPICAL),
            new Default("desk", "typical", "careful", Default.TYPICAL));
  }
}
