package lastcopy.history.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lastcopy.history.History;
import lastcopy.history.course.ReckonedCourse;
import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.RepairTimes;
import lastcopy.history.report.Happening;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.simulate.DriveSets;
import lastcopy.simulate.SparedWork;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One outage of a working copy and a copy that is fed nightly, against the same histories told
 * event by event.
 */
class LoneOutageTest {

  private static final long SEED = 5;
  private static final int HISTORIES = 300;
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final Draws draws = new Draws(SEED);
  private Plan plan;
  private History history;
  private LoneOutage outage;
  private final HistoryLanes lanes = new HistoryLanes(draws);

  private void start(Studio studio) {
    plan = Plan.of(studio, studio.layouts().get(0));
    history = new History(studio, studio.layouts().get(0), SEED);
    double[] limit =
        IntStream.range(0, plan.sources())
            .mapToDouble(
                i ->
                    Screen.below(
                        i < plan.slots()
                            ? plan.slot(i).firstHazard()
                            : plan.shock(i - plan.slots()).perHour() * plan.horizon()))
            .toArray();
    UndisturbedCourse course = new ReckonedCourse(plan, draws);
    outage = new LoneOutage(plan, draws, new RepairTimes(plan, draws), course, limit, lanes);
  }

  private List<Happening> told(long number, Happening.Kind kind, int copy) {
    List<Happening> all = new ArrayList<>();
    history.tell(
        number,
        (happening, snapshot) -> {
          if (happening.kind() == kind && (copy < 0 || happening.copy() == copy)) {
            all.add(happening);
          }
        });
    draws.start(number);
    return all;
  }

  /**
   * Whether the third source, beside a drive each, spares work, takes the other, is at the desk.
   */
  @ParameterizedTest
  @CsvSource({
    "stops, true, false, false",
    "spoilt far, true, true, false",
    "deletions, true, false, true",
    "malware, true, false, true"
  })
  void whatSparesTheWorkingCopy(String kind, boolean spares, boolean other, boolean desk) {
    start(SparedWork.studio(kind));
    assertThat(outage.sparesWork(0)).as("its own drive").isFalse();
    assertThat(outage.sparesWork(1)).as("the other's").isTrue();
    assertThat(outage.takesOther(1)).isTrue();
    assertThat(outage.isAtDesk(1)).isFalse();
    assertThat(outage.sparesWork(2)).isEqualTo(spares);
    assertThat(outage.takesOther(2)).isEqualTo(other);
    assertThat(outage.isAtDesk(2)).isEqualTo(desk);
  }

  /** A working copy that keeps nothing of what disappears has not got it back. */
  @Test
  void aStrikeAtTheDeskTakesWhatIsNotKept() {
    DriveModel model = DriveModel.builder("m", 8e12).fails(new Exponential(1e5)).build();
    Medium single = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build();
    Footage footage =
        Footage.builder(new Shoots(168, 1e10, Shoots.Spacing.EVEN)).onHand(1e12).build();
    Desk.Deletion deletion =
        new Desk.Deletion(new Rate(1e-4), new Desk.Bytes(1e11), new Exponential(72));
    for (double keeps : new double[] {0, 1}) {
      Copy main = Copy.builder("main").on(single).keepsDeleted(keeps).build();
      start(
          Studio.builder("s", 5)
              .footage(footage)
              .desk(new Desk(Optional.of(deletion), Optional.empty()))
              .layout(Layout.of("l", main))
              .build());
      assertThat(outage.isAtDesk(1)).isEqualTo(keeps > 0);
      assertThat(outage.sparesWork(1)).isEqualTo(keeps > 0);
    }
  }

  @Test
  void aMishapWhereItStandsDoesNot() {
    start(DriveSets.studio("shared"));
    int mishap = plan.slots();
    assertThat(outage.sparesWork(mishap)).isFalse();
    assertThat(outage.takesOther(mishap)).isTrue();
  }

