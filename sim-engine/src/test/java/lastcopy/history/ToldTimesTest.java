package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
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
import org.junit.jupiter.api.Test;

/**
 * A studio in which much happens and everything takes a fixed time: whatever the luck, each thing
 * that is told ends when the scenario says, and what is told of copies adds up.
 */
class ToldTimesTest {

  private static final int HISTORIES = 40;
  private static final double SIZE = 10;

  private final Map<Kind, Integer> seen = new EnumMap<>(Kind.class);
  private final Map<String, Double> ends = new HashMap<>();
  private final List<Double> notices = new ArrayList<>();
  private final List<Double> drops = new ArrayList<>();
  private final double[] lost = new double[1];
  private final double[] heldBefore = new double[2];

  private static Studio studio() {
    DriveModel model = DriveModel.builder("m", 1e6).fails(new Exponential(1_500)).build();
    Medium mirror =
        Medium.DriveSet.builder(Arrangement.MIRROR, 2).of(model).rebuild(new Fixed(10)).build();
    Medium single = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build();
    Copy main =
        Copy.builder("main")
            .on(mirror)
            .at(Place.of("studio", new Mishap("fire", Rate.perYear(1), .5)))
            .in(Box.of("tower", Rate.perYear(1)))
            .noticed(new Delay.Looks(24))
            .goneNoticed(new Delay.Looks(100))
            .arrival(new Fixed(5))
            .build();
    Copy far =
        Copy.builder("far")
            .on(single)
            .at(Place.of("home"))
            .arrival(new Fixed(40))
            .keepsDeleted(70)
            .spoils(Rate.perYear(3), 500)
            .fed(
                Feed.from("main")
                    .every(24, 2)
                    .link(1)
                    .stops(Rate.perYear(5))
                    .checkedEvery(48)
                    .build())
            .build();
    Desk desk =
        new Desk(
            Optional.of(new Desk.Deletion(Rate.perYear(4), new Desk.Bytes(15), new Fixed(90.25))),
            Optional.of(new Desk.Malware(Rate.perYear(1), new Fixed(50.5))));
    Footage footage =
        Footage.builder(new Shoots(31, SIZE, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Layout layout = new Layout("l", "l", List.of(main, far), OptionalDouble.empty());
    return Studio.builder("s", 1).footage(footage).desk(desk).layout(layout).build();
  }

  @Test
  void everythingEndsWhenItShould() {
    Studio studio = studio();
    History history = new History(studio, studio.layouts().get(0), 3);
    for (int number = 0; number < HISTORIES; number++) {
      ends.clear();
      notices.clear();
      drops.clear();
      lost[0] = 0;
      history.tell(number, this::look);
      assertThat(notices).as("all were noticed but those to come").allMatch(at -> at > 8_760);
    }
    for (Kind kind : Kind.values()) {
      boolean never =
          switch (kind) {
            case DRIVE_SWAPPED, DRIVE_ADDED, UNREADABLE, CARDS_EXPIRED, CARRIED -> true;
            default -> false;
          };
      assertThat(seen.getOrDefault(kind, 0) == 0).as("%s", kind).isEqualTo(never);
    }
  }

  private void look(Happening h, Snapshot now) {
    seen.merge(h.kind(), 1, Integer::sum);
    switch (h.kind()) {
      case START -> {
        assertThat(h.hours()).isZero();
        assertThat(now.heldBytes()).containsExactly(100, 100);
      }
      case DRIVE_FAILED -> driveFailed(h, now);
      case DRIVE_READY -> {
        endsNow("drive " + h.drive(), h);
        assertThat(now.drivesDown()[0]).isZero();
      }
      case COPY_GONE -> copyGone(h, now);
      case COPY_BACK -> {
        endsNow("copy " + h.copy(), h);
        assertThat(now.gone()[h.copy()]).isFalse();
        assertThat(now.drivesDown()[h.copy()]).isZero();
      }
      case REFILL_STARTED -> {
        assertThat(h.subject()).isEqualTo("far");
        assertThat(h.bytes()).isPositive().isLessThanOrEqualTo(now.heldBytes()[1]);
        assertThat(h.until()).isGreaterThan(h.hours());
      }
      case MISHAP ->
          assertThat(h.subject())
              .isIn("fire struck at 'studio'", "the box 'tower' took all drives in it");
      case SPOILT -> {
        assertThat(h.copy()).isEqualTo(1);
        // What it held it lost only by what was told; runs since then brought more.
        assertThat(h.bytes()).isBetween(heldBefore[1] - 1e-9, now.shotBytes());
        assertThat(now.heldBytes()[1]).isZero();
      }
      case DELETED -> noticed(h, 90.25, 15);
      case MALWARE -> noticed(h, 50.5, 1e6);
      case NOTICED -> {
        assertThat(notices.remove(Double.valueOf(h.hours()))).as("%s", h).isTrue();
        assertThat(h.subject()).isIn("footage was deleted by mistake", "malware struck");
      }
      case DELETION_ARRIVED -> {
        assertThat(h.copy()).isEqualTo(1);
        assertThat(h.until()).isCloseTo(h.hours() + 70, within(1e-9));
        drops.add(h.until());
      }
      case DROPPED -> {
        assertThat(drops).contains(h.hours());
        assertThat(h.bytes()).isPositive();
      }
      case FEED_STOPPED -> {
        assertThat(h.until()).isEqualTo(nextLook(h.hours(), 48));
        ends.put("feed", h.until());
      }
      case FEED_SEEN -> endsNow("feed", h);
      case LOST -> {
        assertThat(h.bytes()).isPositive();
        lost[0] += h.bytes();
      }
      case END -> assertThat(h.hours()).isEqualTo(8_760);
      default -> {}
    }
    addsUp(h, now);
  }

  /** Somebody looks every 24 h; then 5 h to the new drive and 10 h to its rebuild. */
  private void driveFailed(Happening h, Snapshot now) {
    assertThat(h.copy()).isZero();
    double ready = nextLook(h.hours(), 24) + 15;
    if (ready <= 8_760) {
      assertThat(h.until()).isCloseTo(ready, within(1e-9));
    } else {
      assertThat(h.until()).as("beyond the horizon nothing is known").isNaN();
    }
    assertThat(now.drivesDown()[0]).isEqualTo(1);
    ends.put("drive " + h.drive(), h.until());
  }

  private void copyGone(Happening h, Snapshot now) {
    double back = h.copy() == 0 ? nextLook(h.hours(), 100) + 5 : h.hours() + 40;
    assertThat(h.until()).isCloseTo(back, within(1e-9));
    assertThat(now.gone()[h.copy()]).isTrue();
    assertThat(h.bytes()).isLessThanOrEqualTo(now.shotBytes());
    if (h.copy() == 0) {
      ends.keySet().removeIf(what -> what.startsWith("drive")); // its repairs are dropped
    }
    ends.put("copy " + h.copy(), h.until());
  }

  private void noticed(Happening h, double after, double mostBytes) {
    assertThat(h.until()).isCloseTo(h.hours() + after, within(1e-9));
    assertThat(h.bytes()).isBetween(0.0, mostBytes + 1e-9);
    notices.add(h.until());
  }

  private void endsNow(String what, Happening h) {
    assertThat(ends.remove(what)).as("%s", h).isCloseTo(h.hours(), within(1e-9));
  }

  private static double nextLook(double hours, double every) {
    return Math.ceil(hours / every) * every;
  }

  private void addsUp(Happening h, Snapshot now) {
    double shot = 100 + SIZE * Math.floor(h.hours() / 31);
    assertThat(now.shotBytes()).isEqualTo(shot);
    assertThat(now.lostBytes()).isCloseTo(lost[0], within(1e-9));
    assertThat(now.weight()).isEqualTo(1);
    for (int c = 0; c < 2; c++) {
      double held = now.heldBytes()[c];
      assertThat(held).as("%s", h).isBetween(0.0, shot - lost[0] + 1e-9);
      assertThat(now.gone()[c] ? held : 0).isZero();
      heldBefore[c] = held;
    }
    assertThat(now.bareBytes()).isBetween(0.0, shot - lost[0] + 1e-9);
  }
}
