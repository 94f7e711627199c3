package lastcopy.history;

import java.util.Arrays;

/**
 * The lives of drives and services: when they enter service, fail, are swapped at a planned age.
 * Their failure times are kept by {@link Clocks}.
 */
final class Lives implements Mechanism {

  /** What a slot holds. */
  enum State {
    /** A drive in service, or one that will enter service. */
    UP,
    /** A failed drive of a set that survives, or of a shelf. */
    DOWN,
    /** A replaced drive whose rebuild starts at its timer. */
    ORDERED,
    /** A failed drive of a copy that is gone. */
    FAILED
  }

  private final HistoryState state;
  private final Plan plan;
  private final State[] drive;
  private final int[] generation;
  private final double[] frailty;
  private final double[] entered;

  Lives(HistoryState state) {
    this.state = state;
    plan = state.plan;
    drive = new State[plan.slots];
    generation = new int[plan.slots];
    frailty = new double[plan.slots];
    entered = new double[plan.slots];
  }

  void clear() {
    Arrays.fill(drive, State.UP);
    Arrays.fill(generation, 0);
  }

  /** The first drives of all slots begin to count. */
  void start() {
    for (int s = 0; s < plan.slots; s++) {
      entered[s] =
          Double.isNaN(plan.enters[s]) ? Plan.entry(state.shoots, offset(s)) : plan.enters[s];
      if (entered[s] <= plan.horizon) {
        boolean later = entered[s] > 0;
        double age = later ? plan.boughtAt[s] : state.frailty.ageAtStart(s);
        frailty[s] = later ? state.frailty.later(s, 0, age) : state.frailty.atStart(s);
        begin(s, entered[s], age, plan.firstLifeKey[s]);
        if (later && state.listener != null) {
          state.set(plan.timer.enter(s), entered[s]);
        }
      }
    }
  }

  private double offset(int slot) {
    int copy = plan.copyOfSlot[slot];
    return (slot - plan.firstSlot[copy]) * plan.driveSize[copy];
  }

  private void begin(int slot, double from, double age, long key) {
    state.clocks.startLife(slot, from, age, frailty[slot] * strain(slot), key);
    state.defects.begin(slot, generation[slot], from);
    if (plan.replaceAt[slot] < Double.POSITIVE_INFINITY) {
      state.set(plan.timer.swap(slot), from + Math.max(0, plan.replaceAt[slot] - age));
    }
  }

  private double strain(int slot) {
    int copy = plan.copyOfSlot[slot];
    boolean strained = state.down[copy] > 0 && !state.gone[copy] && !plan.shelf[copy];
    return strained ? plan.strain[copy] : 1;
  }

  State state(int slot) {
    return drive[slot];
  }

  void state(int slot, State to) {
    drive[slot] = to;
  }

  /** Whether a slot's first drive has entered service. */
  boolean inService(int slot) {
    return entered[slot] <= state.now;
  }

  /** A drive or service fails. */
  @Override
  public void due(int slot) {
    state.clocks.fired(slot);
    state.agenda.cancel(plan.timer.swap(slot));
    int copy = plan.copyOfSlot[slot];
    if (state.gone[copy]) {
      drive[slot] = State.FAILED;
    } else if (plan.shelf[copy]) {
      state.shelves.driveFails(slot);
    } else {
      failsInSet(slot, copy);
    }
  }

  private void failsInSet(int slot, int copy) {
    drive[slot] = State.DOWN;
    state.down[copy]++;
    if (state.down[copy] > plan.survives[copy]) {
      drive[slot] = State.FAILED;
      if (plan.service[copy]) {
        state.rule.struck(plan.serviceCauses);
      } else if (state.down[copy] > 1) {
        state.rule.struck(
            plan.driveCauses,
            state.repairs.unseen(copy, slot) ? Cause.Context.UNSEEN : Cause.Context.REBUILD);
      } else {
        state.rule.struck(plan.driveCauses);
      }
      state.outages.goes(copy);
      return;
    }
    state.repairs.start(slot, copy);
    strainChanged(copy);
    if (state.down[copy] == plan.survives[copy]) {
      state.clips.defectsMetByRebuild(copy);
    }
  }

  /** Drives of a set are strained while others of it are down. */
  void strainChanged(int copy) {
    if (plan.strain[copy] != 1) {
      for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
        state.clocks.setFactor(s, frailty[s] * strain(s));
      }
    }
  }

  /** A drive is swapped for a new one at its planned age, while the old still runs. */
  void swap(int slot) {
    if (drive[slot] == State.UP) {
      state.clocks.stop(slot);
      renew(slot);
      int copy = plan.copyOfSlot[slot];
      state.say(Happening.Kind.DRIVE_SWAPPED, copy, slot - plan.firstSlot[copy], 0, Double.NaN);
    }
  }

  /** Another drive of a shelf enters service; told only. */
  void enter(int slot) {
    int copy = plan.copyOfSlot[slot];
    state.say(Happening.Kind.DRIVE_ADDED, copy, slot - plan.firstSlot[copy], 0, Double.NaN);
  }

  /** A slot has a new drive. */
  void renew(int slot) {
    drive[slot] = State.UP;
    int g = ++generation[slot];
    frailty[slot] = state.frailty.later(slot, g, plan.boughtAt[slot]);
    begin(slot, state.now, plan.boughtAt[slot], Draws.key(plan.slotSource[slot], Draws.LIFE, g));
  }

  /** A drive is destroyed. */
  void destroy(int slot) {
    state.clocks.stop(slot);
    state.agenda.cancel(plan.timer.swap(slot));
    drive[slot] = State.FAILED;
  }
}
