package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Expense;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.FootageBuilder;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How a deletion travels, by hand, whenever it happened: about one in 100 h, of ten bytes of 100 on
 * hand. Histories are told until the second deletion.
 */
class DeletionTravelsByHandTest {

  private static final double PER_HOUR = 1 / Units.SECONDS_PER_HOUR;
  private static final double FOREVER = 1e9;
  private static final int HISTORIES = 200;

  private static CopyBuilder copy(String id, double lives) {
    return ByHand.copy(id, Arrangement.SINGLE, 1e6, lives, 24);
  }

  private static FootageBuilder footage(double every, double bytes) {
    return Footage.builder(new Shoots(every, bytes, Shoots.Spacing.EVEN)).onHand(100).clip(1);
  }

  private static History history(
      double horizon,
      FootageBuilder footage,
      double bytes,
      double noticed,
      double cards,
      Copy... copies) {
    Desk.Deletion deletion =
        new Desk.Deletion(new Rate(1 / 100.0), new Desk.Bytes(bytes), new Fixed(noticed));
    OptionalDouble kept = cards > 0 ? OptionalDouble.of(cards) : OptionalDouble.empty();
    Layout layout = new Layout("l", "l", List.of(copies), kept);
    Studio studio =
        Studio.builder("s", horizon / Units.HOURS_PER_YEAR)
            .footage(footage.build())
            .desk(Desk.of(deletion))
            .layout(layout)
            .build();
    return new History(studio, layout, 1);
  }

  /** Histories with one deletion between two times and none before or after. */
  private static List<ToldHistory> withOne(History history, double from, double to) {
    List<ToldHistory> found = new ArrayList<>();
    for (int k = 0; k < HISTORIES; k++) {
      ToldHistory told = ToldHistory.of(history, k);
      List<Happening> deleted = told.all(Kind.DELETED);
      if (deleted.size() == 1 && deleted.get(0).hours() > from && deleted.get(0).hours() < to) {
        found.add(told);
      }
    }
    assertThat(found).hasSizeGreaterThan(5);
    return found;
  }

  private static List<String> rows(List<Happening> told) {
    return told.stream().map(each -> each.hours() + " " + each.copy()).toList();
  }

  /**
   * A hundred bytes are shot at 90 h and cross from 100 h on at one an hour; the working copy dies
   * at 150 h. What was deleted before 100 h has arrived then, and is dropped 30 h later and lost;
   * what was deleted after the run had begun is not on its way.
   */
  @Test
  void withARunThatIsCut() {
    Copy main = copy("main", 150).arrival(new Fixed(FOREVER)).build();
    Copy far =
        copy("far", FOREVER)
            .keepsDeleted(30)
            .fed(Feed.from("main").every(100).link(PER_HOUR).build())
            .build();
    History history = history(200, footage(90, 100), 10, FOREVER, 0, main, far);
    for (ToldHistory told : withOne(history, 0, 100)) {
      assertThat(rows(told.all(Kind.DELETION_ARRIVED))).containsExactly("150.0 1");
      assertThat(told.all(Kind.DELETION_ARRIVED).get(0).until()).isEqualTo(180);
      assertThat(rows(told.all(Kind.DROPPED))).containsExactly("180.0 1");
    }
    for (ToldHistory told : withOne(history, 100, 150)) {
      assertThat(told.all(Kind.DELETION_ARRIVED)).isEmpty();
    }
  }

  /**
   * To a second copy, behind the first: runs at 24, 48, ... and 12 h later are done in no time. The
   * first has it at the next run, and holds it for 30 h; the second at the next that starts later,
   * for 10 h: it is lost when the later of both drops it.
   */
  @Test
  void fromCopyToCopy() {
    Copy far =
        copy("far", FOREVER).keepsDeleted(30).fed(Feed.from("main").every(24).build()).build();
    Copy vault =
        copy("vault", FOREVER).keepsDeleted(10).fed(Feed.from("far").every(24, 12).build()).build();
    History history =
        history(
            200, footage(FOREVER, 1), 10, FOREVER, 0, copy("main", FOREVER).build(), far, vault);
    for (ToldHistory told : withOne(history, 0, 120)) {
      double first = Math.ceil(told.all(Kind.DELETED).get(0).hours() / 24) * 24;
      assertThat(rows(told.all(Kind.DELETION_ARRIVED)))
          .containsExactly(first + " 1", first + 12 + " 2");
      assertThat(rows(told.all(Kind.DROPPED)))
          .containsExactly(first + 22 + " 2", first + 30 + " 1");
      assertThat(told.all(Kind.LOST)).hasSize(1);
      assertThat(told.all(Kind.LOST).get(0).hours()).isEqualTo(first + 30);
      assertThat(told.all(Kind.LOST).get(0).bytes()).isCloseTo(10, within(1e-9));
    }
  }

