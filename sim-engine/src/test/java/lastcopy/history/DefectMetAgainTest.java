package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;

/**
 * A defect that no scrub finds costs a clip each time that it is met, and each time another. One of
 * a mirror's drives fails at 1,100, 2,202 and 3,304 h, since it is replaced in 1 h and rebuilt in 1
 * h; the other never fails and has a defect from 50 h on. The far copy holds what was on hand, as
 * much as each of the shoots of 1,000, 2,000 and 3,000 h: a clip is lost with a chance of 1/2, then
 * 2/3, then 3/4. By hand: none with 1/24, one with 6/24, two with 11/24, three with 6/24.
 */
class DefectMetAgainTest {

  private static final int HISTORIES = 400;
  private static final double FALSE_ALARM = 1e-6;
  private static final double SHOOT = 5e11;

  private static Studio studio() {
    DriveModel fails = DriveModel.builder("fails", 1e13).fails(new Fixed(1_100)).build();
    DriveModel lasts = DriveModel.builder("lasts", 1e13).fails(new Exponential(1e30)).build();
    Copy main =
        Copy.builder("main")
            .on(
                Medium.DriveSet.builder(Arrangement.MIRROR, 2)
                    .ofEach(fails, lasts)
                    .rebuild(new Fixed(1))
                    .latentDefects(new Fixed(50))
                    .build())
            .arrival(new Fixed(1))
            .build();
    Copy far =
        Copy.builder("far")
            .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(lasts).build())
            .fed(Feed.from("main").every(20_000, 10_000).build())
            .build();
    Footage footage =
        Footage.builder(new Shoots(1_000, SHOOT, Shoots.Spacing.EVEN))
            .onHand(SHOOT)
            .clip(1)
            .build();
    return Studio.builder("s", 3_500 / Units.HOURS_PER_YEAR)
        .footage(footage)
        .layout(new Layout("l", "l", List.of(main, far), OptionalDouble.empty()))
        .build();
  }

  /**
   * Null hypothesis: the chances by hand. Red if a defect lies at one place for as long as it
   * lives, which costs nothing with 1/4 and three clips with 1/2.
   */
  @Test
  void costsAnotherClipEachTime() {
    Studio studio = studio();
    History history = new History(studio, studio.layouts().get(0), 1);
    int[] lost = new int[4];
    for (int k = 0; k < HISTORIES; k++) {
      Log log = new Log();
      history.simulate(k, log);
      assertThat(log.losses).allMatch(loss -> loss[1] == 1);
      assertThat(log.causes).allMatch("defect+rebuild+behind"::startsWith);
      lost[log.losses.size()]++;
    }
    int[] of24 = {1, 6, 11, 6};
    for (int n = 0; n < lost.length; n++) {
      BinomialDistribution count = BinomialDistribution.of(HISTORIES, of24[n] / 24.);
      assertThat(lost[n])
          .as("histories with %s losses", n)
          .isBetween(
              count.inverseCumulativeProbability(FALSE_ALARM / 8),
              count.inverseSurvivalProbability(FALSE_ALARM / 8));
    }
  }
}
