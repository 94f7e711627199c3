package lastcopy.exact;

import java.util.Arrays;

/**
 * A Markov chain in continuous time with few states, solved without a single subtraction that could
 * cancel, so that tiny probabilities are as accurate as large ones (about 12 digits).
 *
 * <p>States are numbered from 0; rates are per hour. A state without a way out is absorbing.
 */
public final class MarkovChain {

  private final double[][] rates;

  /**
   * A chain of rates.
   *
   * @param ratesPerHour square; entry [i][j] is the rate from state i to state j, at least 0; the
   *     diagonal is ignored
   * @throws IllegalArgumentException if it is not square or a rate is negative or not finite
   */
  public MarkovChain(double[][] ratesPerHour) {
    int n = ratesPerHour.length;
    Parameters.that(n >= 1, "a chain needs at least one state", n);
    rates = new double[n][];
    for (int i = 0; i < n; i++) {
      Parameters.that(ratesPerHour[i].length == n, "rates must be square", ratesPerHour[i].length);
      rates[i] = ratesPerHour[i].clone();
      rates[i][i] = 0;
      for (double rate : rates[i]) {
        Parameters.atLeastZero(rate, "rate");
      }
    }
  }

  /**
   * A chain of states in a row, the last absorbing.
   *
   * @param up rate from state i to i + 1, one for each state but the last
   * @param down rate from state i + 1 to i, one fewer: nothing leads back from the last state
   */
  public static MarkovChain row(double[] up, double[] down) {
    Parameters.that(down.length == up.length - 1, "rates back must be one fewer", down.length);
    double[][] rates = new double[up.length + 1][up.length + 1];
    for (int i = 0; i < up.length; i++) {
      rates[i][i + 1] = up[i];
      if (i > 0) {
        rates[i][i - 1] = down[i - 1];
      }
    }
    return new MarkovChain(rates);
  }

  /** How many states it has. */
  public int states() {
    return rates.length;
  }

  /**
   * The probability to be in a state after a time.
   *
   * @param from the state at time 0
   * @param to the state asked for
   * @param hours at least 0
   * @return in [0, 1], about 12 digits right however small
   */
  public double chance(int from, int to, double hours) {
    return transition(hours)[from][to];
  }

  /**
   * All transition probabilities after a time: entry [i][j] is the chance to be in j when in i at
   * time 0. By uniformisation over a short step, whose terms are all positive, and repeated
   * squaring with rows scaled back to 1.
   *
   * @param hours at least 0
   */
  public double[][] transition(double hours) {
    Parameters.atLeastZero(hours, "time");
    double fastest = 0;
    for (int i = 0; i < rates.length; i++) {
      fastest = Math.max(fastest, outflow(i, rates.length));
    }
    int squarings = Math.max(0, Math.getExponent(fastest * hours) + 2);
    double[][] result = shortStep(Math.scalb(hours, -squarings), fastest);
    for (int k = 0; k < squarings; k++) {
      result = times(result, result);
      scaleRows(result);
    }
    return result;
  }

  /**
   * The mean time until the chain is first in an absorbing state, by elimination of states without
   * subtraction (Grassmann, Taksar, Heyman, Operations Research 33(5), 1985).
   *
   * @param from the state at time 0
   * @return hours
   * @throws IllegalArgumentException unless the last state is absorbing and the only such state
   */
  public double meanTimeToAbsorption(int from) {
    int last = rates.length - 1;
    for (int i = 0; i <= last; i++) {
      Parameters.that((outflow(i, last + 1) == 0) == (i == last), "only the last may absorb", i);
    }
    double[][] q = swapped(from);
    double[] hours = new double[last];
    Arrays.fill(hours, 1);
    for (int k = last - 1; k > 0; k--) {
      eliminate(q, hours, k);
    }
    return from == last ? 0 : hours[0] / q[0][last];
  }

  /** Takes transient state k out: what went to it goes where it leads, and takes its time along. */
  private static void eliminate(double[][] q, double[] hours, int k) {
    int last = q.length - 1;
    double out = q[k][last];
    for (int j = 0; j < k; j++) {
      out += q[k][j];
    }
    for (int i = 0; i < k; i++) {
      double share = q[i][k] / out;
      hours[i] += share * hours[k];
      for (int j = 0; j < k; j++) {
        q[i][j] += i == j ? 0 : share * q[k][j];
      }
      q[i][last] += share * q[k][last];
    }
  }

  /** A copy of the rates with the state asked for in place of state 0. */
  private double[][] swapped(int first) {
    int n = rates.length;
    double[][] q = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        q[i][j] = rates[swap(i, first)][swap(j, first)];
      }
    }
    return q;
  }

  private static int swap(int i, int first) {
    return i == 0 ? first : i == first ? 0 : i;
  }

  /** Uniformisation over a step in which at most half a jump is expected. */
  private double[][] shortStep(double step, double fastest) {
    int n = rates.length;
    double[][] jump = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        // Jumps per step, not yet divided by the fastest rate: the chain may have no jump at all.
        jump[i][j] = step * (i == j ? fastest - outflow(i, n) : rates[i][j]);
      }
    }
    double[][] term = identity(n);
    double[][] sum = identity(n);
    for (int k = 1; k <= 40; k++) {
      term = times(term, jump);
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          term[i][j] /= k;
          sum[i][j] += term[i][j];
        }
      }
    }
    scaleRows(sum);
    return sum;
  }

  private double outflow(int state, int states) {
    double sum = 0;
    for (int j = 0; j < states; j++) {
      sum += rates[state][j];
    }
    return sum;
  }

  private static double[][] identity(int n) {
    double[][] unit = new double[n][n];
    for (int i = 0; i < n; i++) {
      unit[i][i] = 1;
    }
    return unit;
  }

  private static double[][] times(double[][] a, double[][] b) {
    int n = a.length;
    double[][] c = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        for (int j = 0; j < n; j++) {
          c[i][j] += a[i][k] * b[k][j];
        }
      }
    }
    return c;
  }

  /** Rows are probabilities: scaling them to 1 keeps rounding from doubling at each squaring. */
  private static void scaleRows(double[][] matrix) {
    for (double[] row : matrix) {
      double sum = 0;
      for (double entry : row) {
        sum += entry;
      }
      for (int j = 0; j < row.length; j++) {
        row[j] /= sum;
      }
    }
  }
}
