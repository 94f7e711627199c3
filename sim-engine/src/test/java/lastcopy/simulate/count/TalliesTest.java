package lastcopy.simulate.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Exposure;
import lastcopy.experiment.LayoutResult.Recovery;
import lastcopy.history.report.Account;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Expense;
import lastcopy.history.report.Loss;
import lastcopy.interval.Estimate;
import lastcopy.interval.MeanTally;
import lastcopy.interval.Means;
import lastcopy.interval.Proportions;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Five histories in two chunks, counted by hand: the first loses 5 and 7 bytes, the third 100, the
 * others nothing. Intervals are those of {@code lastcopy.interval}, which has tests of its own.
 */
class TalliesTest {

  private static final Thresholds ROWS =
      new Thresholds(
          new double[] {1, 12, 100}, new double[] {1, 2}, new double[] {.25, .5, 1}, 1_000);
  private static final Cause DRIVE = new Cause("z:drive", "a drive");
  private static final Cause FIRE = new Cause("a:fire", "a fire");
  private static final double LEVEL = 0.95;
  private static final double MOST_SHOOTS = 60;

  private final LossTally all = new LossTally(ROWS);

  @BeforeEach
  void count() {
    LossTally first = new LossTally(ROWS);
    first.begin(0);
    first.lost(loss(.3, 5, .5, 1, false, DRIVE));
    first.passed(1, 10, 4, 2, 1, 50);
    first.lost(loss(.6, 7, 1, 2, true, FIRE));
    first.passed(1, 5, 3, 2.5, 6, 30);
    first.recovered(DRIVE, 3, 8);
    assertThat(first.end()).isTrue();
    first.begin(1);
    first.passed(1, 2, 1, 0, 4, 20);
    first.recovered(DRIVE, 5, Double.NaN);
    assertThat(first.end()).isFalse();
    LossTally second = new LossTally(ROWS);
    second.begin(2);
    second.lost(loss(.25, 100, 2, 4, false, DRIVE));
    assertThat(second.end()).isTrue();
    second.begin(3);
    second.recovered(FIRE, 1, Double.NaN);
    second.recovered(FIRE, 2, Double.NaN);
    second.recovered(FIRE, 6, Double.NaN);
    assertThat(second.end()).isFalse();
    givenUp(second, 4);
    second.begin(5);
    assertThat(second.end()).isFalse();
    all.merge(first);
    all.merge(second);
  }

  private static void givenUp(LossTally tally, long number) {
    tally.begin(number);
    tally.lost(loss(.1, 900, 9, 9, true, FIRE));
    tally.passed(1, 99, 99, 99, 99, 99);
    tally.recovered(DRIVE, 99, 99);
  }

  private static Loss loss(
      double years, double bytes, double shoots, int hit, boolean everything, Cause cause) {
    double hours = years * Units.HOURS_PER_YEAR;
    return new Loss(hours, bytes, shoots, hit, everything, cause, 1);
  }

  private PlainFigures figures(boolean withUnseen) {
    return new PlainFigures(all, MOST_SHOOTS, LEVEL, withUnseen);
  }

  @Test
  void chancesAreHistoriesWithALoss() {
    assertThat(figures(true).anyLoss()).isEqualTo(Proportions.of(2, 5, LEVEL));
    assertThat(figures(true).everythingLost()).isEqualTo(Proportions.of(1, 5, LEVEL));
  }

  /** What is lost at the very end of a quarter is lost by then. */
  @Test
  void theCurveCountsFirstLosses() {
    assertThat(figures(true).firstLossBy(0)).isEqualTo(Proportions.of(1, 5, LEVEL));
    assertThat(figures(true).firstLossBy(1)).isEqualTo(Proportions.of(2, 5, LEVEL));
    assertThat(figures(true).firstLossBy(2)).isEqualTo(Proportions.of(2, 5, LEVEL));
    assertThat(List.of(all.lossesBy(0), all.lossesBy(1), all.lossesBy(2)))
        .containsExactly(1L, 2L, 2L);
  }

