package lastcopy.cli.sentence;

import java.util.List;
import java.util.Optional;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;

/**
 * How much those lose that lose anything: the amount that half of them lose or more, and the one
 * that one in twenty does. Read from the rows of the exceedance, downwards to a row, with the range
 * of order statistics: of n losses, the share at least q large is known to z·sqrt(q(1−q)/n)
 * (Conover, Practical Nonparametric Statistics, section 3.2), and z/sqrt(n) is about the relative
 * half width of the chance of any loss.
 */
public final class LossSizes {

  /** A chance known worse than that says nothing about such shares. */
  private static final double WORST = 0.3;

  private LossSizes() {}

  /** The sentence; empty if too few losses were seen. */
  public static Optional<String> of(LayoutResult layout) {
    Estimate any = layout.anyLoss();
    double half = (any.high() - any.low()) / 2 / any.value();
    List<Point> rows = layout.exceedanceBytes();
    if (any.onlyAtMost() || !(any.value() > 0) || !(half < WORST) || rows.size() < 2) {
      return Optional.empty();
    }
    return Optional.of(
        "half lose "
            + amount(rows, any.value(), half, 0.5)
            + ", one in twenty "
            + amount(rows, any.value(), half, 0.05));
  }

  private static String amount(List<Point> rows, double any, double half, double share) {
    double slack = half * Math.sqrt(share * (1 - share));
    String told = ByteUnit.format(reached(rows, any * share)) + " or more";
    String low = ByteUnit.format(reached(rows, any * (share + slack)));
    String high = ByteUnit.format(exceeded(rows, any * (share - slack)));
    return low.equals(high) ? told : told + " (" + low + " to " + high + ")";
  }

  /** The largest row that so many still reach. */
  private static double reached(List<Point> rows, double chance) {
    double at = rows.get(0).at();
    for (Point row : rows) {
      at = row.chance().value() >= chance ? Math.max(at, row.at()) : at;
    }
    return at;
  }

  /** The first row that fewer reach; the last if there is none. */
  private static double exceeded(List<Point> rows, double chance) {
    return rows.stream()
        .filter(row -> row.chance().value() < chance)
        .mapToDouble(Point::at)
        .min()
        .orElse(rows.get(rows.size() - 1).at());
  }
}
