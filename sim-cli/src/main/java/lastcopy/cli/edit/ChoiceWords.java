package lastcopy.cli.edit;

import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastcopy.cli.scenario.choice.OpenChoice;

/** What is chosen, as an owner would say it. */
final class ChoiceWords {

  private static final String COPIES = "copies";

  /** Keys that say nothing that their values do not say. */
  private static final Set<String> SILENT = Set.of(COPIES, "drives", "arrangement");

  private static final Pattern LOOKS = Pattern.compile("\\{checked_every: ([^{}]+)}");

  private ChoiceWords() {}

  /** A choice with the value that is taken. */
  static String of(OpenChoice choice, String value) {
    List<String> path = choice.path();
    if (choice.isOfCopy()) {
      return value + " " + path.get(path.size() - 1);
    }
    StringBuilder words = new StringBuilder();
    for (String key : path) {
      if (key.equals("feed")) {
        words.append("fed ");
      } else if (!SILENT.contains(key)) {
        words.append(key.replace('_', ' ')).append(' ');
      }
    }
    return words.append(plain(value)).toString();
  }

  private static String plain(String value) {
    Matcher looks = LOOKS.matcher(value);
    return looks.matches() ? "by a look every " + looks.group(1) : value;
  }
}
