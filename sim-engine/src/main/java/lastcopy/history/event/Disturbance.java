package lastcopy.history.event;

/** What keeps a history off its undisturbed course, beside what copies hold and how they stand. */
public interface Disturbance {

  /** Whether it can ever do so in the layout. */
  boolean mayDisturb();

  /** Whether it does so now. */
  boolean disturbs();
}
