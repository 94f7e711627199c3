package lastcopy.simulate;

import static lastcopy.simulate.Agreement.FEWER;
import static lastcopy.simulate.Agreement.agrees;
import static lastcopy.simulate.Agreement.agreesAsFarAsSeen;
import static lastcopy.simulate.Agreement.neverLoses;
import static lastcopy.simulate.Agreement.sameLosses;
import static lastcopy.simulate.Agreement.simulate;
import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.exact.ParityGroup;
import lastcopy.exact.UnreadableRebuilds;
import lastcopy.experiment.LayoutResult;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Never;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bits that a rebuild or a refill cannot read; {@link Agreement} states N and alarm rate. */
class ReadErrorsTest {

  private static final double YEAR = 8_760;
  private static final double DRIVE = 8 * Units.TB;

  /**
   * A rebuild of a full set that ends without redundancy reads n − m whole drives. Red if it reads
   * one drive of a parity set, or all n − 1; if bits are taken for bytes; or if one that ends with
   * redundancy left pays.
   */
  @ParameterizedTest
  @CsvSource({
    "MIRROR,2,1000,50,2000,2e-15",
    "MIRROR,3,300,100,1000,1e-14",
    "PARITY,5,4000,60,2000,1e-15",
    "DOUBLE_PARITY,5,2000,100,2000,1e-14"
  })
  void rebuilds(
      Arrangement arrangement, int drives, double life, double repair, double hours, double bit) {
    int survives = arrangement.survives(drives);
    double chance = UnreadableRebuilds.unreadable((drives - survives) * DRIVE, bit);
    ParityGroup group = new ParityGroup(drives, survives, 1 / life, 1 / repair);
    double exact = new UnreadableRebuilds(group, chance).lossBy(hours);
    assertThat(exact).isBetween(1.1 * group.lossBy(hours), 0.8);
    CopyMaker set =
        CopyMaker.markov("main", arrangement, drives, life, repair)
            .driveBytes(DRIVE)
            .readErrors(bit);
    agrees(simulate(holding((drives - survives) * DRIVE, hours, set), FEWER).anyLoss(), exact);
  }

  /**
   * What a set holds is all that can be lost, however many drives it has and however large they
   * are, whether a rebuild reads them whole or the part in use. Red if empty space counts.
   */
  @ParameterizedTest
  @CsvSource({"MIRROR,2,ALL", "PARITY,5,ALL", "MIRROR,2,USED", "PARITY,5,USED"})
  void emptySpaceCostsNothing(Arrangement arrangement, int drives, Rebuild.Reads reads) {
    double chance = UnreadableRebuilds.unreadable(Units.TB, 3e-14);
    ParityGroup group = new ParityGroup(drives, 1, 1.0 / 5_000, 1.0 / 50);
    CopyMaker set =
        CopyMaker.markov("main", arrangement, drives, 5_000, 50)
            .driveBytes(DRIVE)
            .readErrors(3e-14)
            .reads(reads);
    agrees(
        simulate(Studios.archive(4_000, set), FEWER).anyLoss(),
        new UnreadableRebuilds(group, chance).lossBy(4_000));
  }

  /**
   * Ten drives of 16 TB in parity at 1.5 % a year, down for three days on average, over five years:
   * full, four of ten studios lose something by a bit that cannot be read; with 10 GB in it hardly
   * any, and those by two drives.
   */
  @ParameterizedTest
  @CsvSource({"144000,0.40,0.41", "10,0.0008,0.001"})
  void aLargeSetThatHoldsLittle(double gigabytes, double least, double most) {
    double life = -YEAR / Math.log1p(-0.015);
    double chance = UnreadableRebuilds.unreadable(gigabytes * Units.GB, 1e-15);
    ParityGroup group = new ParityGroup(10, 1, 1 / life, 1.0 / 72);
    double exact = new UnreadableRebuilds(group, chance).lossBy(5 * YEAR);
    assertThat(exact).isBetween(least, most);
    CopyMaker set =
        CopyMaker.markov("main", Arrangement.PARITY, 10, life, 72)
            .driveBytes(16 * Units.TB)
            .readErrors(1e-15);
    agrees(simulate(holding(gigabytes * Units.GB, 5 * YEAR, set)).anyLoss(), exact);
  }

  /**
   * A shoot that comes while the one rebuild goes on that ends in time: a whole drive is read to
   * its end, so that the shoot counts; the part in use is that of its start. A drive fails in the
   * first half of the time, no other while it is down (strain 0), and its rebuild takes half. Red
   * if either takes the bytes of the other instant.
   */
  @ParameterizedTest
  @CsvSource({"ALL,4", "USED,1"})
  void whenBytesAreCounted(Rebuild.Reads reads, double terabytes) {
    double half = 1_000;
    CopyMaker mirror =
        CopyMaker.set("main", Arrangement.MIRROR, 2)
            .life(new Exponential(2_000))
            .rebuild(new Fixed(half))
            .strain(0)
            .readErrors(3e-14)
            .reads(reads);
    Footage footage = Studios.shooting(Units.TB, half, 3 * Units.TB, 0);
    double exact =
        -Math.expm1(-2 * half / 2_000) * UnreadableRebuilds.unreadable(terabytes * Units.TB, 3e-14);
    agrees(
        simulate(Studios.of(2 * half, footage, Studios.layout("only", mirror)), FEWER).anyLoss(),
        exact);
  }

