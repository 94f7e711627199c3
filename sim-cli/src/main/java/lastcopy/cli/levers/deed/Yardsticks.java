package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Half the growth, or half of what is shot: no deeds, but a measure to hold deeds against. */
final class Yardsticks implements Lever {
  private static final List<List<String>> SIZES =
      List.of(List.of("footage", "shoots", "size"), List.of("footage", "ingest"));

  @Override
  public void find(LeverSubject subject, Found found) {
    found.addOr(
        half(subject, "half-the-growth", "Half the growth", List.of("footage", "growth")),
        "half-the-growth",
        "Half the growth",
        "the file says of no growth");
    List<Deed> sizes = new ArrayList<>();
    SIZES.forEach(
        path -> sizes.addAll(half(subject, "half-the-footage", "Half as much shot", path)));
    found.addOr(sizes, "half-the-footage", "Half as much shot", "its amount is not one number");
  }

  private static List<Deed> half(LeverSubject subject, String id, String title, List<String> path) {
    Optional<String> half = subject.tree().text(path).flatMap(text -> AmountTexts.times(text, 0.5));
    return half.stream()
        .map(
            to ->
                new Deed(
                    id, title, List.of(subject.tree().change(path, to)), List.of(), true, true))
        .toList();
  }
}
