package lastcopy.history.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.IntStream;
import lastcopy.history.History;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.Happening;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.simulate.SparedWork;
import org.junit.jupiter.api.Test;

/** A first fill of the working copy, against the same histories told event by event. */
class FirstFillTest {

  private static final long SEED = 5;
  private static final Set<Happening.Kind> DISTURB =
      EnumSet.of(Happening.Kind.DRIVE_FAILED, Happening.Kind.COPY_GONE, Happening.Kind.MISHAP);

  private final HistoryLanes lanes = new HistoryLanes(new Draws(SEED));

  private static FirstFill of(Studio studio, double hours) {
    Plan plan = Plan.of(studio, studio.layouts().get(0));
    long[] keys =
        IntStream.range(0, plan.sources())
            .mapToLong(
                i ->
                    i < plan.slots()
                        ? plan.slot(i).firstKey()
                        : plan.shock(i - plan.slots()).key(0))
            .toArray();
    return new FirstFill(plan, hours, keys);
  }

  /** An empty working copy and a mirror of it, with a fire at either place, over five years. */
  private static Studio fires() {
    DriveModel model = DriveModel.builder("m", 8e12).fails(new Exponential(50_000)).build();
    Rate rate = new Rate(2e-5);
    Layout layout =
        Layout.of(
            "l",
            Copy.builder("main")
                .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
                .at(Place.of("studio", new Mishap("fire", rate, 1)))
                .startsEmpty()
                .build(),
            Copy.builder("far")
                .on(Medium.DriveSet.builder(Arrangement.MIRROR, 2).of(model).build())
                .at(Place.of("home", new Mishap("fire", rate, 1)))
                .fed(Feed.from("main").every(24, 2).build())
                .build());
    Footage footage =
        Footage.builder(new Shoots(168, 1e10, Shoots.Spacing.EVEN)).onHand(1e12).build();
    return Studio.builder("s", 5).footage(footage).layout(layout).build();
  }

  /** Over 9,000 h three drives of 50,000 and two fires, each as often, come in half of all. */
  @Test
  void itIsDisturbedByWhatHappensBeforeItIsOver() {
    Studio studio = fires();
    History history = new History(studio, studio.layouts().get(0), SEED);
    FirstFill fill = of(studio, 9_000);
    assertThat(fill.mayPass()).isTrue();
    int disturbed = 0;
    for (int block = 0; block < 6; block++) {
      lanes.moveTo((long) block * HistoryLanes.SIZE);
      long those = fill.disturbed(lanes);
      disturbed += Long.bitCount(those);
      for (int i = 0; i < HistoryLanes.SIZE; i++) {
        boolean[] early = new boolean[1];
        history.tell(
            lanes.number(i),
            (happening, snapshot) ->
                early[0] |= DISTURB.contains(happening.kind()) && happening.hours() <= 9_000);
        assertThat((those >>> i & 1) != 0).as("history %s", lanes.number(i)).isEqualTo(early[0]);
      }
    }
    assertThat(disturbed).isBetween(150, 320);
  }

  /** A lone copy that hides bits gives none of them to a fill. */
  @Test
  void fromACopyThatHidesBitsItMayLose() {
    assertThat(of(SparedWork.studio("first fill"), 100).mayPass()).isFalse();
  }

  /** Without another copy there is nothing to fill from. */
  @Test
  void byItselfNothingFillsIt() {
    DriveModel model = DriveModel.builder("m", 8e12).fails(new Exponential(50_000)).build();
    Medium single = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build();
    Layout layout = Layout.of("l", Copy.builder("main").on(single).startsEmpty().build());
    Footage footage =
        Footage.builder(new Shoots(168, 1e10, Shoots.Spacing.EVEN)).onHand(1e12).build();
    Studio alone = Studio.builder("s", 5).footage(footage).layout(layout).build();
    assertThat(of(alone, 100).mayPass()).isFalse();
  }

  /** Where the working copy has all there is none. */
  @Test
  void whatStartsFullHasNone() {
    FirstFill none = of(SparedWork.studio("far hides bits"), 100);
    assertThat(none.mayPass()).isTrue();
    lanes.moveTo(0);
    assertThat(none.disturbed(lanes)).isZero();
  }
}
