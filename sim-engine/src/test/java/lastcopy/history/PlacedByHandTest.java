package lastcopy.history;

import static lastcopy.history.Weighed.isMean;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.DriveSetBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

/**
 * What a biased history weighs in which something is put where it costs most, by hand: the ratio of
 * the density that it should have to the one that it has. All factors on hazards are 1, so that
 * nothing else weighs.
 *
 * <p>A far copy holds 100 bytes from the start and is never fed; the working copy has these and ten
 * more every 300 h. So of the starts of a block of ten in 100 + 10k bytes, those from 90 on, 10k of
 * 90 + 10k, cost something that only the working copy holds.
 */
class PlacedByHandTest {

  private static final double FOREVER = 1e9;
  private static final double HORIZON = 1_000;
  private static final int HISTORIES = 20_000;

  private static CopyBuilder lasting(String id) {
    return ByHand.copy(id, Arrangement.SINGLE, 1e6, FOREVER, FOREVER);
  }

  private static Copy neverFed(CopyBuilder far) {
    return far.fed(Feed.from("main").every(1e6).build()).build();
  }

  /** Drives of 40 bytes, of which the first dies at 100 h. */
  private static Copy shelf(String id) {
    DriveModel dies = DriveModel.builder("m", 40).fails(new Fixed(100)).build();
    DriveModel lives = DriveModel.builder("o", 40).fails(new Fixed(FOREVER)).build();
    Medium shelf = Medium.DriveSet.builder(Arrangement.SHELF, 3).ofEach(dies, lives, lives).build();
    return neverFed(Copy.builder(id).on(shelf).arrival(new Fixed(FOREVER)));
  }

  private static History biased(double shootsEvery, Desk desk, Copy... copies) {
    Footage footage =
        Footage.builder(new Shoots(shootsEvery, 10, Shoots.Spacing.EVEN))
            .onHand(100)
            .clip(1)
            .build();
    return Weighed.unraised(
        Studio.builder("s", HORIZON / Units.HOURS_PER_YEAR)
            .footage(footage)
            .desk(desk)
            .layout(new Layout("l", "l", List.of(copies), OptionalDouble.empty()))
            .build());
  }

  /**
   * Two deletions are expected, so that 0.15 of each are put. The far copy is a shelf of drives of
   * 40 bytes whose first dies at 100 h: from then on starts below 40 cost something too. A block
   * that costs something weighs 1/(0.85 + 0.15·all starts/those), any other 1/0.85, until the first
   * loss. Weighted losses of a first deletion between 300 and 600 h are as if none were put: of
   * starts below 100, ten bytes below 30, five in the mean from there to 40 and from 90 on, are 4.
   */
  @Test
  void aBlockThatIsPut() {
    Desk.Deletion deletion =
        new Desk.Deletion(new Rate(2 / HORIZON), new Desk.Bytes(10), new Fixed(1));
    History history = biased(300, Desk.of(deletion), lasting("main").build(), shelf("far"));
    SummaryStatistics weights = new SummaryStatistics();
    SummaryStatistics lost = new SummaryStatistics();
    for (int k = 0; k < HISTORIES; k++) {
      ToldHistory one = ToldHistory.of(history, k);
      double expected = 1;
      for (Happening each : one.untilALoss(Kind.DELETED)) {
        double shot = 10 * Math.floor(each.hours() / 300);
        double bad = shot + (each.hours() > 100 ? 40 : 0);
        double meets = one.lostAt(each.hours()) > 0 ? (90 + shot) / bad : 0;
        expected /= bad > 0 ? 0.85 + 0.15 * meets : 1;
      }
      assertThat(one.weight()).as("history %d", k).isCloseTo(expected, within(1e-9));
      weights.addValue(one.weight());
      List<Happening> deleted = one.all(Kind.DELETED);
      boolean counts = !deleted.isEmpty() && Math.ceil(deleted.get(0).hours() / 300) == 2;
      lost.addValue(counts ? one.weight() * one.lostAt(deleted.get(0).hours()) : 0);
    }
    isMean(1, weights);
    isMean(4 * (Math.exp(-0.6) - Math.exp(-1.2)), lost);
  }

  private static DriveModel lives(double hours) {
    return DriveModel.builder("m", 1e6).fails(new Fixed(hours)).build();
  }

