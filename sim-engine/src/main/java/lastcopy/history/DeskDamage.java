package lastcopy.history;

import java.util.ArrayList;
import java.util.List;
import lastcopy.footage.PositionSet;
import lastcopy.scenario.Copy;

/**
 * Deletions and malware: what disappears at the desk travels with the feeds, is kept by copies for
 * a while, and is put back if it is noticed in time.
 */
final class DeskDamage {

  /** Share of a history's blocks that are put, where one is expected in a history. */
  private static final double PLACED = 0.3;

  private final HistoryState state;
  private final Plan plan;
  private final Notices notices;
  private final Spots place;
  private final List<Damage> pending = new ArrayList<>();
  private final PositionSet scratch = new PositionSet();

  DeskDamage(HistoryState state) {
    this.state = state;
    plan = state.plan;
    notices = new Notices(state);
    place = new Spots(state);
  }

  void clear() {
    pending.clear();
  }

  /** How many deletions and malware strikes nobody has noticed yet. */
  int pending() {
    return pending.size();
  }

  /** Somebody deletes a block by mistake, for the k-th time. */
  void deletion(int index, int k) {
    ShockProcess shock = plan.shocks[index];
    var deletion = plan.studio.desk().deletion().orElseThrow();
    if (state.gone[0] || state.spoils.is(0)) {
      return;
    }
    state.tracker.leave();
    state.holdings.bringAllTo(state.now);
    double size = state.offloads.bytesOf(deletion.size());
    double total = state.offloads.total();
    double u = state.draws.uniform(Draws.key(shock.source(), Draws.BLOCK, k));
    double start = start(index, k, 1 - u, size, total);
    PositionSet block = new PositionSet();
    block.copyFrom(state.holdings.held[0]);
    block.remove(0, start);
    block.remove(start + size, Double.POSITIVE_INFINITY);
    if (block.isEmpty()) {
      return;
    }
    Damage deleted = pending(index, k);
    deleted.block.copyFrom(block);
    pending.add(deleted);
    state.rule.struck(shock.causes());
    double bytes = deleted.block.bytes();
    take(deleted, 0);
    settle();
    state.say(Happening.Kind.DELETED, 0, -1, bytes, deleted.noticedAt);
    spread(deleted, 0);
    settle();
  }

  /** The start of a block; what only the working copy holds is rarely in it, but for a bias. */
  private double start(int index, int k, double uniform, double size, double total) {
    scratch.clear();
    scratch.add(0, total);
    place.size(size);
    place.read(scratch, 0, -1);
    ShockProcess shock = plan.shocks[index];
    double share = PLACED / Math.max(1, shock.perHour() * plan.horizon);
    return place.start(
        scratch, uniform, share, Draws.key(Draws.key(shock.source(), Draws.BLOCK, k), 1, 0));
  }

  private Damage pending(int index, int k) {
    ShockProcess shock = plan.shocks[index];
    long key = Draws.key(shock.source(), Draws.BLOCK_NOTICED, k);
    return new Damage(shock, state.now, state.now + notices.delay(index, key), plan.copies);
  }

  /** Malware strikes the working copy and every copy in reach, for the k-th time. */
  void malware(int index, int k) {
    ShockProcess shock = plan.shocks[index];
    List<Integer> targets = new ArrayList<>();
    for (int c = 0; c < plan.copies; c++) {
      if (!state.gone[c] && !state.spoils.is(c) && (c == 0 || inReach(c))) {
        targets.add(c);
      }
    }
    if (targets.isEmpty()) {
      return;
    }
    Damage struck = pending(index, k);
    state.tracker.leave();
    Holdings holdings = state.holdings;
    holdings.bringAllTo(state.now);
    struck.block.add(0, state.offloads.total());
    pending.add(struck);
    state.rule.struck(shock.causes());
    double bytes = 0;
    for (int c : targets) {
      bytes += holdings.held[c].bytes();
      if (holdings.flowing[c] && (c == 0 || targets.contains(holdings.flowSource[c]))) {
        state.feeds.cut(c);
      }
    }
    for (int c : targets) {
      take(struck, c);
    }
    settle();
    state.say(Happening.Kind.MALWARE, -1, -1, bytes, struck.noticedAt);
    for (int c : targets) {
      spread(struck, c);
    }
    settle();
  }

  private boolean inReach(int copy) {
    return plan.visits[copy] != null
        ? state.feeds.visiting(copy)
        : plan.copy[copy].reach() == Copy.Reach.ONLINE;
  }

  /** A deletion has reached a copy, which goes on holding the block for a while. */
  private void reach(Damage deletion, int copy) {
    if (deletion.reached[copy]) {
      return;
    }
    take(deletion, copy);
    state.say(
        Happening.Kind.DELETION_ARRIVED,
        copy,
        -1,
        deletion.kept[copy].bytes(),
        deletion.dropAt[copy],
        deletion.words);
    spread(deletion, copy);
  }

  /** The block disappears from a copy, which may keep it aside. */
  private void take(Damage deletion, int copy) {
    deletion.reached[copy] = true;
    deletion.onItsWay[copy] = false;
    PositionSet kept = deletion.kept[copy];
    intersect(kept, state.holdings.held[copy], deletion.block);
    state.holdings.held[copy].removeAll(kept);
    state.feeds.cannotTake(copy, deletion.block); // a continuous run drops what is deleted
    if (plan.keepsDeleted[copy] == 0) {
      state.rule.removed(copy, kept);
      kept.clear();
      deletion.dropAt[copy] = state.now;
    } else {
      deletion.dropAt[copy] = state.now + plan.keepsDeleted[copy];
    }
  }

