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
import lastcopy.words.PercentWords;
import lastcopy.words.YearWords;

/** Sentences of an advice; all chances have one denominator. */
record AdviceWords(AdviceFindings findings, OutOf outOf) {

  /** So much of a cost hardly matters, as to the selection. */
  private static final double HARDLY = 0.01;

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
    Optional<String> answer = findings.advice().cheapestUnderTarget();
    String kept =
        String.format(
            Locale.ROOT,
            "in which at most %s %% of studios lose footage within %s",
            PercentWords.of(target),
            horizon());
    if (answer.isEmpty()) {
      return "There is no layout "
          + kept
          + "."
          + findings.advice().safest().map(id -> " Nearest comes " + told(id) + ".").orElse("")
          + notSettled(Advice.About.TARGET);
    }
    String first = findings.isPriced() ? "The cheapest layout " : "A layout ";
    return first + kept + " is " + told(answer.get()) + "." + notSettled(Advice.About.TARGET);
  }

  private String withinBudget(double budget) {
    Optional<String> answer = findings.advice().safestWithinBudget();
    String limit = label() + Numbers.fixed(budget, budget == Math.rint(budget) ? 0 : 2);
    if (answer.isEmpty()) {
      return String.format(
          "No layout costs %s or less over %s. The cheapest is %s.%s",
          limit, horizon(), told(cheapest()), notSettled(Advice.About.BUDGET));
    }
    return String.format(
        "The safest layout for at most %s over %s is %s.%s",
        limit, horizon(), told(answer.get()), notSettled(Advice.About.BUDGET));
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
  private String notSettled(Advice.About about) {
    boolean open = findings.advice().openQuestions().stream().anyMatch(o -> o.about() == about);
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
    double before = findings.figures(step.from()).cost().map(Estimate::value).orElse(0.0);
    if (more.high() <= HARDLY * before) {
      return "hardly any more to pay";
    }
    String amount =
        more.low() > 0
            ? Numbers.money(more, findings.question().studio().currency())
            : "at most " + label() + ByteUnit.digits(more.high());
    return amount + " more over " + horizon();
  }

  String horizon() {
    return YearWords.of(findings.question().studio().years());
  }

  private String label() {
    return findings.question().studio().currency().map(name -> name + " ").orElse("");
  }
}
