package lastcopy.history;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.footage.ShootTable;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.random.SourceKey;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Periodic;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/**
 * A layout compiled for simulation: tables that every history of it reads and none changes.
 *
 * <p>Each turn of a rotation is a copy. Slots are the drives of all copies in order; a shelf has
 * slots for all drives that it may grow to. A service is a slot too: a drive whose life is the time
 * to the service's loss. Sources of luck are the slots and then the shocks.
 */
final class Plan {

  /** A fed copy's way. */
  record Way(int source, Optional<Periodic> due, double bytesPerHour) {
    boolean continuous() {
      return due.isEmpty();
    }

    /** The first run that is due at a time or after it. */
    double dueFrom(double time) {
      return continuous() ? time : due.get().from(time);
    }

    /** The first run that is due after a time; of a continuous feed at once. */
    double dueAfter(double time) {
      return continuous() ? time : due.get().after(time);
    }
  }

  /** Deeper trouble is rarely told apart: a bias learns from few histories. */
  private static final int MOST_DEPTHS = 8;

  final Studio studio;
  final Layout layout;
  final double horizon;
  final boolean evenShoots;
  final ShootTable shoots;
  final double clip;
  final double keepHours;
  final double cardHours;

  final int copies;
  final Copy[] copy;
  final String[] names;
  final Way[] ways;
  final Visits[] visits;
  final double[][] refillPerHour;
  final double[] rebuildPerHour;
  final double[] keepsDeleted;
  final int[] survives;
  final boolean[] service;
  final boolean[] shelf;
  final double[] driveSize;
  final double[] strain;
  final Law[] defects;
  final Law[] scrub;
  final double[] readErrors;
  final long[] copySource;
  final boolean wornByAbsence;

  final int slots;
  final int[] copyOfSlot;
  final int[] firstSlot;
  final Law[] life;
  final Law[] lifeOff;
  final Law[] age;
  final double[] boughtAt;
  final double[] replaceAt;
  final double[] enters;
  final double[] spread;
  final int[] batchOf;
  final long[] slotSource;
  final long[] firstLifeKey;

  /** Cumulative hazard of the slot's first drive by the horizon; infinite where it depends. */
  final double[] firstHazard;

  final long[] batchSource;
  final ShockProcess[] shocks;
  final long[] firstStrikeKey;
  final int groups;

  /** By shock, the group of its chances to take a copy; −1 where it surely does. */
  final int[] takesOf;

  final Levels levels;
  final int[] groupOf;
  final Timers timer;
  final Map<Cause.Context, Cause> driveCauses;
  final Map<Cause.Context, Cause> serviceCauses;

  /** Compiles a layout of a studio. */
  static Plan of(Studio studio, Layout layout) {
    return new Plan(studio, layout);
  }

