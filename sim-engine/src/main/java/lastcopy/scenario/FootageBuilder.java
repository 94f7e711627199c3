package lastcopy.scenario;

import java.util.OptionalDouble;

/**
 * Makes a {@link Footage} with the defaults of the scenario file: nothing on hand, no growth, kept
 * for good, of no stated worth, a spot costing 1 GB. Mutable; made by one thread.
 */
public final class FootageBuilder {

  private final Shoots shoots;
  private double onHandBytes;
  private double growthPerYear;
  private OptionalDouble keepHours = OptionalDouble.empty();
  private double clipBytes = Footage.DEFAULT_CLIP_BYTES;
  private OptionalDouble worthPerShoot = OptionalDouble.empty();

  FootageBuilder(Shoots shoots) {
    this.shoots = shoots;
  }

  /** Footage at the start, at least 0 bytes. */
  public FootageBuilder onHand(double bytes) {
    onHandBytes = bytes;
    return this;
  }

  /** Yearly growth of a shoot's size as a fraction, above −1. */
  public FootageBuilder growth(double perYear) {
    growthPerYear = perYear;
    return this;
  }

  /** How long footage counts after it was shot, in hours above 0. */
  public FootageBuilder keepFor(double hours) {
    keepHours = OptionalDouble.of(hours);
    return this;
  }

  /** What one unreadable spot costs, in bytes above 0. */
  public FootageBuilder clip(double bytes) {
    clipBytes = bytes;
    return this;
  }

  /** What losing one shoot costs, at least 0. */
  public FootageBuilder worthPerShoot(double money) {
    worthPerShoot = OptionalDouble.of(money);
    return this;
  }

  /**
   * The footage.
   *
   * @throws IllegalArgumentException if a value is out of its range
   */
  public Footage build() {
    return new Footage(onHandBytes, shoots, growthPerYear, keepHours, clipBytes, worthPerShoot);
  }
}
