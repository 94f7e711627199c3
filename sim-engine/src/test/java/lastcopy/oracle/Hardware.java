package lastcopy.oracle;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastcopy.scenario.Box;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/** Failures of drives, sets, services, boxes and places, and how hardware comes back. */
final class Hardware {

  private static final double BITS = 8;

  private final World world;
  private final Luck luck;

  Hardware(World world) {
    this.world = world;
    luck = world.luck;
    firstDrives();
    Map<String, Place> places = new LinkedHashMap<>();
    Map<String, Box> boxes = new LinkedHashMap<>();
    for (Vault vault : world.vaults) {
      places.put(vault.copy.place().id(), vault.copy.place());
      vault.copy.box().ifPresent(box -> boxes.put(box.id(), box));
      settles(vault);
    }
    for (Place place : places.values()) {
      for (Mishap mishap : place.mishaps()) {
        world.clock.poisson(
            mishap.rate().perHour(), luck, () -> strikes(place.id(), mishap.takes()));
      }
    }
    for (Box box : boxes.values()) {
      world.clock.poisson(
          box.rate().perHour(),
          luck,
          () ->
              world.vaults.stream()
                  .filter(v -> v.copy.box().filter(b -> b.id().equals(box.id())).isPresent())
                  .forEach(v -> goes(v, true)));
    }
  }

  // ---- drives

