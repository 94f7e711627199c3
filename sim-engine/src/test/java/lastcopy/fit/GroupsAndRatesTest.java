package lastcopy.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Comparison of groups, hazards by piece, and rates of few failures.
 *
 * <p>Seen red: the variance without the factor for ties; a failure at the end of a piece counted in
 * the next; 2·failures + 1 degrees of freedom for a limit.
 */
class GroupsAndRatesTest {

  // survdiff of R 4.2.2's survival 3.5-3. The first is printed as 16.79 in Kleinbaum, Klein,
  // Survival Analysis, 2012 (from memory).
  @Test
  void logRankAgreesWithAnotherTool() {
    LogRank freireich = test("six-mp", "placebo");
    assertThat(freireich.chiSquare()).isCloseTo(16.7929409892, within(1e-9));
    assertThat(freireich.expected().get(0)).isCloseTo(19.250500948, within(1e-9));
    assertThat(freireich.observed()).containsExactly(9d, 21d);
    assertThat(freireich.p()).isCloseTo(4.168809109e-05, within(1e-13));
    LogRank aml = test("aml-maintained", "aml-not-maintained");
    assertThat(aml.chiSquare()).isCloseTo(3.39638869898, within(1e-10));
    assertThat(aml.p()).isCloseTo(0.06533932204, within(1e-10));
    LogRank veteran =
        test("veteran-squamous", "veteran-smallcell", "veteran-adeno", "veteran-large");
    assertThat(veteran.chiSquare()).isCloseTo(25.4037003458, within(1e-9));
    assertThat(veteran.degreesOfFreedom()).isEqualTo(3);
    assertThat(veteran.expected().get(3)).isCloseTo(34.5494783863, within(1e-9));
    assertThat(veteran.p()).isCloseTo(1.271245939e-05, within(1e-13));
  }

  private static LogRank test(String... names) {
    return LogRank.of(Stream.of(names).map(DataSets::of).toList());
  }

  /** Groups that were never at risk together, or in which nothing failed, say nothing. */
  @Test
  void whatCannotBeComparedIsNotSignificant() {
    Records early = new Records(List.of(LifeRecord.failedAt(0, 1), LifeRecord.running(0, 2)));
    Records late = new Records(List.of(LifeRecord.failedAt(5, 6), LifeRecord.running(5, 9)));
    LogRank test = LogRank.of(List.of(early, late));
    assertThat(test.degreesOfFreedom()).isZero();
    assertThat(test.p()).isEqualTo(1);
  }

  // By hand: within weeks 0 to 10, 10 to 20 and from 20 on, 6-MP has 5, 2 and 2 failures in 187,
  // 101
  // and 71 weeks at risk.
  @Test
  void aHazardByPieceIsFailuresOverTime() {
    PiecewiseFit fit = Pieces.of(DataSets.of("six-mp"), 10, 3, 0.95);
    assertThat(fit.pieces()).extracting(Piece::failures).containsExactly(5d, 2d, 2d);
    assertThat(fit.pieces()).extracting(Piece::timeAtRisk).containsExactly(190d, 106d, 63d);
    double expected =
        5 * Math.log(5 / 190.0) + 2 * Math.log(2 / 106.0) + 2 * Math.log(2 / 63.0) - 9;
    assertThat(fit.logLikelihood()).isCloseTo(expected, within(1e-10));
    assertThat(fit.aic()).isCloseTo(6 - 2 * expected, within(1e-10));
    assertThat(fit.survival(15)).isCloseTo(Math.exp(-50 / 190.0 - 10 / 106.0), within(1e-12));
    assertThat(fit.survival(40))
        .isCloseTo(Math.exp(-50 / 190.0 - 20 / 106.0 - 40 / 63.0), within(1e-12));
  }

  /** One piece is the exponential law, also where failures were found at checks. */
  @Test
  void onePieceIsTheExponentialLaw() {
    for (String name : List.of("six-mp", "cosmesis-radiotherapy", "delayed-forty")) {
      Records records = DataSets.of(name);
      PiecewiseFit piece = Pieces.of(records, 1e6, 1, 0.95);
      ExponentialFit law = Fitted.of(records, 1e6, 0.95).exponential().orElseThrow();
      assertThat(1 / piece.pieces().get(0).hazard().value())
          .isCloseTo(law.mean().value(), within(1e-5));
      assertThat(piece.logLikelihood()).isCloseTo(law.logLikelihood(), within(1e-8));
    }
  }

  /** No other hazards make records found at checks likelier. */
  @Test
  void sharedOutFailuresAreTheLikeliest() {
    PiecewiseFit best = Pieces.of(DataSets.of("cosmesis-radiotherapy"), 12, 4, 0.95);
    // The gradient: failures − hazard × time in each piece, so zero where both are expectations.
    for (Piece piece : best.pieces()) {
      assertThat(piece.failures())
          .isCloseTo(piece.hazard().value() * piece.timeAtRisk(), within(1e-9));
    }
    double total = best.pieces().stream().mapToDouble(Piece::failures).sum();
    assertThat(total).isCloseTo(21, within(1e-6));
    ExponentialFit one =
        Fitted.of(DataSets.of("cosmesis-radiotherapy"), 12, 0.95).exponential().orElseThrow();
    assertThat(best.logLikelihood()).isGreaterThan(one.logLikelihood());
  }

  // 5th and 95th percentile of a chi-square with 10 degrees of freedom, any table: 3.940, 18.307.
  @Test
  void aPriorHasTheTwoPercentilesAskedFor() {
    GammaRate prior = GammaRate.between(3.940 / 2, 18.307 / 2);
    assertThat(prior.events()).isCloseTo(5, within(2e-3));
    assertThat(prior.time()).isCloseTo(1, within(1e-3));
    assertThat(prior.percentile(0.05)).isCloseTo(1.970, within(1e-6));
    assertThat(prior.percentile(0.95)).isCloseTo(9.1535, within(1e-6));
    GammaRate after = prior.after(0, 20);
    assertThat(after.mean()).isCloseTo(prior.events() / (prior.time() + 20), within(1e-12));
    for (double ratio : new double[] {1.01, 2, 100, 1e5}) {
      GammaRate other = GammaRate.between(0.01, 0.01 * ratio);
      assertThat(other.percentile(0.95)).isCloseTo(0.01 * ratio, within(1e-6 * ratio));
      assertThat(other.percentile(0.05)).isCloseTo(0.01, within(1e-6));
    }
    assertThatIllegalArgumentException().isThrownBy(() -> GammaRate.between(2, 1));
  }
}
