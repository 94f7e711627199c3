package lastcopy.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Comparison.Pair;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Exposure;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.LayoutResult.Recovery;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.outlook.Comeback;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.FeedOutlook;
import lastcopy.outlook.LinkTime;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Room;
import lastcopy.outlook.Route;
import lastcopy.outlook.Warning;
import lastcopy.outlook.room.CopyRoom;
import lastcopy.outlook.room.DriveChoice;
import lastcopy.outlook.room.DriveDue;
import lastcopy.outlook.room.LayoutRoom;
import lastcopy.outlook.room.Offload;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.outlook.room.RoomNeed;
import lastcopy.outlook.room.Streams;
import lastcopy.outlook.room.WayLimit;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.DriveModel;

/**
 * Results in which no two figures are alike: each is larger by 2 % than the one before, in the
 * order of the records' components, so that a writer that takes one for another is seen, also where
 * three digits are shown.
 */
final class Distinct {

  private double last = 1000;
  private double lastMoney = 1000;

  /** Two layouts and two pairs; the flags of the two layouts differ where they can. */
  static Comparison comparison() {
    return new Distinct().compared();
  }

  private Comparison compared() {
    return new Comparison(
        "the studio",
        number(),
        Optional.of("EUR"),
        (long) number(),
        number(),
        false,
        List.of(
            layout("first", Method.PLAIN, true, List.of("first doubt")),
            layout("second", Method.RARE, false, List.of())),
        List.of(pair("first", "second"), pair("second", "third")));
  }

  private LayoutResult layout(String id, Method method, boolean reached, List<String> doubts) {
    return new LayoutResult(
        id,
        "title of " + id,
        (long) number(),
        method,
        reached,
        number(),
        number(),
        estimate(),
        estimate(),
        estimate(),
        estimate(),
        estimate(),
        estimate(),
        Optional.of(estimate()),
        List.of(point(), point()),
        List.of(point(), point()),
        List.of(point(), point()),
        List.of(point(), point()),
        List.of(cause(id, 1), cause(id, 2)),
        new Exposure(estimate(), estimate(), estimate(), estimate(), estimate(), (long) number()),
        List.of(recovery(id, 1), recovery(id, 2)),
        Optional.of(cost()),
        doubts,
        List.of("note of " + id));
  }

  private CauseShare cause(String of, int k) {
    return new CauseShare(
        "cause-" + k + "-of-" + of, "sentence of cause " + k + " of " + of, estimate(), number());
  }

  private Recovery recovery(String of, int k) {
    return new Recovery(
        "stop-" + k + "-of-" + of,
        "sentence of stop " + k + " of " + of,
        (long) number(),
        estimate(),
        Optional.of(estimate()));
  }

  private Pair pair(String a, String b) {
    return new Pair(
        a, b, maybe(), maybe(), maybe(), estimate(), (long) number(), Optional.of(amount()));
  }

  private Cost cost() {
    List<Cost.Part> byKind =
        Stream.of("drives", "boxes", "services", "power", "work", "other")
            .map(kind -> new Cost.Part(kind, money()))
            .toList();
    return new Cost(
        amount(), money(), money(), money(), byKind, List.of(money(), money()), (long) money());
  }

  private Estimate amount() {
    double low = money();
    double value = money();
    return new Estimate(value, low, money(), true);
  }

  /** Numbers of their own, so that a figure of money moves no other. */
  private double money() {
    lastMoney = Math.rint(lastMoney * 1.02);
    return lastMoney + 0.25;
  }

  private Point point() {
    return new Point(number(), estimate());
  }

  private Estimate estimate() {
    double low = number();
    double value = number();
    return new Estimate(value, low, number(), true);
  }

  private OptionalDouble maybe() {
    return OptionalDouble.of(number());
  }

  private double number() {
    last = Math.rint(last * 1.02);
    return last + 0.5;
  }

  /** The outlook of a layout with other figures, all of them distinct. */
  static Outlook outlook(Outlook of) {
    return new Distinct().foreseen(of);
  }

  private Outlook foreseen(Outlook of) {
    return new Outlook(
        of.layout(),
        List.of(new Room.Year(number(), number()), new Room.Year(number(), number())),
        of.copies().stream().map(this::copy).toList(),
        List.of(new Warning("an-id", "a copy", "A sentence."), new Warning("all", "", "Of all.")));
  }

  private CopyOutlook copy(CopyOutlook of) {
    return new CopyOutlook(
        of.copy(),
        maybe(),
        maybe(),
        maybe(),
        maybe(),
        maybe(),
        of.feed().map(feed -> new FeedOutlook(maybe(), maybe(), false, number(), maybe(), link())),
        of.ways().stream().map(this::way).toList(),
        List.of(comeback(Comeback.By.FEED), comeback(Comeback.By.HAND)));
  }

  private Comeback comeback(Comeback.By by) {
    return new Comeback("copy " + (int) number(), by, 1e6 * number(), number(), number());
  }

  /** Room and time with other figures, all of them distinct, and unlike those of outlooks. */
  static RoomAndTime room(RoomAndTime of) {
    Distinct figures = new Distinct();
    figures.last = 1_000_000;
    return figures.roomOf(of);
  }

  private RoomAndTime roomOf(RoomAndTime of) {
    return new RoomAndTime(
        number(),
        of.steps(),
        List.of(need(), need()),
        List.of(
            new DriveChoice(of.choices().get(0).model(), Arrangement.PAIRS, number(), drives()),
            new DriveChoice(
                DriveModel.builder("other", number()).fails(new Exponential(1)).build(),
                Arrangement.PARITY,
                number(),
                OptionalInt.empty())),
        of.layouts().stream().map(this::layoutRoom).toList());
  }

  private RoomNeed need() {
    return new RoomNeed(number(), number(), number());
  }

  private OptionalInt drives() {
    return OptionalInt.of((int) number());
  }

  private LayoutRoom layoutRoom(LayoutRoom of) {
    return new LayoutRoom(
        of.layout(),
        of.copies().stream()
            .map(
                copy ->
                    new CopyRoom(
                        copy.copy(),
                        List.of(due(), due()),
                        copy.limits().stream().map(this::limit).toList()))
            .toList(),
        Optional.of(new Offload(part(), number(), number(), number(), number())),
        // So that each network gives another number of them.
        Optional.of(new Streams(100_003, new Route.Part("box", 1e6 * number()))));
  }

  private DriveDue due() {
    return new DriveDue(number(), drives(), number());
  }

  private WayLimit limit(WayLimit of) {
    return new WayLimit(way(of.way()), 1e6 * number(), Optional.of(part()));
  }

  private Route.Part part() {
    double megabytes = number();
    return new Route.Part("part " + (int) megabytes, 1e6 * number());
  }

  private Optional<LinkTime> link() {
    LinkTime.Need now = new LinkTime.Need(true, number(), number());
    return Optional.of(
        new LinkTime(number(), (int) number(), now, new LinkTime.Need(false, number(), number())));
  }

  private Route way(Route of) {
    double megabytes = 1e6 * number();
    Route.Part slowest = new Route.Part("part " + (int) last, 1e6 * number());
    return new Route(of.kind(), of.from(), megabytes, slowest, List.of(slowest), false);
  }
}
