package lastcopy.decide.effect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import lastcopy.experiment.Method;
import lastcopy.experiment.NothingSimulatedException;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.history.History;
import lastcopy.interval.Proportions;
import lastcopy.parallel.OrderedChunks;
import lastcopy.parallel.Workers;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;

/**
 * Measures what changes of a layout do, all in one go: chunks of histories that all alternatives
 * have, until the first three are apart from the rest and the layout as it is, is known as
 * precisely as asked; or until a cap on histories or time.
 */
public final class EffectMeasurement {

  /** Plain histories after which it is decided whether losses are too rare for them. */
  private static final long PILOT = 20 * PlainChunk.SIZE;

  /** Fewer losses of the layout in the pilot than this, and biased histories see more. */
  private static final long COMMON = 24;

  /** The first look; each next one is at twice as many histories. */
  private static final long FIRST_LOOK = 8 * PlainChunk.SIZE;

  private final List<Alternative> all = new ArrayList<>();
  private final List<Thresholds> thresholds;
  private final Settings settings;
  private final Progress progress;
  private final long began = System.nanoTime();
  private final LossTally[] tallies;
  private final PairedAmounts[] pairs;
  private final BitSet[] lossy;
  private long merged;
  private volatile boolean over;

  private EffectMeasurement(
      Alternative base, List<Alternative> others, Settings settings, Progress progress) {
    all.add(base);
    all.addAll(others);
    this.settings = settings;
    this.progress = progress;
    thresholds = all.stream().map(each -> Thresholds.of(each.studio())).toList();
    int n = all.size();
    tallies = new LossTally[n];
    pairs = new PairedAmounts[n];
    lossy = new BitSet[n];
    for (int a = 0; a < n; a++) {
      tallies[a] = new LossTally(thresholds.get(a));
      pairs[a] = new PairedAmounts(1);
      lossy[a] = new BitSet();
    }
  }

  /**
   * Measures.
   *
   * @param base the layout as it is
   * @param others each with a change; one or more
   * @param settings when to stop; the precision is that of the layout as it is
   * @param progress told how it gets on; may cancel, then the result is not finished
   * @throws NothingSimulatedException if nothing was simulated when the time was over or somebody
   *     stopped it
   */
  public static Effects run(
      Alternative base, List<Alternative> others, Settings settings, Progress progress) {
    return new EffectMeasurement(base, others, settings, progress).run();
  }

  private Effects run() {
    if (progress.cancelled()) {
      throw new NothingSimulatedException(true);
    }
    ExecutorService threads = Workers.threads(settings.threads());
    try {
      boolean toTheEnd = plain(threads);
      if (toTheEnd && isRare()) {
        Optional<Effects> biased =
            new BiasedMeasurement(all, thresholds, tallies, settings, progress, this::isLate)
                .run(threads);
        if (biased.isPresent()) {
          return biased.get();
        }
        plain(threads);
      }
      return ranking().result(!progress.cancelled());
    } finally {
      over = true;
      threads.shutdownNow();
    }
  }

  private Ranking ranking() {
    return new Ranking(
        all,
        settings,
        Method.PLAIN,
        merged,
        new PlainFindings(all, settings, tallies, pairs, lossy));
  }

  /** Plain histories, until they say enough, or that they never will; false if it was stopped. */
  private boolean plain(ExecutorService threads) {
    Workers<History[]> workers =
        Workers.on(threads, settings.threads(), asked -> histories(), () -> false);
    OrderedChunks<PlainChunk> chunks =
        workers.chunks(
            merged,
            PlainChunk.SIZE,
            settings.histories().orElse(Long.MAX_VALUE) - merged,
            (mine, first, count) -> PlainChunk.simulate(mine, thresholds, first, count));
    boolean piloting = merged < PILOT;
    long nextLook = Math.max(FIRST_LOOK, 2 * merged);
    while (chunks.hasNext()) {
      // The first chunk is waited for, however short the time: without it there is nothing to say.
      Optional<PlainChunk> chunk = chunks.next(merged == 0 ? progress::cancelled : this::givesUp);
      if (chunk.isEmpty()) {
        if (merged == 0) {
          throw new NothingSimulatedException(progress.cancelled());
        }
        return false;
      }
      merge(chunk.get());
      tell();
      if (piloting && merged >= PILOT && isRare()) {
        chunks.drop();
        return true;
      }
      if (merged >= nextLook && settings.histories().isEmpty()) {
        nextLook *= 2;
        if (isEnough()) {
          return true;
        }
      }
      if (givesUp()) {
        return false;
      }
    }
    return true;
  }

  private History[] histories() {
    return all.stream()
        .map(each -> new History(each.studio(), each.layout(), settings.seed()))
        .peek(history -> history.giveUpWhen(() -> over))
        .toArray(History[]::new);
  }

  private void merge(PlainChunk chunk) {
    for (int a = 0; a < tallies.length; a++) {
      tallies[a].merge(chunk.tallies[a]);
      pairs[a].merge(chunk.pairs[a]);
      BitSet into = lossy[a];
      int from = Math.toIntExact(merged);
      chunk.lossy[a].stream().forEach(bit -> into.set(from + bit));
    }
    merged += chunk.count;
  }

  private boolean isRare() {
    return switch (settings.method()) {
      case PLAIN -> false;
      case RARE -> true;
      case AUTO -> tallies[0].losses() * PILOT < COMMON * merged;
    };
  }

  private boolean isEnough() {
    return Proportions.of(tallies[0].losses(), merged, settings.confidence()).relativeHalfWidth()
            <= settings.precision()
        && ranking().isFirstThreeApart();
  }

  private boolean givesUp() {
    over = progress.cancelled() || isLate();
    return over;
  }

  private boolean isLate() {
    return settings.time().isPresent()
        && System.nanoTime() - began >= settings.time().get().toNanos();
  }

  private void tell() {
    double ofTime =
        settings.time().isEmpty()
            ? 0
            : (System.nanoTime() - began) / (double) settings.time().get().toNanos();
    double ofCap =
        settings.histories().isEmpty() ? 0 : merged / (double) settings.histories().getAsLong();
    double precision =
        Proportions.of(tallies[0].losses(), merged, settings.confidence()).relativeHalfWidth();
    progress.merged(all.get(0).id(), merged, precision, Math.min(1, Math.max(ofTime, ofCap)));
  }
}
