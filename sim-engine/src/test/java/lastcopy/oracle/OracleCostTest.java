package lastcopy.oracle;

import static lastcopy.oracle.Part.service;
import static lastcopy.oracle.Part.set;
import static lastcopy.oracle.Part.single;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import lastcopy.experiment.Cost;
import lastcopy.law.Exponential;
import lastcopy.law.Uniform;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Costs;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Work;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What histories cost, by kind, against {@link Purse}, on studios with prices drawn at random: a
 * two-sample test of each kind as in {@link OracleComparisonTest}, alarm rate 1e-6 each. 400
 * histories here and 1,600 of the engine: with a coefficient of variation of a half, a difference
 * of 14 % of a mean shows surely; with 20,000 each, 3 %.
 *
 * <p>Sabotage seen red: power while a drive is down, a box bought for each copy in it.
 */
class OracleCostTest {

  private static final double ALARM_DEVIATIONS = 4.89;
  private static final double HORIZON = 900;

  static Stream<Arguments> studios() {
    Map<String, Studio> all = new LinkedHashMap<>();
    for (long seed = 1; seed <= 2; seed++) {
      new Priced(seed).studios().forEach((name, studio) -> all.put(name, studio));
    }
    return all.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("studios")
  void agree(String name, Studio studio) {
    agree(studio, 400, 1_600);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("studios")
  @Tag("slow")
  void agreeClosely(String name, Studio studio) {
    agree(studio, 20_000, 20_000);
  }

  private static void agree(Studio studio, int mine, int engines) {
    Layout layout = studio.layouts().get(0);
    List<Outcome> outcomes =
        LongStream.rangeClosed(1, mine)
            .parallel()
            .mapToObj(seed -> World.live(studio, layout, seed))
            .toList();
    Cost cost = ComparedMeans.resultOf(studio, engines, 1).cost().orElseThrow();
    double share = Math.sqrt(1 + mine / (double) engines);
    for (Cost.Part part : cost.byKind()) {
      double[] paid = outcomes.stream().mapToDouble(o -> o.paid.get(part.kind())).toArray();
      double mean = Arrays.stream(paid).average().orElseThrow();
      double squares = Arrays.stream(paid).map(x -> (x - mean) * (x - mean)).sum();
      double error = Math.sqrt(squares / (mine - 1.0) / mine) * share;
      assertThat(Math.abs(part.mean() - mean))
          .as("%s: %s here, %s in the engine, error %s", part.kind(), mean, part.mean(), error)
          .isLessThanOrEqualTo(ALARM_DEVIATIONS * error + 1e-9 * mean);
    }
  }

  /** Makes studios of one seed; each kind of money is paid in several of them. */
  private static final class Priced {
    private final SplittableRandom random;
    private final long seed;
    private final Map<String, Studio> all = new LinkedHashMap<>();

    Priced(long seed) {
      this.seed = seed;
      random = new SplittableRandom(seed);
    }

    private double between(double low, double high) {
      return low + random.nextDouble() * (high - low);
    }

    private Part priced(Part part) {
      return part.priced(between(20, 200), between(2, 20));
    }

    Map<String, Studio> studios() {
      Place home = new Place("home", List.of(new Mishap("fire", new Rate(1 / 900.0), 0.6)));
      Box box =
          new Box(
              "box",
              new Rate(1 / 1_500.0),
              OptionalDouble.of(between(50, 300)),
              OptionalDouble.of(between(5, 20)),
              OptionalDouble.empty());
      add(
          "a mirror and a copy in one box",
          footage(100, 50, 12, 0, Shoots.Spacing.EVEN),
          Desk.QUIET,
          priced(set("main", Arrangement.MIRROR, 2, 700)).at(home).in(box).noticed(looks()),
          priced(single("far", 600)).nightly("main", 2, 3).at(home).in(box).owned());
      add(
          "parity with swaps, a rebuild that waits",
          footage(100, 50, 12, 0, Shoots.Spacing.RANDOM),
          Desk.QUIET,
          priced(set("main", Arrangement.DOUBLE_PARITY, 5, 500))
              .aged(new Uniform(0, 300))
              .replacedAt(between(400, 900))
              .rebuildsAt(2, Rebuild.Reads.USED)
              .arrives(new Exponential(60))
              .costs(new Costs(between(1, 9), between(10, 90), 0)),
          priced(single("far", 900)).nightly("main", 2, 3).spoils(700, 150));
      add(
          "shelves",
          footage(150, 40, 25, 0.5, Shoots.Spacing.RANDOM),
          Desk.QUIET,
          priced(set("main", Arrangement.SHELF, 2, 900)).sized(200).at(home),
          priced(set("far", Arrangement.SHELF, 2, 700)).sized(150).nightly("main", 2, 3).owned());
      add(
          "drives that take turns",
          footage(100, 50, 12, 0, Shoots.Spacing.EVEN),
          Desk.QUIET,
          priced(single("main", 700)).at(home),
          priced(set("turns", Arrangement.MIRROR, 2, 800))
              .every("main", 300, 5, 4)
              .rotates(3, 100, 30)
              .at(home)
              .in(box));
      add(
          "a service that lags and keeps versions",
          footage(100, 50, 12, 1, Shoots.Spacing.EVEN),
          SmallStudios.deletes(300, 30, 60),
          priced(single("main", 800)).goneNoticed(looks()),
          priced(service("cloud", 700)).nightly("main", 3, 0.4).keepsDeleted(between(40, 200)));
      add(
          "a service that starts empty, behind another copy, and what ages out",
          aging(footage(100, 50, 12, 0, Shoots.Spacing.EVEN), 333),
          Desk.QUIET,
          priced(set("main", Arrangement.MIRROR, 2, 1)).lives(new Weibull(2, 600, 0)).at(home),
          priced(single("far", 500)).nightly("main", 2, 1),
          priced(service("cloud", 900)).continuous("far", 0.5).startsEmpty());
      return all;
    }

    private Delay looks() {
      return new Delay.Looks(between(20, 70));
    }

    private void add(String name, Footage footage, Desk desk, Part... parts) {
      var layout =
          Layout.builder("only").costs(new Costs(between(1, 9), between(10, 90), between(1, 9)));
      Stream.of(parts).forEach(part -> layout.copy(part.make()));
      Work work =
          new Work(
              OptionalDouble.of(between(10, 50)),
              between(1, 3),
              between(0, 1),
              between(0, 1),
              between(0, 2));
      all.put(
          name + ", seed " + seed,
          Studio.builder("test", HORIZON / Units.HOURS_PER_YEAR)
              .footage(footage)
              .desk(desk)
              .energy(between(0.1, 2))
              .work(work)
              .layout(layout.build())
              .build());
    }

    private static Footage footage(
        double onHand, double every, double size, double growth, Shoots.Spacing spacing) {
      return new Footage(
          onHand * Units.GB,
          new Shoots(every, size * Units.GB, spacing),
          growth,
          OptionalDouble.empty(),
          Units.GB,
          OptionalDouble.empty());
    }

    private static Footage aging(Footage f, double hours) {
      return new Footage(
          f.onHandBytes(),
          f.shoots(),
          f.growthPerYear(),
          OptionalDouble.of(hours),
          f.clipBytes(),
          f.worthPerShoot());
    }
  }
}
