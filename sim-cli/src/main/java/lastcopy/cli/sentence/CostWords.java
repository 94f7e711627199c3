package lastcopy.cli.sentence;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import lastcopy.cli.output.Numbers;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Cost;
import lastcopy.interval.Estimate;

/** What layouts cost, in words; what losses would cost is told beside it and never in it. */
public final class CostWords {

  /** From here on cents say nothing. */
  private static final double WHOLE = 100;

  private CostWords() {}

  /** The head of a column. */
  public static String head(Comparison result) {
    return "Cost" + result.currency().map(name -> " (" + name + ")").orElse("");
  }

  /** A mean without its interval. */
  public static String cell(Cost cost) {
    return amount(cost.total().value());
  }

  /** The mean with its interval, its parts, and what half and one in twenty pay. */
  public static String detail(Cost cost, Optional<String> currency) {
    String parts =
        cost.byKind().stream()
            .filter(part -> part.mean() != 0)
            .map(part -> part.kind() + " " + amount(part.mean()))
            .collect(Collectors.joining(", "));
    String most =
        amount(cost.p5()).equals(amount(cost.p95()))
            ? ""
            : String.format(
                Locale.ROOT,
                "; half pay at most %s, nineteen in twenty at most %s",
                amount(cost.p50()),
                amount(cost.p95()));
    return Numbers.money(cost.total(), currency) + (parts.isEmpty() ? "" : ": " + parts) + most;
  }

  /**
   * What one layout costs more than another, as a sentence.
   *
   * @param more the difference of their means
   * @param name of the one
   */
  static String difference(Estimate more, String name, Optional<String> currency) {
    if (more.low() == 0 && more.high() == 0) {
      return "They cost the same.";
    }
    if (more.low() <= 0 && more.high() >= 0) {
      return "No difference in cost could be shown.";
    }
    boolean dearer = more.value() > 0;
    Estimate by = dearer ? more : more.negated();
    return name + " costs " + Numbers.money(by, currency) + (dearer ? " more." : " less.");
  }

  private static String amount(double money) {
    return Numbers.fixed(money, money >= WHOLE || money == Math.rint(money) ? 0 : 2);
  }
}
