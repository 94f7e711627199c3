package lastcopy.history.event;

import java.util.Arrays;
import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.history.course.RecordedCourse;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.Prices;
import lastcopy.history.plan.SlotPlan;
import lastcopy.history.report.Account;
import lastcopy.history.report.Audience;
import lastcopy.history.report.Expense;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.DriveState;
import lastcopy.history.state.HistoryState;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Periodic;

/**
 * What a history costs: that of a life without failures, and what failures change. Told to the
 * ledger at the end, where time is wanted and the studio prices anything; else nothing is counted.
 *
 * <p>Choices where the model leaves room:
 *
 * <ul>
 *   <li>a replacement that had arrived when the rest of its set failed is not bought again, unless
 *       it is destroyed with the copy;
 *   <li>a drive draws no power from its failure until its replacement arrives or its copy returns;
 *       drives of a copy that is gone that had not failed go on drawing it, and so does a box;
 *   <li>a copy that is brought back is one repair, however many of its drives are new; a planned
 *       swap is one too;
 *   <li>looks go on while a copy is gone; no restore is tried from it then, and no drive brought.
 * </ul>
 */
public final class Spending implements Resettable {

  private static final double NONE = Double.NaN;
  private static final Positions NOTHING = new PositionSet();

  private final HistoryState state;
  private final Plan plan;
  private final Prices prices;
  private final Audience audience;
  private final Account account;
  private final StoreMeter storage;

  /** By slot, since when it draws no power; NaN while it does. */
  private final double[] offSince;

  /** By slot, when a replacement arrives that is not paid yet; NaN if none is on its way. */
  private final double[] arrives;

  /** By slot of a copy that is gone, whether its replacement is there already. */
  private final boolean[] inHand;

  private final double[] goneSince;
  private final boolean[] boxDestroyed;
  private final Absences off = new Absences();
  private final Absences missed = new Absences();
  private Account undisturbed;
  private boolean counts;

  /** What histories of a state cost, told to an audience. */
  public Spending(HistoryState state, Audience audience) {
    this.state = state;
    this.audience = audience;
    plan = state.plan();
    prices = plan.prices();
    account = new Account(plan.horizon());
    storage = new StoreMeter(state, account);
    offSince = new double[plan.slots()];
    arrives = new double[plan.slots()];
    inHand = new boolean[plan.slots()];
    goneSince = new double[plan.copies()];
    boxDestroyed = new boolean[prices.boxCount()];
  }

  @Override
  public void clear() {
    counts = prices.any() && audience.wantsTime();
    if (counts) {
      account.copyFrom(prices.sure());
      Arrays.fill(offSince, NONE);
      Arrays.fill(arrives, NONE);
      Arrays.fill(inHand, false);
      Arrays.fill(goneSince, NONE);
      Arrays.fill(boxDestroyed, false);
      off.clear();
      missed.clear();
    }
  }

  private double now() {
    return state.now();
  }

  // ---- drives

  /** A first drive enters service; that of shoots at random is not known beforehand. */
  public void enters(DriveState drive, double entry) {
    if (counts && Double.isNaN(drive.plan().enters())) {
      prices.enters(drive.plan(), entry, account);
    }
  }

  /** A drive fails. */
  public void fails(DriveState drive) {
    if (counts) {
      isOff(drive.slot());
    }
  }

  private void isOff(int slot) {
    if (Double.isNaN(offSince[slot])) {
      offSince[slot] = now();
    }
  }

  /** A replacement is on its way. */
  public void isOrdered(DriveState drive, double arrival) {
    arrives[drive.slot()] = arrival;
  }

  /** A drive of a set or shelf has been replaced. */
  public void isReplaced(DriveState drive) {
    if (counts) {
      arrived(drive.slot());
    }
  }

  private void arrived(int slot) {
    buys(slot, arrives[slot]);
    account.pay(Expense.WORK, arrives[slot], prices.repair());
    isOn(slot, arrives[slot]);
    arrives[slot] = NONE;
  }

  private void buys(int slot, double at) {
    account.pay(Expense.DRIVES, at, prices.drive(slot));
  }

  private void isOn(int slot, double at) {
    off.add(slot, offSince[slot], at);
    offSince[slot] = NONE;
  }

  /** A drive is swapped as planned. */
  public void isSwapped(DriveState drive) {
    if (counts) {
      buys(drive.slot(), now());
      account.pay(Expense.WORK, now(), prices.repair());
    }
  }

  // ---- copies

  /** All drives of a copy in service are destroyed, and what had arrived for them. */
  public void isDestroyed(CopyState copy) {
    for (int i = 0; counts && i < copy.drives().length; i++) {
      DriveState drive = copy.drives()[i];
      if (drive.inService(now())) {
        if (arrives[drive.slot()] < now()) {
          arrived(drive.slot());
        }
        arrives[drive.slot()] = NONE;
        isOff(drive.slot());
      }
    }
  }

  /** The box of a copy is destroyed with it. */
  public void isBoxDestroyed(CopyState copy) {
    int box = prices.boxOf(copy.index());
    if (counts && box >= 0) {
      boxDestroyed[box] = true;
    }
  }

