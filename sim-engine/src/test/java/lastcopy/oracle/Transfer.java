package lastcopy.oracle;

/**
 * Footage on its way from one copy to another, oldest first at a constant rate. What the source
 * loses before it has crossed, or the target has no room for any more, takes no time.
 */
final class Transfer {

  final Vault source;
  final Vault target;
  private final double bytesPerHour;
  private final Runnable whenDone;
  private Stretches ahead;
  private double asOf;
  private boolean over;

  /** What has crossed. */
  Stretches crossed = Stretches.NONE;

  Transfer(
      Vault source,
      Vault target,
      Stretches plan,
      double start,
      double bytesPerHour,
      Runnable whenDone) {
    this.source = source;
    this.target = target;
    this.ahead = plan;
    this.asOf = start;
    this.bytesPerHour = bytesPerHour;
    this.whenDone = whenDone;
  }

  /** Bytes that cross within some hours from the last step on, if nothing happens. */
  double brings(double hours) {
    return Math.min(ahead.size(), bytesPerHour * hours);
  }

  double endsAt() {
    return asOf + ahead.size() / bytesPerHour;
  }

  void advance(double now) {
    double sent = (now - asOf) * bytesPerHour;
    Stretches part = ahead.size() - sent < 1 ? ahead : ahead.slice(0, sent);
    crossed = crossed.plus(part);
    target.live = target.live.plus(part);
    ahead = ahead.minus(part);
    asOf = now;
  }

  /** Drops from what is ahead what cannot cross any more; whether that was anything. */
  boolean skips() {
    Stretches possible = ahead.and(source.usable()).and(target.room());
    boolean less = possible.size() < ahead.size();
    ahead = possible;
    return less;
  }

  /** Tells the end, if all is across and nobody was told yet. */
  void mayBeDone() {
    if (!over && ahead.isNothing()) {
      whenDone.run();
    }
  }

  void isOver() {
    over = true;
  }

  /** When the last of some footage on the way is across. */
  double across(Stretches footage) {
    return asOf + ahead.sizeUpToLastOf(footage) / bytesPerHour;
  }
}
