package lastcopy.decide;

import java.util.Optional;
import lastcopy.decide.rule.Bounds;
import lastcopy.decide.rule.ErrorBudget;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Layout;
import lastcopy.simulate.rare.LossWeights;
import lastcopy.simulate.rare.Mixture;

/** A candidate while it is looked at: its sums, and what they bound. Mutable. */
final class Contender {

  /** Two intervals this sure that are apart mean that one of them is wrong. */
  private static final double SURE = 0.9999;

  final int number;
  final Layout layout;

  /** Nothing in the file can lose its footage. */
  final boolean safe;

  final PlainSums plain = new PlainSums();
  private final ErrorBudget budget;
  private int plainLooks;
  private int biasedLooks;

  /** At histories of either kind, under any bias. */
  private int looks;

  private Estimate chance = new Estimate(0, 0, 1, false);
  private Estimate cost = new Estimate(0, 0, Double.POSITIVE_INFINITY, false);
  private Mixture mixture;
  private LossWeights weights;

  /** How often a bias was tuned: for those that are built alike, then for it alone. */
  private int tunings;

  private boolean neverLost;

  boolean beaten;

  Contender(int number, Layout layout, boolean safe, ErrorBudget budget) {
    this.number = number;
    this.layout = layout;
    this.safe = safe;
    this.budget = budget;
    if (safe) {
      chance = Estimate.exact(0);
    }
  }

  /** Histories as they fall have come to the end of a look. */
  void lookedAtPlain() {
    double confidence = budget.confidence(ErrorBudget.Of.PLAIN, plainLooks);
    if (!safe) {
      Estimate seen = plain.chance(confidence);
      chance = narrowed(chance, seen, isBiased() ? chance.value() : seen.value());
    }
    Estimate paid =
        plain.cost(budget.confidence(ErrorBudget.Of.COST, plainLooks)).orElse(Estimate.exact(0));
    cost = narrowed(cost, paid, paid.value());
    plainLooks++;
    looks++;
  }

  /** Biased histories have come to the end of a look. */
  void lookedAtBiased() {
    ErrorBudget.Of part = tunings > 1 ? ErrorBudget.Of.BIASED_ANEW : ErrorBudget.Of.BIASED;
    double confidence = budget.confidence(part, biasedLooks);
    biasedLooks++;
    looks++;
    if (!weights.contradicts(plain.losses(), plain.histories(), SURE)) {
      weights
          .chance(confidence, chance.high())
          .ifPresent(seen -> chance = narrowed(chance, seen, seen.value()));
    }
  }

  /** Both hold at once; where one of them errs they may be apart, and the later one stands. */
  private static Estimate narrowed(Estimate known, Estimate seen, double value) {
    double low = Math.max(known.low(), seen.low());
    double high = Math.min(known.high(), seen.high());
    return low <= high ? new Estimate(Math.max(low, Math.min(high, value)), low, high, true) : seen;
  }

  /** From now on its losses come from histories under a bias. */
  void bias(Mixture by, int remembered) {
    mixture = by;
    weights = new LossWeights(by.parts(), remembered);
    biasedLooks = 0;
    tunings++;
  }

  /** No bias makes it lose anything. */
  void losesUnderNoBias() {
    neverLost = true;
  }

  boolean neverLost() {
    return neverLost;
  }

  boolean isBiased() {
    return mixture != null;
  }

  Mixture mixture() {
    return mixture;
  }

  LossWeights weights() {
    return weights;
  }

  int tunings() {
    return tunings;
  }

  int plainLooks() {
    return plainLooks;
  }

  int biasedLooks() {
    return biasedLooks;
  }

  /** What is known of it at the stated chance of a wrong pick. */
  Bounds bounds() {
    return new Bounds(number, chance, cost);
  }

  /** Its chance with its own interval. */
  Estimate figure(double confidence) {
    if (safe) {
      return Estimate.exact(0);
    }
    if (plain.histories() == 0) {
      return new Estimate(0, 0, 1, false);
    }
    Estimate asTheyFall = plain.chance(confidence);
    return isBiased()
        ? weights.chance(confidence, asTheyFall.high()).orElse(asTheyFall)
        : asTheyFall;
  }

  /** What it costs, with its own interval. */
  Optional<Estimate> costFigure(double confidence) {
    return plain.cost(confidence);
  }

  /** Whether its figure comes from biased histories. */
  boolean toldFromBiased() {
    return isBiased() && weights.trusted();
  }

  /** Grows with whatever is done for it, also where histories begin anew under another bias. */
  int done() {
    return looks + tunings + (neverLost ? 1 : 0);
  }

  long histories() {
    return toldFromBiased() ? weights.histories() : plain.histories();
  }
}
