package lastcopy.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Names beside lines: each label as near as can be to the height at which its line ends, in the
 * order of these, and none upon another.
 */
final class EndLabels {

  /** Letters of a line of a label. */
  static final int WIDTH = 27;

  /** As many as stand beside a chart legibly; more go into a legend below it. */
  static final int MOST = 10;

  private EndLabels() {}

  /**
   * What stands beside a line.
   *
   * @param series the line's number, which gives its look
   * @param height where its line ends, from 0 at the top of the plot to 1 at its bottom
   * @param lines the words, broken into lines
   */
  record Label(int series, double height, List<String> lines) {

    /** Copies the list. */
    Label {
      lines = List.copyOf(lines);
    }
  }

  /** A label and the pixel of its upper edge. */
  record Placed(Label label, double top) {}

  /** Words broken at spaces into lines of a legible width. */
  static List<String> broken(String words) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /**
   * Places labels from the top down, then pushes those up again that stand below the plot.
   *
   * @param height of the plot in pixels
   * @param lineHeight of a line of a label in pixels, a part of which is kept free between labels
   */
  static List<Placed> placed(List<Label> labels, double height, double lineHeight) {
    List<Label> sorted = new ArrayList<>(labels);
    sorted.sort(Comparator.comparingDouble(Label::height));
    double[] tops = new double[sorted.size()];
    double free = 0;
    for (int i = 0; i < tops.length; i++) {
      Label label = sorted.get(i);
      double needs = label.lines().size() * lineHeight;
      tops[i] = Math.max(free, label.height() * height - needs / 2);
      free = tops[i] + needs + lineHeight / 3;
    }
    double end = height + lineHeight;
    for (int i = tops.length - 1; i >= 0; i--) {
      tops[i] = Math.min(tops[i], end - sorted.get(i).lines().size() * lineHeight);
      end = tops[i] - lineHeight / 3;
    }
    List<Placed> all = new ArrayList<>();
    for (int i = 0; i < tops.length; i++) {
      all.add(new Placed(sorted.get(i), tops[i]));
    }
    return all;
  }
}
