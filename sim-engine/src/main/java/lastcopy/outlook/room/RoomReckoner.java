package lastcopy.outlook.room;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lastcopy.footage.ShootTable;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.Room;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** Works out how much room there has to be, of what drives, and when. */
final class RoomReckoner {

  /** Room is bought for so many years ahead: common practice, no source. */
  private static final double[] AHEAD = {2, 3};

  /** More steps than these cannot be told apart in a picture. */
  private static final int STEPS = 1_500;

  private final Studio studio;
  private final ShootTable shoots;
  private final FootageCourse course;
  private final FootageCourse ofShelves;
  private final double fill;

  RoomReckoner(Studio studio, ShootTable shoots, double fill) {
    this.studio = studio;
    this.shoots = shoots;
    this.course = FootageCourse.of(studio.footage(), shoots, false);
    this.ofShelves = FootageCourse.of(studio.footage(), shoots, true);
    this.fill = fill;
  }

  /** At the start, at the end of each whole year, and at the horizon. */
  List<RoomNeed> needs() {
    List<RoomNeed> needs = new ArrayList<>();
    for (int year = 0; year < studio.years(); year++) {
      needs.add(need(year));
    }
    needs.add(need(studio.years()));
    return needs;
  }

  /** Footage to keep over time: what it is from each of its steps on, as far as can be seen. */
  List<Room.Year> steps() {
    double horizon = studio.horizonHours();
    double keep = studio.footage().keepHours().orElse(Double.POSITIVE_INFINITY);
    double[] changes =
        DoubleStream.concat(
                DoubleStream.of(0, keep),
                IntStream.range(0, shoots.count())
                    .mapToDouble(shoots::time)
                    .flatMap(time -> DoubleStream.of(time, time + keep)))
            .filter(time -> time <= horizon)
            .sorted()
            .distinct()
            .toArray();
    double[] times =
        changes.length <= STEPS
            ? changes
            : IntStream.range(0, STEPS).mapToDouble(i -> horizon * i / (STEPS - 1)).toArray();
    return DoubleStream.of(times)
        .mapToObj(time -> new Room.Year(time / Units.HOURS_PER_YEAR, course.at(time)))
        .toList();
  }

  private RoomNeed need(double years) {
    double most = course.most(years * Units.HOURS_PER_YEAR);
    return new RoomNeed(years, most, most / fill);
  }

  /** Of each model that a layout uses, in the order in which they first stand. */
  List<DriveChoice> choices() {
    List<DriveModel> models =
        studio.layouts().stream()
            .flatMap(layout -> layout.copies().stream())
            .flatMap(copy -> copy.driveSet().stream())
            .flatMap(set -> set.kinds().stream())
            .distinct()
            .toList();
    List<DriveChoice> choices = new ArrayList<>();
    for (DriveModel model : models) {
      for (double years : ahead()) {
        for (Arrangement arrangement : Arrangement.values()) {
          choices.add(choice(model, arrangement, years));
        }
      }
    }
    return choices;
  }

  private double[] ahead() {
    return DoubleStream.concat(
            DoubleStream.of(AHEAD).filter(years -> years < studio.years()),
            DoubleStream.of(studio.years()))
        .toArray();
  }

  private DriveChoice choice(DriveModel model, Arrangement arrangement, double years) {
    double most = course(arrangement).most(years * Units.HOURS_PER_YEAR);
    return new DriveChoice(
        model, arrangement, years, arrangement.drivesFor(most, fill * model.sizeBytes()));
  }

  private FootageCourse course(Arrangement arrangement) {
    return arrangement == Arrangement.SHELF ? ofShelves : course;
  }

  /** Room and ways of a copy. */
  CopyRoom copy(CopyOutlook outlook) {
    List<DriveDue> dues =
        outlook
            .copy()
            .driveSet()
            .map(set -> new DriveCalendar(set, course(set.arrangement()), fill).dues())
            .orElse(List.of());
    return new CopyRoom(
        outlook.copy().id(), dues, outlook.ways().stream().map(WayLimit::of).toList());
  }
}
