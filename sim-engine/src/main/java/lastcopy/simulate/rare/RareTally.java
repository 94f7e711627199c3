package lastcopy.simulate.rare;

import java.util.Map;
import java.util.TreeMap;
import lastcopy.history.Cause;
import lastcopy.history.Loss;
import lastcopy.interval.WeightedTally;
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

  public final WeightedTally any = new WeightedTally();
  final WeightedTally everything = new WeightedTally();
  final WeightedTally events = new WeightedTally();
  final WeightedTally bytes = new WeightedTally();
  final WeightedTally shoots = new WeightedTally();
  final WeightedTally hits = new WeightedTally();
  final WeightedTally[] firstLossBy;
  final Exceedance bytesReached;
  final Exceedance shootsReached;
  final Map<String, RareCause> causes = new TreeMap<>();

  /** The largest losses of a history, not weighted. */
  final LossesNow largest = new LossesNow();

  /** Histories with a loss that have no weight: then nothing here can be trusted. */
  long weightless;

  /** Unlikely draws; of no kind until histories are simulated. */
  Channels channels = new Channels(0);

  private final Thresholds thresholds;
  private Biasable histories;
  private Mixture mixture;
  private final LossesNow now = new LossesNow();

  RareTally(Thresholds thresholds) {
    this.thresholds = thresholds;
    firstLossBy = rows(thresholds.years().length);
    bytesReached = new Exceedance(thresholds.bytes());
    shootsReached = new Exceedance(thresholds.shoots());
  }

  private static WeightedTally[] rows(int count) {
    WeightedTally[] rows = new WeightedTally[count];
    for (int i = 0; i < count; i++) {
      rows[i] = new WeightedTally();
    }
    return rows;
  }

  /** Simulates histories under a mixture and counts them. */
  static RareTally of(
      Biasable histories, Mixture mixture, Thresholds thresholds, long first, int count) {
    RareTally tally = new RareTally(thresholds);
    tally.channels = new Channels(histories.channels());
    tally.histories = histories;
    tally.mixture = mixture;
    for (int i = 0; i < count; i++) {
      tally.now.clear();
      histories.simulate(first + i, mixture.bias(first + i), tally);
      if (tally.now.events > 0) {
        tally.end(mixture.weight(histories));
      }
      tally.channels.endHistory();
    }
    tally.addHistories(count);
    return tally;
  }

  @Override
  public void lost(Loss loss) {
    now.add(loss);
    Cause cause = loss.cause();
    causes.computeIfAbsent(cause.id(), id -> new RareCause(cause.sentence())).addNow(loss.bytes());
  }

  @Override
  public void risked(int channel, double chance) {
    channels.risked(channel, chance * mixture.weight(histories));
  }

  @Override
  public void cameOutBadly(int channel) {
    channels.cameOutBadly(channel, mixture.weight(histories));
  }

  private void end(double weight) {
    boolean weighs = weight < Double.POSITIVE_INFINITY;
    weightless += weighs ? 0 : 1;
    if (weighs && weight > 0) { // 0: less than any double, and nothing to any sum
      add(weight);
    }
    double counted = weighs ? weight : 0;
    causes.values().forEach(cause -> cause.endHistory(counted, now.events));
  }

  private void add(double weight) {
    any.add(weight);
    largest.raiseTo(now);
    if (now.everything) {
      everything.add(weight);
    }
    events.add(weight * now.events);
    bytes.add(weight * now.bytes);
    shoots.add(weight * now.shoots);
    hits.add(weight * now.hits);
    for (int i = thresholds.firstYearWith(now.firstYears); i < firstLossBy.length; i++) {
      firstLossBy[i].add(weight);
    }
    bytesReached.add(now.bytes, weight);
    shootsReached.add(now.shoots, weight);
  }

  private void addHistories(int count) {
    channels.addHistories(count);
    for (WeightedTally one : new WeightedTally[] {any, everything, events, bytes, shoots, hits}) {
      one.addHistories(count);
    }
    for (WeightedTally row : firstLossBy) {
      row.addHistories(count);
    }
    bytesReached.addHistories(count);
    shootsReached.addHistories(count);
  }

  void merge(RareTally chunk) {
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
    chunk.causes.forEach(
        (id, cause) ->
            causes.computeIfAbsent(id, key -> new RareCause(cause.sentence)).merge(cause));
  }

  private void mergeChannels(Channels chunk) {
    if (any.histories() == 0) {
      channels = chunk;
    } else {
      channels.merge(chunk);
    }
  }

  private static void mergeRows(WeightedTally[] into, WeightedTally[] from) {
    for (int i = 0; i < into.length; i++) {
      into[i].merge(from[i]);
    }
  }
}
