package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * What becomes of flows from and to a copy that spoils, by hand, whenever it does: about once in
 * 100 h. A hundred bytes are on hand; links carry one an hour.
 */
class SpoiltByHandTest {

  private static final double PER_HOUR = 1 / Units.SECONDS_PER_HOUR;
  private static final double FOREVER = 1e9;
  private static final Rate OFTEN = new Rate(1 / 100.0);
  private static final int HISTORIES = 100;

  private static CopyBuilder copy(String id, double lives) {
    return ByHand.copy(id, Arrangement.SINGLE, 1e6, lives, 24);
  }

  private static CopyBuilder fed(CopyBuilder copy, String from) {
    return copy.fed(Feed.from(from).every(1_000).link(PER_HOUR).build());
  }

  private static History history(double horizon, Copy... copies) {
    Footage footage =
        Footage.builder(new Shoots(FOREVER, 10, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Layout layout = new Layout("l", "l", List.of(copies), OptionalDouble.empty());
    return new History(
        Studio.builder("s", horizon / Units.HOURS_PER_YEAR).footage(footage).layout(layout).build(),
        layout,
        1);
  }

  /**
   * The far copy is filled from the start, or filled already, and the near one from it; another
   * copy dies at 20 h. What a spoilt copy had is what had come by then, and nothing more comes from
   * it.
   */
  @Test
  void nothingMoreComesFromIt() {
    Copy other = fed(copy("other", 20), "main").build();
    Copy near = fed(copy("near", FOREVER).startsEmpty(), "far").build();
    int found = 0;
    for (boolean full : new boolean[] {true, false}) {
      Copy far = fed(copy("far", FOREVER).startsFull(full).spoils(OFTEN), "main").build();
      History history = history(200, copy("main", FOREVER).build(), far, near, other);
      for (int k = 0; k < HISTORIES; k++) {
        ToldHistory told = ToldHistory.of(history, k);
        List<Happening> spoilt = told.all(Kind.SPOILT);
        double at = spoilt.isEmpty() ? 200 : spoilt.get(0).hours();
        double come = full ? 100 : Math.min(100, at);
        assertThat(spoilt).allMatch(each -> Math.abs(each.bytes() - come) < 1e-9);
        double nearHas = full ? Math.min(100, at) : 0; // its only run begins before anything came
        assertThat(told.after(Kind.END).heldBytes()[2]).isCloseTo(nearHas, within(1e-9));
        found += at < 100 ? 1 : 0;
      }
    }
    assertThat(found).isPositive();
  }

  /**
   * The working copy dies at 50 h and is back at 74. A near copy that is empty, and would give at
   * once, has spoilt by then or not: nobody turns to it. The far copy has all.
   */
  @Test
  void nobodyTurnsToOneThatHasNothing() {
    Copy near =
        copy("near", FOREVER)
            .startsEmpty()
            .spoils(OFTEN)
            .restoresAt(1e9)
            .fed(Feed.from("main").every(1_000, 900).build())
            .build();
    Copy far = fed(copy("far", FOREVER), "main").restoresAt(20 * PER_HOUR).build();
    History history = history(200, copy("main", 50).build(), near, far);
    int spoilt = 0;
    for (int k = 0; k < HISTORIES; k++) {
      ToldHistory told = ToldHistory.of(history, k);
      assertThat(told.all(Kind.SPOIL_FOUND)).isEmpty();
      assertThat(told.all(Kind.REFILLED)).extracting(Happening::hours).contains(79.0);
      spoilt += told.all(Kind.SPOILT).stream().anyMatch(each -> each.hours() < 74) ? 1 : 0;
    }
    assertThat(spoilt).isPositive();
  }
}
