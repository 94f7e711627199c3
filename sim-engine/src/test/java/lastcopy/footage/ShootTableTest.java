package lastcopy.footage;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.scenario.Footage;
import lastcopy.scenario.Shoots;
import org.junit.jupiter.api.Test;

class ShootTableTest {

  /** Pieces on hand are counted by division. Red if numbers of pieces have 32 bits. */
  @Test
  void footageOnHandMayBeManyShoots() {
    Shoots shoots = new Shoots(10, 40, Shoots.Spacing.EVEN);
    ShootTable table = ShootTable.even(Footage.builder(shoots).onHand(2e12).build(), 100);
    assertThat(table.unitOf(2e12 - 1)).isEqualTo(49_999_999_999L);
    assertThat(table.unitOf(2e12)).isEqualTo(50_000_000_000L);
    assertThat(table.unitOf(2e12 + 39)).isEqualTo(50_000_000_000L);
    assertThat(table.unitOf(2e12 + 40)).isEqualTo(50_000_000_001L);
  }
}
