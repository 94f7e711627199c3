package lastcopy.history.plan;

import java.util.Arrays;
import lastcopy.kernel.Priority;

/**
 * The numbers of all timers of a layout, in blocks of one kind, with their order at one instant.
 *
 * @param slots drives and services
 * @param shocks Poisson processes that strike
 * @param copies copies, each turn of a rotation as one
 */
public record Timers(int slots, int shocks, int copies) {

  /** A drive or service fails. */
  public int failure(int slot) {
    return slot;
  }

  /** A process of shocks strikes. */
  public int shock(int process) {
    return slots + process;
  }

  /** A replacement arrives, or its rebuild is done. */
  public int repair(int slot) {
    return slots + shocks + slot;
  }

  /** A copy that was gone has hardware again. */
  public int comeBack(int copy) {
    return repair(slots) + copy;
  }

  /** A run of a feed, or a refill of the working copy, has carried all. */
  public int runEnd(int copy) {
    return comeBack(copies) + copy;
  }

  /** A drive reaches its planned age. */
  public int swap(int slot) {
    return runEnd(copies) + slot;
  }

  /** Another drive of a shelf enters service. */
  public int enter(int slot) {
    return swap(slots) + slot;
  }

  /** A link opens or closes, or a service begins to give back. */
  public int linkChange(int copy) {
    return enter(slots) + copy;
  }

  /** A restore is tried. */
  public int tried(int copy) {
    return linkChange(copies) + copy;
  }

  /** Somebody looks whether a feed runs. */
  public int looked(int copy) {
    return tried(copies) + copy;
  }

  /** A visit of a rotated drive is over. */
  public int visitEnd(int copy) {
    return looked(copies) + copy;
  }

  /** Somebody notices damage of the desk. */
  public int noticed() {
    return visitEnd(copies);
  }

  /** A copy drops what it kept of a deletion. */
  public int dropped() {
    return noticed() + 1;
  }

  /** Camera cards are formatted. */
  public int cardsExpired() {
    return noticed() + 2;
  }

  /** Footage has been kept for long enough. */
  public int aged() {
    return noticed() + 3;
  }

  /** A run of a feed is due. */
  public int runStart(int copy) {
    return noticed() + 4 + copy;
  }

  /** A shoot is due. */
  public int offload() {
    return runStart(copies);
  }

  /** How many timers. */
  public int count() {
    return offload() + 1;
  }

  /** Their order at one instant. */
  public Priority[] priorities() {
    Priority[] all = new Priority[count()];
    Arrays.fill(all, 0, repair(0), Priority.FAILURE);
    Arrays.fill(all, repair(0), tried(0), Priority.RETURN);
    Arrays.fill(all, tried(0), dropped(), Priority.LOOK);
    Arrays.fill(all, dropped(), runStart(0), Priority.EXPIRY);
    Arrays.fill(all, runStart(0), offload(), Priority.FEED_RUN);
    all[offload()] = Priority.OFFLOAD;
    return all;
  }
}
