package lastcopy.typical;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * The chance to fail within each year of age, from new.
 *
 * <p>All of it is an assumption of this project: {@link #SOURCE}.
 */
public final class TypicalLives {

  /** What suggests them. */
  public static final String SOURCE =
      "hard disks fitted to replacement rates of data centres (Schroeder, Gibson, FAST 2007;"
          + " Pinheiro and others, FAST 2007; fleet statistics of a large operator, 2025, through"
          + " press reports); solid state to boot drives of the same operator, 2022-23, low and"
          + " cautious half and twice as much; portable twice a hard disk and 1 % a year for a"
          + " knock; used 1.5 times a hard disk of that age, entered at its age, and 1 % more in"
          + " the 30 days after it is bought";

  private static final Map<Level, double[]> HARD_DISK =
      Map.of(
          Level.LOW, new double[] {0.7, 0.8, 1.0, 1.2, 1.5, 1.8, 2.2, 2.6, 3.0, 3.5},
          Level.CENTRAL, new double[] {1.3, 1.3, 1.4, 1.7, 2.2, 2.7, 3.2, 3.6, 4.0, 4.3},
          Level.CAUTIOUS, new double[] {2, 3, 5, 6, 7, 8, 9, 10, 11, 12});

  private static final double[] SOLID_STATE = {0.5, 0.8, 0.8, 1.0, 1.0, 1.3, 1.6, 2, 2.5, 3};
  private static final Map<Level, Double> SOLID_STATE_FACTORS =
      Map.of(Level.LOW, 0.5, Level.CENTRAL, 1.0, Level.CAUTIOUS, 2.0);
  private static final double PORTABLE_FACTOR = 2;
  private static final double KNOCK = 0.01;
  private static final double USED_FACTOR = 1.5;

  /** The chance that a used drive fails in its first days with its new owner, above its life. */
  public static final double FIRST_DAYS_CHANCE = 0.01;

  /** How long these last, in hours: 30 days. */
  public static final double FIRST_DAYS_HOURS = 720;

  private TypicalLives() {}

  /** What suggests the lives of a kind, in few words. */
  public static String suggestedBy(DriveKind kind) {
    return switch (kind) {
      case HARD_DISK ->
          "replacement rates of data centres, FAST 2007 and a large operator's of 2025";
      case PORTABLE -> "twice a hard disk, and 1 % a year for a knock";
      case USED_HARD_DISK ->
          "1.5 times a hard disk of that age, and 1 % in the 30 days after it is bought";
      case SOLID_STATE -> "boot drives of a large operator, 2022-23";
    };
  }

  /**
   * The hazards, failures per year, of the first, second ... year of age; the last goes on for
   * good.
   */
  public static List<Double> yearlyHazards(DriveKind kind, Level level) {
    double[] disk = HARD_DISK.get(level);
    return switch (kind) {
      case HARD_DISK -> hazards(disk, 1, 0);
      case PORTABLE -> hazards(disk, PORTABLE_FACTOR, KNOCK);
      case USED_HARD_DISK -> hazards(disk, USED_FACTOR, 0);
      case SOLID_STATE -> hazards(SOLID_STATE, SOLID_STATE_FACTORS.get(level), 0);
    };
  }

  /** The chances, in [0, 1), that belong to the hazards. */
  public static List<Double> yearlyChances(DriveKind kind, Level level) {
    return yearlyHazards(kind, level).stream().map(h -> -StrictMath.expm1(-h)).toList();
  }

  private static List<Double> hazards(double[] percent, double factor, double more) {
    return Arrays.stream(percent)
        .map(p -> -factor * StrictMath.log1p(-p / 100) - StrictMath.log1p(-more))
        .boxed()
        .toList();
  }
}
