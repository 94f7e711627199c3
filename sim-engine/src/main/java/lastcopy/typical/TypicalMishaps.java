package lastcopy.typical;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** What strikes a place, a box, a desk, a copy or a service in a typical year. */
public final class TypicalMishaps {

  /** Kinds of places. */
  public enum Site {
    /** Where people live. */
    HOME("home"),
    /** Where they only work. */
    BUSINESS("business");

    private final String id;

    Site(String id) {
      this.id = id;
    }

    /** Its name in files. */
    public String id() {
      return id;
    }
  }

  /** Habits at the desk. */
  public enum Habit {
    /** Half as many accidents as usual. */
    CAREFUL("careful", 0.5),
    /** As most do. */
    USUAL("usual", 1);

    private final String id;
    private final double factor;

    Habit(String id, double factor) {
      this.id = id;
      this.factor = factor;
    }

    /** Its name in files. */
    public String id() {
      return id;
    }

    /** The chance of a deletion or formatting by mistake within a year. */
    public double deletionChance() {
      return 0.03 * factor;
    }

    /** The chance of malware within a year. */
    public double malwareChance() {
      return 0.005 * factor;
    }
  }

  /** Shape of the delay until a deletion is noticed: median 3 days, 95th percentile 90 days. */
  public static final double DELETION_SHAPE = 0.43;

  /** Its scale in hours. */
  public static final double DELETION_SCALE_HOURS = 7 * 24.0;

  /** Shape of the delay until malware is noticed: median 5 days, a long tail. */
  public static final double MALWARE_SHAPE = 0.8;

  /** Its scale in hours. */
  public static final double MALWARE_SCALE_HOURS = 8 * 24.0;

  /**
   * A mishap of a place.
   *
   * @param name as in a scenario
   * @param chance that it strikes and takes the copies there, within a year
   */
  public record Strike(String name, double chance) {}

  private static final String FIRE =
      "about 0.3 % of US homes a year report one (NFPA, Ahrens 2018), of which 46 % of the"
          + " non-confined spread past the room (US Fire Administration, topical report vol. 10 no."
          + " 7, 2010)";
  private static final String THEFT =
      "27.6 burglaries per 1,000 US households in 2011, electronics taken in about a third (US"
          + " Bureau of Justice Statistics, NCJ 241754)";
  private static final String WATER =
      "1.9 claims per 100 insured house-years (US insurance statistics 2015-2020)";
  private static final String SURGE =
      "about 0.1 % of homes claim in a year (US insurance statistics 2015-2020)";
  private static final String DELETION =
      "about 1.8 % of PCs a year (Smith, The Cost of Lost Data, 2003); when it is noticed is a"
          + " guess";
  private static final String MALWARE =
      "up to 1 % of UK businesses a year (UK Cyber Security Breaches Survey 2025); when it is"
          + " noticed is a guess";

  /** What suggests what strikes places, in few words. */
  public static final String PLACES_SUGGESTED_BY =
      "fire: NFPA 2018 and US Fire Administration 2010; theft: US Bureau of Justice Statistics,"
          + " 2011; water and surges: US insurance statistics, 2015-2020";

  /** What suggests what happens at desks, in few words. */
  public static final String DESKS_SUGGESTED_BY =
      "deletions: Smith 2003; malware: UK Cyber Security Breaches Survey 2025; when they are"
          + " noticed is a guess";

  private TypicalMishaps() {}

  /** What strikes a place. */
  public static List<Strike> at(Site site) {
    boolean home = site == Site.HOME;
    return List.of(
        new Strike("fire", home ? 0.001 : 0.002),
        new Strike("theft", home ? 0.003 : 0.01),
        new Strike("water", 0.002),
        new Strike("surge", 0.001));
  }

  /** All of them with their sources. */
  public static List<TypicalValue> values() {
    List<TypicalValue> values = new ArrayList<>();
    for (Site site : Site.values()) {
      for (Strike strike : at(site)) {
        values.add(
            assumed(
                "place." + site.id() + "." + strike.name(),
                strike.name() + (site == Site.HOME ? " at a home" : " at a business"),
                percent(strike.chance()),
                source(strike.name())));
      }
    }
    values.add(
        assumed(
            "box",
            "a box takes all its drives",
            "0.15 %/year",
            "drives are only 20 to 55 % of storage subsystem failures (Jiang and others, FAST 2008)"));
    for (Habit habit : Habit.values()) {
      values.add(
          assumed(
              "desk." + habit.id() + ".deletion",
              "one shoot deleted, " + habit.id() + " desk",
              percent(habit.deletionChance()),
              DELETION));
      values.add(
          assumed(
              "desk." + habit.id() + ".malware",
              "malware, " + habit.id() + " desk",
              percent(habit.malwareChance()),
              MALWARE));
    }
    values.add(assumed("desk.deletion.noticed", "a deletion is noticed", "half within 3 days", ""));
    values.add(assumed("desk.malware.noticed", "malware is noticed", "half within 5 days", ""));
    values.add(assumed("copy.spoils", "a copy turns out unusable", "2 %/year", ""));
    values.add(
        assumed(
            "service.loses",
            "a paid service loses all, its account included",
            "0.2 %/year",
            "durability figures are design goals, not measurements"));
    values.add(assumed("used.first-month", "a used drive fails in its first 30 days", "1 %", ""));
    values.add(
        assumed(
            "strain",
            "a second drive fails during a repair, times",
            "2",
            "four times likelier within an hour than independence says (Schroeder, Gibson, FAST"
                + " 2007)"));
    values.add(
        new TypicalValue(
            "read-errors",
            "an unreadable bit",
            "1e-15",
            Mark.ASSUMPTION,
            "limits in specifications are 1e-14 to 1e-15; about 3e-16 in the field (Gray, van"
                + " Ingen, arXiv cs/0701166)"));
    return List.copyOf(values);
  }

  private static String source(String name) {
    return switch (name) {
      case "fire" -> FIRE;
      case "theft" -> THEFT;
      case "water" -> WATER;
      default -> SURGE;
    };
  }

  private static TypicalValue assumed(String id, String what, String value, String source) {
    return new TypicalValue(id, what, value, Mark.ASSUMPTION, source);
  }

  private static String percent(double chance) {
    return new BigDecimal(100 * chance)
            .round(new MathContext(3))
            .stripTrailingZeros()
            .toPlainString()
        + " %/year";
  }
}
