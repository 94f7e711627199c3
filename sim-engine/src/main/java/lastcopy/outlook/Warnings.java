package lastcopy.outlook;

import java.util.ArrayList;
import java.util.List;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/** Looks for what the owner of a layout should know; each rule has a stable id. */
final class Warnings {

  private Warnings() {}

  static List<Warning> of(
      Studio studio, Layout layout, List<CopyOutlook> copies, ShootTable shoots) {
    Subject subject = new Subject(studio, layout, copies, shoots, new ArrayList<>());
    LayoutRules.apply(subject);
    DeskRules.apply(subject);
    for (CopyOutlook copy : copies) {
      RoomRules.apply(subject, copy);
      FeedRules.apply(subject, copy);
      RotationRules.apply(subject, copy);
      RepairRules.apply(subject, copy);
    }
    return subject.found();
  }
}
