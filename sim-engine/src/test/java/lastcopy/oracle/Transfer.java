package lastcopy.oracle;

/**
 * Footage on its way from one copy to another, oldest first at a rate that may change, or in a bag.
 * What the source loses before it has crossed, or the target has no room for any more, takes no
 * time.
 */
final class Transfer {

  final Vault source;
  final Vault target;
  final double bytesPerHour;
  private final Runnable whenDone;
  private Stretches ahead;
  private double asOf;
  private boolean over;

  /** Bytes an hour at present. */
  double pace;

  /** Its source gives nothing before. */
  double notBefore;

  /** When it arrives, all at once, if somebody carries it; else infinite. */
  double inBagUntil = Double.POSITIVE_INFINITY;

  /** Its line; null for a refill of the working copy. */
  Line line;

  /** Of what crosses, what pays for unreadable bits. */
  Stretches pays = Stretches.NONE;

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
    pace = bytesPerHour;
    notBefore = start;
    this.whenDone = whenDone;
  }

  /** Bytes that cross within some hours from the last step on, if nothing happens. */
  double brings(double hours) {
    return Math.min(ahead.size(), bytesPerHour * hours);
  }

  double endsAt() {
    if (inBag()) {
      return inBagUntil;
    }
    return ahead.isNothing() ? asOf : asOf + ahead.size() / pace;
  }

  boolean inBag() {
    return inBagUntil < Double.POSITIVE_INFINITY;
  }

  /** The first of what is still to cross. */
  Stretches next() {
    return ahead.slice(0, 1);
  }

  /** Whether it moves on its line at a time. */
  boolean flows(double now) {
    return !inBag() && now >= notBefore && (line == null || line.open);
  }

  boolean shares(Transfer other) {
    return this == other || (line != null && line.isShared(other.line));
  }

  void advance(double now) {
    if (inBag()) {
      asOf = now;
      return;
    }
    double sent = (now - asOf) * pace;
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
    if (!over && !inBag() && ahead.isNothing()) {
      whenDone.run();
    }
  }

  /** The bag is there. */
  void arrives() {
    if (!over) {
      crossed = crossed.plus(ahead);
      target.live = target.live.plus(ahead);
      ahead = Stretches.NONE;
      whenDone.run();
    }
  }

  void isOver() {
    over = true;
  }

  /** When the last of some footage on the way is across. */
  double across(Stretches footage) {
    return inBag() ? inBagUntil : asOf + ahead.sizeUpToLastOf(footage) / pace;
  }
}
