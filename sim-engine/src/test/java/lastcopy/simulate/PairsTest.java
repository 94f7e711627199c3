package lastcopy.simulate;

import static lastcopy.simulate.Agreement.agrees;
import static lastcopy.simulate.Agreement.rarely;
import static lastcopy.simulate.Agreement.sameLosses;
import static lastcopy.simulate.Agreement.simulate;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.DoubleStream;
import lastcopy.exact.ClassicFormulas;
import lastcopy.exact.RepairablePair;
import lastcopy.exact.UnlikeSet;
import lastcopy.experiment.LayoutResult;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Mirrored pairs; {@link Agreement} states N and alarm rate.
 *
 * <p>Seen red: a set of pairs that is gone when any two drives are down; strain on all drives of
 * the set instead of the partner; a rebuild that reads the whole set instead of the partner.
 */
class PairsTest {

  private static final double ONE_LOSS = 1e-15;

  /** k pairs are k mirrors of two, of which each takes all: 1 − (1 − p)^k. */
  @ParameterizedTest
  @CsvSource({"2,1000,50,1000", "4,2000,50,1500", "12,5000,60,1000", "40,20000,100,2000"})
  void productOfPairs(int drives, double life, double repair, double hours) {
    double pair = new RepairablePair(1 / life, 1 / repair).lossBy(hours);
    double exact = 1 - Math.pow(1 - pair, drives / 2.0);
    assertThat(exact).isBetween(0.01, 0.6);
    CopyMaker pairs = CopyMaker.markov("main", Arrangement.PAIRS, drives, life, repair);
    agrees(simulate(Studios.archive(hours, pairs)).anyLoss(), exact);
  }

  /** Unlike drives in the order listed, the partner strained, against the whole chain. */
  @ParameterizedTest
  @CsvSource({
    "'1000,1000,1000,1000',50,1000,4",
    "'500,8000,500,8000',60,3000,1",
    "'500,500,8000,8000',60,1000,1",
    "'700,3000,1500,9000,800,20000',70,1500,3"
  })
  void chainOfPairs(String lives, double repair, double hours, double strain) {
    double[] mean = UnlikeDrivesTest.numbers(lives);
    List<Double> rates = DoubleStream.of(mean).mapToObj(life -> 1 / life).toList();
    double exact = new UnlikeSet(rates, 1 / repair, 2, 1, strain).lossBy(hours);
    assertThat(exact).isBetween(0.05, 0.6);
    CopyMaker pairs =
        CopyMaker.set("main", Arrangement.PAIRS, mean.length)
            .lives(mean)
            .rebuild(new Exponential(repair))
            .strain(strain);
    agrees(simulate(Studios.archive(hours, pairs)).anyLoss(), exact);
  }

  /**
   * A textbook's exercise: three disks, each with a mirror, lives exponential with 0.025 a month,
   * nothing repaired: R(t) = (1 − (1 − e^(−0.025 t))²)³ (an exercise on parallel and series systems
   * set in courses on probability; the problem's text read, the formula by hand).
   */
  @ParameterizedTest
  @ValueSource(doubles = {6, 24})
  void threePairsOfATextbook(double months) {
    double down = -Math.expm1(-0.025 * months);
    double exact = 1 - Math.pow(1 - down * down, 3);
    CopyMaker pairs =
        CopyMaker.set("main", Arrangement.PAIRS, 6)
            .life(new Exponential(Units.HOURS_PER_MONTH / 0.025))
            .neverReplaced();
    agrees(simulate(Studios.archive(months * Units.HOURS_PER_MONTH, pairs)).anyLoss(), exact);
  }

  /**
   * Pairs and parity at equal room, as published: for 100 disks of data, 30,000 h a disk and 1 h to
   * repair, Patterson, Gibson, Katz (SIGMOD 1988, from memory) print 4,500,000 h to the loss of
   * mirrored disks and 820,000 h with one check disk for each ten. So ten disks of data last ten
   * times as long: twenty drives in pairs, eleven with parity, 5.5 times apart.
   */
  @Test
  void pairsAndParityAtEqualRoom() {
    double mirrored = 10 * 4_500_000;
    double parity = 10 * 820_000;
    assertThat(ClassicFormulas.patterson(30_000, 1, 10, 1, 1)).isBetween(44.9e6, 45.1e6);
    double tenYears = 87_600;
    LayoutResult pairs = rare(Arrangement.PAIRS, 20, tenYears);
    LayoutResult group = rare(Arrangement.PARITY, 11, tenYears);
    // Printed to two digits, so within a hundredth, beside a standard error of 0.7 %.
    assertThat(pairs.anyLoss().value() * mirrored / tenYears).isBetween(0.96, 1.04);
    assertThat(group.anyLoss().value() * parity / tenYears).isBetween(0.96, 1.04);
    assertThat(group.anyLoss().value() / pairs.anyLoss().value()).isBetween(5.2, 5.8);
  }

