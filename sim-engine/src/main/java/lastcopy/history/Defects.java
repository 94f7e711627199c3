package lastcopy.history;

import java.util.Arrays;
import lastcopy.law.Law;

/**
 * Latent defects: spots of a drive in service that have become unreadable, one after another, each
 * until a scrub finds it. They are reckoned only when somebody is about to meet them, so that they
 * cost a history nothing until then.
 */
final class Defects {

  private final Stage stage;
  private final Plan plan;
  private final int[] generation;
  private final int[] count;
  private final double[] born;
  private final double[] mended;

  Defects(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
    generation = new int[plan.slots];
    count = new int[plan.slots];
    born = new double[plan.slots];
    mended = new double[plan.slots];
  }

  void clear() {
    Arrays.fill(born, Double.POSITIVE_INFINITY);
  }

  /** A drive begins to serve at a time, without a defect. */
  void begin(int slot, int drive, double from) {
    if (plan.defects[plan.copyOfSlot[slot]] != null) {
      generation[slot] = drive;
      count[slot] = 0;
      next(slot, from);
    }
  }

  /** A drive serves again, empty, after its copy was gone. */
  void again(int slot) {
    if (plan.defects[plan.copyOfSlot[slot]] != null) {
      count[slot]++;
      next(slot, stage.now);
    }
  }

  private void next(int slot, double from) {
    int copy = plan.copyOfSlot[slot];
    Law defect = plan.defects[copy];
    born[slot] = from + stage.delay(defect, key(slot, Draws.DEFECT));
    mended[slot] = born[slot] + stage.delay(plan.scrub[copy], key(slot, Draws.SCRUB));
  }

  private long key(int slot, int use) {
    return Draws.key(Draws.key(plan.slotSource[slot], use, generation[slot]), use, count[slot]);
  }

  /** Whether a drive has an unreadable spot now. */
  boolean alive(int slot) {
    while (mended[slot] <= stage.now) {
      count[slot]++;
      next(slot, mended[slot]);
    }
    return born[slot] <= stage.now;
  }

  /** Key of where the spot is that is alive now. */
  long spot(int slot) {
    return key(slot, Draws.DEFECT_SPOT);
  }
}
