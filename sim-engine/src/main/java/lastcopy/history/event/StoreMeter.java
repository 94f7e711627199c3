package lastcopy.history.event;

import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.footage.ShootTable;
import lastcopy.history.course.RecordedCourse;
import lastcopy.history.course.StoredHours;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.Prices;
import lastcopy.history.report.Account;
import lastcopy.history.report.Expense;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.Flow;
import lastcopy.history.state.HistoryState;

/**
 * Storage that is paid by the amount held and the time: on the undisturbed course from a table, off
 * it piece by piece, each of which what is on its way makes grow evenly. What is kept of deleted
 * footage is paid too, and so is what became unusable, until that is found.
 */
final class StoreMeter {

  private final HistoryState state;
  private final Plan plan;
  private final Prices prices;
  private final Account account;
  private final StoredHours[] undisturbed;

  private final PositionSet scratch = new PositionSet();

  StoreMeter(HistoryState state, Account account) {
    this.state = state;
    this.account = account;
    plan = state.plan();
    prices = plan.prices();
    undisturbed = new StoredHours[plan.copies()];
  }

  /** The course is recorded, and its shoots are those of every history. */
  void courseIsKnown(RecordedCourse course) {
    for (int c : prices.stores()) {
      undisturbed[c] = new StoredHours(course, plan.copy(c), state::agedBy);
    }
  }

  /** Time passes, in which what is held changes evenly or by the course. */
  void passed(double from, double to) {
    if (prices.stores().length == 0) {
      return;
    }
    if (state.onCourse()) {
      undisturbedPassed(from, to, state.lost(), account);
      return;
    }
    for (int c : prices.stores()) {
      disturbedPassed(state.copy(c), from, to);
    }
  }

  /** A stretch on the course, less what is lost. */
  void undisturbedPassed(double from, double to, Positions lost, Account into) {
    for (double at = from; at < to; ) {
      double end = Math.min(to, into.endOf(into.yearOf(at)));
      double less = lostHours(lost, at, end);
      for (int c : prices.stores()) {
        double held = undisturbed[c].until(end) - undisturbed[c].until(at) - less;
        into.pay(Expense.SERVICES, at, prices.storedPerByteHour(c) * Math.max(0, held));
      }
      at = end;
    }
  }

  /** On the course every copy has had all that is lost, so that none of it is still to come. */
  private double lostHours(Positions lost, double from, double to) {
    if (plan.keepHours() == Double.POSITIVE_INFINITY) {
      return lost.bytes() * (to - from);
    }
    double sum = 0;
    for (int i = 0; i < lost.size(); i++) {
      sum += untilAged(lost.from(i), lost.to(i), from, to);
    }
    return sum;
  }

  private double untilAged(double first, double last, double from, double to) {
    ShootTable shoots = state.shoots();
    double sum = 0;
    double until = Math.min(to, plan.keepHours());
    sum += Math.max(0, Math.min(last, shoots.onHand()) - first) * Math.max(0, until - from);
    int k = first < shoots.onHand() ? 0 : shoots.shootOf(first);
    for (; k < shoots.count() && shoots.start(k) < last; k++) {
      double bytes = Math.min(last, shoots.end(k)) - Math.max(first, shoots.start(k));
      double ages = Math.min(to, shoots.time(k) + plan.keepHours());
      sum += bytes * Math.max(0, ages - from);
    }
    return sum;
  }

  private void disturbedPassed(CopyState copy, double from, double to) {
    double held = bytes(copy);
    Flow flow = copy.flow();
    double comes = flow.isGoing() ? flow.positions().bytes() : 0;
    double price = prices.storedPerByteHour(copy.index());
    for (double at = from; at < to; ) {
      double end = Math.min(to, account.endOf(account.yearOf(at)));
      double more =
          comes > 0
              ? StoredHours.brought(comes, flow.perHour(), end - from)
                  - StoredHours.brought(comes, flow.perHour(), at - from)
              : 0;
      account.pay(Expense.SERVICES, at, price * (held * (end - at) + more));
      at = end;
    }
  }

  private double bytes(CopyState copy) {
    if (copy.kept().isEmpty()) {
      return copy.believed().bytes();
    }
    scratch.copyFrom(copy.believed());
    scratch.addAll(copy.kept());
    return scratch.bytes();
  }
}
