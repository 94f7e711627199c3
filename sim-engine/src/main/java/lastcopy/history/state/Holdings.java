package lastcopy.history.state;

import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;

/**
 * What all copies and camera cards hold together: what stands in one copy only, what a run from one
 * copy to another brings.
 */
public final class Holdings {

  private final CopyState[] copies;

  /** What is deleted on the working copy and not noticed: no refill brings it back. */
  private final PositionSet blocked = new PositionSet();

  /** What camera cards hold. */
  private final PositionSet cards = new PositionSet();

  /** Positions below it have aged out and count for nothing. */
  private double aged;

  private final PositionSet scratch = new PositionSet();

  Holdings(CopyState[] copies) {
    this.copies = copies;
  }

  void clear() {
    blocked.clear();
    cards.clear();
    aged = 0;
  }

  /** What is deleted on the working copy and not noticed. */
  public PositionSet blocked() {
    return blocked;
  }

  /** What camera cards hold. */
  public PositionSet cards() {
    return cards;
  }

  /** Positions below it have aged out and count for nothing. */
  public double aged() {
    return aged;
  }

  /** Positions below one age out. */
  public void agesOut(double below, double now) {
    aged = below;
    for (CopyState copy : copies) {
      copy.agesOut(below, now);
    }
    cards.remove(0, below);
  }

  /** Lets what links have carried by a time arrive. */
  public void bringAllTo(double now) {
    for (CopyState copy : copies) {
      copy.bringTo(now);
    }
  }

  /** What a source holds and a target lacks goes on its way; the hours it takes, 0 if nothing. */
  public double start(CopyState target, CopyState source, double rate, double now) {
    if (prepare(target, source, now).isEmpty()) {
      return 0;
    }
    double hours = target.flow().begin(source.index(), rate, now);
    if (now + hours == now) {
      target.arrives(); // a rounding of a position, which must not start a run at every instant
      return 0;
    }
    return hours;
  }

  /** How long what a source holds and a target lacks would be on its way; 0 if nothing would. */
  public double hours(CopyState target, CopyState source, double rate, double now) {
    PositionSet coming = prepare(target, source, now);
    double hours = coming.bytes() / rate;
    coming.clear();
    return hours;
  }

  private PositionSet prepare(CopyState target, CopyState source, double now) {
    source.bringTo(now);
    target.bringTo(now);
    PositionSet coming = target.prepares(source.held());
    if (target.index() == 0) {
      coming.removeAll(blocked);
    }
    coming.remove(0, aged);
    return coming;
  }

  /** Takes from a set what any copy or card holds. */
  public void removeHeld(PositionSet set) {
    removeHeld(set, null, null);
  }

  /** Takes from a set what any copy but two, which may be null, or any card, holds. */
  public void removeHeld(PositionSet set, CopyState but, CopyState andBut) {
    for (int c = 0; c < copies.length && !set.isEmpty(); c++) {
      if (copies[c] != but && copies[c] != andBut) {
        set.removeAll(copies[c].held());
      }
      set.removeAll(copies[c].kept());
    }
    set.removeAll(cards);
  }

  /** Whether no copy holds any footage that counts; cards do not matter. */
  public boolean allEmpty() {
    for (CopyState copy : copies) {
      if (!isEmpty(copy.held()) || !isEmpty(copy.kept())) {
        return false;
      }
    }
    return true;
  }

  private boolean isEmpty(Positions set) {
    return set.isEmpty() || set.to(set.size() - 1) <= aged;
  }

  /** The lowest position that is in one copy, or on cards, only; infinite if none is. */
  public double lowestBare() {
    double lowest = onlyOnCards() > 0 ? scratch.from(0) : Double.POSITIVE_INFINITY;
    for (CopyState copy : copies) {
      lowest = onlyIn(copy) > 0 ? Math.min(lowest, scratch.from(0)) : lowest;
    }
    return lowest;
  }

  /** Bytes that stand in one copy, or on cards, only. */
  public double bareBytes() {
    double sum = onlyOnCards();
    for (CopyState copy : copies) {
      sum += onlyIn(copy);
    }
    return sum;
  }

  /** Bytes that only this copy holds. */
  public double onlyIn(CopyState copy) {
    scratch.copyFrom(copy.held());
    scratch.addAll(copy.kept());
    for (int c = 0; c < copies.length && !scratch.isEmpty(); c++) {
      if (copies[c] != copy) {
        scratch.removeAll(copies[c].held());
        scratch.removeAll(copies[c].kept());
      }
    }
    scratch.removeAll(cards);
    scratch.remove(0, aged);
    return scratch.bytes();
  }

  /** Bytes that only camera cards hold. */
  public double onlyOnCards() {
    if (cards.isEmpty()) {
      return 0;
    }
    scratch.copyFrom(cards);
    for (int c = 0; c < copies.length && !scratch.isEmpty(); c++) {
      scratch.removeAll(copies[c].held());
      scratch.removeAll(copies[c].kept());
    }
    scratch.remove(0, aged);
    return scratch.bytes();
  }

  /**
   * Hours until the front of some flow reaches an end of what another copy holds: until then what
   * stands in one copy only changes in amount, not in kind.
   */
  public double hoursOfOneKind() {
    double least = Double.POSITIVE_INFINITY;
    for (CopyState copy : copies) {
      if (copy.flow().isGoing() && !copy.flow().positions().isEmpty()) {
        least = Math.min(least, hoursOfOneKind(copy));
      }
    }
    return least;
  }

  private double hoursOfOneKind(CopyState copy) {
    Flow flow = copy.flow();
    double least = Double.POSITIVE_INFINITY;
    double front = flow.positions().from(0);
    double end = Math.min(flow.positions().to(0), nextEnd(cards, front));
    for (CopyState other : copies) {
      if (other != copy) {
        end = Math.min(end, nextEnd(other.kept(), front));
        double mark = nextEnd(other.held(), front);
        if (isFrontOf(other.flow(), mark)) {
          double closing = flow.perHour() - other.flow().perHour();
          least = Math.min(least, catchUp(mark - front, closing));
        } else {
          end = Math.min(end, mark);
        }
      }
    }
    return Math.min(least, (end - front) / flow.perHour());
  }

  private static boolean isFrontOf(Flow flow, double mark) {
    return flow.isGoing() && !flow.positions().isEmpty() && mark == flow.positions().from(0);
  }

  /** Hours until a front reaches another that moves on; fronts of one speed never meet. */
  private static double catchUp(double bytes, double perHour) {
    return perHour > 0 ? bytes / perHour : Double.POSITIVE_INFINITY;
  }

  private static double nextEnd(Positions set, double after) {
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
  public boolean isPrefix(CopyState copy, Positions lost, double end) {
    scratch.copyFrom(copy.held());
    scratch.addAll(copy.flow().positions());
    scratch.addAll(lost);
    scratch.add(0, aged);
    return end > 0
        ? scratch.size() == 1 && scratch.from(0) == 0 && scratch.to(0) == end
        : scratch.isEmpty();
  }
}
