package lastcopy.oracle;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/** Brings back what the working copy lacks, from the fastest copy first. */
final class Refilling {

  private static final double BITS = 8;

  /** Less than so long from a source that is itself being fed is not worth a start. */
  private static final double A_TRICKLE_HOURS = 0.25;

  private final World world;
  private Transfer running;
  private boolean wanted;

  Refilling(World world) {
    this.world = world;
  }

  void begin() {
    wanted = true;
  }

  /** A source or the working copy goes: the refill is cut, and goes on elsewhere if it can. */
  void cut() {
    if (running != null) {
      end();
    }
  }

  boolean isRunning() {
    return running != null;
  }

  boolean reads(Vault vault) {
    return running != null && running.source == vault;
  }

  /** Starts the next refill if one is wanted and none runs. */
  void goOn() {
    Vault main = world.main();
    if (!wanted || running != null || main.gone) {
      return;
    }
    List<Vault> fastestFirst =
        world.vaults.stream()
            .filter(v -> v != main)
            .sorted(Comparator.comparingDouble(this::hoursForAll))
            .toList();
    boolean anyReady = fastestFirst.stream().anyMatch(this::isReady);
    for (Vault source : fastestFirst) {
      if (anyReady ? isReady(source) : !source.gone && !lacking(source).isNothing()) {
        if (source.spoilt) {
          world.vaultLife.goes(source, false);
        } else {
          start(source);
          return;
        }
      }
    }
    wanted = false;
  }

  /** How long all that the working copy lacks would take from a copy. */
  private double hoursForAll(Vault source) {
    double bytes =
        world
            .offloaded
            .minus(world.aged)
            .and(world.main().room())
            .minus(world.main().live)
            .minus(world.deletedUnnoticed())
            .size();
    double rate = Ways.refill(source.copy, world.main().copy) * Units.SECONDS_PER_HOUR;
    return Ways.restoresIn(source.copy) + bytes / rate;
  }

  /** More is there than trickles into a source which is itself being fed. */
  private boolean isReady(Vault source) {
    double least = A_TRICKLE_HOURS * Ways.refill(source.copy, world.main().copy);
    boolean fed = world.transfers.stream().anyMatch(t -> t.target == source);
    double more = source.gone ? 0 : lacking(source).size();
    return fed ? more >= least * Units.SECONDS_PER_HOUR : more > 0;
  }

  private Stretches lacking(Vault source) {
    Vault main = world.main();
    return source
        .live
        .and(world.offloaded.minus(world.aged))
        .and(main.room())
        .minus(main.live)
        .minus(world.deletedUnnoticed());
  }

  private void start(Vault source) {
    meetsDefects(world, source);
    Vault main = world.main();
    double bytesPerHour = Ways.refill(source.copy, main.copy) * Units.SECONDS_PER_HOUR;
    running = new Transfer(source, main, lacking(source), world.now(), bytesPerHour, this::end);
    running.notBefore = world.now() + Ways.restoresIn(source.copy);
    world.clock.at(running.notBefore, Clock.Order.RETURN, () -> {});
    world.carry(running);
  }

  private void end() {
    Transfer ended = running;
    running = null;
    world.stopCarrying(ended);
    meetsErrors(world, ended, ended.crossed);
  }

  /** Unreadable bits of a source without redundancy, found when the reading ends. */
  static void meetsErrors(World world, Transfer read, Stretches broughtBack) {
    Optional<Medium.DriveSet> set = read.source.set();
    if (set.isPresent() && read.source.hasNoRedundancy()) {
      Stretches paid = read.crossed.and(broughtBack);
      double bare = paid.size() * read.source.bareShare();
      double mean = BITS * bare * set.get().readErrorsPerBit();
      world.losesClips(world.luck.poisson(mean), paid, List.of(read.source, read.target));
    }
  }

  /** A clip for each defect alive on a source without redundancy. */
  static void meetsDefects(World world, Vault source) {
    if (source.hasNoRedundancy()) {
      int defects =
          (int) source.disks.stream().filter(d -> d.whole && d.defect && source.isLast(d)).count();
      world.losesClips(defects, source.live, List.of(source));
    }
  }
}
