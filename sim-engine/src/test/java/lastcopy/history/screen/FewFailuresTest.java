package lastcopy.history.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import lastcopy.history.History;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.Happening;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Uniform;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.DriveModelBuilder;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Drives counted together against the same histories told event by event. Red if a life that a
 * failure begins is not counted, if one that a swap begins is not, if what hides bits is borne like
 * what does not.
 */
class FewFailuresTest {

  private static final long SEED = 7;
  private static final int BLOCKS = 40;

  private static final Set<Effect> EFFECTS =
      EnumSet.of(Effect.FAILURES, Effect.REPAIRS, Effect.PLANNED_SWAPS, Effect.READ_ERRORS);

  private static Studio studio(Medium drives) {
    Copy main = Copy.builder("main").on(drives).arrival(new Uniform(0, 400)).build();
    Shoots weekly = new Shoots(Units.HOURS_PER_WEEK, 1e10, Shoots.Spacing.EVEN);
    return Studio.builder("few failures", 8)
        .footage(Footage.builder(weekly).onHand(1e12).build())
        .layout(Layout.builder("only").copy(main).build())
        .build();
  }

  private static Medium drives(String kind) {
    return switch (kind) {
      case "two" ->
          Medium.DriveSet.builder(Arrangement.MIRROR, 2)
              .of(drive().fails(new Exponential(40_000)).build())
              .build();
      case "six" ->
          Medium.DriveSet.builder(Arrangement.DOUBLE_PARITY, 6)
              .of(drive().fails(new Weibull(0.6, 90_000, 0)).build())
              .build();
      case "swapped" ->
          Medium.DriveSet.builder(Arrangement.MIRROR, 3)
              .of(
                  drive()
                      .fails(new Weibull(3, 24_000, 0))
                      .age(new Fixed(4_000))
                      .boughtAt(1_000)
                      .build())
              .replaceAt(15_000)
              .build();
      case "unreadable" ->
          Medium.DriveSet.builder(Arrangement.DOUBLE_PARITY, 5)
              .of(drive().fails(new Exponential(90_000)).build())
              .readErrors(1e-14)
              .build();
      default -> throw new IllegalArgumentException(kind);
    };
  }

  private static DriveModelBuilder drive() {
    return DriveModel.builder("drive", 8e12);
  }

  private static int failures(History history, long number) {
    int[] count = new int[1];
    history.tell(
        number,
        (happening, snapshot) ->
            count[0] += happening.kind() == Happening.Kind.DRIVE_FAILED ? 1 : 0);
    return count[0];
  }

  /** None of so few has more, and most that have no more are found. */
  @ParameterizedTest
  @ValueSource(strings = {"two", "six", "swapped", "unreadable"})
  void whatHasFewHasNoMore(String kind) {
    Studio studio = studio(drives(kind));
    Layout layout = studio.layouts().get(0);
    Plan plan = Plan.of(studio, layout);
    History history = new History(studio, layout, SEED);
    HistoryLanes lanes = new HistoryLanes(new Draws(SEED));
    int bears = plan.copy(0).set().survives() - (kind.equals("unreadable") ? 1 : 0);
    FewFailures few = FewFailures.of(plan, plan.copy(0), 0, EFFECTS).orElseThrow();
    int found = 0;
    int most = 0;
    int there = 0;
    for (int block = 0; block < BLOCKS; block++) {
      lanes.moveTo((long) block * HistoryLanes.SIZE);
      long more = few.more(lanes);
      for (int i = 0; i < HistoryLanes.SIZE; i++) {
        int failures = failures(history, lanes.number(i));
        there += failures <= bears ? 1 : 0;
        if ((more >>> i & 1) == 0) {
          assertThat(failures).as("history %s", lanes.number(i)).isLessThanOrEqualTo(bears);
          most = Math.max(most, failures);
          found++;
        }
      }
    }
    assertThat(most).isEqualTo(bears);
    assertThat(found).isBetween(there / 2, there);
    assertThat(there).isBetween(100, BLOCKS * HistoryLanes.SIZE - 100);
  }

  private static Optional<FewFailures> of(Medium drives, Effect more) {
    Studio studio = studio(drives);
    Plan plan = Plan.of(studio, studio.layouts().get(0));
    Set<Effect> effects = EnumSet.copyOf(EFFECTS);
    effects.add(more);
    return FewFailures.of(plan, plan.copy(0), 0, effects);
  }

  private static Medium mirror(DriveModelBuilder drive, double replaceAt) {
    return Medium.DriveSet.builder(Arrangement.MIRROR, 2)
        .of(drive.build())
        .replaceAt(replaceAt)
        .build();
  }

  /** Strain, ages that nobody knows, no redundancy, and more than 16 lives of a slot. */
  @Test
  void whereMoreThanTheirNumberMattersItIsNotCounted() {
    DriveModelBuilder known = drive().fails(new Exponential(40_000));
    assertThat(of(mirror(known, 9_000), Effect.PAIRS)).isPresent();
    assertThat(of(mirror(known, 9_000), Effect.STRAIN)).isEmpty();
    assertThat(of(mirror(known, 8 * 8_760 / 15.5), Effect.PAIRS)).isPresent();
    assertThat(of(mirror(known, 8 * 8_760 / 16.5), Effect.PAIRS)).isEmpty();
    Medium single = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(known.build()).build();
    assertThat(of(single, Effect.PAIRS)).isEmpty();
    DriveModelBuilder aged = drive().fails(new Exponential(40_000)).age(new Uniform(0, 900));
    assertThat(of(mirror(aged, 9_000), Effect.PAIRS)).isEmpty();
  }

  /** Of two mirrored pairs the second, of which the first tells nothing. */
  @Test
  void eachPairIsCountedByItself() {
    DriveModel often = drive().fails(new Exponential(20_000)).build();
    DriveModel seldom = DriveModel.builder("other", 8e12).fails(new Exponential(90_000)).build();
    Medium pairs =
        Medium.DriveSet.builder(Arrangement.PAIRS, 4).ofEach(often, often, seldom, seldom).build();
    Studio studio = studio(pairs);
    Layout layout = studio.layouts().get(0);
    Plan plan = Plan.of(studio, layout);
    History history = new History(studio, layout, SEED);
    HistoryLanes lanes = new HistoryLanes(new Draws(SEED));
    Set<Effect> effects = EnumSet.of(Effect.FAILURES, Effect.REPAIRS, Effect.PAIRS);
    FewFailures second = FewFailures.of(plan, plan.copy(0), 1, effects).orElseThrow();
    lanes.moveTo(0);
    long more = second.more(lanes);
    int most = 0;
    for (int i = 0; i < HistoryLanes.SIZE; i++) {
      int[] failed = new int[1];
      history.tell(
          i,
          (happening, snapshot) ->
              failed[0] +=
                  happening.kind() == Happening.Kind.DRIVE_FAILED && happening.drive() >= 2
                      ? 1
                      : 0);
      if ((more >>> i & 1) == 0) {
        assertThat(failed[0]).as("history %s", i).isLessThanOrEqualTo(1);
        most = Math.max(most, failed[0]);
      }
    }
    assertThat(most).isEqualTo(1);
    assertThat(Long.bitCount(more)).as("two of 90,000 h over 70,080 h").isBetween(10, 40);
  }
}
