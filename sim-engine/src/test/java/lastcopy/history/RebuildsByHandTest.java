package lastcopy.history;

import static lastcopy.history.Rows.after;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Rebuild.Reads;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * When a drive is whole again, by hand. One of a mirror, of 1,000 bytes, dies at 100 h and is
 * replaced at 124, when 140 bytes are held of 100 on hand and ten more every 30 h.
 */
class RebuildsByHandTest {

  private static final Rebuild.Time BYTE_AN_HOUR =
      new Rebuild.ByRate(OptionalDouble.of(1 / Units.SECONDS_PER_HOUR), 0);

  private static DriveModel lives(double hours) {
    return DriveModel.builder("m", 1_000).fails(new Fixed(hours)).build();
  }

  private static List<String> rebuilt(Rebuild.Time time, Reads reads, double errors) {
    Medium mirror =
        Medium.DriveSet.builder(Arrangement.MIRROR, 2)
            .ofEach(lives(100), lives(1e9))
            .rebuild(time)
            .reads(reads)
            .readErrors(errors)
            .build();
    Footage footage =
        Footage.builder(new Shoots(30, 10, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Layout layout = Layout.of("l", Copy.builder("main").on(mirror).arrival(new Fixed(24)).build());
    List<String> rows =
        after(
            "DRIVE_FAILED",
            Rows.told(
                Studio.builder("s", 1_130 / Units.HOURS_PER_YEAR)
                    .footage(footage)
                    .layout(layout)
                    .build()));
    return rows.subList(0, 2).stream().map(row -> row.substring(0, row.indexOf(" ["))).toList();
  }

  /** 1,000 bytes, known beforehand, or 140, which is known when it begins. */
  @Test
  void atARate() {
    assertThat(rebuilt(BYTE_AN_HOUR, Reads.ALL, 0))
        .containsExactly("100 DRIVE_FAILED 0 0 0 1124", "1124 DRIVE_READY 0 0 0 -");
    assertThat(rebuilt(BYTE_AN_HOUR, Reads.USED, 0))
        .containsExactly("100 DRIVE_FAILED 0 0 0 -", "264 DRIVE_READY 0 0 0 -");
  }

  /** Fifty hours, whatever is held; what it reads counts only if not all bits can be read. */
  @Test
  void inATimeThatIsStated() {
    Rebuild.Time fifty = new Rebuild.ByLaw(new Fixed(50));
    for (Reads reads : Reads.values()) {
      assertThat(rebuilt(fifty, reads, 0))
          .containsExactly("100 DRIVE_FAILED 0 0 0 174", "174 DRIVE_READY 0 0 0 -");
    }
    assertThat(rebuilt(fifty, Reads.USED, 1e-12))
        .containsExactly("100 DRIVE_FAILED 0 0 0 -", "174 DRIVE_READY 0 0 0 -");
  }
}
