package lastcopy.outlook.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lastcopy.law.Exponential;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Route;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Room, drives, limits, streams and offloads by hand arithmetic. A fill limit of 80 %, room for 2
 * to 3 years ahead and boxes of 13 drives are common practice, no source.
 *
 * <p>Sabotage seen red: the fill limit left out of the number of drives; a shelf whose footage ages
 * out; the part next to the slowest taken among all parts of the way.
 */
class RoomAndTimeTest {

  private static final double TB = Units.TB;

  private static DriveModel model(String id, double bytes, double speed) {
    return DriveModel.builder(id, bytes).speed(speed).fails(new Exponential(1e6)).build();
  }

  private static Medium drives(int n, Arrangement arrangement, DriveModel model) {
    return Medium.DriveSet.builder(arrangement, n).of(model).build();
  }

  private static Copy main(Medium medium) {
    return Copy.builder("main").at(Place.of("studio")).on(medium).build();
  }

  /** 1 TB a year, a twelfth of it each month. */
  private static Footage terabyteAYear(double onHand) {
    Shoots monthly = new Shoots(Units.HOURS_PER_MONTH, TB / 12, Shoots.Spacing.EVEN);
    return Footage.builder(monthly).onHand(onHand).build();
  }

  private static RoomAndTime room(
      double years, Footage footage, double fill, double stream, Copy... copies) {
    Studio studio =
        Studio.builder("s", years).footage(footage).layout(Layout.of("l", copies)).build();
    OptionalDouble rate = stream == 0 ? OptionalDouble.empty() : OptionalDouble.of(stream);
    return RoomAndTime.of(studio, Outlook.of(studio), fill, rate);
  }

  private static OptionalInt drives(RoomAndTime room, Arrangement arrangement, double years) {
    return room.choices().stream()
        .filter(c -> c.arrangement() == arrangement && c.years() == years)
        .findFirst()
        .orElseThrow()
        .drives();
  }

  /** Two 2 TB drives mirrored, filled to the brim; under a limit of 80 % it takes 2.5 TB. */
  @Test
  void aTerabyteAYearForTwoYearsNeedsTwoTerabytesUsable() {
    Copy main = main(drives(2, Arrangement.MIRROR, model("d", 2 * TB, 120e6)));
    RoomAndTime brim = room(2, terabyteAYear(0), 1, 0, main);
    assertThat(brim.needs().get(2).roomBytes()).isCloseTo(2 * TB, within(1e3));
    assertThat(drives(brim, Arrangement.MIRROR, 2)).hasValue(2);
    assertThat(brim.layouts().get(0).copies().get(0).dues()).isEmpty();
    RoomAndTime usual = room(2, terabyteAYear(0), RoomAndTime.USUAL_FILL, 0, main);
    assertThat(usual.needs().get(2).roomBytes()).isCloseTo(2.5 * TB, within(1e3));
    assertThat(drives(usual, Arrangement.MIRROR, 2)).isEmpty();
    assertThat(drives(usual, Arrangement.PAIRS, 2)).hasValue(4);
    DriveDue due = usual.layouts().get(0).copies().get(0).dues().get(0);
    // 1.6 TB are 19.2 months of shoots: the twentieth is too much.
    assertThat(due.years()).isCloseTo(20 / 12.0, within(1e-9));
    assertThat(due.drives()).isEmpty();
  }

  /** 4 TB a year on drives of 8 TB of which 6.4 may be filled: 8, 12 and 20 TB on 2, 2 and 4. */
  @Test
  void drivesAreToldForTwoAndThreeYearsAheadAndToTheEnd() {
    Shoots monthly = new Shoots(Units.HOURS_PER_MONTH, TB / 3, Shoots.Spacing.EVEN);
    Copy main = main(drives(1, Arrangement.SINGLE, model("d", 8 * TB, 120e6)));
    RoomAndTime room = room(5, Footage.builder(monthly).build(), 0.8, 0, main);
    assertThat(room.choices().stream().map(DriveChoice::years).distinct())
        .containsExactly(2.0, 3.0, 5.0);
    assertThat(drives(room, Arrangement.SHELF, 2)).hasValue(2);
    assertThat(drives(room, Arrangement.SHELF, 3)).hasValue(2);
    assertThat(drives(room, Arrangement.SHELF, 5)).hasValue(4);
    assertThat(drives(room, Arrangement.PARITY, 5)).hasValue(5);
    assertThat(drives(room, Arrangement.DOUBLE_PARITY, 5)).hasValue(6);
    assertThat(drives(room, Arrangement.PAIRS, 3)).hasValue(4);
    // Two years are the whole plan of a studio that looks no further.
    assertThat(room(2, terabyteAYear(0), 0.8, 0, main).choices().stream().map(DriveChoice::years))
        .containsOnly(2.0);
  }

  /** Of each arrangement the least that fits: one less, where that can be arranged, is too few. */
  @ParameterizedTest
  @EnumSource(Arrangement.class)
  void noFewerDrivesWouldDo(Arrangement arrangement) {
    for (double bytes = 0; bytes < 30 * TB; bytes += 0.7 * TB) {
      double need = bytes;
      OptionalInt drives = arrangement.drivesFor(need, 2 * TB);
      OptionalInt found =
          java.util.stream.IntStream.rangeClosed(1, 100)
              .filter(arrangement::fits)
              .filter(n -> arrangement.usableDrives(n) * 2 * TB >= need)
              .findFirst();
      assertThat(drives).as(arrangement + " " + bytes).isEqualTo(found);
    }
    assertThat(Arrangement.SHELF.drivesFor(1e21, 1)).isEmpty();
  }

