package lastcopy.history;

import java.util.ArrayList;
import java.util.List;
import lastcopy.footage.PositionSet;
import lastcopy.scenario.Copy;

/**
 * Deletions and malware: what disappears at the desk travels with the feeds, is kept by copies for
 * a while, and is put back if it is noticed in time.
 */
final class Desk {

  /** Share of a history's blocks that are put, where one is expected in a history. */
  private static final double PLACED = 0.3;

  private final Stage stage;
  private final Plan plan;
  private final Notices notices;
  private final Spots place;
  private final List<Pending> pending = new ArrayList<>();
  private final PositionSet scratch = new PositionSet();

  Desk(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
    notices = new Notices(stage);
    place = new Spots(stage);
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
    Striker striker = plan.strikers[index];
    var deletion = plan.studio.desk().deletion().orElseThrow();
    if (stage.gone[0] || stage.spoils.is(0)) {
      return;
    }
    stage.calm.leave();
    stage.holdings.bringAllTo(stage.now);
    double size = stage.offloads.bytesOf(deletion.size());
    double total = stage.offloads.total();
    double u = stage.draws.uniform(Draws.key(striker.source(), Draws.BLOCK, k));
    double start = start(index, k, 1 - u, size, total);
    PositionSet block = new PositionSet();
    block.copyFrom(stage.holdings.held[0]);
    block.remove(0, start);
    block.remove(start + size, Double.POSITIVE_INFINITY);
    if (block.isEmpty()) {
      return;
    }
    Pending deleted = pending(index, k);
    deleted.block.copyFrom(block);
    pending.add(deleted);
    stage.rule.struck(striker.causes());
    double bytes = deleted.block.bytes();
    take(deleted, 0);
    settle();
    stage.say(Happening.Kind.DELETED, 0, -1, bytes, deleted.noticedAt);
    spread(deleted, 0);
    settle();
  }

  /** The start of a block; what only the working copy holds is rarely in it, but for a bias. */
  private double start(int index, int k, double uniform, double size, double total) {
    scratch.clear();
    scratch.add(0, total);
    place.size(size);
    place.read(scratch, 0, -1);
    Striker striker = plan.strikers[index];
    double share = PLACED / Math.max(1, striker.perHour() * plan.horizon);
    return place.start(
        scratch, uniform, share, Draws.key(Draws.key(striker.source(), Draws.BLOCK, k), 1, 0));
  }

  private Pending pending(int index, int k) {
    Striker striker = plan.strikers[index];
    long key = Draws.key(striker.source(), Draws.BLOCK_NOTICED, k);
    return new Pending(striker, stage.now, stage.now + notices.delay(index, key), plan.copies);
  }

  /** Malware strikes the working copy and every copy in reach, for the k-th time. */
  void malware(int index, int k) {
    Striker striker = plan.strikers[index];
    List<Integer> targets = new ArrayList<>();
    for (int c = 0; c < plan.copies; c++) {
      if (!stage.gone[c] && !stage.spoils.is(c) && (c == 0 || inReach(c))) {
        targets.add(c);
      }
    }
    if (targets.isEmpty()) {
      return;
    }
    Pending struck = pending(index, k);
    stage.calm.leave();
    Holdings holdings = stage.holdings;
    holdings.bringAllTo(stage.now);
    struck.block.add(0, stage.offloads.total());
    pending.add(struck);
    stage.rule.struck(striker.causes());
    double bytes = 0;
    for (int c : targets) {
      bytes += holdings.held[c].bytes();
      if (holdings.flowing[c] && (c == 0 || targets.contains(holdings.flowSource[c]))) {
        stage.feeds.cut(c);
      }
    }
    for (int c : targets) {
      take(struck, c);
    }
    settle();
    stage.say(Happening.Kind.MALWARE, -1, -1, bytes, struck.noticedAt);
    for (int c : targets) {
      spread(struck, c);
    }
    settle();
  }

  private boolean inReach(int copy) {
    return plan.visits[copy] != null
        ? stage.feeds.visiting(copy)
        : plan.copy[copy].reach() == Copy.Reach.ONLINE;
  }

  /** A deletion has reached a copy, which goes on holding the block for a while. */
  private void reach(Pending deletion, int copy) {
    if (deletion.reached[copy]) {
      return;
    }
    take(deletion, copy);
    stage.say(
        Happening.Kind.DELETION_ARRIVED,
        copy,
        -1,
        deletion.kept[copy].bytes(),
        deletion.dropAt[copy],
        deletion.words);
    spread(deletion, copy);
  }

