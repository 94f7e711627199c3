package lastcopy.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lastcopy.outlook.Omission.Kind;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;

/**
 * Looks for what a studio's scenario says nothing about; a rule for each kind of omission. A rate
 * that is stated as 0 is not left out.
 */
public final class Omissions {

  private final Studio studio;
  private final List<Omission> found = new ArrayList<>();

  private Omissions(Studio studio) {
    this.studio = studio;
  }

  /** What is left out, the worst first. */
  public static List<Omission> of(Studio studio) {
    Omissions rules = new Omissions(studio);
    rules.mishapsOfPlaces();
    rules.deletion();
    rules.malware();
    rules.failures();
    rules.unusableCopies();
    rules.unreadableBits();
    rules.sharedFate();
    rules.found.sort(Comparator.comparing(Omission::kind));
    return List.copyOf(rules.found);
  }

  /** Where a service keeps its copy is its own affair: its rate counts that. */
  private void mishapsOfPlaces() {
    List<Place> places =
        copies().filter(copy -> copy.driveSet().isPresent()).map(Copy::place).distinct().toList();
    List<String> quiet =
        places.stream().filter(place -> place.mishaps().isEmpty()).map(Place::id).toList();
    if (quiet.isEmpty()) {
      return;
    }
    found.add(
        quiet.size() == places.size()
            ? new Omission(Kind.PLACE_MISHAPS, List.of())
            : new Omission(Kind.MISHAPS_OF_SOME_PLACES, quiet));
  }

  private void deletion() {
    studio
        .desk()
        .deletion()
        .ifPresentOrElse(
            deletion -> timeOf(Kind.DELETION_SEEN_AT_ONCE, deletion.rate(), deletion.stated()),
            () -> found.add(new Omission(Kind.DELETION, List.of())));
  }

  private void malware() {
    studio
        .desk()
        .malware()
        .ifPresentOrElse(
            malware -> timeOf(Kind.MALWARE_SEEN_AT_ONCE, malware.rate(), malware.stated()),
            () -> found.add(new Omission(Kind.MALWARE, List.of())));
  }

  private void timeOf(Kind kind, Rate rate, boolean stated) {
    if (rate.strikes() && !stated) {
      found.add(new Omission(kind, List.of()));
    }
  }

  private void failures() {
    Stream<Kind> kinds = Stream.of(Kind.FAILURES_SEEN_AT_ONCE, Kind.REPLACED_AT_ONCE);
    kinds.forEach(
        kind -> {
          Copy.LeftOut key =
              kind == Kind.REPLACED_AT_ONCE ? Copy.LeftOut.WAIT : Copy.LeftOut.NOTICED;
          copiesLacking(kind, copy -> true, copy -> copy.leftOut().contains(key));
        });
  }

  /** The working copy is used every day: that it is unusable would be seen. */
  private void unusableCopies() {
    copiesLacking(Kind.SPOILS, copy -> copy.feed().isPresent(), copy -> copy.spoils().isEmpty());
  }

  private void unreadableBits() {
    copiesLacking(
        Kind.READ_ERRORS,
        copy -> copy.driveSet().isPresent(),
        copy ->
            copy.leftOut().contains(Copy.LeftOut.READ_ERRORS)
                && copy.driveSet().flatMap(Medium.DriveSet::latentDefects).isEmpty());
  }

  /** Of the copies that could have it, those of which nothing is said. */
  private void copiesLacking(Kind kind, Predicate<Copy> could, Predicate<Copy> lacks) {
    List<Copy> all = copies().filter(could).toList();
    List<Copy> lacking = all.stream().filter(lacks).toList();
    if (!lacking.isEmpty()) {
      List<String> names = lacking.stream().map(Copy::id).distinct().toList();
      found.add(new Omission(kind, lacking.size() == all.size() ? List.of() : names));
    }
  }

  /** A file that names a batch anywhere says by that which drives are of none. */
  private void sharedFate() {
    boolean several = studio.layouts().stream().anyMatch(layout -> drives(layout) > 1);
    boolean said = copies().anyMatch(c -> c.driveSet().flatMap(Medium.DriveSet::batch).isPresent());
    if (several && !said) {
      found.add(new Omission(Kind.BATCH, List.of()));
    }
  }

  private static int drives(Layout layout) {
    return layout.copies().stream().mapToInt(Omissions::drives).sum();
  }

  private static int drives(Copy copy) {
    int turns = copy.rotation().map(Copy.Rotation::turns).orElse(1);
    return turns * copy.driveSet().map(Medium.DriveSet::drives).orElse(0);
  }

  private Stream<Copy> copies() {
    return studio.layouts().stream().flatMap(layout -> layout.copies().stream());
  }
}
