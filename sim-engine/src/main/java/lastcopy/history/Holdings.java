package lastcopy.history;

import lastcopy.footage.PositionSet;

/** What each copy holds, and what is on its way to it: content as a fluid, at any instant. */
final class Holdings {

  final int copies;
  final PositionSet[] held;
  final PositionSet[] flow;
  final boolean[] flowing;
  final int[] flowSource;
  final double[] flowBase;
  final double[] runStart;
  private final double[] flowAt;
  private final double[] perHour;
  private final PositionSet scratch = new PositionSet();

  Holdings(int copies) {
    this.copies = copies;
    held = new PositionSet[copies];
    flow = new PositionSet[copies];
    for (int c = 0; c < copies; c++) {
      held[c] = new PositionSet();
      flow[c] = new PositionSet();
    }
    flowing = new boolean[copies];
    flowSource = new int[copies];
    flowBase = new double[copies];
    runStart = new double[copies];
    flowAt = new double[copies];
    perHour = new double[copies];
  }

  void clear() {
    for (int c = 0; c < copies; c++) {
      held[c].clear();
      flow[c].clear();
      flowing[c] = false;
    }
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
    bringTo(source, now);
    bringTo(target, now);
    flow[target].copyFrom(held[source]);
    flow[target].removeAll(held[target]);
    return flow[target].isEmpty() ? 0 : begin(target, source, rate, now);
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

  /** Takes from a set what any copy holds. */
  void removeHeld(PositionSet set) {
    for (int c = 0; c < copies && !set.isEmpty(); c++) {
      set.removeAll(held[c]);
    }
  }

  boolean allEmpty() {
    for (PositionSet set : held) {
      if (!set.isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** Bytes that only this copy holds. */
  double onlyIn(int copy) {
    scratch.copyFrom(held[copy]);
    for (int c = 0; c < copies && !scratch.isEmpty(); c++) {
      if (c != copy) {
        scratch.removeAll(held[c]);
      }
    }
    return scratch.bytes();
  }

  /** Whether a copy, with what is on its way and what is lost for good, has exactly [0, end). */
  boolean isPrefix(int copy, PositionSet lost, double end) {
    scratch.copyFrom(held[copy]);
    scratch.addAll(flow[copy]);
    scratch.addAll(lost);
    return end > 0
        ? scratch.size() == 1 && scratch.from(0) == 0 && scratch.to(0) == end
        : scratch.isEmpty();
  }
}