  private Plan(Studio studio, Layout layout) {
    this.studio = studio;
    this.layout = layout;
    horizon = studio.horizonHours();
    evenShoots = studio.footage().shoots().spacing() == Shoots.Spacing.EVEN;
    shoots =
        evenShoots
            ? ShootTable.even(studio.footage(), horizon)
            : ShootTable.at(studio.footage(), new double[0]);
    clip = studio.footage().clipBytes();
    keepHours = studio.footage().keepHours().orElse(Double.POSITIVE_INFINITY);
    cardHours = layout.cardsKeepHours().orElse(0);
    List<Copy> turns = new ArrayList<>();
    List<Integer> turn = new ArrayList<>();
    for (Copy each : layout.copies()) {
      for (int j = 0; j < each.rotation().map(Copy.Rotation::turns).orElse(1); j++) {
        turns.add(each);
        turn.add(j);
      }
    }
    copies = turns.size();
    copy = turns.toArray(new Copy[0]);
    names = new String[copies];
    copySource = new long[copies];
    survives = new int[copies];
    service = new boolean[copies];
    shelf = new boolean[copies];
    driveSize = new double[copies];
    strain = new double[copies];
    defects = new Law[copies];
    scrub = new Law[copies];
    readErrors = new double[copies];
    keepsDeleted = new double[copies];
    firstSlot = new int[copies + 1];
    for (int c = 0; c < copies; c++) {
      names[c] = turn.get(c) == 0 ? copy[c].id() : copy[c].id() + "#" + (turn.get(c) + 1);
      copySource[c] = SourceKey.of("copy", names[c]);
      keepsDeleted[c] = copy[c].keepsDeletedHours();
      fillCopy(c);
    }
    slots = firstSlot[copies];
    ways = new Way[copies];
    visits = new Visits[copies];
    refillPerHour = new double[copies][copies];
    rebuildPerHour = new double[copies];
    for (int c = 0; c < copies; c++) {
      fillWays(c, turn.get(c), turns);
    }
    copyOfSlot = new int[slots];
    life = new Law[slots];
    lifeOff = new Law[slots];
    age = new Law[slots];
    boughtAt = new double[slots];
    replaceAt = new double[slots];
    enters = new double[slots];
    spread = new double[slots];
    batchOf = new int[slots];
    slotSource = new long[slots];
    firstLifeKey = new long[slots];
    firstHazard = new double[slots];
    List<String> batches = new ArrayList<>();
    for (int c = 0; c < copies; c++) {
      for (int s = firstSlot[c]; s < firstSlot[c + 1]; s++) {
        fillSlot(c, s, batches);
      }
    }
    batchSource = batches.stream().mapToLong(name -> SourceKey.of("batch", name)).toArray();
    wornByAbsence = Arrays.stream(lifeOff).anyMatch(law -> law != null);
    int[] sourceOf = new int[copies];
    for (int c = 0; c < copies; c++) {
      sourceOf[c] = ways[c] == null ? -1 : ways[c].source();
    }
    shocks = ShockProcesses.of(turns, names, sourceOf, studio.desk(), cardHours > 0);
    firstStrikeKey = new long[shocks.length];
    groupOf = new int[slots + shocks.length];
    for (int i = 0; i < shocks.length; i++) {
      firstStrikeKey[i] = Draws.key(shocks[i].source(), Draws.STRIKE, 0);
      groupOf[slots + i] = copies + i;
    }
    for (int s = 0; s < slots; s++) {
      groupOf[s] = copyOfSlot[s];
    }
    takesOf = new int[shocks.length];
    int chances = 2 * copies + shocks.length;
    for (int i = 0; i < shocks.length; i++) {
      takesOf[i] = shocks[i].takes() < 1 ? chances++ : -1;
    }
    groups = chances;
    levels = levels();
    driveCauses = Cause.family("drive", "a drive failed");
    serviceCauses = Cause.family("service", "the service lost its copy");
    timer = new Timers(slots, shocks.length, copies);
  }

  private void fillCopy(int c) {
    strain[c] = 1;
    int drives = 1;
    Optional<Medium.DriveSet> stored = copy[c].driveSet();
    service[c] = stored.isEmpty();
    if (stored.isPresent()) {
      Medium.DriveSet set = stored.get();
      drives = set.drives();
      survives[c] = set.survives();
      shelf[c] = set.arrangement() == Arrangement.SHELF;
      driveSize[c] = set.model().sizeBytes();
      strain[c] = set.strain();
      defects[c] = set.latentDefects().orElse(null);
      scrub[c] = set.scrub().orElseGet(Never::new);
      readErrors[c] = set.readErrorsPerBit();
      if (shelf[c]) {
        drives = Math.max(drives, (int) Math.ceil(mostEverShot() / driveSize[c]));
      }
    }
    firstSlot[c + 1] = firstSlot[c] + drives;
  }

  /** All that can ever be shot: exact for even shoots, for random ones never exceeded. */
  double mostEverShot() {
    if (evenShoots) {
      return shoots.total(horizon);
    }
    Shoots random = studio.footage().shoots();
    double mean = horizon / random.everyHours();
    double years = horizon / Units.HOURS_PER_YEAR;
    double growth = Math.max(1, StrictMath.pow(1 + studio.footage().growthPerYear(), years));
    // Twelve standard deviations of a Poisson count and some: a chance below 1e-30.
    return studio.footage().onHandBytes()
        + (mean + 12 * Math.sqrt(mean) + 40) * random.sizeBytes() * growth;
  }

  private void fillWays(int c, int turn, List<Copy> turns) {
    if (copy[c].medium() instanceof Medium.DriveSet set
        && set.rebuild().time() instanceof Rebuild.ByRate) {
      rebuildPerHour[c] = Ways.rebuild(copy[c]) * Units.SECONDS_PER_HOUR;
    }
    if (copy[c].feed().isPresent()) {
      ways[c] = way(c, copy[c].feed().get(), turn, turns);
    }
    for (int from = 0; from < copies; from++) {
      if (from != c && copy[from].feed().isPresent()) {
        refillPerHour[c][from] = Ways.refill(copy[from], copy[c]) * Units.SECONDS_PER_HOUR;
      }
    }
  }

  private Way way(int c, Feed feed, int turn, List<Copy> turns) {
    int source = turns.indexOf(layout.copies().get(layout.indexOf(feed.from())));
    double rate = Ways.feed(copy[source], copy[c]) * Units.SECONDS_PER_HOUR;
    if (copy[c].rotation().isPresent()) {
      Copy.Rotation rotation = copy[c].rotation().get();
      double at = feed.schedule() instanceof Feed.Every every ? every.atHours() : 0;
      double first = at + turn * rotation.everyHours();
      double period = rotation.turns() * rotation.everyHours();
      Periodic due = new Periodic(first, period);
      visits[c] = new Visits(due, feed.visitHours());
      return new Way(source, Optional.of(due), rate);
    }
    return feed.schedule() instanceof Feed.Every every
        ? new Way(source, Optional.of(every.due()), rate)
        : new Way(source, Optional.empty(), rate);
  }

