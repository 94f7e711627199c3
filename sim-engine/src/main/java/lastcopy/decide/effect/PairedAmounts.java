package lastcopy.decide.effect;

import lastcopy.interval.PairedDifferences;

/** Differences of an alternative from the layout as it is, history by history. Mutable. */
final class PairedAmounts {

  final PairedDifferences any;
  final PairedDifferences bytes;
  final PairedDifferences shoots;

  PairedAmounts(int strata) {
    any = new PairedDifferences(strata);
    bytes = new PairedDifferences(strata);
    shoots = new PairedDifferences(strata);
  }

  /** Adds one history, if the two differ in it. */
  void add(int stratum, Amounts own, Amounts base, int history) {
    any.add(stratum, own.weight[history] - base.weight[history]);
    bytes.add(stratum, own.bytes[history] - base.bytes[history]);
    shoots.add(stratum, own.shoots[history] - base.shoots[history]);
  }

  void addHistories(int stratum, long count) {
    any.addHistories(stratum, count);
    bytes.addHistories(stratum, count);
    shoots.addHistories(stratum, count);
  }

  void merge(PairedAmounts chunk) {
    any.merge(chunk.any);
    bytes.merge(chunk.bytes);
    shoots.merge(chunk.shoots);
  }
}
