package lastcopy.history.event.desk;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.history.History;
import lastcopy.history.report.Happening;
import lastcopy.history.report.HistoryListener;
import lastcopy.history.report.Snapshot;
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
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/** What is put back while a refill is bringing it. */
class DeskNoticesTest {

  private static final int HISTORIES = 300;

  private static CopyBuilder copy(String id, Law life) {
    DriveModel model = DriveModel.builder("drive", 8 * Units.TB).fails(life).build();
    return Copy.builder(id)
        .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
        .arrival(new Fixed(50))
        .restoresAt(1e6);
  }

  /**
   * A refill of 1 TB takes 278 h; malware is noticed after 200 h, and the online copy keeps all.
   */
  private static Studio studio() {
    Law never = new Exponential(1e30);
    Layout layout =
        Layout.of(
            "l",
            copy("main", new Exponential(1_000)).build(),
            copy("online", never)
                .fed(Feed.from("main").every(24).build())
                .keepsDeleted(1_000)
                .build(),
            copy("offline", never).offline().fed(Feed.from("main").every(24).build()).build());
    Desk desk = Desk.of(new Desk.Malware(new Rate(1.0 / 500), new Fixed(200)));
    Footage footage =
        Footage.builder(new Shoots(20_000, 1, Shoots.Spacing.EVEN)).onHand(1e12).build();
    return Studio.builder("s", 1).footage(footage).desk(desk).layout(layout).build();
  }

  /**
   * A copy that keeps what malware took has it again when that is noticed, and so has, 278 h later,
   * the copy that is fed by it, though nothing new comes to either. Red if only what the working
   * copy feeds has work then.
   */
  @Test
  void whatACopyHasAgainGoesOnToThoseThatItFeeds() {
    Law never = new Exponential(1e30);
    Feed seldom = Feed.from("main").every(20_000).build();
    Layout layout =
        Layout.of(
            "l",
            copy("main", never).build(),
            copy("second", never).fed(seldom).keepsDeleted(1_000).build(),
            copy("third", never).fed(Feed.from("second").continuous().link(1e6).build()).build());
    Desk desk = Desk.of(new Desk.Malware(new Rate(1.0 / 4_000), new Fixed(200)));
    Footage footage =
        Footage.builder(new Shoots(20_000, 1, Shoots.Spacing.EVEN)).onHand(1e12).build();
    Studio studio = Studio.builder("s", 1).footage(footage).desk(desk).layout(layout).build();
    History history = new History(studio, layout, 1);
    int[] met = new int[1];
    for (int k = 0; k < HISTORIES; k++) {
      double[] last = {Double.NaN};
      history.tell(
          k,
          (told, now) -> {
            if (told.kind() == Happening.Kind.MALWARE) {
              last[0] = told.hours();
              assertThat(now.heldBytes()).as("malware").containsOnly(0);
            }
            if (told.kind() == Happening.Kind.END && last[0] + 200 + 278 < told.hours()) {
              met[0]++;
              assertThat(now.heldBytes()).as("after all").containsOnly(1e12);
            }
          });
    }
    assertThat(met[0]).isGreaterThan(HISTORIES / 2);
  }

  /** Looks for malware while the working copy is away that is noticed while it is refilled. */
  private static final class Watch implements HistoryListener {
    int seen;
    private boolean away;
    private boolean struck;
    private boolean refilling;
    private double noticed;

    @Override
    public void saw(Happening happening, Snapshot snapshot) {
      switch (happening.kind()) {
        case START, COPY_GONE -> {
          away = happening.kind() == Happening.Kind.COPY_GONE;
          struck = false;
          refilling = false;
          noticed = Double.NaN;
        }
        case MALWARE -> {
          struck |= away && !refilling;
          away &= !refilling; // what strikes during the refill is another matter
        }
        case REFILL_STARTED -> refilling = true;
        case NOTICED -> noticed = refilling ? happening.hours() : noticed;
        case REFILLED -> isOver(happening.hours());
        default -> {}
      }
    }

    private void isOver(double at) {
      if (away && struck && !Double.isNaN(noticed)) {
        assertThat(at).isEqualTo(noticed);
        seen++;
      }
      away = false;
    }
  }

  /**
   * Malware that strikes while the working copy is away takes what the online copy holds, which
   * keeps it aside; the offline copy, slow, refills the working copy. When the malware is noticed
   * all is back at once, and the refill is over at that instant.
   *
   * <p>Red if the end of a refill that has become shorter is not set anew.
   */
  @Test
  void aRefillIsOverWhenAllThatItWasToBringIsPutBack() {
    Studio studio = studio();
    History history = new History(studio, studio.layouts().get(0), 5);
    Watch watch = new Watch();
    for (int k = 0; k < HISTORIES; k++) {
      history.tell(k, watch);
    }
    assertThat(watch.seen).isGreaterThan(20);
  }
}
