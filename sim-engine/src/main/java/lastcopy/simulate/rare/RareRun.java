package lastcopy.simulate.rare;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.BooleanSupplier;
import java.util.function.LongFunction;
import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.parallel.OrderedChunks;
import lastcopy.parallel.Workers;
import lastcopy.scenario.Layout;
import lastcopy.simulate.count.Figures;
import lastcopy.simulate.count.Goal;
import lastcopy.simulate.count.LossTally;

/**
 * Biased histories of one layout: tuned, counted until precise, and held against plain ones.
 *
 * <p>Two stages (Stein, Annals of Mathematical Statistics 16 (1945) 243-258). A first one says how
 * many histories the precision takes and does not count; so many are then counted without a look. A
 * stop at the first sample that looks precise would favour those that have not yet met a heavy
 * weight: with a skewness γ and a relative deviation κ of one history it is low by about (γ/κ − 2)
 * times the squared relative error (Chow, Robbins, Annals of Mathematical Statistics 36 (1965)
 * 457-462, is the rule; Glynn, Whitt, Annals of Applied Probability 2 (1992) 180-198, what it needs
 * to hold in the limit).
 */
public final class RareRun {

  /** Histories of a chunk: few, since most of them have events. */
  private static final int CHUNK = 1_000;

  /** Where the second stage falls short it goes on by this part of itself. */
  private static final double STEP = 0.25;

  /** The first stage has this part of the histories of the second. */
  private static final double FIRST = 0.25;

  /** Histories of either stage at the least: a tenth of a second. */
  private static final long LEAST = 4_000;

  /** Seeds of biased histories, apart from those of plain ones and of each other's layouts. */
  private static final long TUNED = 0x6A09E667F3BCC909L; // fractional digits of √2, of √3

  private static final long COUNTED = 0xBB67AE8584CAA73BL;

  private static final long SIZED = 0x5BE0CD19137E2179L; // of √19

  private final Results results;
  private final Settings settings;
  private final Goal goal;
  private final LossTally plain;
  private final Pilot pilot;
  private final LongFunction<Biasable> histories;
  private final String layoutId;
  private final long layoutSeed;

  /**
   * What biased histories say.
   *
   * @param tally of those that count
   * @param reached whether the precision asked for was reached
   * @param doubt why they cannot be trusted, if they cannot, a sentence
   */
  public record Outcome(RareTally tally, boolean reached, Optional<String> doubt) {}

  /**
   * A run that has not begun.
   *
   * @param plain the layout's plain histories so far
   * @param pilot says whether they are worth going on with
   * @param histories makes histories of the layout that can be biased, of a seed
   */
  public RareRun(
      Results results,
      Settings settings,
      Layout layout,
      LossTally plain,
      Pilot pilot,
      LongFunction<Biasable> histories) {
    this.results = results;
    this.settings = settings;
    goal = Goal.of(settings);
    this.plain = plain;
    this.pilot = pilot;
    this.histories = histories;
    layoutId = layout.id();
    layoutSeed = settings.seed() * 31 + layout.id().hashCode();
  }

  /** Tunes; empty if no biased history lost anything, or if it was given up. */
  public Optional<Tuning.Tuned> tune(ExecutorService threads, Allowance allowed) {
    return Tuning.of(
        workers(
            TUNED,
            threads,
            () -> allowed.over().getAsBoolean() || allowed.givesWay().getAsBoolean()));
  }

  private Workers<Biasable> workers(long seed, ExecutorService threads, BooleanSupplier givesUp) {
    return Workers.on(threads, settings.threads(), asked -> histories(seed, asked), givesUp);
  }

  private Biasable histories(long seed, BooleanSupplier asked) {
    Biasable own = histories.apply(layoutSeed ^ seed);
    own.giveUpWhen(asked);
    return own;
  }

