package lastcopy.simulate.rare;

import lastcopy.interval.WeightedTally;

/**
 * Weighted events and hazards of histories by group and level, and how many histories came to a
 * level: what tells the best factors.
 */
final class Evidence {

  private final double[][] events;
  private final double[][] hazard;
  private final WeightedTally[] visits;

  Evidence(int groups, int levels) {
    events = new double[groups][levels];
    hazard = new double[groups][levels];
    visits = new WeightedTally[levels];
    for (int v = 0; v < levels; v++) {
      visits[v] = new WeightedTally();
    }
  }

  /** Adds the history that was simulated last. */
  void add(double weight, Biasable history) {
    for (int v = 0; v < visits.length; v++) {
      boolean visited = false;
      for (int g = 0; g < events.length; g++) {
        double h = history.hazard(g, v);
        events[g][v] += weight * history.events(g, v);
        hazard[g][v] += weight * h;
        visited |= h > 0;
      }
      if (visited) {
        visits[v].add(weight);
      }
    }
  }

  void merge(Evidence other) {
    for (int v = 0; v < visits.length; v++) {
      visits[v].merge(other.visits[v]);
      for (int g = 0; g < events.length; g++) {
        events[g][v] += other.events[g][v];
        hazard[g][v] += other.hazard[g][v];
      }
    }
  }

  /** Effective number of histories that came to a level. */
  double visits(int level) {
    return visits[level].effective();
  }

  /**
   * Mean hazard of a group over the time that a history which comes to a level spends there, of
   * histories that were added with weight 1.
   */
  double hazardOfVisit(int group, int level) {
    return hazard[group][level] / Math.max(1, visits[level].nonZero());
  }

  /** The factor of least divergence: events over hazard; 1 where there is no hazard. */
  double bestFactor(int group, int level) {
    return hazard[group][level] > 0 ? events[group][level] / hazard[group][level] : 1;
  }
}
