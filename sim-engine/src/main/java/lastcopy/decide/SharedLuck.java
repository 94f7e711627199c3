package lastcopy.decide;

import java.util.List;
import lastcopy.decide.rule.ErrorBudget;
import lastcopy.decide.rule.Pairs;
import lastcopy.interval.PairedExcess;

/**
 * What two candidates' histories of the same numbers, which share their luck, tell of the two
 * together: of near twins, of which hardly a history loses with one alone, much sooner than the
 * bounds of each.
 */
final class SharedLuck implements Pairs {

  private final List<Contender> all;
  private final ErrorBudget budget;

  SharedLuck(List<Contender> all, ErrorBudget budget) {
    this.all = all;
    this.budget = budget;
  }

  @Override
  public boolean losesAtMost(int candidate, double more, int than) {
    Contender one = all.get(candidate);
    Contender other = all.get(than);
    return more > 0 && (plainly(one, more, other) || underBiases(one, more, other));
  }

  private boolean plainly(Contender one, double more, Contender other) {
    long both = Math.min(one.plain.histories(), other.plain.histories());
    int first = (int) Math.min(both, PlainSums.REMEMBERED);
    int onlyOne = one.plain.lossesWithout(other.plain, first);
    int onlyOther = other.plain.lossesWithout(one.plain, first);
    if (onlyOne - onlyOther > more * first) {
      return false; // no limit is below the estimate
    }
    double errorRate = budget.ofPlainPair(Math.min(one.plainLooks(), other.plainLooks()) - 1);
    return PairedExcess.high(onlyOne, onlyOther, first, errorRate) <= more;
  }

  /** No limit is below the estimates. */
  private static boolean isHigher(Contender one, double more, Contender other) {
    return one.bounds().chance().value() - other.bounds().chance().value() > more;
  }

  private boolean underBiases(Contender one, double more, Contender other) {
    if (!one.isBiased() || !other.isBiased() || isHigher(one, more, other)) {
      return false;
    }
    double errorRate = budget.ofBiasedPair(Math.min(one.biasedLooks(), other.biasedLooks()) - 1);
    return one.weights().excessOver(other.weights(), errorRate) <= more;
  }
}
