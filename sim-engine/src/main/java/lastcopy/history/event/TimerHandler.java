package lastcopy.history.event;

/** What happens when a timer is due. */
@FunctionalInterface
public interface TimerHandler {

  /**
   * A timer is due now.
   *
   * @param index which of its kind, from 0: a slot, a copy or a process of shocks
   */
  void due(int index);
}
