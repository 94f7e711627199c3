package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastcopy.outlook.Omission;
import lastcopy.outlook.Omission.Kind;
import lastcopy.outlook.Omissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each omission with a scenario that has it and one, next to it, that has not. */
class OmissionsTest {

  /** Nothing is left out of it. */
  private static final String WHOLE =
      """
      lastcopy: 1
      studio: Reed Bank Films
      years: 5
      footage: {shoots: {every: 7 days, size: 10 GB}}
      desk:
        deletion: {rate: 3 %/year, size: 1 shoots, noticed: 3 days}
        malware: {rate: 1 %/year, noticed: 5 days}
      places:
        studio: {mishaps: {fire: {rate: 1 %/year}}}
        home: {mishaps: {fire: {rate: 2 %/year}}}
      drives:
        desk: {size: 8 TB, fails: 2 %/year}
      layouts:
        pair:
          copies:
            main: {place: studio, drives: 1 x desk, noticed: 1 day, wait: 2 days,
                   read_errors: 1e-15, batch: {name: spring, spread: 0.5}}
            far: {place: home, drives: 1 x desk, noticed: 1 day, wait: 2 days, read_errors: 1e-15,
                  spoils: {rate: 2 %/year}, feed: {from: main, every: 1 day}}
      """;

  @Test
  void nothingIsLeftOut() {
    assertThat(omissions(WHOLE)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          PLACE_MISHAPS          | {mishaps: {fire: | {mishaps: {}} #   | {mishaps: {flood:
          MISHAPS_OF_SOME_PLACES | {mishaps: {fire: {rate: 2 | {mishaps: {}} # | {mishaps: {fire: {rate: 0
          MISHAPS_OF_SOME_PLACES | place: home, | | place: studio,
          DELETION               | deletion: {rate: 3 %/year, size: 1 shoots, noticed: 3 days} | | deletion: {rate: 0 %/year, size: 1 shoots}
          MALWARE                | malware: {rate: 1 %/year, noticed: 5 days} | | malware: {rate: 0 %/year}
          DELETION_SEEN_AT_ONCE  | shoots, noticed: 3 days | shoots | shoots, noticed: 0 h
          DELETION_SEEN_AT_ONCE  | 3 %/year, size: 1 shoots, noticed: 3 days | 3 %/year, size: 1 shoots | 0 %/year, size: 1 shoots
          MALWARE_SEEN_AT_ONCE   | year, noticed: 5 days | year | year, noticed: 0 h
          FAILURES_SEEN_AT_ONCE  | noticed: 1 day, | | noticed: 0 h,
          REPLACED_AT_ONCE       | wait: 2 days, | | wait: 0 h,
          SPOILS                 | spoils: {rate: 2 %/year}, | | spoils: {rate: 0 %/year},
          READ_ERRORS            | read_errors: 1e-15, | | read_errors: 0,
          READ_ERRORS            | read_errors: 1e-15, | | latent_defects: 1 %/year,
          BATCH                  | , batch: {name: spring, spread: 0.5} | | , batch: {name: of one shop, spread: 0.1}
          """)
  void isListedAndNotListed(Kind kind, String old, String without, String with) {
    String left = without == null ? "" : without;
    assertThat(kinds(WHOLE.replace(old, left))).containsExactly(kind);
    assertThat(kinds(WHOLE.replace(old, with))).isEmpty();
  }

  /** A file that says nothing: the worst first. */
  @Test
  void theWorstIsFirst() {
    assertThat(kinds(Texts.VALID.replace("mishaps: {fire: {rate: 1 %/year}}", "mishaps: {}")))
        .containsExactly(
            Kind.PLACE_MISHAPS,
            Kind.DELETION,
            Kind.MALWARE,
            Kind.FAILURES_SEEN_AT_ONCE,
            Kind.REPLACED_AT_ONCE,
            Kind.SPOILS,
            Kind.READ_ERRORS,
            Kind.BATCH);
  }

  /** What is said of one copy or place and not of another is named. */
  @Test
  void whatIsSaidOfSomeNamesTheOthers() {
    String spoiltOnly = WHOLE.replace("wait: 2 days, read_errors: 1e-15,", "");
    assertThat(omissions(spoiltOnly))
        .containsExactly(
            new Omission(Kind.REPLACED_AT_ONCE, List.of("far")),
            new Omission(Kind.READ_ERRORS, List.of("far")));
    assertThat(omissions(WHOLE.replace("place: home", "place: bank box")))
        .containsExactly(new Omission(Kind.MISHAPS_OF_SOME_PLACES, List.of("bank box")));
  }

  /** What a service keeps stands in no place of the studio, and has no drives. */
  @Test
  void aServiceCountsItsOwnMishaps() {
    String far = WHOLE.substring(WHOLE.indexOf("      far: {"), WHOLE.indexOf("spoils:"));
    String service = "      far: {service: {loses: 0.2 %/year}, noticed: 1 day, wait: 1 day, ";
    String alone = WHOLE.replace(far, service).replace(", batch: {name: spring, spread: 0.5}", "");
    assertThat(omissions(alone)).isEmpty();
    String turns = "rotation: {drives: 2, every: 7 days}, spoils:";
    assertThat(kinds(WHOLE.replace(", batch: {name: spring, spread: 0.5}", "")))
        .containsExactly(Kind.BATCH);
    assertThat(kinds(WHOLE.replace("spoils:", turns).replace("every: 1 day}", "every: 7 days}")))
        .isEmpty();
  }

  private static List<Kind> kinds(String text) {
    return omissions(text).stream().map(Omission::kind).toList();
  }

  private static List<Omission> omissions(String text) {
    return Omissions.of(Texts.studio(text));
  }
}
