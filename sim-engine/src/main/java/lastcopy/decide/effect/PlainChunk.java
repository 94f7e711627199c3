package lastcopy.decide.effect;

import java.util.BitSet;
import java.util.List;
import lastcopy.history.History;
import lastcopy.history.report.Account;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;

/** A run of plain histories of all alternatives; the first is the layout as it is. */
final class PlainChunk {

  static final int SIZE = 1_024;

  /** Histories of an alternative before it is the next one's turn: those screened together. */
  private static final int TURN = 64;

  final LossTally[] tallies;
  final PairedAmounts[] pairs;
  final BitSet[] lossy;
  final int count;

  private PlainChunk(List<Thresholds> thresholds, int count) {
    int n = thresholds.size();
    tallies = new LossTally[n];
    pairs = new PairedAmounts[n];
    lossy = new BitSet[n];
    this.count = count;
    for (int a = 0; a < n; a++) {
      tallies[a] = new LossTally(thresholds.get(a));
      pairs[a] = new PairedAmounts(1);
      lossy[a] = new BitSet(count);
    }
  }

  /** Simulates so many histories of each alternative. */
  static PlainChunk simulate(
      History[] alternatives, List<Thresholds> thresholds, long first, int count) {
    PlainChunk chunk = new PlainChunk(thresholds, count);
    Amounts[] amounts = new Amounts[alternatives.length];
    for (int a = 0; a < amounts.length; a++) {
      amounts[a] = new Amounts(count);
    }
    for (int done = 0; done < count; done += TURN) {
      for (int a = 0; a < amounts.length; a++) {
        int to = Math.min(count, done + TURN);
        chunk.simulate(alternatives[a], a, amounts[a], first, done, to);
      }
    }
    chunk.pair(amounts);
    return chunk;
  }

  private void simulate(History history, int a, Amounts amounts, long first, int from, int to) {
    LossTally tally = tallies[a];
    Both ledger = new Both(tally, amounts);
    for (int i = from; i < to; i++) {
      ledger.at = i;
      tally.begin(first + i);
      history.simulate(first + i, ledger);
      if (tally.end()) {
        lossy[a].set(i);
        amounts.weight[i] = 1;
      }
    }
  }

  private void pair(Amounts... amounts) {
    for (int a = 1; a < amounts.length; a++) {
      for (int i = 0; i < count; i++) {
        pairs[a].add(0, amounts[a], amounts[0], i);
      }
      pairs[a].addHistories(0, count);
    }
  }

  /** Tells a tally, and keeps what the history lost. */
  private static final class Both implements Ledger {
    private final LossTally tally;
    private final Amounts amounts;
    private int at;

    Both(LossTally tally, Amounts amounts) {
      this.tally = tally;
      this.amounts = amounts;
    }

    @Override
    public void lost(Loss loss) {
      amounts.bytes[at] += loss.bytes();
      amounts.shoots[at] += loss.shoots();
      tally.lost(loss);
    }

    @Override
    public void passed(
        double hours, double bare, double fragile, double down, double refill, double most) {
      tally.passed(hours, bare, fragile, down, refill, most);
    }

    @Override
    public void recovered(Cause cause, double workHours, double wholeHours) {
      tally.recovered(cause, workHours, wholeHours);
    }

    @Override
    public void paid(Account all) {
      tally.paid(all);
    }

    @Override
    public boolean wantsTime() {
      return tally.wantsTime();
    }
  }
}
