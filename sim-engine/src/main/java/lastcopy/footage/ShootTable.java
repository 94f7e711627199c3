package lastcopy.footage;

import java.util.Arrays;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Units;

/**
 * When each shoot is offloaded and which positions it takes: F(t), a step function.
 *
 * <p>Positions are bytes in the order of shooting; footage on hand comes first. Immutable.
 */
public final class ShootTable {

  private final double onHand;
  private final double firstSize;
  private final double[] times;
  private final double[] ends;

  private ShootTable(Footage footage, double[] times) {
    this.onHand = footage.onHandBytes();
    this.firstSize = footage.shoots().sizeBytes();
    this.times = times;
    this.ends = new double[times.length];
    double at = onHand;
    for (int k = 0; k < times.length; k++) {
      at += sizeAt(footage, times[k]);
      ends[k] = at;
    }
  }

  /** Shoots at P, 2P, 3P ... up to and including the horizon, in hours. */
  public static ShootTable even(Footage footage, double horizonHours) {
    double every = footage.shoots().everyHours();
    double[] times = new double[(int) Math.floor(horizonHours / every * (1 + 1e-12))];
    for (int k = 0; k < times.length; k++) {
      times[k] = Math.min(horizonHours, (k + 1) * every);
    }
    return new ShootTable(footage, times);
  }

  /** Shoots at the first so many of some rising times in hours. */
  public static ShootTable at(Footage footage, double[] times, int first) {
    return new ShootTable(footage, Arrays.copyOf(times, first));
  }

  /** The size of a shoot at a time: x·(1 + growth)^(t/year). */
  public static double sizeAt(Footage footage, double time) {
    double size = footage.shoots().sizeBytes();
    return footage.growthPerYear() == 0
        ? size
        : size * StrictMath.pow(1 + footage.growthPerYear(), time / Units.HOURS_PER_YEAR);
  }

  /** How many shoots there are. */
  public int count() {
    return times.length;
  }

  /** When shoot k is offloaded, in hours, k from 0. */
  public double time(int k) {
    return times[k];
  }

  /** The position at which shoot k ends. */
  public double end(int k) {
    return ends[k];
  }

  /** The position at which shoot k starts. */
  public double start(int k) {
    return k == 0 ? onHand : ends[k - 1];
  }

  /** The size of shoot k in bytes. */
  public double size(int k) {
    return ends[k] - start(k);
  }

  /** Bytes on hand at the start. */
  public double onHand() {
    return onHand;
  }

  /** How many shoots were offloaded at or before a time. */
  public int shotBy(double time) {
    int k = shotBefore(time);
    return k < times.length && times[k] == time ? k + 1 : k;
  }

  /** How many shoots were offloaded before a time. */
  public int shotBefore(double time) {
    return Rising.below(times, times.length, time);
  }

  /** How many shoots were offloaded so many hours before a time, or longer ago. */
  public int shotAgo(double hours, double time) {
    int k = shotBy(time - hours);
    // The sum is what timers are set to; the difference may be a rounding off.
    while (k < times.length && times[k] + hours <= time) {
      k++;
    }
    while (k > 0 && times[k - 1] + hours > time) {
      k--;
    }
    return k;
  }

  /** F(t): all bytes offloaded at or before a time, with those on hand. */
  public double total(double time) {
    int shoots = shotBy(time);
    return shoots == 0 ? onHand : ends[shoots - 1];
  }

  /** The positions [0, position) measured in shoots, parts as parts; on hand in the first size. */
  public double inShoots(double position) {
    if (position <= onHand) {
      return position / firstSize;
    }
    int k = shootOf(position);
    return k == times.length
        ? onHand / firstSize + k
        : onHand / firstSize + k + (position - start(k)) / size(k);
  }

  /** A running number for the shoot, or the piece of footage on hand, that a position is in. */
  public long unitOf(double position) {
    return position < onHand
        ? (long) Math.floor(position / firstSize)
        : (long) Math.ceil(onHand / firstSize) + shootOf(position);
  }

  /** The shoot that a position not on hand belongs to, from 0; the count beyond the last. */
  public int shootOf(double position) {
    int k = Rising.below(ends, ends.length, position);
    return k < ends.length && ends[k] == position ? k + 1 : k;
  }
}
