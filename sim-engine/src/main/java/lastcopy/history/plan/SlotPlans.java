package lastcopy.history.plan;

import java.util.ArrayList;
import java.util.List;
import lastcopy.footage.ShootTable;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.random.SourceKey;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;

/** Compiles the slots of all copies, and gathers the batches that drives share. */
final class SlotPlans {

  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final double horizon;
  private final ShootTable evenShoots;
  private final double onHand;
  private final List<String> batches = new ArrayList<>();

  /**
   * No slots yet.
   *
   * @param evenShoots the shoots, or null if they come at random
   */
  SlotPlans(double horizon, ShootTable evenShoots, double onHand) {
    this.horizon = horizon;
    this.evenShoots = evenShoots;
    this.onHand = onHand;
  }

  SlotPlan[] of(CopyPlan[] copies) {
    List<SlotPlan> all = new ArrayList<>();
    for (CopyPlan copy : copies) {
      if (copy.stated().medium() instanceof Medium.DriveSet set) {
        addDrives(copy, set, all);
      } else {
        all.add(ofService(copy));
      }
    }
    return all.toArray(new SlotPlan[0]);
  }

  private void addDrives(CopyPlan copy, Medium.DriveSet set, List<SlotPlan> to) {
    double from = 0;
    for (int drive = 0; drive < copy.set().drives(); drive++) {
      double end = copy.set().shelf() ? from + set.model(drive).sizeBytes() : NEVER;
      to.add(ofSet(copy, set, drive, from, end));
      from = copy.set().shelf() ? end : 0;
    }
  }

  /** The names of the batches, in the order of their numbers. */
  List<String> batches() {
    return batches;
  }

  private SlotPlan ofSet(CopyPlan copy, Medium.DriveSet set, int drive, double from, double to) {
    DriveModel model = set.model(drive);
    double boughtAt = model.boughtAtHours();
    double replaceAt = set.replaceAtHours().orElse(NEVER);
    Law lifeOff = copy.rotates() ? model.failsOff().orElse(null) : null;
    long source = source(copy, drive);
    SlotPlan slot =
        new SlotPlan(
            copy.firstSlot() + drive,
            copy.index(),
            drive,
            set.kinds().indexOf(model),
            from,
            to,
            source,
            Draws.key(source, Draws.LIFE, 0),
            model.fails(),
            lifeOff,
            model.age(),
            boughtAt,
            replaceAt > boughtAt ? replaceAt : NEVER,
            entry(copy, drive, from),
            0,
            set.batch().map(Medium.Batch::name).map(this::batch).orElse(-1),
            set.batch().map(Medium.Batch::spread).orElse(0.0));
    return withFirstHazard(slot);
  }

  private SlotPlan ofService(CopyPlan copy) {
    Medium.Service paid = (Medium.Service) copy.stated().medium();
    long source = source(copy, 0);
    SlotPlan slot =
        new SlotPlan(
            copy.firstSlot(),
            copy.index(),
            0,
            0,
            0,
            NEVER,
            source,
            Draws.key(source, Draws.LIFE, 0),
            lawOf(paid.loses()),
            null,
            new Fixed(0),
            0,
            NEVER,
            0,
            0,
            -1,
            0);
    return withFirstHazard(slot);
  }

  private static long source(CopyPlan copy, int drive) {
    return SourceKey.of("drive", copy.name(), Integer.toString(drive));
  }

  private int batch(String name) {
    if (!batches.contains(name)) {
      batches.add(name);
    }
    return batches.indexOf(name);
  }

  /** The first drive of a shelf is there from the start, also where nothing is on hand. */
  private double entry(CopyPlan copy, int drive, double from) {
    if (!copy.set().shelf() || drive == 0 || from < onHand) {
      return 0;
    }
    return evenShoots == null ? Double.NaN : Plan.entry(evenShoots, from);
  }

  private SlotPlan withFirstHazard(SlotPlan s) {
    return new SlotPlan(
        s.index(),
        s.copy(),
        s.drive(),
        s.kind(),
        s.from(),
        s.to(),
        s.source(),
        s.firstKey(),
        s.life(),
        s.lifeOff(),
        s.age(),
        s.boughtAt(),
        s.replaceAt(),
        s.enters(),
        firstHazard(s),
        s.batch(),
        s.spread());
  }

  private double firstHazard(SlotPlan slot) {
    if (Double.isNaN(slot.enters()) || slot.isSwapped()) {
      return NEVER;
    }
    if (slot.enters() > 0) {
      return firstHazard(slot, slot.boughtAt());
    }
    return slot.age() instanceof Fixed fixed ? firstHazard(slot, fixed.hours()) : NEVER;
  }

  private double firstHazard(SlotPlan slot, double start) {
    double time = Math.max(0, horizon - slot.enters());
    double on = SlotPlan.hazard(slot.life(), start, time);
    return slot.lifeOff() == null ? on : on + SlotPlan.hazard(slot.lifeOff(), start, time);
  }

  private static Law lawOf(Rate rate) {
    return rate.strikes() ? new Exponential(1 / rate.perHour()) : new Never();
  }
}
