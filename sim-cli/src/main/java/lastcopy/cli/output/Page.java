package lastcopy.cli.output;

/** A page as it is written, from the first line to the last. */
public final class Page {

  private final PageLook look;
  private final StringBuilder text = new StringBuilder();

  /** An empty one. */
  public Page(PageLook look) {
    this.look = look;
  }

  /** How it looks. */
  public PageLook look() {
    return look;
  }

  /** An empty line. */
  public void gap() {
    text.append('\n');
  }

  /** A paragraph. */
  public void paragraph(String words) {
    text.append(look.paragraph(words));
  }

  /** A paragraph whose first line and others begin as given. */
  public void lines(String first, String rest, String words) {
    text.append(look.lines(first, rest, words));
  }

  /** A paragraph that stands out. */
  public void heading(String words) {
    heading("", "", words);
  }

  /** A paragraph that stands out, its first line and others begun as given. */
  public void heading(String first, String rest, String words) {
    text.append(look.heading(look.lines(first, rest, words)));
  }

  /** A paragraph that warns, its first line and others begun as given. */
  public void warning(String first, String rest, String words) {
    text.append(look.warning(look.lines(first, rest, words)));
  }

  /** Whole lines as they are. */
  public void add(String lines) {
    text.append(lines);
  }

  /** What was written since the last time, in the characters that are asked for. */
  public String taken() {
    String lines = look.written(text.toString());
    text.setLength(0);
    return lines;
  }
}
