package lastcopy.cli.levers;

import java.util.List;
import java.util.Optional;
import lastcopy.cli.levers.deed.Deed;
import lastcopy.decide.effect.Direction;
import lastcopy.decide.effect.Effects;
import lastcopy.decide.effect.MeasuredEffect;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;

/**
 * All that is told of levers.
 *
 * @param study what was changed
 * @param effects what it does
 * @param assumptions which number matters; empty if it was interrupted before
 * @param settings how it was measured
 * @param isMedian whether the file gives ranges, of which the medians were taken
 * @param isFinished false if it was interrupted
 */
record LeverFindings(
    LeverStudy study,
    Effects effects,
    Optional<AssumptionStudy> assumptions,
    Settings settings,
    boolean isMedian,
    boolean isFinished) {

  /** Deeds with an effect in a direction, in the order of the ranking. */
  List<MeasuredEffect> deeds(Direction direction) {
    return effects.ranked().stream()
        .filter(each -> each.direction() == direction && !deed(each).isYardstick())
        .toList();
  }

  /** Yardsticks, in the order of the ranking. */
  List<MeasuredEffect> yardsticks() {
    return effects.ranked().stream().filter(each -> deed(each).isYardstick()).toList();
  }

  Deed deed(MeasuredEffect effect) {
    return study.deed(effect.id());
  }

  /** Less money is as good as none. */
  private static final double LEAST_COST = 1;

  /** Whether a cost is known, and above what it was. */
  boolean isDearer(MeasuredEffect effect) {
    return deed(effect).isPriced()
        && effect.costDifference().filter(cost -> cost.low() > LEAST_COST).isPresent();
  }

  /**
   * What is taken off the chance of a loss for so much money; empty where it costs nothing more, or
   * takes nothing off.
   */
  Optional<Double> perMoney(MeasuredEffect effect, double money) {
    return isDearer(effect) && effect.direction() == Direction.LESS
        ? effect.costDifference().map(Estimate::value).map(cost -> perMoney(effect, money, cost))
        : Optional.empty();
  }

  private static double perMoney(MeasuredEffect effect, double money, double cost) {
    return -effect.difference().value() / cost * money;
  }
}
