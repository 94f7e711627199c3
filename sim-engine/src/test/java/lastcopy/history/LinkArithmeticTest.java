package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.hazard.Bias;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Delay;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.FeedBuilder;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Uplink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What links with hours, shared uplinks and carried drives bring, against hand arithmetic of fluid
 * queues; and each, where it does not bind, against a studio without it, to the last bit.
 *
 * <p>Seen red: an uplink whose feeds each have all of it; a feed outside its hours that takes its
 * share; hours that do not go on over midnight; a carried drive whose footage counts on the way.
 */
class LinkArithmeticTest {

  private static final double GB_PER_HOUR = Units.GB / Units.SECONDS_PER_HOUR;

  private static Copy copy(String id, Feed feed) {
    return Copy.builder(id).on(Medium.Service.losing(Rate.NONE)).fed(feed).startsEmpty().build();
  }

  private static Copy main() {
    return Copy.builder("main").on(Medium.Service.losing(Rate.NONE)).build();
  }

  private static UndisturbedCourse course(double onHand, Copy... fed) {
    Shoots none = new Shoots(1e4, 1, Shoots.Spacing.EVEN);
    Footage footage = Footage.builder(none).onHand(onHand * Units.GB).build();
    Layout layout =
        Layout.of("l", Stream.concat(Stream.of(main()), Stream.of(fed)).toArray(Copy[]::new));
    Studio studio = Studio.builder("s", 0.1).footage(footage).layout(layout).build();
    return new History(studio, layout, 1, Bias.NONE).course();
  }

  private static double held(UndisturbedCourse course, int copy, double at) {
    course.moveTo(at, true);
    double base = course.base(copy);
    double moves = course.isLinked() ? course.perHour(copy) * (at - course.since(copy)) : 0;
    return (base + (course.flowTo(copy) > base ? moves : 0)) / Units.GB;
  }

  private static FeedBuilder rare(double at) {
    return Feed.from("main").every(1_000, at);
  }

  /** 10 GB an hour from 20 h to 6 h: 60 GB by 6 h, none by day, then 40 more by midnight. */
  @ParameterizedTest
  @CsvSource({"3, 30", "6, 60", "13, 60", "20, 60", "22, 80", "24, 100", "27, 100"})
  void hoursGoOnOverMidnight(double at, double gigabytes) {
    Feed feed = rare(0).link(10 * GB_PER_HOUR).between(20, 6).build();
    assertThat(held(course(100, copy("far", feed)), 1, at)).isCloseTo(gigabytes, within(1e-6));
  }

  /** A run that is due at noon has what there was at noon, and begins to carry at 20 h. */
  @ParameterizedTest
  @CsvSource({"12, 0", "20, 0", "25, 50", "30, 100", "31, 100"})
  void whatIsUnderWayWaitsForTheNextOpening(double at, double gigabytes) {
    Feed feed = rare(12).link(10 * GB_PER_HOUR).between(20, 6).build();
    assertThat(held(course(100, copy("far", feed)), 1, at)).isCloseTo(gigabytes, within(1e-6));
  }

  /**
   * 60 GB each over 12 GB an hour, from 0 h, 2 h and 4 h on. The first alone: 24 GB by 2 h; two: 6
   * an hour each; three from 4 h on: 4 each. The first lacks 24 then and has all at 10 h, when the
   * second has 12 + 24 and the third 24; two again: the second has all at 14 h, the third 48 then,
   * and at 15 h all.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 24, 0, 0",
    "3, 30, 6, 0",
    "4, 36, 12, 0",
    "7, 48, 24, 12",
    "10, 60, 36, 24",
    "12, 60, 48, 36",
    "14, 60, 60, 48",
    "14.5, 60, 60, 54",
    "15, 60, 60, 60",
  })
  void threeShareAnUplink(double at, double first, double second, double third) {
    Uplink office = Uplink.of("office", 12 * GB_PER_HOUR);
    UndisturbedCourse course =
        course(
            60,
            copy("a", rare(0).over(office).build()),
            copy("b", rare(2).over(office).build()),
            copy("c", rare(4).over(office).build()));
    assertThat(held(course, 1, at)).isCloseTo(first, within(1e-6));
    assertThat(held(course, 2, at)).isCloseTo(second, within(1e-6));
    assertThat(held(course, 3, at)).isCloseTo(third, within(1e-6));
  }

  /** The second may use the 10 GB an hour from 4 h to 6 h only: two hours of five, then none. */
  @ParameterizedTest
  @CsvSource({"4, 40, 0", "5, 45, 5", "6, 50, 10", "9, 80, 10", "11, 100, 10", "29, 100, 20"})
  void outsideItsHoursAFeedTakesNoShare(double at, double first, double second) {
    Uplink office = Uplink.of("office", 10 * GB_PER_HOUR);
    UndisturbedCourse course =
        course(
            100,
            copy("a", rare(0).over(office).build()),
            copy("b", rare(0).over(office).between(4, 6).build()));
    assertThat(held(course, 1, at)).isCloseTo(first, within(1e-6));
    assertThat(held(course, 2, at)).isCloseTo(second, within(1e-6));
  }

  /** 200 GB by hand: 20 h at 10 GB an hour and 30 on the way; the link would take 100 h. */
  @ParameterizedTest
  @CsvSource({"3, 0", "52.9, 0", "53.1, 200"})
  void aFirstFillByHandIsThereAllAtOnce(double at, double gigabytes) {
    Feed feed = rare(3).link(2 * GB_PER_HOUR).carried(30, 10 * GB_PER_HOUR).build();
    assertThat(held(course(200, copy("far", feed)), 1, at)).isCloseTo(gigabytes, within(1e-6));
  }

