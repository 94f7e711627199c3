package lastcopy.history.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Money by year of 8,760 h, by hand, over two and a half years where nothing else is said. */
class AccountTest {

  private static final double YEAR = 8_760;

  private final Account account = new Account(2.5 * YEAR);

  /** A rounding beyond a whole number of years is no year more. */
  @ParameterizedTest
  @CsvSource({"1, 1", "4380, 1", "8760, 1", "8761, 2", "17520, 2", "17520.000001, 2", "21900, 3"})
  void theLastYearMayBeShorter(double horizon, int years) {
    assertThat(new Account(horizon).years()).isEqualTo(years);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "8759, 0", "8760, 1", "17519, 1", "17520, 2", "21900, 2"})
  void anInstantIsInItsYear(double hours, int year) {
    assertThat(account.yearOf(hours)).isEqualTo(year);
  }

  @Test
  void theHorizonIsInTheLastYear() {
    assertThat(new Account(2 * YEAR).yearOf(2 * YEAR)).isEqualTo(1);
    assertThat(new Account(YEAR / 2).yearOf(YEAR / 2)).isZero();
  }

  @Test
  void yearsEndAfterEachOther() {
    assertThat(account.endOf(0)).isEqualTo(YEAR);
    assertThat(account.endOf(1)).isEqualTo(2 * YEAR);
    assertThat(account.endOf(2)).isEqualTo(2.5 * YEAR);
  }

  private void paid(Account seen, Expense kind, double... byYear) {
    for (int year = 0; year < byYear.length; year++) {
      assertThat(seen.of(kind, year)).as("%s in %s", kind, year).isEqualTo(byYear[year]);
    }
  }

  @Test
  void whatIsPaidAtAnInstantIsOfItsYear() {
    account.pay(Expense.DRIVES, 10, 300);
    account.pay(Expense.DRIVES, YEAR, 200);
    account.pay(Expense.DRIVES, YEAR + 1, -50);
    account.pay(Expense.WORK, 2.5 * YEAR, 7);
    paid(account, Expense.DRIVES, 300, 150, 0);
    paid(account, Expense.WORK, 0, 0, 7);
    paid(account, Expense.POWER, 0, 0, 0);
    assertThat(account.total()).isEqualTo(457);
  }

  /** 2 an hour from a quarter of the first year to a quarter of the third. */
  @Test
  void whatIsPaidAlongIsSharedByYears() {
    account.payAlong(Expense.POWER, .25 * YEAR, 2.25 * YEAR, 2);
    paid(account, Expense.POWER, 1.5 * YEAR, 2 * YEAR, .5 * YEAR);
    account.payAlong(Expense.OTHER, YEAR, YEAR + 5, 3);
    paid(account, Expense.OTHER, 0, 15, 0);
    account.payAlong(Expense.BOXES, 40, 40, 3);
    paid(account, Expense.BOXES, 0, 0, 0);
    account.payAlong(Expense.SERVICES, 0, 2.5 * YEAR, 1);
    paid(account, Expense.SERVICES, YEAR, YEAR, YEAR / 2);
    assertThat(account.total()).isCloseTo(4 * YEAR + 15 + 2.5 * YEAR, within(1e-9));
  }

  @Test
  void accountsAddUp() {
    account.pay(Expense.DRIVES, 10, 300);
    Account other = account.empty();
    assertThat(other.total()).isZero();
    assertThat(other.years()).isEqualTo(3);
    other.pay(Expense.DRIVES, 10, 20);
    other.pay(Expense.WORK, 2 * YEAR, 5);
    account.add(other);
    paid(account, Expense.DRIVES, 320, 0, 0);
    paid(account, Expense.WORK, 0, 0, 5);
    assertThat(other.total()).as("is as it was").isEqualTo(25);
    account.copyFrom(other);
    paid(account, Expense.DRIVES, 20, 0, 0);
    other.pay(Expense.DRIVES, 10, 1);
    assertThat(account.total()).as("a copy of its own").isEqualTo(25);
  }

  @Test
  void expensesHaveStableNames() {
    assertThat(Expense.values())
        .extracting(Expense::id)
        .containsExactly("drives", "boxes", "services", "power", "work", "other");
  }
}
