package lastcopy.history.event;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.footage.ShootTable;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Desk;

/**
 * Deletions and malware: what disappears at the desk travels with the feeds, is kept by copies for
 * a while, and is put back if it is noticed in time ({@link DeskNotices}).
 */
public final class DeskDamage implements Mechanism, Feeds.Passenger, OffCourse, Resettable {

  /** Share of a history's blocks that are put, where one is expected in a history. */
  private static final double PLACED = 0.3;

  private final Common common;
  private final HistoryState state;
  private final Plan plan;
  private final Draws draws;
  private final Notices notices;
  private final Spots place;
  private final UnnoticedDamage unnoticed;
  private final Feeds feeds;
  private final Flows flows;
  private final Rotations rotations;
  private final PositionSet scratch = new PositionSet();

  /** Damage at the desk of a state. */
  public DeskDamage(
      Common common,
      Draws draws,
      Notices notices,
      Spots place,
      UnnoticedDamage unnoticed,
      Feeds feeds,
      Flows flows,
      Rotations rotations) {
    this.common = common;
    state = common.state();
    plan = state.plan();
    this.draws = draws;
    this.notices = notices;
    this.place = place;
    this.unnoticed = unnoticed;
    this.feeds = feeds;
    this.flows = flows;
    this.rotations = rotations;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return Mechanism.none();
  }

  @Override
  public void clear() {
    unnoticed.clear();
  }

  @Override
  public boolean isUndisturbed() {
    return unnoticed.count() == 0;
  }

  /** Somebody deletes a block by mistake, for the k-th time. */
  public void deletion(ShockProcess shock, int k) {
    CopyState working = state.working();
    if (!working.isUsable()) {
      return;
    }
    common.tracker().leave();
    state.holdings().bringAllTo(state.now());
    PositionSet block = block(shock, k);
    if (block.isEmpty()) {
      return;
    }
    Damage deleted = damage(shock, k);
    deleted.block.copyFrom(block);
    unnoticed.add(deleted);
    common.rule().struck(shock.causes());
    double bytes = deleted.block.bytes();
    take(deleted, working);
    unnoticed.settle();
    common.narrator().say(Happening.Kind.DELETED, working, bytes, deleted.noticedAt);
    spread(deleted, working);
    unnoticed.settle();
  }

  private PositionSet block(ShockProcess shock, int k) {
    double size = bytesOf(plan.studio().desk().deletion().orElseThrow().size());
    double start = start(shock, k, size);
    PositionSet block = new PositionSet();
    block.copyFrom(state.working().held());
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

  private Damage damage(ShockProcess shock, int k) {
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
    Damage struck = damage(shock, k);
    common.tracker().leave();
    state.holdings().bringAllTo(state.now());
    struck.block.add(0, state.offloadedBytes());
    unnoticed.add(struck);
    common.rule().struck(shock.causes());
    double bytes = cutBetween(targets);
    for (CopyState copy : targets) {
      take(struck, copy);
    }
    unnoticed.settle();
    common.narrator().say(Happening.Kind.MALWARE, bytes, struck.noticedAt, "");
    for (CopyState copy : targets) {
      spread(struck, copy);
    }
    unnoticed.settle();
  }

  private boolean isStruck(CopyState copy) {
    return copy.isUsable() && (copy.index() == 0 || isInReach(copy));
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

  /** A deletion has reached a copy, which goes on holding the block for a while. */
  private void reach(Damage deletion, CopyState copy) {
    Damage.Spread here = deletion.in(copy);
    if (here.reached) {
      return;
    }
    take(deletion, copy);
    double bytes = here.kept.bytes();
    common
        .narrator()
        .say(Happening.Kind.DELETION_ARRIVED, copy, bytes, here.dropAt, deletion.words);
    spread(deletion, copy);
  }

  /** The block disappears from a copy, which may keep it aside. */
  private void take(Damage deletion, CopyState copy) {
    Damage.Spread here = deletion.in(copy);
    here.reached = true;
    here.onItsWay = false;
    intersect(here.kept, copy.held(), deletion.block);
    copy.loses(here.kept);
    flows.cannotTake(copy, deletion.block); // a continuous run drops what is deleted
    double keeps = copy.plan().keepsDeleted();
    here.dropAt = state.now() + keeps;
    if (keeps == 0) {
      common.rule().removed(copy, here.kept);
      here.kept.clear();
    }
  }

  /** Continuous feeds pass a deletion on at once, others with their next run. */
  private void spread(Damage deletion, CopyState source) {
    for (CopyState copy : state.copies()) {
      if (copy.plan().isFedFrom(source.index())
          && copy.plan().way().continuous()
          && feeds.runs(copy)) {
        reach(deletion, copy);
      }
    }
    feeds.wakeTargets(source, true);
  }

  private void intersect(PositionSet into, Positions a, Positions b) {
    scratch.copyFrom(a);
    scratch.removeAll(b);
    into.copyFrom(a);
    into.removeAll(scratch);
  }

  /** A run starts: what has reached its source is on its way with it. */
  @Override
  public void runStarts(CopyState copy) {
    for (Damage deletion : unnoticed.all()) {
      if (deletion.in(state.sourceOf(copy)).reached && !deletion.in(copy).reached) {
        deletion.in(copy).onItsWay = true;
      }
    }
    if (copy.plan().way().continuous()) {
      runEnded(copy); // a continuous feed passes it on at once
    }
  }

  /** A run has ended, or was cut: what was on its way with it has arrived. */
  @Override
  public void runEnded(CopyState copy) {
    boolean arrived = false;
    for (Damage deletion : unnoticed.all()) {
      if (deletion.in(copy).onItsWay) {
        common.rule().met(deletion.causes, Cause.Context.LATE);
        reach(deletion, copy);
        arrived = true;
      }
    }
    if (arrived) {
      unnoticed.settle();
    }
  }

  /** A copy is gone with what it kept; what comes back has not been reached. */
  void gone(CopyState copy) {
    for (Damage deletion : unnoticed.all()) {
      Damage.Spread here = deletion.in(copy);
      common.rule().removed(copy, here.kept);
      here.kept.clear();
      here.onItsWay = false;
      here.reached &= copy.index() == 0;
    }
    if (unnoticed.count() > 0) {
      unnoticed.settle();
    }
  }

  /** A drive of a shelf is gone with what it kept. */
  void cannotKeep(CopyState copy, double from, double to) {
    for (Damage deletion : unnoticed.all()) {
      Damage.Spread here = deletion.in(copy);
      scratch.copyFrom(here.kept);
      scratch.remove(0, from);
      scratch.remove(to, Double.POSITIVE_INFINITY);
      common.rule().removed(copy, scratch);
      here.kept.remove(from, to);
    }
    if (unnoticed.count() > 0) {
      unnoticed.settle();
    }
  }

  @Override
  public void takeUp() {}

  @Override
  public void rest() {}
}
