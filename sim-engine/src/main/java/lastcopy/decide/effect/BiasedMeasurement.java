package lastcopy.decide.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.BooleanSupplier;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.parallel.OrderedChunks;
import lastcopy.parallel.Workers;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import lastcopy.simulate.rare.Biasable;
import lastcopy.simulate.rare.Doubt;
import lastcopy.simulate.rare.EngineHistories;
import lastcopy.simulate.rare.Mixture;
import lastcopy.simulate.rare.RareTally;
import lastcopy.simulate.rare.Tuning;

/** Biased histories of all alternatives, under one bias where they are built alike. */
final class BiasedMeasurement {

  /** Seeds of tuning, of trials and of what counts, apart from each other and plain histories. */
  private static final long TUNED = 0x9216D5D98979FB1BL; // digits of π

  private static final long TRIED = 0xD1310BA698DFB5ACL;
  private static final long COUNTED = 0x2FFD72DBD01ADFB7L;

  /** Histories that say whether the shared bias serves an alternative; they do not count. */
  private static final int TRIAL = 1_000;

  private static final long FIRST_LOOK = 8 * BiasedChunk.SIZE;

  private final List<Alternative> all;
  private final List<Thresholds> thresholds;
  private final LossTally[] plain;
  private final Settings settings;
  private final Progress progress;
  private final BooleanSupplier late;
  private final RareTally[] tallies;
  private final PairedAmounts[] pairs;
  private List<Mixture> mixtures = List.of();
  private volatile boolean over;

  BiasedMeasurement(
      List<Alternative> all,
      List<Thresholds> thresholds,
      LossTally[] plain,
      Settings settings,
      Progress progress,
      BooleanSupplier late) {
    this.all = all;
    this.thresholds = thresholds;
    this.plain = plain;
    this.settings = settings;
    this.progress = progress;
    this.late = late;
    tallies = new RareTally[all.size()];
    pairs = new PairedAmounts[all.size()];
  }

  /**
   * What they say; empty if no biased history of the layout as it is lost anything, or too late.
   */
  Optional<Effects> run(ExecutorService threads) {
    Optional<Mixture> shared = tuned(0, threads);
    if (shared.isEmpty()) {
      return Optional.empty();
    }
    mixtures = mixtures(shared.get(), threads);
    for (int a = 0; a < tallies.length; a++) {
      tallies[a] = new RareTally(thresholds.get(a), mixtures.get(a).parts());
      pairs[a] = new PairedAmounts(mixtures.get(a).parts());
    }
    count(threads);
    return tallies[0].any().histories() == 0
        ? Optional.empty()
        : Optional.of(ranking().result(!progress.cancelled()));
  }

  private Optional<Mixture> tuned(int alternative, ExecutorService threads) {
    Workers<Biasable> workers =
        Workers.on(
            threads, settings.threads(), asked -> histories(alternative, TUNED, asked), this::over);
    return Tuning.of(workers).map(Tuning.Tuned::mixture);
  }

  private Biasable histories(int alternative, long apart, BooleanSupplier asked) {
    Alternative of = all.get(alternative);
    Biasable own = new EngineHistories(of.studio(), of.layout(), settings.seed() ^ apart);
    own.giveUpWhen(asked);
    return own;
  }

  /** The shared bias for those that it fits and serves, a tuned one for the others. */
  private List<Mixture> mixtures(Mixture shared, ExecutorService threads) {
    Biasable base = histories(0, TRIED, () -> false);
    List<Mixture> found = new ArrayList<>();
    for (int a = 0; a < all.size(); a++) {
      Biasable own = histories(a, TRIED, () -> over);
      boolean alike = own.groups() == base.groups() && own.levels() == base.levels();
      boolean serves = alike && (a == 0 || over() || serves(shared, own, a));
      Optional<Mixture> tuned = serves ? Optional.empty() : tuned(a, threads);
      Mixture otherwise = alike ? shared : shared.flat(own.groups(), own.levels());
      found.add(tuned.orElse(otherwise));
    }
    return found;
  }

  private boolean serves(Mixture shared, Biasable own, int a) {
    RareTally trial = RareTally.of(own, shared, thresholds.get(a), 0, TRIAL);
    return trial.any().trusted() && Doubt.ofDraws(trial, own).isEmpty();
  }

  private void count(ExecutorService threads) {
    Workers<Biasable[]> workers =
        Workers.on(
            threads,
            settings.threads(),
            asked -> {
              Biasable[] mine = new Biasable[all.size()];
              Arrays.setAll(mine, a -> histories(a, COUNTED, () -> over));
              return mine;
            },
            () -> false);
    OrderedChunks<BiasedChunk> chunks =
        workers.chunks(
            0,
            BiasedChunk.SIZE,
            settings.histories().orElse(Long.MAX_VALUE),
            (mine, first, count) -> BiasedChunk.simulate(mine, mixtures, thresholds, first, count));
    long nextLook = FIRST_LOOK;
    while (chunks.hasNext() && !over()) {
      Optional<BiasedChunk> chunk = chunks.next(this::over);
      if (chunk.isEmpty()) {
        return;
      }
      merge(chunk.get());
      tell();
      if (chunks.handedOut() >= nextLook && settings.histories().isEmpty()) {
        nextLook *= 2;
        if (isEnough()) {
          chunks.drop();
          return;
        }
      }
    }
  }

  private void merge(BiasedChunk chunk) {
    for (int a = 0; a < tallies.length; a++) {
      tallies[a].merge(chunk.tallies[a]);
      pairs[a].merge(chunk.pairs[a]);
    }
  }

  private boolean over() {
    over = over || progress.cancelled() || late.getAsBoolean();
    return over;
  }

  private boolean isEnough() {
    return tallies[0].any().trusted()
        && ranking().precision() <= settings.precision()
        && ranking().isFirstThreeApart();
  }

  private Ranking ranking() {
    List<Optional<String>> doubts = new ArrayList<>();
    for (int a = 0; a < tallies.length; a++) {
      doubts.add(Doubt.of(tallies[a], plain[a], histories(a, COUNTED, () -> false)));
    }
    PlainFindings pilot =
        new PlainFindings(all, settings, plain, new PairedAmounts[0], new BitSet[0]);
    return new Ranking(
        all,
        settings,
        Method.RARE,
        tallies[0].any().histories(),
        new BiasedFindings(all, settings, pilot, tallies, pairs, doubts));
  }

  private void tell() {
    progress.merged(all.get(0).id(), tallies[0].any().histories(), Double.NaN, 0.5);
  }
}