  /** The block disappears from a copy, which may keep it aside. */
  private void take(Pending deletion, int copy) {
    deletion.reached[copy] = true;
    deletion.onItsWay[copy] = false;
    PositionSet kept = deletion.kept[copy];
    intersect(kept, stage.holdings.held[copy], deletion.block);
    stage.holdings.held[copy].removeAll(kept);
    stage.feeds.cannotTake(copy, deletion.block); // a continuous run drops what is deleted
    if (plan.keepsDeleted[copy] == 0) {
      stage.rule.removed(copy, kept);
      kept.clear();
      deletion.dropAt[copy] = stage.now;
    } else {
      deletion.dropAt[copy] = stage.now + plan.keepsDeleted[copy];
    }
  }

  /** Continuous feeds pass a deletion on at once, others with their next run. */
  private void spread(Pending deletion, int copy) {
    for (int c = 1; c < plan.copies; c++) {
      if (plan.ways[c].source() == copy && plan.ways[c].continuous() && stage.feeds.runs(c)) {
        reach(deletion, c);
      }
    }
    stage.feeds.wakeTargets(copy, true);
  }

  private void intersect(PositionSet into, PositionSet a, PositionSet b) {
    scratch.copyFrom(a);
    scratch.removeAll(b);
    into.copyFrom(a);
    into.removeAll(scratch);
  }

  /** A run starts: what has reached its source is on its way with it. */
  void runStarts(int copy) {
    for (Pending deletion : pending) {
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
    for (Pending deletion : pending) {
      if (deletion.onItsWay[copy]) {
        stage.rule.met(deletion.causes, Cause.Context.LATE);
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
    for (Pending deletion : pending) {
      stage.rule.removed(copy, deletion.kept[copy]);
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
    for (Pending deletion : pending) {
      scratch.copyFrom(deletion.kept[copy]);
      scratch.remove(0, from);
      scratch.remove(to, Double.POSITIVE_INFINITY);
      stage.rule.removed(copy, scratch);
      deletion.kept[copy].remove(from, to);
    }
    if (!pending.isEmpty()) {
      settle();
    }
  }

  /** Somebody notices. */
  void noticed(int index) {
    for (Pending deletion : List.copyOf(pending)) {
      if (deletion.noticedAt <= stage.now) {
        pending.remove(deletion);
        settle();
        putBack(deletion);
      }
    }
    settle();
  }

  private void putBack(Pending deletion) {
    Holdings holdings = stage.holdings;
    holdings.bringAllTo(stage.now);
    PositionSet found = new PositionSet();
    for (int c = 0; c < plan.copies; c++) {
      holdings.held[c].addAll(deletion.kept[c]);
      found.addAll(holdings.held[c]);
    }
    found.addAll(holdings.cards);
    intersect(found, found, deletion.block);
    boolean takes = !stage.gone[0] && !stage.spoils.is(0);
    if (takes) {
      found.removeAll(holdings.barred[0]);
      found.removeAll(holdings.blocked);
      found.remove(0, holdings.aged);
      holdings.held[0].addAll(found);
      holdings.flow[0].removeAll(found);
      stage.feeds.wakeTargets(0, true);
    }
    double bytes = found.bytes();
    if (bytes > 0 && takes) {
      stage.outages.putBack(deletion.causes, deletion.at);
    }
    stage.say(Happening.Kind.NOTICED, -1, -1, bytes, Double.NaN, deletion.words);
  }

  /** A copy drops what it kept of a deletion. */
  void dropped(int index) {
    for (Pending deletion : pending) {
      for (int c = 0; c < plan.copies; c++) {
        if (deletion.dropAt[c] <= stage.now && !deletion.kept[c].isEmpty()) {
          stage.rule.met(deletion.causes, Cause.Context.LATE);
          stage.rule.removed(-1, deletion.kept[c]);
          double bytes = deletion.kept[c].bytes();
          deletion.kept[c].clear();
          stage.say(Happening.Kind.DROPPED, c, -1, bytes, Double.NaN, deletion.words);
        }
      }
    }
    settle();
  }

  /** Whether all of some positions are deleted since before now and nobody has noticed. */
  boolean covers(PositionSet positions) {
    scratch.copyFrom(positions);
    for (Pending deletion : pending) {
      if (deletion.at < stage.now) {
        scratch.removeAll(deletion.block);
      }
    }
    return scratch.isEmpty();
  }

  /** What copies keep and what is blocked, and when somebody notices or a copy drops something. */
  private void settle() {
    Holdings holdings = stage.holdings;
    double notice = Double.POSITIVE_INFINITY;
    double drop = Double.POSITIVE_INFINITY;
    holdings.blocked.clear();
    for (int c = 0; c < plan.copies; c++) {
      holdings.kept[c].clear();
    }
    for (Pending deletion : pending) {
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
    stage.agenda.cancel(plan.timer.noticed());
    stage.agenda.cancel(plan.timer.dropped());
    stage.set(plan.timer.noticed(), notice);
    stage.set(plan.timer.dropped(), drop);
  }
}