  @Test
  void meansAreThoseOfSumsOverAHistory() {
    assertThat(figures(false).lossEvents()).isEqualTo(of(2, 1).estimate(LEVEL, 2));
    assertThat(figures(false).bytesLost()).isEqualTo(of(12, 100).estimate(LEVEL, 1_000));
    assertThat(figures(false).shootsLost()).isEqualTo(of(1.5, 2).estimate(LEVEL, MOST_SHOOTS));
    assertThat(figures(false).shootsHit()).isEqualTo(of(3, 4).estimate(LEVEL, MOST_SHOOTS + 1));
  }

  @Test
  void whatIsToldHoldsWhatWasNeverSeen() {
    MeanTally bytes = of(12, 100);
    Estimate told = figures(true).bytesLost();
    assertThat(told).isEqualTo(bytes.estimate(LEVEL, 1_000).upTo(bytes.unseen(LEVEL, 1_000)));
    assertThat(told.high()).isGreaterThan(figures(false).bytesLost().high());
  }

  private static MeanTally of(double... amounts) {
    MeanTally tally = new MeanTally();
    for (double amount : amounts) {
      tally.add(amount);
    }
    tally.addHistories(5);
    return tally;
  }

  @Test
  void exceedanceCountsSumsOverAHistory() {
    assertThat(at(figures(true).bytesReached(), 12)).isEqualTo(Proportions.of(2, 5, LEVEL));
    assertThat(at(figures(true).bytesReached(), 100)).isEqualTo(Proportions.of(1, 5, LEVEL));
    assertThat(at(figures(true).shootsReached(), 1)).isEqualTo(Proportions.of(2, 5, LEVEL));
    assertThat(at(figures(true).shootsReached(), 2)).isEqualTo(Proportions.of(1, 5, LEVEL));
    assertThat(figures(true).reached(all.bytesReached(), 50))
        .isEqualTo(Proportions.of(1, 5, LEVEL));
    assertThat(figures(true).reached(all.shootsReached(), 3).seen()).isFalse();
  }

  private static Estimate at(List<lastcopy.experiment.LayoutResult.Point> points, double at) {
    return points.stream().filter(p -> p.at() == at).findFirst().orElseThrow().chance();
  }

  /** Two of three events and 105 of 112 bytes were the drive's. */
  @Test
  void causesHaveTheirSharesTheLargestFirst() {
    List<CauseShare> causes = figures(true).causes();
    assertThat(causes).extracting(CauseShare::id).containsExactly("z:drive", "a:fire");
    assertThat(causes).extracting(CauseShare::sentence).containsExactly("a drive", "a fire");
    assertThat(causes.get(0).share()).isEqualTo(Proportions.of(2, 3, LEVEL));
    assertThat(causes.get(0).shareOfBytes()).isEqualTo(105 / 112.0);
    assertThat(causes.get(1).share()).isEqualTo(Proportions.of(1, 3, LEVEL));
    assertThat(causes.get(1).shareOfBytes()).isEqualTo(7 / 112.0);
  }

  /** Over a horizon of half a year of 365 days, so that an hour is a twelfth of a day a year. */
  @Test
  void exposureIsInDaysOfAYear() {
    Exposure exposure = all.time().exposure(4_380, LEVEL);
    assertThat(exposure.histories()).isEqualTo(5);
    days(exposure.singleCopyDays(), 15, 2);
    days(exposure.noRedundancyDays(), 7, 1);
    days(exposure.noWorkingCopyDays(), 4.5, 0);
    days(exposure.refillingDays(), 7, 4);
    assertThat(exposure.largestSingleCopyBytes())
        .isEqualTo(Means.ofAmounts(5, 70, 50 * 50 + 20 * 20, LEVEL));
  }

