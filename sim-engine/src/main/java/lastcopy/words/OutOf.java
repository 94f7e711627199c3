package lastcopy.words;

import java.util.Collection;
import java.util.Locale;
import lastcopy.interval.Estimate;

/**
 * Of how many studios a chance is told, so that every chance of a row or chart has one denominator.
 *
 * @param studios a power of ten from 1,000 to 1,000,000: of more nobody has an idea
 */
public record OutOf(long studios) {

  private static final long LEAST = 1_000;
  private static final long MOST = 1_000_000;

  /**
   * Of 1,000 studios, or of ten times as many until the chance makes at least one studio, up to
   * 1,000,000.
   *
   * @param chance a probability; 0 gives 1,000
   */
  public static OutOf showing(double chance) {
    long studios = LEAST;
    // A little slack, so that 1 in 1,000 stays so when it is a rounding error below.
    while (chance > 0 && chance * studios < 1 - 1e-9 && studios < MOST) {
      studios *= 10;
    }
    return new OutOf(studios);
  }

  /** The denominator at which the smallest of some chances still makes one studio. */
  public static OutOf showingSmallest(Collection<Estimate> chances) {
    return showing(chances.stream().mapToDouble(OutOf::told).filter(p -> p > 0).min().orElse(0));
  }

  /** The denominator at which the largest of some chances makes one studio. */
  public static OutOf showingLargest(Collection<Estimate> chances) {
    return showing(chances.stream().mapToDouble(OutOf::told).max().orElse(0));
  }

  /**
   * This, but not more studios than so many.
   *
   * @param most a power of ten from 1,000 on
   */
  public OutOf atMost(long most) {
    return new OutOf(Math.min(most, studios));
  }

  /** A probability as a number of studios. */
  public double count(double probability) {
    return probability * studios;
  }

  /** The denominator in words, such as {@code 1,000 studios}. */
  public String words() {
    return number() + " studios";
  }

  /** The denominator alone, such as {@code 1,000}. */
  public String number() {
    return String.format(Locale.ROOT, "%,d", studios);
  }

  private static double told(Estimate chance) {
    return chance.onlyAtMost() ? chance.high() : chance.value();
  }
}
