package lastcopy.history.event;

/** What a history leaves behind that the next must not find. */
@FunctionalInterface
public interface Resettable {

  /** Back to the start of a history. */
  void clear();
}
