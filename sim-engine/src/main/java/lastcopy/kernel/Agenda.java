package lastcopy.kernel;

import java.util.Arrays;

/**
 * The event queue: a fixed number of timers, each set to one time or to none.
 *
 * <p>An indexed binary heap in primitive arrays. Of two timers at one instant the one of the
 * earlier {@link Priority} goes first, then the one of the lower number; the order of setting never
 * decides.
 */
public final class Agenda {

  /** No timer is set. */
  public static final int NONE = -1;

  private final int[] rank;
  private final double[] time;
  private final int[] heap;
  private final int[] place;
  private int size;

  /** An agenda with one timer for each priority given; the number of a timer is its index. */
  @SuppressWarnings("EnumOrdinal") // the order of the constants is what they mean
  public Agenda(Priority[] priorities) {
    int n = priorities.length;
    rank = new int[n];
    time = new double[n];
    heap = new int[n];
    place = new int[n];
    for (int i = 0; i < n; i++) {
      rank[i] = priorities[i].ordinal();
    }
    Arrays.fill(place, NONE);
  }

  /** Unsets every timer. */
  public void clear() {
    for (int i = 0; i < size; i++) {
      place[heap[i]] = NONE;
    }
    size = 0;
  }

  /** Sets a timer, or moves it. */
  public void set(int timer, double at) {
    time[timer] = at;
    if (place[timer] == NONE) {
      place[timer] = size;
      heap[size++] = timer;
    }
    siftUp(place[timer]);
    siftDown(place[timer]);
  }

  /** Unsets a timer; nothing if it is not set. */
  public void cancel(int timer) {
    int at = place[timer];
    if (at == NONE) {
      return;
    }
    place[timer] = NONE;
    int moved = heap[--size];
    if (moved != timer) {
      heap[at] = moved;
      place[moved] = at;
      siftUp(at);
      siftDown(place[moved]);
    }
  }

  /** Whether a timer is set. */
  public boolean isSet(int timer) {
    return place[timer] != NONE;
  }

  /** The time that a set timer is set to. */
  public double time(int timer) {
    return time[timer];
  }

  /** The timer that goes next, or {@link #NONE}. */
  public int peek() {
    return size == 0 ? NONE : heap[0];
  }

  /** The rank of the priority of a timer. */
  public int rank(int timer) {
    return rank[timer];
  }

  private boolean before(int a, int b) {
    if (time[a] != time[b]) {
      return time[a] < time[b];
    }
    return rank[a] != rank[b] ? rank[a] < rank[b] : a < b;
  }

  private void siftUp(int from) {
    int at = from;
    int timer = heap[at];
    while (at > 0 && before(timer, heap[(at - 1) / 2])) {
      put(at, heap[(at - 1) / 2]);
      at = (at - 1) / 2;
    }
    put(at, timer);
  }

  private void siftDown(int from) {
    int at = from;
    int timer = heap[at];
    while (2 * at + 1 < size) {
      int child = 2 * at + 1;
      if (child + 1 < size && before(heap[child + 1], heap[child])) {
        child++;
      }
      if (!before(heap[child], timer)) {
        break;
      }
      put(at, heap[child]);
      at = child;
    }
    put(at, timer);
  }

  private void put(int at, int timer) {
    heap[at] = timer;
    place[timer] = at;
  }
}
