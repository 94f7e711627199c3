package lastcopy.oracle;

import java.util.Arrays;

/** A set of positions as an immutable, ordered list of stretches [from, to), in bytes. */
final class Stretches {

  static final Stretches NONE = new Stretches(new double[0]);

  private final double[] ends;

  private Stretches(double[] ends) {
    this.ends = ends;
  }

  private interface Keep {
    boolean keeps(boolean mine, boolean theirs);
  }

  static Stretches of(double from, double to) {
    return to > from ? new Stretches(new double[] {from, to}) : NONE;
  }

  Stretches plus(Stretches other) {
    return combine(other, (mine, theirs) -> mine || theirs);
  }

  Stretches minus(Stretches other) {
    return combine(other, (mine, theirs) -> mine && !theirs);
  }

  Stretches and(Stretches other) {
    return combine(other, (mine, theirs) -> mine && theirs);
  }

  double size() {
    double size = 0;
    for (int i = 0; i < ends.length; i += 2) {
      size += ends[i + 1] - ends[i];
    }
    return size;
  }

  /** Less than a byte is a rounding, not footage. */
  boolean isNothing() {
    return size() < 1;
  }

  /** The part from so many bytes into the set to so many bytes into it, oldest first. */
  Stretches slice(double from, double to) {
    Stretches slice = NONE;
    double before = 0;
    for (int i = 0; i < ends.length; i += 2) {
      double start = Math.max(ends[i], ends[i] + from - before);
      double end = Math.min(ends[i + 1], ends[i] + to - before);
      slice = slice.plus(of(start, end));
      before += ends[i + 1] - ends[i];
    }
    return slice;
  }

  /** How many bytes of this set lie below the last position that it shares with another. */
  double sizeUpToLastOf(Stretches other) {
    Stretches shared = and(other);
    return shared.ends.length == 0
        ? 0
        : and(of(Double.NEGATIVE_INFINITY, shared.ends[shared.ends.length - 1])).size();
  }

  private Stretches combine(Stretches other, Keep keep) {
    double[] out = new double[ends.length + other.ends.length];
    int i = 0;
    int j = 0;
    int n = 0;
    boolean inside = false;
    while (i < ends.length || j < other.ends.length) {
      double mine = i < ends.length ? ends[i] : Double.POSITIVE_INFINITY;
      double theirs = j < other.ends.length ? other.ends[j] : Double.POSITIVE_INFINITY;
      double at = Math.min(mine, theirs);
      i += mine == at ? 1 : 0;
      j += theirs == at ? 1 : 0;
      if (keep.keeps(i % 2 == 1, j % 2 == 1) != inside) {
        inside = !inside;
        out[n++] = at;
      }
    }
    return n == 0 ? NONE : new Stretches(Arrays.copyOf(out, n));
  }
}
