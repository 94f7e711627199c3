package lastcopy.simulate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lastcopy.interval.Estimate;
import lastcopy.interval.MeanTally;
import lastcopy.interval.Proportions;
import lastcopy.interval.Shares;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.simulate.LayoutResult.CauseShare;
import lastcopy.simulate.LayoutResult.Point;

/** Tallies to figures with their intervals. */
final class Results {

  private Results() {}

  static Estimate anyLoss(LossTally tally, double confidence) {
    return Proportions.of(tally.losses, tally.histories, confidence);
  }

  static Estimate events(LossTally tally, double confidence) {
    return mean(tally.events, confidence, 1);
  }

  static Estimate bytes(LossTally tally, double confidence) {
    return mean(tally.bytes, confidence, tally.thresholds.mostBytes());
  }

  private static Estimate mean(MeanTally tally, double confidence, double largest) {
    return tally.estimate(confidence, Math.max(largest, tally.largest()));
  }

  static LayoutResult of(
      Studio studio, Layout layout, LossTally tally, boolean reached, double confidence) {
    double mostShoots =
        tally.thresholds.mostBytes() / studio.footage().shoots().sizeBytes()
            + studio.horizonHours() / studio.footage().shoots().everyHours();
    Estimate shoots = mean(tally.shoots, confidence, mostShoots);
    Optional<Double> worth =
        studio.footage().worthPerShoot().isPresent()
            ? Optional.of(studio.footage().worthPerShoot().getAsDouble())
            : Optional.empty();
    return new LayoutResult(
        layout.id(),
        layout.title(),
        tally.histories,
        LayoutResult.Method.PLAIN,
        reached,
        tally.histories,
        1.0 / tally.histories,
        anyLoss(tally, confidence),
        Proportions.of(tally.everything, tally.histories, confidence),
        events(tally, confidence),
        bytes(tally, confidence),
        shoots,
        mean(tally.hits, confidence, mostShoots + 1),
        worth.map(w -> times(shoots, w)),
        points(tally.thresholds.years(), tally.firstLossBy, tally.histories, 1, confidence),
        points(tally.thresholds.bytes(), tally.bytesReached, tally.histories, 1, confidence),
        points(tally.thresholds.shoots(), tally.shootsReached, tally.histories, 1, confidence),
        worth
            .map(
                w ->
                    points(
                        tally.thresholds.shoots(),
                        tally.shootsReached,
                        tally.histories,
                        w,
                        confidence))
            .orElse(List.of()),
        causes(tally, confidence),
        tally.time.exposure(studio.horizonHours(), confidence),
        tally.time.recoveries(confidence));
  }

  private static Estimate times(Estimate estimate, double factor) {
    return new Estimate(
        estimate.value() * factor,
        estimate.low() * factor,
        estimate.high() * factor,
        estimate.seen());
  }

  private static List<Point> points(
      double[] at, long[] reached, long histories, double factor, double confidence) {
    List<Point> all = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      all.add(new Point(at[i] * factor, Proportions.of(reached[i], histories, confidence)));
    }
    return all;
  }

  private static List<CauseShare> causes(LossTally tally, double confidence) {
    long events = 0;
    double bytes = 0;
    for (LossTally.CauseTally cause : tally.causes.values()) {
      events += cause.events;
      bytes += cause.bytes;
    }
    List<CauseShare> all = new ArrayList<>();
    for (var entry : tally.causes.entrySet()) {
      all.add(
          new CauseShare(
              entry.getKey(),
              tally.sentences.get(entry.getKey()),
              Shares.ofEvents(entry.getValue().events, events, confidence),
              entry.getValue().bytes / bytes));
    }
    all.sort(Comparator.comparingDouble((CauseShare c) -> -c.share().value()));
    return all;
  }
}
