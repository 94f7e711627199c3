package lastcopy.simulate.count;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.interval.MeanTally;

/**
 * Counts what histories of one layout lose. Mutable; one thread writes a chunk's tally, and chunks
 * are merged in their order, so that sums are the same on any number of threads.
 */
public final class LossTally implements Ledger {

  /** Exposure comes from the first plain histories only. */
  public static final long TIMED_HISTORIES = 20_000;

  /** Events and bytes of one cause. */
  public static final class CauseTally {
    public long events;
    public double bytes;
  }

  public final Thresholds thresholds;
  final long[] firstLossBy;
  public final Exceedance bytesReached;
  public final Exceedance shootsReached;
  final MeanTally events = new MeanTally();
  public final MeanTally bytes = new MeanTally();
  final MeanTally shoots = new MeanTally();
  final MeanTally hits = new MeanTally();
  public final Map<String, CauseTally> causes = new TreeMap<>();
  final Map<String, String> sentences = new TreeMap<>();
  public final TimeTally time = new TimeTally();
  public long histories;
  public long losses;
  long everything;

  private final List<Loss> lost = new ArrayList<>();
  private final LossesNow now = new LossesNow();
  private boolean timed;

  public LossTally(Thresholds thresholds) {
    this.thresholds = thresholds;
    firstLossBy = new long[thresholds.years().length];
    bytesReached = new Exceedance(thresholds.bytes(), 1);
    shootsReached = new Exceedance(thresholds.shoots(), 1);
  }

  public void begin(long number) {
    timed = number < TIMED_HISTORIES;
    now.clear();
    lost.clear();
    time.begin();
  }

  /** Counted at the end of the history, since one that is given up counts for nothing. */
  @Override
  public void lost(Loss loss) {
    lost.add(loss);
  }

  private void count(Loss loss) {
    now.add(loss);
    Cause cause = loss.cause();
    CauseTally tally = causes.computeIfAbsent(cause.id(), id -> new CauseTally());
    sentences.putIfAbsent(cause.id(), cause.sentence());
    tally.events++;
    tally.bytes += loss.bytes();
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
  public boolean wantsTime() {
    return timed;
  }

  /** Ends a history; whether it lost anything. */
  public boolean end() {
    lost.forEach(this::count);
    histories++;
    if (timed) {
      time.endHistory();
    }
    if (now.events == 0) {
      return false;
    }
    losses++;
    everything += now.everything ? 1 : 0;
    events.add(now.events);
    bytes.add(now.bytes);
    shoots.add(now.shoots);
    hits.add(now.hits);
    for (int i = thresholds.firstYearWith(now.firstYears); i < firstLossBy.length; i++) {
      firstLossBy[i]++;
    }
    bytesReached.add(now.bytes, 0, 1);
    shootsReached.add(now.shoots, 0, 1);
    return true;
  }

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
        (id, tally) -> {
          CauseTally mine = causes.computeIfAbsent(id, key -> new CauseTally());
          mine.events += tally.events;
          mine.bytes += tally.bytes;
        });
    chunk.sentences.forEach(sentences::putIfAbsent);
    time.merge(chunk.time);
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
}
