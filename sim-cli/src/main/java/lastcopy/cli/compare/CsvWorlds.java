package lastcopy.cli.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastcopy.cli.output.Numbers;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;

/** What is not known, as rows of tables. */
final class CsvWorlds {

  private CsvWorlds() {}

  /** The tables by the names of their files. */
  static Map<String, List<List<String>>> tables(Worlds worlds) {
    Map<String, List<List<String>>> tables = new LinkedHashMap<>();
    tables.put("worlds.csv", worlds(worlds));
    tables.put("worlds_curve.csv", curve(worlds));
    tables.put("worlds_pairs.csv", pairs(worlds));
    tables.put("unknowns.csv", unknowns(worlds));
    return tables;
  }

  private static List<List<String>> worlds(Worlds worlds) {
    List<List<String>> rows = new ArrayList<>();
    List<String> header = new ArrayList<>(List.of("layout", "worlds", "figure"));
    for (String name : List.of("mean", "p5", "p50", "p95")) {
      header.addAll(List.of(name, name + "_low", name + "_high"));
    }
    rows.add(header);
    for (Worlds.OfLayout layout : worlds.layouts()) {
      rows.add(spread(layout, "any_loss_probability", layout.anyLoss()));
      rows.add(spread(layout, "bytes_lost", layout.bytesLost()));
      layout.cost().ifPresent(cost -> rows.add(spread(layout, "cost", cost)));
    }
    return rows;
  }

  private static List<String> spread(Worlds.OfLayout layout, String figure, Worlds.Spread spread) {
    List<String> row =
        new ArrayList<>(
            List.of(CsvResult.text(layout.id()), Integer.toString(layout.count()), figure));
    CsvResult.add(row, spread.mean());
    spread
        .percentiles()
        .ifPresentOrElse(
            all -> addAll(row, all), () -> row.addAll(List.of("", "", "", "", "", "", "", "", "")));
    return row;
  }

  private static void addAll(List<String> row, Worlds.Percentiles all) {
    for (Estimate percentile : List.of(all.p5(), all.p50(), all.p95())) {
      CsvResult.add(row, percentile);
    }
  }

  private static List<List<String>> curve(Worlds worlds) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("layout", "years", "p5", "p50", "p95"));
    for (Worlds.OfLayout layout : worlds.layouts()) {
      for (Worlds.CurvePoint point : layout.curve()) {
        rows.add(
            List.of(
                CsvResult.text(layout.id()),
                Numbers.exact(point.years()),
                Numbers.exact(point.p5()),
                Numbers.exact(point.p50()),
                Numbers.exact(point.p95())));
      }
    }
    return rows;
  }

  private static List<List<String>> pairs(Worlds worlds) {
    List<List<String>> rows = new ArrayList<>();
    List<String> header = new ArrayList<>(List.of("a", "b"));
    for (String name : List.of("a_loses_less", "ratio_p5", "ratio_p50", "ratio_p95")) {
      header.addAll(List.of(name, name + "_low", name + "_high"));
    }
    rows.add(header);
    for (Worlds.OfPair pair : worlds.pairs()) {
      List<String> row =
          new ArrayList<>(List.of(CsvResult.text(pair.a()), CsvResult.text(pair.b())));
      CsvResult.add(row, pair.aLosesLess());
      addAll(row, pair.ratio());
      rows.add(row);
    }
    return rows;
  }

  private static List<List<String>> unknowns(Worlds worlds) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("key", "from", "to", "unit", "layout", "share", "share_low", "share_high"));
    for (Worlds.OfUnknown unknown : worlds.unknowns()) {
      for (Worlds.Share share : unknown.shares()) {
        List<String> row =
            new ArrayList<>(
                List.of(
                    CsvResult.text(unknown.key()),
                    Numbers.exact(unknown.from()),
                    Numbers.exact(unknown.to()),
                    unknown.unit(),
                    CsvResult.text(share.layout())));
        CsvResult.add(row, share.share());
        rows.add(row);
      }
    }
    return rows;
  }
}
