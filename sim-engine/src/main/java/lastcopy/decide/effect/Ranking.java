package lastcopy.decide.effect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;

/** Puts alternatives in order, by what they take off the chance of any loss. */
final class Ranking {

  /** How many are to be apart from the rest. */
  private static final int FIRST = 3;

  private final List<Alternative> all;
  private final Settings settings;
  private final Method method;
  private final long histories;
  private final Findings findings;

  Ranking(
      List<Alternative> all, Settings settings, Method method, long histories, Findings findings) {
    this.all = all;
    this.settings = settings;
    this.method = method;
    this.histories = histories;
    this.findings = findings;
  }

  /** Whether each of the first three is apart from each that is behind the third. */
  boolean isFirstThreeApart() {
    List<Integer> order = order();
    for (int first = 0; first < Math.min(FIRST, order.size()); first++) {
      for (int other = FIRST; other < order.size(); other++) {
        if (isTied(order.get(first), order.get(other))) {
          return false;
        }
      }
    }
    return true;
  }

  /** The relative half-width of the chance of any loss of the layout as it is. */
  double precision() {
    return findings.result(0).anyLoss().relativeHalfWidth();
  }

  Effects result(boolean finished) {
    List<Integer> order = order();
    return new Effects(
        findings.result(0),
        order.stream().map(this::effect).toList(),
        ties(order),
        method,
        histories,
        finished);
  }

  private List<Integer> order() {
    return IntStream.range(1, all.size())
        .boxed()
        .sorted(Comparator.comparingDouble(a -> findings.any(a, errorRate()).value()))
        .toList();
  }

  /** All differences hold together (Bonferroni). */
  private double errorRate() {
    return (1 - settings.confidence()) / Math.max(1, all.size() - 1);
  }

  private MeasuredEffect effect(int a) {
    Estimate any = findings.any(a, errorRate()).within(-1, 1);
    OptionalDouble worth = all.get(0).studio().footage().worthPerShoot();
    Optional<Estimate> money =
        worth.isPresent()
            ? Optional.of(times(findings.shoots(a, errorRate()), worth.getAsDouble()))
            : Optional.empty();
    return new MeasuredEffect(
        all.get(a).id(),
        findings.result(a),
        any,
        findings.bytes(a, errorRate()),
        money,
        findings.cost(a),
        Direction.of(any));
  }

  private static Estimate times(Estimate estimate, double factor) {
    return new Estimate(
        estimate.value() * factor,
        estimate.low() * factor,
        estimate.high() * factor,
        estimate.seen());
  }

  private List<Effects.Tie> ties(List<Integer> order) {
    List<Effects.Tie> ties = new ArrayList<>();
    for (int first = 0; first < Math.min(FIRST, order.size()); first++) {
      for (int other = first + 1; other < order.size(); other++) {
        if (isTied(order.get(first), order.get(other))) {
          ties.add(new Effects.Tie(id(order.get(first)), id(order.get(other))));
        }
      }
    }
    return ties;
  }

  private String id(int alternative) {
    return all.get(alternative).id();
  }

  /** The first are picked by their look, so any pair of all might have been looked at. */
  private boolean isTied(int one, int other) {
    int n = all.size() - 1;
    double each = (1 - settings.confidence()) / Math.max(1, n * (n - 1) / 2);
    return Direction.of(findings.between(one, other, each)) == Direction.NOT_MEASURABLE;
  }
}
