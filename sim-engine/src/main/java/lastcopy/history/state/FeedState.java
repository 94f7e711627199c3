package lastcopy.history.state;

import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;

/** How a copy's feed stands, and what its runs bring back of what was missing after a return. */
public final class FeedState {

  private boolean stopped;
  private boolean visiting;
  private boolean asRefill;
  private boolean firstFill;
  private int timesRead;
  private boolean missingIsKnown;
  private final PositionSet began = new PositionSet();

  /** What the first run after a return was to bring, once that run has begun. */
  private final PositionSet missing = new PositionSet();

  private final PositionSet unread = new PositionSet();

  FeedState() {}

  void clear() {
    stopped = false;
    visiting = false;
    asRefill = false;
    timesRead = 0;
  }

  /** Whether it has stopped and nobody has seen it. */
  public boolean isStopped() {
    return stopped;
  }

  /** It stops, or goes on. */
  public void stopped(boolean is) {
    stopped = is;
  }

  /** Whether a rotated drive stands at its source's place, off the undisturbed course. */
  public boolean isVisiting() {
    return visiting;
  }

  /** A rotated drive comes, or leaves. */
  public void visiting(boolean is) {
    visiting = is;
  }

  /** Whether no run has yet carried all that it began with, to a copy that started empty. */
  public boolean isFirstFill() {
    return firstFill;
  }

  /** Its first fill begins, or is over. */
  public void firstFill(boolean is) {
    firstFill = is;
  }

  /** The copy has hardware again; what it lacks is seen when a run begins. */
  public void comesBack() {
    missingIsKnown = false;
  }

  /** The first run after a return is to bring this. */
  public void isToBring(Positions all) {
    if (!missingIsKnown) {
      missingIsKnown = true;
      missing.copyFrom(all);
    }
  }

  /** Whether the copy may have all again that it lacked at its return. */
  public boolean knowsWhatIsMissing() {
    return missingIsKnown;
  }

  /** What is still missing; to be made less by whoever knows why. */
  public PositionSet missing() {
    return missing;
  }

  /** A run begins, which meets and pays for what its source hides only if it is a refill. */
  public void begins(boolean refill) {
    asRefill = refill;
  }

  /**
   * What a refill reads as one.
   *
   * @param all what it brings
   * @param onlyMissing whether the rest has been shot since the return, and is brought as ever
   */
  public Positions reads(Positions all, boolean onlyMissing) {
    began.copyFrom(all);
    if (onlyMissing) {
      began.retainAll(missing);
    }
    return began;
  }

  /** Whether the run that goes on, or has just ended, is a refill. */
  public boolean isRefill() {
    return asRefill;
  }

  /** Some of what has not yet arrived does not come: a refill does not read it. */
  void doesNotRead(Positions toArrive, Positions some) {
    if (asRefill) {
      unread.copyFrom(toArrive);
      unread.retainAll(some);
      began.removeAll(unread);
    }
  }

  /** What has not yet arrived below a position does not come. */
  void doesNotReadBelow(Positions toArrive, double position) {
    if (asRefill) {
      unread.copyFrom(toArrive);
      unread.remove(position, Double.POSITIVE_INFINITY);
      began.removeAll(unread);
    }
  }

  /** What a refill has read: all that it began with, less what has not arrived or never will. */
  public Positions hasRead(Positions left) {
    began.removeAll(left);
    return began;
  }

  /** Counts a reading that was paid for; how many there were before. */
  public int countReading() {
    return timesRead++;
  }
}