  /** Continuous feeds pass a deletion on at once, others with their next run. */
  private void spread(Damage deletion, int copy) {
    for (int c = 1; c < plan.copies; c++) {
      if (plan.ways[c].source() == copy && plan.ways[c].continuous() && state.feeds.runs(c)) {
        reach(deletion, c);
      }
    }
    state.feeds.wakeTargets(copy, true);
  }

  private void intersect(PositionSet into, PositionSet a, PositionSet b) {
    scratch.copyFrom(a);
    scratch.removeAll(b);
    into.copyFrom(a);
    into.removeAll(scratch);
  }

  /** A run starts: what has reached its source is on its way with it. */
  void runStarts(int copy) {
    for (Damage deletion : pending) {
      if (deletion.reached[plan.ways[copy].source()] && !deletion.reached[copy]) {
        deletion.onItsWay[copy] = true;
      }
    }
    if (plan.ways[copy].continuous()) {
      runEnded(copy); // a continuous feed passes it on at once
    }
  }

  /** A run has ended, or was cut: what was on its way with it has arrived. */
  void runEnded(int copy) {
    boolean arrived = false;
    for (Damage deletion : pending) {
      if (deletion.onItsWay[copy]) {
        state.rule.met(deletion.causes, Cause.Context.LATE);
        reach(deletion, copy);
        arrived = true;
      }
    }
    if (arrived) {
      settle();
    }
  }

  /** A copy is gone with what it kept; what comes back has not been reached. */
  void gone(int copy) {
    for (Damage deletion : pending) {
      state.rule.removed(copy, deletion.kept[copy]);
      deletion.kept[copy].clear();
      deletion.onItsWay[copy] = false;
      deletion.reached[copy] &= copy == 0;
    }
    if (!pending.isEmpty()) {
      settle();
    }
  }

  /** A drive of a shelf is gone with what it kept. */
  void cannotKeep(int copy, double from, double to) {
    for (Damage deletion : pending) {
      scratch.copyFrom(deletion.kept[copy]);
      scratch.remove(0, from);
      scratch.remove(to, Double.POSITIVE_INFINITY);
      state.rule.removed(copy, scratch);
      deletion.kept[copy].remove(from, to);
    }
    if (!pending.isEmpty()) {
      settle();
    }
  }

  /** Somebody notices. */
  void noticed(int index) {
    for (Damage deletion : List.copyOf(pending)) {
      if (deletion.noticedAt <= state.now) {
        pending.remove(deletion);
        settle();
        putBack(deletion);
      }
    }
    settle();
  }

  private void putBack(Damage deletion) {
    Holdings holdings = state.holdings;
    holdings.bringAllTo(state.now);
    PositionSet found = new PositionSet();
    for (int c = 0; c < plan.copies; c++) {
      holdings.held[c].addAll(deletion.kept[c]);
      found.addAll(holdings.held[c]);
    }
    found.addAll(holdings.cards);
    intersect(found, found, deletion.block);
    boolean takes = !state.gone[0] && !state.spoils.is(0);
    if (takes) {
      found.removeAll(holdings.barred[0]);
      found.removeAll(holdings.blocked);
      found.remove(0, holdings.aged);
      holdings.held[0].addAll(found);
      holdings.flow[0].removeAll(found);
      state.feeds.wakeTargets(0, true);
    }
    double bytes = found.bytes();
    if (bytes > 0 && takes) {
      state.outages.putBack(deletion.causes, deletion.at);
    }
    state.say(Happening.Kind.NOTICED, -1, -1, bytes, Double.NaN, deletion.words);
  }

  /** A copy drops what it kept of a deletion. */
  void dropped(int index) {
    for (Damage deletion : pending) {
      for (int c = 0; c < plan.copies; c++) {
        if (deletion.dropAt[c] <= state.now && !deletion.kept[c].isEmpty()) {
          state.rule.met(deletion.causes, Cause.Context.LATE);
          state.rule.removed(-1, deletion.kept[c]);
          double bytes = deletion.kept[c].bytes();
          deletion.kept[c].clear();
          state.say(Happening.Kind.DROPPED, c, -1, bytes, Double.NaN, deletion.words);
        }
      }
    }
    settle();
  }

  /** Whether all of some positions are deleted since before now and nobody has noticed. */
  boolean covers(PositionSet positions) {
    scratch.copyFrom(positions);
    for (Damage deletion : pending) {
      if (deletion.at < state.now) {
        scratch.removeAll(deletion.block);
      }
    }
    return scratch.isEmpty();
  }

  /** What copies keep and what is blocked, and when somebody notices or a copy drops something. */
  private void settle() {
    Holdings holdings = state.holdings;
    double notice = Double.POSITIVE_INFINITY;
    double drop = Double.POSITIVE_INFINITY;
    holdings.blocked.clear();
    for (int c = 0; c < plan.copies; c++) {
      holdings.kept[c].clear();
    }
    for (Damage deletion : pending) {
      notice = Math.min(notice, deletion.noticedAt);
      if (deletion.reached[0]) {
        holdings.blocked.addAll(deletion.block);
      }
      for (int c = 0; c < plan.copies; c++) {
        if (!deletion.kept[c].isEmpty()) {
          holdings.kept[c].addAll(deletion.kept[c]);
          drop = Math.min(drop, deletion.dropAt[c]);
        }
      }
    }
    state.agenda.cancel(plan.timer.noticed());
    state.agenda.cancel(plan.timer.dropped());
    state.set(plan.timer.noticed(), notice);
    state.set(plan.timer.dropped(), drop);
  }
}
