package lastcopy.history.state;

import java.util.Arrays;
import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.history.plan.CopyPlan;

/**
 * One copy at an instant: its condition, its drives, what it holds and what is on its way to it.
 * The only place where any of these is changed.
 */
public final class CopyState {

  /** How a copy stands. */
  public enum Condition {
    /** It has all its drives. */
    WHOLE,
    /** Drives are down, of a set that survives it or of a shelf. */
    DEGRADED,
    /** It has hardware again after it was gone, all or some, and is being filled. */
    REFILLING,
    /** It holds nothing usable and nobody knows. */
    SPOILT,
    /** It has no hardware. */
    GONE
  }

  private final CopyPlan plan;
  private final DriveState[] drives;

  /** What it holds; while it is spoilt, what people believe that it holds. */
  private final PositionSet held = new PositionSet();

  /** What a spoilt copy holds. */
  private final PositionSet nothing = new PositionSet();

  /** What it still holds of what is deleted. */
  private final PositionSet kept = new PositionSet();

  /** What it cannot take at present: the positions of its drives that are down. */
  private final PositionSet barred = new PositionSet();

  private final Flow flow = new Flow();
  private final FeedState feed = new FeedState();
  private Condition condition = Condition.WHOLE;

  /** Of a spoilt copy: whether it was, or should have been, filled again. */
  private boolean unfilled;

  private int down;

  /** By lot of drives that stand in for each other, how many are down. */
  private final int[] downOf;

  private int timesGone;

  CopyState(CopyPlan plan, DriveState[] drives) {
    this.plan = plan;
    this.drives = drives;
    downOf = new int[plan.set().lots()];
  }

  void clear() {
    condition = Condition.WHOLE;
    unfilled = false;
    noneIsDown();
    timesGone = 0;
    held.clear();
    kept.clear();
    barred.clear();
    flow.clear();
    feed.clear();
    feed.firstFill(index() > 0 && !plan.startsFull());
  }

  /** What does not change. */
  public CopyPlan plan() {
    return plan;
  }

  /** Its number; 0 is the working copy. */
  public int index() {
    return plan.index();
  }

  /** Its drives. */
  public DriveState[] drives() {
    return drives;
  }

  /** Its feed. */
  public FeedState feed() {
    return feed;
  }

  /** What is on its way to it. */
  public Flow flow() {
    return flow;
  }

  // ---- its condition

  /** How it stands. */
  public Condition condition() {
    return condition;
  }

  /** Whether it has no hardware. */
  public boolean isGone() {
    return condition == Condition.GONE;
  }

  /** Whether it is unusable and nobody knows. */
  public boolean isSpoilt() {
    return condition == Condition.SPOILT;
  }

  /** Whether it has hardware that holds what it is given. */
  public boolean isUsable() {
    return !isGone() && !isSpoilt();
  }

  /** Whether it has not all again that it lacked when it came back. */
  public boolean isRefilling() {
    return condition == Condition.REFILLING || (isSpoilt() && unfilled);
  }

  /** Whether it is as it would be if nothing had ever befallen it, but for drives of a set. */
  public boolean isUndisturbed() {
    return (condition == Condition.WHOLE || condition == Condition.DEGRADED)
        && !(plan.set().shelf() && down > 0);
  }

  /** How many of its drives are down. */
  public int down() {
    return down;
  }

  /** How many are down of a drive and those that stand in for it. */
  public int downWith(DriveState drive) {
    return downOf[lotOf(drive)];
  }

  /** Nearly all copies have one lot: a division in every event would be felt. */
  private int lotOf(DriveState drive) {
    return downOf.length == 1 ? 0 : plan.set().lotOf(drive.plan().drive());
  }

  /** Whether two drives stand in for each other. */
  public boolean standTogether(DriveState one, DriveState other) {
    return lotOf(one) == lotOf(other);
  }

  private int mostDown() {
    int most = downOf[0];
    for (int lot = 1; lot < downOf.length; lot++) {
      most = Math.max(most, downOf[lot]);
    }
    return most;
  }

  /** How many things are wrong with it: drives down, or as many as a loss takes. */
  public int wrong() {
    return isUsable() && !isRefilling() ? mostDown() : plan.breaksIt();
  }

  /** Whether the next failure of a drive or service takes some of what it holds. */
  public boolean isFragile() {
    return plan.set().shelf() || mostDown() == plan.set().survives();
  }

  /** Whether it, or of pairs a part of it, is read without redundancy, as a service never is. */
  public boolean isReadBare() {
    return mostDown() >= plan.set().survives() && !plan.set().service();
  }

  /** Whether what a drive holds is read without redundancy. */
  public boolean isBareBehind(DriveState drive) {
    return downWith(drive) >= plan.set().survives();
  }

  /** The share of what it holds that is read without redundancy: pairs hold even shares of it. */
  public double bareShare() {
    int bare = 0;
    for (int each : downOf) {
      bare += each >= plan.set().survives() ? 1 : 0;
    }
    return (double) bare / downOf.length;
  }

  /** One more of its drives is down. */
  public void driveFails(DriveState drive) {
    down++;
    downOf[lotOf(drive)]++;
    settles();
  }

