package lastcopy.cli.advise;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import lastcopy.cli.edit.Candidate;
import lastcopy.cli.output.Numbers;
import lastcopy.decide.Advice;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;
import lastcopy.words.YearWords;

/** Sentences of an advice; all chances have one denominator. */
record AdviceWords(AdviceFindings findings, OutOf outOf) {

  /** Of the layouts that are told by name; more than so many studios nobody can imagine. */
  static AdviceWords of(AdviceFindings findings) {
    Collection<Estimate> chances =
        findings.told().stream().map(id -> findings.figures(id).anyLoss()).toList();
    return new AdviceWords(findings, OutOf.showingSmallest(chances));
  }

  /** The answers, each in a sentence or two. */
  List<String> answers() {
    List<String> all = new ArrayList<>();
    findings.question().target().ifPresent(target -> all.add(underTarget(target)));
    findings.question().budget().ifPresent(budget -> all.add(withinBudget(budget)));
    if (all.isEmpty()) {
      all.add(front());
    }
    return all;
  }

  private String underTarget(double target) {
    String limit = Numbers.fixed(100 * target, 100 * target == Math.rint(100 * target) ? 0 : 2);
    Optional<String> answer = findings.advice().cheapestUnderTarget();
    String kept =
        String.format(
            Locale.ROOT,
            "in which at most %s %% of studios lose footage within %s",
            limit,
            horizon());
    if (answer.isEmpty()) {
      return "There is no layout "
          + kept
          + "."
          + findings.advice().safest().map(id -> " Nearest comes " + told(id) + ".").orElse("");
    }
    String first = findings.isPriced() ? "The cheapest layout " : "A layout ";
    return first
        + kept
        + " is "
        + told(answer.get())
        + "."
        + notSettled(Advice.About.TARGET, answer.get());
  }

  private String withinBudget(double budget) {
    Optional<String> answer = findings.advice().safestWithinBudget();
    String limit = label() + Numbers.fixed(budget, budget == Math.rint(budget) ? 0 : 2);
    if (answer.isEmpty()) {
      return String.format(
          "No layout costs %s or less over %s. The cheapest is %s.",
          limit, horizon(), told(cheapest()));
    }
    return String.format(
        "The safest layout for at most %s over %s is %s.%s",
        limit, horizon(), told(answer.get()), notSettled(Advice.About.BUDGET, answer.get()));
  }

  private String cheapest() {
    return findings.advice().candidates().stream()
        .filter(each -> each.cost().isPresent())
        .min(Comparator.comparingDouble(each -> each.cost().get().value()))
        .map(Advice.Candidate::id)
        .orElse(findings.today().id());
  }

  private String front() {
    List<String> front = findings.advice().front();
    if (!findings.isPriced() || front.size() == 1) {
      String best =
          findings.isPriced() ? "The cheapest layout is the safest too: " : "The safest is ";
      return best + told(front.get(0)) + ".";
    }
    return String.format(
        Locale.ROOT,
        "Each of %d layouts is the safest for its cost, from %s to %s.",
        front.size(),
        told(front.get(0)),
        told(front.get(front.size() - 1)));
  }

  /** What would be said otherwise is not certain. */
  private String notSettled(Advice.About about, String answer) {
    boolean open =
        findings.advice().openQuestions().stream()
            .anyMatch(each -> each.about() == about && each.against().equals(answer));
    return open ? " That is the likeliest answer; it is not settled (see below)." : "";
  }

  /** A layout with its figures, such as {@code "A box" (box-4), with which 4 of 1,000 lose any}. */
  private String told(String id) {
    String cost =
        findings
            .figures(id)
            .cost()
            .map(each -> " at " + Numbers.money(each, findings.question().studio().currency()))
            .orElse("");
    return String.format(
        "%s (%s)%s, with which %s of %s lose any",
        quoted(id),
        id,
        findings.isPriced() ? cost : "",
        Numbers.studios(findings.figures(id).anyLoss(), outOf),
        outOf.words());
  }

  private String quoted(String id) {
    return "\"" + findings.candidate(id).layout().title() + "\"";
  }

  /** What is there today. */
  String today() {
    String id = findings.today().id();
    return "Today's layout is " + told(id) + ".";
  }

  /** The steps along the front. */
  List<String> steps() {
    return findings.advice().steps().stream().map(this::step).toList();
  }

