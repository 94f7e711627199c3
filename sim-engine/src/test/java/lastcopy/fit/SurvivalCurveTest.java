package lastcopy.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Survival curves without a law against other tools and printed values.
 *
 * <p>Seen red: entries ignored; who leaves at an age not at risk there; Greenwood's n − d as n;
 * late entries left out of Turnbull's step.
 */
class SurvivalCurveTest {

  // survfit of R 4.2.2's survival 3.5-3, conf.type "log-log": age, at risk, failures, S,
  // Greenwood's
  // error, interval, Nelson-Aalen's H and its error.
  private static final double[][] SIX_MP = {
    {6, 21, 3, .857142857143, .07636035483, .6197179553, .9515517476, .142857142857, .08247860988},
    {7, 17, 1, .806722689076, .08693528518, .5631465646, .9228090192, .201680672269, .1013061138},
    {10, 15, 1, .752941176471, .09634965299, .5031995108, .8893618352, .268347338936, .1212739591},
    {13, 12, 1, .690196078431, .1068147078, .4316102225, .8490659633, .351680672269, .147145566},
    {16, 11, 1, .627450980392, .1140538653, .367510856, .8049121895, .442589763178, .1729632342},
    {22, 7, 1, .53781512605, .1282337517, .2677789368, .7467907176, .585446906035, .2243311028},
    {23, 6, 1, .448179271709, .1345914568, .188052006, .6801426285, .752113572702, .2794677467},
  };

  // The same.
  private static final double[][] DELAYED = {
    {4, 5, 1, .80, .17888544, .203809263, .96917979, .2, .2},
    {5, 5, 1, .64, .20238577, .167028155, .89467506, .4, .282842712},
    {6, 4, 1, .48, .20552372, .099986104, .79140535, .65, .377491722},
    {9, 2, 1, .24, .19839355, .011780926, .63218328, 1.15, .626498204},
  };

  @Test
  void agreesWithAnotherTool() {
    agrees(KaplanMeier.of(DataSets.of("six-mp"), 0.95), SIX_MP, 1e-9);
    agrees(KaplanMeier.of(DataSets.of("delayed"), 0.95), DELAYED, 1e-8);
  }

  private static void agrees(List<Step> steps, double[][] expected, double tolerance) {
    assertThat(steps).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      Step s = steps.get(i);
      double[] ours = {
        s.age(),
        s.atRisk(),
        s.failures(),
        s.survival(),
        s.error(),
        s.low(),
        s.high(),
        s.cumulativeHazard(),
        s.hazardError()
      };
      for (int k = 0; k < ours.length; k++) {
        assertThat(ours[k]).as(s + " " + k).isCloseTo(expected[i][k], within(tolerance));
      }
    }
  }

  @Test
  void thereIsNoIntervalOnceAllHaveFailed() {
    List<Step> steps = KaplanMeier.of(DataSets.failures(1, 2, 2), 0.95);
    Step last = steps.get(1);
    assertThat(last.survival()).isZero();
    assertThat(last.low()).isNaN();
    assertThat(last.cumulativeHazard()).isCloseTo(1 / 3.0 + 1, within(1e-12));
  }

  // Klein, Moeschberger, Survival Analysis, 2003, example 5.2 (from memory): .954 after 5 months,
  // .920 after 7, .832 after 8, .761 after 12, .668 after 25, .586 after 34, .467 after 40, 0 after
  // 48. Digits beyond: survfit of R's survival 3.5-3, which stops early.
  @Test
  void agreesWithTurnbullsEstimateOfTheCosmesisData() {
    List<Step> steps = Turnbull.of(DataSets.of("cosmesis-radiotherapy"));
    assertThat(steps).extracting(Step::from).containsExactly(4d, 6d, 7d, 11d, 24d, 33d, 38d, 46d);
    assertThat(steps).extracting(Step::age).containsExactly(5d, 7d, 8d, 12d, 25d, 34d, 40d, 48d);
    double[] expected = {.9537, .9203, .8316, .7609, .6682, .5864, .4655, 0};
    for (int i = 0; i < expected.length; i++) {
      assertThat(steps.get(i).survival()).isCloseTo(expected[i], within(2e-4));
    }
  }

  /**
   * No shift of mass makes the records likelier: the mean over records of (cell within it) / (its
   * chance) is 1 where there is mass and at most 1 elsewhere (Gentleman, Geyer, Biometrika 81,
   * 1994).
   */
  @Test
  void nothingIsLikelierThanTurnbullsEstimate() {
    Records records = DataSets.of("cosmesis-radiotherapy");
    List<Step> steps = Turnbull.of(records);
    for (Step cell : steps) {
      double sum = 0;
      for (Records.Alike alike : records.distinct()) {
        LifeRecord life = alike.life();
        double to = life.failed() ? life.exit() : Double.POSITIVE_INFINITY;
        boolean within = life.lastSeen() <= cell.from() && cell.age() <= to;
        double chance = survival(steps, life.lastSeen()) - survival(steps, to);
        sum += within ? alike.count() / chance : 0;
      }
      assertThat(sum / records.records()).as(cell.toString()).isCloseTo(1, within(1e-5));
    }
  }

  private static double survival(List<Step> steps, double age) {
    double s = 1;
    for (Step step : steps) {
      s = step.age() <= age ? step.survival() : s;
    }
    return s;
  }

  /**
   * Where all ages are known the most likely curve is Kaplan's and Meier's, late entries or not.
   */
  @Test
  void turnbullsEstimateOfKnownAgesIsKaplanMeiers() {
    for (String name : List.of("six-mp", "delayed", "delayed-forty", "nist")) {
      Records records = DataSets.of(name);
      List<Step> expected = KaplanMeier.of(records, 0.95);
      List<Step> ours = Turnbull.of(records);
      assertThat(ours).as(name).hasSameSizeAs(expected);
      for (int i = 0; i < ours.size(); i++) {
        assertThat(ours.get(i).age()).isEqualTo(expected.get(i).age());
        assertThat(ours.get(i).survival())
            .as(name + " " + i)
            .isCloseTo(expected.get(i).survival(), within(1e-6));
      }
    }
  }

  /** Records in any order and one at a time or together say the same. */
  @Test
  void theOrderOfRecordsDoesNotMatter() {
    List<LifeRecord> records = new ArrayList<>();
    DataSets.of("delayed-forty").distinct().forEach(a -> records.add(a.life()));
    List<Step> steps = KaplanMeier.of(new Records(records), 0.95);
    java.util.Collections.reverse(records);
    assertThat(KaplanMeier.of(new Records(records), 0.95)).isEqualTo(steps);
  }

  /** Midway up each step; y is ln H of a Weibull law. */
  @Test
  void pointsOfTheProbabilityPlotAreMidwayUpTheSteps() {
    List<PlotPoint> points = Fitted.of(DataSets.of("nist"), 8_760, 0.95).plot();
    assertThat(points).hasSize(10);
    assertThat(points.get(0).failed()).isCloseTo(0.025, within(1e-12));
    assertThat(points.get(9).failed()).isCloseTo(0.475, within(1e-12));
    assertThat(points.get(9).y()).isCloseTo(Math.log(-Math.log(0.525)), within(1e-12));
  }
}
