package lastcopy.benchmark;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import lastcopy.history.History;
import lastcopy.history.report.Ledger;
import lastcopy.scenario.Studio;

/**
 * What a plain history costs with one mechanism or law more, in times the studio without; none
 * should cost more than five times as much. Prints a table: of histories of which only losses are
 * counted, and of the first 20,000, of which times and money are wanted too.
 *
 * <p>Processor time, in turns of a few hundredths of a second with and without, so that whatever
 * else the machine does hits both; the median of the ratios of neighbouring turns.
 */
public final class OneThingRatios {

  private static final double WARM_UP = 1;
  private static final double TURN = 0.02;
  private static final int TURNS = 31;

  private OneThingRatios() {}

  /** Histories of a studio, one after another. */
  private static final class Histories {
    final History history;
    final Ledger ledger;
    long number;
    long turn = 1;

    Histories(String thing, boolean withTime) {
      Studio studio = OneThing.with(thing);
      history = new History(studio, studio.layouts().get(0), 1);
      ledger = new LossCounter(withTime);
    }

    /** Seconds of processor time that one history took, over a number of them. */
    double seconds(long count) {
      long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      for (long k = 0; k < count; k++) {
        history.simulate(number++, ledger);
      }
      return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e9 / count;
    }

    /** Runs until it is compiled, and finds how many histories make a turn. */
    void warmUp() {
      for (double spent = 0; spent < WARM_UP; ) {
        double each = Math.max(1e-10, seconds(turn));
        spent += each * turn;
        turn = Math.max(64, (long) (TURN / each));
      }
    }
  }

  private static double[] ratioAndCost(String thing, boolean withTime) {
    Histories without = new Histories("nothing", withTime);
    Histories with = new Histories(thing, withTime);
    without.warmUp();
    with.warmUp();
    double[] ratios = new double[TURNS];
    double[] costs = new double[TURNS];
    for (int i = 0; i < TURNS; i++) {
      double before = without.seconds(without.turn);
      costs[i] = with.seconds(with.turn);
      ratios[i] = 2 * costs[i] / (before + without.seconds(without.turn));
    }
    Arrays.sort(ratios);
    Arrays.sort(costs);
    return new double[] {ratios[TURNS / 2], costs[TURNS / 2] * 1e9};
  }

  /**
   * Prints the table.
   *
   * @param args not read
   */
  public static void main(String[] args) {
    System.out.println("                  losses only      with times and money");
    System.out.println("                times        ns      times        ns");
    for (String thing : args.length > 0 ? args : OneThing.ALL) {
      double[] plain = ratioAndCost(thing, false);
      double[] timed = ratioAndCost(thing, true);
      System.out.printf(
          Locale.ROOT,
          "%-14s %6.2f %9.0f     %6.2f %9.0f%n",
          thing,
          plain[0],
          plain[1],
          timed[0],
          timed[1]);
    }
  }
}
