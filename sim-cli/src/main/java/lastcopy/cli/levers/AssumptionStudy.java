package lastcopy.cli.levers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.decide.assumed.Assumption;
import lastcopy.decide.assumed.Assumptions;
import lastcopy.decide.assumed.Flip;
import lastcopy.decide.assumed.FlipSearch;
import lastcopy.decide.effect.Alternative;
import lastcopy.decide.effect.EffectMeasurement;
import lastcopy.decide.effect.Effects;
import lastcopy.experiment.NothingSimulatedException;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/**
 * Which of the numbers that a layout takes for granted matters.
 *
 * @param assumptions of the layout
 * @param effects of each at half (its id and {@link #HALF}) and at double ({@link #DOUBLE})
 * @param first of the file's layouts; empty if there is one only
 * @param second of the file's layouts
 * @param flips where the order of those two turns round, by the numbers that they take for granted
 */
record AssumptionStudy(
    List<Assumption> assumptions,
    Effects effects,
    Optional<Layout> first,
    Optional<Layout> second,
    List<Flip> flips) {

  static final String HALF = " / 2";
  static final String DOUBLE = " x 2";

  /** Measures; empty if the layout takes no number for granted, or if it was interrupted. */
  static Optional<AssumptionStudy> of(
      Studio studio, Layout layout, Settings settings, Progress progress) {
    List<Assumption> assumptions = Assumptions.of(studio, List.of(layout));
    if (assumptions.isEmpty()) {
      return Optional.empty();
    }
    List<Alternative> others = new ArrayList<>();
    for (Assumption each : assumptions) {
      others.add(alternative(each.id() + HALF, each.times().apply(0.5), layout));
      others.add(alternative(each.id() + DOUBLE, each.times().apply(2), layout));
    }
    boolean several = studio.layouts().size() > 1;
    Effects effects;
    try {
      effects =
          EffectMeasurement.run(
              new Alternative(layout.id(), studio, layout), others, settings, progress);
    } catch (NothingSimulatedException e) {
      return Optional.empty(); // what deeds do is told nevertheless
    }
    return Optional.of(
        new AssumptionStudy(
            assumptions,
            effects,
            studio.layouts().stream().findFirst().filter(each -> several),
            studio.layouts().stream().skip(1).findFirst(),
            several ? flips(studio, settings, progress) : List.of()));
  }

  private static Alternative alternative(String id, Studio studio, Layout of) {
    Layout layout =
        studio.layouts().stream()
            .filter(each -> each.id().equals(of.id()))
            .findFirst()
            .orElseThrow();
    return new Alternative(id, studio, layout);
  }

  private static List<Flip> flips(Studio studio, Settings settings, Progress progress) {
    List<Layout> two = studio.layouts().subList(0, 2);
    long until =
        settings.time().map(time -> System.nanoTime() + time.toNanos()).orElse(Long.MAX_VALUE);
    boolean timed = settings.time().isPresent();
    return FlipSearch.of(
        Assumptions.of(studio, two),
        two.get(0).id(),
        two.get(1).id(),
        settings.seed(),
        settings.confidence(),
        settings.threads(),
        () -> progress.cancelled() || (timed && System.nanoTime() - until >= 0));
  }
}
