package lastcopy.simulate;

import static lastcopy.simulate.Agreement.FEWER;
import static lastcopy.simulate.Agreement.agrees;
import static lastcopy.simulate.Agreement.agreesAsFarAsSeen;
import static lastcopy.simulate.Agreement.neverLoses;
import static lastcopy.simulate.Agreement.sameLosses;
import static lastcopy.simulate.Agreement.simulate;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import lastcopy.exact.LatentPair;
import lastcopy.exact.ParityGroup;
import lastcopy.exact.ScrubbedGroup;
import lastcopy.experiment.LayoutResult;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Unreadable spots that a rebuild or a refill meets; {@link Agreement} states N and alarm rate. */
class LatentDefectsTest {

  private static final double YEAR = 8_760;
  private static final Law SCRUB = new Weibull(3, 168, 6);

  /**
   * Base case of Elerath, Pecht, IEEE Trans. Computers 58(3), 2009 [from memory]: their double-disk
   * failures are our loss events, of a clip where a defect is met, of the copy where a drive is
   * down; a group that has lost its copy goes on empty, which takes less than a thousandth from the
   * expectation. Red if a defect after the failure counts, if each defect is an event, if a new
   * drive has the defect of the old, or if a scrub is forgotten.
   */
  @ParameterizedTest
  @CsvSource({"1,true,200000", "10,true,40000", "10,false,10000"})
  void doubleFailuresOfElerathAndPecht(int years, boolean scrubbed, long histories) {
    Law life = new Weibull(1.12, 461_386, 0);
    Law restore = new Weibull(2, 12, 6);
    Optional<Law> scrub = scrubbed ? Optional.of(SCRUB) : Optional.empty();
    double exact =
        new ScrubbedGroup(8, life, restore, 9_259, scrub)
            .expectedLosses(years * YEAR, years == 1 ? 1_460 : 7_300);
    CopyMaker group =
        CopyMaker.set("main", Arrangement.PARITY, 8)
            .life(life)
            .rebuild(restore)
            .latentDefects(new Exponential(9_259));
    scrub.ifPresent(group::scrub);
    agrees(simulate(Studios.archive(years * YEAR, group), histories).lossEvents(), exact);
  }

  /** The chain of a mirror. Red if two defects alone lose, or if a defect counts that came late. */
  @ParameterizedTest
  @CsvSource({"2000,50,4000,300,2000", "2000,400,1500,1500,2000", "1000,20,500,50,3000"})
  void mirror(double life, double repair, double toDefect, double toScrub, double hours) {
    double exact = new LatentPair(1 / life, 1 / repair, 1 / toDefect, 1 / toScrub).lossBy(hours);
    assertThat(exact).isBetween(0.1, 0.6);
    CopyMaker pair =
        CopyMaker.markov("main", Arrangement.MIRROR, 2, life, repair)
            .latentDefects(new Exponential(toDefect))
            .scrub(new Exponential(toScrub));
    agrees(simulate(Studios.archive(hours, pair), FEWER).anyLoss(), exact);
  }

  @Test
  void mirrorThatIsNeverScrubbed() {
    CopyMaker pair =
        CopyMaker.markov("main", Arrangement.MIRROR, 2, 4_000, 50)
            .latentDefects(new Exponential(3_000));
    agrees(
        simulate(Studios.archive(2_000, pair), FEWER).anyLoss(),
        new LatentPair(1.0 / 4_000, 1.0 / 50, 1.0 / 3_000, 0).lossBy(2_000));
  }

  /**
   * Every drive always has a defect and no second drive fails: parity loses at each first failure,
   * one event of a clip for each of the others.
   */
  @Test
  void aClipForEachDefect() {
    double life = 20_000;
    double hours = 2_000;
    CopyMaker group =
        CopyMaker.set("main", Arrangement.PARITY, 4)
            .life(new Exponential(life))
            .latentDefects(new Fixed(1e-6))
            .strain(0);
    LayoutResult result = simulate(Studios.vault(hours, group), FEWER);
    agrees(result.lossEvents(), 4 * hours / life);
    agreesAsFarAsSeen(result.bytesLost(), 4 * hours / life * 3 * Footage.DEFAULT_CLIP_BYTES);
  }

