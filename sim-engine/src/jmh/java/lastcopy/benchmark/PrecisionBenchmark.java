package lastcopy.benchmark;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Studio;
import lastcopy.simulate.Simulation;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import umontreal.ssj.randvar.WeibullGen;
import umontreal.ssj.rng.MRG32k3a;
import umontreal.ssj.rng.RandomStream;

/**
 * Milliseconds on one thread until the chance that the Weibull pair loses anything, 9.1e-6, is
 * known to ±5 % at 95 %: the engine with its pilot, tuning and all figures, and an event library.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
public class PrecisionBenchmark {

  private static final double HORIZON = 87_600;
  private static final double PRECISION = 0.05;

  /** Losses at which the half-width of a Poisson count's 95 % interval is 5 % of it. */
  private static final int LOSSES = (int) Math.ceil(1.96 * 1.96 / (PRECISION * PRECISION));

  private Studio studio;
  private SsjPair ssj;
  private long seed;

  /** Builds both. */
  @Setup
  public void setUp() {
    studio =
        OneSet.studio(
            new Weibull(1.12, 461_386, 0), new Weibull(2, 12, 6), Arrangement.MIRROR, 2, HORIZON);
    RandomStream stream = new MRG32k3a();
    ssj =
        new SsjPair(
            new WeibullGen(stream, 1.12, 1 / 461_386.0, 0),
            new WeibullGen(stream, 2, 1 / 12.0, 0),
            6,
            HORIZON);
  }

  /** The whole engine, from a studio to its figures. */
  @Benchmark
  @Warmup(iterations = 40)
  @Measurement(iterations = 40)
  public Comparison engine() {
    Settings settings =
        new Settings(++seed, 0.95, PRECISION, OptionalLong.empty(), Optional.empty(), 1);
    Comparison result = Simulation.run(studio, settings, Progress.SILENT);
    if (!result.layouts().get(0).precisionReached()) {
      throw new AssertionError("not precise");
    }
    return result;
  }

  /** Histories until as many losses are seen as that takes. */
  @Benchmark
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  public long eventLibrary() {
    long histories = 0;
    for (int losses = 0; losses < LOSSES; histories++) {
      losses += ssj.loses() ? 1 : 0;
    }
    return histories;
  }
}
