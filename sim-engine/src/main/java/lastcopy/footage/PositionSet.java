package lastcopy.footage;

import java.util.Arrays;

/** A mutable set of positions: disjoint intervals [from, to) in rising order. */
public final class PositionSet implements Positions {

  private double[] from = new double[4];
  private double[] to = new double[4];
  private int size;

  @Override
  public int size() {
    return size;
  }

  @Override
  public double from(int i) {
    return from[i];
  }

  @Override
  public double to(int i) {
    return to[i];
  }

  @Override
  public boolean isEmpty() {
    return size == 0;
  }

  /** Makes it empty. */
  public void clear() {
    size = 0;
  }

  /** Makes it equal to another. */
  public void copyFrom(Positions of) {
    PositionSet other = (PositionSet) of;
    ensure(other.size);
    System.arraycopy(other.from, 0, from, 0, other.size);
    System.arraycopy(other.to, 0, to, 0, other.size);
    size = other.size;
  }

  @Override
  public double bytes() {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      sum += to[i] - from[i];
    }
    return sum;
  }

  /** Adds [a, b); nothing if b is not above a. */
  public void add(double a, double b) {
    if (!(b > a)) {
      return;
    }
    int first = 0;
    while (first < size && to[first] < a) {
      first++;
    }
    int last = first;
    double low = a;
    double high = b;
    while (last < size && from[last] <= b) {
      low = Math.min(low, from[last]);
      high = Math.max(high, to[last]);
      last++;
    }
    splice(first, last, 1);
    from[first] = low;
    to[first] = high;
  }

  /** Adds all of another. */
  public void addAll(Positions of) {
    PositionSet other = (PositionSet) of;
    for (int i = 0; i < other.size; i++) {
      add(other.from[i], other.to[i]);
    }
  }

  /** Takes away [a, b). */
  public void remove(double a, double b) {
    for (int i = 0; i < size && b > a; ) {
      if (to[i] <= a) {
        i++;
      } else if (from[i] >= b) {
        return;
      } else if (from[i] < a && to[i] > b) {
        splice(i, i, 1);
        from[i] = from[i + 1];
        to[i] = a;
        from[i + 1] = b;
        return;
      } else if (from[i] < a) {
        to[i] = a;
        i++;
      } else if (to[i] > b) {
        from[i] = b;
        return;
      } else {
        splice(i, i + 1, 0);
      }
    }
  }

  /** Takes away all of another. */
  public void removeAll(Positions of) {
    PositionSet other = (PositionSet) of;
    for (int i = 0; i < other.size && size > 0; i++) {
      remove(other.from[i], other.to[i]);
    }
  }

  /** Takes away all but what another has too. */
  public void retainAll(Positions of) {
    double end = 0;
    for (int i = 0; i < of.size(); i++) {
      remove(end, of.from(i));
      end = of.to(i);
    }
    remove(end, Double.POSITIVE_INFINITY);
  }

  /** Takes away the first bytes, in rising order. */
  public void removeFirst(double bytes) {
    double left = bytes;
    while (left > 0 && size > 0) {
      double end = Math.min(to[0], from[0] + left);
      if (!(end > from[0])) {
        return;
      }
      left -= end - from[0];
      remove(from[0], end);
    }
  }

  /** Replaces intervals [first, last) by a number of slots to be filled by the caller. */
  private void splice(int first, int last, int slots) {
    int tail = size - last;
    ensure(first + slots + tail);
    System.arraycopy(from, last, from, first + slots, tail);
    System.arraycopy(to, last, to, first + slots, tail);
    size = first + slots + tail;
  }

  private void ensure(int capacity) {
    if (capacity > from.length) {
      from = Arrays.copyOf(from, Math.max(capacity, 2 * from.length));
      to = Arrays.copyOf(to, from.length);
    }
  }
}