  /**
   * Sets that survive two, every drive with a defect: the second failure loses, as if they survived
   * one. Red if defects are met at the first failure, or only when the set is lost.
   */
  @ParameterizedTest
  @CsvSource({"MIRROR,3", "DOUBLE_PARITY,5"})
  void metWhenTheLastRedundancyGoes(Arrangement arrangement, int drives) {
    double exact = new ParityGroup(drives, 1, 1.0 / 2_000, 1.0 / 100).lossBy(1_000);
    CopyMaker set =
        CopyMaker.markov("main", arrangement, drives, 2_000, 100).latentDefects(new Fixed(1e-6));
    agrees(simulate(Studios.archive(1_000, set), FEWER).anyLoss(), exact);
  }

  /** While redundancy is left a defect costs nothing: double parity with one drive down at most. */
  @Test
  void redundancyReadsAroundDefects() {
    neverLoses(
        Studios.archive(
            4_000,
            CopyMaker.markov("main", Arrangement.DOUBLE_PARITY, 5, 1_500, 100)
                .latentDefects(new Fixed(1))
                .strain(0)));
  }

  /** A clip that another copy holds is put back. */
  @Test
  void anotherCopyHelpsOut() {
    neverLoses(
        Studios.archive(
            4_000,
            CopyMaker.markov("main", Arrangement.MIRROR, 2, 1_500, 100).latentDefects(new Fixed(1)),
            CopyMaker.service("far", Rate.NONE)
                .fed("main", new Feed.Continuous(), CopyMaker.AT_ONCE)));
  }

  /**
   * A refill from a single drive that has had a defect since an hour loses a clip each time: a
   * Poisson process from then on. Red if a defect is gone once it has been met.
   */
  @Test
  void refillMeetsTheDefectOfItsSource() {
    double life = 5_000;
    double from = 1_000;
    LayoutResult result =
        simulate(refilled(life, far(Arrangement.SINGLE, 1).latentDefects(new Fixed(from))), FEWER);
    agrees(result.anyLoss(), -Math.expm1(-(YEAR - from) / life));
    agrees(result.lossEvents(), (YEAR - from) / life);
    agreesAsFarAsSeen(result.bytesLost(), (YEAR - from) / life * Footage.DEFAULT_CLIP_BYTES);
  }

  /** A source with redundancy gives perfect data, and so does one with a helper. */
  @Test
  void refillFromPerfectData() {
    neverLoses(refilled(2_000, far(Arrangement.MIRROR, 2).latentDefects(new Fixed(10))));
    neverLoses(
        refilled(
            2_000,
            far(Arrangement.SINGLE, 1).latentDefects(new Fixed(10)),
            CopyMaker.service("third", Rate.NONE)
                .restores(1e15)
                .fed("main", new Feed.Continuous(), CopyMaker.AT_ONCE)));
  }

  /** Scrubbed at once, never arising, or on a drive without redundancy, defects are none. */
  @Test
  void limits() {
    Studio without = Studios.archive(2_000, mirror());
    Law often = new Exponential(100);
    sameLosses(without, Studios.archive(2_000, mirror().latentDefects(often).scrub(new Fixed(0))));
    sameLosses(without, Studios.archive(2_000, mirror().latentDefects(new Never())));
    Law life = new Exponential(9_000);
    sameLosses(
        Studios.archive(2_000, CopyMaker.single("main", life)),
        Studios.archive(2_000, CopyMaker.single("main", life).latentDefects(often)));
  }

  private static CopyMaker mirror() {
    return CopyMaker.markov("main", Arrangement.MIRROR, 2, 500, 50);
  }

  private static CopyMaker far(Arrangement arrangement, int drives) {
    return CopyMaker.set("far", arrangement, drives)
        .life(new Never())
        .fed("main", new Feed.Continuous(), CopyMaker.AT_ONCE);
  }

  private static Studio refilled(double meanLife, CopyMaker... sources) {
    CopyMaker main = CopyMaker.single("main", new Exponential(meanLife));
    return Studios.vault(YEAR, Studios.with(main, sources));
  }
}
