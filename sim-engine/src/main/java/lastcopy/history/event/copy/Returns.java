package lastcopy.history.event.copy;

import java.util.Set;
import lastcopy.history.event.Common;
import lastcopy.history.event.Interruptions;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Narrator;
import lastcopy.history.event.Spending;
import lastcopy.history.event.drive.Drives;
import lastcopy.history.event.feed.Feeds;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.DriveState;
import lastcopy.history.state.HistoryState;

/** Hardware that is back, of a copy that was gone or of a shelf's drive, and is filled again. */
public final class Returns implements Mechanism {

  private final HistoryState state;
  private final Narrator narrator;
  private final Spending spending;
  private final Drives drives;
  private final Feeds feeds;
  private final Offloads offloads;
  private final Cards cards;
  private final Interruptions interruptions;
  private final Refill refill;

  /** Returns of a state's copies. */
  public Returns(
      Common common,
      Drives drives,
      Feeds feeds,
      Offloads offloads,
      Cards cards,
      Interruptions interruptions,
      Refill refill) {
    state = common.state();
    narrator = common.narrator();
    spending = common.spending();
    this.drives = drives;
    this.feeds = feeds;
    this.offloads = offloads;
    this.cards = cards;
    this.interruptions = interruptions;
    this.refill = refill;
  }

  @Override
  public Set<lastcopy.history.plan.Effect> effects(CopyPlan copy) {
    return Mechanism.none();
  }

  /** A copy that was gone has hardware again, empty. */
  public void ofCopy(int index) {
    CopyState copy = state.copy(index);
    copy.comesBack();
    spending.returns(copy);
    drives.returnAll(copy);
    narrator.say(Happening.Kind.COPY_BACK, copy, 0, Double.NaN);
    if (index == 0) {
      interruptions.workGoesOn();
      offloads.hardwareIsBack();
      cards.offloadAgain(0, Double.POSITIVE_INFINITY);
    }
    fill(copy);
  }

  /** A failed drive of a shelf has been replaced. */
  public void ofDrive(int slot) {
    DriveState drive = state.drive(slot);
    CopyState copy = state.copyOf(drive);
    copy.driveIsBack(drive);
    drives.renew(drive);
    spending.isReplaced(drive);
    copy.takesAgain(drive.plan().from(), drive.plan().to());
    copy.isToBeFilled();
    narrator.say(Happening.Kind.DRIVE_READY, drive, 0, Double.NaN);
    if (copy.index() == 0) {
      if (offloads.takesNext()) {
        interruptions.workGoesOn();
        offloads.hardwareIsBack();
      }
      cards.offloadAgain(drive.plan().from(), drive.plan().to());
    }
    fill(copy);
  }

  private void fill(CopyState copy) {
    if (copy.index() != 0) {
      feeds.wake(copy, true);
    } else if (!copy.flow().isGoing()) { // one that goes on is not begun again
      refill.start();
    }
    feeds.wakeTargets(copy, true);
  }
}
