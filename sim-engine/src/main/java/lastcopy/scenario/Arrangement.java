package lastcopy.scenario;

/** How the drives of a copy hold its footage. */
public enum Arrangement {
  /** One drive. */
  SINGLE("single"),
  /** Every drive holds everything. */
  MIRROR("mirror"),
  /** One drive's worth of parity. */
  PARITY("parity"),
  /** Two drives' worth of parity. */
  DOUBLE_PARITY("double-parity"),
  /** Spread over all drives without redundancy. */
  STRIPE("stripe"),
  /** Separate drives, filled one after another. */
  SHELF("shelf");

  private final String word;

  Arrangement(String word) {
    this.word = word;
  }

  /** The word of the scenario file. */
  public String word() {
    return word;
  }

  /** How many failed drives a set of n survives, m; 0 for a shelf, which loses drive by drive. */
  public int survives(int drives) {
    return switch (this) {
      case MIRROR -> drives - 1;
      case PARITY -> 1;
      case DOUBLE_PARITY -> 2;
      case SINGLE, STRIPE, SHELF -> 0;
    };
  }

  /** Usable room of n drives in units of one drive. */
  public int usableDrives(int drives) {
    return switch (this) {
      case SINGLE, MIRROR -> 1;
      case PARITY -> drives - 1;
      case DOUBLE_PARITY -> drives - 2;
      case STRIPE, SHELF -> drives;
    };
  }

  /** The least number of drives that the arrangement makes sense with. */
  public int leastDrives() {
    return switch (this) {
      case SINGLE, SHELF -> 1;
      case MIRROR, STRIPE, PARITY -> 2;
      case DOUBLE_PARITY -> 3;
    };
  }
}
