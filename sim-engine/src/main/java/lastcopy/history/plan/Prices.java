package lastcopy.history.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.history.report.Account;
import lastcopy.history.report.Expense;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Priced;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/**
 * What each thing that may be paid for costs in a layout, by its number: compiled once. What the
 * scenario does not price costs nothing.
 */
public final class Prices {

  private static final double WATTS_OF_KW = 1_000;

  private final boolean any;
  private final Plan plan;
  private final double[] drive;
  private final double[] powerPerHour;
  private final List<Box> boxes;
  private final int[] box;
  private final double[] storedPerByteHour;
  private final int[] stores;
  private final double energyPerWattHour;
  private final double hourOfWork;
  private final Account sure;

  Prices(Plan plan, Layout layout) {
    this.plan = plan;
    Studio studio = plan.studio();
    any = Priced.in(studio);
    energyPerWattHour = studio.energyPerKwh().orElse(0) / WATTS_OF_KW;
    hourOfWork = studio.work().pricePerHour().orElse(0);
    drive = new double[plan.slots()];
    powerPerHour = new double[plan.slots()];
    for (int s = 0; s < drive.length; s++) {
      drive[s] = priceOf(plan.slot(s));
      powerPerHour[s] = powerOf(plan.slot(s));
    }
    boxes = layout.copies().stream().flatMap(copy -> copy.box().stream()).distinct().toList();
    box = new int[plan.copies()];
    storedPerByteHour = new double[plan.copies()];
    for (int c = 0; c < box.length; c++) {
      Copy copy = plan.copy(c).stated();
      box[c] = copy.box().map(boxes::indexOf).orElse(-1);
      storedPerByteHour[c] = storedPerByteHour(copy.medium());
    }
    stores = Arrays.stream(copies(plan)).filter(c -> storedPerByteHour[c] > 0).toArray();
    sure = new SureCosts(plan, layout, this).account();
  }

  private static int[] copies(Plan plan) {
    int[] all = new int[plan.copies()];
    Arrays.setAll(all, c -> c);
    return all;
  }

  private Optional<DriveModel> model(SlotPlan slot) {
    return plan.copyOf(slot).stated().driveSet().map(set -> set.model(slot.drive()));
  }

  private double priceOf(SlotPlan slot) {
    return model(slot).map(DriveModel::price).orElse(OptionalDouble.empty()).orElse(0);
  }

  private double powerOf(SlotPlan slot) {
    OptionalDouble watts = model(slot).map(DriveModel::powerWatts).orElse(OptionalDouble.empty());
    return watts.orElse(0) * energyPerWattHour;
  }

  private static double storedPerByteHour(Medium medium) {
    return medium instanceof Medium.Service service
        ? service.pricePerTbMonth().orElse(0) / Units.TB / Units.HOURS_PER_MONTH
        : 0;
  }

  /** Whether the studio prices anything. */
  public boolean any() {
    return any;
  }

  /** Money that is paid if nothing fails, but for storage by the amount. */
  public Account sure() {
    return sure;
  }

  /** What a new drive of a slot costs; 0 for a service. */
  public double drive(int slot) {
    return drive[slot];
  }

  /** What the first drive of a slot costs that enters service at a time. */
  double first(SlotPlan slot, double entry) {
    boolean owned = model(slot).filter(DriveModel::owned).isPresent();
    return owned && entry <= 0 ? 0 : drive[slot.index()];
  }

  /** The first drive of a slot enters service, and draws power from then on. */
  public void enters(SlotPlan slot, double entry, Account account) {
    if (entry <= plan.horizon()) {
      account.pay(Expense.DRIVES, entry, first(slot, entry));
      power(slot, entry, plan.horizon(), 1, account);
    }
  }

  /** Counts the power of a drive over a time, of a rotated one during its visits, so many times. */
  public void power(SlotPlan slot, double from, double to, int times, Account account) {
    double perHour = times * powerPerHour[slot.index()];
    Visits visits = plan.copyOf(slot).visits();
    if (perHour == 0 || visits == null) {
      account.payAlong(Expense.POWER, from, to, perHour);
      return;
    }
    for (double at = from; at < to; ) {
      double end = Math.min(to, account.endOf(account.yearOf(at)));
      double hours = visits.hoursBefore(end) - visits.hoursBefore(at);
      account.pay(Expense.POWER, at, perHour * hours);
      at = end;
    }
  }

  /** What the power of a drive of a slot costs in an hour. */
  public double powerPerHour(SlotPlan slot) {
    return powerPerHour[slot.index()];
  }

  /** What the power of a box costs in an hour. */
  double powerPerHour(Box of) {
    return of.powerWatts().orElse(0) * energyPerWattHour;
  }

  /** The boxes of a layout. */
  List<Box> boxes() {
    return boxes;
  }

  /** How many boxes. */
  public int boxCount() {
    return boxes.size();
  }

  /** The number of a copy's box; −1 if it has none. */
  public int boxOf(int copy) {
    return box[copy];
  }

  /** What a box costs. */
  public double box(int number) {
    return boxes.get(number).price().orElse(0);
  }

  /** The copies that are paid by the amount they hold. */
  public int[] stores() {
    return stores;
  }

  /** What a byte held by a copy costs in an hour. */
  public double storedPerByteHour(int copy) {
    return storedPerByteHour[copy];
  }

  /** What it costs to bring a byte back from a copy. */
  public double retrievalPerByte(int copy) {
    return plan.copy(copy).stated().medium() instanceof Medium.Service service
        ? service.retrievalPerTb().orElse(0) / Units.TB
        : 0;
  }

  /** What it costs to replace a drive, or to bring a copy back. */
  public double repair() {
    return hourOfWork * plan.studio().work().repairHours();
  }

  /** What a turn of a rotation costs. */
  public double visit() {
    return hourOfWork * plan.studio().work().visitHours();
  }

  /** What a look by the clock costs. */
  double look() {
    return hourOfWork * plan.studio().work().lookHours();
  }

  /** What it costs to try a restore. */
  public double trial() {
    return hourOfWork * plan.studio().work().trialHours();
  }
}