  /** One of its drives is up again. */
  public void driveIsBack(DriveState drive) {
    down--;
    downOf[lotOf(drive)]--;
    settles();
  }

  private void noneIsDown() {
    down = 0;
    Arrays.fill(downOf, 0);
  }

  private void settles() {
    if (condition == Condition.WHOLE || condition == Condition.DEGRADED) {
      condition = down > 0 ? Condition.DEGRADED : Condition.WHOLE;
    }
  }

  /** It has no hardware, and holds and keeps nothing; how often that has happened before. */
  public int goes() {
    condition = Condition.GONE;
    held.clear();
    barred.clear(); // nothing is taken
    return timesGone++;
  }

  /** It has hardware again, all of it. */
  public void comesBack() {
    condition = Condition.REFILLING;
    noneIsDown();
    feed.comesBack();
  }

  /** Some of its hardware is back and has to be filled. */
  public void isToBeFilled() {
    unfilled = true;
    condition = isSpoilt() ? Condition.SPOILT : Condition.REFILLING;
    feed.comesBack();
  }

  /** It has all again. */
  public void isFilled() {
    unfilled = false;
    if (condition == Condition.REFILLING) {
      condition = Condition.WHOLE;
      settles();
    }
  }

  /** It holds nothing usable any more, and nobody knows. */
  public void spoils() {
    unfilled = condition == Condition.REFILLING;
    condition = Condition.SPOILT;
  }

  // ---- what it holds

  /** What it holds as usual. */
  public Positions held() {
    return isSpoilt() ? nothing : held;
  }

  /** What people believe that it holds, and what its feed goes by. */
  public Positions believed() {
    return held;
  }

  /** What it still holds of what is deleted. */
  public Positions kept() {
    return kept;
  }

  /** What it cannot take at present. */
  public Positions barred() {
    return barred;
  }

  /** It holds some more. */
  public void gains(Positions more) {
    held.addAll(more);
  }

  /** It holds [from, to) too. */
  public void takes(double from, double to) {
    held.add(from, to);
  }

  /** Whether it could hold all of [from, to): none of its drives for that are down. */
  public boolean canTake(double from, double to) {
    for (int i = 0; i < barred.size(); i++) {
      if (barred.from(i) < to && from < barred.to(i)) {
        return false;
      }
    }
    return true;
  }

  /** It no longer holds some. */
  public void loses(Positions some) {
    held.removeAll(some);
  }

  /** It holds [0, bytes), less some, and nothing is on its way. */
  public void holds(double bytes, Positions but) {
    held.clear();
    flow.clear();
    held.add(0, bytes);
    held.removeAll(but);
  }

  /** Positions below it count for nothing; a shelf goes on holding them. */
  public void agesOut(double aged, double now) {
    flow.bringTo(now, held); // or what is left of a run would be reckoned from its start
    if (!plan.set().shelf()) {
      held.remove(0, aged);
      kept.remove(0, aged);
    }
  }

  /** Of what is deleted it keeps nothing. */
  public void keepsNothing() {
    kept.clear();
  }

  /** Of what is deleted it keeps some more. */
  public void keeps(Positions some) {
    kept.addAll(some);
  }

  /** The positions of a drive that is down cannot be taken. */
  public void bars(double from, double to) {
    barred.add(from, to);
  }

  /** They can be taken again. */
  public void takesAgain(double from, double to) {
    barred.remove(from, to);
  }

  // ---- what is on its way to it

  /** What its link has carried by a time has arrived. */
  public void bringTo(double now) {
    flow.bringTo(now, held);
  }

  /** Of what another holds, what it lacks and can take is what a run would bring; nothing moves. */
  PositionSet prepares(Positions source) {
    PositionSet coming = flow.content();
    coming.copyFrom(source);
    coming.removeAll(held);
    coming.removeAll(barred);
    return coming;
  }

  /** Bytes [from, to) are on their way since a start; the hours that takes from then on. */
  public double receives(double from, double to, int source, double perHour, double start) {
    flow.content().add(from, to);
    return flow.begin(source, perHour, start);
  }

  /** What is on its way to it has come at another rate before, since a start. */
  public void hasReceivedSince(double start) {
    flow.began(start);
  }

  /** What is on its way comes at another rate from now on. */
  public void receivesAt(double perHour, double now) {
    flow.bringTo(now, held);
    flow.goesOnAt(perHour, now);
  }

  /** What is on its way waits for its source until a time. */
  public void waitsForSource(double until) {
    flow.waits(until);
  }

  /** What is on its way is carried by hand, and is there at a time. */
  public void receivesByHand(double until) {
    flow.byHand(until);
  }

  /** Some of what is on its way does not come. */
  public void doesNotReceive(Positions some) {
    feed.doesNotRead(flow.positions(), some);
    flow.content().removeAll(some);
    flow.isLess();
  }

  /** What is on its way below a position does not come. */
  public void doesNotReceiveBelow(double position) {
    feed.doesNotReadBelow(flow.positions(), position);
    flow.content().remove(0, position);
    flow.isLess();
  }

  /** All that was on its way has arrived. */
  public void arrives() {
    held.addAll(flow.positions());
    flow.clear();
  }

  /** What has not crossed does not come. */
  public void cuts() {
    flow.clear();
  }
}
