package lastcopy.history.state;

import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;

/**
 * What is on its way to a copy: content as a fluid, oldest first, at a rate that changes when its
 * link opens or closes or others begin or cease to share it; or carried by hand, all of it at once.
 *
 * <p>What has arrived by a time is reckoned from what was on its way when its present rate began,
 * or when it last became less, never from when it was last looked at: so a look changes nothing,
 * not even by a rounding, which could decide whether a run has anything to do.
 */
public final class Flow {

  private final PositionSet positions = new PositionSet();

  /** What was on its way at the time from which arrivals are reckoned. */
  private final PositionSet reckoned = new PositionSet();

  private double reckonedFrom;
  private final PositionSet left = new PositionSet();
  private final PositionSet arrived = new PositionSet();
  private boolean going;
  private int source;
  private double base;
  private double start;
  private double since;
  private double at;
  private double perHour;
  private double waitsUntil;
  private double arrives;

  Flow() {}

  /** Whether anything is on its way. */
  public boolean isGoing() {
    return going;
  }

  /** Whether something is on its way from a copy. */
  public boolean isFrom(int copy) {
    return going && source == copy;
  }

  /** The copy that it comes from. */
  public int source() {
    return source;
  }

  /** When it began, in hours. */
  public double start() {
    return start;
  }

  /** When it began to flow at its present rate. */
  public double since() {
    return since;
  }

  /** The first position that it brings at its present rate. */
  public double base() {
    return base;
  }

  /** When its source begins to give. */
  public double waitsUntil() {
    return waitsUntil;
  }

  /** Whether it is carried by hand: nothing of it is there until all is. */
  public boolean isByHand() {
    return arrives < Double.POSITIVE_INFINITY;
  }

  /** When what is carried by hand arrives; infinite for what is not. */
  public double arrives() {
    return arrives;
  }

  /** Bytes an hour. */
  public double perHour() {
    return perHour;
  }

  /** What has not yet arrived. */
  public Positions positions() {
    return positions;
  }

  /** When all of it has arrived, as things are, reckoned from the last bringing, which is now. */
  public double endsAt(double now) {
    if (isByHand()) {
      return arrives;
    }
    return positions.isEmpty() ? now : now + positions.bytes() / perHour;
  }

  PositionSet content() {
    return positions;
  }

  void clear() {
    positions.clear();
    going = false;
  }

  /** What is to come goes on its way; the hours it takes. */
  double begin(int from, double rate, double now) {
    going = true;
    source = from;
    base = positions.from(0);
    start = now;
    since = now;
    reckonsFrom(now);
    perHour = rate;
    waitsUntil = now;
    arrives = Double.POSITIVE_INFINITY;
    return positions.bytes() / rate;
  }

  /** From now on it flows at another rate; it has been brought to now. */
  void goesOnAt(double rate, double now) {
    base = positions.isEmpty() ? base : positions.from(0);
    since = now;
    reckonsFrom(now);
    perHour = rate;
  }

  /** It began before its present rate did. */
  void began(double before) {
    start = before;
  }

  /** Its source gives nothing before a time. */
  void waits(double until) {
    waitsUntil = until;
  }

  /** It is carried by hand, and arrives at a time. */
  void byHand(double until) {
    perHour = 0;
    arrives = until;
  }

  /** Some of it does not come; it has been brought to now. */
  void isLess() {
    reckonsFrom(at);
  }

  private void reckonsFrom(double now) {
    reckoned.copyFrom(positions);
    reckonedFrom = now;
    at = now;
  }

  /** What the link has carried by a time arrives. */
  void bringTo(double now, PositionSet held) {
    if (going && now > at) {
      left.copyFrom(reckoned);
      left.removeFirst(perHour * (now - reckonedFrom));
      arrived.copyFrom(positions);
      arrived.removeAll(left);
      held.addAll(arrived);
      positions.copyFrom(left);
      at = now;
    }
  }
}