  /** A copy goes: what has not arrived for it is bought at its return. */
  public void goes(CopyState copy) {
    if (!counts) {
      return;
    }
    for (DriveState drive : copy.drives()) {
      int slot = drive.slot();
      if (arrives[slot] < now()) {
        arrived(slot);
        inHand[slot] = true;
        isOff(slot); // it serves again at the return
      }
      arrives[slot] = NONE;
    }
    goneSince[copy.index()] = now();
    if (copy.plan().rotates() && copy.feed().isVisiting()) {
      double began = copy.plan().visits().lastBefore(now());
      misses(copy, began + copy.plan().visits().hours());
    }
  }

  /** A restore from a copy was tried and found it unusable, so that it is gone after the trial. */
  public void isTried(CopyState copy) {
    goneSince[copy.index()] = Math.nextUp(now());
  }

  /** A copy that was gone has hardware again. */
  public void returns(CopyState copy) {
    if (!counts) {
      return;
    }
    for (DriveState drive : copy.drives()) {
      if (drive.condition() == DriveState.Condition.FAILED) {
        if (!inHand[drive.slot()]) {
          buys(drive.slot(), now());
        }
        inHand[drive.slot()] = false;
        isOn(drive.slot(), now());
      }
    }
    account.pay(Expense.WORK, now(), prices.repair());
    int box = prices.boxOf(copy.index());
    if (box >= 0 && boxDestroyed[box]) {
      account.pay(Expense.BOXES, now(), prices.box(box));
      boxDestroyed[box] = false;
    }
    triesNothing(copy.plan(), now());
    goneSince[copy.index()] = NONE;
  }

  /** No restore was tried since a copy went. */
  private void triesNothing(CopyPlan copy, double until) {
    double since = goneSince[copy.index()];
    copy.stated()
        .spoils()
        .map(Copy.Spoils::triedEveryHours)
        .ifPresent(
            every ->
                every.ifPresent(
                    hours -> {
                      Periodic trials = new Periodic(hours, hours);
                      double count = trials.countBefore(until) - trials.countBefore(since);
                      account.pay(Expense.WORK, since, -count * prices.trial());
                    }));
  }

  /** Whether it costs money to bring footage back from a copy. */
  public boolean chargesFor(CopyState source) {
    return counts && prices.retrievalPerByte(source.index()) > 0;
  }

  /** A refill has brought so many bytes back from a copy. */
  public void isBroughtBack(CopyState source, double bytes) {
    account.pay(Expense.SERVICES, now(), prices.retrievalPerByte(source.index()) * bytes);
  }

  // ---- rotations

  /** A rotated drive is not brought when its turn is due. */
  public void missesVisit(CopyState copy) {
    if (counts) {
      account.pay(Expense.WORK, now(), -prices.visit());
      misses(copy, now() + copy.plan().visits().hours());
    }
  }

  private void misses(CopyState copy, double until) {
    missed.add(copy.index(), now(), Math.min(until, plan.horizon()));
  }

  // ---- time

  /** Time passes. */
  public void passed(double from, double to) {
    if (counts) {
      storage.passed(from, to);
    }
  }

  /** The course is recorded. */
  public void courseIsKnown(RecordedCourse course) {
    storage.courseIsKnown(course);
  }

  /** A whole history in which nothing happens. */
  public void nothingHappens() {
    if (prices.any()) {
      if (undisturbed == null) {
        undisturbed = new Account(plan.horizon());
        undisturbed.copyFrom(prices.sure());
        storage.undisturbedPassed(0, plan.horizon(), NOTHING, undisturbed);
      }
      audience.ledger().paid(undisturbed);
    }
  }

  /** The horizon: what has arrived by then is paid, and power that was not drawn is not. */
  public void ends() {
    if (!counts) {
      return;
    }
    for (int slot = 0; slot < arrives.length; slot++) {
      if (arrives[slot] <= plan.horizon()) {
        arrived(slot);
      }
      if (!Double.isNaN(offSince[slot])) {
        isOn(slot, plan.horizon());
      }
    }
    for (int c = 0; c < goneSince.length; c++) {
      if (!Double.isNaN(goneSince[c])) {
        triesNothing(plan.copy(c), Math.nextUp(plan.horizon()));
      }
    }
    powerSaved();
    audience.ledger().paid(account);
  }

  private void powerSaved() {
    for (int i = 0; i < off.size(); i++) {
      SlotPlan slot = plan.slot(off.of(i));
      prices.power(slot, off.from(i), off.to(i), -1, account);
      for (int m = 0; m < missed.size(); m++) {
        if (missed.of(m) == slot.copy()) {
          double from = Math.max(off.from(i), missed.from(m));
          double to = Math.min(off.to(i), missed.to(m));
          account.payAlong(Expense.POWER, from, to, prices.powerPerHour(slot));
        }
      }
    }
    for (int m = 0; m < missed.size(); m++) {
      for (DriveState drive : state.copy(missed.of(m)).drives()) {
        double from = Math.max(missed.from(m), drive.enteredAt());
        double perHour = -prices.powerPerHour(drive.plan());
        account.payAlong(Expense.POWER, from, missed.to(m), perHour);
      }
    }
  }
}
