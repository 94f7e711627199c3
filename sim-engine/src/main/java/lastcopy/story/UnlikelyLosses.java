package lastcopy.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.history.History;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Loss;
import lastcopy.parallel.Workers;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.simulate.Simulation;
import lastcopy.simulate.rare.Biasable;
import lastcopy.simulate.rare.EngineHistories;
import lastcopy.simulate.rare.Tuning;

/**
 * Tells histories of a layout in which the rates of what goes wrong are raised so that something is
 * lost, and says how likely a loss is without that. The bias is tuned to any loss under the seed,
 * so that a number always names the same biased history; plain histories have other luck. One
 * object is used by one thread.
 */
public final class UnlikelyLosses {

  /** Biased histories searched: of a bias that tuning found, about every second one loses. */
  private static final int SEARCHED = 20_000;

  /** Biased histories that the chance comes from; no cap on time, so that it is the same again. */
  private static final long COUNTED = 40_000;

  /** Seeds apart from those of histories that count. */
  private static final long TUNED = 0x3C6EF372FE94F82BL; // fractional digits of √5, of √7

  private static final long TOLD = 0xA54FF53A5F1D36F1L;

  private final Studio studio;
  private final Layout layout;
  private final long seed;
  private BooleanSupplier givesUp = () -> false;
  private Optional<Bias> bias;

  /** Biased histories of one layout under a seed. */
  public UnlikelyLosses(Studio studio, Layout layout, long seed) {
    this.studio = studio;
    this.layout = layout;
    this.seed = seed;
  }

  /** Looks every so often, within a history too, whether to give up. */
  public void giveUpWhen(BooleanSupplier asked) {
    givesUp = asked;
  }

  /** The first biased history that loses anything; empty if none does, however biased. */
  public Optional<Story> first() {
    Optional<History> found = history();
    List<Loss> losses = new ArrayList<>();
    LossLog ledger = new LossLog(losses);
    for (long number = 0; found.isPresent() && number < SEARCHED; number++) {
      found.get().simulate(number, ledger);
      if (!losses.isEmpty()) {
        return tell(number);
      }
    }
    return Optional.empty();
  }

  /**
   * Tells the biased history of a number.
   *
   * @param number at least 0
   * @throws lastcopy.history.GivenUpException if it was given up
   * @return its losses and scenes with their likelihood ratios; empty if no bias leads to a loss
   */
  public Optional<Story> tell(long number) {
    return history().map(history -> Stories.tell(history, studio, layout, seed, number));
  }

  /** Histories under the bias; empty if there is none under which anything is lost. */
  Optional<History> history() {
    if (bias == null) {
      bias =
          Tuning.of(Workers.alone(this::tuned, givesUp))
              .map(tuned -> tuned.mixture().part(Tuning.LIKE_A_LOSS));
    }
    Optional<History> history = bias.map(by -> new History(studio, layout, seed ^ TOLD, by));
    history.ifPresent(found -> found.giveUpWhen(givesUp));
    return history;
  }

  private Biasable tuned(BooleanSupplier asked) {
    Biasable histories = new EngineHistories(studio, layout, seed ^ TUNED);
    histories.giveUpWhen(asked);
    return histories;
  }

  /**
   * What a short run of weighted biased histories says of the layout without a bias.
   *
   * @param confidence of its intervals, in (0, 1)
   * @param progress may end it
   */
  public LayoutResult chance(double confidence, Progress progress) {
    Studio alone = studio.withLayout(layout);
    Settings settings =
        new Settings(
            seed, confidence, 1, OptionalLong.of(COUNTED), Optional.empty(), 1, Method.RARE);
    return Simulation.run(alone, settings, progress).layouts().get(0);
  }
}
