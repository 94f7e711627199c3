package lastcopy.cli.story;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Loss;
import lastcopy.history.report.Snapshot;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.StudioBuilder;
import lastcopy.story.Moment;
import lastcopy.story.Story;

/** Stories whose facts are made by hand: a studio of one year, 100 bytes shot at any time. */
final class MadeStory {

  static final DriveModel DRIVE = DriveModel.builder("m", 1e12).fails(new Exponential(9)).build();

  private MadeStory() {}

  static CopyBuilder on(String id, Arrangement arrangement, int drives) {
    return Copy.builder(id).on(Medium.DriveSet.builder(arrangement, drives).of(DRIVE).build());
  }

  static Feed fed() {
    return Feed.from("main").every(24).link(1).build();
  }

  /** A working drive, a shelf, a mirror and a service. */
  static Layout four() {
    return Layout.of(
        "l",
        on("main", Arrangement.SINGLE, 1).build(),
        on("shelf", Arrangement.SHELF, 3).fed(fed()).build(),
        on("pair", Arrangement.MIRROR, 2).fed(fed()).build(),
        Copy.builder("paid").on(Medium.Service.losing(new Rate(1e-5))).fed(fed()).build());
  }

  /** A working drive and others that are fed from it. */
  static Layout with(String... others) {
    List<Copy> copies = new ArrayList<>(List.of(on("main", Arrangement.SINGLE, 1).build()));
    for (String id : others) {
      copies.add(on(id, Arrangement.SINGLE, 1).fed(fed()).build());
    }
    return Layout.of("l", copies.toArray(Copy[]::new));
  }

  static Layout alone(OptionalDouble cards, double keepsDeleted) {
    Copy main = on("main", Arrangement.SINGLE, 1).keepsDeleted(keepsDeleted).build();
    return new Layout("l", "l", List.of(main), cards);
  }

  static StudioBuilder studio(Shoots.Spacing spacing) {
    Footage footage = Footage.builder(new Shoots(31, 10, spacing)).onHand(100).clip(1).build();
    return Studio.builder("s", 1).footage(footage);
  }

  static Story story(Layout layout, List<Moment> moments) {
    return story(studio(Shoots.Spacing.EVEN).layout(layout).build(), moments, List.of());
  }

  /** Of the first layout of a studio. */
  static Story story(Studio studio, List<Moment> moments, List<Loss> losses) {
    Layout layout = studio.layouts().get(0);
    List<String> names = layout.copies().stream().map(Copy::id).toList();
    return new Story(studio, layout, names, 1, 0, moments, losses);
  }

  static Loss loss(double hours, double bytes, double shoots, boolean everything, String cause) {
    return new Loss(hours, bytes, shoots, 1, everything, new Cause(cause, cause), 1);
  }

  static Moment moment(Kind kind, double hours, int copy, double bytes, double... held) {
    return moment(new Happening(kind, hours, copy, -1, bytes, Double.NaN, ""), held);
  }

  static Moment moment(Happening it, double... held) {
    return new Moment(it, scene(held));
  }

  /** A negative amount is a copy that is gone. */
  static Snapshot scene(double... held) {
    boolean[] gone = new boolean[held.length];
    double[] bytes = new double[held.length];
    for (int c = 0; c < held.length; c++) {
      gone[c] = held[c] < 0;
      bytes[c] = Math.max(0, held[c]);
    }
    return new Snapshot(100, 0, bytes, gone, new int[held.length], 0, 1);
  }
}
