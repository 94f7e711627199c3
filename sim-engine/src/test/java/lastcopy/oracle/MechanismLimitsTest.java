package lastcopy.oracle;

import static lastcopy.oracle.SmallStudios.AT_ONCE;
import static lastcopy.oracle.SmallStudios.deletes;
import static lastcopy.oracle.SmallStudios.eternal;
import static lastcopy.oracle.SmallStudios.even;
import static lastcopy.oracle.SmallStudios.footage;
import static lastcopy.oracle.SmallStudios.mortal;
import static lastcopy.oracle.SmallStudios.onHand;
import static lastcopy.oracle.SmallStudios.studio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.history.History;
import lastcopy.history.report.Happening;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * Each mechanism of the desk and of time where it is infinitely fast or never ends: there it is a
 * simpler model, under the same seed, history by history.
 */
class MechanismLimitsTest {

  private static final long HISTORIES = 4_000;
  private static final double NEVER = 1e9;

  // ---- refills that pay for unreadable bits

  /**
   * A shelf of one drive is a drive, also where it fails while it is being filled again: it pays
   * for what has crossed until then. Red if it pays for what never came.
   */
  @Test
  void aShelfOfOneDriveIsADrive() {
    same(
        plain(599, even(), Desk.QUIET, readWithErrors(), refilled(Arrangement.SHELF)),
        plain(599, even(), Desk.QUIET, readWithErrors(), refilled(Arrangement.SINGLE)));
  }

  private static Part readWithErrors() {
    return eternal("main").readErrors(5e-13);
  }

  private static Part refilled(Arrangement of) {
    return Part.set("far", of, 1, 300).sized(8_000).nightly("main", 2, 1);
  }

  /**
   * A spot of a copy went bad long ago, somewhere among what ten drives of a shelf hold too, 10 GB
   * each: each time that a drive fails and is filled again it costs a clip of 1 GB, if that lies in
   * what is read. Its start is anywhere in 99 GB, and meets what one of the eight inner drives held
   * from 11 of them, of the outer two from 10: 108/99 in all, and drives fail by t with a rate of
   * t/mean. Red if each refill meets it in whatever it reads.
   */
  @Test
  void aSpotIsMetOnlyByWhatIsReadThere() {
    double mean = 3_000;
    Part shelf = Part.set("main", Arrangement.SHELF, 10, mean).sized(10);
    Part far =
        eternal("far").defects(new Fixed(1e-3), new Fixed(NEVER)).every("main", 24, 2, AT_ONCE);
    Studio studio = plain(599, onHand(), Desk.QUIET, shelf, far.restores(AT_ONCE));
    agrees(studio, "any loss", -Math.expm1(-599 / mean * 108 / 99));
  }

  /**
   * Nobody turns to a copy of which nobody believes that it holds anything, however fast it would
   * be, so that nobody finds out that it is unusable; to one that is believed to hold all they do.
   */
  @Test
  void onlyWhatIsBelievedToHelpIsTurnedTo() {
    assertThat(timesFound(Part.single("fast", NEVER).every("main", NEVER, 900, 1).startsEmpty()))
        .isZero();
    assertThat(timesFound(Part.single("fast", NEVER).nightly("main", 2, AT_ONCE))).isPositive();
  }

  /**
   * Of two copies as fast the first is turned to, good or bad, since nobody can tell: if it is
   * unusable that is found out, if the second is it is not. Red if good ones are preferred.
   */
  @Test
  void nobodyPrefersTheGoodOne() {
    Part bad = Part.single("bad", NEVER).nightly("main", 2, AT_ONCE).spoils(50, NEVER);
    Part good = Part.single("good", NEVER).nightly("main", 2, AT_ONCE);
    assertThat(timesFound(bad, good)).isPositive();
    assertThat(timesFound(good, bad)).isZero();
  }

  private static int timesFound(Part fast) {
    Part slow = Part.single("slow", NEVER).nightly("main", 2, AT_ONCE).restores(1);
    return timesFound(fast.restores(AT_ONCE).spoils(50, NEVER), slow);
  }

  private static int timesFound(Part first, Part second) {
    Studio studio = plain(599, onHand(), Desk.QUIET, mortal(), first, second);
    History history = new History(studio, studio.layouts().get(0), 1);
    int[] found = {0};
    for (int k = 0; k < 100; k++) {
      history.tell(
          k,
          (happening, snapshot) ->
              found[0] += happening.kind() == Happening.Kind.SPOIL_FOUND ? 1 : 0);
    }
    return found[0];
  }

