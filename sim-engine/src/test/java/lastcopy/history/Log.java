package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lastcopy.history.report.Account;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Expense;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;

/** Writes a history down, to hold it against another. */
final class Log implements Ledger {
  final List<double[]> losses = new ArrayList<>();
  final List<String> causes = new ArrayList<>();
  final double[] time = new double[6];
  final Map<Expense, Double> paid = new EnumMap<>(Expense.class);
  private final boolean wantsTime;

  Log() {
    this(true);
  }

  Log(boolean wantsTime) {
    this.wantsTime = wantsTime;
  }

  @Override
  public void lost(Loss loss) {
    losses.add(
        new double[] {
          loss.hours(), loss.bytes(), loss.shoots(), loss.shootsHit(), loss.everything() ? 1 : 0
        });
    causes.add(loss.cause().id());
  }

  @Override
  public void recovered(Cause cause, double work, double whole) {}

  @Override
  public void passed(
      double hours, double bare, double fragile, double down, double refill, double most) {
    time[0] += hours;
    time[1] += bare;
    time[2] += fragile;
    time[3] += down;
    time[4] += refill;
    time[5] = Math.max(time[5], most);
  }

  @Override
  public void paid(Account all) {
    for (Expense kind : Expense.values()) {
      paid.put(kind, IntStream.range(0, all.years()).mapToDouble(y -> all.of(kind, y)).sum());
    }
  }

  @Override
  public boolean wantsTime() {
    return wantsTime;
  }

  /** The same losses, as far as the other has written them down, but for rounding. */
  void assertSameLosses(Log other, String what) {
    assertThat(losses).as(what).hasSameSizeAs(other.losses);
    for (int i = 0; i < losses.size(); i++) {
      for (int j = 0; j < other.losses.get(i).length; j++) {
        double expected = other.losses.get(i)[j];
        assertThat(losses.get(i)[j]).as(what).isCloseTo(expected, within(1e-9 * expected));
      }
    }
  }

  /** The same losses, the same time bare and the same money, but for rounding. */
  void assertSame(Log other, String what) {
    assertSameLosses(other, what);
    for (int j = 0; j < time.length; j++) {
      double slack = 1e-5 + 1e-9 * other.time[j]; // a stretch of one kind is rounded to 1e-6 h
      assertThat(time[j]).as(what + " time " + j).isCloseTo(other.time[j], within(slack));
    }
    assertThat(paid.keySet()).as(what).isEqualTo(other.paid.keySet());
    paid.forEach(
        (kind, money) ->
            assertThat(money)
                .as(what + " " + kind)
                .isCloseTo(other.paid.get(kind), within(1e-6 + 1e-9 * money)));
  }
}
