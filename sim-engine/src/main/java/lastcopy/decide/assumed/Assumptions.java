package lastcopy.decide.assumed;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/**
 * Finds the numbers that layouts take for granted: how often drives, places, boxes, the desk and
 * services fail, copies spoil and feeds stop, bits that cannot be read, how long things go
 * unnoticed and how long replacements take, how fast links are, how far batches differ, what strain
 * does to drives, and how much more is shot each year. All hazards of a place are one number, and
 * so are those of a model's life at each age.
 */
public final class Assumptions {

  /** The hazard that half survive. */
  private static final double HALF = StrictMath.log(2);

  private final Studio studio;
  private final Map<String, Assumption> found = new LinkedHashMap<>();

  private Assumptions(Studio studio) {
    this.studio = studio;
  }

  /** Those of some layouts of a studio, each once. */
  public static List<Assumption> of(Studio studio, List<Layout> layouts) {
    Assumptions all = new Assumptions(studio);
    List<Copy> copies = layouts.stream().flatMap(layout -> layout.copies().stream()).toList();
    copies.forEach(all::drives);
    copies.forEach(all::batch);
    copies.forEach(copy -> all.place(copy.place()));
    copies.forEach(copy -> copy.box().ifPresent(all::box));
    all.desk(studio.desk());
    all.growth();
    layouts.forEach(
        layout ->
            layout.copies().forEach(copy -> new CopyAssumptions(studio, layout, copy, all).add()));
    return List.copyOf(all.found.values());
  }

  void add(
      String id, String title, double value, Assumption.Unit unit, DoubleFunction<Studio> times) {
    if (value > 0 && value < Double.POSITIVE_INFINITY) {
      found.putIfAbsent(id, new Assumption(id, title, value, unit, times));
    }
  }

  void hazard(String id, String title, Rate rate, DoubleFunction<Studio> times) {
    double perYear = rate.perHour() * Units.HOURS_PER_YEAR;
    add(id, title, perYear, Assumption.Unit.HAZARD_PER_YEAR, times);
  }

  private void drives(Copy copy) {
    copy.driveSet().stream().flatMap(set -> set.kinds().stream()).forEach(this::model);
  }

  private void model(DriveModel model) {
    double firstYear = model.fails().cumulativeHazard(Units.HOURS_PER_YEAR);
    add(
        "drives." + model.id(),
        "how often a " + model.id() + " fails (its first year)",
        firstYear,
        Assumption.Unit.HAZARD_PER_YEAR,
        f -> Scaled.copies(studio, copy -> withModel(copy, model.id(), f)));
  }

  private void batch(Copy copy) {
    copy.driveSet()
        .flatMap(Medium.DriveSet::batch)
        .ifPresent(
            batch ->
                add(
                    "batches." + batch.name(),
                    "how far batches differ, as the spread of " + batch.name(),
                    batch.spread(),
                    Assumption.Unit.FACTOR,
                    f -> Scaled.copies(studio, own -> ofBatch(own, batch, f))));
  }

  private static Copy ofBatch(Copy copy, Medium.Batch batch, double factor) {
    return copy.medium() instanceof Medium.DriveSet set
            && set.batch().filter(own -> own.name().equals(batch.name())).isPresent()
        ? Scaled.on(
            copy, Scaled.batch(set, new Medium.Batch(batch.name(), batch.spread() * factor)))
        : copy;
  }

  private void growth() {
    add(
        "growth",
        "how much more is shot each year",
        studio.footage().growthPerYear(),
        Assumption.Unit.SHARE_PER_YEAR,
        f -> Scaled.growth(studio, f));
  }

  private static Copy withModel(Copy copy, String model, double factor) {
    return copy.medium() instanceof Medium.DriveSet set
        ? Scaled.on(
            copy,
            Scaled.models(set, each -> each.id().equals(model) ? Scaled.model(each, factor) : each))
        : copy;
  }

  private void place(Place place) {
    Rate all =
        new Rate(place.mishaps().stream().map(Mishap::rate).mapToDouble(Rate::perHour).sum());
    hazard(
        "places." + place.id(),
        "mishaps of the place " + place.id(),
        all,
        f ->
            Scaled.copies(
                studio,
                copy ->
                    copy.place().id().equals(place.id())
                        ? Scaled.at(copy, Scaled.place(copy.place(), f))
                        : copy));
  }

  private void box(Box box) {
    hazard(
        "boxes." + box.id(),
        "mishaps of the box " + box.id(),
        box.rate(),
        f ->
            Scaled.copies(
                studio,
                copy ->
                    copy.box().filter(own -> own.id().equals(box.id())).isPresent()
                        ? Scaled.boxed(copy, times(box, f))
                        : copy));
  }

  private static Box times(Box of, double factor) {
    return new Box(
        of.id(), Scaled.rate(of.rate(), factor), of.price(), of.powerWatts(), of.bytesPerSecond());
  }

  private void desk(Desk desk) {
    desk.deletion()
        .ifPresent(
            of -> {
              hazard(
                  "desk.deletion",
                  "deletions by mistake",
                  of.rate(),
                  f ->
                      deletion(
                          new Desk.Deletion(Scaled.rate(of.rate(), f), of.size(), of.noticed())));
              time(
                  "desk.deletion.noticed",
                  "how long a deletion goes unnoticed (half of them)",
                  of.noticed().remaining(0, HALF),
                  f ->
                      deletion(
                          new Desk.Deletion(of.rate(), of.size(), Scaled.time(of.noticed(), f))));
            });
    desk.malware()
        .ifPresent(
            of ->
                hazard(
                    "desk.malware",
                    "malware",
                    of.rate(),
                    f ->
                        Scaled.desk(
                            studio,
                            new Desk(
                                desk.deletion(),
                                Optional.of(
                                    new Desk.Malware(Scaled.rate(of.rate(), f), of.noticed()))))));
  }

  private Studio deletion(Desk.Deletion deletion) {
    return Scaled.desk(studio, new Desk(Optional.of(deletion), studio.desk().malware()));
  }

  void time(String id, String title, double hours, DoubleFunction<Studio> times) {
    add(id, title, hours, Assumption.Unit.HOURS, times);
  }
}
