package lastcopy.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.decide.rule.Zone;
import lastcopy.exact.RepairablePair;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.simulate.Studios;

/**
 * Candidates of which the chance of loss and the cost are known exactly: lone drives of a constant
 * hazard λ, replaced at once, which lose with 1 − exp(−λt) and are bought 1 + λt times on average;
 * and mirrors of a constant repair rate, by the closed form of {@link RepairablePair}, which by the
 * horizon have been bought about 2 + 2λt times.
 */
final class ExactFamily {

  private static final double YEARS = 5;
  static final double HOURS = YEARS * Units.HOURS_PER_YEAR;

  /** A candidate and what is known of it. */
  record Exact(String id, double chance, double cost) {}

  private final List<Layout> layouts = new ArrayList<>();
  private final boolean shares;
  final List<Exact> exact = new ArrayList<>();

  /**
   * None yet.
   *
   * @param shares whether all of them have the same luck, as the layouts of a file have
   */
  ExactFamily(boolean shares) {
    this.shares = shares;
  }

  ExactFamily() {
    this(false);
  }

  /** Adds a lone drive that fails so often in the years of the horizon, on average. */
  ExactFamily single(double failures, double price) {
    String id = "single-" + layouts.size();
    layouts.add(layout(id, Arrangement.SINGLE, 1, failures, price, new Fixed(0)));
    exact.add(new Exact(id, -Math.expm1(-failures), price * (1 + failures)));
    return this;
  }

  /** Adds a mirror of such drives, whose repair takes so many hours on average. */
  ExactFamily mirror(double failures, double repairHours, double price) {
    String id = "mirror-" + layouts.size();
    layouts.add(layout(id, Arrangement.MIRROR, 2, failures, price, new Exponential(repairHours)));
    RepairablePair pair = new RepairablePair(failures / HOURS, 1 / repairHours);
    // Repairs take so small a part of the time that it is far within the zone.
    exact.add(new Exact(id, pair.lossBy(HOURS), 2 * price * (1 + failures)));
    return this;
  }

  private Layout layout(
      String id, Arrangement arrangement, int drives, double failures, double price, Law rebuild) {
    var model = DriveModel.builder("drive", 2 * Units.TB).fails(new Exponential(HOURS / failures));
    if (price > 0) {
      model.price(price);
    }
    Copy copy =
        Copy.builder(shares ? "copy" : "of-" + id) // luck goes by the names of copies
            .on(
                Medium.DriveSet.builder(arrangement, drives)
                    .of(model.build())
                    .rebuild(rebuild)
                    .build())
            .build();
    return Layout.of(id, copy);
  }

  Question question(double target, double budget) {
    Studio studio =
        Studio.builder("test", YEARS)
            .footage(Studios.onHand(Units.TB))
            .layout(layouts.get(0))
            .build();
    return new Question(studio, layouts, OptionalDouble.of(target), OptionalDouble.of(budget));
  }

  Exact of(String id) {
    return exact.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
  }

  /** Which of the three answers break what is guaranteed of them, in words; none if all hold. */
  List<String> wrong(Advice advice, double target, double budget, Zone zone) {
    List<String> wrong = new ArrayList<>();
    Exact cheapest = of(advice.cheapestUnderTarget().orElseThrow());
    if (cheapest.chance() > target * zone.target()) {
      wrong.add(cheapest + " is not under the target");
    }
    Exact safest = of(advice.safestWithinBudget().orElseThrow());
    if (safest.cost() > budget * zone.cost()) {
      wrong.add(safest + " is not within the budget");
    }
    List<Exact> front = advice.front().stream().map(this::of).toList();
    for (Exact each : exact) {
      if (each.chance() <= target / zone.target() && each.cost() < cheapest.cost() / zone.cost()) {
        wrong.add(each + " is cheaper than " + cheapest);
      }
      if (each.cost() <= budget / zone.cost() && each.chance() < safest.chance() / zone.chance()) {
        wrong.add(each + " is safer than " + safest);
      }
      boolean covered =
          front.stream()
              .anyMatch(
                  member ->
                      member.cost() <= zone.cost() * each.cost()
                          && member.chance() <= zone.chance() * each.chance());
      if (!covered) {
        wrong.add(each + " is not covered by the front");
      }
    }
    return wrong;
  }
}
