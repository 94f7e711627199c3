package lastcopy.history;

import static lastcopy.history.Weighed.isMean;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.hazard.Levels;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

/**
 * What a biased history weighs by what is wrong when, and what risks it tells of, by hand: a source
 * of rate λ under a factor b weighs 1/b for each event and exp((b − 1)·λ·t) for each t hours.
 */
class LevelsByHandTest {

  private static final double FOREVER = 1e9;

  private static CopyBuilder copy(String id, double lives) {
    return ByHand.copy(id, Arrangement.SINGLE, 1e6, lives, FOREVER);
  }

  private static Studio studio(double horizon, double shootsEvery, Desk desk, Copy... copies) {
    Footage footage =
        Footage.builder(new Shoots(shootsEvery, 10, Shoots.Spacing.EVEN))
            .onHand(100)
            .clip(1)
            .build();
    return Studio.builder("s", horizon / Units.HOURS_PER_YEAR)
        .footage(footage)
        .desk(desk)
        .layout(new Layout("l", "l", List.of(copies), OptionalDouble.empty()))
        .build();
  }

  private static Plan planOf(Studio studio) {
    return Plan.of(studio, studio.layouts().get(0));
  }

  private static ShockProcess shock(Plan plan, ShockProcess.Kind kind) {
    for (int i = 0; i < plan.shocks(); i++) {
      if (plan.shock(i).kind() == kind) {
        return plan.shock(i);
      }
    }
    throw new AssertionError(kind);
  }

  private static Desk deletes(double every, double bytes, Law noticed) {
    return Desk.of(new Desk.Deletion(new Rate(1 / every), new Desk.Bytes(bytes), noticed));
  }

  /**
   * Next to nothing, so that it matters not where it lies, is deleted every 100 h and noticed 50 h
   * later, kept aside everywhere till then. The feed stops until somebody looks, every 130 h, and
   * the far copy dies at 300 h, from when on all that there is stands in one copy. Each that is
   * wrong counts one, two and more alike: deletions are 1.5, 0.5 and 2 times as frequent, and 3,
   * 2.5 and 0.8 times once there is one copy.
   */
  @Test
  void howManyThingsAreWrong() {
    Copy main = copy("main", FOREVER).keepsDeleted(FOREVER).build();
    Feed feed = Feed.from("main").every(24).stops(new Rate(1 / 200.0)).checkedEvery(130).build();
    Copy far = copy("far", 300).keepsDeleted(FOREVER).fed(feed).build();
    Studio studio = studio(400, FOREVER, deletes(100, 1e-7, new Fixed(50)), main, far);
    Plan plan = planOf(studio);
    assertThat(Levels.of(plan).depths()).isEqualTo(3);
    int[] tenths = {15, 5, 20, 30, 25, 8};
    History history =
        Weighed.raised(
            studio,
            plan.groups().of(shock(plan, ShockProcess.Kind.DELETION)),
            level -> tenths[level]);
    SummaryStatistics weights = new SummaryStatistics();
    for (int k = 0; k < 2_000; k++) {
      ToldHistory one = ToldHistory.of(history, k);
      double log = 0;
      int wrong = 0;
      int gone = 0;
      double since = 0;
      for (Happening each : one.what()) {
        double factor = tenths[Math.min(2, wrong) + 3 * gone] / 10.0;
        log += (factor - 1) / 100 * (each.hours() - since);
        since = each.hours();
        log -= each.kind() == Kind.DELETED ? Math.log(factor) : 0;
        wrong += wrongBy(each.kind());
        gone += each.kind() == Kind.COPY_GONE ? 1 : 0;
      }
      assertThat(one.weight()).as("history %d", k).isCloseTo(Math.exp(log), within(1e-9));
      weights.addValue(one.weight());
    }
    isMean(1, weights);
  }

  private static int wrongBy(Kind kind) {
    return switch (kind) {
      case DELETED, FEED_STOPPED, COPY_GONE -> 1;
      case NOTICED, FEED_SEEN -> -1;
      default -> 0;
    };
  }

