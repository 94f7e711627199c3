package lastcopy.history.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.kernel.Priority;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.DriveModelBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Periodic;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/** What is compiled of a layout, against the scenario by hand. */
class PlanByHandTest {

  private static final Place STUDIO =
      Place.of(
          "studio", new Mishap("fire", new Rate(1e-5), .25), new Mishap("hail", new Rate(1e-6), 0));
  private static final Place HOME = Place.of("home", new Mishap("theft", new Rate(2e-5), .9));
  private static final Box BOX = Box.of("tower", new Rate(3e-5));

  private static DriveModelBuilder model() {
    return DriveModel.builder("m", 1_000).fails(new Weibull(2, 1_000, 0));
  }

  private static CopyBuilder copy(
      String id, Arrangement arrangement, int drives, DriveModel model) {
    return Copy.builder(id).on(Medium.DriveSet.builder(arrangement, drives).of(model).build());
  }

  /** 2,500 bytes on hand and 100 more every 100 h over a year: 87 shoots. */
  private static Plan plan(Desk desk, OptionalDouble cards, Copy... copies) {
    Footage footage =
        Footage.builder(new Shoots(100, 100, Shoots.Spacing.EVEN)).onHand(2_500).clip(1).build();
    Layout layout = new Layout("l", "l", List.of(copies), cards);
    return Plan.of(
        Studio.builder("s", 1).footage(footage).desk(desk).layout(layout).build(), layout);
  }

  private static Plan plan(Copy... copies) {
    return plan(Desk.QUIET, OptionalDouble.empty(), copies);
  }

  @Test
  void aFirstDriveRunsUpTheHazardFromItsAge() {
    double year = Units.HOURS_PER_YEAR;
    SlotPlan aged =
        plan(copy("a", Arrangement.SINGLE, 1, model().age(new Fixed(500)).build()).build()).slot(0);
    double exact = Math.pow((500 + year) / 1_000, 2) - .25;
    assertThat(aged.firstHazard()).isCloseTo(exact, within(1e-9));
    assertThat(aged.agesByTheClock()).isTrue();
    assertThat(aged.isSwapped()).isFalse();
    SlotPlan unknown =
        plan(copy("a", Arrangement.SINGLE, 1, model().age(new Exponential(9)).build()).build())
            .slot(0);
    assertThat(unknown.firstHazard()).isInfinite();
    assertThat(unknown.agesByTheClock()).isFalse();
  }

  /** Of a shelf each drive takes 1,000 bytes: 2,500 are there, the 6th hundred needs another. */
  @Test
  void aShelfGrowsByItsFootage() {
    DriveModel bought = model().age(new Fixed(500)).boughtAt(20).build();
    Plan plan = plan(copy("a", Arrangement.SHELF, 3, bought).build());
    assertThat(plan.mostEverShot()).isEqualTo(2_500 + 87 * 100);
    assertThat(plan.slots()).as("11,200 bytes").isEqualTo(12);
    assertThat(plan.slot(2).enters()).isZero();
    assertThat(plan.slot(3).enters()).as("all but the first 500 bytes").isEqualTo(600);
    assertThat(plan.slot(4).enters()).isEqualTo(1_600);
    double hours = Units.HOURS_PER_YEAR - 600;
    double exact = Math.pow((20 + hours) / 1_000, 2) - Math.pow(.02, 2);
    assertThat(plan.slot(3).firstHazard()).isCloseTo(exact, within(1e-9));
    assertThat(Plan.entry(plan.shoots(), 1e9)).isInfinite();
  }

  @Test
  void swapsBeforeADriveIsBoughtAreNone() {
    Medium.DriveSet set =
        Medium.DriveSet.builder(Arrangement.MIRROR, 2)
            .of(model().boughtAt(100).build())
            .replaceAt(100)
            .batch("b", .5)
            .build();
    Plan plan = plan(Copy.builder("a").on(set).build());
    assertThat(plan.slot(0).isSwapped()).isFalse();
    assertThat(plan.slot(1).boughtAt()).isEqualTo(100);
    assertThat(plan.slot(1).spread()).isEqualTo(.5);
    assertThat(List.of(plan.slot(0).batch(), plan.slot(1).batch())).containsExactly(0, 0);
    assertThat(plan.batches()).hasSize(1);
    assertThat(plan.slot(0).source()).isNotEqualTo(plan.slot(1).source());
  }

