package lastcopy.simulate;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** Makes studios for tests; times in hours, sizes in bytes. */
public final class Studios {

  static final double VAULT_BYTES = 1_000 * Units.TB;

  private Studios() {}

  /** A studio whose desk is quiet. */
  public static Studio of(double horizonHours, Footage footage, Layout... layouts) {
    return at(Desk.QUIET, horizonHours, footage, layouts);
  }

  /** A studio with mishaps at the desk. */
  static Studio at(Desk desk, double horizonHours, Footage footage, Layout... layouts) {
    return new Studio(
        "test",
        horizonHours / Units.HOURS_PER_YEAR,
        Optional.empty(),
        footage,
        desk,
        List.of(layouts));
  }

  /** A studio of one layout with a terabyte on hand that shoots nothing. */
  public static Studio archive(double horizonHours, CopyMaker... copies) {
    return of(horizonHours, onHand(Units.TB), layout("only", copies));
  }

  /** The same with so much on hand that lost clips never meet. */
  static Studio vault(double horizonHours, CopyMaker... copies) {
    return of(horizonHours, onHand(VAULT_BYTES), layout("only", copies));
  }

  /**
   * A studio that shoots every week, so that each failure of a lone drive loses something if no
   * drive fails in its first week.
   */
  static Studio shootingWeekly(double horizonHours, CopyMaker... copies) {
    return of(
        horizonHours,
        shooting(Units.TB, Units.HOURS_PER_WEEK, Units.GB, 0),
        layout("only", copies));
  }

  /** A working copy with the copies beside it. */
  static CopyMaker[] with(CopyMaker main, CopyMaker... others) {
    return Stream.concat(Stream.of(main), Arrays.stream(others)).toArray(CopyMaker[]::new);
  }

  public static Layout layout(String id, CopyMaker... copies) {
    return new Layout(
        id, id, Arrays.stream(copies).map(CopyMaker::make).toList(), OptionalDouble.empty());
  }

  /** Footage on hand and no shoot within any horizon. */
  public static Footage onHand(double bytes) {
    return shooting(bytes, 1e9, Units.TB, 0);
  }

  /** Footage on hand and a shoot at every multiple of a spacing. */
  public static Footage shooting(
      double onHand, double everyHours, double bytes, double growthPerYear) {
    return new Footage(
        onHand,
        new Shoots(everyHours, bytes, Shoots.Spacing.EVEN),
        growthPerYear,
        OptionalDouble.empty(),
        Footage.DEFAULT_CLIP_BYTES,
        OptionalDouble.empty());
  }

  /** A place with one mishap. */
  public static Place place(String id, double ratePerHour, double takes) {
    return new Place(id, List.of(new Mishap("fire", new Rate(ratePerHour), takes)));
  }
}
