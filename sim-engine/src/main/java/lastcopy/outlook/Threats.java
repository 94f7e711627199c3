package lastcopy.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import lastcopy.outlook.Threat.Fate;
import lastcopy.outlook.Threat.Kind;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Studio;

/** Which copies of a layout are left after each kind of mishap, one at a time. */
public final class Threats {

  private static final Fate STANDS = new Threat.Stands();
  private static final Fate GOES = new Threat.Goes();
  private static final Fate UNCONCERNED = new Threat.Unconcerned();

  private final Layout layout;
  private final List<Threat> found = new ArrayList<>();

  private Threats(Layout layout) {
    this.layout = layout;
  }

  /**
   * Every kind of mishap that could strike a layout, told or not.
   *
   * @param studio to which the layout belongs
   */
  public static List<Threat> of(Studio studio, Layout layout) {
    Threats threats = new Threats(layout);
    threats.add(Kind.DRIVE, List.of(), true, Threats::afterADrive);
    threats.boxes();
    threats.places();
    threats.add(
        Kind.DELETION,
        List.of(),
        studio.desk().deletion().filter(deletion -> deletion.rate().strikes()).isPresent(),
        Threats::afterADeletion);
    threats.add(
        Kind.MALWARE,
        List.of(),
        studio.desk().malware().filter(malware -> malware.rate().strikes()).isPresent(),
        Threats::afterMalware);
    return List.copyOf(threats.found);
  }

  private void add(Kind kind, List<String> names, boolean counted, Function<Copy, Fate> fate) {
    found.add(new Threat(kind, names, counted, layout.copies().stream().map(fate).toList()));
  }

  private void boxes() {
    List<Box> boxes =
        layout.copies().stream().map(Copy::box).flatMap(Optional::stream).distinct().toList();
    for (Box box : boxes) {
      add(
          Kind.BOX,
          List.of(box.id()),
          box.rate().strikes(),
          copy -> copy.box().filter(box::equals).isPresent() ? GOES : STANDS);
    }
  }

  private void places() {
    List<Place> places = layout.copies().stream().map(Copy::place).distinct().toList();
    for (Place place : places) {
      List<String> names = new ArrayList<>();
      place.mishaps().stream().filter(m -> m.rate().strikes()).map(Mishap::id).forEach(names::add);
      boolean counted = !names.isEmpty();
      names.add(place.id());
      add(Kind.PLACE, names, counted, copy -> Objects.equals(copy.place(), place) ? GOES : STANDS);
    }
  }

  /** A shelf loses what stood on the drive that failed. */
  private static Fate afterADrive(Copy copy) {
    return copy.driveSet()
        .map(set -> set.survives() > 0 && set.arrangement() != Arrangement.SHELF ? STANDS : GOES)
        .orElse(UNCONCERNED);
  }

  /** A deletion is at once in the working copy and in what is fed without pause. */
  private static Fate afterADeletion(Copy copy) {
    boolean later = copy.feed().filter(f -> f.schedule() instanceof Feed.Every).isPresent();
    return kept(copy, later);
  }

  /** Malware is at once in the working copy and in all in reach. */
  private static Fate afterMalware(Copy copy) {
    return kept(copy, copy.feed().isPresent() && copy.reach() == Copy.Reach.OFFLINE);
  }

  private static Fate kept(Copy copy, boolean later) {
    if (copy.keepsDeletedHours() > 0) {
      return new Threat.Holds(copy.keepsDeletedHours());
    }
    return later ? new Threat.Follows() : GOES;
  }
}
