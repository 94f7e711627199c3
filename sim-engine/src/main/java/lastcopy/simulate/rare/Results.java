package lastcopy.simulate.rare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.simulate.count.Caveats;
import lastcopy.simulate.count.Figures;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.PlainFigures;
import lastcopy.simulate.count.Thresholds;

/** Tallies of a layout to figures with their intervals. */
public final class Results {

  private final Studio studio;
  private final Layout layout;
  private final double confidence;

  public Results(Studio studio, Layout layout, double confidence) {
    this.studio = studio;
    this.layout = layout;
    this.confidence = confidence;
  }

  public PlainFigures figures(LossTally tally) {
    return figures(tally, false);
  }

  private PlainFigures figures(LossTally tally, boolean withUnseen) {
    double most =
        tally.thresholds().mostBytes() / studio.footage().shoots().sizeBytes()
            + studio.horizonHours() / studio.footage().shoots().everyHours();
    return new PlainFigures(tally, most, confidence, withUnseen);
  }

  /** Figures of biased histories; what was never seen is not in them. */
  public RareFigures figures(LossTally plain, RareTally rare, boolean doubted) {
    return figures(plain, rare, doubted, false);
  }

  /** Figures as they are told: what was never seen is in the upper ends of means. */
  public Figures told(LossTally plain, Optional<RareTally> rare, boolean doubted) {
    return rare.isPresent() ? figures(plain, rare.get(), doubted, true) : figures(plain, true);
  }

  private RareFigures figures(
      LossTally plain, RareTally rare, boolean doubted, boolean withUnseen) {
    return new RareFigures(rare, figures(plain, withUnseen), doubted, confidence);
  }

  /** The result of plain histories. */
  public LayoutResult plain(LossTally tally, boolean reached, Caveats caveats) {
    return of(
        tally,
        figures(tally, true),
        new Made(
            Method.PLAIN,
            tally.histories(),
            reached,
            tally.histories(),
            1.0 / tally.histories(),
            caveats));
  }

  /** The result of biased histories; exposure and recoveries come from the plain ones. */
  public LayoutResult rare(LossTally plain, RareTally rare, boolean reached, Caveats caveats) {
    return of(
        plain,
        figures(plain, rare, !caveats.doubts().isEmpty(), true),
        new Made(
            Method.RARE,
            rare.any.histories(),
            reached,
            rare.any.effective(),
            rare.any.largestShare(),
            caveats));
  }

  /** How a result was made. */
  public record Made(
      Method method,
      long histories,
      boolean reached,
      double effective,
      double largestShare,
      Caveats caveats) {}

  private LayoutResult of(LossTally plain, Figures figures, Made made) {
    return of(
        plain,
        figures,
        plain.time().exposure(studio.horizonHours(), confidence),
        plain.cost().cost(confidence),
        made);
  }

  /** The result of figures; recoveries come from the plain histories. */
  public LayoutResult of(
      LossTally plain,
      Figures figures,
      LayoutResult.Exposure exposure,
      Optional<Cost> cost,
      Made made) {
    Thresholds rows = plain.thresholds();
    Estimate shoots = mean(figures.shootsLost());
    List<Point> reached = chances(figures.shootsReached());
    Optional<Double> worth =
        studio.footage().worthPerShoot().isPresent()
            ? Optional.of(studio.footage().worthPerShoot().getAsDouble())
            : Optional.empty();
    return new LayoutResult(
        layout.id(),
        layout.title(),
        made.histories,
        made.method,
        made.reached,
        made.effective,
        made.largestShare,
        chance(figures.anyLoss()),
        chance(figures.everythingLost()),
        mean(figures.lossEvents()),
        mean(figures.bytesLost()),
        shoots,
        mean(figures.shootsHit()),
        worth.map(w -> times(shoots, w)),
        points(rows.years(), figures::firstLossBy),
        chances(figures.bytesReached()),
        reached,
        worth.map(w -> times(reached, w)).orElse(List.of()),
        figures.causes(),
        exposure,
        plain.time().recoveries(confidence),
        cost,
        made.caveats.doubts(),
        made.caveats.notes());
  }

  /** Weights may put a chance, or an end of its interval, above 1. */
  private static Estimate chance(Estimate estimate) {
    return estimate.within(0, 1);
  }

  private static Estimate mean(Estimate estimate) {
    return estimate.within(0, Double.POSITIVE_INFINITY);
  }

  private static Estimate times(Estimate estimate, double factor) {
    return new Estimate(
        estimate.value() * factor,
        estimate.low() * factor,
        estimate.high() * factor,
        estimate.seen());
  }

  private static List<Point> chances(List<Point> points) {
    return points.stream().map(p -> new Point(p.at(), chance(p.chance()))).toList();
  }

  private static List<Point> times(List<Point> points, double factor) {
    return points.stream().map(p -> new Point(p.at() * factor, p.chance())).toList();
  }

  private static List<Point> points(double[] at, IntFunction<Estimate> chance) {
    List<Point> all = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      all.add(new Point(at[i], chance(chance.apply(i))));
    }
    return all;
  }
}
