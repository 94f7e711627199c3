package lastcopy.worlds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lastcopy.scenario.Layout;
import lastcopy.simulate.count.Caveats;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import lastcopy.simulate.rare.Mixture;
import lastcopy.simulate.rare.RareTally;

/** What was simulated of one layout so far, by replicate and by world. Mutable. */
final class LayoutRun {

  final int index;
  final Layout layout;
  private final Thresholds thresholds;
  private final LossTally[] plain = new LossTally[WorldPoints.REPLICATES];
  private final List<WorldCounts> worlds = new ArrayList<>();
  private List<WorldCounts> pilot = worlds;
  private RareTally[] rare;
  private Mixture mixture;
  boolean active = true;
  boolean reached;
  boolean neverLost;
  Caveats caveats = Caveats.NONE;

  /** How precise it was when it was last looked at, and how far on its way. */
  double precision = Double.POSITIVE_INFINITY;

  double share;

  LayoutRun(int index, Layout layout, Thresholds thresholds) {
    this.index = index;
    this.layout = layout;
    this.thresholds = thresholds;
    Arrays.setAll(plain, r -> new LossTally(thresholds));
  }

  /** From now on it is simulated under a bias; what plain histories lost no longer counts. */
  void bias(Mixture by) {
    mixture = by;
    rare = new RareTally[WorldPoints.REPLICATES];
    Arrays.setAll(rare, r -> new RareTally(thresholds, by.parts()));
    pilot = new ArrayList<>(worlds);
    worlds.clear();
  }

  /** Its biased histories are dropped; plain ones go on. */
  void unbias() {
    mixture = null;
    rare = null;
    worlds.clear();
  }

  boolean isBiased() {
    return rare != null;
  }

  /** The bias under which it is simulated, if any. */
  Optional<Mixture> mixture() {
    return Optional.ofNullable(mixture);
  }

  /** Adds what was simulated in a world. */
  void add(int row, int replicate, double[] point, LossTally tally) {
    plain[replicate].merge(tally);
    world(row, replicate, point).add(tally);
  }

  /** Adds what was simulated in a world under the bias. */
  void add(int row, int replicate, double[] point, RareTally tally) {
    rare[replicate].merge(tally);
    world(row, replicate, point).add(tally);
  }

  private WorldCounts world(int row, int replicate, double[] point) {
    int number = row * WorldPoints.REPLICATES + replicate;
    while (worlds.size() <= number) {
      worlds.add(null);
    }
    if (worlds.get(number) == null) {
      worlds.set(number, new WorldCounts(point, replicate, thresholds.years().length));
    }
    return worlds.get(number);
  }

  /** The worlds that were simulated. */
  List<WorldCounts> worlds() {
    return worlds.stream().filter(world -> world != null).toList();
  }

  /** The worlds of the pilot, if its histories told what they cost. */
  List<WorldCounts> pricedWorlds() {
    return pilot.stream().filter(world -> world != null && world.isPriced()).toList();
  }

  /** Histories that count. */
  long counted() {
    long sum = 0;
    for (int r = 0; r < plain.length; r++) {
      sum += rare == null ? plain[r].histories() : rare[r].any().histories();
    }
    return sum;
  }

  /** How many equal histories with a loss there are. */
  double effective() {
    return rareTotal().map(tally -> tally.any().effective()).orElseGet(() -> (double) losses());
  }

  private long losses() {
    return Arrays.stream(plain).mapToLong(LossTally::losses).sum();
  }

  /** Histories with a loss, in the replicate that has the fewest. */
  double fewestLosses() {
    long fewest = Long.MAX_VALUE;
    for (int r = 0; r < plain.length; r++) {
      fewest = Math.min(fewest, rare == null ? plain[r].losses() : rare[r].any().nonZero());
    }
    return fewest;
  }

  /** Plain histories of all replicates. */
  LossTally plainTotal() {
    LossTally all = new LossTally(thresholds);
    for (LossTally one : plain) {
      all.merge(one);
    }
    return all;
  }

  /** Biased histories of all replicates, if there are any. */
  Optional<RareTally> rareTotal() {
    if (rare == null) {
      return Optional.empty();
    }
    RareTally all = new RareTally(thresholds, mixture.parts());
    for (RareTally one : rare) {
      all.merge(one);
    }
    return Optional.of(all);
  }

  /** The row of the curve that is the horizon's. */
  int lastRow() {
    return thresholds.years().length - 1;
  }

  /** The years of a row of the curve. */
  double years(int row) {
    return thresholds.years()[row];
  }

  LossTally plain(int replicate) {
    return plain[replicate];
  }

  Optional<RareTally> rare(int replicate) {
    return rare == null ? Optional.empty() : Optional.of(rare[replicate]);
  }
}
