package lastcopy.story;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.ToDoubleFunction;

/**
 * The first histories of a layout, looked through for one that is worth telling.
 *
 * @param searched how many histories, from number 0 on
 * @param lives those in which something happened that was not planned, by rising number
 * @param finished false if the search was interrupted
 */
public record Survey(long searched, List<Life> lives, boolean finished) {

  /** Copies the list. */
  public Survey {
    lives = List.copyOf(lives);
  }

  /** How many histories lost anything. */
  public long losing() {
    return lives.stream().filter(Life::lost).count();
  }

  /** The number of the first in which nothing happened; empty if there is none. */
  public OptionalLong firstUneventful() {
    long number = 0;
    for (Life life : lives) {
      if (life.number() != number) {
        break;
      }
      number++;
    }
    return number < searched ? OptionalLong.of(number) : OptionalLong.empty();
  }

  /** Whether most of the histories in which anything happened lost something. */
  public boolean losingIsCommoner() {
    return 2 * losing() > lives.size();
  }

  /**
   * A typical history, which is no forecast: of the histories in which anything happened, those of
   * the commoner outcome; of these, the one of the median bytes lost, or, where nothing was lost,
   * of the median number of happenings. The lower median; of equal ones the first.
   *
   * @return empty if nothing happened in any
   */
  public Optional<Life> typical() {
    boolean losers = losingIsCommoner();
    ToDoubleFunction<Life> measure = losers ? Life::lostBytes : Life::happenings;
    List<Life> common = lives.stream().filter(life -> life.lost() == losers).toList();
    double median =
        common.stream()
            .mapToDouble(measure)
            .sorted()
            .skip(Math.max(0, (common.size() - 1) / 2))
            .findFirst()
            .orElse(Double.NaN);
    return common.stream().filter(life -> measure.applyAsDouble(life) == median).findFirst();
  }

  /**
   * Of the histories that lost nothing, the one in which a loss was nearest, by {@link NearMiss};
   * if nothing ever stood in one copy only, the one with the most happenings. Of equal ones the
   * first.
   *
   * @return empty if nothing happened in any that lost nothing
   */
  public Optional<Life> nearMiss() {
    Optional<Life> nearest =
        survivors().stream()
            .filter(life -> life.peril().isPresent())
            .min(Comparator.comparing(life -> life.peril().orElseThrow(), NearMiss.NEAREST_FIRST));
    return nearest.isPresent()
        ? nearest
        : survivors().stream().min(Comparator.comparingLong(life -> -life.happenings()));
  }

  private List<Life> survivors() {
    return lives.stream().filter(life -> !life.lost()).toList();
  }
}
