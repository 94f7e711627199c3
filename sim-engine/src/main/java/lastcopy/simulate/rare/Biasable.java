package lastcopy.simulate.rare;

import java.util.function.BooleanSupplier;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Ledger;

/**
 * Histories of one layout whose hazards can be biased. Sources of events (the drives of a copy, a
 * mishap, deletions ...) form groups; how many things are wrong at an instant is its depth, and
 * that with whether footage stands in one copy only its level. The hazard of a group at a level is
 * multiplied by one factor up to the first loss of a history, and by none after it. One object is
 * used by one thread.
 */
public interface Biasable {

  /** How many groups of sources. */
  int groups();

  /** Looks every so often, within a history too, whether to give up. */
  default void giveUpWhen(BooleanSupplier asked) {
    // Histories that are short need not look.
  }

  /** How many levels. */
  int levels();

  /** The depth of a level; the last depth stands for it and all deeper ones. */
  int depth(int level);

  /** The largest factor by which the hazard of a group is worth biasing, at least 1. */
  default double mostFactor(int group) {
    return Double.POSITIVE_INFINITY;
  }

  /** How many kinds of unlikely draws a ledger is told of. */
  default int channels() {
    return 0;
  }

  /** What such a draw does when it comes out badly, in words. */
  default String channel(int index) {
    throw new IndexOutOfBoundsException(index);
  }

  /**
   * Simulates one history.
   *
   * @param number its number
   * @param bias its factors by group and level; not {@link Bias#NONE}, under which nothing is
   *     measured
   * @param to told what is lost
   */
  void simulate(long number, Bias bias, Ledger to);

  /** Events of a group at a level in the last history, up to its first loss. */
  double events(int group, int level);

  /**
   * Hazard of a group, not biased, summed over the time at a level up to the first loss. Infinite
   * where a life ends at a fixed age.
   */
  double hazard(int group, int level);

  /** The logarithm of the likelihood ratio of what any bias draws alike in the last history. */
  double logOfTheRest();
}
