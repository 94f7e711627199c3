package lastcopy.history.state;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.footage.PositionSet;
import lastcopy.history.course.RecordedCourse;
import lastcopy.history.state.CopyState.Condition;
import org.junit.jupiter.api.Test;

/** A history at an instant, by hand: 100 bytes on hand, 10 more every 30 h, kept for 50 h. */
class HistoryStateTest {

  private final HistoryState state = States.keptFor(50);
  private final CopyState far = state.copy(1);

  @Test
  void footageAgesOutShootByShoot() {
    assertThat(state.agedBy(49.9)).isZero();
    assertThat(state.agedBy(50)).as("what was on hand").isEqualTo(100);
    assertThat(state.agedBy(79.9)).isEqualTo(100);
    assertThat(state.agedBy(80)).isEqualTo(110);
    assertThat(state.agedBy(140)).isEqualTo(130);
    assertThat(States.keptFor(1e9).agedBy(8_000)).isZero();
  }

  @Test
  void offloadedIsWhatWasOnHandAndShot() {
    assertThat(state.offloadedBytes()).isEqualTo(100);
    state.offloaded(3);
    assertThat(state.offloadedBytes()).isEqualTo(130);
    assertThat(state.startBytes(state.working())).as("starts empty").isZero();
    assertThat(state.startBytes(far)).isEqualTo(100);
  }

  @Test
  void whatIsLostIsCounted() {
    PositionSet some = new PositionSet();
    some.add(10, 25);
    state.loses(some, 12); // three of them were lost before
    state.loses(some, 0);
    assertThat(state.lostBytes()).isEqualTo(12);
    assertThat(state.lost().bytes()).isEqualTo(15);
    state.clear(state.shoots());
    assertThat(state.lostBytes()).isZero();
    assertThat(state.lost().isEmpty()).isTrue();
  }

  @Test
  void allThatIsWrongAddsUp() {
    assertThat(state.wrongCopies()).isZero();
    far.driveFails(far.drives()[0]);
    assertThat(state.wrongCopies()).isEqualTo(1);
    state.copy(2).goes();
    assertThat(state.wrongCopies()).as("and a shelf, by one failure").isEqualTo(2);
    far.goes();
    assertThat(state.wrongCopies()).as("a mirror, by two").isEqualTo(3);
    far.comesBack();
    assertThat(state.wrongCopies()).as("not yet full").isEqualTo(3);
    far.isFilled();
    assertThat(state.wrongCopies()).isEqualTo(1);
  }

