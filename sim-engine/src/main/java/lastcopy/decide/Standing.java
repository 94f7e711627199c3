package lastcopy.decide;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lastcopy.decide.Advice.About;
import lastcopy.decide.rule.Beaten;
import lastcopy.decide.rule.Bounds;
import lastcopy.decide.rule.Front;
import lastcopy.decide.rule.Pairs;
import lastcopy.decide.rule.Pick;
import lastcopy.decide.rule.Rivalry;
import lastcopy.decide.rule.Zone;

/**
 * The answers by what is known so far, and what keeps them from being settled.
 *
 * @param alive candidates that were looked at and are not beaten
 * @param target the cheapest under the target, if one is asked for
 * @param budget the safest within the budget, if one is asked for
 */
record Standing(List<Bounds> alive, Front front, Optional<Pick> target, Optional<Pick> budget) {

  /** A rivalry and the question that it belongs to. */
  record Open(About about, Rivalry rivalry) {}

  /** Leaves those that are beaten by now, and answers by the others. */
  static Standing of(Question question, List<Contender> all, Zone zone, Pairs pairs) {
    List<Bounds> alive = new ArrayList<>();
    for (Contender each : all) {
      if (!each.beaten && each.plainLooks() > 0) {
        alive.add(each.bounds());
      }
    }
    BitSet beaten = Beaten.of(alive);
    beaten.stream().forEach(i -> all.get(i).beaten = true);
    alive.removeIf(bounds -> beaten.get(bounds.candidate()));
    Optional<Pick> target =
        question.target().isPresent()
            ? Optional.of(Pick.cheapestUnder(question.target().getAsDouble(), alive, zone))
            : Optional.empty();
    Optional<Pick> budget =
        question.budget().isPresent()
            ? Optional.of(Pick.safestWithin(question.budget().getAsDouble(), alive, zone, pairs))
            : Optional.empty();
    return new Standing(List.copyOf(alive), Front.of(alive, zone, pairs), target, budget);
  }

  /** The answer to a question that was asked, as the number of a candidate. */
  static Optional<Integer> answer(Optional<Pick> of) {
    return of.flatMap(Pick::answer).map(Bounds::candidate);
  }

  /** All that is not settled. */
  List<Open> open() {
    List<Open> open = new ArrayList<>();
    target.ifPresent(pick -> add(open, About.TARGET, pick.open()));
    budget.ifPresent(pick -> add(open, About.BUDGET, pick.open()));
    add(open, About.FRONT, front.open());
    return open;
  }

  private static void add(List<Open> to, About about, List<Rivalry> rivalries) {
    rivalries.forEach(rivalry -> to.add(new Open(about, rivalry)));
  }

  /** The numbers of those that are told as answers, the first candidate among them. */
  IntStream shown() {
    BitSet shown = new BitSet();
    shown.set(0);
    front.members().forEach(member -> shown.set(member.candidate()));
    answer(target).ifPresent(shown::set);
    answer(budget).ifPresent(shown::set);
    Pick.safest(alive).ifPresent(safest -> shown.set(safest.candidate()));
    return shown.stream();
  }
}
