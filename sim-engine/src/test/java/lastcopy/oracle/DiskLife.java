package lastcopy.oracle;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/** Drives: how they fail, are repaired, rebuilt and replaced, in sets and on shelves. */
final class DiskLife {

  private static final double BITS = 8;

  private final World world;
  private final Luck luck;
  private final LatentDefects defects;

  DiskLife(World world) {
    this.world = world;
    luck = world.luck;
    defects = new LatentDefects(world);
    firstDrives();
  }

  private void firstDrives() {
    Map<String, Double> hazardSoFar = new HashMap<>();
    Map<Vault, double[]> ages = new LinkedHashMap<>();
    for (Vault vault : world.vaults) {
      Medium.DriveSet set = vault.set().orElse(null);
      if (set == null) {
        continue;
      }
      double onHand = world.studio.footage().onHandBytes();
      int drives = set.drives();
      if (vault.isShelf()) {
        drives = 1;
        while (vault.roomOf(drives) < onHand) {
          drives++;
        }
      }
      double[] its = new double[drives];
      for (int j = 0; j < drives; j++) {
        its[j] = luck.time(set.model(j).age());
        double hazard = set.model(j).fails().cumulativeHazard(its[j]);
        set.batch().ifPresent(b -> hazardSoFar.merge(b.name(), hazard, Double::sum));
      }
      ages.put(vault, its);
    }
    Map<String, Double> frailty = new HashMap<>();
    ages.forEach(
        (vault, its) -> {
          Medium.DriveSet set = vault.set().orElseThrow();
          double z =
              set.batch()
                  .map(
                      b ->
                          frailty.computeIfAbsent(
                              b.name(), n -> frailty(b.spread(), hazardSoFar.getOrDefault(n, 0.0))))
                  .orElse(1.0);
          for (double age : its) {
            Disk disk = new Disk(set.model(vault.disks.size()));
            vault.disks.add(disk);
            disk.begin(0, age, z, luck.exponential());
            defects.begin(vault, disk);
          }
          rethink(vault);
        });
  }

  private double frailty(double spread, double hazardSoFar) {
    return luck.gamma(1 / spread, 1 / spread + hazardSoFar);
  }

  /** A new drive in the stead of an old one. */
  private void renew(Vault vault, Disk disk) {
    Medium.DriveSet set = vault.set().orElseThrow();
    double age = disk.model.boughtAtHours();
    double hazard = disk.model.fails().cumulativeHazard(age);
    double z = set.batch().map(b -> frailty(b.spread(), hazard)).orElse(1.0);
    disk.begin(world.now(), age, z, luck.exponential());
    defects.begin(vault, disk);
  }

  /** Plans every drive's failure anew, after what acts on its hazard has changed. */
  private void rethink(Vault vault) {
    Medium.DriveSet set = vault.set().orElseThrow();
    for (Disk disk : vault.disks) {
      boolean strained = !vault.gone && !vault.isShelf() && vault.downAmong(vault.mates(disk)) > 0;
      if (disk.whole) {
        disk.change(world.now(), strained ? set.strain() : 1, vault.rotated && !vault.visiting);
        int planned = disk.planned;
        world.clock.at(
            disk.failsAt(),
            Clock.Order.FAILURE,
            () -> {
              if (planned == disk.planned) {
                fails(vault, disk);
              }
            });
        set.replaceAtHours()
            .ifPresent(
                age ->
                    world.clock.at(
                        disk.reaches(age),
                        Clock.Order.RETURN,
                        () -> {
                          if (planned == disk.planned) {
                            renew(vault, disk);
                            world.purse.buys(disk);
                            world.purse.repairs();
                            rethink(vault);
                          }
                        }));
      }
    }
  }

  /** Hardware is there again: new drives for those that failed; what it held is gone from all. */
  void comeBack(Vault vault) {
    world.purse.comesBack(vault);
    for (Disk disk : vault.disks) {
      if (disk.whole) {
        disk.defectPlanned++;
        defects.begin(vault, disk);
      } else {
        renew(vault, disk);
      }
    }
    powered(vault);
  }

  /** A rotated drive is switched on or off. */
  void powered(Vault vault) {
    if (vault.set().isPresent()) {
      rethink(vault);
    }
  }

