package lastcopy.decide.assumed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/** Two layouts whose crossing is known in closed form. */
class FlipSearchTest {

  private static final double YEARS = 5;
  private static final double HOURS = YEARS * Units.HOURS_PER_YEAR;

  /** A drive's expected failures by the horizon, and a mishap's. */
  private static final double FAILS = 0.05;

  private static final double MISHAPS = 0.1;

  private static final Place BUSY =
      Place.of("busy", new Mishap("fire", new Rate(MISHAPS / HOURS), 1));

  private static Studio studio(Place single, Place mirror) {
    DriveModel drive =
        DriveModel.builder("disk", 8 * Units.TB).fails(new Exponential(HOURS / FAILS)).build();
    Shoots shoots = new Shoots(Units.HOURS_PER_WEEK, 24 * Units.GB, Shoots.Spacing.EVEN);
    return Studio.builder("Crossing", YEARS)
        .footage(Footage.builder(shoots).onHand(Units.TB).build())
        .layout(layout("one", drive, Arrangement.SINGLE, 1, single))
        .layout(layout("two", drive, Arrangement.MIRROR, 2, mirror))
        .build();
  }

  /** What fails is never replaced. */
  private static Layout layout(
      String id, DriveModel drive, Arrangement arrangement, int drives, Place place) {
    Copy copy =
        Copy.builder("main")
            .on(Medium.DriveSet.builder(arrangement, drives).of(drive).build())
            .at(place)
            .arrival(new Fixed(1e9))
            .build();
    return Layout.builder(id).title(id).copy(copy).build();
  }

  private static List<Flip> flips(Studio studio, double confidence) {
    List<Assumption> numbers =
        Assumptions.of(studio, studio.layouts()).stream()
            .filter(each -> !each.id().endsWith(".wait"))
            .toList();
    return FlipSearch.of(numbers, "one", "two", 1, confidence, 2, () -> false);
  }

  /**
   * One drive in a quiet place loses with q = 1 − exp(−fa), a its expected failures; two without
   * repair in a busy place keep with e^(−b)(1 − q²), b the expected mishaps. Both keep as often
   * where 1 + q = e^b. Alarm rate 1e-6.
   */
  @Test
  void theTurnIsWhereTheClosedFormsCross() {
    List<Flip> flips = flips(studio(Place.of("quiet"), BUSY), 1 - 1e-6);
    Flip fails = flip(flips, "drives.disk");
    Flip mishaps = flip(flips, "places.busy");

    double byFailures = -Math.log1p(-Math.expm1(MISHAPS)) / FAILS;
    double byMishaps = Math.log1p(-Math.expm1(-FAILS)) / MISHAPS;
    holds(fails, byFailures);
    holds(mishaps, byMishaps);
    assertThat(byFailures).isBetween(2.2, 2.3);
    assertThat(byMishaps).isBetween(0.4, 0.5);
  }

  private static void holds(Flip flip, double exact) {
    Estimate factor = flip.factor().orElseThrow();
    assertThat(exact).isBetween(factor.low(), factor.high());
    assertThat(factor.high() / factor.low()).isLessThan(2);
    assertThat(flip.isLooked()).isTrue();
  }

  private static Flip flip(List<Flip> flips, String id) {
    return flips.stream()
        .filter(each -> each.assumption().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** In one place two drives are never worse than one, whatever the numbers. */
  @Test
  void whereOneIsAlwaysSaferNothingTurns() {
    assertThat(flips(studio(BUSY, BUSY), 0.95))
        .hasSize(2)
        .allMatch(flip -> flip.factor().isEmpty() && flip.isLooked());
  }

  @Test
  void whatThereIsNoTimeForIsNotLookedFor() {
    Studio studio = studio(Place.of("quiet"), BUSY);
    List<Assumption> numbers = Assumptions.of(studio, studio.layouts());

    assertThat(FlipSearch.of(numbers, "one", "two", 1, 0.95, 2, () -> true))
        .isNotEmpty()
        .noneMatch(Flip::isLooked);
  }
}
