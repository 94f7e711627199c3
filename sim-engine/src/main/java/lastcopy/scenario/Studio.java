package lastcopy.scenario;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A studio and the layouts that it compares: all that a simulation needs to know.
 *
 * @param name the title for reports
 * @param years the horizon in years of 8,760 h, above 0
 * @param currency a label for money, if the scenario names one
 * @param energyPerKwh what a kWh costs, if stated
 * @param work the owner's own time
 * @param footage what is shot, and when
 * @param desk mishaps of the people and machines at the desk
 * @param layouts the layouts to compare, in the order of the file, at least one, ids unique
 */
public record Studio(
    String name,
    double years,
    Optional<String> currency,
    OptionalDouble energyPerKwh,
    Work work,
    Footage footage,
    Desk desk,
    List<Layout> layouts) {

  /** Copies the list and checks what no single record can check. */
  public Studio {
    Require.text(name, "studio");
    Require.above(years, 0, "years");
    Require.present(currency, "currency");
    Require.present(work, "work");
    energyPerKwh.ifPresent(price -> Require.atLeast(price, 0, "energy"));
    Require.present(footage, "footage");
    Require.present(desk, "desk");
    layouts = List.copyOf(layouts);
    Require.that(!layouts.isEmpty(), "a studio needs at least one layout");
    Require.unique(layouts.stream().map(Layout::id).toList(), "layout");
  }

  /** A studio that prices neither energy nor work. */
  public Studio(
      String name,
      double years,
      Optional<String> currency,
      Footage footage,
      Desk desk,
      List<Layout> layouts) {
    this(name, years, currency, OptionalDouble.empty(), Work.NONE, footage, desk, layouts);
  }

  /** Makes a studio over years of 8,760 h with the defaults of the scenario file. */
  public static StudioBuilder builder(String name, double years) {
    return new StudioBuilder(name, years);
  }

  /** The horizon in hours. */
  public double horizonHours() {
    return years * Units.HOURS_PER_YEAR;
  }

  /** The title of a layout by its id; the id itself if there is none. */
  public String titleOf(String layoutId) {
    return layouts.stream()
        .filter(layout -> layout.id().equals(layoutId))
        .map(Layout::title)
        .findFirst()
        .orElse(layoutId);
  }

  /** The same studio with one layout only. */
  public Studio withLayout(Layout only) {
    return new Studio(name, years, currency, energyPerKwh, work, footage, desk, List.of(only));
  }

  /** The same studio over another horizon. */
  public Studio withYears(double otherYears) {
    return new Studio(name, otherYears, currency, energyPerKwh, work, footage, desk, layouts);
  }
}