  private void fails(Vault vault, Disk disk) {
    disk.fail();
    if (vault.gone) {
      return;
    }
    if (vault.isShelf()) {
      shelfDriveFails(vault, disk);
    } else if (vault.downAmong(vault.mates(disk)) > vault.survives()) {
      world.vaultLife.goes(vault, false);
    } else {
      if (vault.isLast(disk)) {
        int defects = (int) vault.mates(disk).stream().filter(d -> d.whole && d.defect).count();
        world.losesClips(defects, vault.live, List.of(vault));
      }
      rethink(vault);
      repair(vault, disk);
    }
  }

  private void repair(Vault vault, Disk disk) {
    double wait = luck.delay(vault.copy.repair().noticed(), world.now());
    ifStillThere(
        vault,
        wait + luck.time(vault.copy.repair().arrival()),
        () -> {
          arrives(disk);
          Medium.DriveSet set = vault.set().orElseThrow();
          boolean whole = set.rebuild().reads() == Rebuild.Reads.ALL;
          double inUse = vault.live.size();
          double perDrive = whole ? set.driveBytes() : inUse / drivesWorth(vault);
          ifStillThere(
              vault,
              rebuildHours(vault, set, perDrive),
              () -> rebuilt(vault, disk, whole ? vault.live.size() : inUse));
        });
  }

  private void arrives(Disk disk) {
    world.purse.buys(disk);
    world.purse.repairs();
    disk.arrived = true;
  }

  /** How many drives' worth of footage a set holds. */
  private static int drivesWorth(Vault vault) {
    int drives = vault.disks.size();
    boolean pairs = vault.set().orElseThrow().arrangement() == Arrangement.PAIRS;
    return pairs ? drives / 2 : drives - vault.survives();
  }

  private double rebuildHours(Vault vault, Medium.DriveSet set, double bytes) {
    return set.rebuild().time() instanceof Rebuild.ByLaw byLaw
        ? luck.time(byLaw.law())
        : bytes / (Ways.rebuild(vault.copy) * Units.SECONDS_PER_HOUR);
  }

  private void rebuilt(Vault vault, Disk disk, double reads) {
    if (vault.isLast(disk)) {
      Medium.DriveSet set = vault.set().orElseThrow();
      boolean pairs = set.arrangement() == Arrangement.PAIRS;
      double its = pairs ? reads / drivesWorth(vault) : reads; // a partner holds its share only
      double mean = BITS * its * set.readErrorsPerBit();
      world.losesClips(luck.poisson(mean), vault.live, List.of(vault));
    }
    renew(vault, disk);
    rethink(vault);
  }

  private void ifStillThere(Vault vault, double hours, Runnable action) {
    int lives = vault.lives;
    world.clock.in(
        hours,
        Clock.Order.RETURN,
        () -> {
          if (lives == vault.lives) {
            action.run();
          }
        });
  }

  // ---- shelves

  private void shelfDriveFails(Vault vault, Disk disk) {
    Stretches range = vault.range(vault.disks.indexOf(disk));
    vault.live = vault.live.minus(range);
    vault.versions.replaceAll(v -> v.without(range));
    ifStillThere(
        vault,
        luck.delay(vault.copy.repair().noticed(), world.now())
            + luck.time(vault.copy.repair().arrival()),
        () -> {
          arrives(disk);
          renew(vault, disk);
          rethink(vault);
          world.vaultLife.comesBack(vault);
        });
  }

  /** Whether the drive that is being filled is there. */
  boolean takes(Vault vault, double total) {
    if (!vault.isShelf()) {
      return true;
    }
    int j = 0;
    while (total >= vault.roomOf(j + 1)) {
      j++;
    }
    return j >= vault.disks.size() || vault.disks.get(j).whole;
  }

  /** Drives of shelves enter service when footage first exceeds those before. */
  void grows(double total) {
    for (Vault vault : world.vaults) {
      while (vault.isShelf() && total > vault.roomOf(vault.disks.size())) {
        Disk disk = new Disk(vault.set().orElseThrow().model(vault.disks.size()));
        vault.disks.add(disk);
        world.purse.buys(disk);
        renew(vault, disk);
        rethink(vault);
      }
    }
  }
}
