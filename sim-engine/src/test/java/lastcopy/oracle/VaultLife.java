package lastcopy.oracle;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastcopy.scenario.Box;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;

/**
 * Copies as a whole: what takes one by a place, a box, a service or decay, and how it comes back.
 */
final class VaultLife {

  private final World world;
  private final Luck luck;

  VaultLife(World world) {
    this.world = world;
    luck = world.luck;
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
                  .forEach(this::goesWithItsBox));
    }
  }

  private void strikes(String place, double takes) {
    boolean cardsGo = world.main().copy.place().id().equals(place) && luck.happens(takes);
    List<Vault> there =
        world.vaults.stream()
            .filter(v -> world.placeOf(v).equals(place))
            .filter(v -> luck.happens(takes))
            .toList();
    for (Vault vault : there) {
      if (vault.copy.place().id().equals(place)) {
        goesWithItsBox(vault);
      } else {
        goes(vault, true); // its box is at home
      }
    }
    if (cardsGo) {
      world.cards = Stretches.NONE;
    }
  }

  private void goesWithItsBox(Vault vault) {
    if (!vault.gone) {
      world.purse.boxGoes(vault);
    }
    goes(vault, true);
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
    world.diskLife.powered(vault);
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
    world.diskLife.comeBack(vault);
    settles(vault);
    comesBack(vault);
  }

  /** It has hardware again, or a drive of its shelf is back. */
  void comesBack(Vault vault) {
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
