package lastcopy.simulate.count;

/**
 * Some histories.
 *
 * @param histories how many, at least 0
 * @param weight the sum of their weights, at least 0
 */
public record Counted(long histories, double weight) {

  /** No history. */
  public static final Counted NONE = new Counted(0, 0);

  /** These and others. */
  public Counted plus(Counted others) {
    return new Counted(histories + others.histories, weight + others.weight);
  }
}