  // ---- deletion and malware

  /** What is noticed at once and kept is no mishap. Red if what was kept is not put back. */
  @Test
  void noticedAtOnceIsAsIfNothingHadHappened() {
    Desk desk =
        new Desk(
            Optional.of(
                new Desk.Deletion(new Rate(0.01), new Desk.Bytes(20 * Units.GB), new Fixed(0))),
            Optional.of(new Desk.Malware(new Rate(0.01), new Fixed(0))));
    same(withDesk(desk, 10), withDesk(Desk.QUIET, 10));
  }

  private static Studio withDesk(Desk desk, double kept) {
    return plain(
        599,
        even(),
        desk,
        mortal().keepsDeleted(kept),
        Part.single("far", 400).nightly("main", 2, AT_ONCE).keepsDeleted(kept).restores(AT_ONCE));
  }

  /**
   * What one drive keeps for good goes with it, no sooner: deletion and malware nobody notices
   * change nothing. Red if a copy that is gone loses only what it holds as usual.
   */
  @Test
  void keptForGoodGoesWithItsDrive() {
    Desk unseen =
        new Desk(
            Optional.of(
                new Desk.Deletion(new Rate(0.01), new Desk.Bytes(20 * Units.GB), new Fixed(NEVER))),
            Optional.of(new Desk.Malware(new Rate(0.01), new Fixed(NEVER))));
    same(
        plain(599, even(), unseen, mortal().keepsDeleted(NEVER)),
        plain(599, even(), Desk.QUIET, mortal().keepsDeleted(NEVER)));
  }

  /** Kept for less than it takes to notice is as good as lost. Red if kept time runs on. */
  @Test
  void keptForTooShortIsNotKept() {
    Desk desk =
        new Desk(
            Optional.of(new Desk.Deletion(new Rate(0.01), new Desk.Bytes(Units.GB), new Fixed(30))),
            Optional.empty());
    Map<String, ComparedMeans.Mean> kept =
        run(plain(600, onHand(), desk, eternal("main").keepsDeleted(31)));
    assertThat(kept.get("any loss").value()).isZero();
    Map<String, ComparedMeans.Mean> dropped =
        run(plain(601, onHand(), desk, eternal("main").keepsDeleted(1)));
    Map<String, ComparedMeans.Mean> never = run(plain(600, onHand(), desk, eternal("main")));
    assertThat(dropped.get("any loss")).isEqualTo(never.get("any loss"));
    assertThat(dropped.get("events")).isEqualTo(never.get("events"));
  }

  /**
   * Malware noticed after 12 h: a copy out of reach loses what it holds if its run comes first, 12
   * of 24 hours; a copy in reach always. Thinned Poisson processes. Red if reach is not asked for.
   */
  @Test
  void malwareInReachAndOutOfReach() {
    double perHour = 1 / 400.0;
    Desk desk =
        new Desk(Optional.empty(), Optional.of(new Desk.Malware(new Rate(perHour), new Fixed(12))));
    int runs = 20;
    double horizon = 14 + 24 * (runs - 1) + 1;
    Part far = eternal("far").every("main", 24, 14, AT_ONCE);
    agrees(
        plain(horizon, onHand(), desk, eternal("main"), far),
        "any loss",
        -Math.expm1(-perHour * horizon));
    agrees(
        plain(horizon, onHand(), desk, eternal("main"), far.offline()),
        "any loss",
        -Math.expm1(-perHour * 12 * runs));
  }

  // ---- rotation and visits

  /**
   * Two drives take turns every 72 h; malware that nobody notices takes the one on its visit at
   * once and the other at its next turn. By 144 h all is lost if it struck before the end of the
   * visit at 72. Red if a visitor is out of reach, or stays in reach for good.
   */
  @Test
  void visitorsAreInReachOfMalware() {
    double perHour = 1 / 60.0;
    Desk desk =
        new Desk(
            Optional.empty(), Optional.of(new Desk.Malware(new Rate(perHour), new Fixed(NEVER))));
    for (double visit : new double[] {10, 60}) {
      agrees(
          plain(
              144,
              onHand(),
              desk,
              eternal("main"),
              eternal("swap").every("main", 144, 0, AT_ONCE).rotates(2, 72, visit)),
          "everything",
          -Math.expm1(-perHour * (72 + visit)));
    }
  }

