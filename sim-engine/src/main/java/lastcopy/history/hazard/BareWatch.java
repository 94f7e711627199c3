package lastcopy.history.hazard;

import lastcopy.history.course.BareTimes;

/**
 * Whether some footage stands in one copy only: off the undisturbed course as it was last said, on
 * it by the clock, without an event.
 */
final class BareWatch {

  /** Null until a bias asks for it, and for a layout of one copy. */
  private BareTimes times;

  private boolean byTheClock;
  private boolean bare;
  private double lookedUp = Double.NaN;
  private int stretch;

  void times(BareTimes onCourse) {
    times = onCourse;
  }

  BareTimes times() {
    return times;
  }

  void clear() {
    bare = false;
    byTheClock = times != null;
  }

  /** Whether it comes and goes by the clock. */
  boolean byTheClock() {
    return byTheClock;
  }

  /** Whether, off the course, some footage stands in one copy only. */
  boolean bare() {
    return bare;
  }

  /** Whether something else holds from now on. */
  boolean differs(boolean clock, boolean oneCopyOnly) {
    return clock != byTheClock || oneCopyOnly != bare;
  }

  void is(boolean clock, boolean oneCopyOnly) {
    byTheClock = clock;
    bare = oneCopyOnly;
  }

  /** Whether some footage has stood in one copy only just before a time. */
  boolean until(double now) {
    return byTheClock ? times.bareUntil(now) : bare;
  }

  /** The stretch of an instant; all sources are settled at the same. */
  int stretchAt(double time) {
    if (time != lookedUp) {
      lookedUp = time;
      stretch = times.stretchFrom(time);
    }
    return stretch;
  }
}
