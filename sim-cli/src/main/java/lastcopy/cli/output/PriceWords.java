package lastcopy.cli.output;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import lastcopy.outlook.Unpriced;

/** Says what costs nothing in a scenario because it has no price there. */
public final class PriceWords {

  private PriceWords() {}

  /** One sentence; empty if all is priced, or nothing. */
  public static Optional<String> sentence(List<Unpriced> unpriced) {
    return unpriced.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "What the file does not price counts as costing nothing: "
                + unpriced.stream().map(PriceWords::title).collect(Collectors.joining("; "))
                + ".");
  }

  /** What has no price, as part of a sentence. */
  public static String title(Unpriced unpriced) {
    String names =
        unpriced.which().isEmpty() ? "" : " (" + String.join(", ", unpriced.which()) + ")";
    return switch (unpriced.kind()) {
      case DRIVES -> "drives" + names;
      case BOXES -> "boxes" + names;
      case SERVICES -> "services" + names;
      case POWER -> "electric power" + names;
      case WORK -> "the owner's own time";
    };
  }

  /** A stable name, for other programs. */
  static String id(Unpriced unpriced) {
    return unpriced.kind().name().toLowerCase(Locale.ROOT);
  }
}
