package lastcopy.history;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import lastcopy.history.event.Common;
import lastcopy.history.event.CourseTracker;
import lastcopy.history.event.Flows;
import lastcopy.history.event.Interruptions;
import lastcopy.history.event.LossRule;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Narrator;
import lastcopy.history.event.Notices;
import lastcopy.history.event.Resettable;
import lastcopy.history.event.Shocks;
import lastcopy.history.event.Spending;
import lastcopy.history.event.TimerHandler;
import lastcopy.history.event.copy.Ageing;
import lastcopy.history.event.copy.Cards;
import lastcopy.history.event.copy.DriveFailures;
import lastcopy.history.event.copy.Mishaps;
import lastcopy.history.event.copy.Offloads;
import lastcopy.history.event.copy.Outages;
import lastcopy.history.event.copy.Refill;
import lastcopy.history.event.copy.Returns;
import lastcopy.history.event.copy.Shelves;
import lastcopy.history.event.copy.Spoiling;
import lastcopy.history.event.desk.DeskDamage;
import lastcopy.history.event.desk.DeskNotices;
import lastcopy.history.event.desk.DeskStrikes;
import lastcopy.history.event.desk.UnnoticedDamage;
import lastcopy.history.event.drive.Clips;
import lastcopy.history.event.drive.Drives;
import lastcopy.history.event.drive.Repairs;
import lastcopy.history.event.drive.Spots;
import lastcopy.history.event.feed.FeedStops;
import lastcopy.history.event.feed.Feeds;
import lastcopy.history.event.feed.Links;
import lastcopy.history.event.feed.Rotations;
import lastcopy.history.hazard.Clocks;
import lastcopy.history.hazard.Defects;
import lastcopy.history.hazard.Frailty;
import lastcopy.history.hazard.UnlikelyDraws;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.RepairTimes;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.plan.Timers;
import lastcopy.history.report.Audience;
import lastcopy.history.state.HistoryState;

/** All mechanisms of a history: made, told of each other, and connected with their timers. */
final class Mechanisms {

  final Clocks clocks;
  final CourseTracker tracker;
  final LossRule rule;
  final Narrator narrator;
  final Interruptions interruptions;
  final Spending spending;
  final UnnoticedDamage unnoticed;
  final Drives drives;
  final Shocks shocks;
  final FeedStops stops;
  final Links links;
  final Refill refill;

  private final Timers timers;
  private final TimerHandler[] handlers;
  private final int[] firstTimer;
  private final List<Mechanism> all;
  private final Resettable[] resettable;

