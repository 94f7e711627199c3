package lastcopy.simulate.count;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lastcopy.history.report.Account;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.interval.MeanTally;

/**
 * Counts what histories of one layout lose. Mutable; one thread writes a chunk's tally, and chunks
 * are merged in their order, so that sums are the same on any number of threads.
 */
public final class LossTally implements Ledger {

  /** Exposure and cost come from the first plain histories only. */
  public static final long TIMED_HISTORIES = 20_000;

  /** Events and bytes of one cause. */
  public static final class CauseTally {
    private final String sentence;
    private long events;
    private double bytes;

    private CauseTally(String sentence) {
      this.sentence = sentence;
    }

    private void add(long moreEvents, double moreBytes) {
      events += moreEvents;
      bytes += moreBytes;
    }

    /** For a layman. */
    String sentence() {
      return sentence;
    }

    /** Loss events by this cause. */
    public long events() {
      return events;
    }

    /** Bytes lost by this cause. */
    public double bytes() {
      return bytes;
    }
  }

  private final Thresholds thresholds;
  private final long[] firstLossBy;
  private final Exceedance bytesReached;
  private final Exceedance shootsReached;
  private final MeanTally events = new MeanTally();
  private final MeanTally bytes = new MeanTally();
  private final MeanTally shoots = new MeanTally();
  private final MeanTally hits = new MeanTally();
  private final Map<String, CauseTally> causes = new TreeMap<>();
  private final TimeTally time = new TimeTally();
  private final CostTally cost = new CostTally();
  private long histories;
  private long losses;
  private long everything;

  private final List<Loss> lost = new ArrayList<>();
  private final LossesNow now = new LossesNow();
  private boolean timed;

  /** Nothing counted yet. */
  public LossTally(Thresholds thresholds) {
    this.thresholds = thresholds;
    firstLossBy = new long[thresholds.years().length];
    bytesReached = new Exceedance(thresholds.bytes(), 1);
    shootsReached = new Exceedance(thresholds.shoots(), 1);
  }

  /** A history begins. */
  public void begin(long number) {
    begin(number < TIMED_HISTORIES);
  }

  /** Begins a history of which the times are counted too, or not. */
  public void begin(boolean withTimes) {
    timed = withTimes;
    now.clear();
    lost.clear();
    time.begin();
    cost.begin();
  }

  /** Counted at the end of the history, since one that is given up counts for nothing. */
  @Override
  public void lost(Loss loss) {
    lost.add(loss);
  }

  private void count(Loss loss) {
    now.add(loss);
    Cause cause = loss.cause();
    causes.computeIfAbsent(cause.id(), id -> new CauseTally(cause.sentence())).add(1, loss.bytes());
  }

  @Override
  public void passed(
      double hours, double bare, double fragile, double away, double refill, double most) {
    time.add(bare, fragile, away, refill, most);
  }

  @Override
  public void recovered(Cause cause, double workHours, double wholeHours) {
    time.recovered(cause, workHours, wholeHours);
  }

  @Override
  public void paid(Account all) {
    cost.paid(all);
  }

  @Override
  public boolean wantsTime() {
    return timed;
  }

  /** Histories that had lost something by a row of {@link Thresholds#years()}. */
  public long lossesBy(int row) {
    return firstLossBy[row];
  }

  /** Ends a history; whether it lost anything. */
  public boolean end() {
    lost.forEach(this::count);
    histories++;
    if (timed) {
      time.endHistory();
      cost.endHistory();
    }
    if (now.events() == 0) {
      return false;
    }
    losses++;
    everything += now.everything() ? 1 : 0;
    events.add(now.events());
    bytes.add(now.bytes());
    shoots.add(now.shoots());
    hits.add(now.hits());
    for (int i = thresholds.firstYearWith(now.firstYears()); i < firstLossBy.length; i++) {
      firstLossBy[i]++;
    }
    bytesReached.add(now.bytes(), 0, 1);
    shootsReached.add(now.shoots(), 0, 1);
    return true;
  }

  /** Adds what a later chunk counted. */
  public void merge(LossTally chunk) {
    histories += chunk.histories;
    losses += chunk.losses;
    everything += chunk.everything;
    mergeMean(events, chunk.events, chunk.histories);
    mergeMean(bytes, chunk.bytes, chunk.histories);
    mergeMean(shoots, chunk.shoots, chunk.histories);
    mergeMean(hits, chunk.hits, chunk.histories);
    addAll(firstLossBy, chunk.firstLossBy);
    bytesReached.merge(chunk.bytesReached);
    shootsReached.merge(chunk.shootsReached);
    chunk.causes.forEach(
        (id, tally) ->
            causes
                .computeIfAbsent(id, key -> new CauseTally(tally.sentence))
                .add(tally.events, tally.bytes));
    time.merge(chunk.time);
    cost.merge(chunk.cost);
  }

  private static void mergeMean(MeanTally into, MeanTally from, long histories) {
    into.merge(from);
    into.addHistories(histories - from.histories());
  }

  private static void addAll(long[] into, long[] from) {
    for (int i = 0; i < into.length; i++) {
      into[i] += from[i];
    }
  }

  /** The rows that are counted. */
  public Thresholds thresholds() {
    return thresholds;
  }

  /** Histories counted. */
  public long histories() {
    return histories;
  }

  /** Histories with any loss. */
  public long losses() {
    return losses;
  }

  /** Histories in which everything was lost at some instant. */
  long everything() {
    return everything;
  }

  /** Histories with a loss by the years of a row. */
  long firstLossBy(int row) {
    return firstLossBy[row];
  }

  /** Histories by bytes lost. */
  public Exceedance bytesReached() {
    return bytesReached;
  }

  /** Histories by shoots lost. */
  public Exceedance shootsReached() {
    return shootsReached;
  }

  /** Loss events of a history. */
  MeanTally events() {
    return events;
  }

  /** Bytes lost in a history. */
  public MeanTally bytes() {
    return bytes;
  }

  /** Shoots lost in a history. */
  MeanTally shoots() {
    return shoots;
  }

  /** Shoots hit in a history. */
  MeanTally hits() {
    return hits;
  }

  /** Losses by the stable id of their cause. */
  public Map<String, CauseTally> causes() {
    return Collections.unmodifiableMap(causes);
  }

  /** What histories cost. */
  public CostTally cost() {
    return cost;
  }

  /** Exposure and interruptions. */
  public TimeTally time() {
    return time;
  }
}
