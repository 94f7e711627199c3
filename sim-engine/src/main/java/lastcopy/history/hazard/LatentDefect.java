package lastcopy.history.hazard;

import lastcopy.history.plan.Draws;
import lastcopy.history.plan.SetPlan;
import lastcopy.history.plan.SlotPlan;

/** The unreadable spot of a drive in service, or the next one. */
final class LatentDefect {

  final SlotPlan slot;
  final SetPlan set;

  /** Which drive of the slot it is, and which of its defects. */
  int generation;

  int count;

  double born;
  double mended;

  /** Under a bias: since when the drive is without a defect, until when that is known. */
  double clean;

  double known;

  /** Under a bias: what is left of the unit exponential until the next defect. */
  double budget;

  /** How often it has been met. */
  int met;

  LatentDefect(SlotPlan slot, SetPlan set) {
    this.slot = slot;
    this.set = set;
  }

  /** Key of the draws of this defect for a use. */
  long key(int use) {
    return Draws.key(slot.key(use, generation), use, count);
  }

  boolean isAlive(double now) {
    return born <= now;
  }

  boolean isMended(double now) {
    return mended <= now && born <= now;
  }

  /** The hazard of a defect from one time to another. */
  double hazard(double from, double to) {
    return set.defects().cumulativeHazard(to - clean)
        - set.defects().cumulativeHazard(from - clean);
  }
}
