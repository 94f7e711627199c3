package lastcopy.history;

import lastcopy.footage.PositionSet;

/**
 * What each copy holds, and what is on its way to it: content as a fluid, at any instant. Beside
 * what a copy holds as usual stand what it keeps of deletions, and the camera cards.
 */
final class Holdings {

  final int copies;
  final PositionSet[] held;
  final PositionSet[] flow;

  /** What a copy still holds of what is deleted. */
  final PositionSet[] kept;

  /** What a copy cannot take at present: the positions of its drives that are down. */
  final PositionSet[] barred;

  /** What is deleted on the working copy and not noticed: no refill brings it back. */
  final PositionSet blocked = new PositionSet();

  /** What camera cards hold. */
  final PositionSet cards = new PositionSet();

  final boolean[] flowing;
  final int[] flowSource;
  final double[] flowBase;
  final double[] runStart;

  /** Positions below it have aged out and count for nothing. */
  double aged;

  private final double[] flowAt;
  private final double[] perHour;
  private final PositionSet scratch = new PositionSet();

  Holdings(int copies) {
    this.copies = copies;
    held = sets();
    flow = sets();
    kept = sets();
    barred = sets();
    flowing = new boolean[copies];
    flowSource = new int[copies];
    flowBase = new double[copies];
    runStart = new double[copies];
    flowAt = new double[copies];
    perHour = new double[copies];
  }

  private PositionSet[] sets() {
    PositionSet[] all = new PositionSet[copies];
    for (int c = 0; c < copies; c++) {
      all[c] = new PositionSet();
    }
    return all;
  }

  void clear() {
    for (int c = 0; c < copies; c++) {
      held[c].clear();
      flow[c].clear();
      kept[c].clear();
      barred[c].clear();
      flowing[c] = false;
    }
    blocked.clear();
    cards.clear();
    aged = 0;
  }

  /** Lets what a link has carried by a time arrive. */
  void bringTo(int copy, double now) {
    if (flowing[copy] && now > flowAt[copy]) {
      flow[copy].moveFirst(perHour[copy] * (now - flowAt[copy]), held[copy]);
      flowAt[copy] = now;
    }
  }

  void bringAllTo(double now) {
    for (int c = 0; c < copies; c++) {
      bringTo(c, now);
    }
  }

  /** What a source holds and a target lacks goes on its way; the hours it takes, 0 if nothing. */
  double start(int target, int source, double rate, double now) {
    prepare(target, source, now);
    if (flow[target].isEmpty()) {
      return 0;
    }
    double hours = begin(target, source, rate, now);
    if (now + hours == now) {
      arrive(target); // a rounding of a position, which must not start a run at every instant
      return 0;
    }
    return hours;
  }

  /** Whether a source holds what a target lacks and can take. */
  boolean hasMore(int target, int source, double now) {
    prepare(target, source, now);
    boolean more = !flow[target].isEmpty();
    flow[target].clear();
    return more;
  }

  /** How long what a source holds and a target lacks would be on its way. */
  double hours(int target, int source, double rate, double now) {
    prepare(target, source, now);
    double hours = flow[target].bytes() / rate;
    flow[target].clear();
    return hours;
  }

  private void prepare(int target, int source, double now) {
    bringTo(source, now);
    bringTo(target, now);
    flow[target].copyFrom(held[source]);
    flow[target].removeAll(held[target]);
    flow[target].removeAll(barred[target]);
    if (target == 0) {
      flow[target].removeAll(blocked);
    }
    flow[target].remove(0, aged);
  }

  /** The prepared flow begins; the hours it takes. */
  double begin(int target, int source, double rate, double now) {
    flowing[target] = true;
    flowSource[target] = source;
    flowBase[target] = flow[target].from(0);
    runStart[target] = now;
    flowAt[target] = now;
    perHour[target] = rate;
    return flow[target].bytes() / rate;
  }

  /** Hours until all that is on its way has arrived, counted from the last bringing. */
  double hoursLeft(int copy) {
    return flow[copy].bytes() / perHour[copy];
  }

  /** All that was on its way has arrived. */
  void arrive(int copy) {
    held[copy].addAll(flow[copy]);
    stop(copy);
  }

