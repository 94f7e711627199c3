package lastcopy.cli.advise;

import static lastcopy.cli.compare.SampleComparison.seen;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lastcopy.cli.edit.Candidates;
import lastcopy.cli.edit.ScenarioTree;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.decide.Advice;
import lastcopy.decide.Question;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;

/**
 * An advice whose figures are made by hand: three drives and a mirror, dearer and safer in turn. A
 * test changes what it is about.
 */
final class MadeAdvice {

  static final String WORST = "one";
  static final String USUAL = "one-3";
  static final String BEST = "one-5";
  static final String MIRROR = "one-8";

  static final String YAML =
      """
      lastcopy: 1
      studio: Lone Drives
      years: 5
      currency: EUR
      footage: {on_hand: 1 TB, shoots: {every: 30 days, size: 24 GB}}
      drives:
        worst: {size: 8 TB, fails: 9 %/year, price: 40}
        usual: {size: 8 TB, fails: 4 %/year, price: 200}
        best: {size: 8 TB, fails: 1 %/year, price: 500}
      layouts:
        one:
          title: A drive
          copies:
            main:
              drives: {one_of: [1 x worst, 1 x usual, 1 x best, 2 x best]}
              arrangement: {one_of: [single, mirror]}
              noticed: 1 h
              wait: 2 days
      """;

  String yaml = YAML;
  OptionalDouble target = OptionalDouble.empty();
  OptionalDouble budget = OptionalDouble.empty();
  Optional<String> underTarget = Optional.empty();
  Optional<String> withinBudget = Optional.empty();
  Optional<String> safest = Optional.of(MIRROR);
  List<String> front = List.of(WORST, USUAL, BEST, MIRROR);
  List<Advice.OpenQuestion> open = new ArrayList<>();
  List<Advice.NextStep> steps = new ArrayList<>();
  List<Advice.Candidate> candidates =
      new ArrayList<>(
          List.of(
              of(WORST, seen(0.376, 0.006), 40),
              of(USUAL, seen(0.185, 0.005), 200),
              of(BEST, seen(0.049, 0.002), 500),
              of(MIRROR, seen(0.0024, 0.0002), 1_000)));
  double wrongPick = 0.05;
  boolean finished = true;
  boolean median;
  OptionalLong histories = OptionalLong.empty();
  Optional<Duration> time = Optional.of(Duration.ofSeconds(60));

  static Advice.Candidate of(String id, Estimate anyLoss, double cost) {
    return new Advice.Candidate(
        id, anyLoss, Optional.of(Estimate.exact(cost)), 4_096, false, false, true);
  }

  static Advice.Candidate leftEarly(Advice.Candidate of) {
    return new Advice.Candidate(
        of.id(), of.anyLoss(), of.cost(), of.histories(), of.biased(), true, false);
  }

  static Advice.Candidate neverLookedAt(Advice.Candidate of) {
    Estimate unknown = new Estimate(0, 0, 1, false);
    return new Advice.Candidate(of.id(), unknown, of.cost(), 0, false, false, false);
  }

  MadeAdvice withoutPrices() {
    yaml = yaml.replaceAll(", price: \\d+", "");
    front = List.of(MIRROR);
    candidates.replaceAll(
        each ->
            new Advice.Candidate(
                each.id(), each.anyLoss(), Optional.empty(), each.histories(), false, false, true));
    return this;
  }

  /** From the worst to the usual drive. */
  MadeAdvice step(Estimate cost, Estimate difference) {
    steps.add(new Advice.NextStep(WORST, USUAL, Optional.of(cost), difference));
    return this;
  }

  MadeAdvice open(Advice.About about, String candidate, String against) {
    open.add(new Advice.OpenQuestion(about, candidate, against));
    return this;
  }

  AdviceFindings findings() {
    try {
      Candidates all = Candidates.of(ScenarioTree.parse("a.yaml", yaml));
      Advice advice =
          new Advice(
              candidates,
              underTarget,
              withinBudget,
              safest,
              front,
              steps,
              steps,
              open,
              wrongPick,
              finished);
      return new AdviceFindings(
          all,
          new Question(all.studio(), all.layouts(), target, budget),
          advice,
          new Settings(7, 0.95, 0.05, histories, time, 1),
          median);
    } catch (ScenarioException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  /** The page as one line. */
  String words() {
    return text(false).replaceAll("\\s+", " ");
  }

  String text(boolean impossible) {
    return AdviceText.of(findings(), impossible, PageLook.PLAIN);
  }
}
