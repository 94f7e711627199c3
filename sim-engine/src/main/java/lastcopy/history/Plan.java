package lastcopy.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastcopy.footage.ShootTable;
import lastcopy.kernel.Priority;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.random.SourceKey;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/**
 * A layout compiled for simulation: tables that every history of it reads and none changes.
 *
 * <p>Slots are the drives of all copies in order. A service is a slot too: a drive whose life is
 * the time to the service's loss. Timers are numbered slot failures, strikes, slot repairs, copy
 * returns, refill end, run ends, run starts, offload.
 */
final class Plan {

  /** A Poisson process that strikes copies. */
  record Strike(
      long source,
      double perHour,
      double takes,
      int[] copies,
      long[] takesKeys,
      Map<Cause.Context, Cause> causes) {}

  /** A fed copy's way. */
  record Way(
      int source, boolean continuous, double everyHours, double atHours, double bytesPerHour) {}

  final double horizon;
  final boolean evenShoots;
  final ShootTable shoots;
  final Studio studio;
  final Layout layout;
  final int copies;
  final int slots;
  final int[] copyOfSlot;
  final int[] firstSlot;
  final int[] survives;
  final Law[] life;
  final Law[] age;
  final double[] boughtAt;
  final long[] slotSource;
  final long[] copySource;
  final long[] firstLifeKey;

  /** Uniforms below it surely mean no failure of the slot's first drive by the horizon. */
  final double[] lifeLimit;

  final Strike[] strikes;
  final long[] firstStrikeKey;
  final double[] strikeLimit;
  final Way[] ways;
  final double[][] refillPerHour;
  final double[] rebuildPerHour;
  final Map<Cause.Context, Cause> driveCauses;
  final Map<Cause.Context, Cause> serviceCauses;
  final boolean[] service;
  final Priority[] timers;

  private Plan(Studio studio, Layout layout) {
    this.studio = studio;
    this.layout = layout;
    horizon = studio.horizonHours();
    evenShoots = studio.footage().shoots().spacing() == Shoots.Spacing.EVEN;
    shoots =
        evenShoots
            ? ShootTable.even(studio.footage(), horizon)
            : ShootTable.at(studio.footage(), new double[0]);
    copies = layout.copies().size();
    firstSlot = new int[copies + 1];
    survives = new int[copies];
    service = new boolean[copies];
    for (int c = 0; c < copies; c++) {
      Optional<Medium.DriveSet> set = layout.copies().get(c).driveSet();
      firstSlot[c + 1] = firstSlot[c] + set.map(Medium.DriveSet::drives).orElse(1);
      survives[c] = set.map(Medium.DriveSet::survives).orElse(0);
      service[c] = set.isEmpty();
    }
    slots = firstSlot[copies];
    copyOfSlot = new int[slots];
    life = new Law[slots];
    age = new Law[slots];
    boughtAt = new double[slots];
    slotSource = new long[slots];
    copySource = new long[copies];
    firstLifeKey = new long[slots];
    lifeLimit = new double[slots];
    fillSlots();
    strikes = strikes(layout).toArray(new Strike[0]);
    firstStrikeKey = new long[strikes.length];
    strikeLimit = new double[strikes.length];
    for (int i = 0; i < strikes.length; i++) {
      firstStrikeKey[i] = Draws.key(strikes[i].source, Draws.STRIKE, 0);
      strikeLimit[i] = limit(strikes[i].perHour * horizon);
    }
    ways = new Way[copies];
    refillPerHour = new double[copies][copies];
    rebuildPerHour = new double[copies];
    fillWays();
    driveCauses = Cause.family("drive", "a drive failed");
    serviceCauses = Cause.family("service", "the service lost its copy");
    timers = timers();
  }

  /**
   * Compiles a layout.
   *
   * @throws UnsupportedOperationException if it uses a part of the model that is not built
   */
  static Plan of(Studio studio, Layout layout) {
    NotBuilt.refuse(studio, layout);
    return new Plan(studio, layout);
  }

  private void fillSlots() {
    for (int c = 0; c < copies; c++) {
      Copy copy = layout.copies().get(c);
      copySource[c] = SourceKey.of("copy", copy.id());
      for (int s = firstSlot[c]; s < firstSlot[c + 1]; s++) {
        copyOfSlot[s] = c;
        slotSource[s] = SourceKey.of("drive", copy.id(), Integer.toString(s - firstSlot[c]));
        firstLifeKey[s] = Draws.key(slotSource[s], Draws.LIFE, 0);
        if (copy.medium() instanceof Medium.DriveSet set) {
          life[s] = set.model().fails();
          age[s] = set.model().age();
          boughtAt[s] = set.model().boughtAtHours();
        } else if (copy.medium() instanceof Medium.Service paid) {
          life[s] = lawOf(paid.loses());
          age[s] = new Fixed(0);
        }
        lifeLimit[s] =
            age[s] instanceof Fixed fixed
                ? limit(
                    life[s].cumulativeHazard(fixed.hours() + horizon)
                        - life[s].cumulativeHazard(fixed.hours()))
                : 0;
      }
    }
  }