  private static void days(Estimate seen, double hours, double others) {
    double sum = (hours + others) / 12;
    double squares = (hours * hours + others * others) / 144;
    Estimate expected = Means.ofAmounts(5, sum, squares, LEVEL);
    assertThat(seen.value()).isCloseTo(expected.value(), within(1e-12));
    assertThat(seen.low()).isCloseTo(expected.low(), within(1e-12));
    assertThat(seen.high()).isCloseTo(expected.high(), within(1e-12));
  }

  @Test
  void aYearHasNoMoreDaysThanItHas() {
    LossTally one = new LossTally(ROWS);
    one.begin(0);
    one.passed(1, 9_000, 1, 1, 1, 77);
    one.end();
    Exposure exposure = one.time().exposure(8_760, LEVEL);
    assertThat(exposure.singleCopyDays()).isEqualTo(Estimate.exact(365));
    assertThat(exposure.refillingDays().value()).isCloseTo(1 / 24.0, within(1e-15));
    assertThat(exposure.largestSingleCopyBytes()).isEqualTo(Estimate.exact(77));
  }

  /** Three fires of 1, 2 and 6 h after which nothing came back; two failures of 3 and 5 h. */
  @Test
  void recoveriesAreMeansOfTheirHoursTheCommonestFirst() {
    List<Recovery> recoveries = all.time().recoveries(LEVEL);
    assertThat(recoveries).extracting(Recovery::id).containsExactly("a:fire", "z:drive");
    assertThat(recoveries).extracting(Recovery::sentence).containsExactly("a fire", "a drive");
    assertThat(recoveries).extracting(Recovery::seen).containsExactly(3L, 2L);
    assertThat(recoveries.get(0).workHours()).isEqualTo(Means.ofAmounts(3, 9, 41, LEVEL));
    assertThat(recoveries.get(0).wholeHours()).isEmpty();
    assertThat(recoveries.get(1).workHours()).isEqualTo(Means.ofAmounts(2, 8, 34, LEVEL));
    assertThat(recoveries.get(1).wholeHours()).contains(Means.ofAmounts(1, 8, 64, LEVEL));
  }

  @Test
  void onlyTheFirstHistoriesAreTimed() {
    LossTally tally = new LossTally(ROWS);
    tally.begin(19_999);
    assertThat(tally.wantsTime()).isTrue();
    tally.end();
    tally.begin(20_000);
    assertThat(tally.wantsTime()).isFalse();
    tally.end();
    assertThat(tally.histories()).isEqualTo(2);
    assertThat(tally.time().exposure(8_760, LEVEL).histories()).isEqualTo(1);
  }

  @Test
  void noAmountIsLessThanThatOfAnother() {
    LossesNow now = new LossesNow();
    now.add(loss(.5, 10, 3, 2, false, FIRE));
    LossesNow more = new LossesNow();
    more.add(loss(.1, 20, 1, 5, true, FIRE));
    now.raiseTo(more);
    assertThat(List.of(now.bytes(), now.shoots(), now.hits())).containsExactly(20.0, 3.0, 5.0);
    assertThat(now.firstYears()).isEqualTo(.5);
    assertThat(now.everything()).isFalse();
    now.add(loss(.7, 1, 1, 1, true, FIRE));
    now.add(loss(.8, 1, 1, 1, false, FIRE));
    assertThat(now.events()).isEqualTo(3);
    assertThat(now.everything()).isTrue();
    assertThat(now.firstYears()).isEqualTo(.5);
    assertThat(List.of(now.firstBytes(), now.firstShoots())).containsExactly(10.0, 3.0);
    assertThat(now.firstTookEverything()).isFalse();
    assertThat(more.firstTookEverything()).isTrue();
    now.clear();
    assertThat(List.of(now.bytes(), now.shoots(), now.hits())).containsOnly(0.0);
    assertThat(now.events()).isZero();
    assertThat(now.everything()).isFalse();
  }

