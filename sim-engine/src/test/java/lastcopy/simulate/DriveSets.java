package lastcopy.simulate;

import java.util.List;
import java.util.function.UnaryOperator;
import lastcopy.law.ByAge;
import lastcopy.law.Competing;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Uniform;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** Studios of two copies on sets of drives that fail often, for tests of other packages. */
public final class DriveSets {

  private static final double HOURS = 5 * Units.HOURS_PER_YEAR;

  private DriveSets() {}

  /** A studio whose working copy is on a set of a kind: of an arrangement, by law, or strained. */
  public static Studio studio(String kind) {
    return Studios.of(
        HOURS,
        Studios.shooting(1e12, 168, 1e11, 0.1),
        Studios.layout(
            kind,
            set(kind).arrival(new Uniform(0, 300)).rebuild(new Weibull(2, 100, 6)),
            CopyMaker.set("far", Arrangement.MIRROR, 2)
                .life(new Weibull(1.3, 40_000, 0))
                .arrival(new Fixed(200))
                .nightly("main", 2, 3e6)));
  }

  /** The same without another copy. */
  public static Studio alone(String kind) {
    return Studios.of(
        HOURS,
        Studios.shooting(1e12, 168, 1e11, 0.1),
        Studios.layout(kind, set(kind).arrival(new Uniform(0, 300)).rebuild(new Fixed(100))));
  }

  private static CopyMaker set(String kind) {
    UnaryOperator<CopyMaker> often = set -> set.life(new Exponential(20_000));
    return switch (kind) {
      case "parity" -> often.apply(CopyMaker.set("main", Arrangement.PARITY, 4));
      case "wide parity" -> // most of the new drives outlive the horizon
          CopyMaker.set("main", Arrangement.PARITY, 10).life(new Exponential(70_000));
      case "double parity" -> often.apply(CopyMaker.set("main", Arrangement.DOUBLE_PARITY, 6));
      case "three mirrored" -> often.apply(CopyMaker.set("main", Arrangement.MIRROR, 3));
      case "looked at" ->
          often.apply(CopyMaker.set("main", Arrangement.MIRROR, 2)).lookedAtEvery(200);
      case "aged" ->
          CopyMaker.set("main", Arrangement.MIRROR, 2)
              .life(new Weibull(2, 30_000, 0))
              .aged(new Uniform(0, 20_000));
      case "by age" ->
          CopyMaker.set("main", Arrangement.PARITY, 3).life(new ByAge(List.of(0.1, 0.3, 0.5)));
      case "never replaced" ->
          often.apply(CopyMaker.set("main", Arrangement.MIRROR, 4)).neverReplaced();
      case "stripe" -> often.apply(CopyMaker.set("main", Arrangement.STRIPE, 2));
      case "strained" -> often.apply(CopyMaker.set("main", Arrangement.MIRROR, 2)).strain(5);
      case "strained sum" ->
          CopyMaker.set("main", Arrangement.MIRROR, 3)
              .life(
                  new Competing(
                      List.of(new Weibull(0.7, 60_000, 0), new Weibull(3, 40_000, 1_000))))
              .strain(6);
      case "one batch" ->
          often.apply(CopyMaker.set("main", Arrangement.PARITY, 4)).batch("spring", 0.7).strain(2);
      case "frail batch" -> // few fail but of the frailest
          CopyMaker.set("main", Arrangement.PARITY, 10)
              .life(new Exponential(300_000))
              .batch("spring", 2);
      case "batch of a certain age" ->
          CopyMaker.set("main", Arrangement.DOUBLE_PARITY, 5)
              .life(new Weibull(2, 30_000, 0))
              .aged(new Uniform(0, 20_000))
              .boughtAt(15_000)
              .batch("spring", 2);
      case "swapped" ->
          CopyMaker.set("main", Arrangement.MIRROR, 2)
              .life(new Weibull(3, 15_000, 0))
              .aged(new Uniform(0, 4_000))
              .replacedAt(9_000);
      case "swapped by the clock" ->
          CopyMaker.set("main", Arrangement.MIRROR, 3)
              .life(new Weibull(3, 9_000, 0))
              .aged(new Fixed(3_000))
              .boughtAt(500)
              .replacedAt(9_000);
      case "fails early" -> // a second drive hardly lives longer than its repair takes
          CopyMaker.set("main", Arrangement.MIRROR, 2)
              .life(new Weibull(0.4, 200_000, 0))
              .replacedAt(40_000);
      case "strained hard" ->
          CopyMaker.set("main", Arrangement.MIRROR, 2).life(new Exponential(90_000)).strain(150);
      case "strained, unreadable" ->
          often.apply(CopyMaker.set("main", Arrangement.MIRROR, 2)).strain(0.5).readErrors(2e-15);
      case "hides spots" ->
          often
              .apply(CopyMaker.set("main", Arrangement.MIRROR, 3))
              .latentDefects(new Exponential(9_000));
      case "unreadable" ->
          often.apply(CopyMaker.set("main", Arrangement.MIRROR, 2)).readErrors(2e-15);
      case "burgled" ->
          often
              .apply(CopyMaker.set("main", Arrangement.MIRROR, 2))
              .at(Studios.place("studio", 1e-5, 0.5));
      case "shared" ->
          often
              .apply(CopyMaker.set("main", Arrangement.SINGLE, 1))
              .at(Studios.place("studio", 1e-5, 1));
      default -> throw new IllegalArgumentException(kind);
    };
  }
}
