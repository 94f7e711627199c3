package lastcopy.decide;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import lastcopy.decide.rule.ErrorBudget;
import lastcopy.decide.rule.Pairs;
import lastcopy.decide.rule.Rivalry;
import lastcopy.decide.rule.Zone;
import lastcopy.experiment.NothingSimulatedException;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Layout;
import lastcopy.scenario.NoWayToLose;

/**
 * Chooses among candidates, by rounds: histories of those that still matter, what that leaves open,
 * and so on until nothing is, or no more can be told. See the package for what is guaranteed.
 */
public final class Selection {

  private final Question question;
  private final Settings settings;
  private final Zone zone;
  private final Pairs pairs;
  private final Rounds rounds;
  private final Sampling sampling;
  private final List<Contender> all = new ArrayList<>();

  private Selection(Question question, Settings settings, Zone zone, Rounds rounds) {
    this.question = question;
    this.settings = settings;
    this.zone = zone;
    this.rounds = rounds;
    long cap = settings.histories().orElse(Long.MAX_VALUE);
    int candidates = question.candidates().size();
    sampling = new Sampling(question.studio(), settings.seed(), cap, candidates, rounds);
    ErrorBudget budget = new ErrorBudget(1 - settings.confidence(), candidates);
    for (Layout layout : question.candidates()) {
      boolean safe = NoWayToLose.in(question.studio(), layout);
      all.add(new Contender(all.size(), layout, safe, budget));
    }
    pairs = new SharedLuck(all, budget);
  }

  /**
   * Chooses.
   *
   * @param settings the chance of a wrong pick is at most 1 − confidence; figures of answers and
   *     front are as precise as {@code precision} says; {@code histories} caps those of a candidate
   * @param progress told after each look at a candidate; may cancel, then the advice is unfinished
   * @throws NothingSimulatedException if no candidate was looked at when the time was over or
   *     somebody stopped it
   * @throws IllegalStateException if a history failed
   */
  public static Advice run(Question question, Settings settings, Progress progress) {
    return run(question, settings, Zone.USUAL, progress);
  }

  static Advice run(Question question, Settings settings, Zone zone, Progress progress) {
    try (Rounds rounds = new Rounds(settings, progress)) {
      Selection selection = new Selection(question, settings, zone, rounds);
      Standing standing = selection.settle();
      Reckoning reckoning =
          new Reckoning(question, settings, selection.all, standing, !rounds.cancelled());
      reckoning.replay(rounds);
      return reckoning.advice();
    }
  }

  /** What stands at the end of all rounds, with the bounds that the answers rest on. */
  static Standing settled(Question question, Settings settings) {
    try (Rounds rounds = new Rounds(settings, Progress.SILENT)) {
      return new Selection(question, settings, Zone.USUAL, rounds).settle();
    }
  }

  private Standing settle() {
    boolean goesOn = sampling.plain(all);
    if (all.get(0).plainLooks() == 0) {
      throw new NothingSimulatedException(rounds.cancelled());
    }
    Standing standing = Standing.of(question, all, zone, pairs);
    while (goesOn) {
      BitSet byChance = new BitSet();
      BitSet byCost = new BitSet();
      standing.open().forEach(open -> want(open.rivalry(), byChance, byCost));
      standing.shown().mapToObj(all::get).forEach(each -> want(each, byChance, byCost));
      if (byChance.isEmpty() && byCost.isEmpty()) {
        break;
      }
      int before = done();
      // A round that brings nothing would be followed by others like it.
      goesOn = sampling.take(those(byChance), those(byCost)) && done() > before;
      standing = Standing.of(question, all, zone, pairs);
    }
    return standing;
  }

  private int done() {
    return all.stream().mapToInt(Contender::done).sum();
  }

  private List<Contender> those(BitSet numbers) {
    return numbers.stream().mapToObj(all::get).toList();
  }

  /** A rival of which no more can be told holds nobody up. */
  private void want(Rivalry rivalry, BitSet byChance, BitSet byCost) {
    Contender rival = all.get(rivalry.candidate());
    Contender answer = all.get(rivalry.against());
    if (rivalry.byChance() && sampling.canTellChance(rival)) {
      byChance.set(rival.number);
      byChance.set(answer.number, sampling.canTellChance(answer));
    }
    if (rivalry.byCost() && sampling.canTellCost(rival)) {
      byCost.set(rival.number);
      byCost.set(answer.number, sampling.canTellCost(answer));
    }
  }

  /** What is told as an answer is told as closely as was asked for. */
  private void want(Contender shown, BitSet byChance, BitSet byCost) {
    Estimate chance = shown.figure(settings.confidence());
    if (chance.relativeHalfWidth() > settings.precision() && sampling.canTellChance(shown)) {
      byChance.set(shown.number);
    }
    Optional<Estimate> cost = shown.costFigure(settings.confidence());
    boolean rough =
        cost.filter(of -> of.high() - of.low() > 2 * (zone.cost() - 1) * of.value()).isPresent();
    if (rough && sampling.canTellCost(shown)) {
      byCost.set(shown.number);
    }
  }
}
