package lastcopy.history;

import static lastcopy.history.Weighed.isMean;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

/** What a biased history weighs in which deletions are noticed late, by hand. */
class LateNoticeByHandTest {

  private static final double FOREVER = 1e9;
  private static final double HORIZON = 1_000;

  private static CopyBuilder lasting(String id, double keeps) {
    return ByHand.copy(id, Arrangement.SINGLE, 1e6, FOREVER, FOREVER).keepsDeleted(keeps);
  }

  /**
   * Noticed after 20 h in the mean. The working copy drops what is deleted 30 h, 1.5 means, later,
   * the far copy, fed every 100 h, after 40, 90 or 140: 2, 4.5 and 7 means. In 0.15 of the
   * deletions, for two are expected, the notice is drawn from beyond one of these four. None is
   * lost before 40 h, the longest that one is kept: a risk of e^−2.
   */
  @Test
  void weighsTheRatioOfTheDensities() {
    Copy far = lasting("far", 40).fed(Feed.from("main").every(100).build()).build();
    Desk.Deletion deletion =
        new Desk.Deletion(new Rate(2 / HORIZON), new Desk.Bytes(1), new Exponential(20));
    Footage footage =
        Footage.builder(new Shoots(FOREVER, 10, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Layout layout =
        new Layout("l", "l", List.of(lasting("main", 30).build(), far), OptionalDouble.empty());
    History history =
        Weighed.unraised(
            Studio.builder("s", HORIZON / Units.HOURS_PER_YEAR)
                .footage(footage)
                .desk(Desk.of(deletion))
                .layout(layout)
                .build());
    assertThat(history.channels()).as("a shock, and two copies with defects").isEqualTo(1 + 2);
    SummaryStatistics weights = new SummaryStatistics();
    int late = 0;
    for (int k = 0; k < 2_000; k++) {
      ToldHistory one = ToldHistory.of(history, k);
      List<Happening> deleted = one.untilALoss(Kind.DELETED);
      double density = 1;
      for (Happening each : deleted) {
        density *= density((each.until() - each.hours()) / 20);
      }
      assertThat(one.weight() * density).as("history %d", k).isCloseTo(1, within(1e-9));
      weights.addValue(one.weight());
      Weighed.Risks risks = new Weighed.Risks();
      history.simulate(k, risks);
      List<String> bad = risks.told.stream().filter("0 badly"::equals).toList();
      assertThat(bad)
          .hasSize((int) deleted.stream().filter(e -> e.until() - e.hours() >= 40).count());
      assertThat(risks.told.stream().filter("0 0.135335283"::equals)).hasSameSizeAs(deleted);
      assertThat(risks.told).hasSize(bad.size() + deleted.size());
      late += bad.size();
    }
    isMean(1, weights);
    assertThat(late).isPositive();
  }

  /** In times the law, of a notice so many means after the deletion. */
  private static double density(double means) {
    double density = 0.85;
    for (double beyond : new double[] {1.5, 2, 4.5, 7}) {
      density += means >= beyond ? 0.15 / 4 * Math.exp(beyond) : 0;
    }
    return density;
  }
}
