package lastcopy.decide;

/** Families of candidates whose order is exactly known. */
final class Families {

  private Families() {}

  /**
   * Where a wrong pick is most likely: all but one of the cheaper ones just miss the target, and
   * all but one of the dearer ones are just beaten by the safest within the budget.
   *
   * @param count at least 4
   */
  static ExactFamily treacherous(int count) {
    return treacherous(count, new ExactFamily());
  }

  /** The same into a family of own choice. */
  static ExactFamily treacherous(int count, ExactFamily family) {
    double over = failures(TARGET * 1.105);
    double under = failures(TARGET * 0.905);
    double safest = failures(TARGET * 0.905 / 1.26 / 1.06);
    family.single(over, priceOf(100, over));
    for (int i = 1; i < count / 2; i++) {
      family.single(over, priceOf(100 + 10.0 * i / count, over));
    }
    family.single(under, priceOf(110, under));
    for (int i = count / 2 + 1; i < count - 1; i++) {
      family.single(under, priceOf(112 + 10.0 * i / count, under));
    }
    return family.single(safest, priceOf(BUDGET, safest));
  }

  static final double TARGET = 0.1;
  static final double BUDGET = 130;

  private static double failures(double chance) {
    return -Math.log1p(-chance);
  }

  /** The price of a drive that costs so much with its replacements. */
  private static double priceOf(double cost, double failures) {
    return cost / (1 + failures);
  }

  /** Lone drives that lose from 1 % to 63 % of the time, most of which are beaten. */
  static ExactFamily singles(int count) {
    ExactFamily family = new ExactFamily();
    for (int i = 0; i < count; i++) {
      double failures = 0.01 * Math.pow(100, ((i * 37) % count + 0.5) / count);
      family.single(failures, price(failures, i, count));
    }
    return family;
  }

  /** Mirrors that lose from 1e-4 down to 1e-9 of the time, most of which are beaten. */
  static ExactFamily mirrors(int count) {
    return mirrors(count, new ExactFamily());
  }

  /** The same into a family of own choice. */
  static ExactFamily mirrors(int count, ExactFamily family) {
    for (int i = 0; i < count; i++) {
      double failures = 0.003 * Math.pow(100, ((i * 37) % count + 0.5) / count);
      family.mirror(failures, 2 + i % 7 * 5, price(failures, i, count));
    }
    return family;
  }

  /** Better drives cost more, but for a spread. */
  private static double price(double failures, int i, int count) {
    return 100 * Math.pow(failures, -0.3) * (1 + 0.5 * ((i * 61) % count) / count);
  }
}
