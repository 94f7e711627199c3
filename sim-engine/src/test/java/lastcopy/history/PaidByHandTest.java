package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Expense;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.FootageBuilder;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a ledger is told to have been paid, by hand: what drives that die cost and draw, and what is
 * stored of footage of which some is lost and some ages out.
 */
class PaidByHandTest {

  private static final double FOREVER = 1e9;
  private static final double TB_PER_HOUR = Units.TB / Units.SECONDS_PER_HOUR;

  private static Log simulated(double horizon, Footage footage, boolean byCourse, Copy... copies) {
    Layout layout = Layout.of("l", copies);
    Studio studio =
        Studio.builder("s", horizon / Units.HOURS_PER_YEAR)
            .footage(footage)
            .energy(1)
            .layout(layout)
            .build();
    Log log = new Log();
    new History(studio, layout, 1, Bias.NONE, byCourse).simulate(0, log);
    return log;
  }

  private static DriveModel drive(Law life, double age) {
    return DriveModel.builder("m", 1_000 * Units.TB)
        .price(100)
        .power(10)
        .fails(life)
        .age(new Fixed(age))
        .build();
  }

  /**
   * One of a mirror lives 1,000 h, is replaced 150 h later and whole another 350 h later: it dies
   * at 1,000, 2,500 and 4,000 h and its successors arrive at 1,150, 2,650 and 4,150 h. Red if only
   * the last is bought, or if it draws power while it is not there.
   */
  @ParameterizedTest
  @CsvSource({"999, 0, 0", "1100, 0, 100", "1200, 1, 150", "2600, 1, 250", "4100, 2, 400"})
  void eachReplacementOfAMirror(double horizon, int bought, double hoursWithout) {
    Medium mirror =
        Medium.DriveSet.builder(Arrangement.MIRROR, 2)
            .ofEach(drive(new Fixed(1_000), 0), drive(new Fixed(FOREVER), 0))
            .rebuild(new Fixed(350))
            .build();
    Copy main = Copy.builder("main").on(mirror).arrival(new Fixed(150)).build();
    Log log = simulated(horizon, footage(FOREVER, FOREVER), true, main);
    assertThat(log.paid.get(Expense.DRIVES)).isCloseTo(200 + 100.0 * bought, within(1e-9));
    assertThat(log.paid.get(Expense.POWER))
        .isCloseTo(10 * (2 * horizon - hoursWithout) / 1_000, within(1e-9));
  }

  private static Footage footage(double every, double keep) {
    FootageBuilder footage =
        Footage.builder(new Shoots(every, 10 * Units.TB, Shoots.Spacing.EVEN))
            .onHand(100 * Units.TB);
    return keep == FOREVER ? footage.build() : footage.keepFor(keep).build();
  }

  /** A service that is paid 1 for a terabyte and an hour; the working drive dies at a time. */
  private static double stored(
      double horizon, Footage footage, double dies, CopyBuilder cloud, boolean byCourse) {
    Medium single =
        Medium.DriveSet.builder(Arrangement.SINGLE, 1)
            .of(drive(new Fixed(1_000), 1_000 - dies))
            .build();
    Medium service =
        new Medium.Service(
            Rate.NONE, OptionalDouble.of(Units.HOURS_PER_MONTH), OptionalDouble.empty(), 0);
    Log log =
        simulated(
            horizon,
            footage,
            byCourse,
            Copy.builder("main").on(single).arrival(new Fixed(24)).build(),
            cloud.on(service).restoresAt(1e4 * TB_PER_HOUR).build());
    assertThat(log.losses).hasSize(1);
    return log.paid.get(Expense.SERVICES);
  }

  private static CopyBuilder cloud(double everyHours) {
    return Copy.builder("cloud")
        .fed(Feed.from("main").every(everyHours, 2).link(10 * TB_PER_HOUR).build());
  }

  /**
   * Of 100 TB on hand 50 have come by 7 h, evenly from 2 h on, when the working copy dies; they age
   * out at 60 h, or never: 5·25 + 53·50 TB·h, or 40·50 more by 100 h. Red if what is lost lowers
   * the bill after it has aged out, or does not before.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void whatIsLostOfFootageOnHandIsNotStored(boolean byCourse) {
    double paid = stored(100, footage(FOREVER, 60), 7, cloud(1e6).startsEmpty(), byCourse);
    assertThat(paid).isCloseTo(5 * 25 + 53 * 50, within(1e-3));
    double kept = stored(100, footage(FOREVER, FOREVER), 7, cloud(1e6).startsEmpty(), byCourse);
    assertThat(kept).isCloseTo(5 * 25 + 93 * 50, within(1e-3));
  }

  /**
   * All that is on hand ages out at 60 h. The 10 TB of 20 h are lost at 21 h; those of 40 h, which
   * wait for hardware until 45 h, cross from 50 to 51 h, those of 60 h from 74 to 75 h, those of 80
   * h from 98 h on: 60·100 + 10·(½ + 46) + 10·(½ + 22) TB·h by 97 h.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aShootThatIsLostIsNotStored(boolean byCourse) {
    double paid = stored(97, footage(20, 60), 21, cloud(24), byCourse);
    assertThat(paid).isCloseTo(60 * 100 + 465 + 225, within(1e-3));
  }

  /**
   * A shelf of drives of 100 TB, the first of which is full at the start. The second is bought, and
   * draws power, when the first shoot comes, at random: as it is told.
   */
  @Test
  void theSecondDriveOfAShelfWhenItComes() {
    DriveModel model =
        DriveModel.builder("m", 100 * Units.TB)
            .price(100)
            .power(10)
            .fails(new Fixed(FOREVER))
            .build();
    Copy main =
        Copy.builder("main")
            .on(Medium.DriveSet.builder(Arrangement.SHELF, 1).of(model).build())
            .build();
    Footage footage =
        Footage.builder(new Shoots(100, Units.TB, Shoots.Spacing.RANDOM))
            .onHand(100 * Units.TB)
            .build();
    Layout layout = Layout.of("l", main);
    Studio studio =
        Studio.builder("s", 100 / Units.HOURS_PER_YEAR)
            .footage(footage)
            .energy(1)
            .layout(layout)
            .build();
    History history = new History(studio, layout, 1);
    int bought = 0;
    for (int k = 0; k < 50; k++) {
      List<Happening> added = ToldHistory.of(history, k).all(Kind.DRIVE_ADDED);
      double hours = 100 + added.stream().mapToDouble(each -> 100 - each.hours()).sum();
      Log log = new Log();
      history.simulate(k, log);
      assertThat(log.paid.get(Expense.DRIVES)).isCloseTo(100 * (1 + added.size()), within(1e-9));
      assertThat(log.paid.get(Expense.POWER)).isCloseTo(10 * hours / 1_000, within(1e-9));
      bought += added.size();
    }
    assertThat(bought).isBetween(1, 49);
  }
}
