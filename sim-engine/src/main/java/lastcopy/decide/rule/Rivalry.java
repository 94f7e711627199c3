package lastcopy.decide.rule;

/**
 * What keeps an answer from being settled.
 *
 * @param candidate that might be a better answer
 * @param against the answer that it is held against; the candidate itself where the question is
 *     only on which side of the target or budget it lies
 * @param byChance whether it takes closer chances of loss
 * @param byCost whether it takes closer costs
 */
public record Rivalry(int candidate, int against, boolean byChance, boolean byCost) {

  static Rivalry of(Bounds candidate, Bounds against, boolean byChance, boolean byCost) {
    return new Rivalry(candidate.candidate(), against.candidate(), byChance, byCost);
  }
}
