package lastcopy.scenario;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Law;

/**
 * Makes a {@link Medium.DriveSet} with the defaults of the scenario file: rebuilt at the drive's
 * speed, reading all of the others, without a batch, defects, strain, read errors or planned
 * replacement. Mutable; made by one thread.
 */
public final class DriveSetBuilder {

  private final Arrangement arrangement;
  private final int drives;
  private List<DriveModel> models;
  private Optional<Medium.Batch> batch = Optional.empty();
  private Rebuild.Time rebuild = new Rebuild.ByRate(OptionalDouble.empty(), 0);
  private Rebuild.Reads reads = Rebuild.Reads.ALL;
  private OptionalDouble replaceAtHours = OptionalDouble.empty();
  private Optional<Law> latentDefects = Optional.empty();
  private Optional<Law> scrub = Optional.empty();
  private double strain = 1;
  private double readErrorsPerBit;

  DriveSetBuilder(Arrangement arrangement, int drives) {
    this.arrangement = arrangement;
    this.drives = drives;
  }

  /** All drives are of a model; this or {@link #ofEach} is required. */
  public DriveSetBuilder of(DriveModel drive) {
    models = Collections.nCopies(drives, Objects.requireNonNull(drive, "model"));
    return this;
  }

  /**
   * The model of each drive, in their order.
   *
   * @throws IllegalArgumentException if they are not as many as the set's drives
   */
  public DriveSetBuilder ofEach(DriveModel... each) {
    Require.that(each.length == drives, drives + " drives, but " + each.length + " models");
    models = List.of(each);
    return this;
  }

  /** The batch whose frailty they share, of a variance above 0. */
  public DriveSetBuilder batch(String name, double spread) {
    batch = Optional.of(new Medium.Batch(name, spread));
    return this;
  }

  /** How long a rebuild takes. */
  public DriveSetBuilder rebuild(Rebuild.Time time) {
    rebuild = Objects.requireNonNull(time, "rebuild");
    return this;
  }

  /** A rebuild takes a time by a law, in hours. */
  public DriveSetBuilder rebuild(Law hours) {
    return rebuild(new Rebuild.ByLaw(hours));
  }

  /** What a rebuild reads of the others. */
  public DriveSetBuilder reads(Rebuild.Reads what) {
    reads = Objects.requireNonNull(what, "rebuild_reads");
    return this;
  }

  /** The age of planned replacement, in hours above 0. */
  public DriveSetBuilder replaceAt(double hours) {
    replaceAtHours = OptionalDouble.of(hours);
    return this;
  }

  /** The time to the next unreadable spot of a drive. */
  public DriveSetBuilder latentDefects(Law hours) {
    latentDefects = Optional.of(hours);
    return this;
  }

  /** The time until a defect is found and repaired; otherwise never. */
  public DriveSetBuilder scrub(Law hours) {
    scrub = Optional.of(hours);
    return this;
  }

  /** The factor on the others' hazard while a drive is down, at least 0. */
  public DriveSetBuilder strain(double factor) {
    strain = factor;
    return this;
  }

  /** The chance that a bit cannot be read, in [0, 1]. */
  public DriveSetBuilder readErrors(double perBit) {
    readErrorsPerBit = perBit;
    return this;
  }

  /**
   * The set.
   *
   * @throws IllegalArgumentException if a value is out of its range or the drives are not as many
   *     as the arrangement needs
   * @throws NullPointerException if it is not said of which model they are
   */
  public Medium.DriveSet build() {
    return new Medium.DriveSet(
        models,
        arrangement,
        batch,
        new Rebuild(rebuild, reads),
        replaceAtHours,
        latentDefects,
        scrub,
        strain,
        readErrorsPerBit);
  }
}
