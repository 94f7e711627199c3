package lastcopy.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Loss;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Studio;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Studios;
import lastcopy.story.MissingSafeguard.Lack;
import org.junit.jupiter.api.Test;

/** What would have saved it, from histories made up by hand. */
class MissingSafeguardTest {

  private static final double NOT_KNOWN = Double.NaN;

  private static final CopyMaker MAIN = CopyMaker.set("main", Arrangement.MIRROR, 2);
  private static final CopyMaker FAR =
      CopyMaker.set("far", Arrangement.SINGLE, 1).nightly("main", 2, 1e6);

  private static List<MissingSafeguard> of(Made made, String cause, CopyMaker... copies) {
    Studio studio =
        Studios.of(8_760, Studios.shooting(1_000, 168, 100, 0), Studios.layout("l", copies));
    List<Moment> moments = made.moments();
    double at = moments.get(moments.size() - 1).hours();
    Loss loss = new Loss(at, 0, 1, 1, false, new Cause(cause, cause), 1);
    return MissingSafeguard.of(made.story(studio, loss), moments.size() - 1);
  }

  private static MissingSafeguard only(Made made, String cause) {
    List<MissingSafeguard> all = of(made, cause, MAIN, FAR);
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  /** A loss of all copies' bytes at the last instant, of so many bytes. */
  private static Made lost(Made made, double hours, double bytes, double... held) {
    return made.at(hours, Kind.COPY_GONE, 0, hours + 72, held)
        .bytes(bytes)
        .at(hours, Kind.LOST, -1, NOT_KNOWN, held);
  }

  @Test
  void aCopyThatIsAloneMissesAnotherAndASetMayHaveBeenDegraded() {
    Made made = new Made(1).at(100, Kind.DRIVE_FAILED, 0, 190, 9);
    assertThat(of(lost(made, 150, 9, 0), "drive+rebuild", MAIN))
        .containsExactly(
            new MissingSafeguard(Lack.DRIVE_DOWN, 0, 50),
            new MissingSafeguard(Lack.NO_OTHER_COPY, -1, NOT_KNOWN));
    Made whole = new Made(1).at(100, Kind.DRIVE_FAILED, 0, 140, 9);
    assertThat(of(lost(whole, 150, 9, 0), "box", MAIN))
        .extracting(MissingSafeguard::lack)
        .containsExactly(Lack.NO_OTHER_COPY);
    // A fire takes a whole set as well as a degraded one.
    assertThat(of(lost(made, 150, 9, 0), "place:fire", MAIN))
        .extracting(MissingSafeguard::lack)
        .containsExactly(Lack.NO_OTHER_COPY);
  }

  @Test
  void copiesThatGoTogetherMissOneElsewhere() {
    Made made = new Made(2).at(150, Kind.COPY_GONE, 1, 200, 9, 0);
    assertThat(only(lost(made, 150, 9, 0, 0), "place:fire").lack()).isEqualTo(Lack.STRUCK_TOGETHER);
  }

  @Test
  void theOtherCopyWasGoneOrNotFullOrSpoilt() {
    Made gone = new Made(2).at(100, Kind.COPY_GONE, 1, 300, 9, 0);
    assertThat(only(lost(gone, 150, 9, 0, 0), "drive+away"))
        .isEqualTo(new MissingSafeguard(Lack.OTHER_GONE, 1, 50));
    Made filling =
        new Made(2)
            .at(100, Kind.COPY_GONE, 1, 120, 9, 0)
            .at(120, Kind.COPY_BACK, 1, NOT_KNOWN, 9, 1);
    assertThat(only(lost(filling, 150, 8, 0, 1), "drive+away"))
        .isEqualTo(new MissingSafeguard(Lack.OTHER_NOT_FULL, 1, 50));
    Made spoilt = new Made(2).at(110, Kind.SPOILT, 1, NOT_KNOWN, 9, 1);
    assertThat(only(lost(spoilt, 150, 9, 0, 1), "drive"))
        .isEqualTo(new MissingSafeguard(Lack.OTHER_SPOILT, 1, 40));
  }

  /** What malware or a mistake takes before it was fed asks for no longer memory. */
  @Test
  void whatWasNeverCopiedWasBehindAndNotForgotten() {
    Made made =
        new Made(2)
            .at(340, Kind.MALWARE, -1, 500, 0, 1_000)
            .bytes(100)
            .at(340, Kind.LOST, -1, NOT_KNOWN, 0, 1_000);
    assertThat(only(made, "desk:malware+behind:hours").lack()).isEqualTo(Lack.OTHER_BEHIND);
    Made reached =
        new Made(2)
            .at(340, Kind.MALWARE, -1, 500, 0, 0)
            .bytes(100)
            .at(340, Kind.LOST, -1, NOT_KNOWN, 0, 0);
    assertThat(only(reached, "desk:malware").lack()).isEqualTo(Lack.NOTHING_KEPT);
    assertThat(of(reached, "desk:malware", MAIN))
        .extracting(MissingSafeguard::lack)
        .containsExactly(Lack.NOTHING_KEPT);
  }

  /** The working copy had lost it to a deletion that nobody had noticed: it was not behind. */
  @Test
  void whatWasDeletedElsewhereIsSaidSo() {
    Made made = new Made(2).at(100, Kind.DELETED, 0, 500, 8, 9);
    Made struck =
        made.at(150, Kind.COPY_GONE, 1, 222, 8, 0).bytes(1).at(150, Kind.LOST, -1, NOT_KNOWN, 8, 0);
    assertThat(only(struck, "drive+deleted"))
        .isEqualTo(new MissingSafeguard(Lack.OTHER_DELETED, 0, 50));
  }

  /** Bits that cannot be read are no spots that a scrub would have found. */
  @Test
  void aScrubHelpsAgainstDefectsOnly() {
    Made made = new Made(2).at(150, Kind.UNREADABLE, 0, NOT_KNOWN, 9, 9);
    Made lost = made.at(150, Kind.LOST, -1, NOT_KNOWN, 9, 9);
    assertThat(only(lost, "unreadable+rebuild").lack()).isEqualTo(Lack.UNREADABLE);
    assertThat(only(lost, "defect+rebuild").lack()).isEqualTo(Lack.DEFECT);
  }

  /** Shoots of 100 come at 168 h, 336 h ...; at 400 h the newest was shot 64 h before. */
  @Test
  void theOtherCopyWasBehindByTheAgeOfWhatIsLost() {
    Made made = new Made(2).at(10, Kind.START, -1, NOT_KNOWN, 1_000, 1_000);
    MissingSafeguard behind = only(lost(made, 400, 100, 0, 1_100), "drive+behind:days");
    assertThat(behind.lack()).isEqualTo(Lack.OTHER_BEHIND);
    assertThat(behind.hours()).isCloseTo(64, within(1e-9));
    Made stopped = new Made(2).at(300, Kind.FEED_STOPPED, 1, NOT_KNOWN, 1_100, 1_100);
    assertThat(only(lost(stopped, 400, 100, 0, 1_100), "drive+behind:days"))
        .isEqualTo(new MissingSafeguard(Lack.FEED_STOPPED, 1, 100));
    Made seen =
        new Made(2)
            .at(300, Kind.FEED_STOPPED, 1, NOT_KNOWN, 1_100, 1_100)
            .at(310, Kind.FEED_SEEN, 1, NOT_KNOWN, 1_100, 1_100);
    assertThat(only(lost(seen, 400, 100, 0, 1_100), "drive+behind:days").lack())
        .isEqualTo(Lack.OTHER_BEHIND);
  }

  @Test
  void whatWasDeletedWasDroppedTooSoon() {
    Made made =
        new Made(2)
            .at(100, Kind.DELETED, 0, 500, 8, 9)
            .at(400, Kind.DROPPED, 1, NOT_KNOWN, 8, 8)
            .at(400, Kind.LOST, -1, NOT_KNOWN, 8, 8);
    assertThat(only(made, "desk:deletion+late"))
        .isEqualTo(new MissingSafeguard(Lack.DROPPED_TOO_SOON, -1, 100));
  }
}
