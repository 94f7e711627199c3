package lastcopy.cli.option;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lastcopy.cli.host.Failures;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.scenario.value.RateText;
import lastcopy.experiment.Method;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the values of options, with messages that say how to write them. */
public final class Converters {

  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*([a-z%]*)");

  /** As in a scenario. */
  private static final double MOST_YEARS = 1_000;

  private static final Map<String, Double> SECONDS =
      Map.of(
          "ms", 0.001, "s", 1.0, "sec", 1.0, "min", 60.0, "m", 60.0, "h", 3600.0, "hours", 3600.0);

  private static final long MOST_MILLIS = Duration.ofDays(366).toMillis();

  private Converters() {}

  /** A percentage such as {@code 95%}, or a fraction below 1; gives a fraction above 0. */
  public static final class Percent implements ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
      Matcher parts = parts(text);
      boolean percent = parts.matches() && parts.group(2).equals("%");
      if (!percent && !(parts.matches() && parts.group(2).isEmpty())) {
        throw new TypeConversionException("'" + text + "' is not a percentage such as 2%");
      }
      double value = Double.parseDouble(parts.group(1)) / (percent ? 100 : 1);
      if (!percent && value >= 1) {
        throw new TypeConversionException("'" + text + "' needs a percent sign, such as 2%");
      }
      if (!(value > 0)) {
        throw new TypeConversionException("'" + text + "' must be above 0%");
      }
      return value;
    }
  }

  /** A percentage below 100, as a fraction in (0, 1). */
  static final class Confidence implements ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
      double value = new Percent().convert(text);
      if (!(value < 1)) {
        throw new TypeConversionException("'" + text + "' must be below 100%");
      }
      return value;
    }
  }

  /** A percentage of at most 100, as a fraction in (0, 1]. */
  public static final class Fill implements ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
      // Bare, 1 would be as likely meant as 1 % as as all.
      double value = new Percent().convert(text);
      if (!(value <= 1)) {
        throw new TypeConversionException("'" + text + "' must be at most 100%");
      }
      return value;
    }
  }

  /** A rate as a scenario writes it, such as {@code 400Mbit/s}, in bytes per second, above 0. */
  public static final class Rate implements ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
      return RateText.bytesPerSecond(text)
          .orElseThrow(
              () -> new TypeConversionException("'" + text + "' is not " + RateText.ACCEPTED));
    }
  }

  /**
   * A cap on time. The options cannot be an Optional themselves: the parser unwraps those.
   *
   * @param duration empty for no cap
   */
  public record TimeCap(Optional<Duration> duration) {}

  /** A time such as {@code 60s}, {@code 5min} or {@code 2h}; {@code none} gives no time. */
  public static final class Time implements ITypeConverter<TimeCap> {
    @Override
    public TimeCap convert(String text) {
      if (text.equals("none")) {
        return new TimeCap(Optional.empty());
      }
      Matcher parts = parts(text);
      Double seconds = parts.matches() ? SECONDS.get(parts.group(2)) : null;
      if (seconds == null) {
        throw new TypeConversionException(
            "'" + text + "' is not a time such as 500ms, 60s, 5min, 2h or none");
      }
      long millis = Math.round(Double.parseDouble(parts.group(1)) * seconds * 1000);
      if (millis > MOST_MILLIS) {
        throw new TypeConversionException("'" + text + "' is more than a year; none is no limit");
      }
      if (millis < 1) {
        throw new TypeConversionException("'" + text + "' must be above 0");
      }
      return new TimeCap(Optional.of(Duration.ofMillis(millis)));
    }
  }

  /** A whole number of at least 1, with or without separators of thousands. */
  public static final class Count implements ITypeConverter<Long> {
    @Override
    public Long convert(String text) {
      String digits = text.replace("_", "").replace(",", "");
      if (!digits.matches("[0-9]{1,15}") || Long.parseLong(digits) < 1) {
        throw new TypeConversionException("'" + text + "' is not a whole number of at least 1");
      }
      return Long.parseLong(digits);
    }
  }

  /** A number of columns that a page can have. */
  static final class PageWidth implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String text) {
      int columns = text.strip().matches("[0-9]{1,5}") ? Integer.parseInt(text.strip()) : 0;
      if (columns < PageLook.NARROWEST || columns > PageLook.WIDEST) {
        throw new TypeConversionException("'" + text + "' is not a number of columns, 60 to 200");
      }
      return columns;
    }
  }

  /** The name of a method in small letters, as the JSON result has it. */
  public static final class MethodName implements ITypeConverter<Method> {
    @Override
    public Method convert(String text) {
      return Stream.of(Method.values())
          .filter(method -> method.name().toLowerCase(Locale.ROOT).equals(text))
          .findFirst()
          .orElseThrow(
              () -> new TypeConversionException("'" + text + "' is not auto, plain or rare"));
    }
  }

  /** A number of years above 0, such as {@code 5} or {@code 2.5}. */
  static final class Years implements ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
      Matcher parts = parts(text);
      boolean right = parts.matches() && parts.group(2).matches("|y|years?");
      double years = right ? Double.parseDouble(parts.group(1)) : 0;
      if (!(years > 0 && years <= MOST_YEARS)) {
        throw new TypeConversionException(
            "'" + text + "' is not a number of years above 0 and at most 1000");
      }
      return years;
    }
  }

  /** A whole number, such as {@code -7}. */
  public static final class Whole implements ITypeConverter<Long> {
    @Override
    public Long convert(String text) {
      try {
        return Long.valueOf(text.strip());
      } catch (NumberFormatException e) {
        throw new TypeConversionException("'" + text + "' is not a whole number such as 7");
      }
    }
  }

  /** The name of a file, in a locale that may not have its letters. */
  public static final class FileName implements ITypeConverter<Path> {
    @Override
    public Path convert(String text) {
      try {
        return Path.of(text);
      } catch (InvalidPathException e) {
        throw new TypeConversionException(Failures.notAName(text));
      }
    }
  }

  private static Matcher parts(String text) {
    return NUMBER_AND_UNIT.matcher(text.strip().toLowerCase(Locale.ROOT));
  }
}
