package lastcopy.simulate.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import lastcopy.interval.WeightedTally;
import org.junit.jupiter.api.Test;

/** What a precision takes, by hand: means may be 2.5 times as wide as the chance of any loss. */
class GoalTest {

  private static final Goal TENTH = new Goal(0.1, 0.95);

  /** Half-widths of 10 % of the chance, and of so much of events and bytes. */
  private record Widths(double ofEvents, double ofBytes) implements Figures {

    private static Estimate wide(double width) {
      return new Estimate(2, 2 - 2 * width, 2 + 2 * width, true);
    }

    @Override
    public Estimate anyLoss() {
      return wide(0.1);
    }

    @Override
    public Estimate everythingLost() {
      throw new AssertionError("does not decide");
    }

    @Override
    public Estimate lossEvents() {
      return wide(ofEvents);
    }

    @Override
    public Estimate bytesLost() {
      return wide(ofBytes);
    }

    @Override
    public Estimate shootsLost() {
      return everythingLost();
    }

    @Override
    public Estimate shootsHit() {
      return everythingLost();
    }

    @Override
    public Estimate firstLossBy(int row) {
      return everythingLost();
    }

    @Override
    public List<Point> bytesReached() {
      return List.of();
    }

    @Override
    public List<Point> shootsReached() {
      return List.of();
    }

    @Override
    public List<CauseShare> causes() {
      return List.of();
    }
  }

  @Test
  void theWidestFigureDecides() {
    assertThat(new Goal(0.1001, 0.95).isReached(new Widths(0.2, 0.25))).isTrue();
    assertThat(new Goal(0.0999, 0.95).isReached(new Widths(0.2, 0.2))).isFalse();
    assertThat(new Goal(0.1201, 0.95).isReached(new Widths(0.3, 0.1))).isTrue();
    assertThat(new Goal(0.1199, 0.95).isReached(new Widths(0.3, 0.1))).isFalse();
    assertThat(new Goal(0.1199, 0.95).isReached(new Widths(0.1, 0.3))).isFalse();
  }

  /** Half as precise takes a quarter of the histories. */
  @Test
  void historiesGrowWithTheSquareOfThePrecision() {
    assertThat(new Goal(0.05, 0.95).share(new Widths(0.1, 0.1))).isCloseTo(0.25, within(1e-12));
    assertThat(new Goal(0.2, 0.95).share(new Widths(0.1, 0.1))).isCloseTo(4, within(1e-12));
  }

  /** 2² · variance / precision² of the chance; a variance of bytes counts 2.5² = 6.25 less. */
  @Test
  void aVarianceTakesHistories() {
    assertThat(TENTH.needs(3, 6.25)).isCloseTo(1_200, within(1e-9));
    assertThat(TENTH.needs(3, 25)).isCloseTo(1_600, within(1e-9));
  }

  /** A second stage is as long as the one figure that takes longest. */
  @Test
  void theSlowestFigurePlans() {
    WeightedTally even = tally(1);
    WeightedTally uneven = tally(9);
    double chance = even.historiesFor(0.1, 0.95);
    double mean = uneven.historiesFor(0.25, 0.95);
    assertThat(mean).isLessThan(uneven.historiesFor(0.1, 0.95));
    assertThat(TENTH.planned(even, even, even)).isEqualTo(chance);
    assertThat(TENTH.planned(uneven, even, even)).isEqualTo(uneven.historiesFor(0.1, 0.95));
    assertThat(TENTH.planned(even, uneven, even)).isEqualTo(Math.max(chance, mean));
    assertThat(TENTH.planned(even, even, uneven)).isEqualTo(Math.max(chance, mean));
    assertThat(mean).isGreaterThan(chance);
  }

  /** 60 of a hundred histories have something, every sixth of them so much. */
  private static WeightedTally tally(double large) {
    WeightedTally tally = new WeightedTally();
    for (int i = 0; i < 60; i++) {
      tally.add(i % 6 == 0 ? large : 1);
    }
    tally.addHistories(100);
    return tally;
  }
}
