package lastcopy.cli.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lastcopy.cli.scenario.yaml.Spelling;

/**
 * Where what stands in a line of records.
 *
 * @param dates whether records have dates instead of ages
 * @param at the place of each column in a line, from 0
 */
record Columns(boolean dates, Map<String, Integer> at) {

  static final String ENTRY = "entry";
  static final String EXIT = "exit";
  static final String IN_SERVICE = "in_service";
  static final String FROM = "from";
  static final String UNTIL = "until";
  static final String SEEN = "last_seen_running";
  static final String FAILED = "failed";
  private static final String MODEL = "model";
  private static final String GROUP = "group";

  private static final List<String> AGES = List.of(ENTRY, EXIT);
  private static final List<String> DATES = List.of(IN_SERVICE, FROM, UNTIL);

  /** The last two are for the owner alone. */
  private static final List<String> BOTH = List.of(FAILED, SEEN, MODEL, GROUP, "drive", "note");

  private static final String ACCEPTED =
      "a header with exit and failed (and entry, last_seen_running) for ages, or in_service, until"
          + " and failed (and from, last_seen_running) for dates; besides model or group, drive,"
          + " note";

  /** Reads a header; what is wrong with it is noted. */
  static Columns of(List<String> header, Mistakes mistakes) {
    Map<String, Integer> at = new LinkedHashMap<>();
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i).strip().toLowerCase(Locale.ROOT);
      if (!known(name)) {
        mistakes.header(i, "the column '" + cut(header.get(i)) + "'", ACCEPTED, meant(name));
      } else if (at.putIfAbsent(name, i) != null) {
        mistakes.header(i, "the column '" + name + "' twice", "each column once", "");
      }
    }
    Columns columns = new Columns(DATES.stream().anyMatch(at::containsKey), at);
    if (mistakes.none()) {
      columns.check(mistakes);
    }
    return columns;
  }

  private static String cut(String name) {
    return name.length() > 60 ? name.substring(0, 60) + "..." : name;
  }

  private static boolean known(String name) {
    return AGES.contains(name) || DATES.contains(name) || BOTH.contains(name);
  }

  private static String meant(String name) {
    List<String> all = new ArrayList<>(AGES);
    all.addAll(DATES);
    all.addAll(BOTH);
    return Spelling.nearest(name, all);
  }

  private void check(Mistakes mistakes) {
    List<String> needed = dates ? List.of(IN_SERVICE, UNTIL, FAILED) : List.of(EXIT, FAILED);
    for (String name : needed) {
      if (!at.containsKey(name)) {
        mistakes.header(0, "no column '" + name + "'", ACCEPTED, "");
      }
    }
    for (String name : AGES) {
      if (dates && at.containsKey(name)) {
        mistakes.header(at.get(name), "ages beside dates", "either ages or dates", "");
      }
    }
    if (at.containsKey(MODEL) && at.containsKey(GROUP)) {
      mistakes.header(at.get(GROUP), "both model and group", "one of the two", "");
    }
  }

  /** Whether there is a column. */
  boolean has(String name) {
    return at.containsKey(name);
  }

  /** The place of a column that there is. */
  int of(String name) {
    return at.get(name);
  }

  /** Whether drives are told apart by model or group. */
  boolean grouped() {
    return has(MODEL) || has(GROUP);
  }

  /** The column of the group. */
  int group() {
    return of(has(MODEL) ? MODEL : GROUP);
  }
}
