package lastcopy.cli.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import lastcopy.cli.inspect.InspectCommand;
import lastcopy.cli.inspect.InspectJson;
import lastcopy.cli.inspect.InspectText;
import lastcopy.cli.output.OmissionWords;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.cli.sentence.Remarks;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;

/** What a result says beside its figures, where it is true, and next to it where it is not. */
class RemarksTest {

  private static final String PAIRS =
      """
      lastcopy: 1
      studio: Quay Films
      years: 5
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 10 GB}}
      desk:
        deletion: {rate: 3 %/year, size: 1 shoots, noticed: 3 days}
        malware: {rate: 1 %/year, noticed: 5 days}
      places:
        studio: {mishaps: {fire: {rate: 1 %/year}}}
        home: {mishaps: {fire: {rate: 2 %/year}}}
      drives:
        desk: {size: 8 TB, fails: 2 %/year}
      layouts:
        near:
          title: Side by side
          copies:
            main: {place: studio, drives: 1 x desk, noticed: 1 day, wait: 2 days}
            far: {place: home, drives: 1 x desk, noticed: 1 day, wait: 2 days,
                  keeps_deleted: for good, feed: {from: main, every: 1 day, at: 2 h}}
        same:
          title: The same again
          copies:
            main: {place: studio, drives: 1 x desk, noticed: 1 day, wait: 2 days}
            far: {place: home, drives: 1 x desk, noticed: 1 day, wait: 2 days,
                  keeps_deleted: for good, feed: {from: main, every: 1 day, at: 2 h}}
      """;

  @Test
  void timesThatTheFileStatesAreNotAssumed() {
    assertThat(remarks(PAIRS).assumption("near")).isEmpty();
    assertThat(remarks(PAIRS).assumption("same")).isEmpty();
    String atOnce = PAIRS.replace("noticed: 1 day, wait: 2 days", "noticed: 0 h, wait: 0 h");
    assertThat(remarks(atOnce).assumption("near")).isEmpty();
  }

  @Test
  void timesThatItLeavesOutAreAssumed() {
    String failures = PAIRS.replaceFirst("noticed: 1 day, wait: 2 days", "read_errors: 0");
    assertThat(remarks(failures).assumption("near"))
        .hasValue("assumes that failures are seen and replaced at once (main)");
    assertThat(remarks(failures).assumption("same")).isEmpty();
    assertThat(remarks(failures).assumptionOfAll()).isEmpty();
    assertThat(remarks(PAIRS.replace(", wait: 2 days", "")).assumption("near"))
        .hasValue("assumes that what failed is replaced at once");
    assertThat(remarks(PAIRS.replace("noticed: 1 day, ", "")).assumption("same"))
        .hasValue("assumes that failures are seen at once");
    assertThat(remarks(PAIRS.replace("noticed: 1 day, ", "")).warnings())
        .as("it stands beside the figures, so it is no warning too")
        .isEmpty();
    String desk = PAIRS.replace(", noticed: 3 days", "").replace(", noticed: 5 days", "");
    assertThat(remarks(desk).assumptionOfAll())
        .hasValue("assumes that a deletion is seen at once, and that malware is seen at once");
  }

  /** Of one layout it is said of that alone. */
  @Test
  void oneLayoutIsNotEachLayout() {
    String both = PAIRS.replace(", noticed: 3 days", "");
    assertThat(remarks(both).assumptionOfAll()).isPresent();
    Remarks one = remarks(both.substring(0, both.indexOf("  same:")));
    assertThat(one.assumptionOfAll()).isEmpty();
    assertThat(one.assumption("near")).hasValue("assumes that a deletion is seen at once");
  }

  @Test
  void warningsAndCautionsAreAddedAtTheirEnds() {
    Remarks remarks = new Remarks(List.of(), Map.of(), List.of(), List.of("A"), List.of("B"));
    assertThat(remarks.andWarning("C").andCaution("D"))
        .isEqualTo(
            new Remarks(List.of(), Map.of(), List.of(), List.of("A", "C"), List.of("B", "D")));
  }

