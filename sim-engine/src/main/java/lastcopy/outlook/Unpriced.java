package lastcopy.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Priced;
import lastcopy.scenario.Studio;

/**
 * Something that layouts of a studio take and that costs nothing since the scenario does not price
 * it, where it prices anything.
 *
 * @param kind what
 * @param which by name: models, boxes, or copies on services; empty for energy and work
 */
public record Unpriced(Kind kind, List<String> which) {

  /** What may be left without a price; each has a stable name, its own in small letters. */
  public enum Kind {
    /** Models of drive. */
    DRIVES,
    /** Enclosures. */
    BOXES,
    /** Services. */
    SERVICES,
    /** Energy, or what draws it. */
    POWER,
    /** The owner's own time. */
    WORK
  }

  /** Copies the list. */
  public Unpriced {
    which = List.copyOf(which);
  }

  /** What has no price in a studio, in the order of the kinds; empty if nothing at all has one. */
  public static List<Unpriced> of(Studio studio) {
    List<Unpriced> found = new ArrayList<>();
    if (Priced.in(studio)) {
      add(found, Kind.DRIVES, models(studio).filter(m -> m.price().isEmpty()).map(DriveModel::id));
      add(found, Kind.BOXES, boxes(studio).filter(b -> b.price().isEmpty()).map(Box::id));
      add(found, Kind.SERVICES, services(studio));
      power(studio).ifPresent(found::add);
      work(studio).ifPresent(found::add);
    }
    return found;
  }

  private static void add(List<Unpriced> found, Kind kind, Stream<String> names) {
    List<String> all = names.distinct().toList();
    if (!all.isEmpty()) {
      found.add(new Unpriced(kind, all));
    }
  }

  private static Stream<Copy> copies(Studio studio) {
    return studio.layouts().stream().map(Layout::copies).flatMap(List::stream);
  }

  private static Stream<DriveModel> models(Studio studio) {
    return copies(studio).flatMap(c -> c.driveSet().stream()).flatMap(set -> set.kinds().stream());
  }

  private static Stream<Box> boxes(Studio studio) {
    return copies(studio).flatMap(copy -> copy.box().stream());
  }

  private static Stream<String> services(Studio studio) {
    return copies(studio)
        .filter(
            copy ->
                copy.medium() instanceof Medium.Service service
                    && service.pricePerTbMonth().isEmpty())
        .map(Copy::id);
  }

  private static Optional<Unpriced> power(Studio studio) {
    List<String> silent =
        Stream.concat(
                models(studio).filter(m -> m.powerWatts().isEmpty()).map(DriveModel::id),
                boxes(studio).filter(b -> b.powerWatts().isEmpty()).map(Box::id))
            .distinct()
            .toList();
    boolean anyDraws = studio.layouts().stream().anyMatch(Priced::drawsPower);
    if (studio.energyPerKwh().isEmpty() || !anyDraws) {
      return Optional.of(new Unpriced(Kind.POWER, List.of()));
    }
    return silent.isEmpty() ? Optional.empty() : Optional.of(new Unpriced(Kind.POWER, silent));
  }

  private static Optional<Unpriced> work(Studio studio) {
    boolean priced = studio.work().pricePerHour().isPresent() && studio.work().takesTime();
    return priced ? Optional.empty() : Optional.of(new Unpriced(Kind.WORK, List.of()));
  }
}
