package lastcopy.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import lastcopy.outlook.Omission;
import lastcopy.outlook.Omission.Kind;
import lastcopy.outlook.Unpriced;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of what a file leaves out, of facts made by hand. */
class OmissionWordsTest {

  private static Omission everywhere(Kind kind) {
    return new Omission(kind, List.of());
  }

  private static List<Omission> all(Kind... kinds) {
    return Stream.of(kinds).map(OmissionWordsTest::everywhere).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "PLACE_MISHAPS | mishaps of any place (fire, theft, water)",
        "DELETION | deletion by mistake",
        "MALWARE | malware",
        "DELETION_SEEN_AT_ONCE | the time until a deletion is noticed",
        "MALWARE_SEEN_AT_ONCE | the time until malware is noticed",
        "MISHAPS_OF_SOME_PLACES | mishaps of some places (home, that of far)",
        "FAILURES_SEEN_AT_ONCE | the time until a failure is noticed (home, that of far)",
        "REPLACED_AT_ONCE | the time until what failed is replaced (home, that of far)",
        "SPOILS | copies that turn out unusable when they are needed (home, that of far)",
        "READ_ERRORS | bits that cannot be read (home, that of far)",
        "BATCH | drives of one batch that fail together",
      })
  void eachHasItsWords(Kind kind, String words) {
    assertThat(OmissionWords.title(new Omission(kind, List.of("home", "copy:far"))))
        .isEqualTo(words);
    String alone = words.replace(" (home, that of far)", "");
    assertThat(OmissionWords.title(everywhere(kind))).isEqualTo(alone);
  }

  /** Other layouts can rank otherwise only where there are others. */
  @Test
  void oneLayoutHasNoRank() {
    assertThat(OmissionWords.paragraph(List.of(), 2)).isEmpty();
    String begins = "Not counted, since the file says nothing about it: malware";
    assertThat(OmissionWords.paragraph(all(Kind.MALWARE), 1))
        .hasValue(begins + ". It would raise the chance of loss.");
    assertThat(OmissionWords.paragraph(all(Kind.MALWARE), 2))
        .hasValue(begins + ". It would raise the chance of loss, and layouts may rank otherwise.");
    assertThat(OmissionWords.paragraph(all(Kind.MALWARE, Kind.DELETION), 1))
        .hasValue(begins + "; deletion by mistake. Each of these would raise the chance of loss.");
  }

  /** No place has a mishap, or nothing at all is said of the desk. */
  @ParameterizedTest
  @CsvSource({
    "PLACE_MISHAPS, true",
    "PLACE_MISHAPS DELETION, true",
    "DELETION MALWARE, true",
    "DELETION, false",
    "MALWARE, false",
    "MISHAPS_OF_SOME_PLACES SPOILS, false",
  })
  void whatMisleadsMostIsReadFirst(String kinds, boolean first) {
    Kind[] left = Arrays.stream(kinds.split(" ", -1)).map(Kind::valueOf).toArray(Kind[]::new);
    assertThat(OmissionWords.comeFirst(all(left))).isEqualTo(first);
  }

  @Test
  void timesThatAreLeftOutAreTakenForNone() {
    assertThat(OmissionWords.assumptions(all(Kind.SPOILS))).isEmpty();
    assertThat(
            OmissionWords.assumptions(all(Kind.DELETION_SEEN_AT_ONCE, Kind.MALWARE_SEEN_AT_ONCE)))
        .containsExactly("a deletion is seen at once", "malware is seen at once");
    assertThat(OmissionWords.assumptions(all(Kind.FAILURES_SEEN_AT_ONCE, Kind.REPLACED_AT_ONCE)))
        .containsExactly("failures are seen and replaced at once");
    Omission seen = new Omission(Kind.FAILURES_SEEN_AT_ONCE, List.of("main"));
    assertThat(OmissionWords.assumptions(List.of(seen)))
        .containsExactly("failures are seen at once (main)");
    Omission replaced = new Omission(Kind.REPLACED_AT_ONCE, List.of("far"));
    assertThat(OmissionWords.assumptions(List.of(replaced)))
        .containsExactly("what failed is replaced at once (far)");
    assertThat(OmissionWords.assumptions(List.of(seen, replaced)))
        .as("of different copies")
        .containsExactly(
            "failures are seen at once (main)", "what failed is replaced at once (far)");
  }

  @ParameterizedTest
  @CsvSource({
    "DRIVES, 'drives (a, b)'",
    "BOXES, 'boxes (a, b)'",
    "SERVICES, 'services (a, b)'",
    "POWER, 'electric power (a, b)'",
    "WORK, the owner's own time",
  })
  void whatHasNoPriceIsNamed(Unpriced.Kind kind, String words) {
    Unpriced unpriced = new Unpriced(kind, List.of("a", "b"));
    assertThat(PriceWords.title(unpriced)).isEqualTo(words);
    assertThat(PriceWords.title(new Unpriced(kind, List.of())))
        .isEqualTo(words.replace(" (a, b)", ""));
    assertThat(PriceWords.sentence(List.of())).isEmpty();
    assertThat(PriceWords.sentence(List.of(unpriced, new Unpriced(Unpriced.Kind.WORK, List.of()))))
        .hasValue(
            "What the file does not price counts as costing nothing: "
                + words
                + "; the owner's own time.");
  }
}
