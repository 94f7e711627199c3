package lastcopy.decide.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The one answer to a question by the estimates.
 *
 * @param answer empty if no candidate is within the limit
 * @param open what keeps it from being settled
 */
public record Pick(Optional<Bounds> answer, List<Rivalry> open) {

  /** Copies the list. */
  public Pick {
    open = List.copyOf(open);
  }

  /**
   * The cheapest of those whose chance is at most a target. Once settled: its chance is at most the
   * target, and no candidate whose chance is at most the target costs less, each but for the zone.
   *
   * @param target in (0, 1]
   */
  public static Pick cheapestUnder(double target, List<Bounds> all, Zone zone) {
    Optional<Bounds> answer =
        all.stream().filter(each -> each.chance().value() <= target).min(Front.CHEAPEST_FIRST);
    List<Rivalry> open = new ArrayList<>();
    for (Bounds each : all) {
      Side side = Side.of(each.chance(), target, zone.target());
      boolean isAnswer = answer.filter(each::equals).isPresent();
      boolean dearer = !isAnswer && answer.filter(a -> a.costsNoMore(each, zone)).isPresent();
      if (side == Side.OVER || dearer || (isAnswer && side == Side.UNDER)) {
        continue;
      }
      boolean byCost = side == Side.UNDER;
      open.add(Rivalry.of(each, answer.orElse(each), !byCost, byCost));
    }
    return new Pick(answer, open);
  }

  /**
   * The safest of those whose cost is at most a budget; of those that are alike by the estimates
   * the cheapest. Once settled: its cost is at most the budget, and no candidate whose cost is at
   * most the budget loses less often, each but for the zone.
   *
   * @param budget at least 0
   */
  public static Pick safestWithin(double budget, List<Bounds> all, Zone zone, Pairs pairs) {
    List<Bounds> within = all.stream().filter(each -> each.cost().value() <= budget).toList();
    double least =
        within.stream().mapToDouble(each -> each.chance().value()).min().orElse(Double.NaN);
    Optional<Bounds> answer =
        within.stream()
            .filter(each -> each.chance().value() <= least * zone.stepOfChance())
            .min(Front.CHEAPEST_FIRST);
    List<Rivalry> open = new ArrayList<>();
    for (Bounds each : all) {
      Side side = Side.of(each.cost(), budget, zone.cost());
      boolean isAnswer = answer.filter(each::equals).isPresent();
      boolean riskier =
          !isAnswer && answer.filter(a -> a.losesNoMore(each, zone, pairs)).isPresent();
      if (side == Side.OVER || riskier || (isAnswer && side == Side.UNDER)) {
        continue;
      }
      boolean byChance = side == Side.UNDER;
      open.add(Rivalry.of(each, answer.orElse(each), byChance, !byChance));
    }
    return new Pick(answer, open);
  }

  /** Where nothing is within the limit, what comes nearest to the target: the safest. */
  public static Optional<Bounds> safest(List<Bounds> all) {
    return all.stream()
        .min(
            Comparator.<Bounds>comparingDouble(each -> each.chance().value())
                .thenComparing(Front.CHEAPEST_FIRST));
  }
}
