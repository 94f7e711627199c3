package lastcopy.history.event.feed;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import lastcopy.history.event.Common;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Narrator;
import lastcopy.history.event.OffCourse;
import lastcopy.history.event.TimerHandler;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.FeedLink;
import lastcopy.history.plan.Way;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.Flow;
import lastcopy.history.state.HistoryState;
import lastcopy.scenario.Carried;
import lastcopy.scenario.Ways;

/**
 * How fast runs and refills get on where that changes while they last: links that may be used at
 * certain hours only, that several feeds share, beside which a drive may be carried by hand, and
 * services that give back after a while.
 *
 * <p>Choices where the model leaves room:
 *
 * <ul>
 *   <li>a run that is due at hours when its link may not be used starts all the same, with what its
 *       source then holds, and waits; a deletion needs no room on a link and passes at once;
 *   <li>a feed outside its hours takes no share of an uplink;
 *   <li>a continuous feed behind a copy that is itself being fed has something to carry all the
 *       while, and its share, though its runs begin at quarters of an hour ({@link Feeds}); but not
 *       while what comes there next is what it has carried already;
 *   <li>hours and sharing are those of feeds, also while they bring back a copy that was gone; a
 *       refill of the working copy comes the other way, at its own rate;
 *   <li>whether carrying is sooner is reckoned when a run starts, as if it had its link to itself
 *       at all hours that it may be used: who else will want it is not known then;
 *   <li>what is carried counts nowhere until it is there; if its source or its target goes before,
 *       or it disappears from its source, it does not arrive, as with a run that is cut, while a
 *       feed that stops unseen does not stop who carries a drive;
 *   <li>the first fill is over once a run has carried all that it began with, or had nothing to do;
 *   <li>a service lets each refill wait from its start, also one of a fed copy whose source it is,
 *       and what is carried by hand from it does not wait.
 * </ul>
 */
public final class Links implements Mechanism, TimerHandler, OffCourse {

  /** What a link would carry within it is not left for the next opening: it is a rounding. */
  private static final double ROUNDING_HOURS = 1e-9;

  private final HistoryState state;
  private final Narrator narrator;

  /** Whether a feed that shares an uplink may carry on what comes to its source bit by bit. */
  private final boolean someFollow;

  /** The links of a state's copies. */
  public Links(Common common) {
    state = common.state();
    narrator = common.narrator();
    someFollow = Arrays.stream(state.copies()).anyMatch(Links::mayFollow);
  }

  private static boolean mayFollow(CopyState copy) {
    FeedLink link = linkOf(copy);
    boolean shares = link != null && link.uplink() != FeedLink.NOT_SHARED;
    return shares && copy.plan().way().continuous();
  }

  /** Whether some feed has a link that is special. */
  static boolean areSpecial(HistoryState state) {
    for (CopyState copy : state.copies()) {
      if (linkOf(copy) != null) {
        return true;
      }
    }
    return false;
  }

  private static FeedLink linkOf(CopyState copy) {
    Way way = copy.plan().way();
    return way == null ? null : way.link();
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return Mechanism.none();
  }

  @Override
  public boolean isUsed() {
    return areSpecial(state);
  }

  /** What was under way goes on; a change that is due at this very instant is still to come. */
  @Override
  public void takeUp() {
    for (CopyState copy : state.copies()) {
      if (linkOf(copy) != null && copy.flow().isGoing()) {
        setChange(copy, Math.nextDown(state.now()));
      }
    }
  }

  @Override
  public void rest() {
    for (CopyState copy : state.copies()) {
      state.clock().cancel(state.timers().linkChange(copy.index()));
    }
  }

  /** A run or a refill has begun that would take so many hours at the whole rate of its way. */
  void begun(CopyState copy, double hours) {
    FeedLink link = linkOf(copy);
    double waits = copy.feed().isRefill() ? restoresIn(copy) : 0;
    if (link == null && waits == 0) {
      return;
    }
    double now = state.now();
    double end = link == null ? now + waits + hours : link.end(now + waits, hours);
    if (link != null && isCarriedBefore(end, copy, link.carried())) {
      return;
    }
    copy.waitsForSource(now + waits);
    settle(copy);
    setChange(copy, now);
  }

  private double restoresIn(CopyState copy) {
    return Ways.restoresIn(state.copy(copy.flow().source()).plan().stated());
  }

