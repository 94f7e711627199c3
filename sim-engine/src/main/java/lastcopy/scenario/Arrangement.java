package lastcopy.scenario;

import java.util.OptionalInt;

/** How the drives of a copy hold its footage. */
public enum Arrangement {
  /** One drive. */
  SINGLE("single"),
  /** Every drive holds everything. */
  MIRROR("mirror"),
  /** Mirrored pairs in the order listed, over all of which footage is spread evenly. */
  PAIRS("pairs"),
  /** One drive's worth of parity. */
  PARITY("parity"),
  /** Two drives' worth of parity. */
  DOUBLE_PARITY("double-parity"),
  /** Spread over all drives without redundancy. */
  STRIPE("stripe"),
  /** Separate drives, filled one after another. */
  SHELF("shelf");

  /** Of more drives than that nobody asks. */
  private static final double MOST = 1e9;

  /** What is a rounding error beyond a room still fits. */
  private static final double SLACK = 1e-12;

  private final String word;

  Arrangement(String word) {
    this.word = word;
  }

  /** The word of the scenario file. */
  public String word() {
    return word;
  }

  /** How many of n drives stand in for each other: those of a pair, elsewhere all. */
  public int together(int drives) {
    return this == PAIRS ? 2 : drives;
  }

  /**
   * How many failed drives of those that stand in for each other are survived, m; 0 for a shelf,
   * which loses drive by drive.
   *
   * @param drives n, in the whole set
   */
  public int survives(int drives) {
    return switch (this) {
      case MIRROR -> drives - 1;
      case PAIRS, PARITY -> 1;
      case DOUBLE_PARITY -> 2;
      case SINGLE, STRIPE, SHELF -> 0;
    };
  }

  /** Usable room of n drives in units of one drive. */
  public int usableDrives(int drives) {
    return switch (this) {
      case SINGLE, MIRROR -> 1;
      case PAIRS -> drives / 2;
      case PARITY -> drives - 1;
      case DOUBLE_PARITY -> drives - 2;
      case STRIPE, SHELF -> drives;
    };
  }

  /**
   * The least number of drives whose usable room holds an amount; empty if no number does, or only
   * an absurd one.
   *
   * @param bytes the amount, at least 0
   * @param driveBytes the size of each drive, or as much of it as may be used, above 0
   */
  public OptionalInt drivesFor(double bytes, double driveBytes) {
    double units = Math.max(1, Math.ceil(bytes / driveBytes * (1 - SLACK)));
    if (units > MOST || (units > 1 && (this == SINGLE || this == MIRROR))) {
      return OptionalInt.empty();
    }
    int n = (int) units;
    return OptionalInt.of(
        switch (this) {
          case SINGLE, SHELF -> n;
          case STRIPE -> Math.max(2, n);
          case MIRROR -> 2;
          case PAIRS -> 2 * n;
          case PARITY -> n + 1;
          case DOUBLE_PARITY -> n + 2;
        });
  }

  /** The least number of drives that the arrangement makes sense with. */
  public int leastDrives() {
    return switch (this) {
      case SINGLE, SHELF -> 1;
      case MIRROR, PAIRS, STRIPE, PARITY -> 2;
      case DOUBLE_PARITY -> 3;
    };
  }

  /** Whether so many drives can be arranged so. */
  public boolean fits(int drives) {
    return switch (this) {
      case SINGLE -> drives == 1;
      case PAIRS -> drives >= 2 && drives % 2 == 0;
      default -> drives >= leastDrives();
    };
  }

  /** The numbers of drives that can be arranged so, in words. */
  public String needs() {
    return switch (this) {
      case SINGLE -> "single is one drive";
      case PAIRS -> "pairs need an even number of drives";
      default -> word + " needs at least " + leastDrives() + " drives";
    };
  }
}
