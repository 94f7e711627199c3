package lastcopy.history.state;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import org.junit.jupiter.api.Test;

/** What three copies and the camera cards hold together, counted by hand. */
class HoldingsTest {

  private final HistoryState state = States.keptFor(1_000);
  private final Holdings all = state.holdings();
  private final CopyState main = state.copy(0);
  private final CopyState far = state.copy(1);
  private final CopyState shelf = state.copy(2);

  /** Intervals as their ends, one after the other. */
  private static PositionSet set(double... ends) {
    PositionSet set = new PositionSet();
    for (int i = 0; i < ends.length; i += 2) {
      set.add(ends[i], ends[i + 1]);
    }
    return set;
  }

  private static void is(Positions set, double... ends) {
    double[] seen = new double[2 * set.size()];
    for (int i = 0; i < set.size(); i++) {
      seen[2 * i] = set.from(i);
      seen[2 * i + 1] = set.to(i);
    }
    assertThat(seen).containsExactly(ends);
  }

  @Test
  void aRunBringsWhatTheTargetLacks() {
    main.gains(set(0, 100));
    far.gains(set(20, 40));
    far.bars(90, 95);
    assertThat(all.hours(far, main, 5, 3)).as("75 bytes").isEqualTo(15);
    assertThat(far.flow().isGoing()).isFalse();
    assertThat(far.flow().positions().isEmpty()).isTrue();
    assertThat(all.start(far, main, 5, 3)).isEqualTo(15);
    assertThat(far.flow().isFrom(0)).isTrue();
    assertThat(far.flow().isFrom(2)).isFalse();
    assertThat(far.flow().start()).isEqualTo(3);
    assertThat(far.flow().base()).isZero();
    all.bringAllTo(9);
    is(far.held(), 0, 50); // 20 of the 30 bytes were below what it had
    is(far.flow().positions(), 50, 90, 95, 100);
    assertThat(far.flow().endsAt(9)).isEqualTo(18);
    far.bringTo(8);
    is(far.held(), 0, 50);
    far.arrives();
    is(far.held(), 0, 90, 95, 100);
    assertThat(far.flow().isGoing()).isFalse();
    assertThat(all.start(far, main, 5, 20)).as("nothing is missing").isZero();
  }

  /** A source that is itself being filled gives what it has by then, and no more. */
  @Test
  void aRunReadsWhatItsSourceHasByThen() {
    main.receives(0, 60, 2, 10, 0);
    assertThat(all.start(far, main, 1, 4)).isEqualTo(40);
    is(main.held(), 0, 40);
    far.cuts();
    assertThat(far.flow().isGoing()).isFalse();
    is(far.held());
  }

  /** What is deleted and not noticed comes back to no working copy, but to any other. */
  @Test
  void onlyTheWorkingCopyIsBarredFromWhatWasDeleted() {
    far.gains(set(0, 100));
    all.blocked().add(10, 30);
    assertThat(all.hours(main, far, 1, 0)).isEqualTo(80);
    assertThat(all.hours(shelf, far, 1, 0)).isEqualTo(100);
  }

  /** A byte beside 1e16 that takes no time by the clock arrives at once. */
  @Test
  void whatTakesNoTimeArrivesAtOnce() {
    main.gains(set(0, 1));
    assertThat(all.start(far, main, 1, 1e17)).isZero();
    is(far.held(), 0, 1);
    assertThat(far.flow().isGoing()).isFalse();
  }

  @Test
  void whatAgesOutLeavesAllButAShelf() {
    for (CopyState each : state.copies()) {
      each.gains(set(0, 50));
      each.keeps(set(0, 5, 60, 70));
    }
    all.cards().add(0, 30);
    all.agesOut(20, 0);
    assertThat(all.aged()).isEqualTo(20);
    is(main.held(), 20, 50);
    is(main.kept(), 60, 70);
    is(shelf.held(), 0, 50);
    is(shelf.kept(), 0, 5, 60, 70);
    is(all.cards(), 20, 30);
    assertThat(all.hours(far, shelf, 1, 0)).as("has all that counts").isZero();
  }

  @Test
  void whatAnybodyHasIsTakenFromASet() {
    main.gains(set(0, 10));
    far.gains(set(10, 20));
    shelf.gains(set(20, 30));
    main.keeps(set(30, 40));
    all.cards().add(40, 50);
    PositionSet left = set(0, 60);
    all.removeHeld(left);
    is(left, 50, 60);
    PositionSet butTwo = set(0, 60);
    all.removeHeld(butTwo, main, shelf);
    is(butTwo, 0, 10, 20, 30, 50, 60); // what a copy keeps of a deletion counts all the same
  }

