package lastcopy.story;

import java.util.List;
import java.util.Optional;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Loss;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/**
 * One simulated history, told: what happened, and what it lost.
 *
 * @param studio whose
 * @param layout under which layout
 * @param copies the names of its copies, as happenings and scenes count them
 * @param seed of all luck
 * @param number of the history
 * @param moments everything that happened, from the start to the horizon
 * @param losses what the history costs in the estimates: one entry for each happening of that kind
 */
public record Story(
    Studio studio,
    Layout layout,
    List<String> copies,
    long seed,
    long number,
    List<Moment> moments,
    List<Loss> losses) {

  /** Copies the lists. */
  public Story {
    copies = List.copyOf(copies);
    moments = List.copyOf(moments);
    losses = List.copyOf(losses);
  }

  /** The copy of an index; each turn of a rotation is one of its own. */
  public Copy copy(int index) {
    return Turns.of(layout).get(index);
  }

  /** The drive, from 0, that forms a pair with that of a happening; −1 if there is none. */
  public int otherOfPair(Happening happening) {
    boolean pairs =
        happening.copy() >= 0
            && happening.drive() >= 0
            && copy(happening.copy())
                .driveSet()
                .filter(set -> set.arrangement() == Arrangement.PAIRS)
                .isPresent();
    return pairs ? happening.drive() ^ 1 : -1;
  }

  /** All bytes lost. */
  public double lostBytes() {
    return losses.stream().mapToDouble(Loss::bytes).sum();
  }

  /** The nearest that it came to a loss; empty if it lost something or nothing was ever bare. */
  public Optional<NearMiss> peril() {
    return losses.isEmpty()
        ? NearMiss.nearest(Turns.of(layout), moments, studio.horizonHours())
        : Optional.empty();
  }

  /** The likelihood ratio of the history; 1 for a plain one. */
  public double weight() {
    return moments.isEmpty() ? 1 : moments.get(moments.size() - 1).scene().weight();
  }
}