  /**
   * Nothing is ever wrong for longer than an instant, but of each shoot, every 100 h, ten bytes are
   * in one copy only until the run 40 h later: malware comes 3 times as often then, else half.
   */
  @Test
  void whatIsInOneCopyOnlyByTheClock() {
    Copy main = copy("main", FOREVER).keepsDeleted(FOREVER).build();
    Copy far =
        copy("far", FOREVER)
            .keepsDeleted(FOREVER)
            .offline()
            .fed(Feed.from("main").every(100, 40).link(1e9).build())
            .build();
    Desk desk = Desk.of(new Desk.Malware(new Rate(1 / 200.0), new Fixed(0)));
    Studio studio = studio(1_000, 100, desk, main, far);
    Plan plan = planOf(studio);
    int depths = Levels.of(plan).depths();
    History history =
        Weighed.raised(
            studio,
            plan.groups().of(shock(plan, ShockProcess.Kind.MALWARE)),
            level -> level < depths ? 5 : 30);
    SummaryStatistics weights = new SummaryStatistics();
    for (int k = 0; k < 2_000; k++) {
      ToldHistory one = ToldHistory.of(history, k);
      // Nine shoots stand in one copy for 40 h by the horizon, and the tenth for no time.
      double log = (9 * 40 * 2 - (1_000 - 9 * 40) * 0.5) / 200;
      for (Happening each : one.all(Kind.MALWARE)) {
        boolean bare = each.hours() > 100 && each.hours() % 100 <= 40;
        log -= Math.log(bare ? 3 : 0.5);
      }
      assertThat(one.weight()).as("history %d", k).isCloseTo(Math.exp(log), within(1e-6));
      weights.addValue(one.weight());
    }
    isMean(1, weights);
  }

  /**
   * Two mirrored pairs of drives that live for 500 h in the mean and are whole again 100 h after a
   * failure. A drive whose partner is down fails 3 times as often, any other as it does: each such
   * hour weighs exp(2/500), and the failure that takes the copy 1/3.
   */
  @Test
  void theOtherOfAPair() {
    DriveModel model = DriveModel.builder("m", 1e6).fails(new Exponential(500)).build();
    Medium pairs =
        Medium.DriveSet.builder(Arrangement.PAIRS, 4).of(model).rebuild(new Fixed(100)).build();
    Studio studio =
        studio(
            1_000,
            FOREVER,
            Desk.QUIET,
            Copy.builder("main").on(pairs).arrival(new Fixed(FOREVER)).build());
    Plan plan = planOf(studio);
    History history = Weighed.raised(studio, plan.groups().ofAlone(plan.slot(0)), level -> 30);
    SummaryStatistics weights = new SummaryStatistics();
    int lossy = 0;
    for (int k = 0; k < 2_000; k++) {
      ToldHistory one = ToldHistory.of(history, k);
      double log = 0;
      double since = 0;
      List<Integer> down = new ArrayList<>();
      for (Happening each : one.what()) {
        log += 2 / 500.0 * down.size() * (each.hours() - since);
        since = each.hours();
        if (each.kind() == Kind.DRIVE_FAILED) {
          down.add(each.drive());
        } else if (each.kind() == Kind.DRIVE_READY) {
          down.remove((Integer) each.drive());
        } else if (each.kind() == Kind.COPY_GONE) {
          assertThat(down).contains(each.drive() ^ 1);
          log -= Math.log(3);
          lossy++;
          break;
        }
      }
      assertThat(one.weight()).as("history %d", k).isCloseTo(Math.exp(log), within(1e-9));
      weights.addValue(one.weight());
    }
    isMean(1, weights);
    assertThat(lossy).isPositive();
  }

  /**
   * A fire takes each of two copies with a chance of a half, and neither comes back: a risk of a
   * quarter that it takes both, of a half once one is gone, and none any more.
   */
  @Test
  void aFireThatMayTakeAll() {
    Place burns = Place.of("studio", new Mishap("fire", new Rate(1 / 100.0), 0.5));
    Copy main = copy("main", FOREVER).at(burns).build();
    Copy far = copy("far", FOREVER).at(burns).fed(Feed.from("main").every(24).build()).build();
    Copy safe = copy("safe", FOREVER).fed(Feed.from("main").every(24).build()).build();
    History history = Weighed.unraised(studio(1_000, FOREVER, Desk.QUIET, main, far, safe));
    assertThat(history.channel(0)).isEqualTo("fire struck at 'studio' and every copy is taken");
    for (int k = 0; k < 100; k++) {
      List<String> expected = new ArrayList<>();
      int there = 2;
      for (Happening each : ToldHistory.of(history, k).what()) {
        if (each.kind() == Kind.MISHAP && there > 0) {
          expected.add("0 " + Math.pow(0.5, there));
        } else if (each.kind() == Kind.COPY_GONE) {
          there--;
        }
      }
      Weighed.Risks risks = new Weighed.Risks();
      history.simulate(k, risks);
      List<String> chances = risks.told.stream().filter(row -> !row.contains("badly")).toList();
      assertThat(chances).isEqualTo(expected);
      boolean all = there == 0;
      assertThat(risks.told.size() - chances.size()).isEqualTo(all ? 1 : 0);
    }
  }
}
