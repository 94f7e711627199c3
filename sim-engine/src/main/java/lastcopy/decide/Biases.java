package lastcopy.decide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import lastcopy.parallel.Workers;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.simulate.rare.EngineHistories;
import lastcopy.simulate.rare.Mixture;
import lastcopy.simulate.rare.Tuning;

/**
 * Biases of candidates whose losses are rare. Those that are built alike, of as many sources of
 * luck and levels of trouble, share one that was tuned for the first of them.
 */
final class Biases {

  /** Seeds of biased histories, apart from those of plain ones. */
  private static final long TUNED = 0x510E527FADE682D1L; // fractional digits of √11, of √13

  private static final long COUNTED = 0x9B05688C2B3E6C1FL;

  /** How a candidate is built, as far as a bias tells. */
  private record Build(int groups, int levels, List<String> copies) {}

  private final Studio studio;
  private final long seed;
  private final int remembered;
  private final Map<Build, Optional<Mixture>> shared = new HashMap<>();

  Biases(Studio studio, long seed, int remembered) {
    this.studio = studio;
    this.seed = seed;
    this.remembered = remembered;
  }

  /** Histories of a candidate that can be biased and count; all candidates share their luck. */
  EngineHistories histories(Layout layout) {
    return new EngineHistories(studio, layout, seed ^ COUNTED);
  }

  private long seedOf(Layout layout) {
    return seed * 31 + layout.id().hashCode();
  }

  /**
   * Gives each a bias, or tells it that there is none.
   *
   * @return whether it came to its end
   */
  boolean tune(List<Contender> candidates, Rounds rounds) {
    List<Build> builds = new ArrayList<>();
    boolean built =
        rounds.run(
            candidates.stream().map(each -> (Rounds.Task<Build>) stop -> build(each)).toList(),
            (build, i) -> builds.add(build));
    if (!built) {
      return false;
    }
    List<Integer> tuned = tuned(candidates, builds);
    Map<Integer, Optional<Mixture>> found = new HashMap<>();
    boolean done =
        rounds.run(
            tuned.stream()
                .map(i -> (Rounds.Task<Optional<Mixture>>) stop -> tune(candidates.get(i), stop))
                .toList(),
            (mixture, i) -> found.put(tuned.get(i), mixture));
    if (done) {
      tuned.forEach(i -> shared.putIfAbsent(builds.get(i), found.get(i)));
      for (int i = 0; i < builds.size(); i++) {
        give(candidates.get(i), found.getOrDefault(i, shared.get(builds.get(i))));
      }
    }
    return done;
  }

  /** Those of which one is tuned: the first of a build, and those whom a shared one serves ill. */
  private List<Integer> tuned(List<Contender> candidates, List<Build> builds) {
    Set<Build> met = new HashSet<>(shared.keySet());
    List<Integer> tuned = new ArrayList<>();
    for (int i = 0; i < builds.size(); i++) {
      boolean first = met.add(builds.get(i));
      if (first || candidates.get(i).tunings() > 0) {
        tuned.add(i);
      }
    }
    return tuned;
  }

  private Build build(Contender candidate) {
    EngineHistories one = new EngineHistories(studio, candidate.layout, seed);
    List<String> copies = candidate.layout.copies().stream().map(Copy::id).toList();
    return new Build(one.groups(), one.levels(), copies);
  }

  private void give(Contender candidate, Optional<Mixture> mixture) {
    mixture.ifPresentOrElse(by -> candidate.bias(by, remembered), candidate::losesUnderNoBias);
  }

  private Optional<Mixture> tune(Contender candidate, BooleanSupplier stop) {
    return Tuning.of(
            Workers.alone(
                asked -> {
                  EngineHistories own =
                      new EngineHistories(
                          studio, candidate.layout, seedOf(candidate.layout) ^ TUNED);
                  own.giveUpWhen(asked);
                  return own;
                },
                stop))
        .map(Tuning.Tuned::mixture);
  }
}
