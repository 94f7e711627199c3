package lastcopy.cli;

import java.util.function.LongSupplier;
import lastcopy.cli.host.Host;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.NothingSimulatedException;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.scenario.PossibleStudios;

/**
 * Simulates on a virtual machine that has its quick compiler only, which is done first with what is
 * short. What would take long is given up early, and left to one that compiles better.
 */
final class QuickStart implements Host.Engine {

  /** Seconds of processor time, before which a share of the work done says little. */
  private static final double PATIENCE = 2;

  /** What a second start and its slow first steps cost, in seconds of processor time. */
  private static final double ANEW = 2;

  /** So many histories take long whatever they are. */
  private static final long MANY = 5_000_000;

  private final Host.Engine engine;
  private final Runnable leave;
  private final LongSupplier processorTime;

  /**
   * Decorates an engine.
   *
   * @param leave ends the process so that another begins anew; nothing was printed yet
   * @param processorTime of this process so far, in nanoseconds; not the clock's, which runs on
   *     while others have the processor
   */
  QuickStart(Host.Engine engine, Runnable leave, LongSupplier processorTime) {
    this.engine = engine;
    this.leave = leave;
    this.processorTime = processorTime;
  }

  @Override
  public Comparison run(PossibleStudios studios, Settings settings, Progress progress) {
    if (settings.histories().orElse(0) >= MANY) {
      leave.run();
    }
    Watch watch = new Watch(progress, processorTime);
    try {
      Comparison result = engine.run(studios, settings, watch);
      leave(watch, progress);
      return result;
    } catch (NothingSimulatedException e) {
      leave(watch, progress);
      throw e;
    }
  }

  private void leave(Watch watch, Progress progress) {
    if (watch.givesUp() && !progress.cancelled()) {
      leave.run();
    }
  }

  /** Looks at the time whenever the engine tells how far it is, or asks whether to stop. */
  private static final class Watch implements Progress {

    private final Progress progress;
    private final LongSupplier processorTime;
    private final long began;
    private double share;
    private boolean givesUp;

    Watch(Progress progress, LongSupplier processorTime) {
      this.progress = progress;
      this.processorTime = processorTime;
      began = processorTime.getAsLong();
    }

    @Override
    public synchronized void merged(
        String layout, long histories, double precision, double shareDone) {
      share = shareDone;
      progress.merged(layout, histories, precision, shareDone);
    }

    @Override
    public synchronized boolean cancelled() {
      double seconds = (processorTime.getAsLong() - began) / 1e9;
      // Compiled better it goes at least twice as fast; a share of 0 means that nobody knows.
      double left = seconds * (1 - share) / share;
      givesUp |= seconds >= PATIENCE && left > 2 * ANEW + seconds;
      return givesUp || progress.cancelled();
    }

    synchronized boolean givesUp() {
      return givesUp;
    }
  }
}
