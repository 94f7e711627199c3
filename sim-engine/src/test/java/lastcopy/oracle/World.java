package lastcopy.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/** All copies, cards and blunders; looks after each event what is lost and what is bare. */
final class World {

  final Studio studio;
  final Layout layout;
  final Luck luck;
  final Clock clock;
  final List<Vault> vaults = new ArrayList<>();
  final List<Transfer> transfers = new ArrayList<>();
  final List<Blunder> blunders = new ArrayList<>();

  /** The footage of which camera cards still hold a copy. */
  Stretches cards = Stretches.NONE;

  Stretches offloaded = Stretches.NONE;
  Stretches aged = Stretches.NONE;
  Stretches lost = Stretches.NONE;

  final Outcome outcome = new Outcome();
  final DiskLife diskLife;
  final VaultLife vaultLife;
  final List<Feeding> feedings = new ArrayList<>();
  final Refilling refilling;
  final DeskLife desk;
  final Shooting shooting;
  final Purse purse;
  private Stretches bare = Stretches.NONE;
  private boolean fragile;
  private double lastLoss = -1;

  World(Studio studio, Layout layout, Luck luck) {
    this.studio = studio;
    this.layout = layout;
    this.luck = luck;
    clock = new Clock(studio.horizonHours());
    for (Copy copy : layout.copies()) {
      int turns = copy.rotation().map(Copy.Rotation::turns).orElse(1);
      for (int j = 0; j < turns; j++) {
        vaults.add(new Vault(copy, turns > 1));
      }
    }
    Map<Copy, Integer> turn = new HashMap<>();
    for (Vault vault : vaults) {
      if (vault != main()) {
        feedings.add(new Feeding(this, vault, turn.merge(vault.copy, 1, Integer::sum) - 1));
      }
    }
    diskLife = new DiskLife(this);
    vaultLife = new VaultLife(this);
    refilling = new Refilling(this);
    desk = new DeskLife(this);
    shooting = new Shooting(this);
    purse = new Purse(this);
    for (Vault vault : vaults) {
      vault.live =
          vault.copy.startsFull() || vault == main() ? offloaded.and(vault.room()) : Stretches.NONE;
    }
    look();
  }

  /** One whole history. */
  static Outcome live(Studio studio, Layout layout, long seed) {
    World world = new World(studio, layout, new Luck(seed * 0x9E3779B97F4A7C15L));
    world.feedings.forEach(Feeding::glance); // a continuous feed does not wait for an event
    world.look();
    boolean more = true;
    while (more) {
      double hours = world.clock.next() - world.now();
      world.purse.pass(hours);
      world.pass(hours);
      more = world.clock.step(world::moveOn);
      world.refilling.goOn();
      world.feedings.forEach(Feeding::glance);
      world.look();
    }
    world.outcome.mostBare = Math.max(world.outcome.mostBare, world.bare.size()); // at the horizon
    Purse.KINDS.forEach(kind -> world.outcome.paid.put(kind, world.purse.paid(kind)));
    return world.outcome;
  }

  double now() {
    return clock.now();
  }

  Vault main() {
    return vaults.get(0);
  }

  Vault named(String id) {
    return vaults.stream().filter(v -> v.copy.id().equals(id)).findFirst().orElseThrow();
  }

  /** The place where a copy stands now. */
  String placeOf(Vault vault) {
    return vault.visiting
        ? named(vault.copy.feed().map(Feed::from).orElseThrow()).copy.place().id()
        : vault.copy.place().id();
  }

  /** What is offloaded, has not aged out and is not lost. */
  Stretches counted() {
    return offloaded.minus(aged).minus(lost);
  }

  Stretches deletedUnnoticed() {
    Stretches all = Stretches.NONE;
    for (Blunder blunder : blunders) {
      all = all.plus(blunder.block);
    }
    return all;
  }

  Stretches heldExceptIn(List<Vault> these) {
    Stretches held = cards;
    for (Vault vault : vaults) {
      if (!these.contains(vault)) {
        held = held.plus(vault.holds());
      }
    }
    return held;
  }

