package lastcopy.simulate.count;

import lastcopy.history.report.Loss;
import lastcopy.scenario.Units;

/** What the history that is being simulated has lost so far. Mutable, used again and again. */
public final class LossesNow {

  private int events;
  private double firstYears;
  private double bytes;
  private double shoots;
  private double hits;
  private boolean everything;

  /** What the first loss event alone took; the others follow it. */
  private double firstBytes;

  private double firstShoots;
  private boolean firstTookEverything;

  /** A history begins. */
  public void clear() {
    events = 0;
    bytes = 0;
    shoots = 0;
    hits = 0;
    everything = false;
  }

  /** One more loss of the history. */
  public void add(Loss loss) {
    if (events++ == 0) {
      firstYears = loss.hours() / Units.HOURS_PER_YEAR;
      firstBytes = loss.bytes();
      firstShoots = loss.shoots();
      firstTookEverything = loss.everything();
    }
    bytes += loss.bytes();
    shoots += loss.shoots();
    hits += loss.shootsHit();
    everything |= loss.everything();
  }

  /** No amount is less than that of another. */
  public void raiseTo(LossesNow other) {
    bytes = Math.max(bytes, other.bytes);
    shoots = Math.max(shoots, other.shoots);
    hits = Math.max(hits, other.hits);
  }

  /** Loss events. */
  public int events() {
    return events;
  }

  /** Years until the first of them; of no meaning where there is none. */
  public double firstYears() {
    return firstYears;
  }

  /** Bytes lost. */
  public double bytes() {
    return bytes;
  }

  /** Shoots lost, parts as parts. */
  public double shoots() {
    return shoots;
  }

  /** Shoots of which any byte is lost. */
  public double hits() {
    return hits;
  }

  /** Whether everything was lost at some instant. */
  public boolean everything() {
    return everything;
  }

  /** Bytes that the first loss event took. */
  public double firstBytes() {
    return firstBytes;
  }

  /** Shoots that the first loss event took. */
  public double firstShoots() {
    return firstShoots;
  }

  /** Whether the first loss event took everything. */
  public boolean firstTookEverything() {
    return firstTookEverything;
  }
}
