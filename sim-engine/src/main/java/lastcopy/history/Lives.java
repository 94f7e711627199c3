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

  private final Stage stage;
  private final Plan plan;
  private final State[] state;
  private final int[] generation;
  private final double[] frailty;
  private final double[] entered;

  Lives(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
    state = new State[plan.slots];
    generation = new int[plan.slots];
    frailty = new double[plan.slots];
    entered = new double[plan.slots];
  }

  void clear() {
    Arrays.fill(state, State.UP);
    Arrays.fill(generation, 0);
  }

  /** The first drives of all slots begin to count. */
  void start() {
    for (int s = 0; s < plan.slots; s++) {
      entered[s] =
          Double.isNaN(plan.enters[s]) ? Plan.entry(stage.shoots, offset(s)) : plan.enters[s];
      if (entered[s] <= plan.horizon) {
        boolean later = entered[s] > 0;
        double age = later ? plan.boughtAt[s] : stage.frailty.ageAtStart(s);
        frailty[s] = later ? stage.frailty.later(s, 0, age) : stage.frailty.atStart(s);
        begin(s, entered[s], age, plan.firstLifeKey[s]);
        if (later && stage.witness != null) {
          stage.set(plan.timer.enter(s), entered[s]);
        }
      }
    }
  }

  private double offset(int slot) {
    int copy = plan.copyOfSlot[slot];
    return (slot - plan.firstSlot[copy]) * plan.driveSize[copy];
  }

  private void begin(int slot, double from, double age, long key) {
    stage.clocks.startLife(slot, from, age, frailty[slot] * strain(slot), key);
    stage.defects.begin(slot, generation[slot], from);
    if (plan.replaceAt[slot] < Double.POSITIVE_INFINITY) {
      stage.set(plan.timer.swap(slot), from + Math.max(0, plan.replaceAt[slot] - age));
    }
  }

  private double strain(int slot) {
    int copy = plan.copyOfSlot[slot];
    boolean strained = stage.down[copy] > 0 && !stage.gone[copy] && !plan.shelf[copy];
    return strained ? plan.strain[copy] : 1;
  }

  State state(int slot) {
    return state[slot];
  }

  void state(int slot, State to) {
    state[slot] = to;
  }

  /** Whether a slot's first drive has entered service. */
  boolean inService(int slot) {
    return entered[slot] <= stage.now;
  }

  /** A drive or service fails. */
  @Override
  public void due(int slot) {
    stage.clocks.fired(slot);
    stage.agenda.cancel(plan.timer.swap(slot));
    int copy = plan.copyOfSlot[slot];
    if (stage.gone[copy]) {
      state[slot] = State.FAILED;
    } else if (plan.shelf[copy]) {
      stage.shelves.driveFails(slot);
    } else {
      failsInSet(slot, copy);
    }
  }

  private void failsInSet(int slot, int copy) {
    state[slot] = State.DOWN;
    stage.down[copy]++;
    if (stage.down[copy] > plan.survives[copy]) {
      state[slot] = State.FAILED;
      if (plan.service[copy]) {
        stage.rule.struck(plan.serviceCauses);
      } else if (stage.down[copy] > 1) {
        stage.rule.struck(
            plan.driveCauses,
            stage.repairs.unseen(copy, slot) ? Cause.Context.UNSEEN : Cause.Context.REBUILD);
      } else {
        stage.rule.struck(plan.driveCauses);
      }
      stage.outages.goes(copy);
      return;
    }
    stage.repairs.start(slot, copy);
    strainChanged(copy);
    if (stage.down[copy] == plan.survives[copy]) {
      stage.clips.defectsMetByRebuild(copy);
    }
  }

  /** Drives of a set are strained while others of it are down. */
  void strainChanged(int copy) {
    if (plan.strain[copy] != 1) {
      for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
        stage.clocks.setFactor(s, frailty[s] * strain(s));
      }
    }
  }

  /** A drive is swapped for a new one at its planned age, while the old still runs. */
  void swap(int slot) {
    if (state[slot] == State.UP) {
      stage.clocks.stop(slot);
      renew(slot);
      int copy = plan.copyOfSlot[slot];
      stage.say(Happening.Kind.DRIVE_SWAPPED, copy, slot - plan.firstSlot[copy], 0, Double.NaN);
    }
  }

  /** Another drive of a shelf enters service; told only. */
  void enter(int slot) {
    int copy = plan.copyOfSlot[slot];
    stage.say(Happening.Kind.DRIVE_ADDED, copy, slot - plan.firstSlot[copy], 0, Double.NaN);
  }

  /** A slot has a new drive. */
  void renew(int slot) {
    state[slot] = State.UP;
    int g = ++generation[slot];
    frailty[slot] = stage.frailty.later(slot, g, plan.boughtAt[slot]);
    begin(slot, stage.now, plan.boughtAt[slot], Draws.key(plan.slotSource[slot], Draws.LIFE, g));
  }

  /** A drive is destroyed. */
  void destroy(int slot) {
    stage.clocks.stop(slot);
    stage.agenda.cancel(plan.timer.swap(slot));
    state[slot] = State.FAILED;
  }
}
