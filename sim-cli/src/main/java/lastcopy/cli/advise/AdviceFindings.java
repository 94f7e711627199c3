package lastcopy.cli.advise;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lastcopy.charts.CostRiskChart;
import lastcopy.cli.edit.Candidate;
import lastcopy.cli.edit.Candidates;
import lastcopy.decide.Advice;
import lastcopy.decide.Question;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Priced;
import lastcopy.words.OutOf;

/**
 * What was asked, of which candidates, and what came of it.
 *
 * @param candidates all layouts that the file stands for
 * @param question what was asked
 * @param advice what came of it
 * @param settings with which
 * @param isMedian whether rates that are ranges in the file have their medians
 */
record AdviceFindings(
    Candidates candidates, Question question, Advice advice, Settings settings, boolean isMedian) {

  /** Whether the file prices anything, so that cost can be set against risk. */
  boolean isPriced() {
    return Priced.in(question.studio());
  }

  Candidate today() {
    return candidates.all().get(0);
  }

  Candidate candidate(String id) {
    return candidates.of(id);
  }

  Advice.Candidate figures(String id) {
    return advice.of(id);
  }

  /** The layouts that are told by name: today's, the answers, the front; each once. */
  List<String> told() {
    Set<String> ids = new LinkedHashSet<>();
    ids.add(today().id());
    advice.cheapestUnderTarget().ifPresent(ids::add);
    advice.safestWithinBudget().ifPresent(ids::add);
    ids.addAll(advice.front());
    return new ArrayList<>(ids);
  }

  long beaten() {
    return advice.candidates().stream().filter(Advice.Candidate::beaten).count();
  }

  /** How many were not left early, nor never looked at. */
  long toTheEnd() {
    return advice.candidates().stream()
        .filter(each -> !each.beaten() && each.histories() > 0)
        .count();
  }

  /** What a chart of cost against risk shows; what was not looked at is not on it. */
  CostRiskChart.Layouts pictured() {
    List<CostRiskChart.Point> others =
        advice.candidates().stream()
            .filter(each -> !each.onFront() && !each.id().equals(today().id()))
            .filter(each -> each.histories() > 0)
            .map(AdviceFindings::point)
            .toList();
    return new CostRiskChart.Layouts(
        advice.front().stream().map(id -> point(figures(id))).toList(),
        point(figures(today().id())),
        others);
  }

  private static CostRiskChart.Point point(Advice.Candidate of) {
    return new CostRiskChart.Point(of.id(), of.anyLoss(), of.cost().orElse(Estimate.exact(0)));
  }

  /** What is around it. */
  CostRiskChart.Frame frame(OutOf outOf, LocalDate date) {
    return new CostRiskChart.Frame(
        question.studio().name(),
        question.studio().years(),
        question.studio().currency(),
        outOf,
        settings.confidence(),
        advice.finished(),
        date);
  }
}
