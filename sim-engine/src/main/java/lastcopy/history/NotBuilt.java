package lastcopy.history;

import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Studio;

/** Refuses what the records can say and the engine does not simulate yet: nothing is ignored. */
final class NotBuilt {

  private NotBuilt() {}

  /**
   * Checks a layout of a studio.
   *
   * @throws UnsupportedOperationException with one sentence that says what is not simulated yet
   */
  static void refuse(Studio studio, Layout layout) {
    refuseIf(studio.footage().keepHours().isPresent(), "keep_for");
    refuseIf(studio.desk().deletion().filter(d -> d.rate().strikes()).isPresent(), "deletion");
    refuseIf(studio.desk().malware().filter(m -> m.rate().strikes()).isPresent(), "malware");
    refuseIf(layout.cardsKeepHours().isPresent(), "cards");
    for (Copy copy : layout.copies()) {
      refuseIf(copy.spoils().isPresent(), "spoils");
      refuseIf(copy.rotation().isPresent(), "rotation");
      refuseIf(copy.feed().filter(f -> f.stops().strikes()).isPresent(), "stops of a feed");
      copy.driveSet().ifPresent(NotBuilt::refuse);
    }
  }

  private static void refuse(Medium.DriveSet set) {
    refuseIf(set.arrangement() == Arrangement.SHELF, "shelf");
    refuseIf(set.batch().isPresent(), "batch");
    refuseIf(set.strain() != 1, "strain");
    refuseIf(set.readErrorsPerBit() > 0, "read_errors");
    refuseIf(set.latentDefects().isPresent(), "latent_defects");
    refuseIf(set.replaceAtHours().isPresent(), "replace_at");
    refuseIf(set.model().failsOff().isPresent(), "fails_off");
  }

  private static void refuseIf(boolean used, String what) {
    if (used) {
      throw new UnsupportedOperationException(what + " is not simulated yet");
    }
  }
}
