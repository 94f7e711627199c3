package lastcopy.simulate.rare;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Loss;
import lastcopy.interval.WeightedTally;
import lastcopy.simulate.count.Counted;
import lastcopy.simulate.count.Exceedance;
import lastcopy.simulate.count.LossLedger;
import lastcopy.simulate.count.LossesNow;
import lastcopy.simulate.count.Thresholds;

/**
 * Counts what biased histories of one layout lose, each with its weight. Mutable; one thread writes
 * a chunk's tally, and chunks are merged in their order.
 *
 * <p>Hazards are not biased after the first loss of a history, so that its weight at the first loss
 * is its weight at every later one, and at the instant at which its losses cross a threshold.
 */
public final class RareTally extends LossLedger {

  final WeightedTally any;
  final WeightedTally everything;
  final WeightedTally events;
  final WeightedTally bytes;
  final WeightedTally shoots;
  final WeightedTally hits;
  final WeightedTally[] firstLossBy;
  final Exceedance bytesReached;
  final Exceedance shootsReached;

  /** Histories that lost everything, though not by their first loss. */
  Counted everythingLater = Counted.NONE;

  final Map<String, RareCause> causes = new TreeMap<>();

  /** The largest losses of a history, not weighted. */
  final LossesNow largest = new LossesNow();

  /** Histories with a loss that have no weight: then nothing here can be trusted. */
  long weightless;

  /** Unlikely draws; of no kind until histories are simulated. */
  Channels channels = new Channels(0);

  /** Told of each history that lost anything and has a weight. */
  @FunctionalInterface
  public interface Watcher {
    /**
     * A history has ended.
     *
     * @param number its number
     * @param part of the mixture that it came from
     * @param weight above 0
     * @param lost what it lost; valid during the call only
     */
    void lost(long number, int part, double weight, LossesNow lost);
  }

  private final Thresholds thresholds;
  private Watcher watcher = (number, of, weight, lost) -> {};
  private Biasable histories;
  private Mixture mixture;
  private int part;
  private final LossesNow now = new LossesNow();

  /**
   * Nothing counted yet.
   *
   * @param parts of the mixture, each a stratum
   */
  public RareTally(Thresholds thresholds, int parts) {
    this.thresholds = thresholds;
    WeightedTally[] figures = rows(6, parts);
    any = figures[0];
    everything = figures[1];
    events = figures[2];
    bytes = figures[3];
    shoots = figures[4];
    hits = figures[5];
    firstLossBy = rows(thresholds.years().length, parts);
    bytesReached = new Exceedance(thresholds.bytes(), parts);
    shootsReached = new Exceedance(thresholds.shoots(), parts);
  }

  /** Weights of histories with any loss. */
  public WeightedTally any() {
    return any;
  }

  /** Weighted bytes. */
  public WeightedTally bytes() {
    return bytes;
  }

  /** Weights of histories that had lost something by a row of {@link Thresholds#years()}. */
  public WeightedTally lossesBy(int row) {
    return firstLossBy[row];
  }

  private static WeightedTally[] rows(int count, int parts) {
    WeightedTally[] rows = new WeightedTally[count];
    Arrays.setAll(rows, i -> new WeightedTally(parts));
    return rows;
  }

  /** Simulates histories under a mixture and counts them. */
  public static RareTally of(
      Biasable histories, Mixture mixture, Thresholds thresholds, long first, int count) {
    return of(histories, mixture, thresholds, first, count, (number, of, weight, lost) -> {});
  }

