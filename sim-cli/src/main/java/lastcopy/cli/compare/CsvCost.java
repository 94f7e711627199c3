package lastcopy.cli.compare;

import java.util.ArrayList;
import java.util.List;
import lastcopy.cli.output.Numbers;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;

/** The rows of cost.csv: of each layout the total, its percentiles, its parts by kind and year. */
final class CsvCost {

  private CsvCost() {}

  static List<List<String>> rows(Comparison result) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("layout", "what", "money", "money_low", "money_high"));
    for (LayoutResult layout : result.layouts()) {
      layout.cost().ifPresent(cost -> add(rows, CsvResult.text(layout.id()), cost));
    }
    return rows;
  }

  private static void add(List<List<String>> rows, String layout, Cost cost) {
    List<String> total = new ArrayList<>(List.of(layout, "total"));
    CsvResult.add(total, cost.total());
    rows.add(total);
    rows.add(row(layout, "p5", cost.p5()));
    rows.add(row(layout, "p50", cost.p50()));
    rows.add(row(layout, "p95", cost.p95()));
    cost.byKind().forEach(part -> rows.add(row(layout, part.kind(), part.mean())));
    for (int year = 0; year < cost.byYear().size(); year++) {
      rows.add(row(layout, "year " + (year + 1), cost.byYear().get(year)));
    }
  }

  private static List<String> row(String layout, String what, double money) {
    return List.of(layout, what, Numbers.exact(money), "", "");
  }
}
