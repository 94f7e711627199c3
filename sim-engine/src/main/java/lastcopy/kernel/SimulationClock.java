package lastcopy.kernel;

/**
 * The simulation clock: the time it is in a history, and the timers that are set. What falls behind
 * the horizon is never looked at.
 */
public final class SimulationClock {

  private final Agenda agenda;
  private final double horizon;
  private double now;

  /** A clock at time 0 with one timer for each priority, as {@link Agenda} takes them. */
  public SimulationClock(Priority[] priorities, double horizon) {
    agenda = new Agenda(priorities);
    this.horizon = horizon;
  }

  /** Back to time 0, with no timer set. */
  public void clear() {
    agenda.clear();
    now = 0;
  }

  /** The time it is. */
  public double now() {
    return now;
  }

  /** Time passes, up to an instant not before now. */
  public void passTo(double instant) {
    now = instant;
  }

  /** When it ends. */
  public double horizon() {
    return horizon;
  }

  /** Sets a timer, or moves it; what is behind the horizon changes nothing. */
  public void set(int timer, double at) {
    if (at <= horizon) {
      agenda.set(timer, at);
    }
  }

  /** Moves a timer, or unsets it if the time is behind the horizon. */
  public void move(int timer, double at) {
    if (at <= horizon) {
      agenda.set(timer, at);
    } else {
      agenda.cancel(timer);
    }
  }

  /** Unsets a timer; nothing if it is not set. */
  public void cancel(int timer) {
    agenda.cancel(timer);
  }

  /** Whether a timer is set. */
  public boolean isSet(int timer) {
    return agenda.isSet(timer);
  }

  /** The time that a set timer is set to. */
  public double of(int timer) {
    return agenda.time(timer);
  }

  /** The rank of the priority of a timer. */
  public int rank(int timer) {
    return agenda.rank(timer);
  }

  /** The timer that goes next, or {@link Agenda#NONE}. */
  public int peek() {
    return agenda.peek();
  }

  /** Whether a timer is one, and set to a time or before. */
  public boolean isDue(int timer, double by) {
    return timer != Agenda.NONE && agenda.time(timer) <= by;
  }
}
