package lastcopy.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lastcopy.interval.Estimate;
import lastcopy.interval.EventRates;

/**
 * Fits a hazard that is constant within stretches of equal length: failures over time at risk,
 * which is the most likely value. Failures between two ages are shared out over stretches by an EM
 * algorithm (Dempster, Laird, Rubin, JRSS B 39, 1977).
 */
final class Pieces {

  private static final int MOST_ROUNDS = 500;
  private static final double SETTLED = 1e-9;

  private final Records lives;
  private final double width;
  private final int n;
  private final double[] failures;
  private final double[] time;

  private Pieces(Records lives, double width, int n) {
    this.lives = lives;
    this.width = width;
    this.n = n;
    failures = new double[n];
    time = new double[n];
  }

  /**
   * The fit.
   *
   * @param width of a stretch
   * @param most stretches; what is older counts with the last
   */
  static PiecewiseFit of(Records lives, double width, int most, double confidence) {
    int n = (int) Math.max(1, Math.min(most, StrictMath.ceil(lives.oldest() / width)));
    Pieces pieces = new Pieces(lives, width, n);
    pieces.count(startingHazard(lives, n));
    if (lives.between()) {
      pieces.settle();
    }
    return pieces.fit(confidence);
  }

  private static double[] startingHazard(Records lives, int n) {
    double[] hazard = new double[n];
    Arrays.fill(hazard, lives.failures() / lives.timeAtRisk());
    return hazard;
  }

  private void settle() {
    double[] before = hazard();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      count(before);
      double[] after = hazard();
      double change = 0;
      for (int j = 0; j < n; j++) {
        change = Math.max(change, Math.abs(after[j] - before[j]));
      }
      before = after;
      if (change * lives.timeAtRisk() < SETTLED * lives.failures()) {
        return;
      }
    }
  }

  private double[] hazard() {
    double[] hazard = new double[n];
    for (int j = 0; j < n; j++) {
      hazard[j] = time[j] > 0 ? failures[j] / time[j] : 0;
    }
    return hazard;
  }

  /** Failures and time at risk of each stretch, as expected under a hazard. */
  private void count(double... hazard) {
    Arrays.fill(failures, 0);
    Arrays.fill(time, 0);
    for (Records.Alike alike : lives.distinct()) {
      LifeRecord life = alike.life();
      for (int j = indexAt(life.entry()); j < n && from(j) < life.lastSeen(); j++) {
        time[j] +=
            alike.count() * (Math.min(to(j), life.lastSeen()) - Math.max(from(j), life.entry()));
      }
      if (life.between()) {
        share(life, (double) alike.count(), hazard);
      } else if (life.failed()) {
        failures[indexOf(life.exit())] += alike.count();
      }
    }
  }

  /** A failure between two ages. */
  private void share(LifeRecord life, double count, double... hazard) {
    int first = indexAt(life.lastSeen());
    int last = indexOf(life.exit());
    double[] survival = new double[last - first + 2];
    survival[0] = 1;
    for (int j = first; j <= last; j++) {
      survival[j - first + 1] = survival[j - first] * StrictMath.exp(-hazard[j] * within(life, j));
    }
    double end = survival[last - first + 1];
    if (end >= 1) {
      return; // a hazard of 0 all the way: nothing can be shared out
    }
    for (int j = first; j <= last; j++) {
      double down = survival[j - first] - survival[j - first + 1];
      double lived = hazard[j] > 0 ? down / hazard[j] : survival[j - first] * within(life, j);
      failures[j] += count * down / (1 - end);
      time[j] += count * (lived - end * within(life, j)) / (1 - end);
    }
  }

  private double within(LifeRecord life, int j) {
    return Math.min(to(j), life.exit()) - Math.max(from(j), life.lastSeen());
  }

  private double from(int j) {
    return j * width;
  }

  private double to(int j) {
    return j == n - 1 ? Double.POSITIVE_INFINITY : (j + 1) * width;
  }

  /** The stretch that an age begins. */
  private int indexAt(double age) {
    return (int) Math.min(n - 1, StrictMath.floor(age / width));
  }

  /** The stretch in which a failure at an age counts: at its end still in it. */
  private int indexOf(double age) {
    return (int) Math.max(0, Math.min(n - 1, StrictMath.ceil(age / width) - 1));
  }

  private PiecewiseFit fit(double confidence) {
    List<Piece> pieces = new ArrayList<>();
    for (int j = 0; j < n; j++) {
      double end = j == n - 1 ? Math.max(lives.oldest(), (j + 1) * width) : (j + 1) * width;
      pieces.add(new Piece(from(j), end, time[j], failures[j], rate(j, confidence)));
    }
    return new PiecewiseFit(pieces, logLikelihood(hazard()));
  }

  private Estimate rate(int j, double confidence) {
    return time[j] > 0
        ? EventRates.of(failures[j], time[j], confidence)
        : new Estimate(0, 0, Double.POSITIVE_INFINITY, false);
  }

  private double logLikelihood(double... hazard) {
    double log = 0;
    for (Records.Alike alike : lives.distinct()) {
      LifeRecord life = alike.life();
      double term = cumulated(life.entry(), hazard) - cumulated(life.lastSeen(), hazard);
      if (life.between()) {
        term +=
            StrictMath.log(
                -StrictMath.expm1(
                    cumulated(life.lastSeen(), hazard) - cumulated(life.exit(), hazard)));
      } else if (life.failed()) {
        term += StrictMath.log(hazard[indexOf(life.exit())]);
      }
      log += alike.count() * term;
    }
    return log;
  }

  private double cumulated(double age, double... hazard) {
    double sum = 0;
    for (int j = 0; j < n && from(j) < age; j++) {
      sum += hazard[j] * (Math.min(to(j), age) - from(j));
    }
    return sum;
  }
}
