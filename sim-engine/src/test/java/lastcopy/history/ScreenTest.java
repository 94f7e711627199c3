package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import lastcopy.history.course.ReckonedCourse;
import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.Happening;
import lastcopy.history.report.HistoryListener;
import lastcopy.history.report.Snapshot;
import lastcopy.history.screen.Screen;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.simulate.DriveSets;
import lastcopy.simulate.SparedWork;
import lastcopy.simulate.TwoCopies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The screen against the same histories told event by event: it lets none pass in which something
 * is lost, and passes all in which sets only fail and heal.
 *
 * <p>Red if a sum of a repair differs, if another key is drawn, if a drive that is whole again
 * counts as down, if a copy that lags is taken for one that is up to date, if a new drive that may
 * fail is taken for one that outlives the horizon, if a strike at the desk that is noticed late is
 * taken for one that is noticed in time, if a bit that a refill cannot read is forgotten, if a copy
 * may go while the working copy is still filled from it.
 */
class ScreenTest {

  private static final int HISTORIES = 1_500;
  private static final long SEED = 5;

  /** How often each kind of happening was told in one history. */
  private static final class Count implements HistoryListener {
    final Map<Happening.Kind, Integer> seen = new EnumMap<>(Happening.Kind.class);

    @Override
    public void saw(Happening happening, Snapshot snapshot) {
      seen.merge(happening.kind(), 1, Integer::sum);
    }

    int of(Happening.Kind kind) {
      return seen.getOrDefault(kind, 0);
    }
  }

  private int passed;
  private int healed;
  private int cameBack;
  private final Count ofPassed = new Count();

  private void look(Studio studio, boolean decidesHealing) {
    Plan plan = Plan.of(studio, studio.layouts().get(0));
    Draws draws = new Draws(SEED);
    History history = new History(studio, studio.layouts().get(0), SEED);
    UndisturbedCourse course =
        plan.evenShoots() ? history.course() : new ReckonedCourse(plan, draws);
    Screen screen = new Screen(plan, draws, course, history.effects(), () -> {});
    for (int k = 0; k < HISTORIES; k++) {
      boolean passes = screen.nothingIsLost(k);
      Count count = new Count();
      history.tell(k, count);
      int outages = count.of(Happening.Kind.COPY_GONE) + count.of(Happening.Kind.MISHAP);
      if (passes) {
        assertThat(count.of(Happening.Kind.LOST)).as("losses of history %s", k).isZero();
        passed++;
        count.seen.keySet().forEach(kind -> ofPassed.seen.merge(kind, 1, Integer::sum));
        healed += count.of(Happening.Kind.DRIVE_FAILED) > 0 && outages == 0 ? 1 : 0;
        cameBack += outages > 0 ? 1 : 0;
      } else if (decidesHealing) {
        assertThat(outages).as("outages of history %s", k).isPositive();
      }
    }
    assertThat(passed).as("histories that pass").isBetween(1, HISTORIES - 1);
  }

  @ParameterizedTest
  @CsvSource({
    "parity, true",
    "wide parity, true",
    "double parity, true",
    "three mirrored, true",
    "looked at, true",
    "aged, true",
    "by age, true",
    "never replaced, true",
    "stripe, true",
    "burgled, true",
    "strained, true",
    "strained sum, true",
    "one batch, true",
    "frail batch, true",
    "batch of a certain age, true",
    "swapped, true",
    "swapped by the clock, false",
    "fails early, false",
    "strained hard, true",
    "'strained, unreadable', false",
    "hides spots, false",
    "unreadable, false"
  })
  void passesWhatHeals(String kind, boolean decidesAll) {
    look(DriveSets.studio(kind), decidesAll);
    assertThat(healed).as("of them with a failure").isPositive();
  }

  /** Where nothing else holds what a rebuild cannot read, one failure may lose it. */
  @ParameterizedTest
  @ValueSource(strings = {"unreadable", "strained, unreadable"})
  void aRebuildWithoutRedundancyIsNotPassed(String kind) {
    look(DriveSets.alone(kind), false);
  }

