package lastcopy.cli.levers.deed;

import java.util.List;

/**
 * A place that is not a given one.
 *
 * @param name of the place
 * @param assumes what is said of it
 */
record Elsewhere(String name, List<String> assumes) {

  /** Another place of the file; where there is none, one without mishaps. */
  static Elsewhere than(LeverSubject subject, String place) {
    return subject.tree().keys(List.of("places")).stream()
        .filter(other -> !other.equals(place))
        .findFirst()
        .map(other -> new Elsewhere(other, List.of("The other place is \"" + other + "\".")))
        .orElse(
            new Elsewhere(
                "elsewhere",
                List.of(
                    "The other place has no mishaps, since the file names none: that flatters"
                        + " it.")));
  }
}
