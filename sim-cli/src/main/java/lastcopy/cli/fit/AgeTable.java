package lastcopy.cli.fit;

import java.util.List;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.Table;
import lastcopy.fit.Fitted;
import lastcopy.fit.Piece;
import lastcopy.fit.Step;
import lastcopy.interval.Estimate;

/** What happened at which age: a row for each stretch of ages. */
final class AgeTable {

  private static final int MOST_ROWS = 10;
  private static final int AGE = 18;
  private static final int TIME = 13;
  private static final int FAILED = 10;
  private static final int CHANCE = 20;
  private static final int RUNNING = 19;

  private final Fitted fitted;
  private final AgeUnit unit;
  private final double confidence;
  private final PageLook look;

  AgeTable(Fitted fitted, AgeUnit unit, double confidence, PageLook look) {
    this.look = look;
    this.fitted = fitted;
    this.unit = unit;
    this.confidence = confidence;
  }

  /** The rows with their head. */
  String text() {
    AgeUnit shown = shownUnit();
    double width = shown.toHours(1) / unit.toHours(1) * perRow(shown);
    List<Piece> pieces = Fitted.byAge(fitted.lives(), width, confidence).pieces();
    List<String> heads =
        List.of(
            "Age in " + shown,
            "drive-" + shown,
            "failures",
            "of 100 fail\nat that age",
            "of 100 still run\nat its end");
    Table table = new Table(look, heads, AGE, TIME, FAILED, CHANCE, RUNNING);
    StringBuilder text = new StringBuilder(table.head());
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      if (piece.timeAtRisk() > 0) {
        boolean last = i == pieces.size() - 1;
        double to = last ? Math.min(piece.to(), fitted.lives().oldest()) : piece.to();
        text.append(
            table.row(
                ages(piece.from() / width * perRow(shown), to / width * perRow(shown)),
                Yearly.number(unit.toHours(piece.timeAtRisk()) / shown.toHours(1), 3),
                Yearly.number(piece.failures(), fitted.lives().between() ? 2 : 9),
                chance(piece.hazard(), to - piece.from()),
                running(to)));
      }
    }
    return text.toString();
  }

  private static String ages(double from, double to) {
    return Yearly.number(from, 3) + " to " + Yearly.number(to, 3);
  }

  private static String chance(Estimate hazard, double width) {
    return Yearly.ofHundred(
        new Estimate(
            -Math.expm1(-hazard.value() * width),
            -Math.expm1(-hazard.low() * width),
            -Math.expm1(-hazard.high() * width),
            hazard.seen()));
  }

  /** After the last step up to an age. */
  private String running(double age) {
    Step found = null;
    for (Step step : fitted.steps()) {
      found = step.age() <= age ? step : found;
    }
    if (found == null) {
      return "100";
    }
    String value = Yearly.percent(found.survival());
    return Double.isNaN(found.low())
        ? value
        : value + " (" + Yearly.percent(found.low()) + " to " + Yearly.percent(found.high()) + ")";
  }

  /** The largest unit of which the oldest drive has at least two. */
  private AgeUnit shownUnit() {
    AgeUnit shown = AgeUnit.hours;
    for (AgeUnit candidate : AgeUnit.values()) {
      if (unit.toHours(fitted.lives().oldest()) >= 2 * candidate.toHours(1)) {
        shown = candidate;
      }
    }
    return shown;
  }

  private int perRow(AgeUnit shown) {
    double n = unit.toHours(fitted.lives().oldest()) / shown.toHours(1);
    return (int) Math.max(1, Math.ceil(n / MOST_ROWS));
  }
}
