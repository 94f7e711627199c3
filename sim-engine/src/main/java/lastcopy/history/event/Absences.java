package lastcopy.history.event;

import java.util.Arrays;

/** Stretches of time in which something, by its number, is not there. Mutable, used again. */
final class Absences {

  private int[] of = new int[8];
  private double[] from = new double[8];
  private double[] to = new double[8];
  private int size;

  void clear() {
    size = 0;
  }

  void add(int what, double begin, double end) {
    if (size == of.length) {
      of = Arrays.copyOf(of, 2 * size);
      from = Arrays.copyOf(from, 2 * size);
      to = Arrays.copyOf(to, 2 * size);
    }
    of[size] = what;
    from[size] = begin;
    to[size++] = end;
  }

  int size() {
    return size;
  }

  int of(int i) {
    return of[i];
  }

  double from(int i) {
    return from[i];
  }

  double to(int i) {
    return to[i];
  }
}
