package lastcopy.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Exposure;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;

/** A result made by hand: three layouts with constant yearly hazards. */
final class Sample {

  private Sample() {}

  static Comparison result() {
    return result(0.06, 0.012, 0.0012);
  }

  static Comparison result(double one, double two, double three) {
    return new Comparison(
        "Harbour Lane Films",
        5,
        Optional.of("EUR"),
        1,
        0.95,
        true,
        List.of(
            layout("one-drive", "One external drive", one),
            layout("mirror", "Two drives mirrored in one box", two),
            layout("three", "Mirror, a copy off site and a paid service", three)),
        List.of(
            new Comparison.Pair(
                "one-drive",
                "mirror",
                OptionalDouble.of(5),
                OptionalDouble.of(4),
                OptionalDouble.of(6),
                Estimate.exact(0.2),
                10_000,
                Optional.empty())));
  }

  private static LayoutResult layout(String id, String title, double hazard) {
    List<Point> curve = new ArrayList<>();
    for (int quarter = 1; quarter <= 20; quarter++) {
      curve.add(new Point(quarter / 4.0, chance(hazard * quarter / 4)));
    }
    List<Point> bytes = new ArrayList<>();
    for (int i = 0; i <= 40; i++) {
      double at = 1e9 * Math.pow(4e4, i / 40.0);
      bytes.add(new Point(at, chance(5 * hazard * (1 - Math.pow(i / 40.0, 3)))));
    }
    Estimate none = Estimate.exact(0);
    Estimate any = chance(5 * hazard);
    return new LayoutResult(
        id,
        title,
        10_000,
        Method.PLAIN,
        true,
        10_000,
        1e-4,
        any,
        any,
        any,
        none,
        none,
        none,
        Optional.empty(),
        curve,
        bytes,
        List.of(),
        List.of(),
        List.of(),
        new Exposure(none, none, none, none, none, 10_000),
        List.of(),
        Optional.empty(),
        List.of(),
        List.of());
  }

  private static Estimate chance(double mean) {
    double p = -Math.expm1(-mean);
    double half = 1.96 * Math.sqrt(p * (1 - p) / 10_000);
    return p == 0
        ? new Estimate(0, 0, 3e-4, false)
        : new Estimate(p, Math.max(0, p - half), p + half, true);
  }
}
