package lastcopy.cli.compare;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lastcopy.cli.output.Numbers;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.LayoutResult.Recovery;
import lastcopy.files.WholeFile;
import lastcopy.interval.Estimate;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A comparison as tables in CSV files, with headers and unrounded numbers. */
public final class CsvResult {

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setRecordSeparator("\n").get();

  private static final String FORMULA = "=+-@\t\r\n";

  private CsvResult() {}

  /**
   * Writes summary.csv, curve.csv, exceedance.csv, causes.csv, comparisons.csv and recovery.csv;
   * cost.csv where anything is priced; worlds.csv, worlds_curve.csv, worlds_pairs.csv and
   * unknowns.csv where some rates are not known.
   *
   * @param directory exists
   * @return the files written
   * @throws IOException if a file cannot be written
   */
  public static List<Path> write(Comparison result, Path directory) throws IOException {
    Map<String, List<List<String>>> tables = new LinkedHashMap<>();
    tables.put("summary.csv", CsvSummary.rows(result));
    tables.put("curve.csv", points(result, "years", LayoutResult::curve));
    tables.put("exceedance.csv", points(result, "bytes_at_least", LayoutResult::exceedanceBytes));
    tables.put("causes.csv", causes(result));
    tables.put("comparisons.csv", comparisons(result));
    tables.put("recovery.csv", recoveries(result));
    if (result.layouts().stream().anyMatch(layout -> layout.cost().isPresent())) {
      tables.put("cost.csv", CsvCost.rows(result));
    }
    result.worlds().map(CsvWorlds::tables).ifPresent(tables::putAll);
    List<Path> written = new ArrayList<>();
    for (Map.Entry<String, List<List<String>>> entry : tables.entrySet()) {
      written.add(directory.resolve(entry.getKey()));
      table(written.get(written.size() - 1), entry.getValue());
    }
    return written;
  }

  /** Adds an estimate's three columns to a row. */
  static void add(List<String> row, Estimate estimate) {
    row.add(Numbers.exact(estimate.value()));
    row.add(Numbers.exact(estimate.low()));
    row.add(Numbers.exact(estimate.high()));
  }

  private static List<List<String>> points(
      Comparison result, String at, Function<LayoutResult, List<Point>> points) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("layout", at, "probability", "probability_low", "probability_high"));
    for (LayoutResult layout : result.layouts()) {
      for (Point point : points.apply(layout)) {
        List<String> row = new ArrayList<>(List.of(text(layout.id()), Numbers.exact(point.at())));
        add(row, point.chance());
        rows.add(row);
      }
    }
    return rows;
  }

  private static List<List<String>> causes(Comparison result) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "layout",
            "id",
            "cause",
            "share_of_loss_events",
            "share_low",
            "share_high",
            "share_of_bytes"));
    for (LayoutResult layout : result.layouts()) {
      for (CauseShare cause : layout.causes()) {
        List<String> row =
            new ArrayList<>(List.of(text(layout.id()), text(cause.id()), text(cause.sentence())));
        add(row, cause.share());
        row.add(Numbers.exact(cause.shareOfBytes()));
        rows.add(row);
      }
    }
    return rows;
  }

  private static List<List<String>> comparisons(Comparison result) {
    List<List<String>> rows = new ArrayList<>();
    boolean priced = result.pairs().stream().anyMatch(pair -> pair.costDifference().isPresent());
    List<String> header =
        new ArrayList<>(
            List.of(
                "a",
                "b",
                "ratio",
                "ratio_low",
                "ratio_high",
                "difference",
                "difference_low",
                "difference_high",
                "paired_histories"));
    if (priced) {
      header.addAll(List.of("cost_difference", "cost_difference_low", "cost_difference_high"));
    }
    rows.add(header);
    for (Comparison.Pair pair : result.pairs()) {
      List<String> row =
          new ArrayList<>(List.of(text(pair.a()), text(pair.b()), Numbers.exact(pair.ratio())));
      row.add(Numbers.exact(pair.ratioLow()));
      row.add(Numbers.exact(pair.ratioHigh()));
      add(row, pair.difference());
      row.add(Long.toString(pair.pairedHistories()));
      pair.costDifference().ifPresent(more -> add(row, more));
      rows.add(row);
    }
    return rows;
  }

  private static List<List<String>> recoveries(Comparison result) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "layout",
            "id",
            "cause",
            "seen",
            "work_hours",
            "work_hours_low",
            "work_hours_high",
            "whole_hours",
            "whole_hours_low",
            "whole_hours_high"));
    for (LayoutResult layout : result.layouts()) {
      for (Recovery recovery : layout.recoveries()) {
        List<String> row =
            new ArrayList<>(
                List.of(text(layout.id()), text(recovery.id()), text(recovery.sentence())));
        row.add(Long.toString(recovery.seen()));
        add(row, recovery.workHours());
        recovery
            .wholeHours()
            .ifPresentOrElse(hours -> add(row, hours), () -> row.addAll(List.of("", "", "")));
        rows.add(row);
      }
    }
    return rows;
  }

  /** Text for a spreadsheet, which takes what begins so for a formula. */
  public static String text(String cell) {
    return cell.isEmpty() || FORMULA.indexOf(cell.charAt(0)) < 0 ? cell : "'" + cell;
  }

  private static void table(Path file, List<List<String>> rows) throws IOException {
    WholeFile.write(file, out -> print(rows, out));
  }

  private static void print(List<List<String>> rows, OutputStream out) throws IOException {
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    CSVPrinter printer = new CSVPrinter(writer, FORMAT);
    printer.printRecords(rows);
    printer.flush();
  }
}