  private static Law lawOf(Rate rate) {
    return rate.strikes() ? new Exponential(1 / rate.perHour()) : new lastcopy.law.Never();
  }

  /** exp(−hazard), a little lower, so that rounding never hides an event. */
  private static double limit(double hazard) {
    return StrictMath.exp(-hazard) * (1 - 1e-9);
  }

  private void fillWays() {
    for (int c = 0; c < copies; c++) {
      Copy copy = layout.copies().get(c);
      if (copy.medium() instanceof Medium.DriveSet set
          && set.rebuild().time() instanceof Rebuild.ByRate) {
        rebuildPerHour[c] = Ways.rebuild(copy) * Units.SECONDS_PER_HOUR;
      }
      if (copy.feed().isPresent()) {
        Feed feed = copy.feed().get();
        int source = layout.indexOf(feed.from());
        double rate = Ways.feed(layout.copies().get(source), copy) * Units.SECONDS_PER_HOUR;
        ways[c] =
            feed.schedule() instanceof Feed.Every every
                ? new Way(source, false, every.everyHours(), every.atHours(), rate)
                : new Way(source, true, 0, 0, rate);
      }
      for (int from = 0; from < copies; from++) {
        if (from != c && layout.copies().get(from).feed().isPresent()) {
          refillPerHour[c][from] =
              Ways.refill(layout.copies().get(from), copy) * Units.SECONDS_PER_HOUR;
        }
      }
    }
  }

  private static List<Strike> strikes(Layout layout) {
    List<Strike> all = new ArrayList<>();
    List<Place> places = layout.copies().stream().map(Copy::place).distinct().toList();
    for (Place place : places) {
      for (Mishap mishap : place.mishaps()) {
        if (mishap.rate().strikes() && mishap.takes() > 0) {
          all.add(
              strike(
                  layout,
                  SourceKey.of("place", place.id(), mishap.id()),
                  mishap.rate(),
                  mishap.takes(),
                  copy -> copy.place().equals(place),
                  Cause.family(
                      "place:" + mishap.id(), mishap.id() + " struck at '" + place.id() + "'")));
        }
      }
    }
    for (Box box : layout.copies().stream().flatMap(c -> c.box().stream()).distinct().toList()) {
      if (box.rate().strikes()) {
        all.add(
            strike(
                layout,
                SourceKey.of("box", box.id()),
                box.rate(),
                1,
                copy -> copy.box().equals(Optional.of(box)),
                Cause.family("box", "the box '" + box.id() + "' took all drives in it")));
      }
    }
    return all;
  }

  private static Strike strike(
      Layout layout,
      long source,
      Rate rate,
      double takes,
      java.util.function.Predicate<Copy> hit,
      Map<Cause.Context, Cause> causes) {
    int[] copies =
        java.util.stream.IntStream.range(0, layout.copies().size())
            .filter(c -> hit.test(layout.copies().get(c)))
            .toArray();
    long[] keys = new long[copies.length];
    for (int i = 0; i < keys.length; i++) {
      keys[i] = SourceKey.with(source, SourceKey.of(layout.copies().get(copies[i]).id()));
    }
    return new Strike(source, rate.perHour(), takes, copies, keys, causes);
  }

  /** Hours to rebuild a whole drive at the way's rate. */
  double wholeRebuildHours(int copy) {
    Medium.DriveSet set = layout.copies().get(copy).driveSet().orElseThrow();
    return set.model().sizeBytes() / rebuildPerHour[copy];
  }

  /** Hours to rebuild the part in use of a drive, of a copy that holds so many bytes. */
  double rebuildHours(int copy, double heldBytes) {
    Medium.DriveSet set = layout.copies().get(copy).driveSet().orElseThrow();
    return heldBytes / set.arrangement().usableDrives(set.drives()) / rebuildPerHour[copy];
  }

  int strikeTimer(int strike) {
    return slots + strike;
  }

  int repairTimer(int slot) {
    return slots + strikes.length + slot;
  }

  int returnTimer(int copy) {
    return 2 * slots + strikes.length + copy;
  }

  int runEndTimer(int copy) {
    return 2 * slots + strikes.length + copies + copy;
  }

  int runStartTimer(int copy) {
    return 2 * slots + strikes.length + 2 * copies + copy;
  }

  int offloadTimer() {
    return 2 * slots + strikes.length + 3 * copies;
  }

  private Priority[] timers() {
    Priority[] all = new Priority[offloadTimer() + 1];
    java.util.Arrays.fill(all, 0, slots + strikes.length, Priority.FAILURE);
    java.util.Arrays.fill(all, slots + strikes.length, runStartTimer(0), Priority.RETURN);
    java.util.Arrays.fill(all, runStartTimer(0), offloadTimer(), Priority.FEED_RUN);
    all[offloadTimer()] = Priority.OFFLOAD;
    return all;
  }
}