  @Test
  void bareIsWhatOneAloneHas() {
    main.gains(set(0, 50));
    far.gains(set(0, 30));
    far.keeps(set(70, 75));
    shelf.gains(set(0, 10, 40, 45));
    all.cards().add(48, 60);
    assertThat(all.onlyIn(main)).as("30 to 40 and 45 to 48").isEqualTo(13);
    assertThat(all.onlyIn(far)).isEqualTo(5);
    assertThat(all.onlyIn(shelf)).isZero();
    assertThat(all.onlyOnCards()).as("50 to 60").isEqualTo(10);
    assertThat(all.bareBytes()).isEqualTo(28);
    assertThat(all.lowestBare()).isEqualTo(30);
    far.gains(set(30, 48));
    assertThat(all.lowestBare()).isEqualTo(50);
    main.keeps(set(50, 60));
    assertThat(all.onlyOnCards()).isZero();
    assertThat(all.lowestBare()).isEqualTo(70);
    shelf.keeps(set(70, 75));
    assertThat(all.bareBytes()).isZero();
    assertThat(all.lowestBare()).isInfinite();
  }

  @Test
  void whatHasAgedOutIsNotBare() {
    shelf.gains(set(0, 50));
    all.cards().add(0, 60);
    all.agesOut(20, 0);
    assertThat(all.onlyOnCards()).isEqualTo(10);
    assertThat(all.onlyIn(shelf)).isZero();
    all.cards().clear();
    assertThat(all.onlyIn(shelf)).isEqualTo(30);
    assertThat(all.allEmpty()).isFalse();
    all.agesOut(50, 0);
    assertThat(all.allEmpty()).as("what is there has aged").isTrue();
    far.keeps(set(50, 51));
    assertThat(all.allEmpty()).isFalse();
    far.keepsNothing();
    all.cards().add(70, 80);
    assertThat(all.allEmpty()).as("cards do not matter").isTrue();
  }

  /** A front at 10 bytes an hour: until its own gap, or an end of what anybody else has. */
  @Test
  void oneKindLastsUntilAnEnd() {
    assertThat(all.hoursOfOneKind()).isInfinite();
    far.receives(20, 100, 0, 10, 0);
    assertThat(all.hoursOfOneKind()).isEqualTo(8);
    main.gains(set(0, 70));
    assertThat(all.hoursOfOneKind()).isEqualTo(5);
    shelf.keeps(set(60, 65));
    assertThat(all.hoursOfOneKind()).isEqualTo(4);
    all.cards().add(50, 55);
    assertThat(all.hoursOfOneKind()).isEqualTo(3);
    far.doesNotReceive(set(40, 45));
    assertThat(all.hoursOfOneKind()).isEqualTo(2);
    far.doesNotReceiveBelow(30);
    assertThat(all.hoursOfOneKind()).isEqualTo(1);
  }

  /**
   * A front at 10 an hour, 40 behind another at 2: they meet after 5 h, and never at equal speed.
   */
  @Test
  void aFrontCatchesUpWithASlowerOne() {
    far.receives(20, 100, 0, 10, 0);
    shelf.gains(set(0, 60));
    shelf.receives(60, 100, 0, 2, 0);
    assertThat(all.hoursOfOneKind()).isEqualTo(5);
    shelf.receives(60, 100, 0, 10, 0);
    assertThat(all.hoursOfOneKind()).as("its own ends, 80 and 40 bytes on").isEqualTo(4);
  }

  @Test
  void aPrefixMayBeOnItsWayLostOrAged() {
    PositionSet none = new PositionSet();
    assertThat(all.isPrefix(far, none, 0)).isTrue();
    assertThat(all.isPrefix(far, none, 10)).isFalse();
    far.gains(set(10, 40, 60, 80));
    assertThat(all.isPrefix(far, none, 80)).isFalse();
    assertThat(all.isPrefix(far, none, 0)).isFalse();
    far.receives(0, 10, 0, 1, 0);
    assertThat(all.isPrefix(far, set(40, 60), 80)).isTrue();
    assertThat(all.isPrefix(far, set(40, 60), 79)).isFalse();
    assertThat(all.isPrefix(far, set(40, 50), 80)).isFalse();
    far.cuts();
    all.agesOut(10, 0);
    assertThat(all.isPrefix(far, set(40, 60), 80)).as("what was below has aged").isTrue();
    assertThat(all.isPrefix(far, set(40, 60, 90, 95), 95)).isFalse();
    state.clear(state.shoots());
    assertThat(all.aged()).isZero();
    assertThat(all.isPrefix(far, none, 0)).isTrue();
  }

  @Test
  void theStartIsEmptyAgain() {
    far.gains(set(0, 10));
    far.keeps(set(10, 20));
    far.bars(20, 30);
    far.receives(0, 5, 0, 1, 0);
    all.blocked().add(0, 5);
    all.cards().add(0, 5);
    state.clear(state.shoots());
    is(far.held());
    is(far.kept());
    is(far.barred());
    is(all.blocked());
    is(all.cards());
    assertThat(far.flow().isGoing()).isFalse();
    assertThat(far.flow().positions().isEmpty()).isTrue();
  }
}
