package lastcopy.benchmark;

import java.util.concurrent.TimeUnit;
import lastcopy.history.History;
import lastcopy.law.Exponential;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Studio;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;
import umontreal.ssj.randvar.ExponentialGen;
import umontreal.ssj.randvar.WeibullGen;
import umontreal.ssj.rng.MRG32k3a;
import umontreal.ssj.rng.RandomStream;

/**
 * Histories per second of a pair of drives: the engine, plain Java for this model only, and an
 * event library.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PairBenchmark {

  private static final double HORIZON = 87_600;

  /** Exponential 50,000 h and 500 h, or Weibull lives and rebuilds. */
  @Param({"harsh", "weibull"})
  public String model;

  private Law life;
  private Law repair;
  private History history;
  private LossCounter counter;
  private PlainPair plain;
  private SsjPair ssj;
  private long number;

  /** Builds both. */
  @Setup
  public void setUp() {
    boolean harsh = model.equals("harsh");
    life = harsh ? new Exponential(50_000) : new Weibull(1.12, 461_386, 0);
    repair = harsh ? new Exponential(500) : new Weibull(2, 12, 6);
    Studio studio = OneSet.studio(life, repair, Arrangement.MIRROR, 2, HORIZON);
    history = new History(studio, studio.layouts().get(0), 1);
    counter = new LossCounter();
    plain = new PlainPair(life, repair, HORIZON);
    ssj = ssj(harsh);
  }

  /** One history of the general engine. */
  @Benchmark
  public long engine() {
    history.simulate(number++, counter);
    return counter.losses;
  }

  /** The same on two threads, each with histories of its own; histories a second of both. */
  @Benchmark
  @Threads(2)
  public long engineOnTwoThreads() {
    return engine();
  }

  /** One history of hand-written code for this model only. */
  @Benchmark
  public boolean plainJava() {
    return plain.loses();
  }

  /** One history of a general-purpose event library. */
  @Benchmark
  public boolean eventLibrary() {
    return ssj.loses();
  }

  private static SsjPair ssj(boolean harsh) {
    RandomStream stream = new MRG32k3a();
    return harsh
        ? new SsjPair(
            new ExponentialGen(stream, 1 / 50_000.0),
            new ExponentialGen(stream, 1 / 500.0),
            0,
            HORIZON)
        : new SsjPair(
            new WeibullGen(stream, 1.12, 1 / 461_386.0, 0),
            new WeibullGen(stream, 2, 1 / 12.0, 0),
            6,
            HORIZON);
  }
}
