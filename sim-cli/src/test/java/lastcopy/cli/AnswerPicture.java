package lastcopy.cli;

import java.util.List;
import java.util.stream.Collectors;

/** The first lines of a page in plain text as a picture: what a terminal shows, to the letter. */
final class AnswerPicture {

  private static final int COLUMN = 8;
  private static final int LINE = 18;
  private static final int EDGE = 14;
  private static final int COLUMNS = 80;

  private AnswerPicture() {}

  /** As SVG; every line is stretched to its columns, whatever font there is. */
  static String of(String title, List<String> lines) {
    int width = 2 * EDGE + COLUMNS * COLUMN;
    int height = 2 * EDGE + lines.size() * LINE;
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\""
                + " viewBox=\"0 0 %d %d\" role=\"img\" aria-labelledby=\"title\">%n",
            width, height, width, height));
    text.append("<title id=\"title\">").append(escaped(title)).append("</title>\n");
    text.append("<rect width=\"100%\" height=\"100%\" rx=\"6\" fill=\"#fdfcfa\"/>\n");
    text.append(
        "<g fill=\"#1d2127\" font-size=\"13\""
            + " font-family=\"'DejaVu Sans Mono', Menlo, Consolas, monospace\">\n");
    for (int i = 0; i < lines.size(); i++) {
      text.append(line(lines.get(i), EDGE + (i + 1) * LINE - 5));
    }
    return text.append("</g>\n</svg>\n").toString();
  }

  private static String line(String line, int y) {
    String shown = line.stripLeading();
    return shown.isEmpty()
        ? ""
        : String.format(
            "<text x=\"%d\" y=\"%d\" textLength=\"%d\" xml:space=\"preserve\">%s</text>%n",
            EDGE + (line.length() - shown.length()) * COLUMN,
            y,
            shown.length() * COLUMN,
            escaped(shown));
  }

  private static String escaped(String text) {
    return text.lines()
        .map(line -> line.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"))
        .collect(Collectors.joining(" "));
  }
}