  /**
   * A network box of 13 drives of 16 TB, two for parity: 176 TB usable, 140.8 of it to be filled.
   * It promises Gigabit, whose frames carry 117.7 MB/s (IEEE 802.3): two streams of 400 Mbit/s, 50
   * MB/s each, whatever its drives do.
   */
  @Test
  void aNetworkBoxOfThirteenDrives() {
    Copy main =
        Copy.builder("main")
            .at(Place.of("studio"))
            .in(
                new Box(
                    "tower",
                    Rate.NONE,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.of(125e6)))
            .on(drives(13, Arrangement.DOUBLE_PARITY, model("d", 16 * TB, 200e6)))
            .build();
    Shoots weekly = new Shoots(168, 0.54 * TB, Shoots.Spacing.EVEN);
    RoomAndTime room = room(6, Footage.builder(weekly).onHand(20 * TB).build(), 0.8, 50e6, main);
    LayoutRoom layout = room.layouts().get(0);
    DriveDue due = layout.copies().get(0).dues().get(0);
    // 120.8 TB more are 223.7 shoots.
    assertThat(due.years()).isCloseTo(224 * 168 / 8760.0, within(1e-9));
    assertThat(due.drives()).hasValue(14);
    assertThat(layout.streams().orElseThrow().count()).isEqualTo(2);
    assertThat(layout.streams().get().slowest().bytesPerSecond() / 1e6)
        .isCloseTo(117.7, within(0.05));
    assertThat(layout.offload().orElseThrow().hoursNow()).isCloseTo(1.2, within(1e-9));
    assertThat(layout.offload().get().slowest()).isEqualTo(new Route.Part("box tower", 125e6));
  }

  /** Frames of 1, 2.5 and 10 Gbit/s carry 117.7, 294 and 1,177 MB/s: 4, 11 and 47 of 25 MB/s. */
  @Test
  void aNetworkLineServesAsManyAsItsFramesCarry() {
    Streams streams = new Streams(25e6, new Route.Part("box", 2e9));
    assertThat(streams.count()).isEqualTo(80);
    assertThat(streams.over(1e9)).isEqualTo(4);
    assertThat(streams.over(2.5e9)).isEqualTo(11);
    assertThat(streams.over(1e10)).isEqualTo(47);
    assertThat(new Streams(50e6, new Route.Part("drive d", 100e6)).count()).isEqualTo(2);
    assertThat(new Streams(50e6, new Route.Part("drive d", 99e6)).over(1e10)).isEqualTo(1);
  }

  private static WayLimit limit(Copy main, Medium far, double link, Route.Kind kind) {
    Feed feed =
        link == 0
            ? Feed.from("main").continuous().build()
            : Feed.from("main").continuous().link(link).build();
    Copy fed = Copy.builder("far").at(Place.of("home")).on(far).fed(feed).build();
    RoomAndTime room = room(1, terabyteAYear(0), 0.8, 0, main, fed);
    return room.layouts().get(0).copy("far").limits().stream()
        .filter(l -> l.way().kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  /** The link goes: the slower drive. The slower drive goes: the faster one, if they differ. */
  @Test
  void whatAWayWouldDoWithoutItsSlowestPart() {
    Copy main = main(drives(1, Arrangement.SINGLE, model("fast", 8 * TB, 200e6)));
    Medium slow = drives(1, Arrangement.SINGLE, model("slow", 8 * TB, 90e6));
    WayLimit byLink = limit(main, slow, 2.5e6, Route.Kind.FEED);
    assertThat(byLink.without()).isEqualTo(90e6);
    assertThat(byLink.next()).contains(new Route.Part("drive slow", 90e6));
    WayLimit byDrive = limit(main, slow, 0, Route.Kind.FEED);
    assertThat(byDrive.way().slowest().name()).isEqualTo("drive slow");
    assertThat(byDrive.without()).isEqualTo(200e6);
    Medium fast = drives(1, Arrangement.SINGLE, model("fast", 8 * TB, 200e6));
    WayLimit alike = limit(main, fast, 0, Route.Kind.FEED);
    assertThat(alike.without()).isInfinite();
    assertThat(alike.next()).isEmpty();
    // A stated rate that no drive can do is taken as it is, and so it stays.
    WayLimit overstated = limit(main, slow, 113e6, Route.Kind.FEED);
    assertThat(overstated.way().slowest().name()).isEqualTo("drive slow");
    assertThat(overstated.without()).isEqualTo(113e6);
    assertThat(overstated.helps()).isFalse();
  }

  /**
   * On a shelf nothing ages out, so it goes on growing; elsewhere a year of footage is the most.
   */
  @Test
  void footageThatAgesOutNeedsNoMoreRoomButOnAShelf() {
    Shoots monthly = new Shoots(Units.HOURS_PER_MONTH, TB / 12, Shoots.Spacing.EVEN);
    Footage kept = Footage.builder(monthly).keepFor(Units.HOURS_PER_YEAR).build();
    Copy shelf = main(drives(5, Arrangement.SHELF, model("d", 1.25 * TB, 120e6)));
    RoomAndTime room = room(4, kept, 0.8, 0, shelf);
    assertThat(room.needs())
        .extracting(RoomNeed::mostBytes)
        .last()
        .satisfies(most -> assertThat(most).isCloseTo(TB, within(1e3)));
    assertThat(drives(room, Arrangement.PAIRS, 4)).hasValue(2);
    assertThat(drives(room, Arrangement.SHELF, 4)).hasValue(4);
    List<DriveDue> dues = room.layouts().get(0).copies().get(0).dues();
    // A drive a year, each full at its 12th shoot: due with the 13th, 25th and 37th.
    assertThat(dues).extracting(due -> Math.round(due.years() * 12)).containsExactly(13L, 25L, 37L);
    assertThat(dues).extracting(due -> due.drives().orElse(0)).containsExactly(2, 3, 4);
  }
}