  /**
   * With a shoot an hour and a swap every T = 72 h, a drive that dies just before the swap costs T
   * of work, just after it one hour, T/2 on average. Red if turns are not offset.
   */
  @Test
  void workSinceTheSwapIsAtWorstTheWholeTurn() {
    double sum = 0;
    for (int hour = 0; hour < 72; hour++) {
      double lost = lostByDeathAt(216.5 + hour);
      assertThat(lost).isEqualTo((hour + 1) * Units.GB);
      sum += lost;
    }
    assertThat(sum / 72).isCloseTo((72 + 1) / 2.0 * Units.GB, within(1.0));
  }

  private static double lostByDeathAt(double hours) {
    Studio studio =
        plain(
            hours + 1,
            footage(10, 1, 1, Shoots.Spacing.EVEN),
            Desk.QUIET,
            eternal("main").lives(new Fixed(hours)).arrives(new Fixed(NEVER)),
            eternal("swap").every("main", 216, 0, AT_ONCE).rotates(3, 72, 24));
    return ComparedMeans.resultOf(studio, 2, 1).bytesLost().value();
  }

  // ---- cards and age

  /** Cards kept for no time are no cards; kept for good, no drive costs a shoot. */
  @Test
  void cardsKeptForNoTimeAndForGood() {
    Part far = Part.single("far", 400).nightly("main", 2, AT_ONCE);
    same(withCards(OptionalDouble.of(1e-9), far), withCards(OptionalDouble.empty(), far));
    assertThat(run(withCards(OptionalDouble.of(NEVER), far)).get("any loss").value()).isZero();
  }

  private static Studio withCards(OptionalDouble keep, Part far) {
    return studio(599, even(), Desk.QUIET, keep, mortal(), far); // no shoot at the very end
  }

  /** A fire takes the cards where it takes the working copy. Red if cards outlive it. */
  @Test
  void cardsGoWithTheirPlace() {
    Place place = new Place("studio", List.of(new Mishap("fire", new Rate(1 / 300.0), 1)));
    Part main = eternal("main").at(place).arrives(new Fixed(0));
    Map<String, ComparedMeans.Mean> cards =
        run(studio(599, even(), Desk.QUIET, OptionalDouble.of(NEVER), main));
    Map<String, ComparedMeans.Mean> none = run(plain(599, even(), Desk.QUIET, main));
    for (String figure : List.of("any loss", "everything", "events", "bytes")) {
      assertThat(cards.get(figure)).as(figure).isEqualTo(none.get(figure));
    }
  }

  /**
   * What ages out at once never counts: no loss, nothing bare. Red if ageing is left out, or if
   * what is removed counts though it has aged out.
   */
  @Test
  void footageThatAgesAtOnceNeverCounts() {
    Footage aging =
        new Footage(
            0, even().shoots(), 0, OptionalDouble.of(1e-6), Units.GB, OptionalDouble.empty());
    neverCounts(run(plain(600, aging, Desk.QUIET, mortal())));
    // A shelf goes on holding it, and it counts for nothing all the same.
    Part shelf = Part.set("main", Arrangement.SHELF, 1, 500);
    neverCounts(run(plain(600, aging, Desk.QUIET, shelf)));
  }

  private static void neverCounts(Map<String, ComparedMeans.Mean> figures) {
    assertThat(figures.get("any loss").value()).isZero();
    assertThat(figures.get("bare days").value()).isCloseTo(0, within(1e-4));
  }

  // ---- feeds that stop, copies that spoil

  /**
   * A stop that is looked at whenever a run is due costs nothing: the run does start. One that
   * nobody looks at, at the very beginning, leaves no feed. Red if a look does not start the feed
   * again; red if a stopped feed runs.
   */
  @Test
  void stopsSeenAtOnceOrNever() {
    Studio steady = plain(599, even(), Desk.QUIET, mortal(), nightly());
    same(plain(599, even(), Desk.QUIET, mortal(), nightly().stops(20, 0.25)), steady);
    same(
        plain(599, even(), Desk.QUIET, mortal(), late().stops(0.5, NEVER)),
        plain(599, even(), Desk.QUIET, mortal(), eternal("far").every("main", NEVER, NEVER, 1)));
  }

  /** Surely stopped before the first run at 23 h. */
  private static Part late() {
    return eternal("far").nightly("main", 23, AT_ONCE);
  }

