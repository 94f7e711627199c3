package lastcopy.history.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import lastcopy.footage.ShootTable;
import lastcopy.history.plan.Plan;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.FeedBuilder;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs of a feed, of shoots of 20 bytes at given times over 2 bytes an hour, by hand. */
class FeedQueueTest {

  private static final double HORIZON = 1_000;
  private static final double ON_HAND = 100;
  private static final Footage FOOTAGE =
      Footage.builder(new Shoots(50, 20, Shoots.Spacing.RANDOM)).onHand(ON_HAND).clip(1).build();

  private static FeedQueue queue(FeedBuilder feed, boolean startsFull, double... shoots) {
    DriveModel model = DriveModel.builder("m", 1e9).fails(new Fixed(1e9)).build();
    Medium drive = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build();
    CopyBuilder far = Copy.builder("far").on(drive).fed(feed.link(2 / 3_600.0).build());
    List<Copy> copies =
        List.of(Copy.builder("main").on(drive).build(), far.startsFull(startsFull).build());
    Layout layout = new Layout("l", "l", copies, OptionalDouble.empty());
    Studio studio =
        Studio.builder("s", HORIZON / Units.HOURS_PER_YEAR).footage(FOOTAGE).layout(layout).build();
    FeedQueue queue = new FeedQueue(Plan.of(studio, layout).copy(1), HORIZON);
    queue.begin(ShootTable.at(FOOTAGE, shoots, shoots.length));
    return queue;
  }

  private static FeedBuilder daily() {
    return Feed.from("main").every(24, 2);
  }

  private static void stands(FeedQueue queue, double at, boolean inclusive, double... expected) {
    queue.moveTo(at, inclusive);
    assertThat(new double[] {queue.base(), queue.flowTo(), queue.runStart()})
        .as("at %s", at)
        .containsExactly(expected);
  }

  /**
   * Due at 2, 26, 50, 74 ...: the shoot of 10 goes from 26 to 36, that of 30 from 50 to 60, that of
   * 50, which the run of 50 does not see, from 74 to 84.
   */
  @Test
  void byTheClock() {
    FeedQueue queue = queue(daily(), true, 10, 30, 50);
    stands(queue, 20, true, 100, 0, 0);
    stands(queue, 26, false, 100, 0, 0);
    stands(queue, 26, true, 100, 120, 26);
    stands(queue, 36, false, 100, 120, 26);
    stands(queue, 36, true, 120, 0, 0);
    stands(queue, 55, true, 120, 140, 50);
    assertThat(queue.carried(55)).isEqualTo(130);
    stands(queue, 60, true, 140, 0, 0);
    stands(queue, 80, false, 140, 160, 74);
    stands(queue, 500, false, 160, 0, 0);
    assertThat(queue.longestLag()).as("50 to 84, and 84 − 50 = 34").isEqualTo(34);
    assertThat(queue.runs()).isEqualTo(3);
    assertThat(queue.shot(1)).isEqualTo(2);
    assertThat(queue.start(1)).isEqualTo(50);
    assertThat(queue.end(1)).isEqualTo(60);
  }

  /** From empty: 100 on hand from 2 to 52; what came meanwhile, and what was due, then at once. */
  @Test
  void aFirstFillThatRunsLate() {
    FeedQueue queue = queue(daily(), false, 10, 30);
    stands(queue, 1, true, 0, 0, 0);
    stands(queue, 50, true, 0, 100, 2);
    stands(queue, 53, true, 100, 140, 52);
    stands(queue, 72, true, 140, 0, 0);
    assertThat(queue.longestLag()).as("of the shoot of 10").isEqualTo(62);
  }

  /** The shoot of 10 from 10 to 20, those of 12 and 14 from 20 to 40, that of 100 at once. */
  @Test
  void continuously() {
    FeedQueue queue = queue(Feed.from("main").continuous(), true, 10, 12, 14, 100);
    stands(queue, 10, false, 100, 0, 0);
    stands(queue, 10, true, 100, 120, 10);
    stands(queue, 20, true, 120, 160, 20);
    stands(queue, 99, true, 160, 0, 0);
    stands(queue, 105, true, 160, 180, 100);
    assertThat(queue.longestLag()).isEqualTo(28);
  }

  /** A shoot that no run finds up to the horizon is behind by all the time until then. */
  @Test
  void whatIsNeverCarried() {
    assertThat(queue(daily(), true, 10, 990).longestLag()).isEqualTo(26);
    assertThat(queue(daily(), true, 10, 999).longestLag()).isEqualTo(26);
    assertThat(queue(Feed.from("main").every(300, 2), true, 910).longestLag()).isEqualTo(90);
  }

  /**
   * The bound is never wrong, against the runs themselves, and nearly always enough where a feed
   * keeps up: 0.4 of what its link could carry. Red if what waits for a run that is due, or what
   * came before, is left out.
   */
  @ParameterizedTest
  @ValueSource(strings = {"daily", "late", "continuous", "empty"})
  void aBoundWithoutALookAtRuns(String kind) {
    SplittableRandom random = new SplittableRandom(7);
    int all = 0;
    int seen = 0;
    for (int i = 0; i < 300; i++) {
      double[] shoots = new double[(int) (HORIZON / 25)];
      for (int k = 0; k < shoots.length; k++) {
        shoots[k] = random.nextDouble() * HORIZON;
      }
      java.util.Arrays.sort(shoots);
      FeedBuilder feed =
          switch (kind) {
            case "continuous" -> Feed.from("main").continuous();
            case "late" -> Feed.from("main").every(30, 400);
            default -> daily();
          };
      FeedQueue queue = queue(feed, !kind.equals("empty"), shoots);
      ShootTable table = ShootTable.at(FOOTAGE, shoots, shoots.length);
      for (int n = 0; n < 100; n++) {
        double at = random.nextDouble() * HORIZON;
        boolean surely = queue.surelyHasAll(at);
        queue.moveTo(at, false);
        int before = table.shotBefore(at);
        boolean has = queue.base() >= (before == 0 ? ON_HAND : table.end(before - 1));
        assertThat(surely && !has).as("studio %s at %s", i, at).isFalse();
        all += has ? 1 : 0;
        seen += surely ? 1 : 0;
      }
    }
    assertThat(seen).isGreaterThan(all / 2);
  }
}