  /** A run from 40 on that began at 10 h: the mirror's link takes some time for 60 bytes. */
  @Test
  void onTheCourseACopyHoldsWhatTheCourseSays() {
    RecordedCourse course = new RecordedCourse(100, 100, 100);
    int first = course.append(10, 0, 0, 0);
    course.set(first, 1, 40, 100, 10);
    course.set(first, 2, 90, 90, 0);
    state.course(course);
    state.onCourse(true);
    state.clock().passTo(10);
    assertThat(state.heldBytes(far)).as("an entry counts after its instant").isEqualTo(100);
    double perHour = far.plan().way().bytesPerHour();
    state.clock().passTo(10 + 30 / perHour);
    assertThat(state.heldBytes(far)).isCloseTo(70, within());
    state.clock().passTo(20);
    assertThat(state.heldBytes(far)).isEqualTo(100);
    PositionSet lost = new PositionSet();
    lost.add(20, 50);
    lost.add(95, 120);
    state.loses(lost, 55);
    assertThat(state.heldBytes(far)).as("less 30 and the first 5 of 25").isEqualTo(65);
    assertThat(state.bareBytes()).as("not reckoned").isZero();
    state.clock().passTo(50);
    assertThat(state.heldBytes(far)).as("all on hand has aged").isZero();
    assertThat(state.heldBytes(state.copy(2)))
        .as("a shelf keeps it, less what is lost")
        .isEqualTo(60);
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-3);
  }

  @Test
  void offTheCourseACopyHoldsWhatHasArrived() {
    far.receives(0, 60, 0, 4, 0);
    state.clock().passTo(10);
    assertThat(state.heldBytes(far)).isEqualTo(40);
    assertThat(state.bareBytes()).isEqualTo(40);
    assertThat(state.now()).isEqualTo(10);
  }

  @Test
  void eachHasItsOwn() {
    assertThat(state.sourceOf(far)).isSameAs(state.working());
    assertThat(state.copyOf(state.drive(2))).isSameAs(far);
    assertThat(far.drives()).containsExactly(state.drive(1), state.drive(2));
    assertThat(state.drive(2).slot()).isEqualTo(2);
    assertThat(state.drive(2).plan().drive()).isEqualTo(1);
  }

  @Test
  void aDriveIsUnseenUntilSomebodyLooks() {
    DriveState drive = state.drive(1);
    drive.seenAt(30);
    assertThat(drive.isUnseen(20)).as("it is up").isFalse();
    drive.condition(DriveState.Condition.DOWN);
    assertThat(drive.isUp()).isFalse();
    assertThat(drive.isUnseen(20)).isTrue();
    assertThat(drive.isUnseen(30)).isFalse();
    drive.condition(DriveState.Condition.ORDERED);
    assertThat(drive.isUnseen(29)).isTrue();
    drive.condition(DriveState.Condition.FAILED);
    assertThat(drive.isUnseen(29)).isFalse();
    drive.isNew();
    assertThat(drive.isUp()).isTrue();
    assertThat(drive.generation()).isEqualTo(1);
  }

  @Test
  void aDriveCountsItsFailures() {
    DriveState drive = state.drive(1);
    assertThat(drive.countFailure()).isZero();
    assertThat(drive.repair()).isZero();
    assertThat(drive.countFailure()).isEqualTo(1);
    assertThat(drive.repair()).isEqualTo(1);
    drive.isNew();
    drive.condition(DriveState.Condition.DOWN);
    drive.enters(5);
    assertThat(drive.inService(4.9)).isFalse();
    assertThat(drive.inService(5)).isTrue();
    state.clear(state.shoots());
    assertThat(drive.isUp()).isTrue();
    assertThat(drive.generation()).isZero();
    assertThat(drive.countFailure()).isZero();
  }

  @Test
  void aCopyIsReadBareWithoutRedundancy() {
    assertThat(far.isReadBare()).isFalse();
    assertThat(far.isFragile()).isFalse();
    far.driveFails(far.drives()[0]);
    assertThat(far.isReadBare()).isTrue();
    assertThat(far.isFragile()).isTrue();
    assertThat(state.working().isReadBare()).isTrue();
    CopyState shelf = state.copy(2);
    assertThat(shelf.isUndisturbed()).isTrue();
    shelf.driveFails(shelf.drives()[0]);
    assertThat(shelf.isUndisturbed()).as("what a shelf has lost has to come back").isFalse();
    assertThat(shelf.isFragile()).as("each drive by itself").isTrue();
    shelf.isToBeFilled();
    assertThat(shelf.condition()).isEqualTo(Condition.REFILLING);
    shelf.driveIsBack(shelf.drives()[0]);
    shelf.isFilled();
    assertThat(shelf.condition()).isEqualTo(Condition.WHOLE);
  }

  /** Nobody knows that it is unusable, so it stays so when hardware comes. */
  @Test
  void whatIsSpoiltIsNotFilledByHardware() {
    far.takes(0, 9);
    far.spoils();
    assertThat(far.held().isEmpty()).isTrue();
    far.isToBeFilled();
    assertThat(far.condition()).isEqualTo(Condition.SPOILT);
    assertThat(far.isRefilling()).isTrue();
    assertThat(far.wrong()).isEqualTo(2);
    far.isFilled();
    assertThat(far.condition()).isEqualTo(Condition.SPOILT);
    assertThat(far.isRefilling()).isFalse();
    assertThat(far.isUndisturbed()).isFalse();
  }

  @Test
  void whatIsBarredIsNotTaken() {
    assertThat(far.canTake(5, 30)).isTrue();
    far.bars(10, 20);
    assertThat(far.canTake(5, 30)).isFalse();
    assertThat(far.canTake(12, 13)).isFalse();
    assertThat(far.canTake(5, 10)).isTrue();
    assertThat(far.canTake(20, 30)).isTrue();
    far.takesAgain(10, 15);
    assertThat(far.canTake(5, 15)).isTrue();
    assertThat(far.canTake(5, 16)).isFalse();
    far.goes();
    assertThat(far.barred().isEmpty()).isTrue();
    PositionSet but = new PositionSet();
    but.add(2, 4);
    far.receives(50, 60, 0, 1, 0);
    far.holds(30, but);
    assertThat(far.held().bytes()).isEqualTo(28);
    assertThat(far.flow().isGoing()).isFalse();
    but.add(0, 3);
    far.loses(but);
    assertThat(far.held().bytes()).isEqualTo(26);
  }

  /** Of 30 bytes that a refill brings, 20 were missing at the return and 5 of these are left. */
  @Test
  void aFeedKnowsWhatWasMissing() {
    FeedState feed = far.feed();
    PositionSet missing = new PositionSet();
    missing.add(0, 20);
    feed.comesBack();
    assertThat(feed.knowsWhatIsMissing()).isFalse();
    feed.isToBring(missing);
    missing.add(50, 60);
    feed.isToBring(missing);
    assertThat(feed.knowsWhatIsMissing()).isTrue();
    assertThat(feed.missing().bytes()).as("as the first run began").isEqualTo(20);
    PositionSet all = new PositionSet();
    all.add(0, 30);
    assertThat(feed.reads(all, false).bytes()).isEqualTo(30);
    assertThat(feed.reads(all, true).bytes()).isEqualTo(20);
    PositionSet left = new PositionSet();
    left.add(15, 30);
    assertThat(feed.hasRead(left).bytes()).isEqualTo(15);
  }

  @Test
  void aFeedStartsAnew() {
    FeedState feed = far.feed();
    feed.stopped(true);
    feed.visiting(true);
    feed.begins(true);
    assertThat(feed.countReading()).isZero();
    assertThat(feed.countReading()).isEqualTo(1);
    assertThat(feed.isStopped() && feed.isVisiting() && feed.isRefill()).isTrue();
    state.onCourse(true);
    state.offloaded(2);
    state.clear(state.shoots());
    assertThat(feed.isStopped() || feed.isVisiting() || feed.isRefill()).isFalse();
    assertThat(feed.countReading()).isZero();
    assertThat(state.onCourse()).isFalse();
    assertThat(state.offloaded()).isZero();
  }
}
