package lastcopy.history.plan;

import lastcopy.law.Fixed;
import lastcopy.law.Law;

/**
 * The place of a drive, or a service, through which one drive after another goes.
 *
 * @param index its number among the slots of all copies
 * @param copy the copy that it belongs to
 * @param drive its number in the copy, from 0
 * @param kind number of its model among the different ones of its copy, from 0
 * @param from the first position that it holds, of a shelf; else 0
 * @param to the position after its last, of a shelf; else infinite
 * @param source key of its draws
 * @param firstKey key of its first drive's life
 * @param life law of a drive in service
 * @param lifeOff law of one that is off between visits; null if it is the same
 * @param age law of the first drive's age at the start
 * @param boughtAt age in hours at which later ones enter service
 * @param replaceAt age at which they are swapped; infinite if never
 * @param enters when its first drive enters service; NaN where shoots are random and it may be
 *     later
 * @param firstHazard cumulative hazard of the first drive by the horizon; infinite where it depends
 * @param batch number of the batch whose frailty it shares; −1 for none
 * @param spread variance of that frailty
 */
public record SlotPlan(
    int index,
    int copy,
    int drive,
    int kind,
    double from,
    double to,
    long source,
    long firstKey,
    Law life,
    Law lifeOff,
    Law age,
    double boughtAt,
    double replaceAt,
    double enters,
    double firstHazard,
    int batch,
    double spread) {

  /** The key of the n-th draw for a use. */
  public long key(int use, int n) {
    return Draws.key(source, use, n);
  }

  /** Whether drives are swapped at a planned age. */
  public boolean isSwapped() {
    return replaceAt < Double.POSITIVE_INFINITY;
  }

  /** Whether the first drive's hazard at any time is known before: its age is, and it stays on. */
  public boolean agesByTheClock() {
    return age instanceof Fixed && lifeOff == null;
  }

  /** The hazard that a drive of an age runs up in so many hours. */
  public static double hazard(Law law, double start, double time) {
    return law.cumulativeHazard(start + time) - law.cumulativeHazard(start);
  }
}
