package lastcopy.cli.output;

import java.util.Optional;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Studio;

/** Says that prices and powers are read and nothing is made of them. */
public final class UnusedPrices {

  private UnusedPrices() {}

  /** One sentence, if a copy of the studio has a price or a power. */
  public static Optional<String> of(Studio studio) {
    boolean any =
        studio.layouts().stream()
            .flatMap(layout -> layout.copies().stream())
            .anyMatch(UnusedPrices::isPriced);
    return any
        ? Optional.of("Prices and power are read but not used: what a layout costs is not told.")
        : Optional.empty();
  }

  private static boolean isPriced(Copy copy) {
    boolean box = copy.box().map(Box::price).filter(price -> price.isPresent()).isPresent();
    boolean medium =
        copy.medium() instanceof Medium.DriveSet set
            ? set.models().stream()
                .anyMatch(drive -> drive.price().isPresent() || drive.powerWatts().isPresent())
            : ((Medium.Service) copy.medium()).pricePerTbMonth().isPresent();
    return box || medium;
  }
}
