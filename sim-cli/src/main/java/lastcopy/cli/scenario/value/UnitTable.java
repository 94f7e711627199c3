package lastcopy.cli.scenario.value;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lastcopy.cli.scenario.yaml.Spelling;
import lastcopy.scenario.Units;

/**
 * The units of one kind of quantity.
 *
 * @param example what a message offers
 * @param factors what one of each unit is in the engine's unit
 * @param slips common misspellings that mean something else by their letters
 */
public record UnitTable(String example, Map<String, Double> factors, Map<String, String> slips) {
  private static final double KIB = 1_024;

  /** Bytes. */
  public static final UnitTable SIZE =
      of("a size such as 96 GB or 2 TiB (B, kB, MB, GB, TB, PB, KiB, MiB, GiB, TiB)")
          .with("B", 1)
          .with("byte", 1)
          .with("bytes", 1)
          .with("kB", 1e3)
          .with("MB", Units.MB)
          .with("GB", Units.GB)
          .with("TB", Units.TB)
          .with("PB", 1e15)
          .with("KiB", KIB)
          .with("MiB", KIB * KIB)
          .with("GiB", KIB * KIB * KIB)
          .with("TiB", KIB * KIB * KIB * KIB);

  /** Hours. */
  public static final UnitTable TIME =
      of("a time such as 6 h or 2 weeks (s, min, h, days, weeks, months, years)")
          .with("s", 1 / Units.SECONDS_PER_HOUR)
          .with("second", 1 / Units.SECONDS_PER_HOUR)
          .with("min", 1.0 / 60)
          .with("minute", 1.0 / 60)
          .with("h", 1)
          .with("hour", 1)
          .with("day", Units.HOURS_PER_DAY)
          .with("week", Units.HOURS_PER_WEEK)
          .with("month", Units.HOURS_PER_MONTH)
          .with("year", Units.HOURS_PER_YEAR)
          .plurals();

  /** Bytes per second. */
  public static final UnitTable LINK =
      of("a rate such as 20 Mbit/s or 110 MB/s (bit/s, kbit/s, Mbit/s, Gbit/s, B/s, kB/s, MB/s, "
              + "GB/s)")
          .with("bit/s", 1.0 / 8)
          .with("kbit/s", 1e3 / 8)
          .with("Mbit/s", 1e6 / 8)
          .with("Gbit/s", 1e9 / 8)
          .with("B/s", 1)
          .with("kB/s", 1e3)
          .with("MB/s", Units.MB)
          .with("GB/s", Units.GB)
          .with("MiB/s", KIB * KIB)
          .with("GiB/s", KIB * KIB * KIB)
          .slip("Mbps", "Mbit/s")
          .slip("Mb/s", "Mbit/s")
          .slip("Gbps", "Gbit/s")
          .slip("Gb/s", "Gbit/s")
          .slip("kbps", "kbit/s")
          .slip("MBps", "MB/s");

  /** Shoots. */
  public static final UnitTable SHOOTS =
      of("a size such as 96 GB, or a number of shoots such as 1 shoots")
          .with("shoot", 1)
          .with("shoots", 1);

  /** Watts. */
  public static final UnitTable POWER = of("a power such as 6 W").with("W", 1);

  /** Money per shoot. */
  public static final UnitTable PER_SHOOT =
      of("an amount such as 900 per shoot").with("per shoot", 1);

  /** Money per TB and month. */
  public static final UnitTable PER_TB_MONTH =
      of("a price such as 5 per TB per month").with("per TB per month", 1);

  /** Money per kWh. */
  public static final UnitTable PER_KWH =
      of("a price such as 0.30 per kWh").with("per kWh", 1).slip("per kwh", "per kWh");

  /** Money per hour of work. */
  public static final UnitTable PER_HOUR =
      of("a price such as 40 per h").with("per h", 1).with("per hour", 1);

  /** Money per TB. */
  public static final UnitTable PER_TB = of("a price such as 20 per TB").with("per TB", 1);

  /** Money per month. */
  public static final UnitTable PER_MONTH = of("a price such as 40 per month").with("per month", 1);

  /** A fraction a year. */
  public static final UnitTable GROWTH =
      of("a growth such as 10 %/year").with("%/year", 0.01).with("% per year", 0.01);

  private static UnitTable of(String example) {
    return new UnitTable(example, new LinkedHashMap<>(), new LinkedHashMap<>());
  }

  private UnitTable with(String unit, double factor) {
    factors.put(unit, factor);
    return this;
  }

  private UnitTable slip(String wrong, String right) {
    slips.put(wrong, right);
    return this;
  }

  private UnitTable plurals() {
    new LinkedHashMap<>(factors)
        .forEach(
            (unit, factor) -> factors.putIfAbsent(unit.length() > 2 ? unit + "s" : unit, factor));
    return this;
  }

  /** The factor of a unit, if this table knows it. */
  public OptionalDouble factor(String unit) {
    Double factor = factors.get(unit);
    return factor == null ? OptionalDouble.empty() : OptionalDouble.of(factor);
  }

  /** The unit that was probably meant, or an empty string. */
  String suggest(String unit) {
    if (slips.containsKey(unit)) {
      return slips.get(unit);
    }
    // A volume or a rate whose "per what" was left out.
    return Stream.of(unit + "/s", unit + "/year")
        .filter(factors::containsKey)
        .findFirst()
        .orElseGet(() -> Spelling.nearest(unit, factors.keySet()));
  }
}
