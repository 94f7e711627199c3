package lastcopy.cli.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lastcopy.cli.output.Numbers;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;

/** The rows of summary.csv: one for each layout. */
final class CsvSummary {

  private CsvSummary() {}

  static List<List<String>> rows(Comparison result) {
    List<List<String>> rows = new ArrayList<>();
    boolean priced = result.layouts().stream().anyMatch(layout -> layout.moneyLost().isPresent());
    for (LayoutResult layout : result.layouts()) {
      Map<String, Estimate> estimates = estimates(layout, priced);
      if (rows.isEmpty()) {
        rows.add(header(estimates));
      }
      rows.add(row(result, layout, estimates));
    }
    return rows;
  }

  private static Map<String, Estimate> estimates(LayoutResult layout, boolean priced) {
    Map<String, Estimate> columns = new LinkedHashMap<>();
    columns.put("any_loss_probability", layout.anyLoss());
    columns.put("everything_lost_probability", layout.everythingLost());
    columns.put("loss_events_mean", layout.lossEvents());
    columns.put("bytes_lost_mean", layout.bytesLost());
    columns.put("shoots_lost_mean", layout.shootsLost());
    columns.put("shoots_hit_mean", layout.shootsHit());
    if (priced) {
      columns.put("money_lost_mean", layout.moneyLost().orElse(Estimate.exact(0)));
    }
    columns.put("single_copy_days_per_year", layout.exposure().singleCopyDays());
    columns.put("no_redundancy_days_per_year", layout.exposure().noRedundancyDays());
    columns.put("no_working_copy_days_per_year", layout.exposure().noWorkingCopyDays());
    columns.put("refilling_days_per_year", layout.exposure().refillingDays());
    columns.put("largest_single_copy_bytes", layout.exposure().largestSingleCopyBytes());
    layout.cost().ifPresent(cost -> columns.put("cost_mean", cost.total()));
    return columns;
  }

  private static List<String> header(Map<String, Estimate> estimates) {
    List<String> header =
        new ArrayList<>(
            List.of(
                "layout",
                "title",
                "years",
                "seed",
                "confidence",
                "finished",
                "histories",
                "method",
                "precision_reached"));
    for (String name : estimates.keySet()) {
      header.addAll(List.of(name, name + "_low", name + "_high"));
    }
    return header;
  }

  private static List<String> row(
      Comparison result, LayoutResult layout, Map<String, Estimate> estimates) {
    List<String> row =
        new ArrayList<>(List.of(CsvResult.text(layout.id()), CsvResult.text(layout.title())));
    row.add(Numbers.exact(result.years()));
    row.add(Long.toString(result.seed()));
    row.add(Numbers.exact(result.confidence()));
    row.add(Boolean.toString(result.finished()));
    row.add(Long.toString(layout.histories()));
    row.add(layout.method().name().toLowerCase(Locale.ROOT));
    row.add(Boolean.toString(layout.precisionReached()));
    estimates.values().forEach(estimate -> CsvResult.add(row, estimate));
    return row;
  }
}
