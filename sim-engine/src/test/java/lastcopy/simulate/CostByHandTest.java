package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.experiment.Cost;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Costs;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.DriveModelBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.StudioBuilder;
import lastcopy.scenario.Units;
import lastcopy.scenario.Uplink;
import lastcopy.scenario.Work;
import org.junit.jupiter.api.Test;

/**
 * Who is paid what and when, where every time is known beforehand: sums by hand from the model's
 * page. Amounts are exact, since no history differs from another.
 *
 * <p>Sabotage seen red: paid at the failure instead of the arrival, a replacement that had arrived
 * bought again, power while a drive is down, visits that were missed and drew power, storage paid
 * as if all that is on its way were there.
 */
class CostByHandTest {

  private static final double YEAR = Units.HOURS_PER_YEAR;
  private static final double DAY = Units.HOURS_PER_DAY;

  /** 40 an hour: 80 a repair, 10 a visit, 5 a look, 40 a trial. */
  private static final Work WORK = new Work(OptionalDouble.of(40), 2, 0.25, 0.125, 1);

  private static DriveModelBuilder drive(Law life) {
    return DriveModel.builder("drive", Units.TB).price(100).power(10).fails(life);
  }

  private static CopyBuilder single(String id, DriveModelBuilder model) {
    return set(id, Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model.build()).build());
  }

  /** Seen after 100 h, replaced 50 h later. */
  private static CopyBuilder set(String id, Medium.DriveSet drives) {
    return Copy.builder(id)
        .on(drives)
        .noticed(new Delay.Lawful(new Fixed(100)))
        .arrival(new Fixed(50));
  }

  private static Footage onHand() {
    return Studios.onHand(Units.TB / 2);
  }

  private static Cost cost(double hours, Footage footage, Copy... copies) {
    return cost(hours, footage, Costs.NONE, copies);
  }

  private static Cost cost(double hours, Footage footage, Costs costs, Copy... copies) {
    var layout = Layout.builder("only").costs(costs);
    for (Copy copy : copies) {
      layout.copy(copy);
    }
    StudioBuilder studio =
        Studio.builder("test", hours / YEAR).footage(footage).energy(1).work(WORK);
    Cost cost = Agreement.simulate(studio.layout(layout.build()).build(), 50).cost().orElseThrow();
    double sum = cost.byKind().stream().mapToDouble(Cost.Part::mean).sum();
    assertThat(sum).isCloseTo(cost.total().value(), within(1e-9));
    assertThat(cost.byYear().stream().mapToDouble(y -> y).sum()).isCloseTo(sum, within(1e-9));
    assertThat(cost.p5()).isCloseTo(sum, within(1e-9)).isEqualTo(cost.p95());
    return cost;
  }

  private static void paid(Cost cost, String kind, double amount) {
    double found =
        cost.byKind().stream().filter(p -> p.kind().equals(kind)).findFirst().orElseThrow().mean();
    assertThat(found).as(kind).isCloseTo(amount, within(1e-6));
  }

  /** Two years and a half: the third has half a year. Red if costs are paid by whole years. */
  @Test
  void aLifeWithoutFailures() {
    Box box = new Box("box", Rate.NONE, OptionalDouble.of(250), OptionalDouble.of(15), none());
    Copy mirror =
        set("main", Medium.DriveSet.builder(Arrangement.MIRROR, 2).of(eternal()).build())
            .in(box)
            .noticed(new Delay.Looks(30 * DAY))
            .costs(new Costs(0, 0, 3))
            .build();
    Cost cost = cost(2.5 * YEAR, onHand(), new Costs(60, 24, 0), mirror);
    paid(cost, "drives", 200);
    paid(cost, "boxes", 250);
    paid(cost, "power", (2 * 10 + 15) * 2.5 * YEAR / 1_000);
    paid(cost, "work", 30 * 5); // 912.5 days have 30 looks
    paid(cost, "other", 60 + 2.5 * 24 + 30 * 3);
    paid(cost, "services", 0);
    double yearly = 35 * YEAR / 1_000 + 24 + 36;
    assertThat(cost.byYear()).hasSize(3);
    assertThat(cost.byYear().get(0)).isCloseTo(510 + yearly + 12 * 5, within(1e-9));
    assertThat(cost.byYear().get(1)).isCloseTo(yearly + 12 * 5, within(1e-9));
    assertThat(cost.byYear().get(2)).isCloseTo(yearly / 2 + 6 * 5, within(1e-9));
  }

  private static DriveModel eternal() {
    return drive(new Never()).build();
  }

  private static OptionalDouble none() {
    return OptionalDouble.empty();
  }

  /** A look for drives sees the whole copy too; looks at other times are looks of their own. */
  @Test
  void oneLookIsPaidOnce() {
    CopyBuilder copy = single("main", drive(new Never())).noticed(new Delay.Looks(300));
    paid(cost(3_000, onHand(), copy.goneNoticed(new Delay.Looks(600)).build()), "work", 10 * 5);
    paid(cost(3_000, onHand(), copy.goneNoticed(new Delay.Looks(150)).build()), "work", 20 * 5);
    paid(cost(3_000, onHand(), copy.goneNoticed(new Delay.Looks(450)).build()), "work", 16 * 5);
  }

  /** It fails at 1,000 h and is there again at 1,150 h, and so on; what comes at the end counts. */
  @Test
  void replacementsArePaidWhenTheyArrive() {
    Copy main = single("main", drive(new Fixed(1_000))).build();
    Cost three = cost(3_450, onHand(), main);
    paid(three, "drives", 4 * 100);
    paid(three, "work", 3 * 80);
    paid(three, "power", 10 * 3_000 / 1_000.0); // none while it is down
    paid(cost(3_449, onHand(), main), "drives", 3 * 100);
    paid(cost(3_299, onHand(), main), "power", 10 * 2_999 / 1_000.0);
  }

  /** It fails in the first year, and arrives, with its work, in the second. */
  @Test
  void theYearOfAPaymentIsThatOfTheArrival() {
    Copy main = single("main", drive(new Fixed(8_700))).build();
    Cost cost = cost(2 * YEAR, onHand(), main);
    assertThat(cost.byYear().get(0)).isCloseTo(100 + 87, within(1e-6));
    assertThat(cost.byYear().get(1)).isCloseTo(100 + 80 + 86.7, within(1e-6));
  }

  /** One of a pair fails in the first year; the other, of another model, never does. */
  @Test
  void theSameWithinASetThatSurvives() {
    DriveModel mortal = drive(new Fixed(8_700)).build();
    DriveModel other = DriveModel.builder("other", Units.TB).fails(new Never()).build();
    Copy mirror =
        set("main", Medium.DriveSet.builder(Arrangement.MIRROR, 2).ofEach(mortal, other).build())
            .build();
    Cost cost = cost(2 * YEAR, onHand(), mirror);
    assertThat(cost.byYear().get(0)).isCloseTo(100 + 87, within(1e-6));
    assertThat(cost.byYear().get(1)).isCloseTo(100 + 80 + 86.7, within(1e-6));
  }

  /**
   * The first fails at 1,000 h, and its replacement, there at 1,150 h, would be whole at 1,650 h;
   * at 1,400 h the second fails, so that the copy is gone until 1,550 h. Red if the replacement is
   * bought again, or draws power while its copy is gone.
   */
  @Test
  void aReplacementThatHasArrivedIsNotBoughtAgain() {
    DriveModel first = drive(new Fixed(1_000)).build();
    DriveModel second =
        DriveModel.builder("second", Units.TB).price(30).power(10).fails(new Fixed(1_400)).build();
    Copy mirror =
        set(
                "main",
                Medium.DriveSet.builder(Arrangement.MIRROR, 2)
                    .ofEach(first, second)
                    .rebuild(new Fixed(500))
                    .build())
            .build();
    Cost cost = cost(1_600, onHand(), mirror);
    paid(cost, "drives", 2 * 100 + 2 * 30);
    paid(cost, "work", 2 * 80);
    paid(cost, "power", 10 * (1_000 + 250 + 50 + 1_400 + 50) / 1_000.0);
  }

  /** Both fail at once, so that no replacement arrives before the copy is back with both. */
  @Test
  void aCopyThatIsBroughtBackIsOneRepair() {
    DriveModel model = drive(new Fixed(1_000)).build();
    Copy mirror =
        set("main", Medium.DriveSet.builder(Arrangement.MIRROR, 2).of(model).build()).build();
    Cost cost = cost(2_000, onHand(), mirror);
    paid(cost, "drives", 4 * 100);
    paid(cost, "work", 80);
    paid(cost, "power", 2 * 10 * (1_000 + 850) / 1_000.0);
  }

  /** Those that are there already are not paid for, those that come later are. */
  @Test
  void drivesThatAreOwned() {
    Copy main = single("main", drive(new Fixed(1_000)).owned()).build();
    paid(cost(3_450, onHand(), main), "drives", 3 * 100);
  }

  @Test
  void plannedSwaps() {
    DriveModel model = drive(new Never()).age(new Fixed(300)).boughtAt(200).build();
    Copy main =
        set(
                "main",
                Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).replaceAt(1_000).build())
            .build();
    // At 700 h, then every 800 h.
    Cost cost = cost(2_300, onHand(), main);
    paid(cost, "drives", 4 * 100);
    paid(cost, "work", 3 * 80);
    paid(cost, "power", 23);
  }

  /** More than 2 TB at 300 h, more than 3 TB at 700 h. */
  @Test
  void drivesOfAShelfArePaidAsTheyEnterService() {
    Footage grows = Studios.shooting(1.5 * Units.TB, 100, Units.TB / 4, 0);
    Copy shelf = set("main", shelf(drive(new Never()))).build();
    Cost cost = cost(750, grows, shelf);
    paid(cost, "drives", 4 * 100);
    paid(cost, "power", 10 * (2 * 750 + 450 + 50) / 1_000.0);
    paid(cost(699, grows, shelf), "drives", 3 * 100);
    Copy owned = set("main", shelf(drive(new Never()).owned())).build();
    paid(cost(750, grows, owned), "drives", 2 * 100);
  }

  private static Medium.DriveSet shelf(DriveModelBuilder model) {
    return Medium.DriveSet.builder(Arrangement.SHELF, 3).of(model.build()).build();
  }

  /** 2 TB, and 0.1 TB more each month: 30.6 TB times months in a year. */
  @Test
  void servicesArePaidByTheAmountAndTheTime() {
    Footage grows = Studios.shooting(2 * Units.TB, 730, Units.TB / 10, 0);
    Copy service = Copy.builder("main").on(Medium.Service.of(Rate.NONE, of(5))).build();
    Cost cost = cost(YEAR, grows, service);
    paid(cost, "services", 5 * 30.6);
    paid(cost, "drives", 0);
    paid(cost(0.5 * YEAR, grows, service), "services", 5 * 13.5);
  }

  /** Each shoot takes 73 h to cross, in which half of it is there on average. */
  @Test
  void whatIsOnItsWayToAServiceIsPaidAsItArrives() {
    Footage grows = Studios.shooting(2 * Units.TB, 730, Units.TB / 10, 0);
    Cost cost = cost(YEAR, grows, single("main", drive(new Never())).build(), fed(73));
    paid(cost, "services", 5 * (30.6 - 11 * 0.1 * 36.5 / 730));
  }

  /**
   * Each shoot, at midnight every 30 days, takes 73 h of a link that may be used until noon: six
   * days, half of each without progress, and an hour. Red if it is paid as if it came evenly.
   */
  @Test
  void whatWaitsForALinkIsPaidAsItArrives() {
    Footage grows = Studios.shooting(2 * Units.TB, 720, Units.TB / 10, 0);
    double lacks = 0.5 / 73;
    for (int day = 0; day < 6; day++) {
      lacks += 12 * (1 - (12 * day + 6) / 73.0) + 12 * (1 - 12 * (day + 1) / 73.0);
    }
    double rate = Units.TB / 10 / 73 / Units.SECONDS_PER_HOUR;
    Feed feed = Feed.from("main").continuous().link(rate).between(0, 12).build();
    Copy cloud = Copy.builder("cloud").on(Medium.Service.of(Rate.NONE, of(5))).fed(feed).build();
    Cost cost = cost(10 * 720, grows, single("main", drive(new Never())).build(), cloud);
    paid(cost, "services", 5 * (10 * 2 * 720 + 0.1 * 45 * 720 - 9 * 0.1 * lacks) / 730);
  }

  /** A line is paid by the month, once, however many feeds share it. */
  @Test
  void anUplinkIsPaidByTheMonth() {
    Uplink line = new Uplink("line", 1e6, of(40));
    Copy main = single("main", drive(new Never())).build();
    Copy home =
        single("home", drive(new Never()))
            .fed(Feed.from("main").every(24).over(line).build())
            .build();
    Copy other =
        single("other", drive(new Never()))
            .fed(Feed.from("main").every(24).over(line).build())
            .build();
    paid(cost(YEAR, Studios.shooting(0, 1e5, 1, 0), main, home, other), "services", 12 * 40);
  }

  /** 2 TB on hand come back once, at 20 per TB. */
  @Test
  void whatAServiceGivesBackIsPaid() {
    Medium service = new Medium.Service(Rate.NONE, none(), of(20), 48);
    Copy main = single("main", drive(new Fixed(YEAR * 0.6))).build();
    Copy cloud =
        Copy.builder("cloud")
            .on(service)
            .fed(Feed.from("main").every(24).link(1e9).build())
            .build();
    Cost cost = cost(YEAR, Studios.shooting(2 * Units.TB, 1e5, 1, 0), main, cloud);
    paid(cost, "services", 2 * 20);
  }

  private static Copy fed(double hours) {
    Feed feed =
        Feed.from("main").continuous().link(Units.TB / 10 / hours / Units.SECONDS_PER_HOUR).build();
    return Copy.builder("cloud").on(Medium.Service.of(Rate.NONE, of(5))).fed(feed).build();
  }

  private static OptionalDouble of(double amount) {
    return OptionalDouble.of(amount);
  }

  /** On hand for four months, then as many shoots as four months have. */
  @Test
  void whatAgesOutOfAServiceIsNotPaidAnyMore() {
    Footage kept =
        new Footage(
            2 * Units.TB,
            new Shoots(730, Units.TB / 10, Shoots.Spacing.EVEN),
            0,
            of(4 * 730),
            Units.GB,
            none());
    Copy service = Copy.builder("main").on(Medium.Service.of(Rate.NONE, of(5))).build();
    paid(cost(YEAR, kept, service), "services", 5 * (4 * 2 + 0.1 * (1 + 2 + 3 + 8 * 4)));
    Cost beside = cost(YEAR, kept, single("main", drive(new Never())).build(), fed(1e-3));
    paid(beside, "services", 5 * (4 * 2 + 0.1 * (1 + 2 + 3 + 8 * 4)) - 5 * 11 * 0.1 * 5e-4 / 730);
  }

  /** Whatever is deleted, the service keeps it aside and is paid for it. */
  @Test
  void whatAServiceKeepsOfDeletedFootageIsPaid() {
    Desk.Deletion often =
        new Desk.Deletion(new Rate(1 / 300.0), new Desk.Bytes(50 * Units.GB), new Fixed(1e6));
    Copy cloud =
        Copy.builder("cloud")
            .on(new Medium.Service(Rate.NONE, of(5), none(), 0))
            .keepsDeleted(Double.POSITIVE_INFINITY)
            .fed(Feed.from("main").continuous().link(Units.TB).build())
            .build();
    Layout layout =
        Layout.builder("only").copy(single("main", drive(new Never())).build()).copy(cloud).build();
    Studio studio =
        Studio.builder("test", 1)
            .footage(onHand())
            .desk(new Desk(Optional.of(often), Optional.empty()))
            .layout(layout)
            .build();
    paid(Agreement.simulate(studio, 50).cost().orElseThrow(), "services", 5 * 12 * 0.5);
  }

  /** Eleven turns up to and at the end, the last of which has no time left. */
  @Test
  void rotatedDrivesDrawPowerDuringTheirVisits() {
    DriveModel quiet = DriveModel.builder("quiet", Units.TB).fails(new Never()).build();
    Copy main =
        set("main", Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(quiet).build()).build();
    Cost cost = cost(70 * DAY, onHand(), main, rotated(new Never()));
    paid(cost, "drives", 2 * 100);
    paid(cost, "work", 11 * 10);
    paid(cost, "power", 10 * 10 * 24 / 1_000.0);
  }

  private static Copy rotated(Law life) {
    return single("far", drive(life))
        .fed(Feed.from("main").every(14 * DAY).visits(24).build())
        .rotation(2, 7 * DAY)
        .build();
  }

  /** Without a working copy, from 500 to 650 h and from 1,150 to 1,300 h, no drive is brought. */
  @Test
  void visitsThatAreMissedCostNothing() {
    DriveModel mortal = DriveModel.builder("m", Units.TB).fails(new Fixed(500)).build();
    Copy main =
        set("main", Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(mortal).build()).build();
    Cost cost = cost(1_600, onHand(), main, rotated(new Never()));
    // Due at 0, 168, 336, 504 (missed), 672, 840, 1,008, 1,176 (missed), 1,344, 1,512.
    paid(cost, "work", 8 * 10 + 2 * 80);
    paid(cost, "power", 10 * 8 * 24 / 1_000.0);
  }

  /** The first dies at 10 h of its visit, the second at home: both are back before their turns. */
  @Test
  void aVisitThatADriveDoesNotSurvive() {
    DriveModel quiet = DriveModel.builder("quiet", Units.TB).fails(new Never()).build();
    Copy main =
        set("main", Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(quiet).build()).build();
    Cost cost = cost(500, onHand(), main, rotated(new Fixed(346)));
    // Visits from 0, 168 and 336 h; the last ends at 346 h; both return at 496 h.
    paid(cost, "power", 10 * (24 + 24 + 10) / 1_000.0);
    paid(cost, "drives", 4 * 100);
    paid(cost, "work", 3 * 10 + 2 * 80);
  }

  /** Of trials at 2,160 and 4,320 h none meets a copy that is gone since 2,100 and 4,350 h ago. */
  @Test
  void noRestoreIsTriedFromACopyThatIsGone() {
    CopyBuilder copy = single("main", drive(new Never())).spoils(Rate.NONE, 90 * DAY);
    paid(cost(21_900, onHand(), copy.build()), "work", 10 * 40);
    CopyBuilder mortal = single("main", drive(new Fixed(2_100))).spoils(Rate.NONE, 90 * DAY);
    paid(cost(4_319, onHand(), mortal.build()), "work", 80);
    paid(cost(4_320, onHand(), mortal.build()), "work", 80 + 40);
    paid(cost(4_349, onHand(), mortal.build()), "work", 80 + 40);
    CopyBuilder atTheEnd = single("main", drive(new Fixed(2_100))).spoils(Rate.NONE, 2_150);
    paid(cost(2_150, onHand(), atTheEnd.build()), "work", 0);
  }

  @Test
  void whatIsNotPricedHasNoCost() {
    DriveModel model = DriveModel.builder("m", Units.TB).fails(new Never()).power(6).build();
    Copy main =
        set("main", Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build()).build();
    Layout layout = Layout.builder("only").copy(main).build();
    Studio studio = Studio.builder("test", 1).footage(onHand()).layout(layout).build();
    assertThat(Agreement.simulate(studio, 10).cost()).isEmpty();
  }
}
