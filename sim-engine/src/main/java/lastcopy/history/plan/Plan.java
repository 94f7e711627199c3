package lastcopy.history.plan;

import java.util.List;
import java.util.Map;
import lastcopy.footage.ShootTable;
import lastcopy.history.report.Cause;
import lastcopy.random.SourceKey;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/**
 * A layout compiled for simulation: what every history of it reads and none changes.
 *
 * <p>Sources of luck are the slots of all copies in order and then the processes of shocks; the
 * first timers of {@link Timers} are theirs, with the same numbers.
 */
public final class Plan {

  private final Studio studio;
  private final double horizon;
  private final boolean evenShoots;
  private final ShootTable shoots;
  private final double keepHours;
  private final double cardHours;
  private final CopyPlan[] copy;
  private final SlotPlan[] slot;
  private final long[] batches;
  private final boolean wornByAbsence;
  private final ShockProcess[] shock;
  private final Groups groups;
  private final int[] groupOf;
  private final Timers timers;
  private final Prices prices;
  private final Map<Cause.Context, Cause> driveCauses = Cause.family("drive", "a drive failed");
  private final Map<Cause.Context, Cause> serviceCauses =
      Cause.family("service", "the service lost its copy");

  private Plan(Studio studio, Layout layout) {
    this.studio = studio;
    horizon = studio.horizonHours();
    evenShoots = studio.footage().shoots().spacing() == Shoots.Spacing.EVEN;
    shoots =
        evenShoots
            ? ShootTable.even(studio.footage(), horizon)
            : ShootTable.at(studio.footage(), new double[0], 0);
    keepHours = studio.footage().keepHours().orElse(Double.POSITIVE_INFINITY);
    cardHours = layout.cardsKeepHours().orElse(0);
    copy = CopyPlans.of(layout, mostEverShot());
    SlotPlans compiled = new SlotPlans(horizon, evenShoots ? shoots : null, onHand());
    slot = compiled.of(copy);
    batches = compiled.batches().stream().mapToLong(n -> SourceKey.of("batch", n)).toArray();
    wornByAbsence = List.of(slot).stream().anyMatch(each -> each.lifeOff() != null);
    List<ShockProcess> all = ShockProcesses.of(copy, studio.desk(), cardHours > 0);
    shock = all.toArray(new ShockProcess[0]);
    groups = new Groups(copy, slot, all);
    groupOf = groupOfEachSource();
    timers = new Timers(slot.length, shock.length, copy.length);
    prices = new Prices(this, layout);
  }

  /** Compiles a layout of a studio. */
  public static Plan of(Studio studio, Layout layout) {
    return new Plan(studio, layout);
  }

  private int[] groupOfEachSource() {
    int[] all = new int[slot.length + shock.length];
    for (SlotPlan each : slot) {
      all[each.index()] = groups.of(each);
    }
    for (ShockProcess each : shock) {
      all[slot.length + each.index()] = groups.of(each);
    }
    return all;
  }

  private double onHand() {
    return studio.footage().onHandBytes();
  }

  /** All that can ever be shot: exact for even shoots, for random ones never exceeded. */
  public double mostEverShot() {
    if (evenShoots) {
      return shoots.total(horizon);
    }
    Shoots random = studio.footage().shoots();
    double mean = horizon / random.everyHours();
    double years = horizon / Units.HOURS_PER_YEAR;
    double growth = Math.max(1, StrictMath.pow(1 + studio.footage().growthPerYear(), years));
    // Twelve standard deviations of a Poisson count and some: a chance below 1e-30.
    return onHand() + (mean + 12 * Math.sqrt(mean) + 40) * random.sizeBytes() * growth;
  }

  /** The instant at which more than so many bytes have been shot; infinite if never. */
  public static double entry(ShootTable shoots, double bytes) {
    int k = shoots.shootOf(bytes);
    return k < shoots.count() ? shoots.time(k) : Double.POSITIVE_INFINITY;
  }

  /** The studio. */
  public Studio studio() {
    return studio;
  }

  /** The horizon in hours. */
  public double horizon() {
    return horizon;
  }

  /** Whether shoots come by the clock, the same in all histories. */
  public boolean evenShoots() {
    return evenShoots;
  }

  /** The shoots that come by the clock; none if they come at random. */
  public ShootTable shoots() {
    return shoots;
  }

  /** Hours for which footage is kept; infinite if it always is. */
  public double keepHours() {
    return keepHours;
  }

  /** Hours for which camera cards are kept after their offload; 0 if they are not. */
  public double cardHours() {
    return cardHours;
  }

  /** How many copies. */
  public int copies() {
    return copy.length;
  }

  /** A copy by its number. */
  public CopyPlan copy(int index) {
    return copy[index];
  }

  /** How many slots. */
  public int slots() {
    return slot.length;
  }

  /** A slot by its number. */
  public SlotPlan slot(int index) {
    return slot[index];
  }

  /** The copy of a slot. */
  public CopyPlan copyOf(SlotPlan of) {
    return copy[of.copy()];
  }

  /** By batch, the key of its draws. */
  public long[] batches() {
    return batches;
  }

  /** Whether some drive wears otherwise while it is off. */
  public boolean wornByAbsence() {
    return wornByAbsence;
  }

  /** How many processes of shocks. */
  public int shocks() {
    return shock.length;
  }

  /** Whether any process of shocks is of a kind. */
  public boolean hasAny(ShockProcess.Kind kind) {
    for (ShockProcess each : shock) {
      if (each.kind() == kind) {
        return true;
      }
    }
    return false;
  }

  /** A process of shocks by its number. */
  public ShockProcess shock(int index) {
    return shock[index];
  }

  /** How many sources of luck. */
  public int sources() {
    return groupOf.length;
  }

  /** The group of a source of luck. */
  public int groupOf(int source) {
    return groupOf[source];
  }

  /** The groups that a bias tells apart. */
  public Groups groups() {
    return groups;
  }

  /** The numbers of all timers. */
  public Timers timers() {
    return timers;
  }

  /** What each thing costs. */
  public Prices prices() {
    return prices;
  }

  /** Causes of what a failed drive takes. */
  public Map<Cause.Context, Cause> driveCauses() {
    return driveCauses;
  }

  /** Causes of what is lost by a copy that has become unusable. */
  public Map<Cause.Context, Cause> spoilCauses(int copy) {
    for (ShockProcess each : shock) {
      if (each.kind() == ShockProcess.Kind.SPOIL && each.mayStrike(copy)) {
        return each.causes();
      }
    }
    throw new IllegalArgumentException("never becomes unusable: " + copy);
  }

  /** Causes of what a service loses. */
  public Map<Cause.Context, Cause> serviceCauses() {
    return serviceCauses;
  }
}