  /** The same, with somebody told of each history that lost anything. */
  public static RareTally of(
      Biasable histories,
      Mixture mixture,
      Thresholds thresholds,
      long first,
      int count,
      Watcher watcher) {
    RareTally tally = new RareTally(thresholds, mixture.parts());
    tally.watcher = watcher;
    tally.channels = new Channels(histories.channels());
    tally.histories = histories;
    tally.mixture = mixture;
    int[] ofPart = new int[mixture.parts()];
    for (int i = 0; i < count; i++) {
      tally.now.clear();
      tally.part = mixture.partOf(first + i);
      histories.simulate(first + i, mixture.part(tally.part), tally);
      ofPart[tally.part]++;
      if (tally.now.events() > 0) {
        tally.end(first + i, mixture.weight(histories));
      }
      tally.channels.endHistory();
    }
    for (int part = 0; part < ofPart.length; part++) {
      tally.addHistories(part, ofPart[part]);
    }
    tally.channels.addHistories(count);
    return tally;
  }

  @Override
  public void lost(Loss loss) {
    now.add(loss);
    Cause cause = loss.cause();
    causes
        .computeIfAbsent(cause.id(), id -> new RareCause(cause.sentence()))
        .addNow(loss.bytes(), now.events() == 1);
  }

  @Override
  public void risked(int channel, double chance) {
    channels.risked(channel, chance * mixture.weight(histories));
  }

  @Override
  public void cameOutBadly(int channel) {
    channels.cameOutBadly(channel, mixture.weight(histories));
  }

  private void end(long number, double weight) {
    boolean weighs = weight < Double.POSITIVE_INFINITY;
    weightless += weighs ? 0 : 1;
    if (weighs && weight > 0) { // 0: less than any double, and nothing to any sum
      add(weight);
      watcher.lost(number, part, weight, now);
    }
    double counted = weighs ? weight : 0;
    causes.values().forEach(cause -> cause.endHistory(counted, now.events()));
  }

  private void add(double weight) {
    any.add(part, weight);
    largest.raiseTo(now);
    if (now.everything()) {
      everything.add(part, weight);
      if (!now.firstTookEverything()) {
        everythingLater = everythingLater.plus(new Counted(1, weight));
      }
    }
    events.add(part, weight * now.events());
    bytes.add(part, weight * now.bytes());
    shoots.add(part, weight * now.shoots());
    hits.add(part, weight * now.hits());
    for (int i = thresholds.firstYearWith(now.firstYears()); i < firstLossBy.length; i++) {
      firstLossBy[i].add(part, weight);
    }
    bytesReached.add(now.bytes(), now.firstBytes(), part, weight);
    shootsReached.add(now.shoots(), now.firstShoots(), part, weight);
  }

  private void addHistories(int of, int count) {
    for (WeightedTally one : new WeightedTally[] {any, everything, events, bytes, shoots, hits}) {
      one.addHistories(of, count);
    }
    for (WeightedTally row : firstLossBy) {
      row.addHistories(of, count);
    }
    bytesReached.addHistories(of, count);
    shootsReached.addHistories(of, count);
  }

  public void merge(RareTally chunk) {
    weightless += chunk.weightless;
    mergeChannels(chunk.channels);
    largest.raiseTo(chunk.largest);
    any.merge(chunk.any);
    everything.merge(chunk.everything);
    events.merge(chunk.events);
    bytes.merge(chunk.bytes);
    shoots.merge(chunk.shoots);
    hits.merge(chunk.hits);
    mergeRows(firstLossBy, chunk.firstLossBy);
    bytesReached.merge(chunk.bytesReached);
    shootsReached.merge(chunk.shootsReached);
    everythingLater = everythingLater.plus(chunk.everythingLater);
    chunk.causes.forEach(
        (id, cause) ->
            causes.computeIfAbsent(id, key -> new RareCause(cause.sentence)).merge(cause));
  }

  private void mergeChannels(Channels chunk) {
    if (channels.count() == 0) {
      channels = chunk;
    } else if (chunk.count() > 0) {
      channels.merge(chunk);
    }
  }

  private static void mergeRows(WeightedTally[] into, WeightedTally[] from) {
    for (int i = 0; i < into.length; i++) {
      into[i].merge(from[i]);
    }
  }
}
