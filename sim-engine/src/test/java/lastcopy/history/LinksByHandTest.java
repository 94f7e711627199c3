package lastcopy.history;

import static lastcopy.history.Rows.after;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
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

/**
 * How long it takes to bring back a copy of 100 bytes that dies at 100 h and has hardware again at
 * 124, by hand: its feed runs every day at 2, so first at 146 h, at ten bytes an hour unless
 * something is special about its link.
 */
class LinksByHandTest {

  private static final double PER_HOUR = 1 / Units.SECONDS_PER_HOUR;
  private static final double FOREVER = 1e9;

  private static Studio studio(double horizon, Copy... copies) {
    Footage footage =
        Footage.builder(new Shoots(FOREVER, 10, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Layout layout = new Layout("l", "l", List.of(copies), OptionalDouble.empty());
    return Studio.builder("s", horizon / Units.HOURS_PER_YEAR)
        .footage(footage)
        .layout(layout)
        .build();
  }

  private static CopyBuilder copy(String id, double lives) {
    return ByHand.copy(id, Arrangement.SINGLE, 1e6, lives, FOREVER);
  }

  private static FeedBuilder daily() {
    return Feed.from("main").every(24, 2).link(10 * PER_HOUR);
  }

  private static Copy far(FeedBuilder feed) {
    DriveModel old =
        DriveModel.builder("m", 1e6).fails(new Fixed(1_000)).age(new Fixed(900)).build();
    return Copy.builder("far")
        .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(old).build())
        .arrival(new Fixed(24))
        .fed(feed.build())
        .build();
  }

  private static List<String> broughtBack(Copy... copies) {
    return after("COPY_BACK", Rows.told(studio(300, copies))).stream()
        .skip(1)
        .map(row -> row.substring(0, row.indexOf(" [")))
        .toList();
  }

  /** 146 h is two in the morning: 40 bytes by six, and 60 from midnight, 168 h, on. */
  @Test
  void atItsHours() {
    Copy main = copy("main", FOREVER).build();
    assertThat(broughtBack(main, far(daily())))
        .containsExactly("156 REFILLED 1 -1 0 -", "300 END -1 -1 0 -");
    assertThat(broughtBack(main, far(daily().between(0, 6))))
        .containsExactly("174 REFILLED 1 -1 0 -", "300 END -1 -1 0 -");
  }

  /** The same with a first fill that is under way when another copy dies at 3 h. */
  @Test
  void atItsHoursOnceSomethingHasHappened() {
    FeedBuilder once = Feed.from("main").every(1_000).link(10 * PER_HOUR).between(0, 6);
    Copy far = copy("far", FOREVER).startsEmpty().fed(once.build()).build();
    Copy other = copy("other", 3).fed(daily().build()).build();
    Studio studio = studio(12, copy("main", FOREVER).build(), far, other);
    History history = new History(studio, studio.layouts().get(0), 1);
    assertThat(ToldHistory.of(history, 0).after(Kind.END).heldBytes()[1])
        .isCloseTo(60, within(1e-9));
  }

  /**
   * Another that is first filled from 140 h on has 60 bytes by 146, and the rest at 5 an hour by
   * 154, when the one that is brought back has 40: its 60 others have come by 160. If the other
   * dies at 150 h it has 20 by then, and the 80 others come by 158.
   */
  @Test
  void overAnUplinkThatAnotherUsesToo() {
    Uplink office = Uplink.of("office", 10 * PER_HOUR);
    FeedBuilder once = Feed.from("main").every(1_000, 140).over(office);
    for (double lives : new double[] {FOREVER, 150}) {
      Copy other = copy("other", lives).startsEmpty().fed(once.build()).build();
      List<String> rows =
          broughtBack(
              copy("main", FOREVER).build(),
              far(Feed.from("main").every(24, 2).over(office)),
              other);
      assertThat(rows)
          .contains((lives == 150 ? 158 : 160) + " REFILLED 1 -1 0 -")
          .hasSize(lives == 150 ? 3 : 2);
    }
  }

  /**
   * Ten hours at ten bytes an hour and thirty on the way, or a hundred over the link: it is
   * carried. If the working copy dies at 160 h it does not arrive.
   */
  @Test
  void byHand() {
    FeedBuilder slow = Feed.from("main").every(24, 2).link(PER_HOUR);
    assertThat(broughtBack(copy("main", FOREVER).build(), far(slow.carried(30, 10 * PER_HOUR))))
        .containsExactly("146 CARRIED 1 -1 100 186", "186 REFILLED 1 -1 0 -", "300 END -1 -1 0 -");
    assertThat(broughtBack(copy("main", 160).build(), far(slow)))
        .containsExactly(
            "146 CARRIED 1 -1 100 186",
            "160 COPY_GONE 0 -1 100 1000000160",
            "160 LOST -1 -1 100 -",
            "300 END -1 -1 0 -");
  }

  /** A feed that stops and nobody sees it stops no one who carries a drive. */
  @Test
  void byHandThoughTheFeedStops() {
    FeedBuilder stops =
        Feed.from("main")
            .every(24, 2)
            .link(PER_HOUR)
            .carried(30, 10 * PER_HOUR)
            .stops(new Rate(1 / 500.0));
    Studio studio = studio(300, copy("main", FOREVER).build(), far(stops));
    History history = new History(studio, studio.layouts().get(0), 1);
    int stopped = 0;
    for (int k = 0; k < 200; k++) {
      ToldHistory told = ToldHistory.of(history, k);
      List<Happening> stop = told.all(Kind.FEED_STOPPED);
      boolean before = !stop.isEmpty() && stop.get(0).hours() < 146;
      boolean meanwhile = !before && !stop.isEmpty() && stop.get(0).hours() < 186;
      assertThat(told.all(Kind.CARRIED)).hasSize(before ? 0 : 1);
      assertThat(told.after(Kind.END).heldBytes()[1]).isEqualTo(before ? 0 : 100);
      stopped += meanwhile ? 1 : 0;
    }
    assertThat(stopped).isPositive();
  }

  /**
   * The near copy is filled over an uplink of ten bytes an hour, and the far one, behind it, over
   * the same: as it has something to carry all the while, they have five each, and it is behind by
   * no more than what comes in a quarter of an hour, and carries for as long.
   */
  @Test
  void behindOneThatIsBeingFilledOverTheSameUplink() {
    Uplink office = Uplink.of("office", 10 * PER_HOUR);
    Copy near =
        copy("near", FOREVER)
            .startsEmpty()
            .fed(Feed.from("main").every(1_000).over(office).build())
            .build();
    Copy far =
        copy("far", FOREVER)
            .startsEmpty()
            .fed(Feed.from("near").continuous().over(office).build())
            .build();
    List<Snapshot> ends = new ArrayList<>();
    for (double horizon : new double[] {10, 30}) {
      Studio studio = studio(horizon, copy("main", FOREVER).build(), near, far);
      ToldHistory told = ToldHistory.of(new History(studio, studio.layouts().get(0), 1), 0);
      ends.add(told.after(Kind.END));
    }
    assertThat(ends.get(0).heldBytes()[1]).isCloseTo(50, within(1e-6));
    assertThat(ends.get(0).heldBytes()[2]).isBetween(47.5, 50.0);
    assertThat(ends.get(1).heldBytes()).containsExactly(100, 100, 100);
  }
}
