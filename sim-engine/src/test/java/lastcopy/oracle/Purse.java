package lastcopy.oracle;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Costs;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Work;

/** Money as it is paid, one event after another: no table, nothing reckoned beforehand. */
final class Purse {

  static final List<String> KINDS =
      List.of("drives", "boxes", "services", "power", "work", "other");

  private final World world;
  private final Studio studio;
  private final Map<String, Double> paid = new TreeMap<>();
  private final Set<Box> destroyed = new HashSet<>();

  Purse(World world) {
    this.world = world;
    studio = world.studio;
    for (Vault vault : world.vaults) {
      for (Disk disk : vault.disks) {
        pays("drives", disk.model.owned() ? 0 : disk.model.price().orElse(0));
      }
      clocks(vault);
    }
    boxes().forEach(box -> pays("boxes", box.price().orElse(0)));
    pays("other", costs().once());
  }

  private List<Box> boxes() {
    return world.vaults.stream().flatMap(v -> v.copy.box().stream()).distinct().toList();
  }

  private Costs costs() {
    return world.layout.copies().stream()
        .map(Copy::costs)
        .reduce(world.layout.costs(), Costs::plus);
  }

  double paid(String kind) {
    return paid.getOrDefault(kind, 0.0);
  }

  private void pays(String kind, double money) {
    paid.merge(kind, money, Double::sum);
  }

  private void works(double hours) {
    pays("work", hours * studio.work().pricePerHour().orElse(0));
  }

  // ---- what comes by the clock

  private void clocks(Vault vault) {
    Work work = studio.work();
    OptionalDouble seen = looks(vault.copy.repair().noticed());
    OptionalDouble gone = looks(vault.copy.repair().goneNoticed());
    seen.ifPresent(p -> every(p, p, () -> works(work.lookHours())));
    if (!gone.equals(seen)) {
      gone.ifPresent(p -> every(p, p, () -> works(work.lookHours())));
    }
    vault
        .copy
        .feed()
        .map(Feed::checkedEveryHours)
        .orElse(OptionalDouble.empty())
        .ifPresent(p -> every(p, p, () -> works(work.lookHours())));
    vault
        .copy
        .spoils()
        .map(Copy.Spoils::triedEveryHours)
        .orElse(OptionalDouble.empty())
        .ifPresent(p -> every(p, p, () -> works(vault.gone ? 0 : work.trialHours())));
  }

  private static OptionalDouble looks(Delay delay) {
    return delay instanceof Delay.Looks looks
        ? OptionalDouble.of(looks.periodHours())
        : OptionalDouble.empty();
  }

  private void every(double first, double period, Runnable action) {
    world.clock.at(
        first,
        Clock.Order.LOOK,
        () -> {
          action.run();
          every(first + period, period, action);
        });
  }

  // ---- what happens

  /** A drive is bought: one for another, or one more. */
  void buys(Disk disk) {
    pays("drives", disk.model.price().orElse(0));
  }

  void repairs() {
    works(studio.work().repairHours());
  }

  void visits() {
    works(studio.work().visitHours());
  }

  void boxGoes(Vault vault) {
    vault.copy.box().ifPresent(destroyed::add);
  }

  /** A copy has hardware again. */
  void comesBack(Vault vault) {
    repairs();
    for (Disk disk : vault.disks) {
      if (!disk.whole && !disk.arrived) {
        buys(disk);
      }
    }
    vault.copy.box().filter(destroyed::remove).ifPresent(b -> pays("boxes", b.price().orElse(0)));
  }

  // ---- time

  void pass(double hours) {
    pays("other", hours * costs().perHour());
    double watts = boxes().stream().mapToDouble(box -> box.powerWatts().orElse(0)).sum();
    for (Vault vault : world.vaults) {
      if (!vault.rotated || vault.visiting) {
        watts +=
            vault.disks.stream()
                .filter(d -> d.whole || (d.arrived && !vault.gone))
                .mapToDouble(d -> d.model.powerWatts().orElse(0))
                .sum();
      }
      if (vault.copy.medium() instanceof Medium.Service service) {
        double price = service.pricePerTbMonth().orElse(0) / Units.TB / Units.HOURS_PER_MONTH;
        pays("services", price * byteHours(vault, hours));
      }
    }
    pays("power", hours * watts / 1_000 * studio.energyPerKwh().orElse(0));
  }

  private double byteHours(Vault vault, double hours) {
    double arriving =
        world.transfers.stream()
            .filter(t -> t.target == vault)
            .mapToDouble(t -> t.brings(hours) * hours / 2)
            .sum();
    return vault.holds().size() * hours + arriving;
  }
}
