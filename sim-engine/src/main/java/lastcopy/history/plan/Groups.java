package lastcopy.history.plan;

import java.util.List;

/**
 * The groups of sources of luck that a bias tells apart: the drives of each copy, each process of
 * shocks, the bits of each copy that cannot be read, and each chance of a shock to take a copy.
 */
public final class Groups {

  private final int copies;
  private final List<ShockProcess> shocks;
  private final int count;

  /** By shock, the group of its chances to take a copy; −1 where it surely does. */
  private final int[] takes;

  Groups(int copies, List<ShockProcess> shocks) {
    this.copies = copies;
    this.shocks = shocks;
    takes = new int[shocks.size()];
    int next = 2 * copies + shocks.size();
    for (int i = 0; i < takes.length; i++) {
      takes[i] = shocks.get(i).takes() < 1 ? next++ : -1;
    }
    count = next;
  }

  /** How many. */
  public int count() {
    return count;
  }

  /** The group of the drives of a copy. */
  public int drivesOf(int copy) {
    return copy;
  }

  /** The group of a process of shocks. */
  public int of(ShockProcess shock) {
    return copies + shock.index();
  }

  /** The group of the bits of a copy that cannot be read. */
  public int readsOf(int copy) {
    return copies + shocks.size() + copy;
  }

  /** The group of a shock's chances to take a copy; −1 where it surely does. */
  public int takesOf(ShockProcess shock) {
    return takes[shock.index()];
  }

  /**
   * The largest factor by which a group is worth biasing: a chance to take a copy, as a hazard of
   * −ln(1 − takes), is not made larger than 1, so that being spared stays likely enough.
   */
  public double mostFactor(int group) {
    for (ShockProcess shock : shocks) {
      if (takesOf(shock) == group) {
        return Math.max(1, -1 / StrictMath.log1p(-shock.takes()));
      }
    }
    return Double.POSITIVE_INFINITY;
  }
}
