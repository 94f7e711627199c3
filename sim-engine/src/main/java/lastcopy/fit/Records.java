package lastcopy.fit;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Records of many lives, equal ones counted together, in the order of their exits. */
public final class Records {

  /** How many records are alike. */
  record Alike(LifeRecord life, long count) {}

  private static final Comparator<LifeRecord> BY_EXIT =
      Comparator.comparingDouble(LifeRecord::exit)
          .thenComparingDouble(LifeRecord::lastSeen)
          .thenComparingDouble(LifeRecord::entry)
          .thenComparing(LifeRecord::failed);

  private final List<Alike> distinct;
  private final long records;
  private final long failures;
  private final double timeAtRisk;
  private final boolean between;

  /**
   * Counts records.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Records(List<LifeRecord> lives) {
    if (lives.isEmpty()) {
      throw new IllegalArgumentException("there must be at least one record: 0");
    }
    Map<LifeRecord, Long> counts = new LinkedHashMap<>();
    lives.stream().sorted(BY_EXIT).forEach(life -> counts.merge(life, 1L, Long::sum));
    distinct = counts.entrySet().stream().map(e -> new Alike(e.getKey(), e.getValue())).toList();
    records = lives.size();
    failures = lives.stream().filter(LifeRecord::failed).count();
    between = lives.stream().anyMatch(LifeRecord::between);
    double time = 0;
    for (Alike alike : distinct) {
      LifeRecord life = alike.life();
      time += alike.count() * ((life.lastSeen() + life.exit()) / 2 - life.entry());
    }
    timeAtRisk = time;
  }

  /** Distinct lives by exit. */
  List<Alike> distinct() {
    return distinct;
  }

  /** Their number. */
  public long records() {
    return records;
  }

  /** How many of them failed. */
  public long failures() {
    return failures;
  }

  /**
   * The time during which a failure would have been recorded, all records together; of what failed
   * between two ages, half of the time between counts.
   */
  public double timeAtRisk() {
    return timeAtRisk;
  }

  /** Whether the age of some failure is known only to lie between two ages. */
  public boolean between() {
    return between;
  }

  /** Whether some record begins above age 0. */
  public boolean enteredLate() {
    return distinct.stream().anyMatch(alike -> alike.life().entry() > 0);
  }

  /** The greatest age at which anything is known. */
  public double oldest() {
    return distinct.get(distinct.size() - 1).life().exit();
  }

  /** The time at risk between two ages, all records together; as {@link #timeAtRisk}. */
  public double timeAtRisk(double from, double to) {
    double time = 0;
    for (Alike alike : distinct) {
      LifeRecord life = alike.life();
      double known = overlap(life.entry(), life.lastSeen(), from, to);
      double unsure = overlap(life.lastSeen(), life.exit(), from, to);
      time += alike.count() * (known + unsure / 2);
    }
    return time;
  }

  private static double overlap(double a, double b, double from, double to) {
    return Math.max(0, Math.min(b, to) - Math.max(a, from));
  }
}
