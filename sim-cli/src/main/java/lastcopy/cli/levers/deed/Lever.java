package lastcopy.cli.levers.deed;

/** A kind of change that an owner could make to a layout. */
public interface Lever {

  /** Adds what can be done with a layout, or why nothing can, to what was found. */
  void find(LeverSubject subject, Found found);
}
