package lastcopy.prove;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.NothingSimulatedException;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;
import lastcopy.simulate.Simulation;

/**
 * Works through checks. A simulated figure agrees unless its reference lies outside of an interval
 * so wide that a sound engine fails one line of the whole list with the stated alarm rate: each of
 * n simulated lines has the confidence 1 − alarm/n (Bonferroni).
 *
 * @param seed of all luck
 * @param threads at least 1
 */
public record Proof(long seed, int threads) {

  /** How often a sound engine fails on some line of the whole list, over seeds, at most. */
  public static final double ALARM_RATE = 1e-4;

  private static final double SHOWN = 0.95;

  /** The findings, in the order of the checks. */
  public List<Finding> of(List<Check> checks) {
    return of(checks, finding -> {}, Progress.SILENT);
  }

  /**
   * The findings, in the order of the checks.
   *
   * @param done told each finding as soon as it is there
   * @param progress may stop the proof; then only what was found by then is given back
   */
  public List<Finding> of(List<Check> checks, Consumer<Finding> done, Progress progress) {
    long simulated = checks.stream().filter(c -> c.figure() instanceof Figure.Simulated).count();
    double confidence = 1 - ALARM_RATE / Math.max(1, simulated);
    List<Finding> findings = new ArrayList<>();
    for (Check check : checks) {
      Optional<Finding> finding = findUnlessStopped(check, confidence, progress);
      if (finding.isEmpty()) {
        break;
      }
      findings.add(finding.get());
      done.accept(finding.get());
    }
    return findings;
  }

  /** Whether all hold. */
  public static boolean holds(List<Finding> findings) {
    return findings.stream().allMatch(Finding::holds);
  }

  /** Nothing if it was stopped: fewer histories than a line takes are no finding. */
  private Optional<Finding> findUnlessStopped(Check check, double confidence, Progress progress) {
    if (progress.cancelled()) {
      return Optional.empty();
    }
    try {
      Finding finding = find(check, confidence, progress);
      return progress.cancelled() ? Optional.empty() : Optional.of(finding);
    } catch (NothingSimulatedException e) {
      return Optional.empty(); // there is no cap on its time, so it was stopped
    }
  }

  private Finding find(Check check, double confidence, Progress progress) {
    Reference reference = check.reference().get();
    if (check.figure() instanceof Figure.Simulated simulated) {
      LayoutResult result = simulate(simulated, confidence, progress);
      Estimate wide = simulated.figure().apply(result);
      return new Finding(
          check, reference, shown(simulated, result, wide, progress), wide.low(), wide.high());
    }
    double value = ((Figure.Computed) check.figure()).value().getAsDouble();
    return new Finding(check, reference, Estimate.exact(value), value, value);
  }

  private Estimate shown(
      Figure.Simulated simulated, LayoutResult result, Estimate wide, Progress progress) {
    if (simulated.share() && simulated.method() == Method.PLAIN) {
      long histories = result.histories();
      return Proportions.of(Math.round(wide.value() * histories), histories, SHOWN);
    }
    // The same histories again: only the interval drawn from them differs.
    return simulated.figure().apply(simulate(simulated, SHOWN, progress));
  }

  private LayoutResult simulate(Figure.Simulated simulated, double confidence, Progress progress) {
    // A precision that is never reached, so that all histories asked for are simulated.
    Settings settings =
        new Settings(
            seed,
            confidence,
            Double.MIN_NORMAL,
            OptionalLong.of(simulated.histories()),
            Optional.empty(),
            threads,
            simulated.method());
    return Simulation.run(simulated.studio().get(), settings, progress).layouts().get(0);
  }
}
