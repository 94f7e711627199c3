package lastcopy.history.event;

/** What is simulated off the undisturbed course only, where it says all by itself. */
public interface OffCourse {

  /** Whether the layout has any of it. */
  default boolean isUsed() {
    return true;
  }

  /** A history starts, or leaves the course: timers are set as of now. */
  void takeUp();

  /** A history goes back on the course: no timer is needed any more. */
  void rest();
}
