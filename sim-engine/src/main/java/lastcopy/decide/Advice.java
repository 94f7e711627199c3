package lastcopy.decide;

import java.util.List;
import java.util.Optional;
import lastcopy.interval.Estimate;

/**
 * What a selection among candidates says.
 *
 * @param candidates in the order of the question
 * @param cheapestUnderTarget id; empty if there is no target or no candidate keeps it
 * @param safestWithinBudget id; empty if there is no budget or no candidate keeps it
 * @param safest id of the one that loses least often
 * @param front ids by cost; each loses less often than the one before
 * @param steps from each of the front to the next
 * @param fromToday from the first candidate to each answer and to what is on the front
 * @param openQuestions what was not told apart for certain by the end
 * @param wrongPick the chance, at most, that any answer is wrong by more than the zone
 * @param finished false if it was interrupted, so that some candidates may not have been looked at
 */
public record Advice(
    List<Candidate> candidates,
    Optional<String> cheapestUnderTarget,
    Optional<String> safestWithinBudget,
    Optional<String> safest,
    List<String> front,
    List<NextStep> steps,
    List<NextStep> fromToday,
    List<OpenQuestion> openQuestions,
    double wrongPick,
    boolean finished) {

  /** Copies the lists. */
  public Advice {
    candidates = List.copyOf(candidates);
    front = List.copyOf(front);
    steps = List.copyOf(steps);
    fromToday = List.copyOf(fromToday);
    openQuestions = List.copyOf(openQuestions);
  }

  /**
   * A candidate's figures.
   *
   * @param id of its layout
   * @param anyLoss chance of any loss, with its own interval
   * @param cost mean over the horizon, with its own interval; empty where nothing is priced
   * @param histories from which its chance comes; 0 if it was not looked at
   * @param biased whether these are biased
   * @param beaten whether it was left since another is surely cheaper and surely safer
   * @param onFront whether it is on the front
   */
  public record Candidate(
      String id,
      Estimate anyLoss,
      Optional<Estimate> cost,
      long histories,
      boolean biased,
      boolean beaten,
      boolean onFront) {}

  /**
   * From one layout to another, from histories that share their luck.
   *
   * @param costDifference what the second costs more; empty where nothing is priced
   * @param difference what is added to the chance of loss; negative where the second is safer
   */
  public record NextStep(
      String from, String to, Optional<Estimate> costDifference, Estimate difference) {}

  /** A question. */
  public enum About {
    /** Which is the cheapest under the target. */
    TARGET,
    /** Which is the safest within the budget. */
    BUDGET,
    /** Which are on the front. */
    FRONT
  }

  /**
   * What is not settled.
   *
   * @param about which question
   * @param candidate id of one that might be a better answer
   * @param against id of the answer; the same where only its own side of the limit is open
   */
  public record OpenQuestion(About about, String candidate, String against) {}

  /** The candidate of an id. */
  public Candidate of(String id) {
    return candidates.stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
  }
}