  /**
   * The far copy dies at 150 h and is back at 174: the run of 192 brings the deletion once more.
   */
  @Test
  void againToACopyThatWasGone() {
    Copy main = copy("main", FOREVER).keepsDeleted(FOREVER).build();
    Copy far =
        copy("far", 150)
            .keepsDeleted(FOREVER)
            .fed(Feed.from("main").every(24).link(1e9).build())
            .build();
    History history = history(250, footage(FOREVER, 1), 10, FOREVER, 0, main, far);
    for (ToldHistory told : withOne(history, 0, 140)) {
      double first = Math.ceil(told.all(Kind.DELETED).get(0).hours() / 24) * 24;
      List<Happening> arrived = told.all(Kind.DELETION_ARRIVED);
      assertThat(arrived).extracting(Happening::copy).containsExactly(1, 1);
      assertThat(arrived.get(0).hours()).isEqualTo(first);
      assertThat(arrived.get(0).bytes()).isCloseTo(10, within(1e-9));
      assertThat(arrived.get(1).hours()).isCloseTo(192, within(1e-9));
      assertThat(arrived.get(1).bytes()).as("it came back without").isZero();
    }
  }

  /**
   * All that is on hand ages out at 95 h, but on a shelf; a deletion is noticed 60 h after it, when
   * it is put back into both copies if it still counts. Red if a copy has anything again that has
   * aged out.
   */
  @ParameterizedTest
  @CsvSource({"SINGLE, 0", "SHELF, 100"})
  void whatHasAgedOutIsNotPutBack(Arrangement arrangement, double aged) {
    Copy main = copy("main", FOREVER).keepsDeleted(FOREVER).build();
    Copy far =
        ByHand.copy("far", arrangement, 1e6, FOREVER, FOREVER)
            .keepsDeleted(FOREVER)
            .fed(Feed.from("main").every(24).build())
            .build();
    History history = history(200, footage(1_000, 1).keepFor(95), 10, 60, 0, main, far);
    for (ToldHistory told : withOne(history, 0, 95)) {
      Happening noticed = told.all(Kind.NOTICED).get(0);
      boolean counts = noticed.hours() < 95;
      assertThat(noticed.bytes()).isCloseTo(counts ? 10 : 0, within(1e-9));
      assertThat(told.after(Kind.NOTICED).heldBytes())
          .containsExactly(counts ? new double[] {100, 100} : new double[] {0, aged});
    }
  }

  /**
   * A service has all that is on hand for 95 h, aside or not, and asks 1 for a byte and an hour,
   * whatever is deleted and noticed, or not, when. Red if what it keeps aside stays on the bill.
   */
  @Test
  void whatHasAgedOutIsNotPaidFor() {
    Medium service =
        new Medium.Service(
            Rate.NONE,
            OptionalDouble.of(Units.HOURS_PER_MONTH * Units.TB),
            OptionalDouble.empty(),
            0);
    Copy cloud =
        Copy.builder("cloud")
            .on(service)
            .keepsDeleted(FOREVER)
            .fed(Feed.from("main").every(24).build())
            .build();
    History history =
        history(
            200, footage(1_000, 1).keepFor(95), 10, 60, 0, copy("main", FOREVER).build(), cloud);
    for (int k = 0; k < HISTORIES; k++) {
      Log log = new Log();
      history.simulate(k, log);
      assertThat(log.paid.get(Expense.SERVICES)).isCloseTo(9_500, within(1e-6));
    }
  }

  /**
   * Somebody deletes all that there is. A hundred bytes more are shot at 90 h, whose cards are kept
   * for 500 h. The working copy dies at 150 h and is back at 174 with what its cards have, less
   * what is deleted.
   */
  @Test
  void whatCardsHaveIsNotBroughtBackWhileItIsDeleted() {
    Copy main = copy("main", 150).keepsDeleted(FOREVER).build();
    History history = history(179, footage(90, 100), 200, FOREVER, 500, main);
    for (ToldHistory told : withOne(history, 0, 90)) {
      assertThat(told.after(Kind.END).heldBytes()).containsExactly(100);
    }
    for (ToldHistory told : withOne(history, 90, 140)) {
      assertThat(told.after(Kind.END).heldBytes()).containsExactly(0);
    }
  }
}