  /** Where nothing else holds anything, no history passes in which too many of a set are down. */
  @ParameterizedTest
  @ValueSource(strings = {"frail batch", "strained", "three mirrored"})
  void anOutageOfAllThatThereIsIsNotPassed(String kind) {
    look(DriveSets.alone(kind), true);
    assertThat(healed).as("of those that pass with a failure").isPositive();
  }

  @ParameterizedTest
  @ValueSource(strings = {"nightly", "lagging", "continuous", "chain", "shared"})
  void passesWhatComesBack(String kind) {
    look(studio(kind), false);
    assertThat(cameBack).as("of them with an outage").isPositive();
  }

  private static Studio studio(String kind) {
    return kind.equals("shared") ? DriveSets.studio(kind) : TwoCopies.studio(kind);
  }

  /** What loses nothing while the working copy stands passes, most of it. */
  @ParameterizedTest
  @CsvSource({
    "stops, FEED_STOPPED, 1000",
    "spoilt far, SPOILT, 800",
    "deletions, DELETED, 800",
    "noticed late, DELETED, 30",
    "noticed too late, COPY_GONE, 1",
    "noticed after a day, DELETED, 800",
    "malware, MALWARE, 800",
    "random shoots, COPY_GONE, 800",
    "slow first fill, COPY_GONE, 300",
    "far hides bits, COPY_GONE, 600",
    "mirror hides bits, COPY_GONE, 250",
    "batch, COPY_GONE, 500",
    "shelf, DRIVE_FAILED, 300",
    "working shelf, DRIVE_FAILED, 100",
    "working shelf, MISHAP, 50",
    "struck mirror, MISHAP, 100",
    "struck and strained, MISHAP, 20",
    "'struck, hides bits', MISHAP, 10"
  })
  void passesWhatSparesTheWorkingCopy(String kind, Happening.Kind happens, int atLeast) {
    look(SparedWork.studio(kind), false);
    assertThat(ofPassed.of(happens)).as("of them in which it happens").isGreaterThan(atLeast);
  }

  /** A mirror that was bare hides bits from a refill only where another copy has to be filled. */
  @Test
  void passesAMirrorThatNobodyReadsWhileItIsBare() {
    look(SparedWork.studio("mirror hides bits"), false);
    assertThat(healed).as("of them with a failure and no outage").isPositive();
  }

  /** Noticed by a law, and rebuilt by the rate of a drive: 8 TB at 10 MB/s are 222 h. */
  @Test
  void passesWhatIsNoticedLateAndRebuiltSlowly() {
    DriveModel model = DriveModel.builder("m", 8e12).fails(new Exponential(20_000)).build();
    Copy main =
        Copy.builder("main")
            .on(
                Medium.DriveSet.builder(Arrangement.MIRROR, 2)
                    .of(model)
                    .rebuild(new Rebuild.ByRate(OptionalDouble.of(1e7), 0))
                    .build())
            .noticed(new Delay.Lawful(new Exponential(400)))
            .arrival(new Fixed(50))
            .build();
    Footage footage =
        Footage.builder(new Shoots(168, 1e10, Shoots.Spacing.EVEN)).onHand(1e12).build();
    Layout layout = Layout.of("l", main);
    look(Studio.builder("s", 5).footage(footage).layout(layout).build(), true);
    assertThat(healed).as("of them with a failure").isGreaterThan(500);
  }

  /** Nothing need fail for a loss: a first fill meets what the other copy hides, and may be cut. */
  @Test
  void aFirstFillLosesWhatItCannotRead() {
    Studio studio = SparedWork.studio("first fill");
    Plan plan = Plan.of(studio, studio.layouts().get(0));
    History history = new History(studio, studio.layouts().get(0), SEED);
    Screen screen =
        new Screen(plan, new Draws(SEED), history.course(), history.effects(), () -> {});
    int lost = 0;
    for (int k = 0; k < HISTORIES; k++) {
      Count count = new Count();
      history.tell(k, count);
      if (count.of(Happening.Kind.LOST) > 0) {
        lost++;
        assertThat(screen.nothingIsLost(k)).as("history %s, with a loss, passes", k).isFalse();
      }
    }
    assertThat(lost).isGreaterThan(50);
  }
}
