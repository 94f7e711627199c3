package lastcopy.decide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastcopy.decide.rule.Bounds;
import lastcopy.decide.rule.Pick;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.interval.IndependentRatio;
import lastcopy.interval.PairedMeans;
import lastcopy.interval.PairedRatio;

/** From sums of candidates, and what stands at the end, to an advice with its figures. */
final class Reckoning {

  private final Question question;
  private final Settings settings;
  private final List<Contender> all;
  private final Standing standing;
  private final boolean finished;
  private final Map<Integer, Replay> replays = new HashMap<>();

  Reckoning(
      Question question,
      Settings settings,
      List<Contender> all,
      Standing standing,
      boolean finished) {
    this.question = question;
    this.settings = settings;
    this.all = all;
    this.standing = standing;
    this.finished = finished;
  }

  /** Plays the first histories of those that are told once more, to compare them in pairs. */
  void replay(Rounds rounds) {
    List<Contender> shown = standing.shown().mapToObj(all::get).toList();
    rounds.run(
        shown.stream().map(each -> (Rounds.Task<Replay>) stop -> replay(each)).toList(),
        (replay, i) -> replays.put(shown.get(i).number, replay));
  }

  private Replay replay(Contender each) {
    int count = (int) Math.min(Replay.MOST, each.plain.histories());
    return Replay.of(question.studio(), each.layout, settings.seed(), count);
  }

  Advice advice() {
    List<Integer> front = standing.front().members().stream().map(Bounds::candidate).toList();
    List<Advice.Candidate> candidates = new ArrayList<>();
    for (Contender each : all) {
      candidates.add(candidate(each, front.contains(each.number)));
    }
    List<Advice.NextStep> steps = new ArrayList<>();
    for (int i = 1; i < front.size(); i++) {
      steps.add(step(front.get(i - 1), front.get(i)));
    }
    return new Advice(
        candidates,
        Standing.answer(standing.target()).map(this::id),
        Standing.answer(standing.budget()).map(this::id),
        Pick.safest(standing.alive()).map(Bounds::candidate).map(this::id),
        front.stream().map(this::id).toList(),
        steps,
        standing.shown().filter(i -> i > 0).mapToObj(i -> step(0, i)).toList(),
        standing.open().stream().map(this::told).toList(),
        1 - settings.confidence(),
        finished);
  }

  private Advice.OpenQuestion told(Standing.Open open) {
    return new Advice.OpenQuestion(
        open.about(), id(open.rivalry().candidate()), id(open.rivalry().against()));
  }

  private String id(int number) {
    return all.get(number).layout.id();
  }

  private Advice.Candidate candidate(Contender each, boolean onFront) {
    return new Advice.Candidate(
        each.layout.id(),
        each.figure(settings.confidence()),
        each.costFigure(settings.confidence()),
        each.histories(),
        each.toldFromBiased(),
        each.beaten,
        onFront);
  }

  private Advice.NextStep step(int from, int to) {
    Contender a = all.get(from);
    Contender b = all.get(to);
    return new Advice.NextStep(id(from), id(to), cost(a, b), difference(a, b));
  }

  /** As if they were apart where they are not compared in pairs. */
  private Estimate difference(Contender from, Contender to) {
    Replay a = replays.get(from.number);
    Replay b = replays.get(to.number);
    double confidence = settings.confidence();
    if (a == null
        || b == null
        || from.safe
        || to.safe
        || from.toldFromBiased()
        || to.toldFromBiased()) {
      return IndependentRatio.of(to.figure(confidence), from.figure(confidence)).difference();
    }
    int paired = Math.min(a.costs.length, b.costs.length);
    int onlyTo = to.plain.lossesWithout(from.plain, paired);
    int onlyFrom = from.plain.lossesWithout(to.plain, paired);
    return PairedRatio.of(
            to.plain.histories(),
            to.plain.losses(),
            from.plain.histories(),
            from.plain.losses(),
            paired,
            to.plain.lossesOf(paired) - onlyTo,
            onlyTo,
            onlyFrom,
            confidence)
        .difference();
  }

  /** The difference of the costs that are told, with the width of the pairs that were replayed. */
  private Optional<Estimate> cost(Contender from, Contender to) {
    Optional<Estimate> a = from.costFigure(settings.confidence());
    Optional<Estimate> b = to.costFigure(settings.confidence());
    if (a.isEmpty() || b.isEmpty()) {
      return Optional.empty();
    }
    double value = b.get().value() - a.get().value();
    Replay pairedA = replays.get(from.number);
    Replay pairedB = replays.get(to.number);
    if (pairedA == null || pairedB == null) {
      return Optional.of(
          new Estimate(
              value, b.get().low() - a.get().high(), b.get().high() - a.get().low(), true));
    }
    Estimate paired = PairedMeans.difference(pairedB.costs, pairedA.costs, settings.confidence());
    return Optional.of(
        new Estimate(
            value,
            value - (paired.value() - paired.low()),
            value + (paired.high() - paired.value()),
            true));
  }
}
