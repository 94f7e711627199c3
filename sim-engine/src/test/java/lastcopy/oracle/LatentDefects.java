package lastcopy.oracle;

import lastcopy.scenario.Medium;

/**
 * Spots of a drive that cannot be read, unknown until a scrub mends them or a repair meets them.
 */
final class LatentDefects {

  private final World world;
  private final Luck luck;

  LatentDefects(World world) {
    this.world = world;
    luck = world.luck;
  }

  /** A drive is new, or free of them. */
  void begin(Vault vault, Disk disk) {
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
                                        begin(vault, disk);
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
}