  private String step(Advice.NextStep step) {
    Estimate fewer = step.difference().negated();
    Estimate before = findings.figures(step.from()).anyLoss();
    Estimate after = findings.figures(step.to()).anyLoss();
    String risk =
        fewer.low() > 0
            ? String.format(
                "%s of %s down to %s%s",
                Numbers.studiosAlone(before, outOf),
                outOf.words(),
                Numbers.studiosAlone(after, outOf),
                Numbers.belowOne(fewer, outOf)
                    ? ""
                    : ": " + Numbers.studios(fewer, outOf) + " fewer")
            : String.format(
                "whether fewer lose any could not be told (%s and %s of %s)",
                Numbers.studiosAlone(before, outOf),
                Numbers.studiosAlone(after, outOf),
                outOf.words());
    return String.format(
        "From %s to %s%s: %s, %s.",
        step.from(),
        step.to(),
        difference(findings.candidate(step.from()), findings.candidate(step.to())),
        more(step),
        risk);
  }

  /** What the second of two layouts has that the first has not. */
  private static String difference(Candidate from, Candidate to) {
    if (!from.from().equals(to.from())) {
      return "";
    }
    return " ("
        + to.changesFrom(from).stream()
            .map(Candidate.Chosen::words)
            .collect(Collectors.joining(", "))
        + ")";
  }

  private String more(Advice.NextStep step) {
    Optional<Estimate> cost = step.costDifference();
    if (cost.isEmpty()) {
      return "no cost stated";
    }
    Estimate more = cost.get();
    return more.low() <= 0
        ? "hardly any more to pay"
        : Numbers.money(more, findings.question().studio().currency()) + " more over " + horizon();
  }

  /** How many there were, and how many were left. */
  String counts() {
    int all = findings.advice().candidates().size();
    int not = findings.candidates().impossible().size();
    String what =
        findings.candidates().areOnlyLayouts()
            ? String.format(
                Locale.ROOT,
                "The file leaves nothing open: its %s %s weighed.",
                layouts(all),
                all == 1 ? "was" : "were")
            : String.format(Locale.ROOT, "What the file leaves open makes %s.", layouts(all));
    String impossible =
        not == 0
            ? ""
            : String.format(
                Locale.ROOT,
                " %,d more %s no valid layout (--impossible tells why).",
                not,
                not == 1 ? "combination is" : "combinations are");
    String left =
        findings.beaten() == 0
            ? ""
            : String.format(
                Locale.ROOT,
                " %,d of them %s left early, since another surely costs no more and surely loses"
                    + " footage less often.",
                findings.beaten(),
                findings.beaten() == 1 ? "was" : "were");
    return what + impossible + left;
  }

  private static String layouts(int many) {
    return String.format(Locale.ROOT, "%,d %s", many, many == 1 ? "layout" : "layouts");
  }

  /** What was not told apart, by question. */
  Optional<String> open() {
    List<Advice.OpenQuestion> open = findings.advice().openQuestions();
    if (open.isEmpty()) {
      return Optional.empty();
    }
    long rivals = open.stream().map(Advice.OpenQuestion::candidate).distinct().count();
    String some =
        open.stream()
            .map(Advice.OpenQuestion::candidate)
            .distinct()
            .limit(5)
            .collect(Collectors.joining(", "));
    return Optional.of(
        String.format(
            Locale.ROOT,
            "Not settled: %,d %s (%s%s) may be as good as what is named here, or better. More time"
                + " (--time) may tell.",
            rivals,
            rivals == 1 ? "other layout" : "other layouts",
            some,
            rivals > 5 ? ", ..." : ""));
  }

  /** How sure all of it is. */
  String guarantee() {
    double wrong = 100 * findings.advice().wrongPick();
    return String.format(
        Locale.ROOT,
        "What is settled is right with a chance of %s %%, all together, but for what hardly matters:"
            + " a chance of loss within a quarter, a cost within a hundredth, a tenth at the target."
            + " Histories of all layouts share their luck; seed %d.",
        ByteUnit.digits(100 - wrong),
        findings.settings().seed());
  }

  String horizon() {
    return YearWords.of(findings.question().studio().years());
  }

  private String label() {
    return findings.question().studio().currency().map(name -> name + " ").orElse("");
  }
}
