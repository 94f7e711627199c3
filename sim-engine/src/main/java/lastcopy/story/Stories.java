package lastcopy.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import lastcopy.experiment.Progress;
import lastcopy.history.History;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Loss;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.simulate.count.Chunk;

/**
 * Tells single histories of a layout, and finds those worth telling. A number always names the same
 * history: the one that a comparison under the same seed counted under it. Searches go from number
 * 0 on, and what they find does not depend on how many processors search.
 */
public final class Stories {

  private static final int SMALL_BLOCK = 256;

  private final Studio studio;
  private final Layout layout;
  private final long seed;
  private BooleanSupplier givesUp = () -> false;

  /** Stories of one layout under a seed. */
  public Stories(Studio studio, Layout layout, long seed) {
    this.studio = studio;
    this.layout = layout;
    this.seed = seed;
  }

  /** Looks every so often within a history that is told whether to give up. */
  public void giveUpWhen(BooleanSupplier asked) {
    givesUp = asked;
  }

  /**
   * Tells the plain history of a number.
   *
   * @param number at least 0
   * @throws lastcopy.history.GivenUpException if it was given up
   */
  public Story tell(long number) {
    History history = new History(studio, layout, seed);
    history.giveUpWhen(givesUp);
    return tell(history, studio, layout, seed, number);
  }

  /** Tells a history of a layout, plain or biased. */
  static Story tell(History history, Studio studio, Layout layout, long seed, long number) {
    List<Moment> moments = new ArrayList<>();
    history.tell(number, (happening, scene) -> moments.add(new Moment(happening, scene)));
    List<Loss> losses = new ArrayList<>();
    history.simulate(number, new LossLog(losses));
    return new Story(studio, layout, history.copyNames(), seed, number, moments, losses);
  }

  /** The first history that loses anything. */
  public LossSearch firstLoss(SearchLimit limit, Progress progress) {
    AtomicLong found = new AtomicLong(-1);
    AtomicLong searched = new AtomicLong();
    boolean finished =
        new Search(studio, layout, seed, limit, progress)
            .run(
                Chunk.SIZE,
                Stories::firstLosing,
                (number, upTo) -> {
                  found.set(number);
                  searched.set(number < 0 ? upTo : number + 1);
                  return number < 0;
                });
    OptionalLong number = found.get() < 0 ? OptionalLong.empty() : OptionalLong.of(found.get());
    return new LossSearch(number, searched.get(), finished || number.isPresent());
  }

  private static long firstLosing(History history, long first, int count) {
    List<Loss> losses = new ArrayList<>();
    LossLog ledger = new LossLog(losses);
    for (long number = first; number < first + count; number++) {
      history.simulate(number, ledger);
      if (!losses.isEmpty()) {
        return number;
      }
    }
    return -1;
  }

  /** Looks through the first histories for what happens in them. */
  public Survey survey(SearchLimit limit, Progress progress) {
    List<Life> lives = new ArrayList<>();
    AtomicLong searched = new AtomicLong();
    boolean finished =
        new Search(studio, layout, seed, limit, progress)
            .run(
                SMALL_BLOCK,
                this::lives,
                (part, upTo) -> {
                  lives.addAll(part);
                  searched.set(upTo);
                  return true;
                });
    return new Survey(searched.get(), lives, finished);
  }

  private List<Life> lives(History history, long first, int count) {
    List<Life> lives = new ArrayList<>();
    List<Moment> moments = new ArrayList<>();
    for (long number = first; number < first + count; number++) {
      moments.clear();
      history.tell(number, (happening, scene) -> moments.add(new Moment(happening, scene)));
      long happenings = moments.stream().filter(moment -> !moment.routine()).count();
      if (happenings > 0) {
        double lost =
            moments.stream()
                .filter(moment -> moment.kind() == Kind.LOST)
                .mapToDouble(moment -> moment.happening().bytes())
                .sum();
        Optional<NearMiss> peril =
            lost > 0
                ? Optional.empty()
                : NearMiss.nearest(Turns.of(layout), moments, studio.horizonHours());
        lives.add(new Life(number, happenings, lost, peril));
      }
    }
    return lives;
  }
}