  /**
   * With no second failure (strain 0) drives alternate: rebuilds end with the chain of two states,
   * and each costs a mean of 8·B·e clips. Red if a rebuild costs one clip at most.
   */
  @Test
  void aClipForEachError() {
    double fails = 2.0 / 1_000;
    double ends = 1.0 / 50;
    double rate = fails + ends;
    double hours = 4_000;
    double rebuilds = ends * fails / rate * (hours + Math.expm1(-rate * hours) / rate);
    double clips = 8 * DRIVE * 2e-14;
    CopyMaker mirror =
        CopyMaker.markov("main", Arrangement.MIRROR, 2, 1_000, 50)
            .driveBytes(DRIVE)
            .readErrors(2e-14)
            .strain(0);
    LayoutResult result = simulate(holding(DRIVE, hours, mirror), FEWER);
    agrees(result.lossEvents(), rebuilds * -Math.expm1(-clips));
    agreesAsFarAsSeen(result.bytesLost(), rebuilds * clips * Footage.DEFAULT_CLIP_BYTES);
  }

  /** One drive of a double parity set down at most: nothing that it cannot read costs anything. */
  @Test
  void redundancyReadsAroundErrors() {
    neverLoses(
        Studios.archive(
            4_000,
            CopyMaker.markov("main", Arrangement.DOUBLE_PARITY, 5, 1_500, 100)
                .driveBytes(DRIVE)
                .readErrors(1e-10)
                .strain(0)));
  }

  /** Another copy puts back what a rebuild could not read. */
  @Test
  void anotherCopyHelpsOut() {
    neverLoses(
        Studios.archive(
            4_000,
            CopyMaker.markov("main", Arrangement.MIRROR, 2, 1_500, 100)
                .driveBytes(DRIVE)
                .readErrors(1e-12),
            safe("far")));
  }

  /**
   * Each failure of the working copy costs a refill from one far drive: a thinned Poisson process.
   * Red if the refill reads whole drives, or with the errors of its target.
   */
  @Test
  void refills() {
    double life = 5_000;
    double bit = 5e-17;
    double chance = UnreadableRebuilds.unreadable(Studios.VAULT_BYTES, bit);
    CopyMaker main = CopyMaker.single("main", new Exponential(life)).readErrors(2e-16);
    LayoutResult result = simulate(Studios.vault(YEAR, main, far(1).readErrors(bit)), FEWER);
    agrees(result.anyLoss(), -Math.expm1(-chance * YEAR / life));
    agrees(result.lossEvents(), chance * YEAR / life);
    double clips = 8 * Studios.VAULT_BYTES * bit * YEAR / life;
    agreesAsFarAsSeen(result.bytesLost(), clips * Footage.DEFAULT_CLIP_BYTES);
  }

  /** A fed copy that was gone is brought back through its feed and pays the same. */
  @Test
  void bringingBackAFedCopy() {
    double life = 5_000;
    double chance = UnreadableRebuilds.unreadable(Studios.VAULT_BYTES, 5e-17);
    CopyMaker main = CopyMaker.single("main", new Never()).readErrors(5e-17);
    LayoutResult result =
        simulate(Studios.vault(YEAR, main, far(1).life(new Exponential(life))), FEWER);
    agrees(result.anyLoss(), -Math.expm1(-chance * YEAR / life));
  }

  /**
   * A drive of a fed shelf dies at 102 h and is back at once, while an ordinary run that began at
   * 101 h goes on until 111 h; the next, from 125 h on, brings the drive back and pays for a
   * terabyte. Red if the ordinary run pays, or ends what brings the drive back.
   */
  @Test
  void anOrdinaryRunThatWasGoingOnBringsNothingBack() {
    Footage footage = Studios.shooting(Units.TB, 100, Units.TB / 2, 0);
    CopyMaker main = CopyMaker.single("main", new Never()).readErrors(1e-13);
    CopyMaker far =
        CopyMaker.set("far", Arrangement.SHELF, 2)
            .driveBytes(Units.TB)
            .life(new Fixed(102))
            .fed("main", new Feed.Every(24, 5), Units.TB / 20 / 3_600);
    agrees(
        simulate(Studios.of(180, footage, Studios.layout("only", main, far)), FEWER).anyLoss(),
        UnreadableRebuilds.unreadable(Units.TB, 1e-13));
  }

  /** Redundant sources, helpers, and ordinary runs pay nothing. */
  @Test
  void whatPaysNothing() {
    CopyMaker main = CopyMaker.single("main", new Exponential(2_000));
    neverLoses(Studios.vault(YEAR, main, far(2).readErrors(1e-14)));
    neverLoses(Studios.vault(YEAR, main, far(1).readErrors(1e-14), safe("third").restores(1e18)));
    CopyMaker source = CopyMaker.single("main", new Never()).readErrors(1e-14);
    neverLoses(Studios.vault(YEAR, source, far(1).startsEmpty()));
  }

  /** A drive that nothing is read from has no errors to pay for. */
  @Test
  void limits() {
    Studio without = Studios.archive(YEAR, CopyMaker.single("main", new Exponential(9_000)));
    CopyMaker drive = CopyMaker.single("main", new Exponential(9_000)).readErrors(1e-10);
    sameLosses(without, Studios.archive(YEAR, drive));
  }

  private static Studio holding(double bytes, double hours, CopyMaker... copies) {
    return Studios.of(hours, Studios.onHand(bytes), Studios.layout("only", copies));
  }

  private static CopyMaker far(int drives) {
    return CopyMaker.set("far", drives == 1 ? Arrangement.SINGLE : Arrangement.MIRROR, drives)
        .life(new Never())
        .fed("main", new Feed.Continuous(), CopyMaker.AT_ONCE);
  }

  private static CopyMaker safe(String id) {
    return CopyMaker.service(id, Rate.NONE).fed("main", new Feed.Continuous(), CopyMaker.AT_ONCE);
  }
}
