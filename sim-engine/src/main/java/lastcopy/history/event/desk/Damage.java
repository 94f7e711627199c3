package lastcopy.history.event.desk;

import java.util.Arrays;
import java.util.Map;
import lastcopy.footage.PositionSet;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.report.Cause;
import lastcopy.history.state.CopyState;

/** A deletion, or what malware destroyed, that nobody has noticed yet. */
final class Damage {

  /** How it stands in one copy. */
  static final class Spread {
    boolean onItsWay;
    boolean reached;

    /** What it keeps of it, or is thought to. */
    final PositionSet kept = new PositionSet();

    /** Whether it had become unusable, unknown to all, when it was reached: it keeps nothing. */
    boolean unusable;

    double dropAt = Double.POSITIVE_INFINITY;
  }

  final Map<Cause.Context, Cause> causes;
  final String words;
  final double at;
  final double noticedAt;
  final PositionSet block = new PositionSet();
  private final Spread[] spread;

  Damage(ShockProcess shock, double at, double noticedAt, int copies) {
    causes = shock.causes();
    words = shock.words();
    this.at = at;
    this.noticedAt = noticedAt;
    spread = new Spread[copies];
    Arrays.setAll(spread, c -> new Spread());
  }

  /** How it stands in a copy. */
  Spread in(CopyState copy) {
    return spread[copy.index()];
  }
}
