package lastcopy.cli.sentence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastcopy.cli.scenario.yaml.Default;
import lastcopy.typical.DriveKind;
import lastcopy.typical.TypicalLives;
import org.junit.jupiter.api.Test;

class TypicalWordsTest {

  /** Red if what shares a source is told twice, or a source stands beside the wrong value. */
  @Test
  void eachIsToldWithWhatSuggestsIt() {
    List<Default> defaults =
        List.of(
            typical("desk", "typical", "usual"),
            new Default("layouts.one.main", "wait", "0 h", "format default"),
            typical("places.studio.mishaps", "typical", "business"),
            typical("places.old barn.mishaps", "typical", "home"),
            typical("drives.red", "fails", "portable, low"),
            typical("drives.red", "fails_off", "portable, low"),
            typical("drives.blue", "fails", "used-hard-disk, central"));
    assertThat(TypicalWords.sentence(defaults))
        .contains(
            "Typical values, so assumptions of this project: the desk as usual (deletions: Smith"
                + " 2003; malware: UK Cyber Security Breaches Survey 2025; when they are noticed is"
                + " a guess); what strikes studio as a business, what strikes old barn as a home"
                + " (fire: NFPA 2018 and US Fire Administration 2010; theft: US Bureau of Justice"
                + " Statistics, 2011; water and surges: US insurance statistics, 2015-2020); red"
                + " fails as portable, low, red fails while off as portable, low (twice a hard disk, and 1 % a year for a knock); blue"
                + " fails as used-hard-disk, central (1.5 times a hard disk of that age, and 1 % in the 30 days after it is bought)."
                + " 'lastcopy rates' lists them.");
  }

  @Test
  void nothingIsSaidWhereNoneIsAskedFor() {
    assertThat(TypicalWords.sentence(List.of(new Default("desk", "wait", "0 h", "format default"))))
        .isEmpty();
  }

  /** The few words name what the long ones, which lastcopy rates prints, name too. */
  @Test
  void theFewWordsAreOfTheSourcesOfTheTable() {
    assertThat(TypicalLives.suggestedBy(DriveKind.HARD_DISK)).contains("data centres", "FAST 2007");
    assertThat(TypicalLives.SOURCE)
        .contains("data centres", "FAST 2007", "2025", "boot drives of the same operator, 2022-23")
        .contains("twice a hard disk and 1 % a year for a knock", "1.5 times a hard disk");
  }

  private static Default typical(String where, String key, String value) {
    return new Default(where, key, value, Default.TYPICAL);
  }
}
