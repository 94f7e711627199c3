package lastcopy.history;

import java.util.Arrays;
import lastcopy.kernel.Priority;

/**
 * The numbers of all timers of a layout, in blocks of one kind, with their order at one instant.
 *
 * @param slots drives and services
 * @param shocks Poisson processes that strike
 * @param copies copies, each turn of a rotation as one
 */
record Timers(int slots, int shocks, int copies) {

  int failure(int slot) {
    return slot;
  }

  int strike(int shock) {
    return slots + shock;
  }

  int repair(int slot) {
    return slots + shocks + slot;
  }

  int comeBack(int copy) {
    return repair(slots) + copy;
  }

  int runEnd(int copy) {
    return comeBack(copies) + copy;
  }

  int swap(int slot) {
    return runEnd(copies) + slot;
  }

  int enter(int slot) {
    return swap(slots) + slot;
  }

  int tried(int copy) {
    return enter(slots) + copy;
  }

  int looked(int copy) {
    return tried(copies) + copy;
  }

  int visitEnd(int copy) {
    return looked(copies) + copy;
  }

  int noticed() {
    return visitEnd(copies);
  }

  int dropped() {
    return noticed() + 1;
  }

  int cardsExpired() {
    return noticed() + 2;
  }

  int aged() {
    return noticed() + 3;
  }

  int runStart(int copy) {
    return noticed() + 4 + copy;
  }

  int offload() {
    return runStart(copies);
  }

  int count() {
    return offload() + 1;
  }

  Priority[] priorities() {
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
