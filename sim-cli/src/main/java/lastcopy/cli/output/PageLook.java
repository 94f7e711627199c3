package lastcopy.cli.output;

import java.text.Normalizer;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How a page looks: how wide it is, whether it is coloured, and of which characters it is made.
 * Colour never says what words do not.
 *
 * @param width columns, from {@link #NARROWEST} to {@link #WIDEST}
 * @param coloured whether headings and warnings stand out
 * @param ascii whether no character above 127 is written
 */
public record PageLook(int width, boolean coloured, boolean ascii) {

  /** Below so many columns no table can be read. */
  public static final int NARROWEST = 60;

  /** Above so many columns nothing gains. */
  public static final int WIDEST = 200;

  /** In a pipe, so that what is stored stays the same; not coloured, all characters. */
  public static final PageLook PLAIN = new PageLook(Wrap.WIDTH, false, false);

  /** Lines that are longer than this are hard to follow. */
  private static final int PROSE = 100;

  private static final String BOLD = "\u001b[1m";
  private static final String YELLOW = "\u001b[33m";
  private static final String OFF = "\u001b[0m";

  /** Characters that lose nothing but their look; each stays one, so that columns stay in line. */
  private static final Map<Integer, Character> PLAINER =
      Map.ofEntries(
          Map.entry(0x2018, '\''),
          Map.entry(0x2019, '\''),
          Map.entry(0x201C, '"'),
          Map.entry(0x201D, '"'),
          Map.entry(0x201E, '"'),
          Map.entry(0x2013, '-'),
          Map.entry(0x2014, '-'),
          Map.entry(0x2212, '-'),
          Map.entry(0x00D7, 'x'),
          Map.entry(0x00B7, '.'),
          Map.entry(0x00DF, 's'),
          Map.entry(0x00D8, 'O'),
          Map.entry(0x00F8, 'o'),
          Map.entry(0x00C6, 'A'),
          Map.entry(0x00E6, 'a'),
          Map.entry(0x0141, 'L'),
          Map.entry(0x0142, 'l'),
          Map.entry(0x00A0, ' '));

  /** Checks the range. */
  public PageLook {
    if (width < NARROWEST || width > WIDEST) {
      throw new IllegalArgumentException("columns must be from 60 to 200: " + width);
    }
  }

  /** How wide a paragraph is. */
  public int prose() {
    return Math.min(width, PROSE);
  }

  /** A paragraph. */
  public String paragraph(String words) {
    return lines("", "", words);
  }

  /** A paragraph whose first line and others begin as given. */
  public String lines(String first, String rest, String words) {
    return Wrap.lines(prose(), first, rest, words);
  }

  /** Whole lines that stand out. */
  public String heading(String lines) {
    return coloured ? styled(BOLD, lines) : lines;
  }

  /** Whole lines that warn, as their words do. */
  public String warning(String lines) {
    return coloured ? styled(YELLOW, lines) : lines;
  }

  /** The page as it is written, in ASCII if that is asked for. */
  public String written(String page) {
    if (!ascii) {
      return page;
    }
    StringBuilder text = new StringBuilder(page.length());
    page.codePoints().forEach(point -> text.append(plainer(point)));
    return text.toString();
  }

  /** A letter without its marks; a question mark for what has none. */
  private static char plainer(int point) {
    if (point < 128) {
      return (char) point;
    }
    String parts = Normalizer.normalize(Character.toString(point), Normalizer.Form.NFKD);
    char first = parts.charAt(0);
    return first < 128 ? first : PLAINER.getOrDefault(point, '?');
  }

  /** Line by line, so that a pager that cuts pages does not lose the end. */
  private static String styled(String code, String lines) {
    return lines
        .lines()
        .map(line -> line.isEmpty() ? line : code + line + OFF)
        .collect(Collectors.joining("\n", "", "\n"));
  }
}