  private static Part nightly() {
    return eternal("far").nightly("main", 2, AT_ONCE);
  }

  /** Tried very often is hardly spoilt. Red if a try finds nothing. */
  @Test
  void triedVeryOftenIsHardlySpoilt() {
    Map<String, ComparedMeans.Mean> tried =
        run(plain(599, even(), Desk.QUIET, mortal(), far().spoils(50, 1e-7)));
    Map<String, ComparedMeans.Mean> steady = run(plain(599, even(), Desk.QUIET, mortal(), far()));
    assertThat(tried.get("any loss")).isEqualTo(steady.get("any loss"));
    assertThat(tried.get("events")).isEqualTo(steady.get("events"));
    assertThat(run(plain(599, even(), Desk.QUIET, mortal(), far().spoils(50, NEVER))).get("events"))
        .isNotEqualTo(steady.get("events"));
  }

  /**
   * The working copy dies every 100 h: that a refill needs the far copy finds it out as a try at
   * that hour does. Red if a refill does not find out.
   */
  @Test
  void neededForARefillIsAsGoodAsTried() {
    Part dies = eternal("main").lives(new Fixed(100)).arrives(new Fixed(0));
    Studio needed = plain(990, even(), Desk.QUIET, dies, far().spoils(150, NEVER));
    same(needed, plain(990, even(), Desk.QUIET, dies, far().spoils(150, 100)));
  }

  private static Part far() {
    return eternal("far").continuous("main", AT_ONCE).restores(AT_ONCE).arrives(new Fixed(0));
  }

  // ---- exposure

  /**
   * The far copy alone holds a block from the first deletion on: T − (1 − e^(−λT))/λ hours. Red if
   * a deleted block is still counted for the working copy.
   */
  @Test
  void deletedBlocksStandInOneCopyOnly() {
    double horizon = 600;
    double bare = horizon + Math.expm1(-horizon / 200) * 200;
    agrees(
        plain(
            horizon,
            onHand(),
            deletes(200, 1, NEVER),
            eternal("main"),
            eternal("far").every("main", NEVER, NEVER, 1)),
        "bare days",
        bare / horizon * 365);
  }

  /** While both keep what is deleted it is in two copies. Red if what is kept does not count. */
  @Test
  void keptBlocksCountAsHeld() {
    Studio kept =
        plain(
            600,
            onHand(),
            deletes(200, 1, NEVER),
            eternal("main").keepsDeleted(NEVER),
            eternal("far").nightly("main", 2, AT_ONCE).keepsDeleted(NEVER));
    assertThat(run(kept).get("bare days").value()).isZero();
  }

  /** A lone drive's shoots are bare once their cards are formatted. Red if cards do not count. */
  @Test
  void cardsCountAsACopy() {
    Map<String, ComparedMeans.Mean> figures =
        run(studio(600, even(), Desk.QUIET, OptionalDouble.of(30), eternal("main")));
    assertThat(figures.get("bare days").value()).isCloseTo((600 - 80) / 600.0 * 365, within(1e-6));
    assertThat(figures.get("most bare bytes").value()).isCloseTo(11 * 12 * Units.GB, within(1.0));
  }

  // ---- helpers

  private static Studio plain(double horizon, Footage footage, Desk desk, Part... parts) {
    return studio(horizon, footage, desk, OptionalDouble.empty(), parts);
  }

  private static Map<String, ComparedMeans.Mean> run(Studio studio) {
    return ComparedMeans.ofEngine(studio, HISTORIES, 1);
  }

  /** Every figure the same, to the rounding of parts carried. */
  private static void same(Studio one, Studio other) {
    Map<String, ComparedMeans.Mean> a = run(one);
    Map<String, ComparedMeans.Mean> b = run(other);
    assertThat(b.get("any loss").value()).isPositive();
    b.forEach(
        (name, mean) ->
            assertThat(a.get(name).value())
                .as(name)
                .isCloseTo(mean.value(), within(1e-7 * mean.value())));
  }

  /** Within 4.89 standard errors, an alarm rate of 1e-6 by the normal limit. */
  private static void agrees(Studio studio, String figure, double exact) {
    ComparedMeans.Mean mean = ComparedMeans.ofEngine(studio, 20_000, 1).get(figure);
    assertThat(Math.abs(mean.value() - exact))
        .as("%s: %s, exactly %s", figure, mean, exact)
        .isLessThanOrEqualTo(4.89 * mean.error());
  }
}