  Mechanisms(HistoryState state, Draws draws, Audience audience) {
    Plan plan = state.plan();
    clocks = new Clocks(plan, draws, state.clock());
    narrator = new Narrator(state, clocks, audience);
    tracker = new CourseTracker(state, audience);
    interruptions = new Interruptions(state, audience);
    unnoticed = new UnnoticedDamage(state);
    spending = new Spending(state, audience);
    Flows flows = new Flows(state);
    rule = new LossRule(state, flows, unnoticed::covers, clocks, audience, narrator);
    Common common = new Common(state, tracker, rule, narrator, spending);
    RepairTimes times = new RepairTimes(plan, draws);
    UnlikelyDraws unlikely = new UnlikelyDraws(plan, clocks, audience);
    Defects defects = new Defects(plan, draws, state.clock(), clocks, unlikely);
    double clip = plan.studio().footage().clipBytes();
    Spots spots = new Spots(state, draws, clocks.likelihood(), defects, clip);
    Spots blocks = new Spots(state, draws, clocks.likelihood(), defects, clip);
    Notices notices = new Notices(plan, draws, clocks.likelihood(), unlikely);
    Clips clips = new Clips(common, clocks, defects, flows, spots);
    drives =
        new Drives(
            state,
            clocks,
            new Frailty(plan, draws, clocks.likelihood()),
            defects,
            narrator,
            spending);
    Repairs repairs = new Repairs(common, times, drives, clips);
    Rotations rotations = new Rotations(state, clocks, spending);
    links = new Links(common);
    Feeds feeds = new Feeds(common, clips, rotations, links, spending);
    stops = new FeedStops(common, feeds);
    DeskDamage desk = new DeskDamage(common, unnoticed, feeds, flows);
    DeskStrikes strikes =
        new DeskStrikes(common, draws, notices, blocks, desk, unnoticed, feeds, rotations);
    DeskNotices deskNotices = new DeskNotices(common, unnoticed, feeds, flows, interruptions);
    Cards cards = new Cards(common, interruptions);
    Offloads offloads = new Offloads(common, feeds, cards);
    Outages outages = new Outages(common, times, drives, feeds, desk, interruptions);
    Shelves shelves = new Shelves(common, times, flows, desk, offloads, interruptions);
    Spoiling spoils = new Spoiling(common, feeds, flows, desk, outages);
    refill = new Refill(common, feeds, spoils, offloads, interruptions);
    Returns returns = new Returns(common, drives, feeds, offloads, cards, interruptions, refill);
    DriveFailures failures =
        new DriveFailures(common, clocks, drives, repairs, shelves, clips, outages);
    Mishaps mishaps = new Mishaps(common, clocks, unlikely, drives, rotations, outages, cards);
    Ageing ageing = new Ageing(state, flows, unnoticed);
    shocks = new Shocks(state, clocks);
    shocks.does(ShockProcess.Kind.PLACE, mishaps);
    shocks.does(ShockProcess.Kind.BOX, mishaps);
    shocks.does(ShockProcess.Kind.DELETION, strikes::deletion);
    shocks.does(ShockProcess.Kind.MALWARE, strikes::malware);
    shocks.does(ShockProcess.Kind.SPOIL, spoils);
    shocks.does(ShockProcess.Kind.STOP, stops);
    feeds.tells(desk, refill::start);
    // In the order in which they take up what they do.
    all =
        List.of(
            ageing,
            cards,
            offloads,
            links,
            feeds,
            drives,
            failures,
            repairs,
            clips,
            shelves,
            returns,
            shocks,
            spoils,
            stops,
            desk,
            deskNotices);
    tracker.tells(all);
    resettable =
        Stream.concat(Stream.of(rule, interruptions, spending), all.stream())
            .filter(Resettable.class::isInstance)
            .toArray(Resettable[]::new);

    timers = plan.timers();
    handlers = new TimerHandler[timers.count()];
    firstTimer = new int[timers.count()];
    int copies = plan.copies();
    connect(timers.failure(0), plan.slots(), failures);
    connect(timers.shock(0), plan.shocks(), shocks);
    connect(timers.repair(0), plan.slots(), repairs);
    for (int c = 0; c < copies; c++) {
      if (plan.copy(c).set().shelf()) {
        connectShelf(plan.copy(c), returns::ofDrive);
      }
    }
    connect(timers.comeBack(0), copies, returns::ofCopy);
    connect(timers.runEnd(0), copies, feeds::end);
    connect(timers.swap(0), plan.slots(), drives::swap);
    connect(timers.enter(0), plan.slots(), drives::enter);
    connect(timers.linkChange(0), copies, links);
    connect(timers.tried(0), copies, spoils);
    connect(timers.looked(0), copies, stops);
    connect(timers.visitEnd(0), copies, feeds::visitEnds);
    connect(timers.noticed(), 1, deskNotices::noticed);
    connect(timers.dropped(), 1, deskNotices::dropped);
    connect(timers.cardsExpired(), 1, cards);
    connect(timers.aged(), 1, ageing);
    connect(timers.runStart(0), copies, feeds);
    connect(timers.offload(), 1, offloads);
  }

  private void connect(int first, int count, TimerHandler handler) {
    Arrays.fill(handlers, first, first + count, handler);
    Arrays.fill(firstTimer, first, first + count, first);
  }

  /** Replaced drives of a shelf are back at once: no rebuild, but a refill. */
  private void connectShelf(CopyPlan copy, TimerHandler handler) {
    int first = timers.repair(copy.firstSlot());
    Arrays.fill(handlers, first, first + copy.set().drives(), handler);
  }

  /** What all of them together can do to a copy. */
  Set<Effect> effects(CopyPlan copy) {
    return effects(all, copy);
  }

  /** What some mechanisms together can do to a copy. */
  static Set<Effect> effects(List<Mechanism> mechanisms, CopyPlan copy) {
    Set<Effect> effects = EnumSet.noneOf(Effect.class);
    for (Mechanism each : mechanisms) {
      effects.addAll(each.effects(copy));
    }
    return effects;
  }

  /** Back to the start of a history. */
  void clear() {
    clocks.clear();
    for (Resettable each : resettable) {
      each.clear();
    }
  }

  /** A timer is due. */
  void due(int timer) {
    handlers[timer].due(timer - firstTimer[timer]);
  }
}
