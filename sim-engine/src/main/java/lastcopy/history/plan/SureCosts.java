package lastcopy.history.plan;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import lastcopy.history.report.Account;
import lastcopy.history.report.Expense;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Costs;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Periodic;
import lastcopy.scenario.Units;

/**
 * What a layout costs if nothing fails, but for storage by the amount and planned swaps: drives as
 * they enter service, boxes, power, uplinks, all that comes by the clock, and costs of its own.
 * Drives of a shelf whose entry hangs on shoots that come at random are left out.
 */
final class SureCosts {

  private final Plan plan;
  private final Layout layout;
  private final Prices prices;
  private final Account account;

  SureCosts(Plan plan, Layout layout, Prices prices) {
    this.plan = plan;
    this.layout = layout;
    this.prices = prices;
    account = new Account(plan.horizon());
  }

  Account account() {
    for (int s = 0; s < plan.slots(); s++) {
      SlotPlan slot = plan.slot(s);
      if (!Double.isNaN(slot.enters())) {
        prices.enters(slot, slot.enters(), account);
      }
    }
    prices.boxes().forEach(this::box);
    for (int c = 0; c < plan.copies(); c++) {
      byTheClock(plan.copy(c));
    }
    double lines =
        layout.copies().stream()
            .flatMap(copy -> copy.feed().flatMap(Feed::uplink).stream())
            .distinct()
            .mapToDouble(line -> line.pricePerMonth().orElse(0) / Units.HOURS_PER_MONTH)
            .sum();
    account.payAlong(Expense.SERVICES, 0, plan.horizon(), lines);
    Costs others = layout.copies().stream().map(Copy::costs).reduce(layout.costs(), Costs::plus);
    account.pay(Expense.OTHER, 0, others.once());
    account.payAlong(Expense.OTHER, 0, plan.horizon(), others.perHour());
    return account;
  }

  private void box(Box box) {
    account.pay(Expense.BOXES, 0, box.price().orElse(0));
    account.payAlong(Expense.POWER, 0, plan.horizon(), prices.powerPerHour(box));
  }

  private void byTheClock(CopyPlan copy) {
    looks(copy.stated());
    copy.stated()
        .feed()
        .map(Feed::checkedEveryHours)
        .ifPresent(every -> each(clock(every), prices.look()));
    copy.stated()
        .spoils()
        .map(Copy.Spoils::triedEveryHours)
        .ifPresent(every -> each(clock(every), prices.trial()));
    if (copy.rotates()) {
      each(Stream.of(copy.visits().due()), prices.visit());
    }
  }

  /** A look for drives that sees the whole copy too is one look. */
  private void looks(Copy copy) {
    OptionalDouble drives = every(copy.repair().noticed());
    OptionalDouble whole = every(copy.repair().goneNoticed());
    boolean drivesToo = whole.isPresent() && drives.isPresent() && divides(whole, drives);
    boolean wholeToo = whole.isPresent() && drives.isPresent() && divides(drives, whole);
    each(clock(wholeToo || !drivesToo ? drives : OptionalDouble.empty()), prices.look());
    each(clock(wholeToo ? OptionalDouble.empty() : whole), prices.look());
  }

  private static boolean divides(OptionalDouble period, OptionalDouble of) {
    double times = of.getAsDouble() / period.getAsDouble();
    return Math.abs(times - Math.rint(times)) < 1e-9 * times;
  }

  private static OptionalDouble every(Delay delay) {
    return delay instanceof Delay.Looks looks
        ? OptionalDouble.of(looks.periodHours())
        : OptionalDouble.empty();
  }

  /** P, 2P, 3P and so on. */
  static Stream<Periodic> clock(OptionalDouble period) {
    return period.stream().mapToObj(every -> new Periodic(every, every));
  }

  /** Something is paid for at each instant up to and at the horizon. */
  private void each(Stream<Periodic> instants, double price) {
    instants.forEach(
        when -> {
          double before = 0;
          for (int year = 0; year < account.years() && price > 0; year++) {
            boolean last = year == account.years() - 1;
            double end = last ? Math.nextUp(plan.horizon()) : account.endOf(year);
            double count = when.countBefore(end);
            double at = year == 0 ? 0 : account.endOf(year - 1);
            account.pay(Expense.WORK, at, price * (count - before));
            before = count;
          }
        });
  }
}
