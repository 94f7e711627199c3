package lastcopy.cli.host;

import java.io.PrintStream;
import java.util.Locale;
import java.util.function.LongSupplier;
import java.util.function.UnaryOperator;
import lastcopy.experiment.Progress;

/** One line on a terminal that tells how far it is, for runs of over a second. */
public final class TerminalProgress implements Progress {

  private static final long QUIET_NANOS = 1_000_000_000L;
  private static final long STEP_NANOS = 200_000_000L;
  private static final int WIDTH = 79;
  private static final int LONGEST_TITLE = 24;
  private static final double LEAST_SHARE = 0.01;

  private final PrintStream err;
  private final boolean shown;
  private final Interruption interruption;
  private final LongSupplier nanoTime;
  private final UnaryOperator<String> titles;
  private final long began;
  private long next;
  private boolean dirty;
  private long round;
  private String slowest = "";
  private String candidate = "";
  private double candidateShare;

  /**
   * Starts the clock.
   *
   * @param shown false to show nothing
   * @param titles the title of a layout by its id
   * @param nanoTime a clock in nanoseconds
   */
  public TerminalProgress(
      PrintStream err,
      boolean shown,
      Interruption interruption,
      UnaryOperator<String> titles,
      LongSupplier nanoTime) {
    this.err = err;
    this.shown = shown;
    this.interruption = interruption;
    this.titles = titles;
    this.nanoTime = nanoTime;
    this.began = nanoTime.getAsLong();
    this.next = began + QUIET_NANOS;
  }

  @Override
  public synchronized void merged(String layout, long histories, double precision, double share) {
    findSlowest(layout, histories, share);
    if ((slowest.isEmpty() || slowest.equals(layout)) && due()) {
      show(line(titles.apply(layout), histories, precision, share) + left(share));
    }
  }

  /** Of several layouts the one that was furthest from its end in the round before is shown. */
  private void findSlowest(String layout, long histories, double share) {
    if (histories != round) {
      round = histories;
      slowest = candidate;
      candidate = "";
    }
    if (candidate.isEmpty() || share < candidateShare) {
      candidate = layout;
      candidateShare = share;
    }
  }

  /** Told only once the share says something. */
  private String left(double share) {
    double seconds = (nanoTime.getAsLong() - began) / 1e9 * (1 - share) / share;
    if (share < LEAST_SHARE || !Double.isFinite(seconds)) {
      return "";
    }
    return seconds < 100
        ? String.format(Locale.ROOT, ", %.0f s left", Math.ceil(seconds))
        : String.format(Locale.ROOT, ", %.0f min left", Math.ceil(seconds / 60));
  }

  private boolean due() {
    long now = nanoTime.getAsLong();
    if (!shown || now - next < 0) {
      return false;
    }
    next = now + STEP_NANOS;
    dirty = true;
    return true;
  }

  @Override
  public boolean cancelled() {
    return interruption.asked();
  }

  /** Clears the line. */
  public synchronized void end() {
    if (dirty) {
      show("");
      err.print('\r');
      err.flush();
    }
  }

  private void show(String text) {
    String cut = text.length() > WIDTH ? text.substring(0, WIDTH) : text;
    err.print("\r" + cut + " ".repeat(WIDTH - cut.length()));
    err.flush();
  }

  /** A long title gives way to what changes. */
  private static String cut(String title) {
    return title.length() <= LONGEST_TITLE
        ? title
        : title.substring(0, LONGEST_TITLE - 3).stripTrailing() + "...";
  }

  private static String line(String title, long histories, double precision, double share) {
    if (Double.isNaN(precision)) {
      return String.format(Locale.ROOT, "%3.0f %%  %,d histories searched", 100 * share, histories);
    }
    String known =
        Double.isFinite(precision)
            ? String.format(Locale.ROOT, "known to %.1f %%", 100 * precision)
            : "no loss seen yet";
    return String.format(
        Locale.ROOT, "%3.0f %%  %s: %,d histories, %s", 100 * share, cut(title), histories, known);
  }
}
