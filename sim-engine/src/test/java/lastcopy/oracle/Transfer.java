package lastcopy.oracle;

/** Footage on its way from one copy to another, oldest first at a constant rate. */
final class Transfer {

  final Vault source;
  final Vault target;
  final Stretches plan;
  private final double start;
  private final double bytesPerHour;
  private double sent;

  /** What has crossed. */
  Stretches crossed = Stretches.NONE;

  boolean over;

  Transfer(Vault source, Vault target, Stretches plan, double start, double bytesPerHour) {
    this.source = source;
    this.target = target;
    this.plan = plan;
    this.start = start;
    this.bytesPerHour = bytesPerHour;
  }

  double endsAt() {
    return start + plan.size() / bytesPerHour;
  }

  /** Moves on; whether anything has crossed. */
  boolean advance(double now) {
    double until = now >= endsAt() ? plan.size() : (now - start) * bytesPerHour;
    if (!(until > sent)) {
      return false;
    }
    Stretches part = plan.slice(sent, until).and(source.usable()).and(target.room());
    sent = until;
    crossed = crossed.plus(part);
    target.live = target.live.plus(part);
    return true;
  }

  /** When the last of some footage on the plan is across. */
  double across(Stretches footage) {
    return start + plan.sizeUpToLastOf(footage) / bytesPerHour;
  }
}
