package lastcopy.decide.assumed;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Stretched;
import lastcopy.law.Uniform;
import lastcopy.law.Weibull;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Uplink;

/** Records with one number times a factor. */
final class Scaled {

  private Scaled() {}

  /** A studio with each copy of each layout changed. */
  static Studio copies(Studio studio, UnaryOperator<Copy> change) {
    return layouts(studio, layout -> copies(layout, change));
  }

  /** A layout with each copy changed. */
  static Layout copies(Layout of, UnaryOperator<Copy> change) {
    return new Layout(
        of.id(),
        of.title(),
        of.copies().stream().map(change).toList(),
        of.cardsKeepHours(),
        of.costs());
  }

  /** A studio with each layout changed. */
  static Studio layouts(Studio studio, UnaryOperator<Layout> change) {
    return with(
        studio, studio.footage(), studio.desk(), studio.layouts().stream().map(change).toList());
  }

  static Studio desk(Studio studio, Desk desk) {
    return with(studio, studio.footage(), desk, studio.layouts());
  }

  /** A studio whose shoots grow by so many times as much a year. */
  static Studio growth(Studio studio, double factor) {
    Footage of = studio.footage();
    Footage grown =
        new Footage(
            of.onHandBytes(),
            of.shoots(),
            of.growthPerYear() * factor,
            of.keepHours(),
            of.clipBytes(),
            of.worthPerShoot());
    return with(studio, grown, studio.desk(), studio.layouts());
  }

  private static Studio with(Studio of, Footage footage, Desk desk, List<Layout> layouts) {
    return new Studio(
        of.name(), of.years(), of.currency(), of.energyPerKwh(), of.work(), footage, desk, layouts);
  }

  static Rate rate(Rate rate, double factor) {
    return new Rate(rate.perHour() * factor);
  }

  /** A time that is longer by a factor. */
  static Law time(Law law, double factor) {
    if (law instanceof Fixed fixed) {
      return new Fixed(fixed.hours() * factor);
    }
    if (law instanceof Exponential plain) {
      return new Exponential(plain.mean() * factor);
    }
    if (law instanceof Weibull w) {
      return new Weibull(w.shape(), w.scale() * factor, w.location() * factor);
    }
    if (law instanceof Uniform uniform) {
      return new Uniform(uniform.from() * factor, uniform.to() * factor);
    }
    return Stretched.of(law, 1 / factor);
  }

  static Delay delay(Delay delay, double factor) {
    return delay instanceof Delay.Looks looks
        ? new Delay.Looks(looks.periodHours() * factor)
        : new Delay.Lawful(time(((Delay.Lawful) delay).law(), factor));
  }

  static Place place(Place place, double factor) {
    return new Place(
        place.id(),
        place.mishaps().stream()
            .map(each -> new Mishap(each.id(), rate(each.rate(), factor), each.takes()))
            .toList());
  }

  static DriveModel model(DriveModel of, double factor) {
    return new DriveModel(
        of.id(),
        of.sizeBytes(),
        of.price(),
        of.owned(),
        of.powerWatts(),
        of.bytesPerSecond(),
        Stretched.of(of.fails(), factor),
        of.age(),
        of.boughtAtHours(),
        of.failsOff().map(law -> Stretched.of(law, factor)));
  }

  static Copy at(Copy of, Place place) {
    return copy(of, place, of.medium(), of.repair(), of.feed(), of.spoils());
  }

  static Copy on(Copy of, Medium medium) {
    return copy(of, of.place(), medium, of.repair(), of.feed(), of.spoils());
  }

  static Copy repaired(Copy of, Copy.Repair repair) {
    return copy(of, of.place(), of.medium(), repair, of.feed(), of.spoils());
  }

  static Copy fed(Copy of, Feed feed) {
    return copy(of, of.place(), of.medium(), of.repair(), Optional.of(feed), of.spoils());
  }

  static Copy spoilt(Copy of, Copy.Spoils spoils) {
    return copy(of, of.place(), of.medium(), of.repair(), of.feed(), Optional.of(spoils));
  }

  private static Copy copy(
      Copy of,
      Place place,
      Medium medium,
      Copy.Repair repair,
      Optional<Feed> feed,
      Optional<Copy.Spoils> spoils) {
    return new Copy(
        of.id(),
        place,
        of.box(),
        medium,
        repair,
        feed,
        of.restoresAt(),
        of.keepsDeletedHours(),
        of.reach(),
        of.startsFull(),
        spoils,
        of.rotation(),
        of.costs(),
        of.leftOut());
  }

  static Copy boxed(Copy of, Box box) {
    return new Copy(
        of.id(),
        of.place(),
        Optional.of(box),
        of.medium(),
        of.repair(),
        of.feed(),
        of.restoresAt(),
        of.keepsDeletedHours(),
        of.reach(),
        of.startsFull(),
        of.spoils(),
        of.rotation(),
        of.costs(),
        of.leftOut());
  }

  static Medium.DriveSet models(Medium.DriveSet of, UnaryOperator<DriveModel> model) {
    return set(
        of,
        of.models().stream().map(model).toList(),
        of.batch(),
        of.latentDefects(),
        of.strain(),
        of.readErrorsPerBit());
  }

  static Medium.DriveSet batch(Medium.DriveSet of, Medium.Batch batch) {
    return set(
        of,
        of.models(),
        Optional.of(batch),
        of.latentDefects(),
        of.strain(),
        of.readErrorsPerBit());
  }

  static Medium.DriveSet latentDefects(Medium.DriveSet of, Law law, double factor) {
    return set(
        of,
        of.models(),
        of.batch(),
        Optional.of(Stretched.of(law, factor)),
        of.strain(),
        of.readErrorsPerBit());
  }

  static Medium.DriveSet strain(Medium.DriveSet of, double factor) {
    return set(
        of,
        of.models(),
        of.batch(),
        of.latentDefects(),
        of.strain() * factor,
        of.readErrorsPerBit());
  }

  /** More bits than there are cannot be unreadable. */
  static Medium.DriveSet readErrors(Medium.DriveSet of, double factor) {
    return set(
        of,
        of.models(),
        of.batch(),
        of.latentDefects(),
        of.strain(),
        Math.min(1, of.readErrorsPerBit() * factor));
  }

  private static Medium.DriveSet set(
      Medium.DriveSet of,
      List<DriveModel> models,
      Optional<Medium.Batch> batch,
      Optional<Law> latentDefects,
      double strain,
      double readErrorsPerBit) {
    return new Medium.DriveSet(
        models,
        of.arrangement(),
        batch,
        of.rebuild(),
        of.replaceAtHours(),
        latentDefects,
        of.scrub(),
        strain,
        readErrorsPerBit);
  }

  /** A feed whose link, its own or a shared one, is faster by a factor. */
  static Feed link(Feed of, double factor) {
    OptionalDouble own =
        of.bytesPerSecond().isPresent()
            ? OptionalDouble.of(of.bytesPerSecond().getAsDouble() * factor)
            : OptionalDouble.empty();
    Optional<Uplink> shared =
        of.uplink()
            .map(up -> new Uplink(up.id(), up.bytesPerSecond() * factor, up.pricePerMonth()));
    return new Feed(
        of.from(),
        of.schedule(),
        own,
        of.stops(),
        of.checkedEveryHours(),
        of.visitHours(),
        of.between(),
        shared,
        of.carried());
  }
}
