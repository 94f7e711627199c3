package lastcopy.outlook.room;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.footage.ShootTable;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Room;
import lastcopy.scenario.Studio;

/**
 * Room and time of a studio, without luck; shoots are taken as evenly spaced.
 *
 * @param fill how far drives may be filled, above 0 and at most 1
 * @param steps footage to keep over time, for a picture: each step of it, or what there is at so
 *     many times that each looks like one
 * @param needs room by year, as {@link Outlook#room()}
 * @param choices numbers of drives that hold the footage: of each model in use, for 2 and 3 years
 *     and to the horizon, in each arrangement
 * @param layouts one for each layout, in their order
 */
public record RoomAndTime(
    double fill,
    List<Room.Year> steps,
    List<RoomNeed> needs,
    List<DriveChoice> choices,
    List<LayoutRoom> layouts) {

  /** How far drives are filled at most where nobody says otherwise: common practice, no source. */
  public static final double USUAL_FILL = 0.8;

  /** Copies the lists. */
  public RoomAndTime {
    steps = List.copyOf(steps);
    needs = List.copyOf(needs);
    choices = List.copyOf(choices);
    layouts = List.copyOf(layouts);
  }

  /**
   * Of a studio whose outlooks are known.
   *
   * @param fill how far drives may be filled, above 0 and at most 1
   * @param streamBytesPerSecond what one who edits reads, above 0, if asked for
   */
  public static RoomAndTime of(
      Studio studio, List<Outlook> outlooks, double fill, OptionalDouble streamBytesPerSecond) {
    ShootTable shoots = ShootTable.even(studio.footage(), studio.horizonHours());
    RoomReckoner room = new RoomReckoner(studio, shoots, fill);
    TimeReckoner time = new TimeReckoner(studio, streamBytesPerSecond);
    List<LayoutRoom> layouts =
        outlooks.stream()
            .map(
                outlook ->
                    new LayoutRoom(
                        outlook.layout().id(),
                        outlook.copies().stream().map(room::copy).toList(),
                        time.offload(outlook.layout()),
                        time.streams(outlook.layout())))
            .toList();
    return new RoomAndTime(fill, room.steps(), room.needs(), room.choices(), layouts);
  }

  /** The same with the usual fill limit, where nobody asks of streams. */
  public static RoomAndTime usual(Studio studio, List<Outlook> outlooks) {
    return of(studio, outlooks, USUAL_FILL, OptionalDouble.empty());
  }

  /** The layout of an id. */
  public LayoutRoom layout(String id) {
    return layouts.stream().filter(layout -> layout.layout().equals(id)).findFirst().orElseThrow();
  }
}
