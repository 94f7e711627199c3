package lastcopy.decide.assumed;

import java.util.function.UnaryOperator;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** Finds the numbers that one copy of a layout takes for granted. */
final class CopyAssumptions {

  /** The hazard that half survive. */
  private static final double HALF = StrictMath.log(2);

  private final Studio studio;
  private final Layout layout;
  private final Copy copy;
  private final Assumptions all;
  private final String id;
  private final String name;

  CopyAssumptions(Studio studio, Layout layout, Copy copy, Assumptions all) {
    this.studio = studio;
    this.layout = layout;
    this.copy = copy;
    this.all = all;
    id = layout.id() + "." + copy.id();
    name = " (" + copy.id() + ")";
  }

  /** Adds them all. */
  void add() {
    Copy.Repair repair = copy.repair();
    all.time(
        id + ".noticed",
        "how long a failure goes unnoticed" + name,
        hours(repair.noticed()),
        f -> only(own -> repaired(own, Scaled.delay(repair.noticed(), f), f)));
    all.time(
        id + ".wait",
        "how long a replacement takes" + name,
        repair.arrival().remaining(0, HALF),
        f ->
            only(
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
                all.hazard(
                    id + ".spoils",
                    "how often a copy turns out unusable" + name,
                    of.rate(),
                    f ->
                        only(
                            own ->
                                Scaled.spoilt(
                                    own,
                                    new Copy.Spoils(
                                        Scaled.rate(of.rate(), f), of.triedEveryHours())))));
    medium();
    copy.feed().ifPresent(this::feed);
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

  private void medium() {
    if (copy.medium() instanceof Medium.Service of) {
      all.hazard(
          id + ".service",
          "how often the service loses the copy" + name,
          of.loses(),
          f ->
              only(
                  own ->
                      Scaled.on(
                          own,
                          new Medium.Service(
                              Scaled.rate(of.loses(), f),
                              of.pricePerTbMonth(),
                              of.retrievalPerTb(),
                              of.restoresInHours()))));
    } else if (copy.medium() instanceof Medium.DriveSet set) {
      drives(set);
    }
  }

  private void drives(Medium.DriveSet set) {
    all.add(
        id + ".read_errors",
        "bits that cannot be read" + name,
        set.readErrorsPerBit(),
        Assumption.Unit.CHANCE,
        f -> only(own -> Scaled.on(own, Scaled.readErrors(set, f))));
    set.latentDefects()
        .ifPresent(
            law ->
                all.add(
                    id + ".latent_defects",
                    "how often a spot of a drive goes bad unseen" + name,
                    law.cumulativeHazard(Units.HOURS_PER_YEAR),
                    Assumption.Unit.HAZARD_PER_YEAR,
                    f -> only(own -> Scaled.on(own, Scaled.latentDefects(set, law, f)))));
    if (set.strain() != 1) {
      all.add(
          id + ".strain",
          "how much oftener a drive fails while another is down" + name,
          set.strain(),
          Assumption.Unit.FACTOR,
          f -> only(own -> Scaled.on(own, Scaled.strain(set, f))));
    }
  }

  private void feed(Feed feed) {
    all.add(
        id + ".link",
        "speed of the feed's link" + name,
        feed.bytesPerSecond().orElse(0),
        Assumption.Unit.BYTES_PER_SECOND,
        f -> only(own -> Scaled.fed(own, Scaled.link(feed, f))));
    all.hazard(
        id + ".stops",
        "how often the feed stops unseen" + name,
        feed.stops(),
        f -> only(own -> Scaled.fed(own, stopping(feed, f))));
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
  private Studio only(UnaryOperator<Copy> change) {
    return Scaled.layouts(
        studio,
        each ->
            each.id().equals(layout.id())
                ? Scaled.copies(each, own -> own.id().equals(copy.id()) ? change.apply(own) : own)
                : each);
  }
}
