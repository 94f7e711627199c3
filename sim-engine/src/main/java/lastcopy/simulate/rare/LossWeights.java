package lastcopy.simulate.rare;

import java.util.Optional;
import lastcopy.history.report.Loss;
import lastcopy.interval.Estimate;
import lastcopy.interval.PairedDifferences;
import lastcopy.interval.Proportions;
import lastcopy.interval.WeightedTally;
import lastcopy.simulate.count.LossLedger;

/**
 * Counts of biased histories of one layout only whether they lose anything, each with its weight:
 * what it takes to choose among many layouts. Mutable; one thread writes a chunk's, and chunks are
 * merged in their order.
 */
public final class LossWeights extends LossLedger {

  /** What was not seen may add so much, of the chance, to its upper end. */
  private static final double TOO_MUCH = 0.1;

  /** So many losses that differ show what kinds of them there are. */
  private static final int MANY = 100;

  private final WeightedTally any;
  private final RememberedLosses remembered;
  private Channels channels = new Channels(0);
  private long weightless;
  private Biasable histories;
  private Mixture mixture;
  private boolean lost;

  /**
   * Nothing counted yet.
   *
   * @param parts of the mixture
   * @param remembered of so many of the first histories it is remembered which lose
   */
  public LossWeights(int parts, int remembered) {
    this.remembered = new RememberedLosses(remembered);
    any = new WeightedTally(parts);
  }

  /** Simulates histories under a mixture and counts them. */
  public static LossWeights of(
      Biasable histories, Mixture mixture, long first, int count, int remembered) {
    LossWeights tally = new LossWeights(mixture.parts(), remembered);
    tally.channels = new Channels(histories.channels());
    tally.histories = histories;
    tally.mixture = mixture;
    int[] ofPart = new int[mixture.parts()];
    for (int i = 0; i < count; i++) {
      tally.lost = false;
      int part = mixture.partOf(first + i);
      histories.simulate(first + i, mixture.part(part), tally);
      ofPart[part]++;
      if (tally.lost) {
        tally.end(first + i, part, mixture.weight(histories));
      }
      tally.channels.endHistory();
    }
    for (int part = 0; part < ofPart.length; part++) {
      tally.any.addHistories(part, ofPart[part]);
    }
    tally.channels.addHistories(count);
    return tally;
  }

  private void end(long number, int part, double weight) {
    if (!(weight < Double.POSITIVE_INFINITY)) {
      weightless++;
    } else if (weight > 0) {
      any.add(part, weight);
      remembered.add(number, weight);
    }
  }

  @Override
  public void lost(Loss loss) {
    lost = true;
  }

  @Override
  public void risked(int channel, double chance) {
    channels.risked(channel, chance * mixture.weight(histories));
  }

  @Override
  public void cameOutBadly(int channel) {
    channels.cameOutBadly(channel, mixture.weight(histories));
  }

  /** Adds what a later chunk counted. */
  public void merge(LossWeights chunk) {
    any.merge(chunk.any);
    remembered.append(chunk.remembered);
    weightless += chunk.weightless;
    if (channels.count() == 0) {
      channels = chunk.channels;
    } else if (chunk.channels.count() > 0) {
      channels.merge(chunk.channels);
    }
  }

  /** How many histories. */
  public long histories() {
    return any.histories();
  }

  /** How many of them lost anything. */
  public long losses() {
    return any.nonZero();
  }

  /**
   * Whether the chance may be read off: enough losses of like weight, none without a weight, and
   * little that luck has not shown.
   */
  public boolean trusted() {
    return any.nonZero() > 0
        && weightless == 0
        && any.trusted()
        && channels.missed() <= TOO_MUCH * any.mean();
  }

  /**
   * The chance of any loss, if it can be trusted.
   *
   * @param confidence in (0, 1)
   * @param limit what else is known to bound it
   */
  public Optional<Estimate> chance(double confidence, double limit) {
    return trusted()
        ? Optional.of(any.estimate(confidence, limit).upTo(channels.missed()).within(0, 1))
        : Optional.empty();
  }

  /**
   * How much higher the chance is than that of another layout, at most, by histories of the same
   * numbers: the mean difference of their weights. Where hardly a loss differs, it may be that none
   * that does was seen: of so many effective losses none did.
   *
   * @param errorRate the chance that it is more, in (0, 1)
   * @return infinite if either is not trusted
   */
  public double excessOver(LossWeights other, double errorRate) {
    if (!trusted() || !other.trusted()) {
      return Double.POSITIVE_INFINITY;
    }
    long both = Math.min(histories(), other.histories());
    int first = (int) Math.min(both, Math.min(remembered.most(), other.remembered.most()));
    PairedDifferences differences = remembered.less(other.remembered, first);
    double unseen = any.mean() * Proportions.upperOfNone((long) any.effective(), errorRate / 2);
    double high = differences.estimate(errorRate, 0).high();
    return high + channels.missed() + (differences.seen() < MANY ? unseen : 0);
  }

  /**
   * Whether histories as they fall contradict these: so that one of the two is wrong.
   *
   * @param losses of so many histories
   * @param sure the confidence of both intervals, which then are apart
   */
  public boolean contradicts(long losses, long plain, double sure) {
    Estimate seen = Proportions.of(losses, plain, sure);
    return chance(sure, 1)
        .filter(of -> seen.low() > of.high() || of.low() > seen.high())
        .isPresent();
  }
}
