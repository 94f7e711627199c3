package lastcopy.oracle;

import lastcopy.law.Law;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Units;

/** Deletions and malware, how they travel, and what is put back. */
final class DeskLife {

  private final World world;

  DeskLife(World world) {
    this.world = world;
    Desk desk = world.studio.desk();
    desk.deletion()
        .ifPresent(d -> world.clock.poisson(d.rate().perHour(), world.luck, () -> deletes(d)));
    desk.malware()
        .ifPresent(m -> world.clock.poisson(m.rate().perHour(), world.luck, () -> strikes(m)));
  }

  private void deletes(Desk.Deletion deletion) {
    if (world.main().gone) {
      return;
    }
    double all = world.offloaded.size();
    double size = Math.min(all, bytes(deletion.size()));
    double start = world.luck.uniform() * (all - size);
    Blunder blunder = new Blunder(Stretches.of(start, start + size).and(world.main().live));
    if (!blunder.block.isNothing()) {
      happens(blunder, deletion.noticed());
      reach(blunder, world.main());
    }
  }

  private double bytes(Desk.Amount amount) {
    if (amount instanceof Desk.Bytes fixed) {
      return fixed.bytes();
    }
    double growth = 1 + world.studio.footage().growthPerYear();
    return ((Desk.ShootCount) amount).shoots()
        * world.studio.footage().shoots().sizeBytes()
        * Math.pow(growth, world.now() / Units.HOURS_PER_YEAR);
  }

  private void strikes(Desk.Malware malware) {
    Blunder blunder = new Blunder(world.offloaded);
    happens(blunder, malware.noticed());
    reach(blunder, world.main());
    for (Vault vault : world.vaults) {
      if (vault.inReach()) {
        reach(blunder, vault);
      }
    }
  }

  private void happens(Blunder blunder, Law noticed) {
    world.blunders.add(blunder);
    world.clock.in(world.luck.time(noticed), Clock.Order.LOOK, () -> notice(blunder));
  }

  /** The deletion arrives at a copy, which goes on holding the block for its time. */
  void reach(Blunder blunder, Vault vault) {
    if (!blunder.reached.add(vault)) {
      return;
    }
    Stretches hit = vault.live.and(blunder.block);
    vault.live = vault.live.minus(hit);
    double keeps = vault.copy.keepsDeletedHours();
    if (keeps > 0 && !hit.isNothing()) {
      double until = world.now() + keeps;
      vault.versions.add(new Vault.Version(blunder, until, hit));
      world.clock.at(
          until,
          Clock.Order.EXPIRY,
          () -> vault.versions.removeIf(v -> v.blunder() == blunder && v.until() == until));
    }
    for (Feeding feeding : world.feedings) {
      if (feeding.source == vault && feeding.passesAtOnce()) {
        reach(blunder, feeding.target);
      }
    }
  }

  private void notice(Blunder blunder) {
    blunder.noticed = true;
    world.blunders.remove(blunder);
    Vault main = world.main();
    Stretches held = world.heldExceptIn(java.util.List.of()).and(blunder.block);
    for (Vault vault : world.vaults) {
      for (Vault.Version version : java.util.List.copyOf(vault.versions)) {
        if (version.blunder() == blunder) {
          vault.live = vault.live.plus(version.footage().minus(world.aged));
          vault.versions.remove(version);
        }
      }
    }
    main.live = main.live.plus(held.minus(world.aged).and(main.room()));
  }
}
