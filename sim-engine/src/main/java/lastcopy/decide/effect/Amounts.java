package lastcopy.decide.effect;

/** What each history of a chunk lost, times its weight. Mutable. */
final class Amounts {

  /** The weight of a history that lost anything, 1 where none is biased; 0 of any other. */
  final double[] weight;

  final double[] bytes;
  final double[] shoots;

  Amounts(int histories) {
    weight = new double[histories];
    bytes = new double[histories];
    shoots = new double[histories];
  }
}
