package lastcopy.benchmark;

import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
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
    DriveModel drive = DriveModel.builder("drive", 8e12).fails(life).build();
    Medium set = Medium.DriveSet.builder(arrangement, drives).of(drive).rebuild(repair).build();
    Shoots shoots = new Shoots(168, 1e11, Shoots.Spacing.EVEN);
    return Studio.builder("pair", hours / 8_760)
        .footage(Footage.builder(shoots).onHand(1e12).build())
        .layout(Layout.of("pair", Copy.builder("main").on(set).build()))
        .build();
  }
}
