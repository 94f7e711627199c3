package lastcopy.history.event.desk;

import java.util.Arrays;
import java.util.List;
import lastcopy.footage.PositionSet;
import lastcopy.footage.ShootTable;
import lastcopy.history.event.Common;
import lastcopy.history.event.Notices;
import lastcopy.history.event.drive.Spots;
import lastcopy.history.event.feed.Feeds;
import lastcopy.history.event.feed.Rotations;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Desk;

/** Deletions and malware: what they take, where, and how far it goes is {@link DeskDamage}'s. */
public final class DeskStrikes {

  /** Share of a history's blocks that are put, where one is expected in a history. */
  private static final double PLACED = 0.3;

  private final Common common;
  private final HistoryState state;
  private final Plan plan;
  private final Draws draws;
  private final Notices notices;
  private final Spots place;
  private final DeskDamage damage;
  private final UnnoticedDamage unnoticed;
  private final Feeds feeds;
  private final Rotations rotations;
  private final PositionSet scratch = new PositionSet();

  /** Strikes at the desk of a state. */
  public DeskStrikes(
      Common common,
      Draws draws,
      Notices notices,
      Spots place,
      DeskDamage damage,
      UnnoticedDamage unnoticed,
      Feeds feeds,
      Rotations rotations) {
    this.common = common;
    state = common.state();
    plan = state.plan();
    this.draws = draws;
    this.notices = notices;
    this.place = place;
    this.damage = damage;
    this.unnoticed = unnoticed;
    this.feeds = feeds;
    this.rotations = rotations;
  }

  /** Somebody deletes a block by mistake, for the k-th time. */
  public void deletion(ShockProcess shock, int k) {
    CopyState working = state.working();
    if (working.isGone()) {
      return;
    }
    common.tracker().leave();
    state.holdings().bringAllTo(state.now());
    PositionSet block = block(shock, k);
    if (block.isEmpty()) {
      return;
    }
    Damage deleted = begun(shock, k);
    deleted.block.copyFrom(block);
    unnoticed.add(deleted);
    common.rule().struck(shock.causes());
    double bytes = deleted.block.bytes();
    damage.take(deleted, working);
    unnoticed.settle();
    common.narrator().say(Happening.Kind.DELETED, working, bytes, deleted.noticedAt);
    damage.spread(deleted, working);
    unnoticed.settle();
  }

  private PositionSet block(ShockProcess shock, int k) {
    double size = bytesOf(plan.studio().desk().deletion().orElseThrow().size());
    double start = start(shock, k, size);
    PositionSet block = new PositionSet();
    block.copyFrom(state.working().believed());
    block.remove(0, start);
    block.remove(start + size, Double.POSITIVE_INFINITY);
    return block;
  }

  /** What a deletion takes now. */
  private double bytesOf(Desk.Amount amount) {
    return amount instanceof Desk.ShootCount count
        ? count.shoots() * ShootTable.sizeAt(plan.studio().footage(), state.now())
        : ((Desk.Bytes) amount).bytes();
  }

  /** The start of a block; what only the working copy holds is rarely in it, but for a bias. */
  private double start(ShockProcess shock, int k, double size) {
    long key = Draws.key(shock.source(), Draws.BLOCK, k);
    scratch.clear();
    scratch.add(0, state.offloadedBytes());
    place.size(size);
    place.read(scratch, state.working(), null);
    double share = PLACED / Math.max(1, shock.perHour() * plan.horizon());
    return place.start(scratch, 1 - draws.uniform(key), share, Draws.key(key, 1, 0));
  }

  private Damage begun(ShockProcess shock, int k) {
    long key = Draws.key(shock.source(), Draws.BLOCK_NOTICED, k);
    double noticed = state.now() + notices.delay(shock, key);
    return new Damage(shock, state.now(), noticed, plan.copies());
  }

  /** Malware strikes the working copy and every copy in reach, for the k-th time. */
  public void malware(ShockProcess shock, int k) {
    List<CopyState> targets = Arrays.stream(state.copies()).filter(this::isStruck).toList();
    if (targets.isEmpty()) {
      return;
    }
    Damage struck = begun(shock, k);
    common.tracker().leave();
    state.holdings().bringAllTo(state.now());
    struck.block.add(0, state.offloadedBytes());
    unnoticed.add(struck);
    common.rule().struck(shock.causes());
    double bytes = cutBetween(targets);
    for (CopyState copy : targets) {
      damage.take(struck, copy);
    }
    unnoticed.settle();
    common.narrator().say(Happening.Kind.MALWARE, bytes, struck.noticedAt, "");
    for (CopyState copy : targets) {
      damage.spread(struck, copy);
      if (copy.index() > 0) {
        feeds.wake(copy, true); // its source may be one that was not struck
      }
    }
    unnoticed.settle();
  }

  private boolean isStruck(CopyState copy) {
    return !copy.isGone() && (copy.index() == 0 || isInReach(copy));
  }

  private boolean isInReach(CopyState copy) {
    return copy.plan().rotates()
        ? rotations.isVisiting(copy)
        : copy.plan().stated().reach() == Copy.Reach.ONLINE;
  }

  /** Runs from one that is struck to another are cut; the bytes that all those hold. */
  private double cutBetween(List<CopyState> targets) {
    double bytes = 0;
    for (CopyState copy : targets) {
      bytes += copy.held().bytes();
      boolean going = copy.flow().isGoing();
      if (going && (copy.index() == 0 || targets.contains(state.copy(copy.flow().source())))) {
        feeds.cut(copy);
      }
    }
    return bytes;
  }
}