  /** Clips at uniform positions of some footage go from copies, unless another copy holds them. */
  void losesClips(int clips, Stretches among, List<Vault> from) {
    if (clips == 0 || among.isNothing()) {
      return;
    }
    double clip = studio.footage().clipBytes();
    Stretches unreadable = Stretches.NONE;
    for (int i = 0; i < clips; i++) {
      double start = luck.uniform() * Math.max(0, among.size() - clip);
      unreadable = unreadable.plus(among.slice(start, start + clip));
    }
    unreadable = unreadable.minus(heldExceptIn(from));
    for (Vault vault : from) {
      vault.live = vault.live.minus(unreadable);
    }
  }

  /** Starts to carry. */
  void carry(Transfer transfer) {
    transfers.add(transfer);
    planEnd(transfer);
  }

  private void planEnd(Transfer transfer) {
    Runnable then = transfer.inBag() ? transfer::arrives : transfer::mayBeDone;
    clock.at(transfer.endsAt(), Clock.Order.RETURN, then);
  }

  /** The next of what comes to a copy, over its own line or over one after another. */
  Stretches comesTo(Vault vault) {
    Stretches next = Stretches.NONE;
    for (Transfer transfer : transfers) {
      if (transfer.target == vault && transfer.flows(now())) {
        next = next.plus(transfer.next());
      }
    }
    for (Feeding feeding : feedings) {
      if (feeding.target == vault) {
        next = next.plus(feeding.carriesOn());
      }
    }
    return next;
  }

  /** What shares a line has an equal part of it while more than one moves. */
  private void pace(Transfer transfer) {
    long moving = transfers.stream().filter(t -> t.shares(transfer) && t.flows(now())).count();
    long following = feedings.stream().filter(f -> f.follows(transfer.line)).count();
    long sharing = moving + following;
    double pace = transfer.flows(now()) ? transfer.bytesPerHour / sharing : 0;
    if (pace != transfer.pace && !transfer.inBag()) {
      transfer.pace = pace;
      planEnd(transfer);
    }
  }

  void stopCarrying(Transfer transfer) {
    transfer.isOver();
    transfers.remove(transfer);
  }

  /** Lets what is on its way move on, to the present. */
  void moveOn() {
    for (Transfer transfer : List.copyOf(transfers)) {
      transfer.advance(now());
    }
  }

  /** Counts the hours that went by since the last event, before the next one. */
  void pass(double hours) {
    if (!bare.isNothing()) {
      outcome.bareHours += hours;
      outcome.mostBare = Math.max(outcome.mostBare, bare.size());
    }
    outcome.fragileHours += fragile ? hours : 0;
    outcome.awayHours += main().gone ? hours : 0;
    outcome.refillHours += main().gone || refilling.isRunning() ? hours : 0;
  }

  /** Whether anything is lost now, and how bare the rest stands. */
  void look() {
    Stretches once = cards;
    Stretches twice = Stretches.NONE;
    Stretches onHardware = Stretches.NONE;
    for (Vault vault : vaults) {
      Stretches held = vault.holds();
      twice = twice.plus(once.and(held));
      once = once.plus(held);
      onHardware = onHardware.plus(held);
    }
    Stretches counted = counted();
    Stretches gone = counted.minus(once);
    if (!gone.isNothing()) {
      lost = lost.plus(gone);
      outcome.events += now() > lastLoss ? 1 : 0;
      lastLoss = now();
      outcome.bytes += gone.size();
      outcome.everything |= counted.and(onHardware).isNothing();
    }
    bare = counted.and(once).minus(twice);
    fragile = false;
    for (Vault vault : vaults) {
      fragile |= vault.hasNoRedundancy() && !vault.holds().and(bare).isNothing();
    }
    transfers.forEach(this::pace);
    for (Transfer transfer : transfers) {
      if (transfer.skips() && !transfer.inBag()) {
        planEnd(transfer);
      }
      // The last bare byte that crosses ends the bareness: something happens then.
      double across = transfer.across(bare);
      if (across > now()) {
        clock.at(across, Clock.Order.RETURN, () -> {});
      }
    }
  }
}
