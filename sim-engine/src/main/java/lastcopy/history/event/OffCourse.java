package lastcopy.history.event;

/** What is simulated off the undisturbed course only, where it says all by itself. */
interface OffCourse {

  /** A history starts, or leaves the course: timers are set as of now. */
  void takeUp();

  /** A history goes back on the course: no timer is needed any more. */
  void rest();

  /** Whether all is as it would be if nothing had ever gone wrong. */
  boolean isUndisturbed();
}
