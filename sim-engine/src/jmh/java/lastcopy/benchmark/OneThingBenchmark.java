package lastcopy.benchmark;

import java.util.concurrent.TimeUnit;
import lastcopy.history.History;
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

/**
 * What a plain history costs with one mechanism or law more; none should cost more than five times
 * what it costs without.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class OneThingBenchmark {

  /** What the studio has more. */
  @Param({
    "nothing",
    "weibull",
    "byAge",
    "sum",
    "age",
    "boughtAt",
    "parity",
    "doubleParity",
    "shelf",
    "batch",
    "used",
    "replaceAt",
    "defects",
    "strain",
    "strainAndSum",
    "readErrors",
    "looks",
    "waitByLaw",
    "box",
    "takes",
    "spoils",
    "stops",
    "continuous",
    "rotation",
    "service",
    "deletion",
    "malware",
    "cards",
    "keepFor",
    "randomShoots",
    "growth"
  })
  public String thing;

  private History history;
  private LossCounter counter;
  private long number;

  /** Builds it. */
  @Setup
  public void setUp() {
    Studio studio = OneThing.with(thing);
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
