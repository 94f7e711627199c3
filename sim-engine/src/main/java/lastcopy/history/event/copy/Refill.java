package lastcopy.history.event.copy;

import java.util.Arrays;
import lastcopy.history.event.Common;
import lastcopy.history.event.Interruptions;
import lastcopy.history.event.Narrator;
import lastcopy.history.event.feed.Feeds;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;
import lastcopy.scenario.Ways;

/** The refill of the working copy: from the copy that can do it fastest, then from the next. */
public final class Refill {

  private final HistoryState state;
  private final Narrator narrator;
  private final Feeds feeds;
  private final Spoiling spoils;
  private final Offloads offloads;
  private final Interruptions interruptions;

  /** Whether some copy lets a refill wait. */
  private final boolean someWait;

  /** The refill of a state's working copy. */
  public Refill(
      Common common, Feeds feeds, Spoiling spoils, Offloads offloads, Interruptions interruptions) {
    state = common.state();
    narrator = common.narrator();
    this.feeds = feeds;
    this.spoils = spoils;
    this.offloads = offloads;
    this.interruptions = interruptions;
    someWait = Arrays.stream(state.copies()).anyMatch(copy -> restoresIn(copy) > 0);
  }

  private static double restoresIn(CopyState copy) {
    return Ways.restoresIn(copy.plan().stated());
  }

  /** Copies may have gone or lost something that a refill was waiting for or reading. */
  public void afterFailures() {
    CopyState working = state.working();
    if (!state.onCourse() && working.isRefilling() && !working.flow().isGoing()) {
      start();
    }
  }

  /**
   * Starts, or goes on with the next source; unusable copies are found out when they are needed.
   */
  public void start() {
    CopyState working = state.working();
    CopyState best = best();
    for (CopyState spoilt = needed(best); spoilt != null; spoilt = needed(best)) {
      spoils.found(spoilt);
    }
    if (best != null && feeds.mustWait(working, best, perHour(best))) {
      state.clock().set(state.timers().runEnd(0), feeds.nextQuarter());
    } else if (best != null) {
      from(best, working);
    } else if (working.isRefilling()) {
      working.isFilled();
      if (working.barred().isEmpty()) { // else what stood on drives that are down is still to come
        interruptions.whole();
      }
      narrator.say(Happening.Kind.REFILLED, working, 0, Double.NaN);
    }
  }

  private void from(CopyState best, CopyState working) {
    interruptions.comesBack();
    double hours = state.holdings().start(working, best, perHour(best), state.now());
    if (hours == 0) {
      start();
      return;
    }
    narrator.say(
        Happening.Kind.REFILL_STARTED,
        working,
        working.flow().positions().bytes(),
        state.now() + restoresIn(best) + hours,
        best.plan().name());
    feeds.begun(working, hours, true);
  }

  private double perHour(CopyState from) {
    return state.working().plan().refillPerHour()[from.index()];
  }

  /** The fastest; what trickles into one that is itself being fed waits until no other has more. */
  private CopyState best() {
    CopyState ready = null;
    CopyState fed = null;
    for (CopyState copy : state.copies()) {
      double hours = isFaster(copy, ready) ? hours(copy) : 0;
      if (hours > 0 && !feeds.trickles(copy, hours)) {
        ready = copy;
      } else if (hours > 0 && isFaster(copy, fed)) {
        fed = copy;
      }
    }
    return ready != null ? ready : fed;
  }

  private boolean isFaster(CopyState copy, CopyState than) {
    return copy.index() > 0 && (than == null || givesSooner(copy, than));
  }

  /** Whether a copy would give all that the working copy lacks, if it had that, before another. */
  private boolean givesSooner(CopyState copy, CopyState than) {
    if (!someWait) {
      return perHour(copy) > perHour(than);
    }
    double bytes = offloads.lacks();
    return restoresIn(copy) + bytes / perHour(copy) < restoresIn(than) + bytes / perHour(than);
  }

  /** How long all that a copy has for the working copy would take; 0 if it has nothing. */
  private double hours(CopyState copy) {
    return copy.isGone()
        ? 0
        : state.holdings().hours(state.working(), copy, perHour(copy), state.now());
  }

  /** An unusable copy that people would turn to before the best one, or null. */
  private CopyState needed(CopyState best) {
    for (CopyState copy : state.copies()) {
      if (copy.isSpoilt()
          && copy.index() > 0
          && isTurnedToBefore(best, copy)
          && offloads.mayGive(copy)) {
        return copy;
      }
    }
    return null;
  }

  /** Of two as fast the first is, as always: what nobody knows cannot decide. */
  private boolean isTurnedToBefore(CopyState best, CopyState copy) {
    if (best == null) {
      return state.working().isRefilling();
    }
    return copy.index() < best.index() ? !givesSooner(best, copy) : givesSooner(copy, best);
  }
}
