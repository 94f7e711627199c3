package lastcopy.simulate;

import lastcopy.history.Bias;
import lastcopy.history.Ledger;

/**
 * Histories of one layout whose hazards can be biased. Sources of events (the drives of a copy, a
 * mishap, deletions ...) form groups, and how many things are wrong at an instant is its depth; the
 * hazard of a group at a depth is multiplied by one factor up to the first loss of a history, and
 * by none after it. One object is used by one thread.
 */
interface Biasable {

  /** How many groups of sources. */
  int groups();

  /** How many depths, the last of which stands for it and all deeper ones. */
  int depths();

  /**
   * Simulates one history.
   *
   * @param number its number
   * @param bias its factors by group and depth; not {@link Bias#NONE}, under which nothing is
   *     measured
   * @param to told what is lost
   */
  void simulate(long number, Bias bias, Ledger to);

  /** Events of a group at a depth in the last history, up to its first loss. */
  double events(int group, int depth);

  /**
   * Hazard of a group, not biased, summed over the time at a depth up to the first loss. Infinite
   * where a life ends at a fixed age.
   */
  double hazard(int group, int depth);
}
