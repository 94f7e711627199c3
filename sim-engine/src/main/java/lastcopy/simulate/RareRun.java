package lastcopy.simulate;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.LongFunction;
import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;
import lastcopy.scenario.Layout;

/** Biased histories of one layout: tuned, counted until precise, and held against plain ones. */
final class RareRun {

  /** Histories of a chunk: few, since most of them have events. */
  private static final int CHUNK = 1_000;

  /** Looks at the data are as seldom as those at plain histories. */
  private static final int LOOKS = 8;

  /** Two intervals this sure that are apart mean that one of them is wrong. */
  private static final double SURE = 0.9999;

  /** What was not seen may add so much, of the chance of any loss, to its interval. */
  private static final double TOO_MUCH = 0.1;

  /** Seeds of biased histories, apart from those of plain ones and of each other's layouts. */
  private static final long TUNED = 0x6A09E667F3BCC909L; // fractional digits of √2, of √3

  private static final long COUNTED = 0xBB67AE8584CAA73BL;

  /** Why there is nothing to count. */
  static final String NONE_LOST = "no biased history lost anything";

  private final Results results;
  private final Settings settings;
  private final LossTally plain;
  private final LongFunction<Biasable> histories;
  private final long layoutSeed;

  /**
   * What biased histories say.
   *
   * @param tally of those that count
   * @param reached whether the precision asked for was reached
   * @param doubt why they cannot be trusted, if they cannot
   */
  record Outcome(RareTally tally, boolean reached, Optional<String> doubt) {}

  /**
   * A run that has not begun.
   *
   * @param plain the layout's plain histories so far
   * @param histories makes histories of the layout that can be biased, of a seed
   */
  RareRun(
      Results results,
      Settings settings,
      Layout layout,
      LossTally plain,
      LongFunction<Biasable> histories) {
    this.results = results;
    this.settings = settings;
    this.plain = plain;
    this.histories = histories;
    layoutSeed = settings.seed() * 31 + layout.id().hashCode();
  }

  /** Tunes; empty if no biased history lost anything, or if the watch gave up. */
  Optional<Tuning.Tuned> tune(ExecutorService threads, Watch watch) {
    return Tuning.of(crew(TUNED, threads, watch));
  }

  private Crew crew(long seed, ExecutorService threads, Watch watch) {
    return new Crew(
        () -> histories.apply(layoutSeed ^ seed), threads, settings.threads(), watch::givesUp);
  }

  /**
   * Counts.
   *
   * @param watch told after each merged chunk; false ends the run
   */
  Outcome count(Tuning.Tuned tuned, ExecutorService threads, Watch watch) {
    RareTally tally = new RareTally(plain.thresholds);
    Crew crew = crew(COUNTED, threads, watch);
    Ahead<RareTally> chunks =
        crew.chunks(
            0,
            CHUNK,
            settings.histories().orElse(Long.MAX_VALUE),
            (mine, first, count) ->
                RareTally.of(mine, tuned.mixture(), plain.thresholds, first, count));
    boolean enough = false;
    boolean goOn = true;
    // How many are needed is known beforehand: a stop at the first sample that looks precise would
    // favour those that have not yet met a heavy weight.
    long nextLook =
        (long) Math.min(1e12, settings.needs(tuned.anyVariance(), tuned.bytesVariance()));
    while (!enough && goOn && chunks.hasNext()) {
      goOn = false;
      Optional<RareTally> chunk = chunks.next(watch::givesUp);
      if (chunk.isPresent()) {
        tally.merge(chunk.get());
        goOn = watch.merged(results.figures(plain, tally, false));
      }
      if (chunks.handedOut() >= nextLook) {
        enough = settings.histories().isEmpty() && preciseEnough(tally);
        nextLook = chunks.handedOut() + chunks.handedOut() / LOOKS;
      }
    }
    chunks.drop();
    Optional<String> doubt = doubt(tally, crew.one());
    return new Outcome(tally, doubt.isEmpty() && preciseEnough(tally), doubt);
  }

  /** Told of what merged chunks say. */
  @FunctionalInterface
  interface Watch {
    /** Whether to go on. */
    boolean merged(RareFigures figures);

    /** Whether not to wait for the next chunk. */
    default boolean givesUp() {
      return false;
    }
  }

  private boolean preciseEnough(RareTally tally) {
    return tally.any.trusted() && settings.preciseEnough(results.figures(plain, tally, false));
  }

  private Optional<String> doubt(RareTally tally, Biasable one) {
    if (tally.any.nonZero() == 0) {
      return Optional.of(NONE_LOST);
    }
    if (tally.weightless > 0) {
      return Optional.of("biased histories with a life that ends at a fixed age have no weight");
    }
    if (!tally.any.trusted()) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "the weights of biased histories are too uneven: %,d with a loss count as %.0f, and"
                  + " the heaviest has %.2g %%",
              tally.any.nonZero(),
              tally.any.effective(),
              100 * tally.any.largestShare()));
    }
    if (tally.channels.missed() > TOO_MUCH * tally.any.mean()) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "too few biased histories saw that %s, which may add up to %.2g to the chance of a"
                  + " loss",
              one.channel(tally.channels.missing().get(0)),
              tally.channels.missed()));
    }
    Estimate seen = Proportions.of(plain.losses, plain.histories, SURE);
    Estimate weighted = tally.any.estimate(SURE, 1);
    if (seen.low() > weighted.high() || weighted.low() > seen.high()) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "biased histories disagree with plain ones, of which %,d of %,d lost footage",
              plain.losses,
              plain.histories));
    }
    return Optional.empty();
  }
}
