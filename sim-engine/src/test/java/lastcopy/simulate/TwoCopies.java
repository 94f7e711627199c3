package lastcopy.simulate;

import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** Studios with feeds of several kinds, for tests of other packages. */
public final class TwoCopies {

  private static final double YEARS = 3;

  private TwoCopies() {}

  /**
   * A studio whose only layout is of a kind: nightly, lagging, continuous, chain, alone, mirror.
   */
  public static Studio studio(String kind) {
    return Studios.of(
        YEARS * Units.HOURS_PER_YEAR,
        Studios.shooting(1e12, 168, 1e11, 0.1),
        Studios.layout(kind, copies(kind)));
  }

  private static CopyMaker[] copies(String kind) {
    CopyMaker main = CopyMaker.single("main", new Exponential(9_000)).arrival(new Fixed(50));
    CopyMaker far =
        CopyMaker.single("far", new Exponential(12_000)).arrival(new Fixed(90)).restores(5e7);
    return switch (kind) {
      case "nightly" -> new CopyMaker[] {main, far.nightly("main", 2, 3e6)};
      case "lagging" -> new CopyMaker[] {main, far.nightly("main", 2, 2e5)};
      case "continuous" -> new CopyMaker[] {main, far.fed("main", new Feed.Continuous(), 1e6)};
      case "chain" ->
          new CopyMaker[] {
            main,
            far.nightly("main", 2, 3e6),
            CopyMaker.single("third", new Exponential(15_000))
                .arrival(new Fixed(30))
                .restores(2e7)
                .nightly("far", 5, 2e6)
          };
      case "mirror" ->
          new CopyMaker[] {CopyMaker.markov("main", Arrangement.MIRROR, 2, 4_000, 400)};
      default -> new CopyMaker[] {main};
    };
  }
}
