package lastcopy.cli.scenario.part;

import java.util.LinkedHashMap;
import java.util.Map;
import lastcopy.cli.scenario.value.UnitTable;

/** The units of a volume by the year, month, week or day. */
public final class Ingest {
  /** Bytes per hour. */
  public static final UnitTable UNITS =
      new UnitTable("a volume such as 5 TB/year, 400 GB/month or 90 GB/week", factors(), Map.of());

  private Ingest() {}

  private static Map<String, Double> factors() {
    Map<String, Double> factors = new LinkedHashMap<>();
    for (String period : new String[] {"year", "month", "week", "day"}) {
      double hours = UnitTable.TIME.factors().get(period);
      UnitTable.SIZE
          .factors()
          .forEach(
              (size, bytes) -> {
                factors.put(size + "/" + period, bytes / hours);
                factors.put(size + " per " + period, bytes / hours);
              });
    }
    return factors;
  }
}
