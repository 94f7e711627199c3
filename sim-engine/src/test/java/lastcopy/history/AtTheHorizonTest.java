package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.footage.ShootTable;
import lastcopy.history.hazard.Bias;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/** What happens exactly at the horizon counts. */
class AtTheHorizonTest {

  private static final double EVERY = 100;

  /**
   * Of two shoots the first stands in one copy for an hour, and the second, three times as large,
   * comes at the horizon: it is the most that stood in one copy, whether the history is on its
   * undisturbed course or played event by event. Red if the end of the latter is not looked at.
   */
  @Test
  void aShootAtTheHorizonStandsInOneCopy() {
    for (boolean byCourse : new boolean[] {true, false}) {
      Studio studio = studio();
      History history = new History(studio, studio.layouts().get(0), 1, Bias.NONE, byCourse);
      Log log = new Log();
      history.simulate(0, log);
      assertThat(log.losses).isEmpty();
      assertThat(log.time[5]).as("by the course: " + byCourse).isEqualTo(secondShoot());
      assertThat(log.time[0]).isEqualTo(2 * EVERY);
    }
  }

  private static double growth() {
    return Math.pow(3, Units.HOURS_PER_YEAR / EVERY) - 1;
  }

  private static double secondShoot() {
    ShootTable shoots = ShootTable.even(footage(), 2 * EVERY);
    assertThat(shoots.count()).isEqualTo(2);
    return shoots.end(1) - shoots.start(1);
  }

  private static Footage footage() {
    return new Footage(
        0,
        new Shoots(EVERY, Units.GB, Shoots.Spacing.EVEN),
        growth(),
        OptionalDouble.empty(),
        Units.GB,
        OptionalDouble.empty());
  }

  private static Studio studio() {
    Layout layout =
        new Layout(
            "only",
            "only",
            List.of(
                copy("main", Optional.empty()),
                copy(
                    "far",
                    Optional.of(
                        new Feed(
                            "main",
                            new Feed.Every(EVERY, 1),
                            OptionalDouble.of(1e15),
                            Rate.NONE,
                            OptionalDouble.empty(),
                            Feed.DEFAULT_VISIT_HOURS,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty())))),
            OptionalDouble.empty());
    return new Studio(
        "test",
        2 * EVERY / Units.HOURS_PER_YEAR,
        Optional.empty(),
        footage(),
        Desk.QUIET,
        List.of(layout));
  }

  private static Copy copy(String id, Optional<Feed> feed) {
    DriveModel model =
        DriveModel.builder("drive", 8 * Units.TB).fails(new Exponential(1e30)).build();
    Medium drive =
        Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).rebuild(new Fixed(1)).build();
    CopyBuilder copy = Copy.builder(id).on(drive).arrival(new Fixed(1)).restoresAt(1e15);
    feed.ifPresent(copy::fed);
    return copy.build();
  }
}
