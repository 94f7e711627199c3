package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Stream;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Never;
import lastcopy.law.Weibull;
import lastcopy.scenario.Desk;
import lastcopy.scenario.NoWayToLose;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Which layouts the scenario itself calls safe, and that they lose nothing; each of the others has
 * one way to lose, and does. Red for the row whose mechanism is left out.
 */
class NoWayToLoseTest {

  private static final double YEAR = Units.HOURS_PER_YEAR;

  private static Studio studio(Desk desk, CopyMaker main) {
    return studio(desk, main, CopyMaker.single("far", new Exponential(YEAR)));
  }

  private static Studio studio(Desk desk, CopyMaker main, CopyMaker other) {
    CopyMaker far = other.nightly("main", 2, 5e6).restores(5e6);
    return Studios.at(
        desk, 3 * YEAR, Studios.shooting(1e12, 168, 1e11, 0), Studios.layout("a", main, far));
  }

  private static CopyMaker safe() {
    return CopyMaker.single("main", new Never());
  }

  private static Desk deletions(double perYear) {
    return new Desk(
        Optional.of(
            new Desk.Deletion(Rate.perYear(perYear), new Desk.ShootCount(1), new Fixed(24))),
        Optional.empty());
  }

  private static Desk malware(double perYear) {
    return new Desk(
        Optional.empty(), Optional.of(new Desk.Malware(Rate.perYear(perYear), new Fixed(24))));
  }

  static Stream<Studio> safeStudios() {
    return Stream.of(
        studio(Desk.QUIET, safe()),
        studio(deletions(0), safe()),
        studio(malware(0), safe()),
        studio(Desk.QUIET, safe().at(Studios.place("studio", 0, 1))),
        studio(Desk.QUIET, safe().at(Studios.place("studio", 1e-3, 0))),
        studio(Desk.QUIET, safe().boxed(0)),
        studio(Desk.QUIET, CopyMaker.service("main", Rate.NONE)),
        studio(Desk.QUIET, CopyMaker.single("main", new Weibull(2, YEAR, 4 * YEAR))),
        studio(
            Desk.QUIET, CopyMaker.single("main", new Fixed(4 * YEAR)).aged(new Fixed(0.5 * YEAR))));
  }

  static Stream<Studio> unsafeStudios() {
    return Stream.of(
        studio(deletions(1), safe()),
        studio(malware(1), safe()),
        studio(Desk.QUIET, safe().at(Studios.place("studio", 1e-4, 1))),
        studio(Desk.QUIET, safe().boxed(1e-4)),
        studio(Desk.QUIET, safe().spoils(new Rate(1e-4))),
        studio(Desk.QUIET, CopyMaker.service("main", new Rate(1e-4))),
        studio(Desk.QUIET, CopyMaker.single("main", new Weibull(2, YEAR, 2 * YEAR))),
        studio(Desk.QUIET, CopyMaker.single("main", new Fixed(4 * YEAR)).aged(new Fixed(2 * YEAR))),
        // What only the other copy holds until the first fill is done: 1 TB, 8e12 bits, 56 hours.
        studio(Desk.QUIET, safe().startsEmpty()),
        studio(
            Desk.QUIET,
            safe().startsEmpty(),
            CopyMaker.single("far", new Never()).readErrors(1e-14)));
  }

  @ParameterizedTest
  @MethodSource("safeStudios")
  void safeIsSafe(Studio studio) {
    assertThat(NoWayToLose.in(studio, studio.layouts().get(0))).isTrue();
    assertThat(Agreement.simulate(studio, 2_000).anyLoss().seen()).isFalse();
  }

  @ParameterizedTest
  @MethodSource("unsafeStudios")
  void oneWayIsEnough(Studio studio) {
    assertThat(NoWayToLose.in(studio, studio.layouts().get(0))).isFalse();
    assertThat(Agreement.simulate(studio, 2_000).anyLoss().seen()).isTrue();
  }
}
