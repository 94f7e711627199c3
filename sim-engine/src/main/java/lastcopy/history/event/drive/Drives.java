package lastcopy.history.event.drive;

import java.util.EnumSet;
import java.util.Set;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Narrator;
import lastcopy.history.event.Resettable;
import lastcopy.history.event.Spending;
import lastcopy.history.event.copy.DriveFailures;
import lastcopy.history.hazard.Clocks;
import lastcopy.history.hazard.Defects;
import lastcopy.history.hazard.Frailty;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.DriveState;
import lastcopy.history.state.HistoryState;

/**
 * Drives and services in use: they enter service, are strained, are swapped at a planned age. Their
 * failure times are kept by {@link Clocks}; what follows a failure is in {@link DriveFailures}.
 */
public final class Drives implements Mechanism, Resettable {

  private final HistoryState state;
  private final Plan plan;
  private final Clocks clocks;
  private final Frailty frailty;
  private final Defects defects;
  private final Narrator narrator;
  private final Spending spending;

  /** The drives of a state. */
  public Drives(
      HistoryState state,
      Clocks clocks,
      Frailty frailty,
      Defects defects,
      Narrator narrator,
      Spending spending) {
    this.state = state;
    plan = state.plan();
    this.clocks = clocks;
    this.frailty = frailty;
    this.defects = defects;
    this.narrator = narrator;
    this.spending = spending;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    Set<Effect> all = EnumSet.of(Effect.FAILURES);
    for (int s = copy.firstSlot(); s < copy.endSlot(); s++) {
      SlotPlan slot = plan.slot(s);
      addIf(slot.batch() >= 0, Effect.SHARED_FRAILTY, all);
      addIf(slot.lifeOff() != null, Effect.REST_BETWEEN_VISITS, all);
      addIf(slot.isSwapped(), Effect.PLANNED_SWAPS, all);
    }
    addIf(copy.set().strain() != 1, Effect.STRAIN, all);
    addIf(copy.set().unlike(), Effect.UNLIKE_DRIVES, all);
    return all;
  }

  private static void addIf(boolean has, Effect effect, Set<Effect> to) {
    if (has) {
      to.add(effect);
    }
  }

  @Override
  public void clear() {
    frailty.clear();
    defects.clear();
  }

  /** The first drives of all slots begin to count. */
  public void start() {
    for (int s = 0; s < plan.slots(); s++) {
      DriveState drive = state.drive(s);
      SlotPlan slot = drive.plan();
      double entry =
          Double.isNaN(slot.enters()) ? Plan.entry(state.shoots(), slot.from()) : slot.enters();
      drive.enters(entry);
      spending.enters(drive, entry);
      if (entry <= plan.horizon()) {
        boolean later = entry > 0;
        double age = later ? slot.boughtAt() : frailty.ageAtStart(slot);
        drive.frailty(later ? frailty.later(slot, 0, age) : frailty.atStart(slot));
        begin(drive, entry, age, slot.firstKey());
        if (later && narrator.isHeard()) {
          state.clock().set(state.timers().enter(s), entry);
        }
      }
    }
  }

  private void begin(DriveState drive, double from, double age, long key) {
    SlotPlan slot = drive.plan();
    clocks.startLife(slot, from, age, drive.frailty() * strain(state.copyOf(drive), drive), key);
    defects.begin(slot.index(), drive.generation(), from);
    if (slot.isSwapped()) {
      double left = Math.max(0, slot.replaceAt() - age);
      state.clock().set(state.timers().swap(slot.index()), from + left);
    }
  }

  /** Of pairs only the partner is strained, since it alone is read for what is missing. */
  private static double strain(CopyState copy, DriveState drive) {
    boolean strained = copy.downWith(drive) > 0 && !copy.isGone() && !copy.plan().set().shelf();
    return strained ? copy.plan().set().strain() : 1;
  }

  /** How many of a set are down has changed: the others are strained, or no longer. */
  public void downChanged(CopyState copy) {
    if (copy.plan().set().strain() != 1) {
      for (DriveState drive : copy.drives()) {
        clocks.setFactor(drive.slot(), drive.frailty() * strain(copy, drive));
      }
    }
    if (copy.plan().set().lots() > 1) {
      for (DriveState drive : copy.drives()) {
        clocks.standsAlone(drive.plan(), copy.downWith(drive) > 0 && !copy.isGone());
      }
    }
  }

  /** A drive is swapped for a new one at its planned age, while the old still runs. */
  public void swap(int slot) {
    DriveState drive = state.drive(slot);
    if (drive.isUp()) {
      clocks.stop(slot);
      renew(drive);
      spending.isSwapped(drive);
      narrator.say(Happening.Kind.DRIVE_SWAPPED, drive, 0, Double.NaN);
    }
  }

  /** Another drive of a shelf enters service; told only. */
  public void enter(int slot) {
    narrator.say(Happening.Kind.DRIVE_ADDED, state.drive(slot), 0, Double.NaN);
  }

  /** A slot has a new drive. */
  public void renew(DriveState drive) {
    SlotPlan slot = drive.plan();
    drive.isNew();
    drive.frailty(frailty.later(slot, drive.generation(), slot.boughtAt()));
    begin(drive, state.now(), slot.boughtAt(), slot.key(Draws.LIFE, drive.generation()));
  }

  /** Every drive of a copy is destroyed, but those of a shelf that are not yet bought. */
  public void destroyAll(CopyState copy) {
    spending.isDestroyed(copy);
    for (DriveState drive : copy.drives()) {
      if (drive.inService(state.now())) {
        clocks.stop(drive.slot());
        state.clock().cancel(state.timers().swap(drive.slot()));
        drive.condition(DriveState.Condition.FAILED);
      }
    }
  }

  /** A copy that was gone has hardware again: what failed is new, the rest serves again. */
  public void returnAll(CopyState copy) {
    for (DriveState drive : copy.drives()) {
      if (drive.condition() == DriveState.Condition.FAILED) {
        renew(drive);
      } else {
        defects.again(drive.slot());
      }
    }
  }
}
