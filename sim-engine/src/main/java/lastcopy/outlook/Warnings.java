package lastcopy.outlook;

import java.util.ArrayList;
import java.util.List;
import lastcopy.footage.FeedForecast;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/** Looks for what the owner of a layout should know; each rule has a stable id. */
public final class Warnings {

  /** Ids by what they cost whoever does not heed them, the worst first. */
  private static final List<String> WORST_FIRST =
      List.of(
          "malware-reaches-all",
          "one-place",
          "rebuild-too-slow",
          "feed-too-slow",
          "nobody-watches",
          "feed-unwatched",
          "never-tried",
          "fills",
          "no-versions",
          "forgets-too-soon",
          "one-drive",
          "one-copy",
          "service-too-good",
          "one-batch",
          "like-beside-like",
          "visit-too-short",
          "rotation-gap",
          "never-scrubbed",
          "run-at-shoot",
          "rate-above-hardware",
          "slow-restore",
          "idle-room",
          "line-rate",
          "seen-at-once");

  private Warnings() {}

  /** How bad what a warning tells is: 0 for the worst, greater for what is less. */
  public static int rank(Warning warning) {
    int rank = WORST_FIRST.indexOf(warning.id());
    return rank < 0 ? WORST_FIRST.size() : rank;
  }

  static List<Warning> of(
      Studio studio,
      Layout layout,
      List<CopyOutlook> copies,
      ShootTable shoots,
      FeedForecast forecast) {
    Subject subject = new Subject(studio, layout, copies, shoots, forecast, new ArrayList<>());
    LayoutRules.apply(subject);
    DeskRules.apply(subject);
    for (CopyOutlook copy : copies) {
      RoomRules.apply(subject, copy);
      SetRules.apply(subject, copy);
      FeedRules.apply(subject, copy);
      RotationRules.apply(subject, copy);
      RepairRules.apply(subject, copy);
    }
    return subject.found();
  }
}
