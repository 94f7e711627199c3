package lastcopy.history.state;

import lastcopy.history.plan.SlotPlan;

/** What a slot holds: one drive after another, or a service. */
public final class DriveState {

  /** How a drive stands. */
  public enum Condition {
    /** In service, or it will enter service. */
    UP,
    /** Failed, in a set that survives or on a shelf. */
    DOWN,
    /** Replaced; its rebuild starts when the replacement is there. */
    ORDERED,
    /** Failed or destroyed, of a copy that is gone. */
    FAILED
  }

  private final SlotPlan plan;
  private Condition condition = Condition.UP;
  private int generation;
  private int failures;
  private double frailty;
  private double enteredAt;
  private double inUse;
  private double seenAt;

  DriveState(SlotPlan plan) {
    this.plan = plan;
  }

  void clear() {
    condition = Condition.UP;
    generation = 0;
    failures = 0;
  }

  /** Its slot. */
  public SlotPlan plan() {
    return plan;
  }

  /** Its slot's number. */
  public int slot() {
    return plan.index();
  }

  /** How it stands. */
  public Condition condition() {
    return condition;
  }

  /** It stands otherwise. */
  public void condition(Condition is) {
    condition = is;
  }

  /** Whether it is in service, or will be. */
  public boolean isUp() {
    return condition == Condition.UP;
  }

  /** How many drives the slot has had before. */
  public int generation() {
    return generation;
  }

  /** A new drive is in the slot. */
  public void isNew() {
    condition = Condition.UP;
    generation++;
  }

  /** The first drive enters service at a time, in hours. */
  public void enters(double at) {
    enteredAt = at;
  }

  /** When the slot's first drive enters service, in hours; infinite if never. */
  public double enteredAt() {
    return enteredAt;
  }

  /** Whether the slot's first drive has entered service by a time. */
  public boolean inService(double now) {
    return enteredAt <= now;
  }

  /** The multiplier of its hazard that it shares with its batch. */
  public double frailty() {
    return frailty;
  }

  /** It has a multiplier. */
  public void frailty(double multiplier) {
    frailty = multiplier;
  }

  /** Counts a failure that is repaired; how many there were before. */
  public int countFailure() {
    return failures++;
  }

  /** The number of the repair that goes on, from 0. */
  public int repair() {
    return failures - 1;
  }

  /** Bytes that the copy held when the rebuild started, which reads the part in use. */
  public double inUse() {
    return inUse;
  }

  /** A rebuild of the part in use starts. */
  public void inUse(double bytes) {
    inUse = bytes;
  }

  /** Its failure will be noticed at a time. */
  public void seenAt(double hours) {
    seenAt = hours;
  }

  /** Whether it is down and nobody has seen it yet. */
  public boolean isUnseen(double now) {
    return (condition == Condition.DOWN || condition == Condition.ORDERED) && seenAt > now;
  }
}