  /** From the other copy at 5e7 a second, twice over, and a day. */
  @Test
  void theLongestRefillIsFromEveryOtherCopy() {
    start(SparedWork.studio("stops"));
    assertThat(LoneOutage.longestRefill(plan))
        .isCloseTo(24 + 2 * plan.mostEverShot() / (5e7 * 3_600), within(1e-9));
  }

  /** Of each copy the time at which it is first gone; of what strikes the time of the first. */
  @Test
  void theFirstTimeIsTheOneThatIsTold() {
    start(SparedWork.studio("deletions"));
    for (int k = 0; k < HISTORIES; k++) {
      for (int c = 0; c < 2; c++) {
        is(first(told(k, Happening.Kind.COPY_GONE, c)), outage.first(c));
      }
      is(first(told(k, Happening.Kind.DELETED, -1)), outage.first(2));
    }
  }

  private static OptionalDouble first(List<Happening> all) {
    return all.stream().mapToDouble(Happening::hours).findFirst();
  }

  private void is(OptionalDouble told, double first) {
    if (told.isPresent()) {
      assertThat(first).isCloseTo(told.getAsDouble(), within(1e-6));
    } else {
      assertThat(first).isGreaterThan(plan.horizon());
    }
  }

  /** The working copy keeps what disappears for 5 days, or 30; all lanes at once, and one alone. */
  @ParameterizedTest
  @CsvSource({"noticed late, 120", "deletions, 720", "malware, 720"})
  void aStrikeIsNoticedInTimeOrNot(String kind, double keeps) {
    start(SparedWork.studio(kind));
    Happening.Kind strike =
        kind.equals("malware") ? Happening.Kind.MALWARE : Happening.Kind.DELETED;
    int late = 0;
    for (int k = 0; k < HISTORIES; k++) {
      boolean inTime =
          told(k, strike, -1).stream().allMatch(each -> each.until() - each.hours() < keeps);
      lanes.moveTo(k);
      long lane = 1L << k % HistoryLanes.SIZE;
      assertThat(outage.mayBeNoticedLate(2, lane)).as("history %s", k).isEqualTo(inTime ? 0 : lane);
      assertThat(outage.mayBeNoticedLate(2, -1) & lane).isEqualTo(inTime ? 0 : lane);
      assertThat(outage.mayBeNoticedLate(2, ~lane) & lane).isZero();
      late += inTime ? 0 : 1;
    }
    assertThat(late).isLessThan(HISTORIES);
    assertThat(late).isGreaterThan(kind.equals("noticed late") ? 100 : -1);
  }

  /**
   * The working copy goes once; nothing is lost if the other one had all, and goes only after a
   * refill that may take the longest there is.
   */
  @Test
  void anOutageThatIsOverLosesNothing() {
    start(SparedWork.studio("stops"));
    double longest = LoneOutage.longestRefill(plan);
    int decided = 0;
    for (int k = 0; k < HISTORIES; k++) {
      List<Happening> back = told(k, Happening.Kind.COPY_BACK, 0);
      List<Happening> gone = told(k, Happening.Kind.COPY_GONE, 0);
      if (gone.isEmpty()) {
        assertThat(outage.losesNothing(0, 0)).as("it does not go").isTrue();
      } else if (outage.losesNothing(0, NEVER)) {
        decided++;
        assertThat(gone).hasSize(1);
        double until = back.get(0).hours() + longest;
        assertThat(outage.losesNothing(0, until + 1e-6)).isTrue();
        assertThat(outage.losesNothing(0, until - 1e-6)).isFalse();
      }
      assertThat(outage.losesNothing(0, NEVER) && gone.size() > 1).isFalse();
    }
    assertThat(decided).isGreaterThan(40);
  }

  /** What the other copy hides a refill would meet. */
  @Test
  void whereTheOtherHidesBitsNothingIsDecided() {
    start(SparedWork.studio("far hides bits"));
    for (int k = 0; k < HISTORIES; k++) {
      boolean goes = !told(k, Happening.Kind.COPY_GONE, 0).isEmpty();
      assertThat(outage.losesNothing(0, NEVER)).as("history %s", k).isEqualTo(!goes);
    }
  }
}
