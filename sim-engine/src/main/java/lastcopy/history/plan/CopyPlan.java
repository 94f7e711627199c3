package lastcopy.history.plan;

import lastcopy.scenario.Copy;

/**
 * A copy as every history reads it; each turn of a rotation is a copy.
 *
 * @param index its number, 0 for the working copy
 * @param name its id, with the turn from the second on
 * @param stated as the scenario states it
 * @param source key of its draws
 * @param set its drives
 * @param firstSlot number of its first drive among all
 * @param way how it is fed; null for the working copy
 * @param visits when it stands at its source's place; null without rotation
 * @param refillPerHour by copy, bytes an hour at which it is refilled from that
 */
public record CopyPlan(
    int index,
    String name,
    Copy stated,
    long source,
    SetPlan set,
    int firstSlot,
    Way way,
    Visits visits,
    double[] refillPerHour) {

  /** The number of the drive after its last. */
  public int endSlot() {
    return firstSlot + set.drives();
  }

  /** Whether its drives take turns with others. */
  public boolean rotates() {
    return visits != null;
  }

  /** Whether it is fed from a copy. */
  public boolean isFedFrom(int copy) {
    return way != null && way.source() == copy;
  }

  /** Whether it holds the footage on hand at the start. */
  public boolean startsFull() {
    return stated.startsFull();
  }

  /** Hours for which it holds what was deleted at its source. */
  public double keepsDeleted() {
    return stated.keepsDeletedHours();
  }

  /**
   * How many things must be wrong with it for it to be gone; of pairs those that are wrong with the
   * worst one.
   */
  public int breaksIt() {
    return set.survives() + 1;
  }
}
