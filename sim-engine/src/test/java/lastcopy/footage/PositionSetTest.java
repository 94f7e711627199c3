package lastcopy.footage;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PositionSetTest {

  /** [0, 10) and [20, 30) with [5, 6), [8, 22) and [40, 50), by hand. */
  @Test
  void whatTwoHaveInCommon() {
    PositionSet set = new PositionSet();
    set.add(0, 10);
    set.add(20, 30);
    PositionSet other = new PositionSet();
    other.add(5, 6);
    other.add(8, 22);
    other.add(40, 50);
    set.retainAll(other);
    PositionSet common = new PositionSet();
    common.add(5, 6);
    common.add(8, 10);
    common.add(20, 22);
    assertThat(set.size()).isEqualTo(common.size());
    for (int i = 0; i < set.size(); i++) {
      assertThat(set.from(i)).isEqualTo(common.from(i));
      assertThat(set.to(i)).isEqualTo(common.to(i));
    }
    set.retainAll(new PositionSet());
    assertThat(set.isEmpty()).isTrue();
  }
}
