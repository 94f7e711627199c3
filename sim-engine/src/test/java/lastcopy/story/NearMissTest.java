package lastcopy.story;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.history.report.Happening.Kind;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Layout;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Studios;
import org.junit.jupiter.api.Test;

/** Margins of histories made up by hand, worked out by hand. */
class NearMissTest {

  private static final double END = 1_000;
  private static final double NOT_KNOWN = Double.NaN;
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private static final Layout TWO =
      Studios.layout(
          "two",
          CopyMaker.set("main", Arrangement.MIRROR, 2),
          CopyMaker.set("far", Arrangement.SINGLE, 1).nightly("main", 2, 1e6));

  private static NearMiss nearest(Made made) {
    return NearMiss.nearest(TWO.copies(), made.moments(), END).orElseThrow();
  }

  private static final int[] ONE_DOWN = {1, 0};

  @Test
  void theOnlyCopyForAsLongAsTheOtherIsNotRefilled() {
    Made made =
        new Made(2)
            .at(100, Kind.COPY_GONE, 0, 150, 0, 9)
            .at(150, Kind.COPY_BACK, 0, NOT_KNOWN, 1, 9)
            .at(170, Kind.REFILLED, 0, NOT_KNOWN, 9, 9);
    assertThat(nearest(made)).isEqualTo(new NearMiss(0, 1, 9, 70, NEVER, 1));
  }

  @Test
  void withoutWordOfTheRefillTheReturnCountsAndWithoutEitherTheHorizon() {
    Made back =
        new Made(2)
            .at(100, Kind.COPY_GONE, 0, 150, 0, 9)
            .at(150, Kind.COPY_BACK, 0, NOT_KNOWN, 1, 9);
    assertThat(nearest(back).hours()).isEqualTo(50);
    assertThat(nearest(new Made(2).at(900, Kind.COPY_GONE, 0, 1_100, 0, 9)).hours()).isEqualTo(100);
  }

  /** The far copy is gone and the mirror whole: two failures away; then a drive of it: one. */
  @Test
  void fewerFurtherFailuresAreNearer() {
    Made made =
        new Made(2)
            .at(100, Kind.COPY_GONE, 1, 150, 9, 0)
            .at(120, Kind.DRIVE_FAILED, 0, 130, ONE_DOWN, 9, 0)
            .at(130, Kind.DRIVE_READY, 0, NOT_KNOWN, 9, 0)
            .at(150, Kind.COPY_BACK, 1, NOT_KNOWN, 9, 1)
            .at(400, Kind.REFILLED, 1, NOT_KNOWN, 9, 9);
    assertThat(nearest(made)).isEqualTo(new NearMiss(1, 0, 9, 10, NEVER, 1));
  }

  /** Both open: it is over when the first of the two is whole again. */
  @Test
  void theEarliestEndEndsIt() {
    Made made =
        new Made(2)
            .at(100, Kind.COPY_GONE, 1, 125, 9, 0)
            .at(120, Kind.DRIVE_FAILED, 0, 200, ONE_DOWN, 9, 0)
            .at(125, Kind.COPY_BACK, 1, NOT_KNOWN, ONE_DOWN, 9, 9)
            .at(126, Kind.REFILLED, 1, NOT_KNOWN, ONE_DOWN, 9, 9);
    assertThat(nearest(made).hours()).isEqualTo(6);
  }

  /** Of two alike, the one whose only copy was struck soonest after it was over. */
  @Test
  void aNarrowEscapeIsNearerThanALongWait() {
    Made made =
        new Made(2)
            .at(100, Kind.COPY_GONE, 0, 200, 0, 9)
            .at(200, Kind.REFILLED, 0, NOT_KNOWN, 9, 9)
            .at(500, Kind.COPY_GONE, 0, 510, 0, 9)
            .at(510, Kind.REFILLED, 0, NOT_KNOWN, 9, 9)
            .at(517, Kind.COPY_GONE, 1, 600, 9, 0)
            .at(600, Kind.REFILLED, 1, NOT_KNOWN, 9, 9);
    assertThat(nearest(made)).isEqualTo(new NearMiss(2, 1, 9, 10, 7, 1));
  }

  @Test
  void nothingStruckOrNothingInOneCopyIsNoPeril() {
    Made calm = new Made(2).at(0, Kind.START, -1, END, 9, 8).at(END, Kind.END, -1, END, 9, 9);
    assertThat(NearMiss.nearest(TWO.copies(), calm.moments(), END)).isEmpty();
    Made newest = new Made(2).at(50, Kind.DRIVE_FAILED, 0, 70, ONE_DOWN, 9, 8);
    assertThat(NearMiss.nearest(TWO.copies(), newest.moments(), END)).isEmpty();
    Made carried = new Made(2).at(50, Kind.DRIVE_FAILED, 0, 70, ONE_DOWN, 9, 9);
    assertThat(NearMiss.nearest(TWO.copies(), carried.moments(), END)).isEmpty();
  }
}
