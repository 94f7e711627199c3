package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/** What malware took and what gives it back, by hand, whenever it struck. */
class DeskByHandTest {

  private static final double FOREVER = 1e9;

  private static CopyBuilder copy(String id, Arrangement arrangement, double lives) {
    return ByHand.copy(id, arrangement, 100, lives, 24);
  }

  private static Studio studio(
      double horizon, Footage footage, Desk.Malware malware, OptionalDouble cards, Copy... copies) {
    return Studio.builder("s", horizon / Units.HOURS_PER_YEAR)
        .footage(footage)
        .desk(Desk.of(malware))
        .layout(new Layout("l", "l", List.of(copies), cards))
        .build();
  }

  private static List<Happening> told(Studio studio, int number) {
    List<Happening> told = new ArrayList<>();
    new History(studio, studio.layouts().get(0), 1).tell(number, (each, now) -> told.add(each));
    return told;
  }

  /**
   * Malware takes all 80 bytes from both copies about an hour after the start, and the far shelf
   * keeps them aside on its only drive, which dies at 100 h: only then are they lost. Red if what a
   * drive kept is neither held nor lost.
   */
  @Test
  void whatAShelfKeptDiesWithItsDrive() {
    Footage footage =
        Footage.builder(new Shoots(FOREVER, 1, Shoots.Spacing.EVEN)).onHand(80).clip(1).build();
    Copy main = copy("main", Arrangement.SINGLE, FOREVER).build();
    Copy far =
        copy("far", Arrangement.SHELF, 100)
            .keepsDeleted(FOREVER)
            .fed(Feed.from("main").every(24).build())
            .build();
    Desk.Malware malware = new Desk.Malware(new Rate(1), new Fixed(FOREVER));
    List<Happening> lost =
        told(studio(120, footage, malware, OptionalDouble.empty(), main, far), 0).stream()
            .filter(each -> each.kind() == Kind.LOST)
            .toList();
    assertThat(lost).hasSize(1);
    assertThat(lost.get(0).hours()).isEqualTo(100);
    assertThat(lost.get(0).bytes()).isEqualTo(80);
  }

  /**
   * A lone copy shoots 10 bytes every 100 h, and cards keep them for 60 h, out of reach of malware,
   * which is noticed after 20 h: what comes back is the last shoot, if it is on its cards still.
   */
  @Test
  void whatCardsStillHaveIsPutBack() {
    Footage footage = Footage.builder(new Shoots(100, 10, Shoots.Spacing.EVEN)).clip(1).build();
    Studio studio =
        studio(
            2_000,
            footage,
            new Desk.Malware(new Rate(1 / 300.0), new Fixed(20)),
            OptionalDouble.of(60),
            copy("main", Arrangement.SINGLE, FOREVER).build());
    int back = 0;
    int late = 0;
    for (int k = 0; k < 20; k++) {
      double struck = Double.NEGATIVE_INFINITY;
      boolean alone = true;
      for (Happening each : told(studio, k)) {
        if (each.kind() == Kind.MALWARE) {
          alone = each.hours() - struck > 20;
          struck = each.hours();
        } else if (each.kind() == Kind.NOTICED && alone && each.hours() == struck + 20) {
          boolean onCards = struck > 100 && struck % 100 + 20 < 60;
          assertThat(each.bytes()).as("struck at %s h", struck).isEqualTo(onCards ? 10 : 0);
          back += onCards ? 1 : 0;
          late += onCards ? 0 : 1;
        }
      }
    }
    assertThat(back).isPositive();
    assertThat(late).isPositive();
  }

  /** Each wait for the next strike is drawn by itself. Red if a draw serves twice. */
  @Test
  void noTwoWaitsAreTheSame() {
    Footage footage = Footage.builder(new Shoots(10, 10, Shoots.Spacing.EVEN)).clip(1).build();
    Studio studio =
        studio(
            3_000,
            footage,
            new Desk.Malware(new Rate(1 / 300.0), new Fixed(20)),
            OptionalDouble.empty(),
            copy("main", Arrangement.SINGLE, FOREVER).build());
    double before = 0;
    List<Long> waits = new ArrayList<>();
    for (Happening each : told(studio, 1)) {
      if (each.kind() == Kind.MALWARE) {
        waits.add(Math.round((each.hours() - before) * 1e6));
        before = each.hours();
      }
    }
    assertThat(waits).hasSizeGreaterThan(2).doesNotHaveDuplicates();
  }
}
