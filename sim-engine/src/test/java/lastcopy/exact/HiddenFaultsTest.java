package lastcopy.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import lastcopy.law.Exponential;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** References for latent defects and read errors. */
class HiddenFaultsTest {

  /** Base case of Elerath, Pecht, IEEE Trans. Computers 58(3), 2009 [from memory]. */
  private static final Law LIFE = new Weibull(1.12, 461_386, 0);

  private static final Law RESTORE = new Weibull(2, 12, 6);
  private static final Law SCRUB = new Weibull(3, 168, 6);
  private static final double TO_DEFECT = 9_259;
  private static final double YEAR = 8_760;

  /**
   * By hand: eight drives fail 8·0.01172986 times; a drive has a defect for 156.02 of 9,415 h; with
   * seven others and the chance that one of them is being restored (16.6 h a failure). Defects take
   * some 150 h to come into balance, so the first year is a little below.
   */
  @Test
  void firstYearByHand() {
    double defective = 156.02056 / (TO_DEFECT + 156.02056);
    double restored = 0.01172986 / YEAR * 16.63472;
    double hit = 1 - Math.pow((1 - defective) * (1 - restored), 7);
    double byHand = 8 * 0.01172986 * hit;
    double exact = base(Optional.of(SCRUB)).expectedLosses(YEAR, 2_190);
    assertThat(byHand).isCloseTo(0.01036, within(5e-5));
    assertThat(exact).isCloseTo(byHand, Percentage.withPercentage(2)).isLessThan(byHand);
  }

  /** Without scrub the papers find above 1,200 per 1,000 groups in ten years [from memory]. */
  @Test
  void tenYears() {
    double scrubbed = base(Optional.of(SCRUB)).expectedLosses(10 * YEAR, 7_300);
    double never = base(Optional.empty()).expectedLosses(10 * YEAR, 7_300);
    assertThat(1_000 * scrubbed).isBetween(100.0, 200.0);
    assertThat(1_000 * never).isBetween(1_200.0, 1_300.0);
  }

  /** No defects: both down at once, with constant rates the chain's visits to two down. */
  @Test
  void withoutDefectsOnlyDoubleFailures() {
    ScrubbedGroup group =
        new ScrubbedGroup(2, new Exponential(1e4), new Exponential(20), 1e300, Optional.empty());
    // Failures at 2·1e-4·u each hour with the other down, u = 1e4/10020 of the time up.
    double up = 1e4 / 10_020;
    double exact = 2 * 1e-4 * up * (1 - up) * YEAR;
    assertThat(group.expectedLosses(YEAR, 4_380)).isCloseTo(exact, Percentage.withPercentage(0.5));
  }

  /** Defects and scrubs at constant rates are a two-state chain. */
  @Test
  void defectsComeIntoBalance() {
    ScrubbedGroup group =
        new ScrubbedGroup(2, LIFE, RESTORE, 1_000, Optional.of(new Exponential(100)));
    double[] q = group.defective(1, 500);
    for (int t : new int[] {0, 10, 100, 500}) {
      double exact = 1.0 / 11 * (1 - Math.exp(-0.011 * t));
      assertThat(q[t]).isCloseTo(exact, within(1e-6));
    }
  }

  /** Without defects, or with each scrubbed at once, the textbook pair. */
  @Test
  void latentPairWithoutDefectsIsThePair() {
    double exact = new RepairablePair(1e-3, 0.02).lossBy(2_000);
    assertThat(new LatentPair(1e-3, 0.02, 0, 0.01).lossBy(2_000)).isCloseTo(exact, within(1e-12));
    assertThat(new LatentPair(1e-3, 0.02, 1e-3, 1e9).lossBy(2_000)).isCloseTo(exact, within(1e-8));
  }

  /** Defects at once and for good: the first failure loses, 1 − e^(−2λt). */
  @Test
  void latentPairFullOfDefects() {
    assertThat(new LatentPair(1e-3, 0.02, 1e4, 0).lossBy(500))
        .isCloseTo(1 - Math.exp(-1), within(1e-6));
  }

  /** Repair at once, so that only defects count: three states and loss, solved by first steps. */
  @Test
  void latentPairRepairedAtOnce() {
    double mean = new LatentPair(1e-3, 1e9, 2e-3, 1e-2).chain().meanTimeToAbsorption(0);
    // First steps: m0 = 1/(2ν) + m1; m1 (σ + ν + 2λ) = 1 + (σ + λ) m0 + ν m2; m2 (2σ + 2λ) = 1 + 2σ
    // m1.
    double l = 1e-3;
    double n = 2e-3;
    double s = 1e-2;
    double own = s + n + 2 * l - (s + l) - n * s / (s + l);
    double m1 = (1 + (s + l) / (2 * n) + n / (2 * (s + l))) / own;
    assertThat(mean).isCloseTo(1 / (2 * n) + m1, Percentage.withPercentage(1e-4));
  }

  /**
   * Baker et al., EuroSys 2006 [from memory]: latent faults at 2.8e5 h; without scrub 32.0 years
   * and 79.0 % in 50; found after a mean of 1,460 h 6,128.7 years and 0.8 %. These check the
   * paper's approximation only.
   */
  @Test
  void approximationOfBaker() {
    double years = ClassicFormulas.bakerScrubbed(2.8e5, 1_460) / YEAR;
    assertThat(years).isCloseTo(6_128.7, Percentage.withPercentage(0.05));
    assertThat(-Math.expm1(-50 / years)).isCloseTo(0.008, within(2e-4));
    assertThat(2.8e5 / YEAR).isCloseTo(32.0, within(0.05));
    assertThat(-Math.expm1(-50 / (2.8e5 / YEAR))).isCloseTo(0.79, within(1e-3));
  }

  /** Rebuild of an 8 TB drive at 1e-15 a bit: 6.2 %; of 3, 5, 7 drives: 17.5, 27.4, 36.1 %. */
  @Test
  void unreadableBits() {
    double[] drives = {1, 3, 5, 7};
    double[] printed = {0.062, 0.175, 0.274, 0.361};
    for (int i = 0; i < drives.length; i++) {
      assertThat(UnreadableRebuilds.unreadable(8e12 * drives[i], 1e-15))
          .isCloseTo(printed[i], within(5e-4));
    }
  }

  /** Always unreadable: the first rebuild to end loses, or a second failure before it. */
  @Test
  void rebuildsThatRead() {
    ParityGroup pair = new ParityGroup(2, 1, 1e-3, 0.02);
    assertThat(new UnreadableRebuilds(pair, 0).lossBy(3_000))
        .isCloseTo(pair.lossBy(3_000), within(1e-14));
    // Two stages of rates 2λ and λ + μ.
    double a = 0.002;
    double b = 0.021;
    double exact = 1 - (b * Math.exp(-a * 3_000) - a * Math.exp(-b * 3_000)) / (b - a);
    assertThat(new UnreadableRebuilds(pair, 1).lossBy(3_000)).isCloseTo(exact, within(1e-12));
  }

  private static ScrubbedGroup base(Optional<Law> scrub) {
    return new ScrubbedGroup(8, LIFE, RESTORE, TO_DEFECT, scrub);
  }
}