  /** One of a mirror dies at 500 h, after the shoot of 300, and is whole again ten hours later. */
  private static History mirror(DriveSetBuilder mirror) {
    Medium set = mirror.ofEach(lives(500), lives(FOREVER)).rebuild(new Fixed(10)).build();
    return biased(300, Desk.QUIET, Copy.builder("main").on(set).build(), neverFed(lasting("far")));
  }

  /**
   * Of 110 bytes 1.5 clips of one byte cannot be read in the mean. In half of the histories one of
   * them is put to one of those ten of 109 starts that cost something, from 99 on: n clips of which
   * some do weigh 1/(½ + ½·109/10·some/n). Only those can be counted that do not overlap.
   */
  @Test
  void aBitThatCouldNotBeRead() {
    History history =
        mirror(Medium.DriveSet.builder(Arrangement.MIRROR, 2).readErrors(1.5 / (8 * 110)));
    SummaryStatistics weights = new SummaryStatistics();
    int several = 0;
    for (int k = 0; k < HISTORIES; k++) {
      ToldHistory one = ToldHistory.of(history, k);
      double bytes = one.all(Kind.UNREADABLE).stream().mapToDouble(Happening::bytes).sum();
      double n = Math.rint(bytes);
      if (Math.abs(bytes - n) < 1e-9) {
        double some = Math.ceil(one.lostAt(510) - 1e-9);
        double expected = n == 0 ? 1 : 1 / (0.5 + 0.5 * 109 / 10 * some / n);
        assertThat(one.weight()).as("%s of %s clips", some, n).isCloseTo(expected, within(1e-9));
        several += n > 1 && some > 0 ? 1 : 0;
      }
      weights.addValue(one.weight());
    }
    isMean(1, weights);
    assertThat(several).isPositive();
  }

  /**
   * A spot on each drive of the mirror has become unreadable by 50 h, so that one is met at 500 h.
   * It costs something at ten of 109 starts, and is put to one of these in half of the histories.
   */
  @Test
  void aDefectThatIsMet() {
    History history =
        mirror(Medium.DriveSet.builder(Arrangement.MIRROR, 2).latentDefects(new Fixed(50)));
    SummaryStatistics weights = new SummaryStatistics();
    SummaryStatistics lossy = new SummaryStatistics();
    for (int k = 0; k < HISTORIES / 10; k++) {
      ToldHistory one = ToldHistory.of(history, k);
      assertThat(one.all(Kind.UNREADABLE)).hasSize(1);
      boolean costs = one.lostAt(500) > 0;
      double expected = 1 / (0.5 + 0.5 * (costs ? 109 / 10.0 : 0));
      assertThat(one.weight()).as("history %d", k).isCloseTo(expected, within(1e-9));
      weights.addValue(one.weight());
      lossy.addValue(costs ? 1 : 0);
    }
    isMean(1, weights);
    isMean(0.5 + 0.5 * 10 / 109, lossy);
  }

  /**
   * The working copy dies at 500 h and is filled again from the far one, of whose bits 1.5 clips'
   * worth cannot be read in the mean. A third copy has lost the first 40 of its 100 bytes: clips
   * that start there, of 99, are lost.
   */
  @Test
  void aBitThatARefillCouldNotRead() {
    Medium bad =
        Medium.DriveSet.builder(Arrangement.SINGLE, 1)
            .of(lives(FOREVER))
            .readErrors(1.5 / 800)
            .build();
    Copy far = neverFed(Copy.builder("far").on(bad).restoresAt(1e9));
    Copy main = ByHand.copy("main", Arrangement.SINGLE, 1e6, 500, 10).build();
    History history = biased(FOREVER, Desk.QUIET, main, far, shelf("third"));
    SummaryStatistics weights = new SummaryStatistics();
    for (int k = 0; k < HISTORIES; k++) {
      ToldHistory one = ToldHistory.of(history, k);
      double bytes = one.all(Kind.UNREADABLE).stream().mapToDouble(Happening::bytes).sum();
      double n = Math.rint(bytes);
      if (Math.abs(bytes - n) < 1e-9) {
        double lost = one.all(Kind.LOST).stream().mapToDouble(Happening::bytes).sum();
        double some = Math.ceil(lost - 1e-9);
        double expected = n == 0 ? 1 : 1 / (0.5 + 0.5 * 99 / 40 * some / n);
        assertThat(one.weight()).as("%s of %s clips", some, n).isCloseTo(expected, within(1e-9));
      }
      weights.addValue(one.weight());
    }
    isMean(1, weights);
  }
}
