package lastcopy.cli.ask;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lastcopy.cli.scenario.value.Measure;
import lastcopy.cli.scenario.yaml.Printable;

/** What kind of answer a question has. */
interface Reply {

  /** Reads what was typed, which is not empty. */
  Parsed read(String text);

  /** Lines that say what can be chosen; none where anything of the kind can be typed. */
  default List<String> choices() {
    return List.of();
  }

  /** How a value of this kind is typed. */
  default String typed(String value) {
    return value;
  }

  /** A name. */
  record Name(int longest) implements Reply {
    @Override
    public Parsed read(String text) {
      if (!Printable.isPlain(text) || text.indexOf('\uFFFD') >= 0) {
        return Parsed.not("That has letters that cannot be seen or read; leave them out.");
      }
      return text.codePointCount(0, text.length()) > longest
          ? Parsed.not("That is too long; at most " + longest + " letters.")
          : Parsed.as(text);
    }
  }

  /** A whole number. */
  record Whole(int low, int high) implements Reply {
    @Override
    public Parsed read(String text) {
      String digits = text.replaceFirst("^0+(?=[0-9])", "");
      boolean whole = digits.matches("[0-9]{1,9}");
      boolean within = whole && Integer.parseInt(digits) >= low && Integer.parseInt(digits) <= high;
      return within
          ? Parsed.as(digits)
          : Parsed.not(String.format(Locale.ROOT, "A whole number from %d to %d.", low, high));
    }
  }

  /** An amount of money. */
  record Money(int high) implements Reply {
    @Override
    public Parsed read(String text) {
      String digits = text.replaceFirst("^0+(?=[0-9])", "");
      boolean amount = digits.matches("[0-9]{1,9}([.][0-9]{1,2})?");
      return amount && Double.parseDouble(digits) <= high
          ? Parsed.as(digits)
          : Parsed.not("An amount such as 180 or 12.50, without a currency, up to " + high + ".");
    }
  }

  /**
   * A number with its unit, or one of a few words.
   *
   * @param example of an answer
   * @param low the least in the engine's unit
   * @param high the most
   * @param range the two in words
   * @param words that may be said instead, and what a file has for each
   */
  record Measured(
      Measure measure,
      String example,
      double low,
      double high,
      String range,
      Map<String, String> words)
      implements Reply {

    /** Copies the words. */
    public Measured {
      words = Map.copyOf(words);
    }

    @Override
    public Parsed read(String text) {
      String word = words.get(text.toLowerCase(Locale.ROOT));
      if (word != null) {
        return Parsed.as(word);
      }
      OptionalDouble read = measure.read(text);
      if (read.isEmpty()) {
        String meant = measure.meant(text).map(m -> " Did you mean " + m + "?").orElse("");
        return Parsed.not("A number with its unit, such as " + example + "." + meant);
      }
      double value = read.getAsDouble();
      return value >= low && value <= high
          ? Parsed.as(text)
          : Parsed.not("That is out of range: " + range + ".");
    }
  }

  /** One of a few, by its number, its name or how that begins. */
  record Choice(List<Option> options) implements Reply {

    /**
     * One of them.
     *
     * @param id what is kept
     * @param words what it is
     */
    record Option(String id, String words) {}

    /** Copies the list. */
    public Choice {
      options = List.copyOf(options);
    }

    @Override
    public Parsed read(String text) {
      String typed = text.toLowerCase(Locale.ROOT);
      List<String> found =
          IntStream.range(0, options.size())
              .filter(i -> typed.equals(String.valueOf(i + 1)) || isBegun(i, typed))
              .mapToObj(i -> options.get(i).id())
              .toList();
      return found.size() == 1
          ? Parsed.as(found.get(0))
          : Parsed.not("A number from 1 to " + options.size() + ".");
    }

    @Override
    public String typed(String value) {
      return IntStream.range(0, options.size())
          .filter(i -> options.get(i).id().equals(value))
          .mapToObj(i -> String.valueOf(i + 1))
          .findFirst()
          .orElse(value);
    }

    private boolean isBegun(int option, String typed) {
      return options.get(option).id().startsWith(typed);
    }

    @Override
    public List<String> choices() {
      return IntStream.range(0, options.size())
          .mapToObj(i -> (i + 1) + "  " + options.get(i).words())
          .toList();
    }
  }
}
