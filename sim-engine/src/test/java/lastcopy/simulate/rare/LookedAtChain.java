package lastcopy.simulate.rare;

import lastcopy.exact.MarkovChain;

/**
 * A mirror of two whose failures wait for a look by the clock and are then rebuilt in an
 * exponential time. States: 0 both good, 1 one down and unseen, 2 one in rebuild, 3 lost. A look
 * moves 1 to 2.
 */
public final class LookedAtChain {

  private LookedAtChain() {}

  public static double loss(double fails, double repairs, double periodHours, int periods) {
    double[][] rates = {
      {0, 2 * fails, 0, 0}, {0, 0, 0, fails}, {repairs, 0, 0, fails}, {0, 0, 0, 0}
    };
    double[][] period = new MarkovChain(rates).transition(periodHours);
    double[] state = {1, 0, 0, 0};
    for (int k = 0; k < periods; k++) {
      double[] next = new double[4];
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          next[j] += state[i] * period[i][j];
        }
      }
      next[2] += next[1];
      next[1] = 0;
      state = next;
    }
    return state[3];
  }
}
