package lastcopy.scenario;

/**
 * How fast data move between copies. A rate that the scenario states is taken as it is; where none
 * is stated, the slowest of the drives and boxes on the way decides. All rates are bytes per
 * second.
 */
public final class Ways {

  private Ways() {}

  /**
   * What the hardware of a copy can do: the slower of its slowest drive and its box; unlimited for
   * a service.
   */
  public static double hardware(Copy copy) {
    double drives = copy.driveSet().map(Medium.DriveSet::speed).orElse(Double.POSITIVE_INFINITY);
    double box =
        copy.box()
            .map(b -> b.bytesPerSecond().orElse(Double.POSITIVE_INFINITY))
            .orElse(Double.POSITIVE_INFINITY);
    return Math.min(drives, box);
  }

  /** The rate of the feed from a source to its target. */
  public static double feed(Copy source, Copy target) {
    return target
        .feed()
        .orElseThrow(() -> new IllegalArgumentException("copy " + target.id() + " has no feed"))
        .bytesPerSecond()
        .orElseGet(() -> onTheWay(source, target));
  }

  /**
   * The rate at which a target is refilled from a source: as the source states, else its feed's
   * link, else the slowest on the way.
   */
  public static double refill(Copy source, Copy target) {
    if (source.restoresAt().isPresent()) {
      return source.restoresAt().getAsDouble();
    }
    if (source.feed().isPresent() && source.feed().get().bytesPerSecond().isPresent()) {
      return source.feed().get().bytesPerSecond().getAsDouble();
    }
    return onTheWay(source, target);
  }

  /** Hours from the order of a refill from a copy until its first byte comes. */
  public static double restoresIn(Copy source) {
    return source.medium() instanceof Medium.Service service ? service.restoresInHours() : 0;
  }

  /**
   * The rate of a rebuild after the share that daily work takes, where the rebuild is by rate.
   *
   * @throws IllegalArgumentException if the copy has no drives or its rebuild follows a law
   */
  public static double rebuild(Copy copy) {
    Rebuild.Time time =
        copy.driveSet()
            .map(set -> set.rebuild().time())
            .orElseThrow(() -> new IllegalArgumentException(copy.id() + " has no drives"));
    if (!(time instanceof Rebuild.ByRate byRate)) {
      throw new IllegalArgumentException("the rebuild of " + copy.id() + " follows a law");
    }
    return byRate.bytesPerSecond().orElseGet(() -> hardware(copy)) * (1 - byRate.dailyWorkTakes());
  }

  private static double onTheWay(Copy source, Copy target) {
    double slowest = Math.min(hardware(source), hardware(target));
    // Between two services nothing on the studio's side limits the way; a drive's speed stands in.
    return Double.isInfinite(slowest) ? DriveModel.ASSUMED_BYTES_PER_SECOND : slowest;
  }
}
