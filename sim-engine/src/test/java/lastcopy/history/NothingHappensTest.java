package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.Happening;
import lastcopy.history.screen.Screen;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
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
import org.junit.jupiter.api.Test;

/** A history is said to be one in which nothing happens where the same, told, has no event. */
class NothingHappensTest {

  private static final long SEED = 5;
  private static final int HISTORIES = 400;

  private static boolean happens(History history, long number) {
    Set<Happening.Kind> seen = EnumSet.noneOf(Happening.Kind.class);
    history.tell(number, (happening, snapshot) -> seen.add(happening.kind()));
    seen.removeAll(Set.of(Happening.Kind.START, Happening.Kind.END));
    return !seen.isEmpty();
  }

  private static int quiet(Studio studio, boolean saysSo) {
    Plan plan = Plan.of(studio, studio.layouts().get(0));
    Draws draws = new Draws(SEED);
    History history = new History(studio, studio.layouts().get(0), SEED);
    Screen screen = new Screen(plan, draws, history.course(), history.effects(), () -> {});
    int quiet = 0;
    for (int k = 0; k < HISTORIES; k++) {
      boolean happens = happens(history, k);
      draws.start(k);
      assertThat(screen.nothingHappens()).as("history %s", k).isEqualTo(saysSo && !happens);
      quiet += happens ? 0 : 1;
    }
    return quiet;
  }

  /** Lives, mishaps, stops and deletions of a rate of 1 in 11 years each, over five years. */
  private static Studio studio(boolean batch, boolean startsFull) {
    Rate rate = new Rate(1e-5);
    DriveModel model = DriveModel.builder("m", 8e12).fails(new Exponential(1e5)).build();
    Medium.DriveSet single = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build();
    Medium far =
        batch
            ? Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).batch("b", .5).build()
            : single;
    CopyBuilder main = Copy.builder("main").on(single).at(place("studio", rate));
    Layout layout =
        Layout.of(
            "l",
            main.startsFull(startsFull).build(),
            Copy.builder("far")
                .on(far)
                .at(place("home", rate))
                .fed(Feed.from("main").every(24, 2).stops(rate).checkedEvery(900).build())
                .build());
    Footage footage =
        Footage.builder(new Shoots(168, 1e10, Shoots.Spacing.EVEN)).onHand(1e12).build();
    return Studio.builder("s", 5).footage(footage).layout(layout).build();
  }

  private static Place place(String id, Rate rate) {
    return Place.of(id, new Mishap("fire", rate, 1));
  }

  @Test
  void nothingAtAll() {
    assertThat(quiet(studio(false, true), true)).isBetween(20, HISTORIES - 20);
  }

  /** What starts empty has to be filled, and how frail a batch is nobody knows before. */
  @Test
  void whatIsNotKnownBeforeMayHappen() {
    assertThat(quiet(studio(false, false), false)).isZero();
    assertThat(quiet(studio(true, true), false)).isPositive();
  }
}
