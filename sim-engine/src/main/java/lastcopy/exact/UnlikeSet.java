package lastcopy.exact;

import java.util.ArrayList;
import java.util.List;

/**
 * A set of drives of unlike constant hazards, each failed one repaired by itself at a constant
 * rate. Some that follow each other stand in for each other: all of them, or the two of a mirrored
 * pair. The set is lost when more than m of those are down. Its chain has a state for each choice
 * of drives that may be down, and one for loss.
 *
 * @param failsPerHour λ of each drive in its order, each at least 0
 * @param repairsPerHour μ of each failed drive, at least 0
 * @param together how many stand in for each other, a divisor of the number of drives
 * @param survives m, in [0, together)
 * @param strain factor on the hazard of the others that stand in for a drive that is down, at least
 *     0
 */
public record UnlikeSet(
    List<Double> failsPerHour, double repairsPerHour, int together, int survives, double strain) {

  private static final int MOST_DRIVES = 16;

  /** Copies the list and checks the ranges. */
  public UnlikeSet {
    failsPerHour = List.copyOf(failsPerHour);
    failsPerHour.forEach(rate -> Parameters.atLeastZero(rate, "failure rate"));
    int drives = failsPerHour.size();
    Parameters.that(drives >= 1 && drives <= MOST_DRIVES, "drives must be from 1 to 16", drives);
    Parameters.atLeastZero(repairsPerHour, "repair rate");
    Parameters.that(
        together >= 1 && drives % together == 0, "together must divide the drives", together);
    Parameters.that(
        survives >= 0 && survives < together,
        "failures survived must be in [0, together)",
        survives);
    Parameters.atLeastZero(strain, "strain");
  }

  /**
   * The chance of loss by a time, all drives good at the start.
   *
   * @param hours at least 0
   */
  public double lossBy(double hours) {
    List<Integer> states = survivable();
    return chain(states).chance(0, states.size(), hours);
  }

  /** The sets of drives, as bits, that may be down without loss; the first is empty. */
  private List<Integer> survivable() {
    List<Integer> all = new ArrayList<>();
    for (int down = 0; down < 1 << failsPerHour.size(); down++) {
      boolean stands = true;
      for (int lot = 0; lot < failsPerHour.size() / together; lot++) {
        stands &= Integer.bitCount(down & lotOf(lot * together)) <= survives;
      }
      if (stands) {
        all.add(down);
      }
    }
    return all;
  }

  private MarkovChain chain(List<Integer> states) {
    double[][] rates = new double[states.size() + 1][states.size() + 1];
    for (int from = 0; from < states.size(); from++) {
      int down = states.get(from);
      for (int drive = 0; drive < failsPerHour.size(); drive++) {
        int bit = 1 << drive;
        if ((down & bit) != 0) {
          rates[from][states.indexOf(down & ~bit)] += repairsPerHour;
        } else {
          int then = states.indexOf(down | bit);
          rates[from][then < 0 ? states.size() : then] += hazard(drive, down);
        }
      }
    }
    return new MarkovChain(rates);
  }

  private double hazard(int drive, int down) {
    return failsPerHour.get(drive) * ((down & lotOf(drive)) == 0 ? 1 : strain);
  }

  /** The bits of the drives that stand in for each other with one. */
  private int lotOf(int drive) {
    int first = drive / together * together;
    return ((1 << together) - 1) << first;
  }
}
