package lastcopy.history;

import lastcopy.footage.PositionSet;

/**
 * Where an unreadable spot lies: a clip's worth of positions, uniform in a set. Under a bias every
 * second spot is put where no other copy holds what it costs, with the likelihood ratio of the two
 * densities of its start.
 */
final class Spots {

  private final Stage stage;
  private final double clip;
  private final PositionSet onlyHere = new PositionSet();

  /** Starts of spots that meet something which only one copy holds, in bytes of the set before. */
  private final PositionSet starts = new PositionSet();

  Spots(Stage stage) {
    this.stage = stage;
    clip = stage.plan.clip;
  }

  /**
   * What is read, before spots are put into it.
   *
   * @param copy that is read
   * @param target that is filled from it, or −1
   */
  void read(PositionSet within, int copy, int target) {
    starts.clear();
    if (stage.clocks.biasing()) {
      stage.holdings.bringAllTo(stage.now);
      onlyHere.copyFrom(within);
      stage.holdings.removeHeld(onlyHere, copy, target);
      onlyHere.remove(0, stage.holdings.aged);
      findStarts(within, within.bytes() - clip);
    }
  }

  private void findStarts(PositionSet within, double last) {
    double before = 0;
    for (int i = 0; i < within.size(); i++) {
      for (int k = 0; k < onlyHere.size(); k++) {
        double from = Math.max(within.from(i), onlyHere.from(k));
        double to = Math.min(within.to(i), onlyHere.to(k));
        double first = Math.max(0, before + from - within.from(i) - clip);
        double end = Math.min(last, before + to - within.from(i));
        if (to > from && end > first) {
          starts.add(first, end);
        }
      }
      before += within.to(i) - within.from(i);
    }
  }

  /** Adds a spot in what is read to a set. */
  void add(PositionSet within, double uniform, PositionSet to) {
    double last = Math.max(0, within.bytes() - clip);
    double skip = starts.isEmpty() ? uniform * last : biased(uniform, last);
    double left = clip;
    for (int i = 0; i < within.size() && left > 0; i++) {
      double from = within.from(i) + skip;
      skip = Math.max(0, from - within.to(i));
      double end = Math.min(within.to(i), from + left);
      if (end > from) {
        to.add(from, end);
        left -= end - from;
      }
    }
  }

  private double biased(double uniform, double last) {
    double all = starts.bytes();
    double start = uniform <= 0.5 ? 2 * uniform * last : place((2 * uniform - 1) * all);
    boolean meets = false;
    for (int i = 0; i < starts.size(); i++) {
      meets |= starts.from(i) <= start && start <= starts.to(i);
    }
    stage.clocks.placed(1 / (0.5 + (meets ? 0.5 * last / all : 0)));
    return start;
  }

  private double place(double among) {
    double left = among;
    int i = 0;
    while (i < starts.size() - 1 && left > starts.to(i) - starts.from(i)) {
      left -= starts.to(i) - starts.from(i);
      i++;
    }
    return Math.min(starts.to(i), starts.from(i) + left);
  }
}