  /** A chunk by itself: two of three histories lose everything, by three events of the drive. */
  @Test
  void aChunkByItselfIsToldLikeAllOfThem() {
    LossTally one = new LossTally(ROWS);
    one.begin(0);
    one.lost(loss(.3, 5, 1, 1, true, DRIVE));
    one.lost(loss(.4, 6, 1, 1, false, DRIVE));
    one.end();
    one.begin(1);
    one.lost(loss(.3, 9, 1, 1, true, DRIVE));
    one.end();
    one.begin(2);
    one.lost(loss(.3, 20, 1, 1, false, FIRE));
    one.end();
    PlainFigures told = new PlainFigures(one, MOST_SHOOTS, LEVEL, true);
    assertThat(told.everythingLost()).isEqualTo(Proportions.of(2, 3, LEVEL));
    assertThat(told.causes()).extracting(CauseShare::id).containsExactly("z:drive", "a:fire");
    assertThat(told.causes().get(0).share()).isEqualTo(Proportions.of(3, 4, LEVEL));
    assertThat(told.causes().get(0).shareOfBytes()).isEqualTo(20 / 40.0);
  }

  @Test
  void whatWasMergedMayBeMergedAgain() {
    LossTally again = new LossTally(ROWS);
    again.merge(all);
    PlainFigures told = new PlainFigures(again, MOST_SHOOTS, LEVEL, true);
    assertThat(told.bytesLost()).isEqualTo(figures(true).bytesLost());
    assertThat(told.lossEvents()).isEqualTo(figures(true).lossEvents());
    assertThat(told.causes()).isEqualTo(figures(true).causes());
    assertThat(told.bytesReached()).isEqualTo(figures(true).bytesReached());
  }

  /** Two histories of 10 and 4 h bare, of 24 times 365 h. */
  @Test
  void ofTwoHistoriesTheMeanIsTold() {
    LossTally two = new LossTally(ROWS);
    for (int number = 0; number < 2; number++) {
      two.begin(number);
      two.passed(1, 10 - 6 * number, 0, 0, 0, 0);
      two.end();
    }
    Estimate bare = two.time().exposure(8_760, LEVEL).singleCopyDays();
    assertThat(bare.value()).isCloseTo(7 / 24.0, within(1e-12));
    assertThat(bare.high()).isGreaterThan(bare.value());
  }

  @Test
  void theCommonestInterruptionIsToldFirst() {
    LossTally tally = new LossTally(ROWS);
    tally.begin(0);
    tally.recovered(FIRE, 1, 2);
    for (int i = 0; i < 3; i++) {
      tally.recovered(new Cause("b:theft", "a theft"), 1, 2);
    }
    tally.recovered(DRIVE, 1, 2);
    tally.recovered(DRIVE, 1, 2);
    tally.end();
    assertThat(tally.time().recoveries(LEVEL))
        .extracting(Recovery::id)
        .containsExactly("b:theft", "z:drive", "a:fire");
  }

  private static void pays(LossTally tally, long number, double amount, boolean toItsEnd) {
    Account account = new Account(8_760);
    account.pay(Expense.DRIVES, 100, amount);
    tally.begin(number);
    tally.paid(account);
    if (toItsEnd) {
      tally.end();
    }
  }

  /** 10, 20 and 60 in two chunks, nothing of one that was given up, and nothing beyond 20,000. */
  @Test
  void whatHistoriesCostIsAmongTheTallies() {
    LossTally first = new LossTally(ROWS);
    pays(first, 0, 10, true);
    pays(first, 1, 900, false);
    first.begin(2);
    first.end();
    pays(first, 3, 20, true);
    LossTally second = new LossTally(ROWS);
    pays(second, 4, 60, true);
    pays(second, LossTally.TIMED_HISTORIES, 900, true);
    LossTally merged = new LossTally(ROWS);
    merged.merge(first);
    merged.merge(second);
    assertThat(merged.cost().totals()).containsExactly(10, 20, 60);
  }
}
