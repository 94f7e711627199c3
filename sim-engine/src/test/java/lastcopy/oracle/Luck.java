package lastcopy.oracle;

import lastcopy.law.Law;
import lastcopy.scenario.Delay;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomDataGenerator;

/** All draws, one after another from one generator. */
final class Luck {

  private final RandomDataGenerator generator;

  Luck(long seed) {
    generator = new RandomDataGenerator(new MersenneTwister(seed));
  }

  /** Unit exponential. */
  double exponential() {
    return generator.nextExponential(1);
  }

  double uniform() {
    return generator.nextUniform(0, 1, true);
  }

  boolean happens(double chance) {
    return uniform() < chance;
  }

  int poisson(double mean) {
    return mean > 0 ? (int) generator.nextPoisson(mean) : 0;
  }

  double gamma(double shape, double rate) {
    return generator.nextGamma(shape, 1 / rate);
  }

  double time(Law law) {
    return law.remaining(0, exponential());
  }

  /** Hours from now on. */
  double delay(Delay delay, double now) {
    if (delay instanceof Delay.Looks looks) {
      return nextLook(looks.periodHours(), now) - now;
    }
    return time(((Delay.Lawful) delay).law());
  }

  /** The first of P, 2P, 3P ... that is not before now. */
  static double nextLook(double period, double now) {
    return Math.max(1, Math.ceil(now / period - 1e-9)) * period;
  }
}
