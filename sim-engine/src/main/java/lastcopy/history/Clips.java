package lastcopy.history;

import java.util.Map;
import lastcopy.footage.PositionSet;

/**
 * Unreadable spots, each of which costs a clip of a copy unless another copy holds it: defects met
 * and bits not read, by a rebuild or a refill without redundancy left.
 */
final class Clips {

  private static final double BITS = 8;

  private final HistoryState state;
  private final Plan plan;
  private final Spots place;
  private final PositionSet spots = new PositionSet();
  private final Map<Cause.Context, Cause> unreadable =
      Cause.family("unreadable", "bits could not be read that were");
  private final Map<Cause.Context, Cause> defects =
      Cause.family("defect", "a spot had become unreadable unseen that was");

  Clips(HistoryState state) {
    this.state = state;
    plan = state.plan;
    place = new Spots(state);
  }

  /** The last redundancy of a set is used up: what its other drives hide is met. */
  void defectsMetByRebuild(int copy) {
    if (anyDefect(copy)) {
      state.tracker.leave();
      state.holdings.bringTo(copy, state.now);
      addDefects(copy, state.holdings.held[copy]);
      lose(copy, -1, defects, Cause.Context.MET_BY_REBUILD);
    }
  }

  /** A refill starts to read a source that has no redundancy left. */
  void defectsMetByRefill(int source, PositionSet read) {
    if (anyDefect(source)) {
      addDefects(source, read);
      lose(source, -1, defects, Cause.Context.MET_BY_REFILL);
    }
  }

  private boolean anyDefect(int copy) {
    if (plan.defects[copy] == null) {
      return false;
    }
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      if (serves(s) && state.defects.alive(s)) {
        return true;
      }
    }
    return false;
  }

  private boolean serves(int slot) {
    return state.lives.state(slot) == Lives.State.UP && state.lives.inService(slot);
  }

  private void addDefects(int copy, PositionSet within) {
    spots.clear();
    place.read(within, copy, -1);
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      if (serves(s) && state.defects.alive(s)) {
        place.addDefect(within, s, spots);
      }
    }
  }

  /** A rebuild is done that read so many bytes of footage without redundancy. */
  void readByRebuild(int copy, double bytes, int slot, int k) {
    long source = plan.slotSource[slot];
    int errors =
        state.clocks.count(
            plan.readsOf(copy), mean(copy, bytes), Draws.key(source, Draws.READ_ERRORS, k));
    if (errors > 0) {
      state.tracker.leave();
      state.holdings.bringTo(copy, state.now);
      place.read(state.holdings.held[copy], copy, -1);
      spots.clear();
      place.addUnread(
          state.holdings.held[copy], errors, Draws.key(source, Draws.READ_SPOTS, k), spots);
      lose(copy, -1, unreadable, Cause.Context.MET_BY_REBUILD);
    }
  }

  /** A refill has read some positions of a source without redundancy, for the n-th time. */
  void readByRefill(int source, int target, PositionSet read, int k) {
    long key = plan.copySource[target];
    double mean = mean(source, read.bytes());
    int errors =
        state.clocks.count(plan.readsOf(source), mean, Draws.key(key, Draws.REFILL_ERRORS, k));
    if (errors > 0) {
      place.read(read, source, target);
      spots.clear();
      place.addUnread(read, errors, Draws.key(key, Draws.REFILL_SPOTS, k), spots);
      lose(source, target, unreadable, Cause.Context.MET_BY_REFILL);
    }
  }

  private double mean(int copy, double bytes) {
    return BITS * bytes * plan.readErrors[copy];
  }

  /** The spots are lost from a copy, and from what was refilled from it, unless held elsewhere. */
  private void lose(int copy, int target, Map<Cause.Context, Cause> causes, Cause.Context context) {
    double bytes = spots.bytes();
    state.holdings.bringAllTo(state.now); // what has crossed by now is held elsewhere
    state.holdings.removeHeld(spots, copy, target);
    spots.remove(0, state.holdings.aged);
    if (!spots.isEmpty()) {
      state.holdings.held[copy].removeAll(spots);
      if (target >= 0) {
        state.holdings.held[target].removeAll(spots);
      }
      state.feeds.cannotSend(copy, spots);
      state.rule.met(causes, context);
      state.rule.removed(-1, spots);
    }
    state.say(
        Happening.Kind.UNREADABLE, copy, -1, bytes, Double.NaN, causes.get(context).sentence());
  }
}
