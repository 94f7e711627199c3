package lastcopy.scenario;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Law;

/** What a copy is stored on: a set of drives, or somebody's service. */
public sealed interface Medium permits Medium.DriveSet, Medium.Service {

  /**
   * A set of drives, of one model or of several. Each has the law, the age and the price of its own
   * model, and is replaced by one of the same; its room is that of the smallest (on a shelf its
   * own), and all are as fast as the slowest.
   *
   * @param models the model of each drive, in the order listed, as many as the arrangement needs
   * @param arrangement how they hold the footage
   * @param batch the batch whose frailty they share, if any
   * @param rebuild how a replaced drive becomes whole
   * @param replaceAtHours the age of planned replacement, if any
   * @param latentDefects time to the next unreadable spot of a drive, if any
   * @param scrub time until a defect is found and repaired, if ever
   * @param strain factor on the others' hazard while a drive of the set is down, at least 0
   * @param readErrorsPerBit chance that a bit cannot be read, in [0, 1]
   */
  record DriveSet(
      List<DriveModel> models,
      Arrangement arrangement,
      Optional<Batch> batch,
      Rebuild rebuild,
      OptionalDouble replaceAtHours,
      Optional<Law> latentDefects,
      Optional<Law> scrub,
      double strain,
      double readErrorsPerBit)
      implements Medium {

    /** Copies the list and checks the ranges. */
    public DriveSet {
      Require.present(models, "model");
      models = List.copyOf(models);
      Require.present(arrangement, "arrangement");
      Require.present(batch, "batch");
      Require.present(rebuild, "rebuild");
      Require.present(latentDefects, "latent_defects");
      Require.present(scrub, "scrub");
      Require.that(
          arrangement.fits(models.size()), arrangement.needs() + ", found " + models.size());
      Require.atLeast(strain, 0, "strain");
      Require.within(readErrorsPerBit, 0, 1, "read_errors");
      replaceAtHours.ifPresent(hours -> Require.above(hours, 0, "replace_at"));
    }

    /** Makes a set of so many drives with the defaults of the scenario file. */
    public static DriveSetBuilder builder(Arrangement arrangement, int drives) {
      return new DriveSetBuilder(arrangement, drives);
    }

    /** How many drives. */
    public int drives() {
      return models.size();
    }

    /** The model of a drive, from 0; a shelf that outgrows its drives goes on with the last. */
    public DriveModel model(int drive) {
      return models.get(Math.min(drive, models.size() - 1));
    }

    /** The different models, in the order in which they first stand. */
    public List<DriveModel> kinds() {
      return models.stream().distinct().toList();
    }

    /** How many failed drives of those that stand in for each other the set survives. */
    public int survives() {
      return arrangement.survives(drives());
    }

    /** The size of the smallest drive, which in a set counts for each, in bytes. */
    public double driveBytes() {
      return models.stream().mapToDouble(DriveModel::sizeBytes).min().orElseThrow();
    }

    /** The speed of the slowest drive, stated or assumed, in bytes per second. */
    public double speed() {
      return models.stream().mapToDouble(DriveModel::speed).min().orElseThrow();
    }

    /** Usable room in bytes. */
    public double usableBytes() {
      return arrangement == Arrangement.SHELF
          ? models.stream().mapToDouble(DriveModel::sizeBytes).sum()
          : arrangement.usableDrives(drives()) * driveBytes();
    }
  }

  /**
   * A paid service.
   *
   * @param loses how often it loses the copy
   * @param pricePerTbMonth price per TB and month, if known
   * @param retrievalPerTb price per TB that is brought back from it, if known
   * @param restoresInHours from the order of a refill until its first byte comes, at least 0
   */
  record Service(
      Rate loses,
      OptionalDouble pricePerTbMonth,
      OptionalDouble retrievalPerTb,
      double restoresInHours)
      implements Medium {
    /** Checks the ranges. */
    public Service {
      Require.present(loses, "loses");
      pricePerTbMonth.ifPresent(price -> Require.atLeast(price, 0, "price"));
      retrievalPerTb.ifPresent(price -> Require.atLeast(price, 0, "retrieval"));
      Require.atLeast(restoresInHours, 0, "restores_in");
    }

    /** A service that gives back at once, of a price per TB and month and no other. */
    public static Service of(Rate loses, OptionalDouble pricePerTbMonth) {
      return new Service(loses, pricePerTbMonth, OptionalDouble.empty(), 0);
    }

    /** A service of no stated price. */
    public static Service losing(Rate loses) {
      return of(loses, OptionalDouble.empty());
    }
  }

  /**
   * A batch: drives that were made alike share one multiplier on their hazard.
   *
   * @param name one name is one batch, across copies and layouts
   * @param spread variance of the multiplier, above 0; its mean is 1
   */
  record Batch(String name, double spread) {
    /** Checks the ranges. */
    public Batch {
      Require.text(name, "batch");
      Require.above(spread, 0, "spread");
    }
  }
}
