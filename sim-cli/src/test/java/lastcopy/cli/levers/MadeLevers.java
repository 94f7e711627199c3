package lastcopy.cli.levers;

import static lastcopy.cli.compare.SampleComparison.costing;
import static lastcopy.cli.compare.SampleComparison.layout;
import static lastcopy.cli.compare.SampleComparison.seen;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lastcopy.cli.edit.ScenarioTree;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.decide.effect.Direction;
import lastcopy.decide.effect.Effects;
import lastcopy.decide.effect.MeasuredEffect;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Studio;

/** Findings whose figures are made by hand: of one drive, which 70 of 1,000 lose within 5 years. */
final class MadeLevers {

  static final String YAML =
      """
      lastcopy: 1
      studio: A
      years: 5
      currency: EUR
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 24 GB}}
      places: {studio: {mishaps: {fire: {rate: 1 %/year}}}}
      desk: {deletion: {rate: 20 %/year, size: 1 shoots, noticed: {mean: 20 days}}}
      drives: {d: {size: 12 TB, price: 200, fails: 2 %/year}}
      layouts:
        one: {title: One drive, copies: {main: {place: studio, drives: 1 x d, noticed: 1 day, wait: 2 days}}}
      """;

  static final String DAYS_90 = "deleted-kept-90-days";
  static final String DAYS_30 = "deleted-kept-30-days";
  static final String DRIVE = "one-more-copy-on-a-drive";
  static final String SERVICE = "one-more-copy-at-a-service";
  static final String MIRROR = "mirror";
  static final String SEEN = "seen-at-once";
  static final String SPARE = "spare-on-the-shelf";
  static final String HALF = "half-the-footage";

  private MadeLevers() {}

  static LayoutResult base(boolean priced) {
    LayoutResult free = layout("one", "One drive", seen(0.07, 0.002), false);
    Cost cost = new Cost(seen(500, 10), 500, 500, 500, List.of(), List.of(), 20_000);
    return costing(free, priced ? Optional.of(cost) : Optional.empty());
  }

  /** A change that so many of 1,000 more lose with, one more or less. */
  static MeasuredEffect effect(String id, double more, Optional<Estimate> cost) {
    Estimate difference = seen(more / 1_000, 0.001);
    return new MeasuredEffect(
        id,
        base(false),
        difference,
        seen(more * 1e9, 5e8),
        Optional.empty(),
        cost,
        Direction.of(difference));
  }

  static MeasuredEffect free(String id, double more) {
    return effect(id, more, Optional.of(Estimate.exact(0)));
  }

  static MeasuredEffect at(double cost, String id, double more) {
    return effect(id, more, Optional.of(seen(cost, 5)));
  }

  static LeverFindings findings(MeasuredEffect... ranked) {
    return findings(YAML, effects(base(true), List.of(), ranked), true);
  }

  static Effects effects(LayoutResult base, List<Effects.Tie> ties, MeasuredEffect... ranked) {
    return new Effects(base, List.of(ranked), ties, Method.PLAIN, 4_096, true);
  }

  static LeverFindings findings(String yaml, Effects effects, boolean finished) {
    try {
      ScenarioTree tree = ScenarioTree.parse("a.yaml", yaml);
      Studio studio = tree.scenario().studio();
      Settings settings =
          new Settings(
              7, 0.95, 0.05, OptionalLong.of(4_096), Optional.empty(), 1, effects.method());
      return new LeverFindings(
          LeverStudy.of(tree, studio, studio.layouts().get(0)),
          effects,
          Optional.empty(),
          settings,
          false,
          finished);
    } catch (ScenarioException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }
}
