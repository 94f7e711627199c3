package lastcopy.scenario;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Fixed;
import lastcopy.law.Law;

/**
 * Makes a {@link DriveModel} with the defaults of the scenario file: new, at the assumed speed, and
 * of no stated price. Mutable; made by one thread.
 */
public final class DriveModelBuilder {

  private final String id;
  private double sizeBytes;
  private OptionalDouble price = OptionalDouble.empty();
  private boolean owned;
  private OptionalDouble powerWatts = OptionalDouble.empty();
  private OptionalDouble bytesPerSecond = OptionalDouble.empty();
  private Law fails;
  private Law age = new Fixed(0);
  private double boughtAtHours;
  private Optional<Law> failsOff = Optional.empty();

  DriveModelBuilder(String id, double sizeBytes) {
    this.id = id;
    this.sizeBytes = sizeBytes;
  }

  /** Another size, above 0. */
  public DriveModelBuilder size(double bytes) {
    sizeBytes = bytes;
    return this;
  }

  /** The law of its life over its age; required. */
  public DriveModelBuilder fails(Law life) {
    fails = Objects.requireNonNull(life, "fails");
    return this;
  }

  /** The law of its life while it is powered off; otherwise the same. */
  public DriveModelBuilder failsOff(Law life) {
    failsOff = Optional.of(life);
    return this;
  }

  /** The law of the age at the start of those then in service; otherwise new. */
  public DriveModelBuilder age(Law hours) {
    age = Objects.requireNonNull(hours, "age");
    return this;
  }

  /** The age at which a drive bought later comes, in hours, at least 0. */
  public DriveModelBuilder boughtAt(double hours) {
    boughtAtHours = hours;
    return this;
  }

  /** What one costs, at least 0. */
  public DriveModelBuilder price(double money) {
    price = OptionalDouble.of(money);
    return this;
  }

  /** Those in service at the start are there already and not paid for. */
  public DriveModelBuilder owned() {
    owned = true;
    return this;
  }

  /** What one draws, in watts, at least 0. */
  public DriveModelBuilder power(double watts) {
    powerWatts = OptionalDouble.of(watts);
    return this;
  }

  /** Sequential read and write, above 0. */
  public DriveModelBuilder speed(double rateBytesPerSecond) {
    bytesPerSecond = OptionalDouble.of(rateBytesPerSecond);
    return this;
  }

  /**
   * The model.
   *
   * @throws IllegalArgumentException if a value is out of its range
   * @throws NullPointerException if it is not said how it fails
   */
  public DriveModel build() {
    return new DriveModel(
        id,
        sizeBytes,
        price,
        owned,
        powerWatts,
        bytesPerSecond,
        fails,
        age,
        boughtAtHours,
        failsOff);
  }
}
