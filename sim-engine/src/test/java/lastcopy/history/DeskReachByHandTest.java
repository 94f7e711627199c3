package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.FeedBuilder;
import lastcopy.scenario.Footage;
import lastcopy.scenario.FootageBuilder;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/** How much a deletion or malware takes, where, and what gives it back, by hand. */
class DeskReachByHandTest {

  private static final double PER_HOUR = 1 / Units.SECONDS_PER_HOUR;
  private static final double FOREVER = 1e9;
  private static final int HISTORIES = 200;

  private static CopyBuilder copy(String id, double lives) {
    return ByHand.copy(id, Arrangement.SINGLE, 1e6, lives, FOREVER);
  }

  private static FootageBuilder shooting(double every) {
    return Footage.builder(new Shoots(every, 10, Shoots.Spacing.EVEN)).onHand(100).clip(1);
  }

  private static History history(
      double horizon, FootageBuilder footage, Desk desk, Copy... copies) {
    Layout layout = new Layout("l", "l", List.of(copies), OptionalDouble.empty());
    Studio studio =
        Studio.builder("s", horizon / Units.HOURS_PER_YEAR)
            .footage(footage.build())
            .desk(desk)
            .layout(layout)
            .build();
    return new History(studio, layout, 1);
  }

  private static Desk deletes(double every, Desk.Amount size, double noticed) {
    return Desk.of(new Desk.Deletion(new Rate(1 / every), size, new Fixed(noticed)));
  }

  /** Shoots double in a year: three of the size at the time, of what is there. */
  @Test
  void shootsOfTheSizeAtTheTime() {
    Desk desk = deletes(20_000, new Desk.ShootCount(3), FOREVER);
    Copy main = copy("main", FOREVER).keepsDeleted(FOREVER).build();
    History history = history(20_000, shooting(1_000).growth(1), desk, main);
    int found = 0;
    for (int k = 0; k < HISTORIES; k++) {
      List<Happening> deleted = ToldHistory.of(history, k).all(Kind.DELETED);
      if (!deleted.isEmpty()) {
        Happening first = deleted.get(0);
        double size = 10 * Math.pow(2, first.hours() / Units.HOURS_PER_YEAR);
        assertThat(first.bytes()).isCloseTo(3 * size, within(1e-6));
        found++;
      }
    }
    assertThat(found).isPositive();
  }

  /**
   * Malware takes 100 bytes of the working copy and 100 of the turn that visits, from 0 to 24 h, at
   * 100, 200 and so on; a third copy is offline and a fourth has none before a run at 1,000 h.
   */
  @Test
  void malwareTakesWhatIsInReach() {
    DriveModel model = DriveModel.builder("m", 1e6).fails(new Fixed(FOREVER)).build();
    FeedBuilder visits = Feed.from("main").every(100).link(1e9).visits(24);
    Copy turns =
        Copy.builder("turn")
            .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
            .rotation(2, 100)
            .offline()
            .fed(visits.build())
            .build();
    FeedBuilder late = Feed.from("main").every(1_000, 1_000);
    Copy offline = copy("offline", FOREVER).offline().fed(late.build()).build();
    Copy online = copy("online", FOREVER).startsEmpty().fed(late.build()).build();
    Desk desk = Desk.of(new Desk.Malware(new Rate(1 / 200.0), new Fixed(FOREVER)));
    Copy main = copy("main", FOREVER).build();
    History history = history(500, shooting(FOREVER), desk, main, turns, offline, online);
    int visiting = 0;
    for (int k = 0; k < HISTORIES; k++) {
      List<Happening> struck = ToldHistory.of(history, k).all(Kind.MALWARE);
      if (!struck.isEmpty()) {
        boolean visited = struck.get(0).hours() % 100 < 24;
        assertThat(struck.get(0).bytes()).isEqualTo(visited ? 200 : 100);
        visiting += visited ? 1 : 0;
      }
    }
    assertThat(visiting).isPositive();
  }

  /**
   * All is deleted. The far copy, fed every day, has no versions; the vault, filled from it at one
   * byte an hour from the start, keeps what it has by then, and is fed no more: the rest is lost
   * with the far copy's next run. Red if what has crossed by then is not kept.
   */
  @Test
  void whatHasCrossedByThenIsKept() {
    Copy far = copy("far", FOREVER).fed(Feed.from("main").every(24).build()).build();
    Copy vault =
        copy("vault", FOREVER)
            .startsEmpty()
            .keepsDeleted(FOREVER)
            .fed(Feed.from("far").continuous().link(PER_HOUR).build())
            .build();
    Desk desk = deletes(50, new Desk.Bytes(100), FOREVER);
    History history =
        history(96, shooting(FOREVER), desk, copy("main", FOREVER).build(), far, vault);
    int found = 0;
    for (int k = 0; k < HISTORIES; k++) {
      List<Happening> deleted = ToldHistory.of(history, k).all(Kind.DELETED);
      Log log = new Log(false);
      history.simulate(k, log);
      if (deleted.isEmpty()) {
        assertThat(log.losses).isEmpty();
      } else {
        double run = Math.ceil(deleted.get(0).hours() / 24) * 24;
        assertThat(log.losses).hasSize(1);
        assertThat(log.losses.get(0)[0]).isEqualTo(run);
        assertThat(log.losses.get(0)[1]).isCloseTo(100 - run, within(1e-9));
        found++;
      }
    }
    assertThat(found).isPositive();
  }

  /**
   * Ten bytes are deleted, which the far copy keeps aside from its next run on, and noticed after
   * 60 h; the working copy dies at 150 h. The far copy has them again all the same, and the working
   * copy, when it is back at 250 h, none.
   */
  @Test
  void noticedWhileTheWorkingCopyIsGone() {
    Copy main = copy("main", 150).arrival(new Fixed(100)).keepsDeleted(FOREVER).build();
    Copy far =
        copy("far", FOREVER).keepsDeleted(FOREVER).fed(Feed.from("main").every(24).build()).build();
    History history =
        history(300, shooting(FOREVER), deletes(200, new Desk.Bytes(10), 60), main, far);
    int gone = 0;
    for (int k = 0; k < HISTORIES; k++) {
      ToldHistory told = ToldHistory.of(history, k);
      List<Happening> deleted = told.all(Kind.DELETED);
      if (deleted.size() == 1 && deleted.get(0).hours() < 150) {
        boolean isGone = deleted.get(0).hours() > 90;
        assertThat(told.all(Kind.NOTICED).get(0).bytes()).isCloseTo(10, within(1e-9));
        assertThat(told.after(Kind.NOTICED).heldBytes()[0]).isEqualTo(isGone ? 0 : 100);
        assertThat(told.after(Kind.NOTICED).heldBytes()[1]).isEqualTo(100);
        assertThat(told.all(Kind.LOST)).isEmpty();
        assertThat(told.after(Kind.COPY_BACK).heldBytes()[0]).isZero();
        gone += isGone ? 1 : 0;
      }
    }
    assertThat(gone).isPositive();
  }
}
