package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import lastcopy.experiment.LayoutResult;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Never;
import lastcopy.outlook.Threat;
import lastcopy.outlook.Threat.Fate;
import lastcopy.outlook.Threat.Kind;
import lastcopy.outlook.Threats;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is said of each copy after a mishap, against the engine: studios in which nothing but that
 * mishap happens, about once in each history, lose footage just when every copy of it is said to
 * go.
 */
class ThreatsTest {

  private static final double HOURS = 8_760;
  private static final Rate OFTEN = new Rate(1 / HOURS);
  private static final Fate STANDS = new Threat.Stands();
  private static final Fate GOES = new Threat.Goes();
  private static final Fate FOLLOWS = new Threat.Follows();

  /** A studio, what strikes, and what becomes of each copy. */
  record Case(String name, Studio studio, Kind kind, List<Fate> fates, boolean loses) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Case of(String name, Studio studio, Kind kind, boolean loses, Fate... fates) {
    return new Case(name, studio, kind, List.of(fates), loses);
  }

  static Stream<Case> cases() {
    CopyMaker quiet = CopyMaker.single("main", new Never());
    CopyMaker frail = CopyMaker.single("main", new Exponential(HOURS));
    Box box = Box.of("tower", OFTEN);
    Desk deletion = Desk.of(new Desk.Deletion(OFTEN, new Desk.Bytes(1e9), new Fixed(100)));
    Desk malware = Desk.of(new Desk.Malware(OFTEN, new Fixed(100)));
    return Stream.of(
        of("one drive", archive(frail), Kind.DRIVE, true, GOES),
        of("a drive and a copy", archive(frail, far()), Kind.DRIVE, false, GOES, GOES),
        of(
            "a mirror",
            archive(CopyMaker.set("main", Arrangement.MIRROR, 2).life(new Exponential(1e5))),
            Kind.DRIVE,
            false,
            STANDS),
        of(
            "a fire",
            archive(quiet.at(Studios.place("studio", OFTEN.perHour(), 1)), far()),
            Kind.PLACE,
            false,
            GOES,
            STANDS),
        of("a box", archive(quiet.copy(c -> c.in(box))), Kind.BOX, true, GOES),
        of(
            "a box of one",
            archive(quiet.copy(c -> c.in(box)), far()),
            Kind.BOX,
            false,
            GOES,
            STANDS),
        of("deletion", desk(deletion, quiet, far()), Kind.DELETION, true, GOES, FOLLOWS),
        of(
            "deletion, a monthly copy",
            desk(
                deletion,
                quiet,
                CopyMaker.single("far", new Never()).fed("main", new Feed.Every(1e9, 1e9), 1e9)),
            Kind.DELETION,
            false,
            GOES,
            FOLLOWS),
        of(
            "deletion, a mirror elsewhere",
            desk(
                deletion,
                quiet,
                CopyMaker.single("far", new Never()).fed("main", new Feed.Continuous(), 1e9)),
            Kind.DELETION,
            true,
            GOES,
            GOES),
        of(
            "deletion, kept",
            desk(deletion, quiet, far().keepsDeleted(200)),
            Kind.DELETION,
            false,
            GOES,
            new Threat.Holds(200)),
        of("malware", desk(malware, quiet, far()), Kind.MALWARE, true, GOES, GOES),
        of(
            "malware, out of reach",
            desk(
                malware,
                quiet,
                CopyMaker.single("far", new Never())
                    .fed("main", new Feed.Every(1e9, 1e9), 1e9)
                    .copy(c -> c.reach(Copy.Reach.OFFLINE))),
            Kind.MALWARE,
            false,
            GOES,
            FOLLOWS),
        of(
            "malware, kept",
            desk(malware, quiet, far().keepsDeleted(200)),
            Kind.MALWARE,
            false,
            GOES,
            new Threat.Holds(200)));
  }

  /** Red if a copy is said to stand that goes, or to go that stands. */
  @ParameterizedTest
  @MethodSource("cases")
  void eachCopyIsLeftAsItIsSaid(Case given) {
    Threat threat =
        Threats.of(given.studio(), given.studio().layouts().get(0)).stream()
            .filter(t -> t.kind() == given.kind() && t.counted())
            .findFirst()
            .orElseThrow();
    assertThat(threat.fates()).isEqualTo(given.fates());
    LayoutResult result = Agreement.simulate(given.studio(), 2_000);
    assertThat(result.anyLoss().value() > 0.3).isEqualTo(given.loses());
  }

  @Test
  void whatTheFileDoesNotNameIsNotCounted() {
    Studio studio = archive(CopyMaker.single("main", new Exponential(HOURS)));
    assertThat(Threats.of(studio, studio.layouts().get(0)))
        .filteredOn(threat -> !threat.counted())
        .extracting(Threat::kind)
        .containsExactly(Kind.PLACE, Kind.DELETION, Kind.MALWARE);
  }

  private static CopyMaker far() {
    return CopyMaker.single("far", new Never()).nightly("main", 2, 1e9);
  }

  private static Studio archive(CopyMaker... copies) {
    return Studios.archive(HOURS, copies);
  }

  private static Studio desk(Desk desk, CopyMaker... copies) {
    return Studios.at(desk, HOURS, Studios.onHand(1e12), Studios.layout("only", copies));
  }
}
