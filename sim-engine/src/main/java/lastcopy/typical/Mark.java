package lastcopy.typical;

/** How well founded a typical value is. */
public enum Mark {
  /** Printed in a source. */
  PUBLISHED("published"),
  /** Arithmetic on what is printed. */
  CALCULATED("calculated"),
  /** What the trade does, without a source. */
  COMMON_PRACTICE("common practice"),
  /** Of this project; a source, if there is one, only suggests it. */
  ASSUMPTION("assumption");

  private final String words;

  Mark(String words) {
    this.words = words;
  }

  /** In words. */
  public String words() {
    return words;
  }
}
