package lastcopy.history;

/** One kind of event: what happens when one of its timers is due. */
@FunctionalInterface
interface Mechanism {

  /**
   * A timer of this mechanism is due now.
   *
   * @param index which, from 0: a slot, a copy or a shock, as the mechanism counts them
   */
  void due(int index);
}
