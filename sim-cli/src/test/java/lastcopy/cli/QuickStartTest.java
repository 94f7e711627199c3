package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;
import lastcopy.cli.host.Host;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is left to a virtual machine that compiles better: what would take it much less time. */
class QuickStartTest {

  private final AtomicLong now = new AtomicLong();
  private int left;
  private boolean stopped;

  /** Red if the share, the patience or the user's own interruption is not looked at. */
  @ParameterizedTest
  @CsvSource({
    "1.9, 0, false, false", // too early to tell
    "2.1, 0, false, true", // nobody knows how long it takes
    "2.1, 0.2, false, true", // 8.4 s to go
    "2.1, 0.3, false, false", // 4.9 s to go, hardly less if begun anew
    "30, 0.3, false, true",
    "30, 0.9, false, false",
    "30, 0.3, true, false" // what the user interrupts is printed
  })
  void givesUpWhatTakesLong(double seconds, double share, boolean interrupted, boolean leaves) {
    Host.Engine engine =
        (studio, settings, progress) -> {
          now.addAndGet(Duration.ofMillis((long) (1_000 * seconds)).toNanos());
          progress.merged("main", 1, 1, share);
          stopped = progress.cancelled();
          return null;
        };
    quick(engine).run(null, settings(OptionalLong.empty()), user(interrupted));
    assertThat(left).isEqualTo(leaves ? 1 : 0);
    assertThat(stopped).isEqualTo(leaves || interrupted);
  }

  @ParameterizedTest
  @CsvSource({"4999999, 0", "5000000, 1"})
  void leavesManyHistoriesAtOnce(long histories, int expected) {
    quick((studio, settings, progress) -> null)
        .run(null, settings(OptionalLong.of(histories)), user(false));
    assertThat(left).isEqualTo(expected);
  }

  private QuickStart quick(Host.Engine engine) {
    now.set(77); // the time does not begin at 0
    return new QuickStart(engine, () -> left++, now::get);
  }

  private static Settings settings(OptionalLong histories) {
    return new Settings(1, 0.95, 0.05, histories, Optional.empty(), 1);
  }

  private static Progress user(boolean interrupted) {
    return new Progress() {
      @Override
      public void merged(String layout, long histories, double precision, double share) {}

      @Override
      public boolean cancelled() {
        return interrupted;
      }
    };
  }
}
