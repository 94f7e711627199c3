package lastcopy.oracle;

import java.util.ArrayList;
import java.util.List;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/** The feed of one copy: every run is simulated. */
final class Feeding {

  /** A continuous feed whose source is itself being filled looks so often for more. */
  private static final double GLANCE_HOURS = 0.2;

  final Vault source;
  final Vault target;
  private final World world;
  private final Feed feed;
  private final double every;
  private final double bytesPerHour;
  private final Line line;
  private boolean firstFill;
  private final List<Blunder> carries = new ArrayList<>();
  private Transfer run;
  private boolean pending;
  private boolean stopped;
  private boolean bringsBack;

  /** What the first run after a return was to bring; null until it begins. */
  private Stretches missing;

  private double glance;

  Feeding(World world, Vault target, int turn) {
    this.world = world;
    this.target = target;
    feed = target.copy.feed().orElseThrow();
    source = world.named(feed.from());
    line = new Line(world, feed);
    firstFill = !target.copy.startsFull();
    bytesPerHour = Ways.feed(source.copy, target.copy) * Units.SECONDS_PER_HOUR;
    int turns = target.copy.rotation().map(Copy.Rotation::turns).orElse(1);
    double between = target.copy.rotation().map(Copy.Rotation::everyHours).orElse(0.0);
    if (target.rotated) {
      every = turns * between;
      double first = feed.schedule() instanceof Feed.Every e ? e.atHours() : 0;
      dueAt(first + turn * between);
    } else if (feed.schedule() instanceof Feed.Every e) {
      every = e.everyHours();
      dueAt(e.atHours());
    } else {
      every = 0;
    }
    world.clock.poisson(feed.stops().perHour(), world.luck, this::stops);
  }

  boolean isContinuous() {
    return every == 0;
  }

  /** A copy that was gone is brought back by the runs that follow. */
  void willBringBack() {
    bringsBack = true;
    missing = null;
  }

  private void dueAt(double time) {
    world.clock.at(
        time,
        Clock.Order.RUN,
        () -> {
          due();
          dueAt(time + every);
        });
  }

  private void due() {
    if (run != null) {
      pending = true;
    } else {
      start();
    }
  }

  /** A continuous feed has a run whenever there is something to copy. */
  void glance() {
    if (isContinuous() && run == null && world.now() >= glance && canRun()) {
      Stretches more = source.usable().and(target.room()).minus(target.live);
      if (!more.isNothing() || !unreached().isEmpty()) {
        start();
      } else {
        glancesAgain();
      }
    }
  }

  /** Whether it shares a line on which it carries on what comes to its source bit by bit. */
  boolean follows(Line shared) {
    return line.isShared(shared) && !carriesOn().isNothing();
  }

  /** The next of what comes to its source, if its target lacks that and no run goes on. */
  Stretches carriesOn() {
    return isContinuous() && run == null && canRun() && line.open
        ? world.comesTo(source).and(target.room()).minus(target.live)
        : Stretches.NONE;
  }

  private boolean canRun() {
    return !stopped && !source.gone && !target.gone;
  }

  private List<Blunder> unreached() {
    return world.blunders.stream()
        .filter(b -> b.reached.contains(source) && !b.reached.contains(target))
        .toList();
  }

  private void start() {
    if (target.rotated && !source.gone && !target.gone) {
      visit(); // also while its feed stands still, since nobody knows
    }
    if (!canRun()) {
      return;
    }
    carries.addAll(unreached());
    Stretches plan = source.usable().and(target.room()).minus(target.live);
    if (bringsBack) {
      missing = missing == null ? plan : missing;
      Refilling.meetsDefects(world, source);
      plan = plan.and(source.usable());
    }
    run = new Transfer(source, target, plan, world.now(), bytesPerHour, this::ends);
    run.pays = bringsBack ? missing : Stretches.NONE;
    if (plan.isNothing()) {
      ends();
    } else {
      chooses(plan);
      world.carry(run);
    }
  }

  /** By the line, or in a bag where that is sooner. */
  private void chooses(Stretches plan) {
    run.line = line;
    if (bringsBack) {
      run.notBefore = world.now() + Ways.restoresIn(source.copy);
      world.clock.at(run.notBefore, Clock.Order.RETURN, () -> {});
    }
    if (bringsBack || firstFill) {
      double through = line.over(run.notBefore, plan.size() / bytesPerHour);
      run.inBagUntil = line.byHand(world.now(), plan.size(), through);
    }
  }

  /** All that it began with is across. */
  private void ends() {
    firstFill = false;
    end();
  }

  private void visit() {
    int visit = ++target.visits;
    world.purse.visits();
    target.visiting = true;
    world.diskLife.powered(target);
    world.clock.in(
        feed.visitHours(),
        Clock.Order.RETURN,
        () -> {
          if (visit == target.visits) {
            target.visiting = false;
            world.diskLife.powered(target);
            pending = false;
            cut();
          }
        });
  }

  void cut() {
    if (run != null) {
      end();
    }
  }

  private void end() {
    Transfer ended = run;
    run = null;
    world.stopCarrying(ended);
    Refilling.meetsErrors(world, ended, ended.pays);
    if (bringsBack && missing != null) {
      Stretches mayCome = missing.minus(world.aged).minus(world.deletedUnnoticed());
      bringsBack = !mayCome.and(world.heldExceptIn(List.of(target))).minus(target.live).isNothing();
    }
    for (Blunder blunder : List.copyOf(carries)) {
      if (!blunder.noticed) {
        world.desk.reach(blunder, target);
      }
    }
    carries.clear();
    if (isContinuous()) {
      glancesAgain();
    }
    if (pending) {
      pending = false;
      world.clock.in(0, Clock.Order.RUN, this::due);
    }
  }

  /** What fills its source comes little by little. */
  private void glancesAgain() {
    if (world.transfers.stream().anyMatch(t -> t.target == source)) {
      glance = world.now() + GLANCE_HOURS;
      world.clock.at(glance, Clock.Order.RUN, () -> {});
    }
  }

  private void stops() {
    if (!stopped) {
      stopped = true;
      pending = false;
      if (run != null && !run.inBag()) {
        cut();
      }
      feed.checkedEveryHours()
          .ifPresent(
              period ->
                  world.clock.at(
                      Luck.nextLook(period, world.now()), Clock.Order.LOOK, () -> stopped = false));
    }
  }

  /** Whether a deletion at the source arrives at once. */
  boolean passesAtOnce() {
    return isContinuous() && canRun();
  }
}
