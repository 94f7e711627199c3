package lastcopy.history;

import java.util.Arrays;
import java.util.Map;
import lastcopy.footage.PositionSet;

/** A deletion, or what malware destroyed, that nobody has noticed yet. */
final class Damage {

  final Map<Cause.Context, Cause> causes;
  final String words;
  final double at;
  final double noticedAt;
  final PositionSet block = new PositionSet();
  final boolean[] onItsWay;
  final boolean[] reached;
  final PositionSet[] kept;
  final double[] dropAt;

  Damage(ShockProcess shock, double at, double noticedAt, int copies) {
    causes = shock.causes();
    words = shock.words();
    this.at = at;
    this.noticedAt = noticedAt;
    onItsWay = new boolean[copies];
    reached = new boolean[copies];
    kept = new PositionSet[copies];
    for (int c = 0; c < copies; c++) {
      kept[c] = new PositionSet();
    }
    dropAt = new double[copies];
    Arrays.fill(dropAt, Double.POSITIVE_INFINITY);
  }
}