  @Test
  void whatIsNotCountedIsOneParagraph() {
    assertThat(paragraph(PAIRS))
        .isEqualTo(
            "Not counted, since the file says nothing about it: copies that turn out unusable when"
                + " they are needed; bits that cannot be read; drives of one batch that fail"
                + " together. Each of these would raise the chance of loss, and layouts may rank"
                + " otherwise.");
    String whole =
        PAIRS.replace(
            "wait: 2 days", "wait: 2 days, read_errors: 1e-15, batch: {name: a, spread: 1}");
    assertThat(paragraph(whole))
        .isEqualTo(
            "Not counted, since the file says nothing about it: copies that turn out unusable when"
                + " they are needed. It would raise the chance of loss, and layouts may rank"
                + " otherwise.");
    assertThat(paragraph(whole.replace("keeps_deleted", "spoils: {rate: 0 %/year}, keeps_deleted")))
        .isEmpty();
  }

  /** Above the figures where no place has a mishap, or nothing is said of the desk. */
  @Test
  void whatWouldMisleadComesFirst() {
    assertThat(above(PAIRS)).isFalse();
    assertThat(above(PAIRS.replace("mishaps: {fire: {rate: 2 %/year}}", "mishaps: {}"))).isFalse();
    assertThat(above(PAIRS.replaceAll("mishaps: \\{fire.*", "mishaps: {}}"))).isTrue();
    String noDeletion = PAIRS.replaceAll("  deletion:.*\n", "");
    assertThat(above(noDeletion)).isFalse();
    assertThat(
            above(noDeletion.replaceAll("  malware:.*\n", "").replace("desk:\nplaces", "places")))
        .isTrue();
  }

  @Test
  void aReportSaysItWhereItIsRead() {
    String quiet = PAIRS.replaceAll("mishaps: \\{fire.*", "mishaps: {}}");
    assertThat(report(remarks(quiet)).indexOf("Not counted"))
        .isBetween(1, report(remarks(quiet)).indexOf("Layout"));
    String text = report(remarks(PAIRS));
    assertThat(text.indexOf("Not counted")).isGreaterThan(text.indexOf("Layout"));
    String desk = PAIRS.replace(", noticed: 3 days", "");
    assertThat(report(remarks(desk)))
        .contains("Each layout assumes that a deletion is seen at once.");
    assertThat(text).doesNotContain("assumes");
  }

  /** What has no price is named once, where anything has one. */
  @Test
  void whatIsNotPricedIsNamed() {
    assertThat(remarks(PAIRS).warnings()).isEmpty();
    String begins = "What the file does not price counts as costing nothing: ";
    String drives = PAIRS.replace("size: 8 TB", "size: 8 TB, price: 90");
    assertThat(remarks(drives).warnings())
        .containsExactly(begins + "electric power; the owner's own time.");
    // A box that no layout uses is of no interest.
    String box = PAIRS.replace("drives:\n  desk", "boxes: {bay: {price: 90}}\ndrives:\n  desk");
    assertThat(remarks(box).warnings()).isEmpty();
    assertThat(remarks(box.replace("main: {", "main: {box: bay, ")).warnings())
        .containsExactly(begins + "drives (desk); electric power; the owner's own time.");
    String bare = drives.replace("drives:\n  desk", "boxes: {bay: {}}\ndrives:\n  desk");
    assertThat(remarks(bare.replace("main: {", "main: {box: bay, ")).warnings())
        .containsExactly(begins + "boxes (bay); electric power; the owner's own time.");
    String service = drives.replace("home, drives: 1 x desk", "home, service: {loses: 1 %/year}");
    assertThat(remarks(service).warnings())
        .containsExactly(begins + "services (far); electric power; the owner's own time.");
    String energy = PAIRS.replace("footage:", "energy: 0.3 per kWh\nfootage:");
    assertThat(remarks(energy).warnings()).isEmpty();
    assertThat(remarks(energy.replace("size: 8 TB", "size: 8 TB, power: 6 W")).warnings())
        .containsExactly(begins + "drives (desk); the owner's own time.");
    assertThat(
            remarks(PAIRS.replace("footage:", "work: {price: 9 per h, look: 1 h}\nfootage:"))
                .warnings())
        .containsExactly(begins + "drives (desk); electric power.");
  }

