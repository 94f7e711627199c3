package lastcopy.history.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Expense;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Delay;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.DriveModelBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Work;
import org.junit.jupiter.api.Test;

/** What is paid in a year of 8,760 h in which nothing fails, summed up by hand. */
class SureCostsTest {

  /** 40 an hour: 80 a repair, 10 a visit, 5 a look, 40 a trial. */
  private static final Work WORK = new Work(OptionalDouble.of(40), 2, 0.25, 0.125, 1);

  /** At 0.30 a kWh, 10 W cost 0.003 an hour. */
  private static final double TEN_WATTS = 0.003;

  private static DriveModelBuilder model() {
    return DriveModel.builder("m", 1_000).fails(new Exponential(9)).price(100).power(10);
  }

  private static CopyBuilder copy(String id, Arrangement arrangement, int drives, DriveModel of) {
    return Copy.builder(id).on(Medium.DriveSet.builder(arrangement, drives).of(of).build());
  }

  private static CopyBuilder single(String id) {
    return copy(id, Arrangement.SINGLE, 1, model().build());
  }

  /** 2,500 bytes on hand and 100 more every 100 h. */
  private static Prices prices(Copy... copies) {
    Shoots shoots = new Shoots(100, 100, Shoots.Spacing.EVEN);
    Footage footage = Footage.builder(shoots).onHand(2_500).clip(1).build();
    Layout layout = new Layout("l", "l", List.of(copies), OptionalDouble.empty());
    Studio studio =
        Studio.builder("s", 1).footage(footage).energy(.3).work(WORK).layout(layout).build();
    return Plan.of(studio, layout).prices();
  }

  private static void paid(Prices prices, Expense kind, double amount) {
    assertThat(prices.sure().of(kind, 0)).as(kind.name()).isCloseTo(amount, within(1e-6));
  }

  /** Three are owned; nine more are bought, at 600 h, 1,600 h and so on to 8,600 h. */
  @Test
  void aShelfIsBoughtAsItGrows() {
    Prices prices = prices(copy("a", Arrangement.SHELF, 3, model().owned().build()).build());
    paid(prices, Expense.DRIVES, 9 * 100);
    double later = 9 * (8_760 - 600) - 36_000;
    paid(prices, Expense.POWER, TEN_WATTS * (3 * 8_760 + later));
    paid(prices(copy("a", Arrangement.SHELF, 3, model().build()).build()), Expense.DRIVES, 1_200);
  }

  /** Two copies in one box pay for it once. */
  @Test
  void aBoxIsBoughtOnceAndDrawsPower() {
    Place home = Place.of("home");
    Box box =
        new Box(
            "box",
            Rate.NONE,
            OptionalDouble.of(250),
            OptionalDouble.of(20),
            OptionalDouble.empty());
    Copy second =
        single("b").at(home).in(box).fed(Feed.from("a").continuous().link(1).build()).build();
    Prices prices = prices(single("a").at(home).in(box).build(), second);
    paid(prices, Expense.BOXES, 250);
    paid(prices, Expense.POWER, (2 + 2) * TEN_WATTS * 8_760);
    assertThat(prices.box(0)).isEqualTo(250);
    assertThat(prices.boxOf(1)).isZero();
    assertThat(prices.powerPerHour(box)).isCloseTo(2 * TEN_WATTS, within(1e-15));
  }

  /** The drives of a rotation stand there 183 and 182 times for 3 h, and draw power only then. */
  @Test
  void aRotationDrawsPowerDuringItsVisits() {
    Copy turns =
        single("b")
            .rotation(2, 24)
            .offline()
            .fed(Feed.from("a").every(24, 5).visits(3).link(1e6).build())
            .build();
    Prices prices = prices(single("a").build(), turns);
    paid(prices, Expense.POWER, TEN_WATTS * (8_760 + (183 + 182) * 3));
    paid(prices, Expense.WORK, 365 * 10);
    paid(prices, Expense.DRIVES, 300);
  }

  /** A look that sees both is one; 8,760 h have 182 of 48 h and 243 of 36 h. */
  @Test
  void looksThatFallTogetherArePaidOnce() {
    paid(looks(24, 24), Expense.WORK, 365 * 5);
    paid(looks(24, 48), Expense.WORK, 365 * 5);
    paid(looks(48, 24), Expense.WORK, 365 * 5);
    paid(looks(48, 36), Expense.WORK, (182 + 243) * 5);
    Copy drivesOnly =
        single("a")
            .noticed(new Delay.Looks(24))
            .goneNoticed(new Delay.Lawful(new Fixed(1)))
            .build();
    paid(prices(drivesOnly), Expense.WORK, 365 * 5);
  }

  private static Prices looks(double drives, double whole) {
    return prices(
        single("a").noticed(new Delay.Looks(drives)).goneNoticed(new Delay.Looks(whole)).build());
  }

  /** 7.30 for a terabyte and a month of 730 h is 0.01 for a terabyte and an hour. */
  @Test
  void aServiceIsPaidByTheAmount() {
    Medium.Service service =
        new Medium.Service(new Rate(1e-4), OptionalDouble.of(7.3), OptionalDouble.of(20), 0);
    Copy second =
        Copy.builder("b").on(service).fed(Feed.from("a").continuous().link(1).build()).build();
    Prices prices = prices(single("a").build(), second);
    assertThat(prices.any()).isTrue();
    assertThat(prices.stores()).containsExactly(1);
    assertThat(prices.storedPerByteHour(1) * Units.TB).isCloseTo(.01, within(1e-12));
    assertThat(prices.retrievalPerByte(1) * Units.TB).isCloseTo(20, within(1e-9));
    assertThat(prices.retrievalPerByte(0)).isZero();
    assertThat(prices.repair()).isEqualTo(80);
    assertThat(prices.visit()).isEqualTo(10);
    assertThat(prices.look()).isEqualTo(5);
    assertThat(prices.trial()).isEqualTo(40);
  }
}
