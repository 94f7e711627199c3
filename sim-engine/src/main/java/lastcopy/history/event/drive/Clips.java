package lastcopy.history.event.drive;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.history.event.Common;
import lastcopy.history.event.CourseTracker;
import lastcopy.history.event.Flows;
import lastcopy.history.event.LossRule;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Narrator;
import lastcopy.history.hazard.Clocks;
import lastcopy.history.hazard.Defects;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.SlotPlan;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.DriveState;
import lastcopy.history.state.HistoryState;

/**
 * Unreadable spots, each of which costs a clip of a copy unless another copy holds it: defects met
 * and bits not read, by a rebuild or a refill without redundancy left.
 */
public final class Clips implements Mechanism {

  private static final double BITS = 8;

  private final HistoryState state;
  private final CourseTracker tracker;
  private final LossRule rule;
  private final Narrator narrator;
  private final Clocks clocks;
  private final Defects defects;
  private final Flows flows;
  private final Spots place;
  private final PositionSet spots = new PositionSet();
  private final PositionSet within = new PositionSet();
  private final Map<Cause.Context, Cause> unreadable =
      Cause.family("unreadable", "bits could not be read that were");
  private final Map<Cause.Context, Cause> met =
      Cause.family("defect", "a spot had become unreadable unseen that was");

  /** Clips of a state's copies. */
  public Clips(Common common, Clocks clocks, Defects defects, Flows flows, Spots place) {
    state = common.state();
    tracker = common.tracker();
    rule = common.rule();
    narrator = common.narrator();
    this.clocks = clocks;
    this.defects = defects;
    this.flows = flows;
    this.place = place;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    Set<Effect> all = EnumSet.noneOf(Effect.class);
    if (copy.set().readErrors() > 0) {
      all.add(Effect.READ_ERRORS);
    }
    if (copy.set().defects() != null) {
      all.add(Effect.LATENT_DEFECTS);
    }
    return all;
  }

  /**
   * The last redundancy is used up by a failed drive: what those that stand in for it hide is met.
   */
  public void defectsMetByRebuild(CopyState copy, DriveState failed) {
    if (copy.plan().set().defects() == null) {
      return; // as in nearly all failures, without an object more
    }
    Predicate<DriveState> read = drive -> copy.standTogether(drive, failed);
    if (hasDefect(copy, read)) {
      tracker.leave();
      copy.bringTo(state.now());
      addDefects(copy, copy.held(), read);
      lose(copy, null, met, Cause.Context.MET_BY_REBUILD);
    }
  }

  /** A refill starts to read a source that has no redundancy left, or of pairs not everywhere. */
  public void defectsMetByRefill(CopyState source) {
    if (hasDefect(source, source::isBareBehind)) {
      within.copyFrom(source.held()); // whatever of it is read
      within.remove(0, state.holdings().aged());
      addDefects(source, within, source::isBareBehind);
      lose(source, null, met, Cause.Context.MET_BY_REFILL);
    }
  }

  private boolean hasDefect(CopyState copy, Predicate<DriveState> read) {
    if (copy.plan().set().defects() == null) {
      return false;
    }
    for (DriveState drive : copy.drives()) {
      if (serves(drive) && read.test(drive) && defects.alive(drive.slot())) {
        return true;
      }
    }
    return false;
  }

  private boolean serves(DriveState drive) {
    return drive.isUp() && drive.inService(state.now());
  }

  private void addDefects(CopyState copy, Positions within, Predicate<DriveState> read) {
    spots.clear();
    place.read(within, copy, null);
    for (DriveState drive : copy.drives()) {
      if (serves(drive) && read.test(drive) && defects.alive(drive.slot())) {
        place.addDefect(within, drive.slot(), spots);
      }
    }
  }

  /** A rebuild of a drive is done that read so many bytes of footage without redundancy. */
  void readByRebuild(CopyState copy, double bytes, DriveState drive) {
    SlotPlan slot = drive.plan();
    long key = slot.key(Draws.READ_ERRORS, drive.repair());
    int errors = clocks.count(group(copy), mean(copy, bytes), key);
    if (errors > 0) {
      tracker.leave();
      copy.bringTo(state.now());
      place.read(copy.held(), copy, null);
      spots.clear();
      place.addUnread(copy.held(), errors, slot.key(Draws.READ_SPOTS, drive.repair()), spots);
      lose(copy, null, unreadable, Cause.Context.MET_BY_REBUILD);
    }
  }

  /** A refill has read some positions of a source without redundancy, for the n-th time. */
  public void readByRefill(CopyState source, CopyState target, Positions read, int n) {
    long key = target.plan().source();
    double mean = mean(source, read.bytes() * source.bareShare());
    int errors = clocks.count(group(source), mean, Draws.key(key, Draws.REFILL_ERRORS, n));
    if (errors > 0) {
      place.read(read, source, target);
      spots.clear();
      place.addUnread(read, errors, Draws.key(key, Draws.REFILL_SPOTS, n), spots);
      lose(source, target, unreadable, Cause.Context.MET_BY_REFILL);
    }
  }

  private int group(CopyState copy) {
    return state.plan().groups().readsOf(copy.index());
  }

  private static double mean(CopyState copy, double bytes) {
    return BITS * bytes * copy.plan().set().readErrors();
  }

  /** The spots are lost from a copy, and from what was refilled from it, unless held elsewhere. */
  private void lose(
      CopyState copy, CopyState target, Map<Cause.Context, Cause> causes, Cause.Context context) {
    double bytes = spots.bytes();
    state.holdings().bringAllTo(state.now()); // what has crossed by now is held elsewhere
    state.holdings().removeHeld(spots, copy, target);
    spots.remove(0, state.holdings().aged());
    if (!spots.isEmpty()) {
      copy.loses(spots);
      if (target != null) {
        target.loses(spots);
      }
      flows.cannotSend(copy, spots);
      rule.met(causes, context);
      rule.removed(spots);
    }
    String subject = causes.get(context).sentence();
    narrator.say(Happening.Kind.UNREADABLE, copy, bytes, Double.NaN, subject);
  }
}
