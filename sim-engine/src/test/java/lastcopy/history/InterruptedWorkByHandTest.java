package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * How long work stands still when a drive of a shelf dies, by hand: only if it is the one that
 * shoots go to. A shelf has drives of 100 bytes, the first full at the start, the second in service
 * from the first shoot, at 30 h, on; ten bytes come every 30 h, and the far copy gives back 20 an
 * hour. A replacement takes 24 h.
 */
class InterruptedWorkByHandTest {

  private static final double PER_HOUR = 1 / Units.SECONDS_PER_HOUR;

  /** Writes down what a ledger is told of interruptions: what by, hours of work, hours of all. */
  private static final class Recoveries implements Ledger {
    private final List<String> told = new ArrayList<>();

    @Override
    public void lost(Loss loss) {}

    @Override
    public void passed(
        double hours, double bare, double fragile, double down, double refill, double most) {}

    @Override
    public void recovered(Cause cause, double workHours, double wholeHours) {
      told.add(cause.id() + " " + workHours + " " + wholeHours);
    }

    @Override
    public boolean wantsTime() {
      return true;
    }
  }

  private static DriveModel lives(double hours) {
    return DriveModel.builder("m", hours < 1e6 ? 100 : 1e6).fails(new Fixed(hours)).build();
  }

  private static List<String> recoveries(double horizon, double first, double second) {
    Medium shelf =
        Medium.DriveSet.builder(Arrangement.SHELF, 2).ofEach(lives(first), lives(second)).build();
    Medium single = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(lives(1e9)).build();
    Layout layout =
        Layout.of(
            "l",
            Copy.builder("main").on(shelf).arrival(new Fixed(24)).build(),
            Copy.builder("far")
                .on(single)
                .fed(Feed.from("main").every(24, 2).link(10 * PER_HOUR).build())
                .restoresAt(20 * PER_HOUR)
                .build());
    return recoveries(horizon, layout);
  }

  private static List<String> recoveries(double horizon, Layout layout) {
    Studio studio =
        Studio.builder("s", horizon / Units.HOURS_PER_YEAR)
            .footage(
                Footage.builder(new Shoots(30, 10, Shoots.Spacing.EVEN))
                    .onHand(100)
                    .clip(1)
                    .build())
            .layout(layout)
            .build();
    Recoveries recoveries = new Recoveries();
    new History(studio, layout, 1).simulate(0, recoveries);
    return recoveries.told;
  }

  /** The first dies at 200.5 h, is there at 224.5 and full 5 h later; shoots go to the second. */
  @Test
  void aDriveThatIsFull() {
    assertThat(recoveries(300, 200.5, 900)).containsExactly("drive 0.0 29.0");
  }

  /** The second dies at 30 + 200.5 h with 70 bytes, which take 3.5 h from 254.5 h on. */
  @Test
  void theDriveThatShootsGoTo() {
    assertThat(recoveries(300, 900, 200.5)).containsExactly("drive 24.0 27.5");
  }

  /**
   * The first dies at 200.5 h and the second, while it is filled, at 227.5: shoots wait until 251.5
   * h, and its 70 bytes are back 3.5 h later. Red if all is told to be back with the first drive's.
   */
  @Test
  void bothOneAfterTheOther() {
    assertThat(recoveries(300, 200.5, 197.5)).containsExactly("drive 51.0 54.5");
  }

  /** The horizon comes first: it ends the wait. */
  @Test
  void theHorizonEndsTheWait() {
    assertThat(recoveries(240.5, 900, 200.5)).containsExactly("drive 10.0 NaN");
    assertThat(recoveries(210.5, 200.5, 900)).containsExactly("drive 0.0 NaN");
  }

  /** A lone copy dies at 200.5 h; cards have the last shoot, of 180 h, if they are kept for 60. */
  @Test
  void whatCardsGiveBackComesBack() {
    assertThat(alone(60)).containsExactly("drive 24.0 24.0");
    assertThat(alone(30)).containsExactly("drive 24.0 NaN");
  }

  private static List<String> alone(double cards) {
    Medium single = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(lives(200.5)).build();
    Copy main = Copy.builder("main").on(single).arrival(new Fixed(24)).build();
    return recoveries(230, new Layout("l", "l", List.of(main), OptionalDouble.of(cards)));
  }
}
