package lastcopy.decide.assumed;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
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
 * unnoticed and how long replacements take, and how fast links are. All hazards of a place are one
 * number, and so are those of a model's life at each age.
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
    copies.forEach(copy -> all.place(copy.place()));
    copies.forEach(copy -> copy.box().ifPresent(all::box));
    all.desk(studio.desk());
    layouts.forEach(layout -> layout.copies().forEach(copy -> all.copy(layout, copy)));
    return List.copyOf(all.found.values());
  }

  private void add(
      String id, String title, double value, Assumption.Unit unit, DoubleFunction<Studio> times) {
    if (value > 0 && value < Double.POSITIVE_INFINITY) {
      found.putIfAbsent(id, new Assumption(id, title, value, unit, times));
    }
  }

  private void hazard(String id, String title, Rate rate, DoubleFunction<Studio> times) {
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

  private static Copy withModel(Copy copy, String model, double factor) {
    return copy.medium() instanceof Medium.DriveSet set
        ? Scaled.on(
            copy,
            Scaled.set(
                set,
                each -> each.id().equals(model) ? Scaled.model(each, factor) : each,
                set.readErrorsPerBit()))
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

  private void time(String id, String title, double hours, DoubleFunction<Studio> times) {
    add(id, title, hours, Assumption.Unit.HOURS, times);
  }

  private void copy(Layout layout, Copy copy) {
    String id = layout.id() + "." + copy.id();
    String name = " (" + copy.id() + ")";
    Copy.Repair repair = copy.repair();
    time(
        id + ".noticed",
        "how long a failure goes unnoticed" + name,
        hours(repair.noticed()),
        f -> only(layout, copy, own -> repaired(own, Scaled.delay(repair.noticed(), f), f)));
    time(
        id + ".wait",
        "how long a replacement takes" + name,
        repair.arrival().remaining(0, HALF),
        f ->
            only(
                layout,
                copy,
                own ->
                    Scaled.repaired(
                        own,
                        new Copy.Repair(
                            repair.noticed(),
                            repair.goneNoticed(),
                            Scaled.time(repair.arrival(), f)))));
    copy.spoils()
        .ifPresent(
            of ->
                hazard(
                    id + ".spoils",
                    "how often a copy turns out unusable" + name,
                    of.rate(),
                    f ->
                        only(
                            layout,
                            copy,
                            own ->
                                Scaled.spoilt(
                                    own,
                                    new Copy.Spoils(
                                        Scaled.rate(of.rate(), f), of.triedEveryHours())))));
    medium(layout, copy, id, name);
    copy.feed().ifPresent(feed -> feed(layout, copy, feed, id, name));
  }

  private static Copy repaired(Copy copy, Delay noticed, double factor) {
    Copy.Repair old = copy.repair();
    return Scaled.repaired(
        copy, new Copy.Repair(noticed, Scaled.delay(old.goneNoticed(), factor), old.arrival()));
  }

  private static double hours(Delay delay) {
    return delay instanceof Delay.Looks looks
        ? looks.periodHours()
        : ((Delay.Lawful) delay).law().remaining(0, HALF);
  }

  private void medium(Layout layout, Copy copy, String id, String name) {
    if (copy.medium() instanceof Medium.Service of) {
      hazard(
          id + ".service",
          "how often the service loses the copy" + name,
          of.loses(),
          f ->
              only(
                  layout,
                  copy,
                  own ->
                      Scaled.on(
                          own,
                          new Medium.Service(
                              Scaled.rate(of.loses(), f),
                              of.pricePerTbMonth(),
                              of.retrievalPerTb(),
                              of.restoresInHours()))));
    } else if (copy.medium() instanceof Medium.DriveSet set) {
      add(
          id + ".read_errors",
          "bits that cannot be read" + name,
          set.readErrorsPerBit(),
          Assumption.Unit.CHANCE,
          f ->
              only(
                  layout,
                  copy,
                  own ->
                      Scaled.on(own, Scaled.set(set, each -> each, set.readErrorsPerBit() * f))));
    }
  }

  private void feed(Layout layout, Copy copy, Feed feed, String id, String name) {
    add(
        id + ".link",
        "speed of the feed's link" + name,
        feed.bytesPerSecond().orElse(0),
        Assumption.Unit.BYTES_PER_SECOND,
        f -> only(layout, copy, own -> Scaled.fed(own, Scaled.link(feed, f))));
    hazard(
        id + ".stops",
        "how often the feed stops unseen" + name,
        feed.stops(),
        f -> only(layout, copy, own -> Scaled.fed(own, stopping(feed, f))));
  }

  private static Feed stopping(Feed of, double factor) {
    return new Feed(
        of.from(),
        of.schedule(),
        of.bytesPerSecond(),
        Scaled.rate(of.stops(), factor),
        of.checkedEveryHours(),
        of.visitHours(),
        of.between(),
        of.uplink(),
        of.carried());
  }

  /** The studio with one copy of one layout changed. */
  private Studio only(Layout layout, Copy copy, UnaryOperator<Copy> change) {
    return Scaled.layouts(
        studio,
        each ->
            each.id().equals(layout.id())
                ? Scaled.copies(each, own -> own.id().equals(copy.id()) ? change.apply(own) : own)
                : each);
  }
}
