package lastcopy.cli.levers;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import lastcopy.charts.ChartException;
import lastcopy.charts.ChartFiles;
import lastcopy.charts.LeversChart;
import lastcopy.decide.effect.Direction;
import lastcopy.words.OutOf;

/** What is drawn of levers: all with a measurable effect. */
final class LeverBars {

  private LeverBars() {}

  static List<Path> write(
      LeverFindings findings,
      OutOf outOf,
      LocalDate date,
      Path directory,
      Collection<ChartFiles.Format> formats)
      throws ChartException, IOException {
    LeversChart.Around around =
        new LeversChart.Around(
            findings.study().studio().name(),
            findings.study().layout().title(),
            findings.study().studio().years(),
            outOf,
            findings.settings().confidence(),
            findings.isFinished(),
            date);
    return LeversChart.writeAll(
        changes(findings), numbers(findings, outOf), around, directory, formats);
  }

  /** How much less likely a loss is with each change, in the order of the ranking. */
  static List<LeversChart.Bar> changes(LeverFindings findings) {
    return findings.effects().ranked().stream()
        .filter(each -> each.direction() != Direction.NOT_MEASURABLE)
        .map(
            each ->
                new LeversChart.Bar(
                    findings.deed(each).title()
                        + (findings.deed(each).isYardstick() ? " (no deed)" : ""),
                    List.of(each.difference().negated())))
        .toList();
  }

  /** How much more likely a loss is where a number is half, and double; the widest first. */
  static List<LeversChart.Bar> numbers(LeverFindings findings, OutOf outOf) {
    return findings.assumptions().stream()
        .flatMap(study -> new AssumptionWords(study, outOf).swings().stream())
        .filter(AssumptionWords.Swing::isMeasurable)
        .map(
            swing ->
                new LeversChart.Bar(
                    AssumptionWords.capital(swing.assumption().title())
                        + ": "
                        + AssumptionWords.value(swing.assumption(), 1),
                    List.of(swing.half().difference(), swing.twice().difference())))
        .toList();
  }
}