  /** What has not crossed does not come. */
  void stop(int copy) {
    flow[copy].clear();
    flowing[copy] = false;
  }

  /** Takes from a set what any copy or card holds. */
  void removeHeld(PositionSet set) {
    removeHeld(set, -1, -1);
  }

  /** Takes from a set what any copy but two, or any card, holds. */
  void removeHeld(PositionSet set, int but, int andBut) {
    for (int c = 0; c < copies && !set.isEmpty(); c++) {
      if (c != but && c != andBut) {
        set.removeAll(held[c]);
      }
      set.removeAll(kept[c]);
    }
    set.removeAll(cards);
  }

  /** Whether no copy holds any footage that counts; cards do not matter. */
  boolean allEmpty() {
    for (int c = 0; c < copies; c++) {
      if (!isEmpty(held[c]) || !isEmpty(kept[c])) {
        return false;
      }
    }
    return true;
  }

  private boolean isEmpty(PositionSet set) {
    return set.isEmpty() || set.to(set.size() - 1) <= aged;
  }

  /** The lowest position that is in one copy, or on cards, only; infinite if none is. */
  double lowestBare() {
    double lowest = onlyOnCards() > 0 ? scratch.from(0) : Double.POSITIVE_INFINITY;
    for (int c = 0; c < copies; c++) {
      lowest = onlyIn(c) > 0 ? Math.min(lowest, scratch.from(0)) : lowest;
    }
    return lowest;
  }

  /** Bytes that only this copy holds. */
  double onlyIn(int copy) {
    scratch.copyFrom(held[copy]);
    scratch.addAll(kept[copy]);
    for (int c = 0; c < copies && !scratch.isEmpty(); c++) {
      if (c != copy) {
        scratch.removeAll(held[c]);
        scratch.removeAll(kept[c]);
      }
    }
    scratch.removeAll(cards);
    scratch.remove(0, aged);
    return scratch.bytes();
  }

  /** Bytes that only camera cards hold. */
  double onlyOnCards() {
    if (cards.isEmpty()) {
      return 0;
    }
    scratch.copyFrom(cards);
    for (int c = 0; c < copies && !scratch.isEmpty(); c++) {
      scratch.removeAll(held[c]);
      scratch.removeAll(kept[c]);
    }
    scratch.remove(0, aged);
    return scratch.bytes();
  }

  /**
   * Hours until the front of some flow reaches an end of what another copy holds: until then what
   * stands in one copy only changes in amount, not in kind.
   */
  double hoursOfOneKind() {
    double least = Double.POSITIVE_INFINITY;
    for (int c = 0; c < copies; c++) {
      if (flowing[c] && !flow[c].isEmpty()) {
        double front = flow[c].from(0);
        double end = Math.min(flow[c].to(0), nextEnd(cards, front));
        for (int other = 0; other < copies; other++) {
          if (other != c) {
            end = Math.min(end, nextEnd(kept[other], front));
            double mark = nextEnd(held[other], front);
            boolean moves = flowing[other] && !flow[other].isEmpty() && mark == flow[other].from(0);
            if (moves) {
              least = Math.min(least, catchUp(mark - front, perHour[c] - perHour[other]));
            } else {
              end = Math.min(end, mark);
            }
          }
        }
        least = Math.min(least, (end - front) / perHour[c]);
      }
    }
    return least;
  }

  /** Hours until a front reaches another that moves on; fronts of one speed never meet. */
  private static double catchUp(double bytes, double perHour) {
    return perHour > 0 ? bytes / perHour : Double.POSITIVE_INFINITY;
  }

  private static double nextEnd(PositionSet set, double after) {
    for (int i = 0; i < set.size(); i++) {
      if (set.from(i) > after) {
        return set.from(i);
      }
      if (set.to(i) > after) {
        return set.to(i);
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Whether a copy, with what is on its way, lost for good or aged, has exactly [0, end). */
  boolean isPrefix(int copy, PositionSet lost, double end) {
    scratch.copyFrom(held[copy]);
    scratch.addAll(flow[copy]);
    scratch.addAll(lost);
    scratch.add(0, aged);
    return end > 0
        ? scratch.size() == 1 && scratch.from(0) == 0 && scratch.to(0) == end
        : scratch.isEmpty();
  }
}
