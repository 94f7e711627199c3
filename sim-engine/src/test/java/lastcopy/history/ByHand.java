package lastcopy.history;

import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Medium;

/** Copies whose times are reckoned by hand, since every drive lives for a fixed time. */
final class ByHand {

  private ByHand() {}

  /** One drive to begin with, of so many bytes; a replacement takes so many hours. */
  static CopyBuilder copy(
      String id, Arrangement arrangement, double bytes, double lives, double arrives) {
    DriveModel model = DriveModel.builder("m", bytes).fails(new Fixed(lives)).build();
    return Copy.builder(id)
        .on(Medium.DriveSet.builder(arrangement, 1).of(model).build())
        .arrival(new Fixed(arrives));
  }
}