  /**
   * Counts, in two stages; with a cap on histories in one.
   *
   * @param allowed how long it may go on
   * @return empty if the first stage shows that biased histories do not pay
   */
  public Optional<Outcome> count(Tuning.Tuned tuned, ExecutorService threads, Allowance allowed) {
    CountingStage first = new CountingStage(tuned, SIZED, threads, allowed, allowed.givesWay());
    CountingStage second = new CountingStage(tuned, COUNTED, threads, allowed, () -> false);
    boolean capped = settings.histories().isPresent();
    double needs = goal.needs(tuned.anyVariance(), tuned.bytesVariance());
    double planned = capped ? settings.histories().getAsLong() : plan(first, needs, tuned);
    if (planned < 0) {
      return Optional.empty();
    }
    boolean goesOn = first.goesOn && second.to(planned);
    while (goesOn && !capped && !preciseEnough(second.tally) && staysOn(second, tuned)) {
      goesOn = second.to(second.tally.any.histories() * (1 + STEP));
    }
    second.chunks.drop();
    if (!goesOn) { // the end was not chosen by what was seen, so all of it counts
      second.tally.merge(first.tally);
    }
    Optional<String> doubt = doubt(second.tally, second.workers.one());
    return Optional.of(
        new Outcome(second.tally, doubt.isEmpty() && preciseEnough(second.tally), doubt));
  }

  /** Whether a second stage that fell short goes on; doubted, only while plain ones take longer. */
  private boolean staysOn(CountingStage second, Tuning.Tuned tuned) {
    return pilot.pays((double) second.tally.any.histories(), tuned)
        || doubt(second.tally, second.workers.one()).isEmpty();
  }

  /** The first stage: how many histories to count; negative if they do not pay. */
  private double plan(CountingStage first, double needs, Tuning.Tuned tuned) {
    double part = Math.max(LEAST, FIRST * needs);
    double planned = Double.POSITIVE_INFINITY;
    while (first.to(part)) {
      RareTally seen = first.tally;
      planned = Math.max(LEAST, goal.planned(seen.any, seen.bytes, seen.events));
      boolean known = planned < Double.POSITIVE_INFINITY;
      double by = known ? planned : seen.any.histories() / FIRST;
      if (!pilot.pays(by, tuned)) {
        planned = -1;
      }
      if (FIRST * planned <= 2 * seen.any.histories()) {
        break;
      }
      part = Math.min(FIRST * planned, 2.0 * seen.any.histories());
    }
    first.chunks.drop();
    return planned;
  }

  /** Histories under a seed of their own, counted as far as is asked. */
  private final class CountingStage {
    final RareTally tally;
    final OrderedChunks<RareTally> chunks;
    final Workers<Biasable> workers;
    private final Allowance allowed;
    private final BooleanSupplier givesWay;
    boolean goesOn = true;

    CountingStage(
        Tuning.Tuned tuned,
        long seed,
        ExecutorService threads,
        Allowance allowed,
        BooleanSupplier givesWay) {
      tally = new RareTally(plain.thresholds(), tuned.mixture().parts());
      this.allowed = allowed;
      this.givesWay = givesWay;
      workers = workers(seed, threads, allowed.over());
      chunks =
          workers.chunks(
              0,
              CHUNK,
              settings.histories().orElse(Long.MAX_VALUE),
              (mine, first, count) ->
                  RareTally.of(mine, tuned.mixture(), plain.thresholds(), first, count));
    }

    /** Counts up to so many histories or just beyond; false if it had to end. */
    boolean to(double histories) {
      while (goesOn && chunks.handedOut() < histories && chunks.hasNext()) {
        Optional<RareTally> chunk = chunks.next(workers::giveUp);
        chunk.ifPresent(tally::merge);
        goesOn = chunk.isPresent() && tell();
        if (goesOn && settings.method() != Method.RARE && givesWay.getAsBoolean()) {
          goesOn = doubt(tally, workers.one()).isEmpty();
        }
      }
      return goesOn;
    }

    /** Tells how far it is; whether to go on. */
    private boolean tell() {
      Figures figures = results.figures(plain, tally, false);
      allowed
          .progress()
          .merged(
              layoutId,
              tally.any.histories(),
              figures.anyLoss().relativeHalfWidth(),
              goal.share(figures));
      return !workers.giveUp();
    }
  }

  private boolean preciseEnough(RareTally tally) {
    return tally.any.trusted() && goal.isReached(results.figures(plain, tally, false));
  }

  private Optional<String> doubt(RareTally tally, Biasable one) {
    return Doubt.of(tally, plain, one);
  }
}
