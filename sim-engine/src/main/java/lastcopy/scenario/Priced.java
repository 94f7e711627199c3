package lastcopy.scenario;

import java.util.stream.Stream;

/** Whether a scenario prices anything that a layout takes, so that its cost can be told. */
public final class Priced {

  private Priced() {}

  /** Whether any layout of a studio takes something that has a price. */
  public static boolean in(Studio studio) {
    return studio.layouts().stream().anyMatch(layout -> in(studio, layout));
  }

  /** Whether a layout takes something that has a price. */
  public static boolean in(Studio studio, Layout layout) {
    boolean energy = studio.energyPerKwh().isPresent() && drawsPower(layout);
    boolean work = studio.work().pricePerHour().isPresent() && studio.work().takesTime();
    return energy
        || work
        || !layout.costs().equals(Costs.NONE)
        || layout.copies().stream().anyMatch(Priced::isPriced);
  }

  private static boolean isPriced(Copy copy) {
    return !copy.costs().equals(Costs.NONE)
        || copy.box().filter(box -> box.price().isPresent()).isPresent()
        || copy.feed().flatMap(Feed::uplink).filter(u -> u.pricePerMonth().isPresent()).isPresent()
        || (copy.medium() instanceof Medium.DriveSet set
            ? set.models().stream().anyMatch(model -> model.price().isPresent())
            : isPriced((Medium.Service) copy.medium()));
  }

  private static boolean isPriced(Medium.Service service) {
    return service.pricePerTbMonth().isPresent() || service.retrievalPerTb().isPresent();
  }

  /** Whether a drive or box of a layout is said to draw power. */
  public static boolean drawsPower(Layout layout) {
    return layout.copies().stream()
        .flatMap(
            copy ->
                Stream.concat(
                    copy.driveSet().stream()
                        .flatMap(set -> set.models().stream())
                        .map(DriveModel::powerWatts),
                    copy.box().stream().map(Box::powerWatts)))
        .anyMatch(watts -> watts.isPresent());
  }
}
