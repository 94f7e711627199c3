package lastcopy.history.state;

import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;

/** What is on its way to a copy: content as a fluid, oldest first, at a constant rate. */
public final class Flow {

  private final PositionSet positions = new PositionSet();
  private boolean going;
  private int source;
  private double base;
  private double start;
  private double at;
  private double perHour;

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

  /** The first position that it brings. */
  public double base() {
    return base;
  }

  /** Bytes an hour. */
  public double perHour() {
    return perHour;
  }

  /** What has not yet arrived. */
  public Positions positions() {
    return positions;
  }

  /** Hours until all of it has arrived, counted from the last bringing. */
  public double hoursLeft() {
    return positions.bytes() / perHour;
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
    at = now;
    perHour = rate;
    return positions.bytes() / rate;
  }

  /** What the link has carried by a time arrives. */
  void bringTo(double now, PositionSet held) {
    if (going && now > at) {
      positions.moveFirst(perHour * (now - at), held);
      at = now;
    }
  }
}
