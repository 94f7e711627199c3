package lastcopy.simulate;

import lastcopy.history.Bias;
import lastcopy.history.Loss;

/** The hazard that groups of sources run up at each level, in histories that come to it. */
final class VisitTally extends LossLedger {

  private final double[][] hazard;
  private final int[] visits;

  VisitTally(int groups, int levels) {
    hazard = new double[groups][levels];
    visits = new int[levels];
  }

  @Override
  public void lost(Loss loss) {
    // What is lost does not matter here.
  }

  /** Simulates histories under a bias. */
  VisitTally simulate(Biasable histories, Bias bias, long first, int count) {
    for (long number = first; number < first + count; number++) {
      histories.simulate(number, bias, this);
      for (int v = 0; v < visits.length; v++) {
        boolean visited = false;
        for (int g = 0; g < hazard.length; g++) {
          double h = histories.hazard(g, v);
          hazard[g][v] += h;
          visited |= h > 0;
        }
        visits[v] += visited ? 1 : 0;
      }
    }
    return this;
  }

  void merge(VisitTally chunk) {
    for (int v = 0; v < visits.length; v++) {
      visits[v] += chunk.visits[v];
      for (int g = 0; g < hazard.length; g++) {
        hazard[g][v] += chunk.hazard[g][v];
      }
    }
  }

  /** Mean hazard of a group over the time that a history which comes to a level spends there. */
  double ofVisit(int group, int level) {
    return hazard[group][level] / Math.max(1, visits[level]);
  }
}
