package lastcopy.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.cli.output.Spans;
import lastcopy.law.Fixed;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.Outlook;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Units;

/** What the owner has to do so that the figures of a layout hold, each with its first date. */
final class Errands {

  private final LocalDate today;
  private final List<Errand> found = new ArrayList<>();

  private Errands(LocalDate today) {
    this.today = today;
  }

  /**
   * One of them.
   *
   * @param date when it is due first
   * @param words what is to be done
   */
  record Errand(LocalDate date, String words) {}

  /** Those of a layout, the next one first. */
  static List<Errand> of(Outlook outlook, LocalDate today) {
    Errands errands = new Errands(today);
    outlook.copies().forEach(errands::of);
    errands.found.sort(Comparator.comparing(Errand::date));
    return List.copyOf(errands.found);
  }

  private void of(CopyOutlook outlook) {
    Copy copy = outlook.copy();
    if (copy.repair().noticed() instanceof Delay.Looks looks) {
      every(looks.periodHours(), "look at every drive of " + copy.id());
    }
    copy.feed()
        .map(feed -> feed.checkedEveryHours())
        .ifPresent(look -> every(look, "look whether " + copy.id() + " is still fed"));
    OptionalDouble tried =
        copy.spoils().map(Copy.Spoils::triedEveryHours).orElse(OptionalDouble.empty());
    every(tried, "try to restore a shoot from " + copy.id());
    if (copy.feed().isPresent() && tried.isEmpty()) {
      found.add(
          new Errand(
              today,
              "restore one shoot from "
                  + copy.id()
                  + " and open it: it counts as a copy once that has worked"));
    }
    copy.rotation()
        .ifPresent(turns -> every(turns.everyHours(), "bring the next drive of " + copy.id()));
    outlook
        .fillsAtYears()
        .ifPresent(years -> at(years, "more room for " + copy.id() + ": it is full by then"));
    replacement(copy);
  }

  private void every(OptionalDouble hours, String words) {
    hours.ifPresent(period -> every(period, words));
  }

  private void every(double hours, String words) {
    found.add(
        new Errand(
            after(hours), words + ", and again every " + Spans.period(hours) + " from then on"));
  }

  private void at(double years, String words) {
    found.add(new Errand(after(years * Units.HOURS_PER_YEAR), words));
  }

  /** Of the drives whose age is known, a date for each model. */
  private void replacement(Copy copy) {
    copy.driveSet()
        .filter(set -> set.replaceAtHours().isPresent())
        .ifPresent(
            set ->
                set.kinds()
                    .forEach(
                        model -> replacement(copy, model, set.replaceAtHours().getAsDouble())));
  }

  private void replacement(Copy copy, DriveModel model, double atAge) {
    if (model.age() instanceof Fixed age) {
      found.add(
          new Errand(
              after(Math.max(0, atAge - age.hours())),
              "replace each " + model.id() + " of " + copy.id() + " by a new one"));
    }
  }

  private LocalDate after(double hours) {
    return today.plusDays((long) Math.floor(hours / Units.HOURS_PER_DAY));
  }
}
