package lastcopy.interval;

/**
 * The difference of two chances of loss, paired in part.
 *
 * <p>Square-and-add on Wilson's limits of each chance with the correlation of the two estimates:
 * Newcombe, Statistics in Medicine 17 (1998) 2635-2650, method 10, in the general form of Zou and
 * Donner, Statistics in Medicine 27 (2008) 1693-1702, where the layouts differ in histories.
 * Assumes that the correlation is well enough estimated; where it is not it is taken towards 0.
 */
final class PairedDifference {

  private PairedDifference() {}

  static Estimate of(PairedCounts c, double errorRate) {
    double z = Quantiles.normal(errorRate);
    double r = correlation(c);
    double a = c.chanceA();
    double b = c.chanceB();
    double value = a - b;
    double down = side(a - wilson(a, c.nA(), -z), wilson(b, c.nB(), z) - b, r);
    double up = side(wilson(a, c.nA(), z) - a, b - wilson(b, c.nB(), -z), r);
    return new Estimate(
        value, Math.max(-1, value - down), Math.min(1, value + up), c.lossesA() + c.lossesB() > 0);
  }

  private static double side(double x, double y, double r) {
    return Math.sqrt(Math.max(0, x * x - 2 * r * x * y + y * y));
  }

  /** Correlation of the estimates; n/2 off the positive product is Newcombe's correction. */
  private static double correlation(PairedCounts c) {
    double n = c.paired();
    double neither = n - c.both() - c.onlyA() - c.onlyB();
    double product = c.both() * neither - (double) c.onlyA() * c.onlyB();
    double corrected = product > 0 ? Math.max(0, product - n / 2) : product;
    double spread = Math.sqrt(c.varianceA() * c.nA() * (c.varianceB() * c.nB()));
    if (n == 0 || spread == 0) {
      return 0;
    }
    double r = corrected / (n * n) / spread * n / Math.sqrt((double) c.nA() * c.nB());
    return Math.max(-1, Math.min(1, r));
  }

  /** Wilson's limit of a proportion p of n (JASA 22, 1927), the lower one for −z. */
  private static double wilson(double p, long n, double z) {
    double zz = z * z;
    double limit =
        (p + zz / (2.0 * n) + z * Math.sqrt((p * (1 - p) + zz / (4.0 * n)) / n)) / (1 + zz / n);
    return z < 0 ? Math.max(0, Math.min(p, limit)) : Math.min(1, Math.max(p, limit));
  }
}
