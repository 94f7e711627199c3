package lastcopy.cli.sentence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastcopy.cli.scenario.yaml.Default;
import lastcopy.typical.DriveKind;
import lastcopy.typical.TypicalLives;
import lastcopy.typical.TypicalMishaps;

/** Says which rates of a scenario are typical values, and what suggests them. */
public final class TypicalWords {

  private TypicalWords() {}

  /** Of the defaults of a scenario, those that it asks for by name; empty if there are none. */
  public static Optional<String> sentence(List<Default> defaults) {
    Map<String, List<String>> bySource = new LinkedHashMap<>();
    defaults.stream()
        .filter(one -> one.origin().equals(Default.TYPICAL))
        .forEach(
            one -> bySource.computeIfAbsent(source(one), s -> new ArrayList<>()).add(use(one)));
    if (bySource.isEmpty()) {
      return Optional.empty();
    }
    List<String> parts = new ArrayList<>();
    bySource.forEach((source, uses) -> parts.add(String.join(", ", uses) + " (" + source + ")"));
    return Optional.of(
        "Typical values, so assumptions of this project: "
            + String.join("; ", parts)
            + ". 'lastcopy rates' lists them.");
  }

  /** What takes the value, and which, such as {@code desk-8tb fails as hard-disk, central}. */
  private static String use(Default one) {
    if (isPlace(one)) {
      String place = one.where().substring("places.".length(), one.where().lastIndexOf('.'));
      return "what strikes " + place + " as a " + one.value();
    }
    return isDesk(one)
        ? "the desk as " + one.value()
        : one.where().substring(one.where().indexOf('.') + 1)
            + (one.key().equals("fails_off") ? " fails while off as " : " fails as ")
            + one.value();
  }

  private static String source(Default one) {
    if (isPlace(one)) {
      return TypicalMishaps.PLACES_SUGGESTED_BY;
    }
    if (isDesk(one)) {
      return TypicalMishaps.DESKS_SUGGESTED_BY;
    }
    String kind = one.value().replaceFirst(",.*", "");
    return Arrays.stream(DriveKind.values())
        .filter(known -> known.id().equals(kind))
        .findFirst()
        .map(TypicalLives::suggestedBy)
        .orElseThrow();
  }

  private static boolean isPlace(Default one) {
    return one.where().startsWith("places.");
  }

  private static boolean isDesk(Default one) {
    return one.where().equals("desk");
  }
}
