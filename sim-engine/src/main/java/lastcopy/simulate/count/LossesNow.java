package lastcopy.simulate.count;

import lastcopy.history.report.Loss;
import lastcopy.scenario.Units;

/** What the history that is being simulated has lost so far. Mutable, used again and again. */
public final class LossesNow {

  public int events;
  public double firstYears;
  public double bytes;
  public double shoots;
  public double hits;
  public boolean everything;

  /** What the first loss event alone took; the others follow it. */
  public double firstBytes;

  public double firstShoots;
  public boolean firstTookEverything;

  public void clear() {
    events = 0;
    bytes = 0;
    shoots = 0;
    hits = 0;
    everything = false;
  }

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
}
