package lastcopy.history.event;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Predicate;
import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.footage.ShootTable;
import lastcopy.history.hazard.Clocks;
import lastcopy.history.report.Audience;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Loss;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;

/**
 * The loss rule: what some copy held and now no copy and no camera card holds is lost, at this
 * instant, unless it has aged out. The only place where footage is declared lost.
 */
public final class LossRule implements Resettable {

  private final HistoryState state;
  private final Flows flows;
  private final Predicate<Positions> deletedUnseen;
  private final Clocks clocks;
  private final Audience audience;
  private final Narrator narrator;
  private final PositionSet removed = new PositionSet();
  private final PositionSet scratch = new PositionSet();
  private final boolean[] wentNow;
  private Map<Cause.Context, Cause> striking;
  private Map<Cause.Context, Cause> lastOfWorking;
  private Cause.Context context;

  /** What is lost at this instant so far, which is one loss. */
  private final PositionSet lostNow = new PositionSet();

  private Cause causeNow;
  private double weightNow;
  private boolean everythingNow;

  /**
   * The rule over a state.
   *
   * @param flows which lose what is lost
   * @param deletedUnseen whether some positions are deleted, so that they are lost unseen
   * @param clocks which say the weight of a loss
   * @param audience told of it
   */
  public LossRule(
      HistoryState state,
      Flows flows,
      Predicate<Positions> deletedUnseen,
      Clocks clocks,
      Audience audience,
      Narrator narrator) {
    this.state = state;
    this.flows = flows;
    this.deletedUnseen = deletedUnseen;
    this.clocks = clocks;
    this.audience = audience;
    this.narrator = narrator;
    wentNow = new boolean[state.copies().length];
  }

  @Override
  public void clear() {
    removed.clear();
    lostNow.clear();
    striking = null;
    lastOfWorking = null;
  }

  /** Failures and mishaps of a new instant begin. */
  public void newInstant() {
    removed.clear();
    Arrays.fill(wentNow, false);
    striking = null;
    context = null;
  }

  /** Something struck. */
  public void struck(Map<Cause.Context, Cause> causes) {
    striking = causes;
    context = null;
  }

  /** Something was met while nothing else struck at this instant. */
  public void met(Map<Cause.Context, Cause> causes, Cause.Context with) {
    if (striking == null) {
      struck(causes, with);
    }
  }

  /**
   * What last took something from the working copy, also at an earlier instant; null if nothing
   * yet.
   */
  public Map<Cause.Context, Cause> lastOfWorking() {
    return lastOfWorking;
  }

  /** Something struck, and what was down or behind is known. */
  public void struck(Map<Cause.Context, Cause> causes, Cause.Context with) {
    struck(causes);
    context = with;
  }

  /** A copy no longer holds something; whether it is lost is seen once all has struck. */
  public void removed(CopyState copy, Positions positions) {
    wentNow[copy.index()] = true;
    if (copy.index() == 0) {
      lastOfWorking = striking;
    }
    removed.addAll(positions);
  }

  /** Something is held no longer by whoever held it. */
  public void removed(Positions positions) {
    removed.addAll(positions);
  }

  /** What was removed and is now held by nobody is lost. */
  public void declare() {
    if (removed.isEmpty()) {
      return;
    }
    state.holdings().bringAllTo(state.now()); // what has crossed by now is held
    removed.remove(0, state.holdings().aged());
    state.holdings().removeHeld(removed);
    if (!removed.isEmpty()) {
      lose();
    }
  }

  private void lose() {
    Cause cause = striking.get(context != null ? context : context());
    state.loses(removed, removed.bytes());
    flows.neverArrives(removed);
    if (lostNow.isEmpty()) {
      causeNow = cause;
      weightNow = clocks.weight();
      everythingNow = false;
    }
    lostNow.addAll(removed);
    removed.clear();
    everythingNow |= state.holdings().allEmpty();
    clocks.endBias();
  }

  /** Nothing more happens at this instant: what was lost at it is one loss, by what was first. */
  public void instantEnds() {
    if (!lostNow.isEmpty()) {
      Loss loss =
          new Loss(
              state.now(),
              lostNow.bytes(),
              shoots(),
              shootsHit(),
              everythingNow,
              causeNow,
              weightNow);
      lostNow.clear();
      audience.ledger().lost(loss);
      narrator.say(Happening.Kind.LOST, loss.bytes(), Double.NaN, causeNow.sentence());
    }
  }

  private double shoots() {
    ShootTable shoots = state.shoots();
    double count = 0;
    for (int i = 0; i < lostNow.size(); i++) {
      count += shoots.inShoots(lostNow.to(i)) - shoots.inShoots(lostNow.from(i));
    }
    return count;
  }

  private long shootsHit() {
    ShootTable shoots = state.shoots();
    long hit = 0;
    long lastUnit = -1;
    for (int i = 0; i < lostNow.size(); i++) {
      long first = shoots.unitOf(lostNow.from(i));
      long last = shoots.unitOf(Math.nextDown(lostNow.to(i)));
      hit += Math.max(0, last - Math.max(first, lastUnit + 1) + 1);
      lastUnit = Math.max(lastUnit, last);
    }
    return hit;
  }

  /** The cause of what struck, without what was down or behind. */
  public Cause plainCause() {
    return striking.get(Cause.Context.ALONE);
  }

  private Cause.Context context() {
    if (deletedUnseen.test(removed)) {
      return Cause.Context.DELETED;
    }
    boolean othersStand = false;
    boolean spoilt = false;
    for (CopyState copy : state.copies()) {
      boolean went = wentNow[copy.index()];
      if (!went && isAway(copy)) {
        return Cause.Context.AWAY;
      }
      othersStand |= !went;
      spoilt |= !went && copy.isSpoilt();
    }
    if (spoilt) {
      return Cause.Context.SPOILT;
    }
    if (!othersStand) {
      return Cause.Context.ALONE;
    }
    double oldest = removed.from(0);
    ShootTable shoots = state.shoots();
    double shot = oldest < shoots.onHand() ? 0 : shoots.time(shoots.shootOf(oldest));
    return Cause.Context.behind(state.now() - shot);
  }

  /** A copy, or a drive of a shelf that would hold some of it, is gone or being filled again. */
  private boolean isAway(CopyState copy) {
    if (copy.isGone() || copy.isRefilling()) {
      return true;
    }
    scratch.copyFrom(removed);
    scratch.removeAll(copy.barred());
    return scratch.bytes() < removed.bytes();
  }
}
