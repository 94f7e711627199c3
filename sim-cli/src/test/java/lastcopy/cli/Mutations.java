package lastcopy.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Scenario texts with one to four slips each, decided by a seed. */
final class Mutations {

  private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])\\d+(?:\\.\\d+)?");

  private static final Pattern VALUE = Pattern.compile("(?<=: )[^,{}\\[\\]#\\n]+");

  private static final Pattern UNIT =
      Pattern.compile("(?<=\\d )(?:%/year|per year|[kMGT]?i?B(?:/s)?|Mbit/s|h|days?|years?|min)");

  private static final Pattern WORD = Pattern.compile("[A-Za-z_-]{2,}");

  private static final String[] NUMBERS = {
    "0",
    "1",
    "-1",
    "2",
    "3",
    "7",
    "1000",
    "1e6",
    "1e9",
    "1e-9",
    "1e308",
    "1e-308",
    "1e999",
    "0.0001",
    "0.999999",
    "99.99999999999999999",
    "100",
    "1..4",
    "4..1",
    "1e300",
    "12345678901234567890"
  };

  private static final String[] VALUES = {
    "2 %/year",
    "0 %/year",
    "99.9999999 %/year",
    "100 %/year",
    "1e6 per day",
    "0.1 per year",
    "4 days",
    "0 h",
    "1 s",
    "1e-300 s",
    "1e300 years",
    "1 ms",
    "1000 years",
    "5 h",
    "{mean: 3 h}",
    "{mean: 1e9 h}",
    "{fixed: 0 h}",
    "{uniform: [0 h, 1 h]}",
    "{weibull: {shape: 0.5, scale: 100 h}}",
    "{weibull: {shape: 9, scale: 9 h, location: 9 h}}",
    "{sum: [2 %/year, 4 days]}",
    "{by_age: [1 %/year, 99 %/year]}",
    "{by_age: [1e6 per day]}",
    "{checked_every: 1 h}",
    "{checked_every: 1e-9 s}",
    "for good",
    "nothing",
    "never",
    "none",
    "true",
    "false",
    "~",
    "null",
    ".nan",
    ".inf",
    "NaN",
    "Infinity",
    "[]",
    "{}",
    "[1, 2]",
    "{a: b}",
    "\"\"",
    "' '",
    "!!binary x",
    "!x y",
    "&a b",
    "*a",
    "\"\\x1B[2J\"",
    "\"\\UFFFFFFFF\"",
    "\"\\u202E\"",
    "\u202e",
    "\u0007",
    "\ud83d\ude00",
    "1 B",
    "1 kB",
    "1 TB",
    "1e300 TB",
    "1e-300 GB",
    "20 Mbit/s",
    "1 bit/s",
    "1e300 MB/s",
    "1000 x desk",
    "999 x desk",
    "0 x desk",
    "-1",
    "1e308",
    "parity",
    "mirror",
    "stripe",
    "shelf",
    "double-parity",
    "pairs",
    "[1 x desk, 1 x old]",
    "[3 x odd, 999 x desk]",
    "[[1 x desk]]",
    "offline",
    "empty",
    "{drives: 999, every: 1 s}",
    "{drives: 2, every: 7 days}",
    "{from: main, every: 1 s, link: 1 bit/s}",
    "{loses: 1 %/year}",
    "[20 h, 6 h]",
    "[6 h, 6 h]",
    "[23.9 h, 24 h]",
    "office",
    "{takes: 0 h, rate: 1 B/s}",
    "{name: a, spread: 9}"
  };

  private static final String[] SCRAPS = {
    ":",
    ": ",
    "- ",
    "? ",
    "#",
    "|",
    ">",
    "&a ",
    "*a",
    "!",
    "%",
    "@",
    "`",
    "'",
    "\"",
    "\\",
    "{",
    "}",
    "[",
    "]",
    ",",
    "\t",
    "\n",
    "\r",
    "\n---\n",
    "\n...\n",
    "%YAML 1.1\n",
    "\u0000",
    "\u2028",
    "\ufeff",
    "\ud800",
    "    ",
    "<<: *a",
    "=cmd",
    "é"
  };

  private final List<String> bases;

  Mutations(List<String> bases) {
    this.bases = bases;
  }

  /** The mutated text of a seed. */
  String text(long seed) {
    SplittableRandom luck = new SplittableRandom(seed);
    String text = bases.get(luck.nextInt(bases.size()));
    int slips = 1 + luck.nextInt(4);
    for (int i = 0; i < slips; i++) {
      text = mutate(text, luck);
    }
    return text;
  }

  private static String mutate(String text, SplittableRandom luck) {
    return switch (luck.nextInt(12)) {
      case 0, 1 -> replace(text, NUMBER, one(NUMBERS, luck), luck);
      case 2, 3, 4 -> replace(text, VALUE, one(VALUES, luck), luck);
      case 5 -> scaled(text, luck);
      case 6 -> replace(text, UNIT, UNIT_NAMES[luck.nextInt(UNIT_NAMES.length)], luck);
      case 7 -> swapWords(text, luck);
      case 8 -> lines(text, luck);
      case 9 -> inserted(text, one(SCRAPS, luck), luck);
      case 10 -> replace(text, WORD, "", luck);
      default -> cut(text, luck);
    };
  }

  private static final String[] UNIT_NAMES = {
    "%/year",
    "per year",
    "per day",
    "B",
    "kB",
    "GB",
    "TB",
    "PB",
    "TiB",
    "h",
    "s",
    "days",
    "years",
    "Mbit/s",
    "MB/s",
    "B/s",
    "%",
    ""
  };

  private static String one(String[] of, SplittableRandom luck) {
    return of[luck.nextInt(of.length)];
  }

  private static String replace(String text, Pattern what, String by, SplittableRandom luck) {
    List<MatchResult> found = what.matcher(text).results().toList();
    if (found.isEmpty()) {
      return text;
    }
    MatchResult match = found.get(luck.nextInt(found.size()));
    return text.substring(0, match.start()) + by + text.substring(match.end());
  }

  /** A number ten or a million times too large or too small. */
  private static String scaled(String text, SplittableRandom luck) {
    List<MatchResult> found = NUMBER.matcher(text).results().toList();
    if (found.isEmpty()) {
      return text;
    }
    MatchResult match = found.get(luck.nextInt(found.size()));
    int[] powers = {-9, -6, -3, -1, 1, 2, 3, 4, 6, 9};
    String by = match.group() + "e" + powers[luck.nextInt(powers.length)];
    return text.substring(0, match.start()) + by + text.substring(match.end());
  }

  private static String swapWords(String text, SplittableRandom luck) {
    List<MatchResult> found = WORD.matcher(text).results().toList();
    return found.isEmpty()
        ? text
        : replace(text, WORD, found.get(luck.nextInt(found.size())).group(), luck);
  }

  private static String lines(String text, SplittableRandom luck) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    int at = luck.nextInt(Math.max(1, lines.size()));
    if (lines.isEmpty()) {
      return text;
    }
    switch (luck.nextInt(4)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(luck.nextInt(lines.size()), lines.get(at));
      case 2 -> lines.set(at, "  " + lines.get(at));
      default -> lines.set(at, lines.get(at).replaceFirst("^  ", ""));
    }
    return String.join("\n", lines) + "\n";
  }

  private static String inserted(String text, String scrap, SplittableRandom luck) {
    int at = luck.nextInt(text.length() + 1);
    return text.substring(0, at) + scrap + text.substring(at);
  }

  private static String cut(String text, SplittableRandom luck) {
    if (text.isEmpty()) {
      return text;
    }
    int from = luck.nextInt(text.length());
    int to = Math.min(text.length(), from + 1 + luck.nextInt(8));
    return text.substring(0, from) + text.substring(to);
  }
}
