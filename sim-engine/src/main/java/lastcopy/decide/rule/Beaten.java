package lastcopy.decide.rule;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/** Tells which candidates are beaten: another surely costs no more and surely loses less often. */
public final class Beaten {

  private Beaten() {}

  /** The numbers of those that are beaten by any other of the list. */
  public static BitSet of(List<Bounds> all) {
    List<Bounds> byHighCost =
        all.stream().sorted(Comparator.comparingDouble(each -> each.cost().high())).toList();
    double[] costs = byHighCost.stream().mapToDouble(each -> each.cost().high()).toArray();
    double[] safest = new double[costs.length]; // the least high end of those up to one
    for (int i = 0; i < costs.length; i++) {
      double own = byHighCost.get(i).chance().high();
      safest[i] = i == 0 ? own : Math.min(own, safest[i - 1]);
    }
    BitSet beaten = new BitSet();
    for (Bounds each : all) {
      int cheaper = upTo(costs, each.cost().low());
      if (cheaper > 0 && safest[cheaper - 1] < each.chance().low()) {
        beaten.set(each.candidate());
      }
    }
    return beaten;
  }

  /** How many of a rising row are at most so much. */
  private static int upTo(double[] rising, double most) {
    int found = Arrays.binarySearch(rising, Math.nextUp(most));
    int end = found < 0 ? -found - 1 : found;
    while (end > 0 && rising[end - 1] > most) {
      end--;
    }
    return end;
  }
}
