package lastcopy.history.plan;

import java.util.List;

/**
 * The groups of sources of luck that a bias tells apart: the drives of each copy, by model; those
 * of mirrored pairs that stand alone since their partner is down, by model; each process of shocks;
 * the bits of each copy that cannot be read; and each chance of a shock to take a copy.
 *
 * <p>Of pairs with one drive down only its partner's failure takes the copy: a bias that raised all
 * drives alike would spend nearly all of its histories on the failures of others.
 */
public final class Groups {

  private final int copies;
  private final List<ShockProcess> shocks;
  private final int count;

  /** By shock, the group of its chances to take a copy; −1 where it surely does. */
  private final int[] takes;

  /** By slot, its group. */
  private final int[] drives;

  /** By slot, its group while it stands alone. */
  private final int[] alone;

  Groups(CopyPlan[] copy, SlotPlan[] slots, List<ShockProcess> shocks) {
    copies = copy.length;
    this.shocks = shocks;
    takes = new int[shocks.size()];
    int next = 2 * copies + shocks.size();
    for (int i = 0; i < takes.length; i++) {
      takes[i] = shocks.get(i).takes() < 1 ? next++ : -1;
    }
    drives = new int[slots.length];
    alone = new int[slots.length];
    for (CopyPlan each : copy) {
      next = number(each, slots, next);
    }
    count = next;
  }

  /** Numbers the groups of a copy's drives, of which the first is that of the copy. */
  private int number(CopyPlan copy, SlotPlan[] slots, int from) {
    int more = from - 1;
    int end = from;
    for (int s = copy.firstSlot(); s < copy.endSlot(); s++) {
      int kind = slots[s].kind();
      drives[s] = kind == 0 ? copy.index() : more + kind;
      end = Math.max(end, more + kind + 1);
    }
    int lone = end;
    for (int s = copy.firstSlot(); s < copy.endSlot(); s++) {
      boolean pairs = copy.set().lots() > 1;
      alone[s] = pairs ? lone + slots[s].kind() : drives[s];
      end = Math.max(end, alone[s] + 1);
    }
    return end;
  }

  /** How many. */
  public int count() {
    return count;
  }

  /** The group of a drive or service. */
  public int of(SlotPlan slot) {
    return drives[slot.index()];
  }

  /** The group of a drive whose partner is down; the same as ever where there are no pairs. */
  public int ofAlone(SlotPlan slot) {
    return alone[slot.index()];
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
