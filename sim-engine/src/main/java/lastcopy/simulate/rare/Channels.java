package lastcopy.simulate.rare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lastcopy.interval.WeightedTally;

/**
 * Unlikely draws of biased histories, by kind: how likely they were to come out badly, which is
 * known at each draw, and how often they did. The two have the same mean, but only the first can be
 * summed without luck. So where a kind came out badly too seldom to say what follows from it, the
 * rest of its chance is a bound of what it may add to the chance of a loss. Mutable.
 */
public final class Channels {

  /** Effective draws that came out badly, below which what follows from them is not known. */
  private static final double ENOUGH = 10;

  private final WeightedTally[] risked;
  private final WeightedTally[] came;
  private final double[] riskNow;
  private final double[] cameNow;
  private boolean any;

  public Channels(int count) {
    risked = tallies(count);
    came = tallies(count);
    riskNow = new double[count];
    cameNow = new double[count];
  }

  private static WeightedTally[] tallies(int count) {
    WeightedTally[] all = new WeightedTally[count];
    Arrays.setAll(all, i -> new WeightedTally());
    return all;
  }

  public void risked(int channel, double weighted) {
    riskNow[channel] += weighted;
    any = true;
  }

  public void cameOutBadly(int channel, double weight) {
    cameNow[channel] += weight;
    any = true;
  }

  /** A history has ended. */
  public void endHistory() {
    if (any) {
      for (int c = 0; c < risked.length; c++) {
        add(risked[c], riskNow[c]);
        add(came[c], cameNow[c]);
      }
      Arrays.fill(riskNow, 0);
      Arrays.fill(cameNow, 0);
      any = false;
    }
  }

  private static void add(WeightedTally to, double amount) {
    if (amount > 0 && amount < Double.POSITIVE_INFINITY) {
      to.add(amount);
    }
  }

  /** How many kinds of draws there are. */
  int count() {
    return risked.length;
  }

  public void addHistories(int count) {
    for (int c = 0; c < risked.length; c++) {
      risked[c].addHistories(count);
      came[c].addHistories(count);
    }
  }

  public void merge(Channels other) {
    for (int c = 0; c < risked.length; c++) {
      risked[c].merge(other.risked[c]);
      came[c].merge(other.came[c]);
    }
  }

  /** What a channel may add to the chance of a loss beyond what was seen. */
  double missed(int channel) {
    return came[channel].effective() >= ENOUGH || risked[channel].nonZero() == 0
        ? 0
        : Math.max(0, risked[channel].mean() - came[channel].mean());
  }

  /** What all of them may add. */
  public double missed() {
    double sum = 0;
    for (int c = 0; c < risked.length; c++) {
      sum += missed(c);
    }
    return sum;
  }

  /** Channels that may add something, the largest first. */
  public List<Integer> missing() {
    List<Integer> all = new ArrayList<>();
    for (int c = 0; c < risked.length; c++) {
      if (missed(c) > 0) {
        all.add(c);
      }
    }
    all.sort((a, b) -> Double.compare(missed(b), missed(a)));
    return all;
  }
}