  private void fillSlot(int c, int s, List<String> batches) {
    copyOfSlot[s] = c;
    slotSource[s] = SourceKey.of("drive", names[c], Integer.toString(s - firstSlot[c]));
    firstLifeKey[s] = Draws.key(slotSource[s], Draws.LIFE, 0);
    replaceAt[s] = Double.POSITIVE_INFINITY;
    batchOf[s] = -1;
    if (copy[c].medium() instanceof Medium.DriveSet set) {
      life[s] = set.model().fails();
      age[s] = set.model().age();
      boughtAt[s] = set.model().boughtAtHours();
      lifeOff[s] = visits[c] == null ? null : set.model().failsOff().orElse(null);
      enters[s] = entry(c, s - firstSlot[c]);
      OptionalDouble swap = set.replaceAtHours();
      if (swap.isPresent() && swap.getAsDouble() > boughtAt[s]) {
        replaceAt[s] = swap.getAsDouble();
      }
      if (set.batch().isPresent()) {
        spread[s] = set.batch().get().spread();
        String name = set.batch().get().name();
        if (!batches.contains(name)) {
          batches.add(name);
        }
        batchOf[s] = batches.indexOf(name);
      }
    } else if (copy[c].medium() instanceof Medium.Service paid) {
      life[s] = lawOf(paid.loses());
      age[s] = new Fixed(0);
    }
    firstHazard[s] = firstHazard(s);
  }

  /** When a slot's first drive enters service; NaN where shoots are random and it may be later. */
  private double entry(int c, int drive) {
    double from = drive * driveSize[c];
    if (!shelf[c] || drive == 0 || from < shoots.onHand()) {
      return 0;
    }
    return evenShoots ? entry(shoots, from) : Double.NaN;
  }

  /** The instant at which more than so many bytes have been shot; infinite if never. */
  static double entry(ShootTable shoots, double bytes) {
    int k = shoots.shootOf(bytes);
    return k < shoots.count() ? shoots.time(k) : Double.POSITIVE_INFINITY;
  }

  private double firstHazard(int s) {
    double start;
    if (Double.isNaN(enters[s]) || replaceAt[s] < Double.POSITIVE_INFINITY) {
      return Double.POSITIVE_INFINITY;
    } else if (enters[s] > 0) {
      start = boughtAt[s];
    } else if (age[s] instanceof Fixed fixed) {
      start = fixed.hours();
    } else {
      return Double.POSITIVE_INFINITY;
    }
    double time = Math.max(0, horizon - enters[s]);
    double on = hazard(life[s], start, time);
    return lifeOff[s] == null ? on : on + hazard(lifeOff[s], start, time);
  }

  /** The hazard that a drive of an age runs up in so many hours. */
  static double hazard(Law law, double start, double time) {
    return law.cumulativeHazard(start + time) - law.cumulativeHazard(start);
  }

  private static Law lawOf(Rate rate) {
    return rate.strikes() ? new Exponential(1 / rate.perHour()) : new Never();
  }

  /** Hours to rebuild a whole drive at the way's rate. */
  double wholeRebuildHours(int c) {
    return driveSize[c] / rebuildPerHour[c];
  }

  /** Hours to rebuild the part in use of a drive, of a copy that holds so many bytes. */
  double rebuildHours(int c, double heldBytes) {
    return heldBytes / usableDrives(c) / rebuildPerHour[c];
  }

  private int usableDrives(int c) {
    Medium.DriveSet set = copy[c].driveSet().orElseThrow();
    return set.arrangement().usableDrives(set.drives());
  }

  /** The group of the bits of a copy that cannot be read. */
  int readsOf(int c) {
    return copies + shocks.length + c;
  }

  /**
   * The largest factor by which a group is worth biasing: a chance to take a copy, as a hazard of
   * −ln(1 − takes), is not made larger than 1, so that being spared stays likely enough.
   */
  double mostFactor(int group) {
    for (int i = 0; i < shocks.length; i++) {
      if (takesOf[i] == group) {
        return Math.max(1, -1 / StrictMath.log1p(-shocks[i].takes()));
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private Levels levels() {
    int all = 1;
    for (int c = 0; c < copies; c++) {
      all += survives[c] + 1;
    }
    return new Levels(Math.min(all, MOST_DEPTHS));
  }
}