  @Test
  void aServiceIsADriveThatLosesAtItsRate() {
    Copy paid =
        Copy.builder("paid")
            .on(Medium.Service.losing(new Rate(1e-4)))
            .fed(Feed.from("a").continuous().link(10).build())
            .build();
    Plan plan = plan(copy("a", Arrangement.STRIPE, 2, model().build()).build(), paid);
    SlotPlan service = plan.slot(2);
    assertThat(service.copy()).isEqualTo(1);
    assertThat(service.life()).isEqualTo(new Exponential(1e4));
    assertThat(service.firstHazard()).isCloseTo(.876, within(1e-12));
    assertThat(service.batch()).isNegative();
    assertThat(plan.copyOf(service).set().service()).isTrue();
    assertThat(plan.copy(1).way().continuous()).isTrue();
    assertThat(plan.copy(1).way().bytesPerHour()).isEqualTo(36_000);
    assertThat(plan.copy(1).isFedFrom(0)).isTrue();
    assertThat(plan.copy(1).isFedFrom(1)).isFalse();
    assertThat(plan.copy(0).isFedFrom(0)).isFalse();
    assertThat(plan.groupOf(1)).isZero();
    assertThat(plan.groupOf(2)).isEqualTo(1);
  }

  private static Copy fed(String id, double linkBytesPerSecond) {
    return copy(id, Arrangement.SINGLE, 1, model().build())
        .fed(Feed.from("a").every(24, 2).link(linkBytesPerSecond).build())
        .build();
  }

  /** Restores go at the link of what gives back; the working copy gives nothing back. */
  @Test
  void aCopyIsRefilledFromAnyThatIsFed() {
    Copy main = copy("a", Arrangement.SINGLE, 1, model().build()).build();
    Plan plan = plan(main, fed("b", 2), fed("c", 5));
    assertThat(plan.copy(0).refillPerHour()).containsExactly(0, 7_200, 18_000);
    assertThat(plan.copy(1).refillPerHour()).containsExactly(0, 0, 18_000);
    assertThat(plan.copy(1).way().due()).contains(new Periodic(2, 24));
  }

  /** Two drives take turns every 24 h from 5 h on: each comes every 48 h. */
  @Test
  void turnsOfARotationAreCopies() {
    Copy main = copy("a", Arrangement.SINGLE, 1, model().build()).at(STUDIO).build();
    Copy turns =
        copy("b", Arrangement.SINGLE, 1, model().build())
            .rotation(2, 24)
            .offline()
            .fed(Feed.from("a").every(24, 5).visits(3).link(1e6).build())
            .build();
    Plan plan = plan(main, turns);
    assertThat(plan.copies()).isEqualTo(3);
    assertThat(List.of(plan.copy(1).name(), plan.copy(2).name())).containsExactly("b", "b#2");
    assertThat(plan.copy(1).visits()).isEqualTo(new Visits(new Periodic(5, 48), 3));
    assertThat(plan.copy(2).visits()).isEqualTo(new Visits(new Periodic(29, 48), 3));
    assertThat(plan.copy(0).rotates()).isFalse();
    assertThat(plan.copy(2).way().source()).isZero();
    assertThat(plan.copy(2).firstSlot()).isEqualTo(2);
    assertThat(plan.copy(2).endSlot()).isEqualTo(3);
    assertThat(plan.shock(0).copies()).as("a visit is there too").containsExactly(0, 1, 2);
  }

  @Test
  void shocksStrikeWhatTheScenarioSays() {
    Desk desk =
        new Desk(
            Optional.of(new Desk.Deletion(new Rate(1e-3), new Desk.Bytes(5), new Fixed(10))),
            Optional.of(new Desk.Malware(new Rate(1e-4), new Fixed(20))));
    Copy main = copy("a", Arrangement.SINGLE, 1, model().build()).at(STUDIO).in(BOX).build();
    Copy far =
        copy("b", Arrangement.SINGLE, 1, model().build())
            .at(HOME)
            .fed(Feed.from("a").every(24).stops(new Rate(4e-5)).build())
            .spoils(new Rate(5e-5))
            .build();
    Plan plan = plan(desk, OptionalDouble.of(48), main, far);
    assertThat(Arrays.stream(new int[plan.shocks()]).count()).isEqualTo(7);
    shock(plan, 0, ShockProcess.Kind.PLACE, 1e-5, .25, "fire struck at 'studio'", 0);
    shock(plan, 1, ShockProcess.Kind.PLACE, 2e-5, .9, "theft struck at 'home'", 1);
    shock(plan, 2, ShockProcess.Kind.BOX, 3e-5, 1, "the box 'tower' took all drives in it", 0);
    shock(plan, 3, ShockProcess.Kind.DELETION, 1e-3, 1, "footage was deleted by mistake", 0, 1);
    shock(plan, 4, ShockProcess.Kind.MALWARE, 1e-4, 1, "malware struck", 0, 1);
    String spoilt = "the copy 'b' had become unusable and nobody knew";
    shock(plan, 5, ShockProcess.Kind.SPOIL, 5e-5, 1, spoilt, 1);
    shock(plan, 6, ShockProcess.Kind.STOP, 4e-5, 1, "the feed of 'b' stopped", 1);
    assertThat(plan.shock(0).strikesCards()).as("cards lie where work is done").isTrue();
    assertThat(plan.shock(1).strikesCards()).isFalse();
    assertThat(plan.shock(2).strikesCards()).isFalse();
    assertThat(plan.shock(0).placeId()).isEqualTo("studio");
    assertThat(plan.shock(3).isAtDesk() && plan.shock(4).isAtDesk()).isTrue();
    assertThat(plan.shock(0).isAtDesk() || plan.shock(5).isAtDesk()).isFalse();
    assertThat(plan.shock(1).mayStrike(1)).isTrue();
    assertThat(plan.shock(1).mayStrike(0)).isFalse();
    assertThat(plan.shock(0).takesKeys()).hasSize(2).doesNotHaveDuplicates();
    assertThat(plan.spoilCauses(1)).isSameAs(plan.shock(5).causes());
    assertThatIllegalArgumentException().isThrownBy(() -> plan.spoilCauses(0));
    groups(plan);
  }