  /** Of five kinds of warnings, the worst three; of a kind, the first. */
  @Test
  void theWorstWarningsReachTheResult() {
    assertThat(remarks(PAIRS).warnings()).isEmpty();
    String bad =
        PAIRS
            .replace("place: home", "place: studio")
            .replace("keeps_deleted: for good, ", "")
            .replace("at: 2 h", "link: 0.01 Mbit/s")
            .replace("10 GB}}", "200 GB}}");
    List<String> warnings = remarks(bad).warnings();
    assertThat(warnings).hasSize(4);
    assertThat(warnings.get(0))
        .startsWith("Side by side: Malware (1.0 % a year) reaches every copy")
        .endsWith(" (Alike: 1 more.)");
    assertThat(warnings.get(1)).startsWith("Side by side: All copies stand in one place (studio)");
    assertThat(warnings.get(2)).startsWith("Side by side, far: Its feed never catches up");
    assertThat(warnings.get(3)).endsWith(" more warnings: 'lastcopy inspect' tells.");
    // Full rooms of both copies and the run at the shoot, in both layouts. A deletion never gets
    // across such a link, so that it is not noticed too late.
    assertThat(warnings.get(3)).startsWith("6 ");
  }

  /** A mirror that nobody looks at is told; one that raises an alarm is not. */
  @Test
  void thatNobodyLooksIsTold() {
    String mirror =
        PAIRS.replaceFirst(
            "1 x desk, noticed: 1 day",
            "2 x desk, arrangement: mirror, noticed: {checked_every: 90 days}");
    assertThat(remarks(mirror).warnings())
        .singleElement()
        .asString()
        .startsWith("Side by side, main: Somebody looks only every 90 days:");
    assertThat(remarks(mirror.replace("90 days", "7 days")).warnings()).isEmpty();
  }

  @Test
  void inspectSaysTheSame(@org.junit.jupiter.api.io.TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("quay.yaml"), PAIRS);
    InspectCommand.Inspected read = InspectCommand.fromFile(file);
    String text =
        InspectText.render(
            read.studios().central(),
            lastcopy.outlook.Outlook.of(read.studios().central()),
            List.of());
    assertThat(text.replaceAll("\\s+", " ")).contains(paragraph(PAIRS));
    var out = new java.io.ByteArrayOutputStream();
    InspectJson.write(
        read.studios().central(),
        lastcopy.outlook.Outlook.of(read.studios().central()),
        List.of(),
        out);
    assertThat(out.toString(java.nio.charset.StandardCharsets.UTF_8))
        .contains("\"not_counted\"")
        .contains("\"id\" : \"spoils\"")
        .doesNotContain("\"id\" : \"malware\"");
  }

  private static String report(Remarks remarks) {
    return TextReport.of(SampleComparison.result(true), remarks, false).replaceAll("\\s+", " ");
  }

  private static String paragraph(String text) {
    return OmissionWords.paragraph(remarks(text).omissions(), 2).orElse("");
  }

  private static boolean above(String text) {
    return OmissionWords.comeFirst(remarks(text).omissions());
  }

  private static Remarks remarks(String text) {
    try {
      Studio studio = ScenarioReader.parse("quay.yaml", text).studio();
      return Remarks.of(studio, List.of());
    } catch (ScenarioException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }
}