  private boolean isCarriedBefore(double end, CopyState copy, Optional<Carried> carried) {
    boolean may = copy.feed().isRefill() || copy.feed().isFirstFill();
    if (!may || carried.isEmpty()) {
      return false;
    }
    double bytes = copy.flow().positions().bytes();
    double arrives = state.now() + carried.get().hours(bytes);
    if (arrives >= end) {
      return false;
    }
    copy.receivesByHand(arrives);
    state.clock().move(state.timers().runEnd(copy.index()), arrives);
    if (copy.feed().isRefill()) { // runs of a feed are not told, nor is its first fill
      narrator.say(Happening.Kind.CARRIED, copy, bytes, arrives);
    }
    return true;
  }

  /** A run or a refill has ended, or was cut. */
  void ended(CopyState copy) {
    state.clock().cancel(state.timers().linkChange(copy.index()));
    FeedLink link = linkOf(copy);
    if (link != null && link.uplink() != FeedLink.NOT_SHARED) {
      settle(copy);
    }
  }

  /** A link opens or closes, or a service begins to give back. */
  @Override
  public void due(int index) {
    CopyState copy = state.copy(index);
    settle(copy);
    setChange(copy, state.now());
  }

  /** Who carries on what comes elsewhere may have begun or ceased to have a share. */
  public void instantEnds() {
    if (someFollow && !state.onCourse()) {
      for (CopyState copy : state.copies()) {
        if (mayFollow(copy)) {
          settle(copy);
        }
      }
    }
  }

  private void setChange(CopyState copy, double after) {
    FeedLink link = linkOf(copy);
    double change = link == null ? Double.POSITIVE_INFINITY : link.changeAfter(after);
    double waits = copy.flow().waitsUntil();
    double next = waits > after ? Math.min(waits, change) : change;
    state.clock().move(state.timers().linkChange(copy.index()), next);
  }

  /** What flows to a copy, and what shares its uplink, flows as fast as it now may. */
  private void settle(CopyState copy) {
    FeedLink link = linkOf(copy);
    if (link == null || link.uplink() == FeedLink.NOT_SHARED) {
      flowsAt(copy, carries(copy) ? wholeRate(copy) : 0);
      return;
    }
    int sharing = 0;
    for (CopyState each : state.copies()) {
      sharing += isOn(link.uplink(), each) && (carries(each) || follows(each)) ? 1 : 0;
    }
    for (CopyState each : state.copies()) {
      if (isOn(link.uplink(), each)) {
        flowsAt(each, carries(each) ? wholeRate(each) / sharing : 0);
      }
    }
  }

  private static boolean isOn(int uplink, CopyState copy) {
    FeedLink link = linkOf(copy);
    return link != null && link.uplink() == uplink;
  }

  private boolean carries(CopyState copy) {
    Flow flow = copy.flow();
    return flow.isGoing() && !flow.isByHand() && flow.waitsUntil() <= state.now() && isOpen(copy);
  }

  private boolean isOpen(CopyState copy) {
    FeedLink link = linkOf(copy);
    return link == null || link.isOpen(state.now());
  }

  /** Whether a continuous feed stands idle only until a little more has come to its source. */
  private boolean follows(CopyState copy) {
    return !copy.flow().isGoing() && comesTo(copy) >= 0;
  }

  /** The position that comes to a copy now, over its way or over one after another; -1 if none. */
  private double comesTo(CopyState copy) {
    Flow flow = copy.flow();
    if (flow.isGoing()) {
      copy.bringTo(state.now());
      return carries(copy) && !flow.positions().isEmpty() ? flow.positions().from(0) : -1;
    }
    Way way = copy.plan().way();
    boolean ready = way != null && way.continuous() && isOpen(copy) && state.mayFeed(copy);
    double next = ready ? comesTo(state.sourceOf(copy)) : -1;
    return copy.believed().contain(next) || copy.barred().contain(next) ? -1 : next;
  }

  private double wholeRate(CopyState copy) {
    Way way = copy.plan().way();
    return way != null ? way.bytesPerHour() : copy.plan().refillPerHour()[copy.flow().source()];
  }

  private void flowsAt(CopyState copy, double perHour) {
    Flow flow = copy.flow();
    if (!flow.isGoing() || flow.isByHand() || flow.perHour() == perHour) {
      return;
    }
    copy.bringTo(state.now());
    if (flow.positions().bytes() > flow.perHour() * ROUNDING_HOURS) {
      copy.receivesAt(perHour, state.now());
      state.clock().move(state.timers().runEnd(copy.index()), flow.endsAt(state.now()));
    }
  }
}
