package lastcopy.cli.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Rows by hand, on pages that have room for all columns, for all but the first, and for none. */
class TableTest {

  private static final List<String> HEADS = List.of("Drive", "years", "of 100 fail\nat that age");

  private static String page(int width, int... columns) {
    Table table = new Table(new PageLook(width, false, false), HEADS, columns);
    return table.head()
        + table.row("desk-8tb", "3", "7 (5 to 9)")
        + table.row("", "4", "")
        + table.row("  shelf", "5", "8");
  }

  @Test
  void columnsStandBesideEachOtherWhereThereIsRoom() {
    assertThat(page(60, 30, 10, 20))
        .isEqualTo(
            """
            Drive                         years     of 100 fail
                                                    at that age
            ------------------------------------------------------------
            desk-8tb                      3         7 (5 to 9)
                                          4
              shelf                       5         8
            """);
    assertThat(page(200, 30, 10, 20).lines().skip(2).findFirst()).contains("-".repeat(80));
  }

  @Test
  void theFirstStandsAboveWhereTheOthersNeedTheRoom() {
    assertThat(page(60, 31, 10, 20))
        .isEqualTo(
            """
            Drive
              years     of 100 fail
                        at that age
            ------------------------------------------------------------
            desk-8tb
              3         7 (5 to 9)
              4
              shelf
                5         8
            """);
  }

  /** Two columns of 58 and the two that they stand in are just 60. */
  @Test
  void whatJustFitsIsNoList() {
    assertThat(page(60, 31, 38, 20)).contains("\ndesk-8tb\n  3" + " ".repeat(37) + "7 (5 to 9)\n");
    assertThat(page(60, 31, 39, 20)).contains("\ndesk-8tb\n  years");
  }

  /** All columns but the last are cut to what they have; of the last nothing is lost. */
  @Test
  void theLastCellIsNeverCut() {
    Table table = new Table(new PageLook(60, false, false), HEADS, 6, 3, 5);
    assertThat(table.row("desk-8tb", "3.75", "7 (5 to 9)")).isEqualTo("desk-~3.~7 (5 to 9)\n");
  }

  @Test
  void aNameAloneTakesOneLine() {
    Table broken = new Table(new PageLook(60, false, false), HEADS, 31, 10, 20);
    assertThat(broken.row("desk-8tb", "", "")).isEqualTo("desk-8tb\n");
    Table wide = new Table(new PageLook(80, false, false), HEADS, 31, 10, 20);
    assertThat(wide.row("desk-8tb", "", "")).isEqualTo("desk-8tb\n");
  }

  @Test
  void eachStandsBesideItsHeadWhereNothingElseFits() {
    assertThat(page(60, 20, 39, 20))
        .isEqualTo(
            """
            Drive
            ------------------------------------------------------------
            desk-8tb
              years                    3
              of 100 fail at that age  7 (5 to 9)
              years                    4
            shelf
              years                    5
              of 100 fail at that age  8
            """);
  }

  @Test
  void asManyWidthsAsHeads() {
    assertThatThrownBy(() -> page(60, 1, 2)).isInstanceOf(IllegalArgumentException.class);
  }
}