  private void firstDrives() {
    Map<String, Double> hazardSoFar = new HashMap<>();
    Map<Vault, double[]> ages = new LinkedHashMap<>();
    for (Vault vault : world.vaults) {
      Medium.DriveSet set = vault.set().orElse(null);
      if (set == null) {
        continue;
      }
      double onHand = world.studio.footage().onHandBytes();
      int drives =
          vault.isShelf() ? (int) Math.ceil(onHand / set.model().sizeBytes()) : set.drives();
      double[] its = new double[drives];
      for (int j = 0; j < drives; j++) {
        its[j] = luck.time(set.model().age());
        double hazard = set.model().fails().cumulativeHazard(its[j]);
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
                              b.name(), n -> frailty(b.spread(), hazardSoFar.get(n))))
                  .orElse(1.0);
          for (double age : its) {
            Disk disk = new Disk(set.model());
            vault.disks.add(disk);
            disk.begin(0, age, z, luck.exponential());
            defectsBegin(vault, disk);
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
    double age = set.model().boughtAtHours();
    double hazard = set.model().fails().cumulativeHazard(age);
    double z = set.batch().map(b -> frailty(b.spread(), hazard)).orElse(1.0);
    disk.begin(world.now(), age, z, luck.exponential());
    defectsBegin(vault, disk);
  }

  /** Plans every drive's failure anew, after what acts on its hazard has changed. */
  private void rethink(Vault vault) {
    Medium.DriveSet set = vault.set().orElseThrow();
    boolean strained = !vault.gone && !vault.isShelf() && vault.down() > 0;
    for (Disk disk : vault.disks) {
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
                            rethink(vault);
                          }
                        }));
      }
    }
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
    } else if (vault.down() > vault.survives()) {
      goes(vault, false);
    } else {
      if (vault.down() == vault.survives()) {
        int defects = (int) vault.disks.stream().filter(d -> d.whole && d.defect).count();
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
          Medium.DriveSet set = vault.set().orElseThrow();
          boolean whole = set.rebuild().reads() == Rebuild.Reads.ALL;
          double inUse = vault.live.size();
          double perDrive =
              whole ? set.model().sizeBytes() : inUse / (vault.disks.size() - vault.survives());
          ifStillThere(
              vault,
              rebuildHours(vault, set, perDrive),
              () -> rebuilt(vault, disk, whole ? vault.live.size() : inUse));
        });
  }

  private double rebuildHours(Vault vault, Medium.DriveSet set, double bytes) {
    return set.rebuild().time() instanceof Rebuild.ByLaw byLaw
        ? luck.time(byLaw.law())
        : bytes / (Ways.rebuild(vault.copy) * Units.SECONDS_PER_HOUR);
  }

  private void rebuilt(Vault vault, Disk disk, double reads) {
    if (vault.down() == vault.survives()) {
      double mean = BITS * reads * vault.set().orElseThrow().readErrorsPerBit();
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

  // ---- latent defects

  private void defectsBegin(Vault vault, Disk disk) {
    Medium.DriveSet set = vault.set().orElseThrow();
    set.latentDefects()
        .ifPresent(
            law ->
                ifNotOverthrown(
                    disk,
                    luck.time(law),
                    () -> {
                      disk.defect = true;
                      set.scrub()
                          .ifPresent(
                              scrub ->
                                  ifNotOverthrown(
                                      disk,
                                      luck.time(scrub),
                                      () -> {
                                        disk.defect = false;
                                        defectsBegin(vault, disk);
                                      }));
                    }));
  }

  private void ifNotOverthrown(Disk disk, double hours, Runnable action) {
    int planned = disk.defectPlanned;
    world.clock.in(
        hours,
        Clock.Order.RETURN,
        () -> {
          if (planned == disk.defectPlanned) {
            action.run();
          }
        });
  }

  // ---- shelves

  private void shelfDriveFails(Vault vault, Disk disk) {
    Stretches range = vault.range(vault.disks.indexOf(disk));
    vault.live = vault.live.minus(range);
    vault.versions.replaceAll(v -> new Vault.Version(v.blunder(), v.footage().minus(range)));
    ifStillThere(
        vault,
        luck.delay(vault.copy.repair().noticed(), world.now())
            + luck.time(vault.copy.repair().arrival()),
        () -> {
          renew(vault, disk);
          rethink(vault);
          comesBack(vault);
        });
  }

  /** Whether the drive that is being filled is there. */
  boolean takes(Vault vault, double total) {
    if (!vault.isShelf()) {
      return true;
    }
    int j = (int) (total / vault.set().orElseThrow().model().sizeBytes());
    return j >= vault.disks.size() || vault.disks.get(j).whole;
  }

  /** Drives of shelves enter service when footage first exceeds those before. */
  void grows(double total) {
    for (Vault vault : world.vaults) {
      while (vault.isShelf()
          && total > vault.disks.size() * vault.set().orElseThrow().model().sizeBytes()) {
        Disk disk = new Disk(vault.set().orElseThrow().model());
        vault.disks.add(disk);
        renew(vault, disk);
        rethink(vault);
      }
    }
  }

  // ---- copies

  private void strikes(String place, double takes) {
    boolean cardsGo = world.main().copy.place().id().equals(place) && luck.happens(takes);
    List<Vault> there =
        world.vaults.stream()
            .filter(v -> world.placeOf(v).equals(place))
            .filter(v -> luck.happens(takes))
            .toList();
    there.forEach(v -> goes(v, true));
    if (cardsGo) {
      world.cards = Stretches.NONE;
    }
  }

  /** The copy is gone; with its drives, or with those only that have failed. */
  void goes(Vault vault, boolean withDrives) {
    if (vault.gone) {
      return;
    }
    vault.gone = true;
    vault.lives++;
    vault.spoilt = false;
    vault.live = Stretches.NONE;
    vault.versions.clear();
    for (Disk disk : vault.disks) {
      disk.defect = false;
      disk.defectPlanned++;
      if (withDrives) {
        disk.fail();
      }
    }
    powered(vault);
    for (Feeding feeding : world.feedings) {
      if (feeding.source == vault || feeding.target == vault) {
        feeding.cut();
      }
    }
    if (vault == world.main() || world.refilling.reads(vault)) {
      world.refilling.cut();
    }
    world.clock.in(
        luck.delay(vault.copy.repair().goneNoticed(), world.now())
            + luck.time(vault.copy.repair().arrival()),
        Clock.Order.RETURN,
        () -> returns(vault));
  }

  private void returns(Vault vault) {
    vault.gone = false;
    for (Disk disk : vault.disks) {
      if (disk.whole) {
        disk.defectPlanned++;
        defectsBegin(vault, disk);
      } else {
        renew(vault, disk);
      }
    }
    powered(vault);
    settles(vault);
    comesBack(vault);
  }

  private void comesBack(Vault vault) {
    if (vault == world.main()) {
      world.shooting.offload();
      vault.live =
          vault.live.plus(
              world.cards.minus(world.aged).minus(world.deletedUnnoticed()).and(vault.room()));
      world.refilling.begin();
    } else {
      world.feedings.stream().filter(f -> f.target == vault).forEach(Feeding::willBringBack);
    }
  }

  /** From the time that a copy has hardware it may be lost by its service, or spoil. */
  private void settles(Vault vault) {
    if (vault.copy.medium() instanceof Medium.Service service) {
      afterExponential(vault, service.loses(), () -> goes(vault, false));
    }
    vault.copy.spoils().ifPresent(s -> afterExponential(vault, s.rate(), () -> spoils(vault)));
  }

  private void afterExponential(Vault vault, Rate rate, Runnable action) {
    if (rate.strikes()) {
      int lives = vault.lives;
      world.clock.in(
          luck.exponential() / rate.perHour(),
          Clock.Order.FAILURE,
          () -> {
            if (lives == vault.lives) {
              action.run();
            }
          });
    }
  }

  private void spoils(Vault vault) {
    vault.spoilt = true;
    if (world.refilling.reads(vault)) {
      goes(vault, false);
      return;
    }
    Optional<Double> period =
        vault.copy.spoils().orElseThrow().triedEveryHours().stream().boxed().findFirst();
    int lives = vault.lives;
    period.ifPresent(
        p ->
            world.clock.at(
                Luck.nextLook(p, world.now()),
                Clock.Order.LOOK,
                () -> {
                  if (lives == vault.lives) {
                    goes(vault, false);
                  }
                }));
  }
}
