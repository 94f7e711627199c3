package lastcopy.history.event.drive;

import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.history.hazard.Defects;
import lastcopy.history.hazard.Likelihood;
import lastcopy.history.plan.Draws;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;

/**
 * Where unreadable spots lie: a clip's worth of positions each, uniform in a set. Under a bias one
 * of those that could not be read is, in half of the histories, put where no other copy holds what
 * it costs, with the likelihood ratio of the two joint densities of their starts; and so is each
 * latent defect when it is met for the first time; and the block of a deletion, in some histories.
 */
public final class Spots {

  private final HistoryState state;
  private final Draws draws;
  private final Likelihood likelihood;
  private final Defects defects;
  private double clip;
  private final PositionSet onlyHere = new PositionSet();

  /** Starts of spots that meet something which only one copy holds, in bytes of the set before. */
  private final PositionSet starts = new PositionSet();

  /** Spots of a size in bytes, in a state's footage. */
  public Spots(
      HistoryState state, Draws draws, Likelihood likelihood, Defects defects, double bytes) {
    this.state = state;
    this.draws = draws;
    this.likelihood = likelihood;
    this.defects = defects;
    clip = bytes;
  }

  /** From now on they are of another size. */
  public void size(double bytes) {
    clip = bytes;
  }

  /**
   * What is read, before spots are put into it.
   *
   * @param copy that is read
   * @param target that is filled from it, or null
   */
  public void read(Positions within, CopyState copy, CopyState target) {
    starts.clear();
    if (likelihood.biasing()) {
      state.holdings().bringAllTo(state.now());
      onlyHere.copyFrom(within);
      state.holdings().removeHeld(onlyHere, copy, target);
      onlyHere.remove(0, state.holdings().aged());
      findStarts(within, within.bytes() - clip);
    }
  }

  private void findStarts(Positions within, double last) {
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

  /**
   * Adds spots that could not be read.
   *
   * @param key of draws that are used for nothing else
   */
  void addUnread(Positions within, int n, long key, PositionSet to) {
    double last = Math.max(0, within.bytes() - clip);
    int put = starts.isEmpty() ? -1 : oneOf(n, draws.uniform(Draws.key(key, 1, 0)));
    int meet = 0;
    for (int i = 0; i < n; i++) {
      double uniform = draws.uniform(Draws.key(key, 0, i));
      double start = i == put ? place(uniform * starts.bytes()) : uniform * last;
      meet += meets(start) ? 1 : 0;
      addFrom(within, start, clip, to);
    }
    if (!starts.isEmpty()) {
      likelihood.placed(1 / (0.5 + 0.5 * last / starts.bytes() * meet / n));
    }
  }

  /** One of n, or none in half of the histories. */
  private static int oneOf(int n, double uniform) {
    return uniform <= 0.5 ? -1 : Math.min(n - 1, (int) ((2 * uniform - 1) * n));
  }

  /** Adds what the defect of a drive costs, anew each time; put anywhere only the first time. */
  void addDefect(Positions within, int slot, PositionSet to) {
    long key = defects.spot(slot);
    int before = defects.countMeeting(slot);
    double uniform = draws.uniform(Draws.key(key, 0, before));
    double start = start(within, uniform, before == 0 ? 0.5 : 0, Draws.key(key, 1, 0));
    addFrom(within, start, clip, to);
  }

  /**
   * The start of one block in what was read.
   *
   * @param share of the histories in which it is put, in [0, 1)
   */
  public double start(Positions within, double uniform, double share, long key) {
    double last = Math.max(0, within.bytes() - clip);
    if (starts.isEmpty() || last == 0) {
      return uniform * last;
    }
    boolean put = draws.uniform(key) <= share;
    double start = put ? place(uniform * starts.bytes()) : uniform * last;
    double meets = meets(start) ? last / starts.bytes() : 0;
    likelihood.placed(1 / (1 - share + share * meets));
    return start;
  }

  private static void addFrom(Positions within, double start, double clip, PositionSet to) {
    double skip = start;
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

  private boolean meets(double start) {
    for (int i = 0; i < starts.size(); i++) {
      if (starts.from(i) <= start && start <= starts.to(i)) {
        return true;
      }
    }
    return false;
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
