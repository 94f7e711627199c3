package lastcopy.benchmark;

import java.util.concurrent.TimeUnit;
import lastcopy.history.History;
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
import org.openjdk.jmh.annotations.Warmup;

/** What a history of one parity set costs, by its drives and years: it grows as its failures do. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class GrowthBenchmark {

  private static final double HOURS_PER_YEAR = 8_760;

  /** Drives of the set. */
  @Param({"3", "6", "20", "60"})
  public int drives;

  /** Years of the history. */
  @Param({"1", "10", "50"})
  public int years;

  private History history;
  private LossCounter counter;
  private long number;

  /** Builds it. */
  @Setup
  public void setUp() {
    Studio studio =
        OneSet.studio(
            new Weibull(1.12, 461_386, 0),
            new Weibull(2, 12, 6),
            Arrangement.DOUBLE_PARITY,
            drives,
            years * HOURS_PER_YEAR);
    history = new History(studio, studio.layouts().get(0), 1);
    counter = new LossCounter();
  }

  /** One history. */
  @Benchmark
  public long history() {
    history.simulate(number++, counter);
    return counter.losses;
  }
}
