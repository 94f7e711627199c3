package lastcopy.history.event.copy;

import lastcopy.history.event.Common;
import lastcopy.history.event.Interruptions;
import lastcopy.history.event.desk.DeskDamage;
import lastcopy.history.event.drive.Drives;
import lastcopy.history.event.feed.Feeds;
import lastcopy.history.plan.RepairTimes;
import lastcopy.history.plan.Timers;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.DriveState;
import lastcopy.history.state.HistoryState;
import lastcopy.kernel.SimulationClock;

/** Copies that go, whatever took them; {@link Returns} brings them back. */
public final class Outages {

  private final Common common;
  private final HistoryState state;
  private final RepairTimes times;
  private final Drives drives;
  private final Feeds feeds;
  private final DeskDamage desk;
  private final Interruptions interruptions;

  /** Outages of a state's copies. */
  public Outages(
      Common common,
      RepairTimes times,
      Drives drives,
      Feeds feeds,
      DeskDamage desk,
      Interruptions interruptions) {
    this.common = common;
    state = common.state();
    this.times = times;
    this.drives = drives;
    this.feeds = feeds;
    this.desk = desk;
    this.interruptions = interruptions;
  }

  /** A copy is gone: its holdings are empty, its repairs dropped, its feeds cut. */
  void goes(CopyState copy) {
    goes(copy, null);
  }

  /** The same, by the failure of a drive; null if it was not by one. */
  void goes(CopyState copy, DriveState by) {
    common.tracker().leave();
    state.holdings().bringAllTo(state.now());
    common.spending().goes(copy);
    feeds.cutBy(copy);
    double bytes = copy.held().bytes();
    common.rule().removed(copy, copy.held());
    int before = copy.goes();
    desk.gone(copy);
    dropsRepairs(copy);
    drives.downChanged(copy);
    double back = times.backAt(copy.plan(), before, state.now());
    state.clock().set(state.timers().comeBack(copy.index()), back);
    if (copy.index() == 0) {
      interruptions.workingCopyGoes(common.rule().plainCause());
    }
    tell(copy, by, bytes, back);
  }

  /** Of pairs it is told which drive went, since that decides which other was missing. */
  private void tell(CopyState copy, DriveState by, double bytes, double back) {
    if (by != null && copy.plan().set().lots() > 1) {
      common.narrator().say(Happening.Kind.COPY_GONE, by, bytes, back);
    } else {
      common.narrator().say(Happening.Kind.COPY_GONE, copy, bytes, back);
    }
  }

  private void dropsRepairs(CopyState copy) {
    SimulationClock clock = state.clock();
    Timers timers = state.timers();
    clock.cancel(timers.tried(copy.index()));
    for (DriveState drive : copy.drives()) {
      clock.cancel(timers.repair(drive.slot()));
      if (!drive.isUp()) {
        drive.condition(DriveState.Condition.FAILED);
      }
    }
  }
}
