package lastcopy.cli.inspect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lastcopy.cli.scenario.yaml.Default;

/**
 * The defaults that a scenario used, in words: one by one, or what matters for the result first.
 */
final class DefaultLines {

  /** Up to so many sections are named. */
  private static final int FEW = 3;

  private static final String TYPICAL =
      "a typical value, so an assumption; lastcopy rates has its source";

  private static final String COPY = "layouts.";

  /** What defaults mean that matter for the result, the weightiest first; by key and value. */
  private static final Map<String, String> MEANING = new LinkedHashMap<>();

  static {
    MEANING.put("place: its own, without mishaps", "no fire, theft or water there");
    MEANING.put("noticed: 0 h", "a failure is seen at once");
    MEANING.put("wait: 0 h", "a new drive is there at once");
    MEANING.put("keeps_deleted: nothing", "what is destroyed at its source goes here too");
    MEANING.put("reach: online", "malware reaches it");
    MEANING.put("age: 0 h", "drives are new at the start");
    MEANING.put("growth: 0 %/year", "shoots stay as large as they are");
  }

  private DefaultLines() {}

  /** Each default by itself, in the order of the file. */
  static List<String> each(List<Default> defaults) {
    return defaults.stream()
        .map(d -> d.where() + ": " + d.key() + ": " + d.value() + " (" + d.origin() + ")")
        .toList();
  }

  /**
   * What matters for the result, a line each; then, in one line, what does not.
   *
   * @param copies how many copies the scenario has
   */
  static List<String> grouped(List<Default> defaults, int copies) {
    Map<String, List<Default>> alike = new LinkedHashMap<>();
    for (Default one : defaults) {
      alike.computeIfAbsent(one.key() + ": " + one.value(), key -> new ArrayList<>()).add(one);
    }
    List<String> lines = new ArrayList<>(typical(alike, copies));
    for (Map.Entry<String, String> known : MEANING.entrySet()) {
      List<Default> same = alike.remove(known.getKey());
      if (same != null) {
        lines.add(
            known.getKey() + " (" + known.getValue() + assumed(same) + "): " + where(same, copies));
      }
    }
    if (!alike.isEmpty()) {
      lines.add(
          alike.entrySet().stream()
              .map(
                  e ->
                      e.getKey() + assumed(e.getValue()) + " (" + where(e.getValue(), copies) + ")")
              .collect(Collectors.joining("; ", "besides: ", "")));
    }
    return lines;
  }

  /** What the file asks for by name comes before all else; taken out of the rest. */
  private static List<String> typical(Map<String, List<Default>> alike, int copies) {
    List<String> lines = new ArrayList<>();
    alike
        .entrySet()
        .removeIf(
            entry -> {
              boolean typical = entry.getValue().get(0).origin().equals(Default.TYPICAL);
              if (typical) {
                String where = where(entry.getValue(), copies);
                lines.add(entry.getKey() + " (" + TYPICAL + "): " + where);
              }
              return typical;
            });
    return lines;
  }

  private static String assumed(List<Default> same) {
    return same.get(0).origin().equals("assumption") ? ", an assumption" : "";
  }

  private static String where(List<Default> same, int copies) {
    List<String> sections = same.stream().map(Default::where).distinct().toList();
    boolean ofCopies = sections.stream().allMatch(s -> s.startsWith(COPY));
    if (ofCopies && sections.size() == copies) {
      return "every copy";
    }
    String names = sections.stream().map(DefaultLines::shortened).collect(Collectors.joining(", "));
    if (sections.size() <= FEW) {
      return names;
    }
    return ofCopies
        ? sections.size() + " of " + copies + " copies"
        : sections.size() + (sections.get(0).contains(".mishaps.") ? " mishaps" : " sections");
  }

  private static String shortened(String section) {
    return section.replaceFirst("^(layouts|drives|places)\\.", "").replace(".mishaps.", ".");
  }
}
