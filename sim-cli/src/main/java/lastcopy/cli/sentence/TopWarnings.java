package lastcopy.cli.sentence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Warning;
import lastcopy.outlook.Warnings;

/** The warnings that a result shows: the worst few, each kind once; {@code inspect} has all. */
final class TopWarnings {

  private static final int MOST = 3;

  /** It stands beside the figures already. */
  private static final String SAID_ELSEWHERE = "seen-at-once";

  /** A warning and the title of the layout that it is about. */
  private record Of(String layout, Warning warning) {
    String sentence(int alike) {
      String copy = warning.copy().isEmpty() ? "" : ", " + warning.copy();
      String more = alike == 0 ? "" : " (Alike: " + alike + " more.)";
      return layout + copy + ": " + warning.text() + more;
    }
  }

  private TopWarnings() {}

  /** At most three sentences, the worst first, and how many more there are. */
  public static List<String> of(List<Outlook> outlooks) {
    Map<String, List<Of>> kinds =
        outlooks.stream()
            .flatMap(
                outlook ->
                    outlook.warnings().stream()
                        .map(warning -> new Of(outlook.layout().title(), warning)))
            .filter(of -> !of.warning().id().equals(SAID_ELSEWHERE))
            .sorted(Comparator.comparingInt(of -> Warnings.rank(of.warning())))
            .collect(
                Collectors.groupingBy(
                    of -> of.warning().id(), LinkedHashMap::new, Collectors.toList()));
    List<String> sentences = new ArrayList<>();
    kinds.values().stream()
        .limit(MOST)
        .forEach(alike -> sentences.add(alike.get(0).sentence(alike.size() - 1)));
    int others = kinds.values().stream().skip(MOST).mapToInt(List::size).sum();
    if (others > 0) {
      sentences.add(
          others
              + (others == 1 ? " more warning: " : " more warnings: ")
              + "'lastcopy inspect' tells.");
    }
    return sentences;
  }
}