  private static LayoutResult rare(Arrangement arrangement, int drives, double hours) {
    return rarely(
        Studios.archive(hours, CopyMaker.markov("main", arrangement, drives, 30_000, 1)), 20_000);
  }

  /** One pair is a mirror of two, to the last digit, whatever else befalls it. */
  @Test
  void onePairIsAMirrorOfTwo() {
    sameLosses(weekly(wearing(Arrangement.MIRROR)), weekly(wearing(Arrangement.PAIRS)));
    sameLosses(
        weekly(wearing(Arrangement.MIRROR).strain(3).batch("spring", 0.5)),
        weekly(wearing(Arrangement.PAIRS).strain(3).batch("spring", 0.5)));
    sameLosses(
        weekly(wearing(Arrangement.MIRROR).readErrors(ONE_LOSS).latentDefects(spots())),
        weekly(wearing(Arrangement.PAIRS).readErrors(ONE_LOSS).latentDefects(spots())));
    assertThat(rarely(rareOf(Arrangement.PAIRS), 4_000).anyLoss())
        .isEqualTo(rarely(rareOf(Arrangement.MIRROR), 4_000).anyLoss());
  }

  private static Exponential spots() {
    return new Exponential(2_000);
  }

  private static Studio rareOf(Arrangement arrangement) {
    return Studios.archive(8_760, CopyMaker.markov("main", arrangement, 2, 400_000, 24));
  }

  /**
   * Of each of k pairs one drive dies every 1,000 h and is rebuilt from its partner, which holds a
   * k-th of the footage: after m rounds all is whole with chance exp(−8·B·e·m), for any k. Red if a
   * rebuild reads what all pairs hold.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 3})
  void aRebuildReadsThePartner(int pairs) {
    CopyMaker set =
        CopyMaker.set("main", Arrangement.PAIRS, 2 * pairs)
            .rebuild(new Fixed(10))
            .readErrors(1e-1 / (8 * Studios.VAULT_BYTES));
    for (int i = 0; i < pairs; i++) {
      set.each(made -> made.fails(new Fixed(1_000))).each(made -> made.fails(new Fixed(1e12)));
    }
    // Repaired at 1,010 h, at 2,020 h and at 3,030 h.
    agrees(simulate(Studios.vault(3_100, set)).anyLoss(), -Math.expm1(-0.3));
  }

  /**
   * Of three pairs one has a drive that dies at 1,000 h: of all spots that have grown unseen, one
   * in 5,000 h on each drive, only its partner's is met, 1 − exp(−1,000/5,000).
   */
  @Test
  void onlyThePartnersSpotsAreMet() {
    CopyMaker set =
        CopyMaker.set("main", Arrangement.PAIRS, 6)
            .each(made -> made.fails(new Fixed(1e12)))
            .each(made -> made.fails(new Fixed(1e12)))
            .each(made -> made.fails(new Fixed(1_000)))
            .each(made -> made.fails(new Fixed(1e12)))
            .each(made -> made.fails(new Fixed(1e12)))
            .each(made -> made.fails(new Fixed(1e12)))
            .latentDefects(new Exponential(5_000));
    agrees(simulate(Studios.vault(1_500, set)).anyLoss(), -Math.expm1(-0.2));
  }

  /**
   * A working copy dies at 1,000 h and is filled again from three pairs of which one has lost a
   * drive at 900 h: a third of all is read without redundancy, where 0.3 errors would be met in all
   * of it, 1 - exp(-0.1). Red if the refill pays for all that the pairs hold.
   */
  @Test
  void aRefillPaysForThePairWithoutRedundancyOnly() {
    CopyMaker far =
        CopyMaker.set("far", Arrangement.PAIRS, 6)
            .fed("main", new Feed.Continuous(), CopyMaker.AT_ONCE)
            .restores(CopyMaker.AT_ONCE)
            .arrival(new Fixed(1e5))
            .readErrors(0.3 / (8 * Studios.VAULT_BYTES));
    for (int i = 0; i < 6; i++) {
      double life = i == 2 ? 900 : 1e12;
      far.each(made -> made.fails(new Fixed(life)));
    }
    Studio studio = Studios.vault(1_500, CopyMaker.single("main", new Fixed(1_000)), far);
    agrees(simulate(studio).anyLoss(), -Math.expm1(-0.1));
  }

  private static CopyMaker wearing(Arrangement arrangement) {
    return CopyMaker.set("main", arrangement, 2)
        .life(new Weibull(1.5, 3_000, 0))
        .aged(new Fixed(500))
        .driveBytes(4e12)
        .arrival(new Fixed(100))
        .rebuild(new Exponential(200));
  }

  private static Studio weekly(CopyMaker copy) {
    return Studios.shootingWeekly(8_760, copy);
  }
}
