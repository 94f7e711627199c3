package lastcopy.benchmark;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;

/** A studio whose only copy stands on one set of drives. */
final class OneSet {

  private OneSet() {}

  /**
   * The studio.
   *
   * @param life of a drive
   * @param repair from the failure of a drive until its place is whole again
   */
  static Studio studio(Law life, Law repair, Arrangement arrangement, int drives, double hours) {
    DriveModel drive =
        new DriveModel(
            "drive",
            8e12,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            life,
            new Fixed(0),
            0,
            Optional.empty());
    Medium set =
        new Medium.DriveSet(
            drives,
            drive,
            arrangement,
            Optional.empty(),
            new Rebuild(new Rebuild.ByLaw(repair), Rebuild.Reads.ALL),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            1,
            0);
    Copy main =
        new Copy(
            "main",
            new Place("studio", List.of()),
            Optional.empty(),
            set,
            new Copy.Repair(Delay.none(), Delay.none(), new Fixed(0)),
            Optional.empty(),
            OptionalDouble.empty(),
            0,
            Copy.Reach.ONLINE,
            true,
            Optional.empty(),
            Optional.empty());
    Footage footage =
        new Footage(
            1e12,
            new Shoots(168, 1e11, Shoots.Spacing.EVEN),
            0,
            OptionalDouble.empty(),
            1e9,
            OptionalDouble.empty());
    return new Studio(
        "pair",
        hours / 8_760,
        Optional.empty(),
        footage,
        Desk.QUIET,
        List.of(new Layout("pair", "pair", List.of(main), OptionalDouble.empty())));
  }
}
