package lastcopy.simulate.rare;

import java.util.Arrays;
import java.util.List;
import lastcopy.history.hazard.Bias;

/**
 * Several biases under which histories are simulated by turns, so that what one of them neglects
 * another finds. A history weighs as its density under no bias over that under the mixture (the
 * balance heuristic: Veach, Guibas, SIGGRAPH 1995; Owen, Zhou, JASA 95 (2000) 135-143), whichever
 * it came from. With hazards b·λ against λ the density of a path, over that of the unbiased, is Π
 * b(T_i) · exp(−∫ (b − 1) λ dt) (Brémaud, Point Processes and Queues, 1981, VI.2).
 */
public final class Mixture {

  /** The golden ratio times 2^64: multiples of it fall evenly (Weyl), so shares hold at any N. */
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  /**
   * One of the biases.
   *
   * @param share of the histories, in (0, 1]
   * @param factors by group and level, above 0
   */
  public record Part(double share, double[][] factors) {}

  private final List<Part> parts;
  private final Bias[] biases;
  private final double[][][] logs;

  /** A mixture of parts whose shares add to 1. */
  Mixture(List<Part> parts) {
    this.parts = List.copyOf(parts);
    logs = new double[parts.size()][][];
    biases = new Bias[parts.size()];
    for (int j = 0; j < logs.length; j++) {
      double[][] factors = parts.get(j).factors();
      logs[j] = new double[factors.length][];
      biases[j] = Bias.of(factors);
      for (int g = 0; g < factors.length; g++) {
        logs[j][g] = new double[factors[g].length];
        for (int d = 0; d < factors[g].length; d++) {
          logs[j][g][d] = StrictMath.log(factors[g][d]);
        }
      }
    }
  }

  /** One of as many parts with the same shares, none of which biases anything. */
  public Mixture flat(int groups, int levels) {
    double[][] ones = new double[groups][levels];
    for (double[] row : ones) {
      Arrays.fill(row, 1);
    }
    return new Mixture(parts.stream().map(part -> new Part(part.share(), ones)).toList());
  }

  /** The bias of one part. */
  public Bias part(int index) {
    return biases[index];
  }

  /** How many parts it has, each with a share of any row of histories. */
  public int parts() {
    return biases.length;
  }

  /** The part under which a history is simulated. */
  public int partOf(long number) {
    double place = ((number * GOLDEN) >>> 11) * 0x1p-53;
    int j = 0;
    while (j < biases.length - 1 && place >= parts.get(j).share()) {
      place -= parts.get(j).share();
      j++;
    }
    return j;
  }

  /**
   * The weight of the history that was simulated last.
   *
   * @return at least 0; NaN where a life that ends at a fixed age was biased: it has no density
   */
  public double weight(Biasable history) {
    double[] log = new double[logs.length];
    for (int g = 0; g < logs[0].length; g++) {
      for (int v = 0; v < logs[0][g].length; v++) {
        double events = history.events(g, v);
        double hazard = history.hazard(g, v);
        if (events > 0 || hazard > 0) { // an event at the very instant has run up no hazard
          addTo(log, g, v, events, hazard);
        }
      }
    }
    double density = 0;
    for (int j = 0; j < log.length; j++) {
      density += parts.get(j).share() * StrictMath.exp(log[j]);
    }
    return StrictMath.exp(history.logOfTheRest()) / density;
  }

  private void addTo(double[] log, int group, int level, double events, double hazard) {
    for (int j = 0; j < log.length; j++) {
      double factor = parts.get(j).factors()[group][level];
      if (hazard < Double.POSITIVE_INFINITY) {
        log[j] += events * logs[j][group][level] - (factor - 1) * hazard;
      } else if (factor != 1) {
        log[j] = Double.NaN;
      }
    }
  }
}