  private static void shock(
      Plan plan,
      int index,
      ShockProcess.Kind kind,
      double perHour,
      double takes,
      String words,
      int... copies) {
    ShockProcess shock = plan.shock(index);
    assertThat(shock.index()).isEqualTo(index);
    assertThat(shock.kind()).isEqualTo(kind);
    assertThat(shock.perHour()).isEqualTo(perHour);
    assertThat(shock.takes()).isEqualTo(takes);
    assertThat(shock.words()).isEqualTo(words);
    assertThat(shock.copies()).containsExactly(copies);
  }

  /** Drives of 2 copies, 7 shocks, reads of 2 copies, and 2 chances to take a copy. */
  private static void groups(Plan plan) {
    Groups groups = plan.groups();
    int[] all = new int[groups.count()];
    all[groups.of(plan.slot(plan.copy(0).firstSlot()))]++;
    all[groups.of(plan.slot(plan.copy(1).firstSlot()))]++;
    for (int i = 0; i < plan.shocks(); i++) {
      all[groups.of(plan.shock(i))]++;
      assertThat(plan.groupOf(plan.slots() + i)).isEqualTo(groups.of(plan.shock(i)));
    }
    all[groups.readsOf(0)]++;
    all[groups.readsOf(1)]++;
    all[groups.takesOf(plan.shock(0))]++;
    all[groups.takesOf(plan.shock(1))]++;
    assertThat(all).as("each number once").hasSize(13).containsOnly(1);
    assertThat(groups.takesOf(plan.shock(2))).isNegative();
    double quarter = groups.mostFactor(groups.takesOf(plan.shock(0)));
    assertThat(-Math.log(1 - .25) * quarter).as("a hazard of 1").isCloseTo(1, within(1e-12));
    assertThat(groups.mostFactor(groups.takesOf(plan.shock(1)))).as("is more than 1").isEqualTo(1);
    assertThat(groups.mostFactor(groups.of(plan.shock(0)))).isInfinite();
  }

  @Test
  void timersHaveANumberEach() {
    Timers timers = new Timers(5, 2, 3);
    Priority[] order = new Priority[timers.count()];
    for (int s = 0; s < 5; s++) {
      put(order, timers.failure(s), Priority.FAILURE);
      put(order, timers.repair(s), Priority.RETURN);
      put(order, timers.swap(s), Priority.RETURN);
      put(order, timers.enter(s), Priority.RETURN);
    }
    put(order, timers.shock(0), Priority.FAILURE);
    put(order, timers.shock(1), Priority.FAILURE);
    for (int c = 0; c < 3; c++) {
      put(order, timers.comeBack(c), Priority.RETURN);
      put(order, timers.runEnd(c), Priority.RETURN);
      put(order, timers.linkChange(c), Priority.RETURN);
      put(order, timers.tried(c), Priority.LOOK);
      put(order, timers.looked(c), Priority.LOOK);
      put(order, timers.visitEnd(c), Priority.LOOK);
      put(order, timers.runStart(c), Priority.FEED_RUN);
    }
    put(order, timers.noticed(), Priority.LOOK);
    put(order, timers.dropped(), Priority.EXPIRY);
    put(order, timers.cardsExpired(), Priority.EXPIRY);
    put(order, timers.aged(), Priority.EXPIRY);
    put(order, timers.offload(), Priority.OFFLOAD);
    assertThat(timers.priorities()).containsExactly(order);
  }

