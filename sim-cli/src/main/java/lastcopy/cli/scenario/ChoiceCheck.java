package lastcopy.cli.scenario;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lastcopy.cli.scenario.choice.OpenChoice;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.cli.scenario.yaml.Problem;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/** Checks the choices of a file whose layouts of today are valid. */
final class ChoiceCheck {

  /** More than these nobody needs to choose among. */
  static final int MOST = 20_000;

  private final CandidateReader open;
  private final Notes notes;

  private ChoiceCheck(CandidateReader open, Notes notes) {
    this.open = open;
    this.notes = notes;
  }

  /** Notes what is wrong with them. */
  static void of(CandidateReader open, Notes notes) {
    ChoiceCheck check = new ChoiceCheck(open, notes);
    if (check.areFew()) {
      open.layouts().forEach(check::alternatives);
    }
  }

  private boolean areFew() {
    double all = open.layouts().stream().mapToDouble(open::count).sum();
    if (all <= MOST) {
      return true;
    }
    OpenChoice most =
        open.layouts().stream()
            .flatMap(layout -> open.choices(layout).stream())
            .max(Comparator.comparingInt(choice -> choice.alternatives().size()))
            .orElseThrow();
    String accepted =
        String.format(
            Locale.ROOT,
            "at most %,d: leave a choice out, such as this one among %d, or some of its entries",
            MOST,
            most.alternatives().size());
    notes.problem(most.at(), layouts(all) + " to choose among", accepted);
    return false;
  }

  private static String layouts(double many) {
    return many < 1e15
        ? String.format(Locale.ROOT, "%,.0f layouts", many)
        : "more layouts than can be counted";
  }

  private void alternatives(String layout) {
    List<OpenChoice> choices = open.choices(layout);
    for (int i = 0; i < choices.size(); i++) {
      for (int k = 1; k < choices.get(i).alternatives().size(); k++) {
        alternative(layout, i, k);
      }
    }
  }

  /** An alternative that is valid in no layout is a mistake; most are with all else as today. */
  private void alternative(String layout, int choice, int number) {
    List<OpenChoice> choices = open.choices(layout);
    int[] alone = new int[choices.size()];
    alone[choice] = number;
    choices.get(choice).within().ifPresent(copy -> alone[copy] = 1);
    List<Problem> problems = open.read(layout, layout, Optional.empty(), alone).problems();
    if (!problems.isEmpty() && !isEverValid(layout, choice, number)) {
      OpenChoice.Alternative it = choices.get(choice).alternatives().get(number);
      note(it.value().orElse(choices.get(choice).at()), problems);
    }
  }

  private boolean isEverValid(String layout, int choice, int number) {
    return open.picks(layout).stream()
        .filter(pick -> pick[choice] == number)
        .anyMatch(pick -> open.read(layout, layout, Optional.empty(), pick).layout().isPresent());
  }

  private void note(Node at, List<Problem> problems) {
    List<Problem> own = problems.stream().filter(each -> isWithin(each, at)).toList();
    for (Problem each : own) {
      notes.problem(each.line(), each.column(), each.found(), each.accepted(), each.suggestion());
    }
    if (own.isEmpty()) {
      Problem first = problems.get(0);
      notes.problem(
          at,
          "an alternative that never fits: " + first.found(),
          first.accepted(),
          first.suggestion());
    }
  }

  private static boolean isWithin(Problem problem, Node node) {
    return node.getStartMark().filter(start -> !isBefore(problem, start)).isPresent()
        && node.getEndMark().filter(end -> isBefore(problem, end)).isPresent();
  }

  private static boolean isBefore(Problem problem, Mark mark) {
    int line = problem.line() - 1;
    return line < mark.getLine()
        || (line == mark.getLine() && problem.column() - 1 < mark.getColumn());
  }
}
