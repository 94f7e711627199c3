package lastcopy.cli.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.sentence.Horizon;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;

/**
 * Who loses footage by which year, drawn in plain text: a mark for each layout, years from left to
 * right, studios upwards, by powers of ten where layouts are more than 100 times apart.
 */
final class CurvePlot {

  private static final String MARKS = "*o+x#@%&=ABCDEFGHIJKLMNPQRSTUVWYZ";
  private static final int ROWS = 15;
  private static final int AXIS = 10;
  private static final double FAR_APART = 100;
  private static final int TICKS_UP = 4;

  /** So many of what the axis tells stand at it in years. */
  private static final int TICKS = 6;

  private final Comparison result;
  private final OutOf outOf;
  private final PageLook look;
  private final double step;
  private final double bottom;
  private final double top;
  private final boolean powers;

  private CurvePlot(Comparison result, OutOf outOf, PageLook look) {
    this.result = result;
    this.outOf = outOf;
    this.look = look;
    double most = ends().max().orElse(0);
    double least = ends().min().orElse(0);
    powers = most > FAR_APART * least && least > 0;
    step = round(most / TICKS_UP);
    top = powers ? Math.pow(10, Math.ceil(Math.log10(most) - 1e-9)) : upTo(most);
    bottom = powers ? Math.pow(10, Math.floor(Math.log10(least)) - 1) : 0;
  }

  /**
   * The plot with its legend; a sentence where nothing was lost.
   *
   * @param outOf of how many studios, as in the table above
   */
  static String of(Comparison result, OutOf outOf, PageLook look) {
    CurvePlot plot = new CurvePlot(result, outOf, look);
    return plot.top > 0
        ? plot.drawn()
        : look.paragraph("Nothing to plot: no loss was seen in any layout.") + "\n";
  }

  /** Studios that lose footage by the horizon, of each layout that was seen to lose any. */
  private DoubleStream ends() {
    return result.layouts().stream()
        .map(LayoutResult::anyLoss)
        .filter(any -> any.seen() && any.value() > 0)
        .mapToDouble(any -> outOf.count(any.value()));
  }

  private String drawn() {
    StringBuilder text = new StringBuilder();
    text.append(
        look.paragraph(
            String.format(
                Locale.ROOT,
                "Of %s, so many have lost footage by then, over %s from today%s:",
                outOf.words(),
                Horizon.of(result),
                powers ? " (each number at the side is ten times the one below)" : "")));
    char[][] cells = cells();
    for (int row = 0; row < ROWS; row++) {
      text.append(String.format(Locale.ROOT, "%" + (AXIS - 2) + "s |", label(row)));
      text.append(new String(cells[row]).stripTrailing()).append('\n');
    }
    text.append(axis());
    for (int i = 0; i < result.layouts().size(); i++) {
      LayoutResult layout = result.layouts().get(i);
      text.append(
          look.lines(
              "  " + mark(i) + " ",
              "    ",
              layout.title()
                  + ": "
                  + Numbers.studiosAlone(layout.anyLoss(), outOf)
                  + (layout.anyLoss().seen() ? "" : " (not drawn: no loss was seen)")));
    }
    return text.append('\n').toString();
  }

  private static char mark(int layout) {
    return layout < MARKS.length() ? MARKS.charAt(layout) : '.';
  }

  private int columns() {
    return look.prose() - AXIS;
  }

  /** Where lines meet, the first layout's mark stands. */
  private char[][] cells() {
    char[][] cells = new char[ROWS][columns()];
    for (char[] row : cells) {
      Arrays.fill(row, ' ');
    }
    for (int i = result.layouts().size() - 1; i >= 0; i--) {
      List<Point> curve = curve(result.layouts().get(i));
      for (int x = 0; x < columns(); x++) {
        double studios = outOf.count(at(curve, result.years() * x / (columns() - 1)));
        int row = row(studios);
        if (row >= 0 && (studios > 0 || !powers) && result.layouts().get(i).anyLoss().seen()) {
          cells[row][x] = mark(i);
        }
      }
    }
    return cells;
  }

  private static List<Point> curve(LayoutResult layout) {
    List<Point> points = new ArrayList<>(layout.curve());
    if (points.isEmpty()) {
      points.add(new Point(0, Estimate.exact(0)));
    }
    return points;
  }

  /** Straight between the points of a curve, from nothing lost today. */
  private static double at(List<Point> curve, double years) {
    double before = 0;
    double chance = 0;
    for (Point point : curve) {
      if (point.at() >= years) {
        double span = point.at() - before;
        double share = span > 0 ? (years - before) / span : 1;
        return chance + share * (point.chance().value() - chance);
      }
      before = point.at();
      chance = point.chance().value();
    }
    return chance;
  }

  /** From 0 at the top; −1 below the plot. */
  private int row(double studios) {
    double height = powers ? Math.log(studios / bottom) / Math.log(top / bottom) : studios / top;
    int row = (int) Math.round((1 - height) * (ROWS - 1));
    return row < ROWS ? Math.max(0, row) : -1;
  }

  private String label(int row) {
    if (powers) {
      for (double ten = top; ten >= bottom * 0.99; ten /= 10) {
        if (row(ten) == row) {
          return ByteUnit.digits(ten);
        }
      }
      return "";
    }
    for (double studios = 0; studios <= top + step / 2; studios += step) {
      if (row(studios) == row) {
        return ByteUnit.digits(studios);
      }
    }
    return "";
  }

  private String axis() {
    StringBuilder line = new StringBuilder(" ".repeat(AXIS - 1) + "+" + "-".repeat(columns()));
    StringBuilder names = new StringBuilder(" ".repeat(look.prose() + AXIS));
    double between = round(result.years() / TICKS);
    for (double year = 0; year <= result.years() + 1e-9; year += between) {
      int x = AXIS + (int) Math.round(year / result.years() * (columns() - 1));
      line.setCharAt(x, year == 0 ? '-' : '+');
      String number = ByteUnit.digits(year);
      int from = Math.min(x - number.length() / 2, look.prose() - number.length());
      names.replace(from, from + number.length(), number);
    }
    return line + "\n" + names.toString().stripTrailing() + "\n";
  }

  /** A multiple of the step, at least so many. */
  private double upTo(double most) {
    return most > 0 ? step * Math.ceil(most / step - 1e-9) : 0;
  }

  /** The least of 1, 2, 5, 10 and so on that is not less. */
  private static double round(double raw) {
    double ten = raw > 0 ? Math.pow(10, Math.floor(Math.log10(raw))) : 1;
    for (double round : new double[] {1, 2, 5}) {
      if (round * ten >= raw * (1 - 1e-9)) {
        return round * ten;
      }
    }
    return 10 * ten;
  }
}