  private static void put(Priority[] order, int timer, Priority priority) {
    assertThat(order[timer]).as("timer %s", timer).isNull();
    order[timer] = priority;
  }

  /** Visits at 10, 34, 58 ... for 3 h; the instant of the end still belongs to one. */
  @Test
  void visitsComeByTheClock() {
    Visits visits = new Visits(new Periodic(10, 24), 3);
    assertThat(visits.lastBefore(10)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(visits.lastBefore(40)).isEqualTo(34);
    assertThat(visits.goingOn(10)).isFalse();
    assertThat(visits.goingOn(10.5)).isTrue();
    assertThat(visits.goingOn(13)).isTrue();
    assertThat(visits.goingOn(13.5)).isFalse();
    assertThat(visits.nextChange(0)).isEqualTo(10);
    assertThat(visits.nextChange(10)).isEqualTo(13);
    assertThat(visits.nextChange(13)).isEqualTo(34);
    assertThat(new Visits(new Periodic(10, 24), 30).nextChange(10)).isEqualTo(34);
  }

  @Test
  void runsAreDueByTheClockOrAtOnce() {
    Way nightly = new Way(0, Optional.of(new Periodic(2, 24)), 1);
    assertThat(nightly.dueFrom(26)).isEqualTo(26);
    assertThat(nightly.dueAfter(26)).isEqualTo(50);
    assertThat(nightly.everyHours()).isEqualTo(24);
    Way always = new Way(0, Optional.empty(), 1);
    assertThat(always.dueFrom(7)).isEqualTo(7);
    assertThat(always.dueAfter(7)).isEqualTo(7);
    assertThat(always.everyHours()).isZero();
  }

  /** A parity set of 3 drives of 1,000 bytes, rebuilt at 2 bytes a second less a half. */
  private static Plan parity(Rebuild.Reads reads) {
    Medium.DriveSet set =
        Medium.DriveSet.builder(Arrangement.PARITY, 3)
            .of(model().build())
            .rebuild(new Rebuild.ByRate(OptionalDouble.of(2), .5))
            .reads(reads)
            .build();
    return plan(
        Copy.builder("a")
            .on(set)
            .noticed(new Delay.Looks(24))
            .goneNoticed(new Delay.Looks(100))
            .arrival(new Fixed(5))
            .build());
  }

  @Test
  void repairsTakeTheirTime() {
    Plan plan = parity(Rebuild.Reads.USED);
    RepairTimes times = new RepairTimes(plan, new Draws(1));
    SlotPlan slot = plan.slot(1);
    assertThat(times.seenAt(slot, 0, 30)).isEqualTo(48);
    assertThat(times.arrivalHours(slot, 0)).isEqualTo(5);
    assertThat(times.replacedAt(slot, 0, 30)).isEqualTo(53);
    assertThat(times.backAt(plan.copy(0), 0, 30)).isEqualTo(105);
    assertThat(times.rebuildHours(slot, 0, 1_200))
        .as("600 of a drive")
        .isCloseTo(600 / 3_600.0, within(1e-12));
    assertThat(plan.copy(0).set().rebuildsWhatIsHeld()).isTrue();
    Plan whole = parity(Rebuild.Reads.ALL);
    assertThat(new RepairTimes(whole, new Draws(1)).rebuildHours(whole.slot(1), 0, 1_200))
        .isCloseTo(1_000 / 3_600.0, within(1e-12));
    assertThat(whole.copy(0).set().rebuildsWhatIsHeld()).isFalse();
    assertThat(whole.copy(0).breaksIt()).isEqualTo(2);
  }

  @Test
  void aSetSaysWhatItHides() {
    Medium.DriveSet clean =
        Medium.DriveSet.builder(Arrangement.MIRROR, 2).of(model().build()).build();
    assertThat(plan(Copy.builder("a").on(clean).build()).copy(0).set().hidesNothing()).isTrue();
    Medium.DriveSet errors =
        Medium.DriveSet.builder(Arrangement.MIRROR, 2)
            .of(model().build())
            .readErrors(1e-15)
            .build();
    assertThat(plan(Copy.builder("a").on(errors).build()).copy(0).set().hidesNothing()).isFalse();
    Medium.DriveSet spots =
        Medium.DriveSet.builder(Arrangement.MIRROR, 2)
            .of(model().build())
            .latentDefects(new Exponential(9))
            .build();
    assertThat(plan(Copy.builder("a").on(spots).build()).copy(0).set().hidesNothing()).isFalse();
  }
}
