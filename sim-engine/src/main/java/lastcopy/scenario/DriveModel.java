package lastcopy.scenario;

import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Law;

/**
 * A model of drive.
 *
 * @param id the name in the file
 * @param sizeBytes its size, above 0
 * @param price what one costs, if known
 * @param owned whether those in service at the start are there already and not paid for
 * @param powerWatts what one draws, if known
 * @param bytesPerSecond sequential read and write, if stated
 * @param fails the law of its life over its age
 * @param age the age at the start of those then in service, a law drawn for each drive; {@code
 *     Fixed} 0 if new
 * @param boughtAtHours the age at which a drive bought later comes, 0 if new
 * @param failsOff the law while it is powered off, if it differs
 */
public record DriveModel(
    String id,
    double sizeBytes,
    OptionalDouble price,
    boolean owned,
    OptionalDouble powerWatts,
    OptionalDouble bytesPerSecond,
    Law fails,
    Law age,
    double boughtAtHours,
    Optional<Law> failsOff) {

  /** The speed of a drive that states none, bytes per second (an assumption of the format). */
  public static final double ASSUMED_BYTES_PER_SECOND = 120 * Units.MB;

  /** Checks the ranges. */
  public DriveModel {
    Require.text(id, "drive model");
    Require.present(fails, "fails");
    Require.present(age, "age");
    Require.present(failsOff, "fails_off");
    Require.above(sizeBytes, 0, "size of a drive");
    Require.atLeast(boughtAtHours, 0, "bought_at");
    price.ifPresent(value -> Require.atLeast(value, 0, "price"));
    powerWatts.ifPresent(value -> Require.atLeast(value, 0, "power"));
    bytesPerSecond.ifPresent(value -> Require.above(value, 0, "speed"));
  }

  /** Makes a model of a size in bytes with the defaults of the scenario file. */
  public static DriveModelBuilder builder(String id, double sizeBytes) {
    return new DriveModelBuilder(id, sizeBytes);
  }

  /** Its stated speed, or the assumed one, in bytes per second. */
  public double speed() {
    return bytesPerSecond.orElse(ASSUMED_BYTES_PER_SECOND);
  }
}
