package lastcopy.oracle;

import java.util.ArrayList;
import java.util.List;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Units;

/** Shoots, the cards that wait or are kept, and footage that ages out. */
final class Shooting {

  private record Shoot(double time, double size) {}

  private final World world;
  private final Footage footage;
  private final List<Shoot> waiting = new ArrayList<>();
  private double total;

  Shooting(World world) {
    this.world = world;
    footage = world.studio.footage();
    total = footage.onHandBytes();
    world.offloaded = Stretches.of(0, total);
    ages(new Shoot(0, total), world.offloaded);
    next(1, gap());
  }

  private double gap() {
    double every = footage.shoots().everyHours();
    return footage.shoots().spacing() == Shoots.Spacing.RANDOM
        ? every * world.luck.exponential()
        : every;
  }

  private void next(int number, double time) {
    world.clock.at(
        time,
        Clock.Order.OFFLOAD,
        () -> {
          double growth = 1 + footage.growthPerYear();
          double size =
              footage.shoots().sizeBytes() * Math.pow(growth, time / Units.HOURS_PER_YEAR);
          waiting.add(new Shoot(time, size));
          offload();
          // Even shoots at exact multiples, as the looks and runs of the clock are.
          boolean even = footage.shoots().spacing() == Shoots.Spacing.EVEN;
          next(number + 1, even ? (number + 1) * footage.shoots().everyHours() : time + gap());
        });
  }

  /** Offloads what waits, if the working copy can take it. */
  void offload() {
    Vault main = world.main();
    while (!waiting.isEmpty() && !main.gone && world.diskLife.takes(main, total)) {
      Shoot shoot = waiting.remove(0);
      Stretches block = Stretches.of(total, total + shoot.size());
      total += shoot.size();
      world.offloaded = Stretches.of(0, total);
      world.diskLife.grows(total);
      main.live = main.live.plus(block.and(main.room()));
      world
          .layout
          .cardsKeepHours()
          .ifPresent(
              keep -> {
                world.cards = world.cards.plus(block);
                world.clock.in(
                    keep, Clock.Order.EXPIRY, () -> world.cards = world.cards.minus(block));
              });
      ages(shoot, block);
    }
  }

  private void ages(Shoot shoot, Stretches block) {
    footage
        .keepHours()
        .ifPresent(
            keep ->
                world.clock.at(
                    shoot.time() + keep,
                    Clock.Order.EXPIRY,
                    () -> {
                      world.aged = world.aged.plus(block);
                      for (Vault vault : world.vaults) {
                        vault.live = vault.live.minus(block);
                      }
                    }));
  }
}
