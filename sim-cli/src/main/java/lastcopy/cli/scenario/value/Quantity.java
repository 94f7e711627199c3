package lastcopy.cli.scenario.value;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number, or a range of two, with what follows it.
 *
 * @param low the number, or the lower end of a range
 * @param high the upper end; equal to {@code low} if it is no range
 * @param range whether it was written as a range
 * @param unit what follows; empty for a bare number
 */
public record Quantity(double low, double high, boolean range, String unit) {
  private static final String NUMBER = "[+-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][+-]?\\d+)?";
  private static final Pattern FORM =
      Pattern.compile("(" + NUMBER + ")(?:\\s*\\.\\.\\s*(" + NUMBER + "))?(?![\\d.])\\s*(.*)");

  /** Splits a text into number and unit; empty if it does not begin with a number. */
  public static Optional<Quantity> parse(String text) {
    Matcher m = FORM.matcher(text);
    if (!m.matches()) {
      return Optional.empty();
    }
    double low = Double.parseDouble(m.group(1));
    boolean range = m.group(2) != null;
    double high = range ? Double.parseDouble(m.group(2)) : low;
    return Optional.of(new Quantity(low, high, range, spaced(m.group(3))));
  }

  private static String spaced(String unit) {
    return unit.strip().replaceAll("\\s*/\\s*", "/").replaceAll("\\s+", " ");
  }
}
