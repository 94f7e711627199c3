package lastcopy.outlook;

import java.util.OptionalDouble;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Costs;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;

/**
 * What a layout takes at the start, in money.
 *
 * @param drives those in service then, unless they are owned
 * @param boxes each once
 * @param other what else is paid once
 */
public record FirstPayments(double drives, double boxes, double other) {

  /**
   * Of a layout.
   *
   * @param onHandBytes footage at the start, which decides how many drives of a shelf are in
   *     service
   */
  public static FirstPayments of(Layout layout, double onHandBytes) {
    double drives = layout.copies().stream().mapToDouble(c -> drives(c, onHandBytes)).sum();
    double boxes =
        layout.copies().stream()
            .flatMap(copy -> copy.box().stream())
            .distinct()
            .map(Box::price)
            .flatMapToDouble(OptionalDouble::stream)
            .sum();
    double copies = layout.copies().stream().map(Copy::costs).mapToDouble(Costs::once).sum();
    return new FirstPayments(drives, boxes, layout.costs().once() + copies);
  }

  private static double drives(Copy copy, double onHandBytes) {
    int turns = copy.rotation().map(Copy.Rotation::turns).orElse(1);
    return turns * copy.driveSet().map(set -> drives(set, onHandBytes)).orElse(0.0);
  }

  /** Of a shelf those that hold what is on hand, and the first. */
  private static double drives(Medium.DriveSet set, double onHandBytes) {
    boolean shelf = set.arrangement() == Arrangement.SHELF;
    double sum = 0;
    double from = 0;
    for (int j = 0; shelf ? j == 0 || from < onHandBytes : j < set.drives(); j++) {
      DriveModel model = set.model(j);
      sum += model.owned() ? 0 : model.price().orElse(0);
      from += model.sizeBytes();
    }
    return sum;
  }

  /** All of it. */
  public double total() {
    return drives + boxes + other;
  }
}
