package lastcopy.simulate.rare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lastcopy.exact.MarkovChain;

/**
 * Exact chances of loss of a working mirror, a second mirror that is fed from it and a service that
 * is fed from it, as a Markov chain: drives fail, are replaced in exponential time (a failed drive
 * and a copy that is gone alike), a fire takes both mirrors, and data cross in no time.
 *
 * @param fails of a drive, per hour
 * @param back of a drive or copy that is being replaced, per hour
 * @param fire per hour
 * @param loses of the service, per hour
 */
record Chain(double fails, double back, double fire, double loses) {

  private static final int GONE = 2;
  private static final int LOST = 0;

  /**
   * Drives down of each mirror, or gone; whether what is not gone holds anything: a fed copy that
   * returns while its source is gone stays empty until the source is back.
   */
  private record State(int main, int far, boolean farFull, int service, boolean serviceFull) {

    /** What is gone holds nothing, and nobody stays empty beside a working copy. */
    State settled() {
      boolean up = main != GONE;
      return new State(
          main, far, far != GONE && (farFull || up), service, service == 0 && (serviceFull || up));
    }

    boolean holdsNothing() {
      return main == GONE && !farFull && !serviceFull;
    }
  }

  double lossBy(double hours) {
    List<State> states = new ArrayList<>();
    Map<State, Integer> index = new HashMap<>();
    Map<Integer, Map<Integer, Double>> rates = new HashMap<>();
    states.add(null); // lost
    State whole = new State(0, 0, true, 0, true);
    states.add(whole);
    index.put(whole, 1);
    for (int i = 1; i < states.size(); i++) {
      Map<Integer, Double> out = new HashMap<>();
      for (Map.Entry<State, Double> move : moves(states.get(i)).entrySet()) {
        State to = move.getKey();
        int target = LOST;
        if (!to.holdsNothing()) {
          if (!index.containsKey(to)) {
            index.put(to, states.size());
            states.add(to);
          }
          target = index.get(to);
        }
        out.merge(target, move.getValue(), Double::sum);
      }
      rates.put(i, out);
    }
    double[][] matrix = new double[states.size()][states.size()];
    rates.forEach((i, out) -> out.forEach((j, rate) -> matrix[i][j] = rate));
    return new MarkovChain(matrix).chance(1, LOST, hours);
  }

  private Map<State, Double> moves(State s) {
    Map<State, Double> out = new HashMap<>();
    if (s.main != GONE) {
      double rate = (2 - s.main) * fails;
      add(out, new State(s.main + 1, s.far, s.farFull, s.service, s.serviceFull), rate);
    }
    if (s.far != GONE) {
      double rate = (2 - s.far) * fails;
      add(out, new State(s.main, s.far + 1, s.farFull, s.service, s.serviceFull), rate);
    }
    if (s.main != 0) {
      add(out, new State(0, s.far, s.farFull, s.service, s.serviceFull), back);
    }
    if (s.far != 0) {
      add(out, new State(s.main, 0, s.farFull, s.service, s.serviceFull), back);
    }
    add(out, new State(GONE, GONE, false, s.service, s.serviceFull), fire);
    add(out, new State(s.main, s.far, s.farFull, 1, false), s.service == 0 ? loses : 0);
    add(out, new State(s.main, s.far, s.farFull, 0, false), s.service == 1 ? back : 0);
    return out;
  }

  private static void add(Map<State, Double> out, State to, double rate) {
    if (rate > 0) {
      out.merge(to.settled(), rate, Double::sum);
    }
  }
}
