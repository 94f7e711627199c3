package lastcopy.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import lastcopy.history.History;
import lastcopy.scenario.Studio;
import lastcopy.simulate.rare.EngineHistories;
import lastcopy.simulate.rare.LossWeights;

/** Simulates what a round asks for: of each candidate histories up to its next look. */
final class Sampling {

  /** Histories of the first look. */
  private static final long FIRST = 1_024;

  private static final long FIRST_BIASED = 512;

  /** Each look has so many times the histories of the one before it. */
  private static final int GROWTH = 3;

  private static final int GROWTH_BIASED = 2;

  /** The last looks, from 0. */
  private static final int LAST_PLAIN = 7;

  private static final int LAST_BIASED = 10;

  /** Where no bias makes it lose anything, more histories would hardly tell more. */
  private static final int LAST_OF_NEVER_LOST = 3;

  /** From this look on losses that are rarer than this are counted in biased histories. */
  private static final int RARE_FROM = 2;

  private static final double RARE = 0.004;

  /** After so many looks a bias that does not serve a candidate is tuned for it alone. */
  private static final int PATIENCE = 6;

  /** What a candidate costs is counted in its first histories, and in more where it matters. */
  private static final long FIRST_PRICED = 1_024;

  private static final long MOST_PRICED = 100_000;

  /**
   * Of so many biased histories it is remembered which lose, to hold them against each other: of
   * all candidates together, so that memory does not grow with how many there are, and of one.
   */
  private static final int REMEMBERED = 16_000_000;

  private static final int MOST_REMEMBERED = 131_072;
  private static final int LEAST_REMEMBERED = 2_048;

  /** Histories of one piece of work. */
  private static final long PIECE = 16_384;

  private final Studio studio;
  private final long seed;
  private final long cap;
  private final Rounds rounds;
  private final Biases biases;
  private final int remembered;

  /**
   * Nothing simulated yet.
   *
   * @param cap no candidate has more histories of either kind
   * @param candidates how many there are
   */
  Sampling(Studio studio, long seed, long cap, int candidates, Rounds rounds) {
    this.studio = studio;
    this.seed = seed;
    this.cap = cap;
    this.rounds = rounds;
    remembered = Math.max(LEAST_REMEMBERED, Math.min(MOST_REMEMBERED, REMEMBERED / candidates));
    biases = new Biases(studio, seed, remembered);
  }

  /** Some histories of a candidate. */
  private record Piece(
      Contender candidate, long first, int count, boolean last, boolean withCosts) {}

  private static List<Piece> pieces(Contender candidate, long from, long to, boolean withCosts) {
    List<Piece> pieces = new ArrayList<>();
    for (long first = from; first < to; first += PIECE) {
      int count = (int) Math.min(PIECE, to - first);
      pieces.add(new Piece(candidate, first, count, first + count == to, withCosts));
    }
    return pieces;
  }

  private long plainTo(int look) {
    return Math.min(cap, FIRST * (long) StrictMath.pow(GROWTH, look));
  }

  private long biasedTo(int look) {
    return Math.min(cap, FIRST_BIASED * (long) StrictMath.pow(GROWTH_BIASED, look));
  }

  /** Whether more histories of its kind would tell more of the chance of a candidate. */
  boolean canTellChance(Contender each) {
    if (each.safe) {
      return false;
    }
    if (each.isBiased()) {
      return each.weights().histories() < biasedTo(LAST_BIASED);
    }
    int last = each.neverLost() ? LAST_OF_NEVER_LOST : LAST_PLAIN;
    return each.plain.histories() < plainTo(last);
  }

  /** Whether more histories would tell more of what a candidate costs. */
  boolean canTellCost(Contender each) {
    return each.plain.priced() < MOST_PRICED && each.plain.histories() < plainTo(LAST_PLAIN);
  }

  /** Whether its next histories are to be biased, with a bias that it does not have yet. */
  boolean takesBias(Contender each) {
    if (each.isBiased()) {
      boolean served = each.weights().trusted() || each.biasedLooks() < PATIENCE;
      return !served && each.tunings() == 1;
    }
    double chance = (each.plain.losses() + 0.5) / each.plain.histories();
    return !each.neverLost() && each.plainLooks() >= RARE_FROM && chance < RARE;
  }

  /**
   * Takes candidates to their next look.
   *
   * @param byChance those of which chances are wanted closer
   * @param byCost those of which costs are
   * @return whether it came to its end
   */
  boolean take(List<Contender> byChance, List<Contender> byCost) {
    List<Contender> toTune = byChance.stream().filter(this::takesBias).toList();
    List<Contender> plain = new ArrayList<>(byCost);
    byChance.stream()
        .filter(each -> !each.isBiased() && !toTune.contains(each) && !byCost.contains(each))
        .forEach(plain::add);
    boolean goesOn =
        plain(plain, Set.copyOf(byCost)) && (toTune.isEmpty() || biases.tune(toTune, rounds));
    return goesOn && biased(byChance.stream().filter(Contender::isBiased).toList());
  }

  /** Histories as they fall, up to the first look. */
  boolean plain(List<Contender> candidates) {
    return plain(candidates, Set.of());
  }

  private boolean plain(List<Contender> candidates, Set<Contender> byCost) {
    List<Piece> pieces = new ArrayList<>();
    for (Contender each : candidates) {
      long from = each.plain.histories();
      boolean withCosts = from < FIRST_PRICED || byCost.contains(each);
      pieces.addAll(pieces(each, from, plainTo(each.plainLooks()), withCosts));
    }
    return rounds.run(
        pieces.stream().map(piece -> (Rounds.Task<PlainSums>) stop -> count(piece, stop)).toList(),
        (sums, i) -> {
          Piece piece = pieces.get(i);
          piece.candidate().plain.merge(sums);
          end(piece, Contender::lookedAtPlain);
        });
  }

  private PlainSums count(Piece piece, BooleanSupplier stop) {
    History history = new History(studio, piece.candidate().layout, seed);
    history.giveUpWhen(stop);
    return new PlainSums().count(history, piece.first(), piece.count(), piece.withCosts());
  }

  private boolean biased(List<Contender> candidates) {
    List<Piece> pieces = new ArrayList<>();
    for (Contender each : candidates) {
      long to = biasedTo(each.biasedLooks());
      pieces.addAll(pieces(each, each.weights().histories(), to, false));
    }
    return rounds.run(
        pieces.stream()
            .map(piece -> (Rounds.Task<LossWeights>) stop -> weigh(piece, stop))
            .toList(),
        (weights, i) -> {
          Piece piece = pieces.get(i);
          piece.candidate().weights().merge(weights);
          end(piece, Contender::lookedAtBiased);
        });
  }

  private LossWeights weigh(Piece piece, BooleanSupplier stop) {
    EngineHistories histories = biases.histories(piece.candidate().layout);
    histories.giveUpWhen(stop);
    return LossWeights.of(
        histories, piece.candidate().mixture(), piece.first(), piece.count(), remembered);
  }

  private void end(Piece piece, Consumer<Contender> look) {
    if (piece.last()) {
      look.accept(piece.candidate());
      rounds.tell(piece.candidate());
    }
  }
}