  /** 40 h over the link: 50 by hand are no sooner. But in six hours a day they are. */
  @ParameterizedTest
  @CsvSource({"5, 0, 10", "5, 6, 0"})
  void theSoonerIsChosen(double at, double closes, double gigabytes) {
    FeedBuilder feed = rare(3).link(5 * GB_PER_HOUR).carried(30, 10 * GB_PER_HOUR);
    Feed chosen = (closes > 0 ? feed.between(0, closes) : feed).build();
    assertThat(held(course(200, copy("far", chosen)), 1, at)).isCloseTo(gigabytes, within(1e-6));
  }

  // ---- where it does not bind

  /** A studio in which much fails, with a nightly and an afternoon's feed of half an hour a TB. */
  private static Studio harsh(
      UnaryOperator<FeedBuilder> nightly, UnaryOperator<FeedBuilder> later, double restoresIn) {
    Shoots shoots = new Shoots(40, 10 * Units.GB, Shoots.Spacing.EVEN);
    Footage footage = Footage.builder(shoots).onHand(200 * Units.GB).build();
    FeedBuilder first = Feed.from("main").every(24, 2).link(2_000 * GB_PER_HOUR);
    FeedBuilder second = Feed.from("main").every(48, 14).link(2_000 * GB_PER_HOUR);
    Medium service =
        new Medium.Service(
            new Rate(1e-3), OptionalDouble.empty(), OptionalDouble.empty(), restoresIn);
    Layout layout =
        Layout.of(
            "l",
            dies("main", 300).build(),
            dies("far", 400).fed(nightly.apply(first).build()).restoresAt(30 * GB_PER_HOUR).build(),
            dies("third", 400)
                .fed(later.apply(second).build())
                .restoresAt(20 * GB_PER_HOUR)
                .build(),
            Copy.builder("cloud")
                .on(service)
                .fed(Feed.from("main").every(72, 9_000).link(5 * GB_PER_HOUR).build())
                .startsEmpty()
                .build());
    return Studio.builder("s", 0.3).footage(footage).layout(layout).build();
  }

  private static CopyBuilder dies(String id, double mean) {
    DriveModel model = DriveModel.builder(id, 9 * Units.TB).fails(new Exponential(mean)).build();
    return Copy.builder(id)
        .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).readErrors(1e-13).build())
        .noticed(new Delay.Lawful(new Exponential(10)))
        .arrival(new Fixed(20));
  }

  static Stream<List<Object>> whatDoesNotBind() {
    Uplink line = Uplink.of("line", 2_000 * GB_PER_HOUR);
    return Stream.of(
        List.of("always open", harsh(f -> f.between(0, 24), f -> f, 0)),
        List.of("open while it carries", harsh(f -> f.between(1, 7), f -> f.between(13, 20), 0)),
        List.of("an uplink of its own", harsh(f -> f.over(line), f -> f, 0)),
        List.of("shared at other times", harsh(f -> f.over(line), f -> f.over(line), 0)),
        List.of("never sooner by hand", harsh(f -> f.carried(50, 1e12), f -> f.carried(9, 1), 0)),
        List.of("late, with nothing to give", harsh(f -> f, f -> f, 500)));
  }

  @ParameterizedTest
  @MethodSource("whatDoesNotBind")
  void whatDoesNotBindChangesNoBit(List<Object> kind) {
    Studio plain = harsh(UnaryOperator.identity(), UnaryOperator.identity(), 0);
    History with = new History((Studio) kind.get(1), ((Studio) kind.get(1)).layouts().get(0), 3);
    History without = new History(plain, plain.layouts().get(0), 3);
    int lossy = 0;
    for (int k = 0; k < 400; k++) {
      Log a = new Log();
      Log b = new Log();
      with.simulate(k, a);
      without.simulate(k, b);
      assertThat(a.losses)
          .as("%s, history %s", kind.get(0), k)
          .usingRecursiveComparison()
          .isEqualTo(b.losses);
      assertThat(a.causes).isEqualTo(b.causes);
      assertThat(a.time).as("%s, history %s", kind.get(0), k).isEqualTo(b.time);
      lossy += a.losses.isEmpty() ? 0 : 1;
    }
    assertThat(lossy).isGreaterThan(100);
  }

  /** A refill of 200 GB at 20 GB an hour from a service that begins to give after 30 h. */
  @Test
  void aServiceThatGivesBackLate() {
    Shoots none = new Shoots(1e4, 1, Shoots.Spacing.EVEN);
    Footage footage = Footage.builder(none).onHand(200 * Units.GB).build();
    for (double late : new double[] {0, 30}) {
      Medium service =
          new Medium.Service(Rate.NONE, OptionalDouble.empty(), OptionalDouble.empty(), late);
      DriveModel model = DriveModel.builder("d", 9 * Units.TB).fails(new Fixed(500)).build();
      Layout layout =
          Layout.of(
              "l",
              Copy.builder("main")
                  .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
                  .arrival(new Fixed(20))
                  .build(),
              Copy.builder("cloud")
                  .on(service)
                  .fed(Feed.from("main").every(24).link(20 * GB_PER_HOUR).build())
                  .build());
      Studio studio = Studio.builder("s", 0.1).footage(footage).layout(layout).build();
      double[] times = new double[2];
      new History(studio, layout, 1)
          .tell(
              0,
              (happening, scene) -> {
                switch (happening.kind()) {
                  case COPY_BACK -> times[0] = happening.hours();
                  case REFILLED -> times[1] = happening.hours();
                  default -> {}
                }
              });
      assertThat(times[0]).isEqualTo(520);
      assertThat(times[1] - times[0]).isCloseTo(late + 10, within(1e-6));
    }
  }
}
